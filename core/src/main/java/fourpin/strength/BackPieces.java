package fourpin.strength;

import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part.CutWhen;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The pieces of a back that is put on a case, as the stock gives them. */
final class BackPieces {

  /** Thicker sheets are not taken for backs. */
  private static final double THICKEST = 10;

  /** For a back where the job has no thin sheet: usual plywood at a usual thickness. */
  private static final String STAND_IN = "plywood, veneer core";

  private final Job job;
  private final BuiltCase built;
  private final StockFit fit;

  BackPieces(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
    this.fit = new StockFit(job, built.order().settings(), CutWhen.AFTER_ASSEMBLY);
  }

  /**
   * A back of a material.
   *
   * @param widths of its pieces, mm
   */
  record Backed(Taken taken, List<Double> widths) {
    Backed {
      widths = List.copyOf(widths);
    }
  }

  /** Of the thinnest sheet that the stock gives it of. */
  Backed best() {
    return sheets()
        .map(this::of)
        .min(
            Comparator.comparing(Backed::taken, Taken.READIEST)
                .thenComparing(backed -> backed.taken().of().thickness()))
        .orElseThrow();
  }

  private Stream<Material> sheets() {
    List<Material> thin =
        job.materials().stream()
            .filter(m -> m.kind() == Material.Kind.SHEET && m.layers().isEmpty())
            .filter(m -> m.thickness().mm() <= THICKEST)
            .toList();
    return thin.isEmpty() ? Stream.of(standIn()) : thin.stream();
  }

  private Material standIn() {
    Length thick = job.unit().customary() ? Length.inches(1, 4) : Length.mm(6);
    return new Material(
        STAND_IN + ", " + job.style().text(thick),
        Material.Kind.SHEET,
        STAND_IN,
        thick,
        Optional.empty(),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty());
  }

  /** In one piece where the stock gives that; else in a piece for each bay. */
  Backed of(Material material) {
    Backed whole = of(material, List.of(right().minus(left())));
    return whole.taken().isTooLarge() ? of(material, byBay()) : whole;
  }

  private Backed of(Material material, List<Length> widths) {
    Taken taken = new Taken(fit.back(material, height(), Collections.max(widths)), material);
    return new Backed(taken, widths.stream().map(Length::mm).toList());
  }

  private Length left() {
    return built.part("L").box().low().x();
  }

  private Length right() {
    return built.part("R").box().high().x();
  }

  /** Over bottom and top. */
  private Length height() {
    return built.part("T").box().high().z().minus(built.part("B").box().low().z());
  }

  /** From middle to middle of the partitions. */
  private List<Length> byBay() {
    List<Length> ends = new ArrayList<>(List.of(left()));
    for (BaySpace bay : built.bays().subList(1, built.bays().size())) {
      ends.add(middle(bay.left()));
    }
    ends.add(right());
    List<Length> widths = new ArrayList<>();
    for (int i = 1; i < ends.size(); i++) {
      widths.add(ends.get(i).minus(ends.get(i - 1)));
    }
    return widths;
  }

  private Length middle(String partition) {
    return built
        .part(partition)
        .box()
        .low()
        .x()
        .plus(built.part(partition).box().high().x())
        .over(2);
  }
}
