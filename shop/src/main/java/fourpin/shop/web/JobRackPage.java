package fourpin.shop.web;

import fourpin.job.Material;
import fourpin.measure.Length;
import fourpin.plan.MaterialPlan;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.fields.Target;
import fourpin.shop.store.Piece;
import fourpin.shop.store.Racked;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/**
 * The rack as one job sees it: what fits its materials, and what its layouts leave.
 *
 * @param base address of the job
 */
public record JobRackPage(
    String title,
    String base,
    String token,
    String seen,
    String notice,
    List<Fit> fits,
    List<Left> left) {

  private static final int LONGEST_NOTE = 80;

  public JobRackPage {
    fits = List.copyOf(fits);
    left = List.copyOf(left);
  }

  /** A piece of the rack that a material of the job can be cut from. */
  public record Fit(ShopPage.Line line, String material) {}

  /**
   * An offcut that is worth keeping.
   *
   * @param number among all of the job, from 0
   * @param there whether it was put on the rack already
   */
  public record Left(int number, String what, Place there) {

    public boolean isThere() {
      return there == Place.ON_THE_RACK;
    }
  }

  /** Where an offcut is. */
  public enum Place {
    IN_THE_PLAN,
    ON_THE_RACK
  }

  static JobRackPage of(State state, List<Racked> rack, String token, String notice) {
    return new JobRackPage(
        state.job().title(),
        "/jobs/" + state.revision().document().value(),
        token,
        state.revision().id().value(),
        notice,
        rack.stream()
            .flatMap(
                r ->
                    state.job().materials().stream()
                        .filter(m -> fits(r.piece(), m))
                        .map(m -> new Fit(ShopPage.Line.of(r, Typing.NOTHING), m.name())))
            .toList(),
        left(state, rack));
  }

  /** As thick as the material is sold or measured, and of its kind; offcuts are of any. */
  static boolean fits(Piece piece, Material material) {
    boolean kind =
        switch (piece.form()) {
          case SHEET -> material.kind() == Material.Kind.SHEET;
          case BOARD -> material.kind() == Material.Kind.BOARD;
          case OFFCUT -> material.kind() != Material.Kind.GLASS;
        };
    return kind
        && (isAlike(piece.thickness(), material.nominal())
            || isAlike(piece.thickness(), material.thickness()));
  }

  private static boolean isAlike(Length a, Length b) {
    return a.picometres() == b.picometres();
  }

  /** The piece as a line of the job's stock. */
  static Target taken(State seen, Piece piece, Material material) {
    SequencedMap<String, Value> line = new LinkedHashMap<>();
    line.put("material", Value.of(material.name()));
    line.put("length", Value.of(RackFields.written(piece.length())));
    line.put("width", Value.of(RackFields.written(piece.width())));
    line.put("count", Value.of(piece.count()));
    piece.price().ifPresent(p -> line.put("price", Value.of(p.toPlainString())));
    line.put("supply", Value.of("on-hand"));
    String list = material.kind() == Material.Kind.BOARD ? "boards" : "sheets";
    return Target.append(seen.text(), Route.of("stock", list), Value.group(line));
  }

  // Offcuts

  private static List<Left> left(State state, List<Racked> rack) {
    List<Piece> pieces = offcuts(state);
    return java.util.stream.IntStream.range(0, pieces.size())
        .mapToObj(i -> left(i, pieces.get(i), rack))
        .toList();
  }

  private static Left left(int number, Piece piece, List<Racked> rack) {
    boolean there = rack.stream().anyMatch(r -> r.piece().equals(piece));
    return new Left(
        number,
        String.format(
            Locale.ROOT,
            "%d of %s, %s x %s",
            piece.count(),
            piece.material(),
            RackFields.shown(piece.length()),
            RackFields.shown(piece.width())),
        there ? Place.ON_THE_RACK : Place.IN_THE_PLAN);
  }

  /** What the layouts of a job leave that is worth keeping, as it would stand on the rack. */
  static List<Piece> offcuts(State state) {
    Map<Piece, Integer> counts = new LinkedHashMap<>();
    for (MaterialPlan material : state.plan().materials()) {
      material.layouts().stream()
          .flatMap(l -> l.kept().stream())
          .forEach(
              kept ->
                  counts.merge(one(state, material.material(), kept), kept.count(), Integer::sum));
    }
    return counts.entrySet().stream().map(e -> e.getKey().counted(e.getValue())).toList();
  }

  private static Piece one(State state, Material material, MaterialPlan.Kept kept) {
    String note = "left from " + state.job().title();
    int longest = Math.min(LONGEST_NOTE, note.codePointCount(0, note.length()));
    return new Piece(
        material.name(),
        Piece.Form.OFFCUT,
        material.thickness(),
        kept.length(),
        kept.width(),
        1,
        Optional.empty(),
        note.substring(0, note.offsetByCodePoints(0, longest)));
  }
}
