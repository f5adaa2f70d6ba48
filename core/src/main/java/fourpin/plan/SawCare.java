package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.cutting.Direction;
import fourpin.cutting.Hold;
import fourpin.cutting.SetUp;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What set-ups of a layout ask for besides what each cut does, so that hands stay away from the
 * blade (common practice).
 */
public final class SawCare {

  private final Job job;
  private final Length widest;
  private final Length longest;
  private final Length reach;
  private final Optional<Length> longestRip;
  private final Optional<Length> widestCrosscut;

  /**
   * @param job whose settings hold
   */
  public SawCare(Job job) {
    Settings settings = job.settings();
    this.job = job;
    this.longestRip = settings.optionalLength(Setting.LONGEST_RIP);
    this.widestCrosscut = settings.optionalLength(Setting.WIDEST_CROSSCUT);
    this.longest = settings.length(Setting.HELD_LENGTH);
    this.reach = settings.length(Setting.FENCE_REACH);
    this.widest = widestCrosscut.orElseGet(() -> settings.length(Setting.HELD_CROSSCUT));
  }

  /** Whether passes take off strips too narrow to lie between fence and blade. */
  public static boolean isNarrow(SetUp setUp) {
    return setUp.hold() == Hold.BAND_SAW
        || (setUp.hold() == Hold.FENCE_AT_REST && setUp instanceof SetUp.CutTo);
  }

  /** Whether pieces would be ripped at the fence by its name, but turn there by their shape. */
  public static boolean turns(SetUp setUp) {
    return setUp.direction() == Direction.RIP && isAtGauge(setUp);
  }

  private static boolean isByStop(SetUp setUp) {
    return isAtGauge(setUp) && setUp instanceof SetUp.CutTo;
  }

  private static boolean isAtGauge(SetUp setUp) {
    return setUp.hold() == Hold.GAUGE || setUp.hold() == Hold.CLAMPED_GAUGE;
  }

  /** Whether pieces are too large for fence and mitre gauge. */
  public static boolean isLarge(SetUp setUp) {
    return setUp.hold() == Hold.STRAIGHTEDGE;
  }

  /** Whether pieces are too long for a mitre gauge. */
  public static boolean isLong(SetUp setUp) {
    return setUp.hold() == Hold.MITRE_SAW;
  }

  /** Whether an edge is made straight that may not lie along the fence before. */
  public static boolean isFirstEdge(SetUp setUp) {
    return setUp.hold() == Hold.FIRST_EDGE;
  }

  /** For narrow strips; empty if none of these set-ups cuts any. */
  public Optional<Caution> narrow(List<SetUp> setUps) {
    return caution(setUps, SawCare::isNarrow, Cautions.NARROW_RIP);
  }

  /** What these set-ups ask for besides what each cut does. */
  List<Caution> cautions(List<SetUp> setUps) {
    List<Caution> cautions = new ArrayList<>();
    caution(setUps, SawCare::isLarge, large()).ifPresent(cautions::add);
    caution(setUps, SawCare::isLong, longPieces()).ifPresent(cautions::add);
    caution(setUps, SawCare::isFirstEdge, Cautions.FIRST_EDGE).ifPresent(cautions::add);
    caution(setUps, SawCare::turns, Cautions.TURNING).ifPresent(cautions::add);
    caution(setUps, SawCare::isByStop, Cautions.STOP).ifPresent(cautions::add);
    narrow(setUps).ifPresent(cautions::add);
    return cautions;
  }

  private static Optional<Caution> caution(
      List<SetUp> setUps, Predicate<SetUp> asks, Caution caution) {
    return setUps.stream().anyMatch(asks) ? Optional.of(caution) : Optional.empty();
  }

  private Caution large() {
    String beyond =
        longestRip.map(most -> ", and longer rips than " + told(most, "longest-rip")).orElse("");
    String origin =
        widestCrosscut.isPresent() ? "widest-crosscut" : "held-crosscut, common practice";
    return Cautions.large(told(widest, origin), beyond, told(reach, "fence-reach"));
  }

  private Caution longPieces() {
    return Cautions.longPieces(told(longest, "held-length, common practice"));
  }

  private String told(Length length, String origin) {
    return job.style().text(length) + " (" + origin + ")";
  }
}
