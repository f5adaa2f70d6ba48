package fourpin.strength;

import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part.CutWhen;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The pieces of a back that is put on a case, as the stock gives them. */
final class BackPieces {

  private final BuiltCase built;
  private final StockFit fit;

  BackPieces(Job job, BuiltCase built) {
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
