package fourpin.strength;

import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.measure.Length;
import fourpin.strength.StockFit.Given;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the stock gives for a shelf that is made otherwise, or shorter. */
final class ShelfStock {

  /** For strips where the job has no boards: a usual hardwood at a usual thickness. */
  private static final String STAND_IN = "oak, white";

  private final Job job;
  private final StockFit fit;
  private final Part part;
  private final Length length;

  /**
   * @param part the shelf as it is
   * @param shorter by how much it is to be, mm
   */
  ShelfStock(Job job, ShelfReader reader, Part part, double shorter) {
    this.job = job;
    this.fit = new StockFit(job, reader.settings(), part.when());
    this.part = part;
    this.length = part.cutLength().total().minus(Length.nearestMm(shorter));
  }

  /** Of one material, its edging as it is. */
  Taken plain(Material of) {
    return new Taken(fit.shelf(of, length, part.cutWidth().total()), of);
  }

  /** Of two layers, its edging as it is. */
  Taken doubled(Material of) {
    return new Taken(fit.layer(of, length, part.cutWidth().total()), of);
  }

  /**
   * Of a panel with strips.
   *
   * @param panel its width, mm
   */
  Taken stripped(Material of, double panel, Material board, Length height) {
    return new Taken(fit.shelf(of, length, Length.nearestMm(panel)), of).and(strip(board, height));
  }

  /** Those that strips may be ripped from. */
  Stream<Material> boards() {
    List<Material> all = job.materials().stream().filter(m -> m.kind() == Kind.BOARD).toList();
    return all.isEmpty() ? Stream.of(standIn()) : all.stream();
  }

  private Material standIn() {
    return new Material(
        STAND_IN,
        Kind.BOARD,
        STAND_IN,
        job.unit().customary() ? Length.inches(3, 4) : Length.mm(20),
        Optional.empty(),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty());
  }

  /** A strip as thick as its board; one that the job does not know yet will be large enough. */
  Taken strip(Material board, Length height) {
    return job.materials().contains(board)
        ? new Taken(fit.strip(board, board.thickness(), height, length), board)
        : new Taken(Given.CUT, board);
  }
}
