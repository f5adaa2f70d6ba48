package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.boring.OppositeHoles;
import fourpin.boring.way.BitSetting;
import fourpin.job.Job;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How the stop of a bit is set before rows are bored, what it leaves, and how it is tried. */
final class StopSetting {

  private final Job job;
  private final Set<String> plugs;
  private final CaseWays ways;

  /**
   * @param plugs what goes into the holes: "pin", "sleeve"
   */
  StopSetting(Job job, Set<String> plugs, CaseWays ways) {
    this.job = job;
    this.plugs = plugs;
    this.ways = ways;
  }

  /**
   * @param grids that are bored with the bit
   */
  String words(BitSetting bit, List<BayGrid> grids) {
    return "Set the stop: " + sum(bit) + ", to the full diameter. " + reserve(bit, grids);
  }

  /**
   * What wood stays behind the bit, as a sentence.
   *
   * @param grids that are bored with the bit
   */
  String reserve(BitSetting bit, List<BayGrid> grids) {
    return left(bit) + opposite(grids);
  }

  private String sum(BitSetting bit) {
    return bit.over().isZero()
        ? "hole " + text(bit.stop())
        : "hole " + text(bit.depth()) + " + guide " + text(bit.over()) + " = " + text(bit.stop());
  }

  private String left(BitSetting bit) {
    String reserve = text(bit.reserve()) + " of wood stays behind ";
    return bit.point().isZero()
        ? reserve + "the hole in the thinnest panel"
        : "The bit's point goes "
            + text(bit.point())
            + " deeper; "
            + reserve
            + "it in the thinnest panel";
  }

  /** Partitions are bored from both faces. */
  private String opposite(List<BayGrid> grids) {
    Optional<OppositeHoles> worst = ways.opposite(grids);
    return worst
            .map(
                o ->
                    o.wood().isPositive()
                        ? ", " + text(o.wood()) + " between opposite holes of " + o.upright().mark()
                        : "; opposite holes of " + o.upright().mark() + " meet")
            .orElse("")
        + ".";
  }

  /**
   * @param through what is bored through, with a blank before it: " through the guide"
   */
  String check(BitSetting bit, String through) {
    return "Bore"
        + through
        + " into scrap of the same stock: the hole is "
        + text(bit.depth())
        + " deep to the full diameter and takes a "
        + String.join(" or a ", plugs)
        + ". Look at the stop again after every row.";
  }

  private String text(Length length) {
    return job.style().text(length);
  }
}
