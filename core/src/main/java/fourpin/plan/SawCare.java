package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.cutting.Direction;
import fourpin.cutting.Piece;
import fourpin.cutting.SawStep;
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
 * How set-ups of a layout are made with hands away from the blade (common practice). Rip and
 * crosscut name the way of a cut by the grain; what leads the piece follows its shape: at the rip
 * fence lies what is at least as long along the cut as across it, else it turns there and is thrown
 * back; at a mitre gauge or sled what has a short cut; and the rest is cut by a hand-held saw.
 */
public final class SawCare {

  private final Job job;
  private final Length narrow;
  private final Length widest;
  private final Optional<Length> longestRip;
  private final Optional<Length> widestCrosscut;

  /**
   * @param job whose settings hold
   */
  public SawCare(Job job) {
    Settings settings = job.settings();
    this.job = job;
    this.narrow = settings.length(Setting.NARROW_RIP);
    this.longestRip = settings.optionalLength(Setting.LONGEST_RIP);
    this.widestCrosscut = settings.optionalLength(Setting.WIDEST_CROSSCUT);
    this.widest = widestCrosscut.orElseGet(() -> settings.length(Setting.HELD_CROSSCUT));
  }

  /** What leads a piece past the blade, or the blade past the piece. */
  public sealed interface Held {

    /** The rip fence at the setting: what comes off lies between fence and blade. */
    record Fence() implements Held {}

    /** The rip fence at what remains: the strip falls off outside the blade. */
    record FenceAtRest(Length rest) implements Held {}

    /** Neither the strip nor what remains is wide enough between fence and blade. */
    record BandSaw() implements Held {}

    /** A mitre gauge or sled, with a stop at the setting. */
    record Gauge() implements Held {}

    /** Nothing at a table saw: a hand-held saw along a straightedge. */
    record Straightedge() implements Held {}
  }

  /** What leads the piece in a pass of a set-up. */
  public Held held(SetUp setUp, SawStep step) {
    Direction way = setUp.direction();
    Length cut = along(step.from(), way);
    boolean leads = !cut.isLessThan(along(step.from(), way.other()));
    if (isBeyond(way, cut) || (!leads && cut.isMoreThan(widest))) {
      return new Held.Straightedge();
    }
    return leads ? atFence(setUp, step) : new Held.Gauge();
  }

  /** What is longer or wider than the saw reaches is only trimmed. */
  private boolean isBeyond(Direction way, Length cut) {
    return (way == Direction.RIP ? longestRip : widestCrosscut).filter(cut::isMoreThan).isPresent();
  }

  private Held atFence(SetUp setUp, SawStep step) {
    if (!(setUp instanceof SetUp.CutTo cut) || !cut.fence().isLessThan(narrow)) {
      return new Held.Fence();
    }
    return step.far()
        .map(far -> along(far, setUp.direction().other()))
        .filter(rest -> !rest.isLessThan(narrow))
        .<Held>map(Held.FenceAtRest::new)
        .orElseGet(Held.BandSaw::new);
  }

  private static Length along(Piece piece, Direction way) {
    return way == Direction.RIP ? piece.length() : piece.width();
  }

  /** Whether a pass takes off a strip too narrow to lie between fence and blade. */
  public static boolean isNarrow(Held held) {
    return held instanceof Held.FenceAtRest || held instanceof Held.BandSaw;
  }

  /** Whether a pass would be ripped at the fence by its name, but turns there by its shape. */
  public static boolean turns(SetUp setUp, Held held) {
    return setUp.direction() == Direction.RIP && held instanceof Held.Gauge;
  }

  /** For narrow strips; empty if none of these set-ups cuts any. */
  public Optional<Caution> narrow(List<SetUp> setUps) {
    return caution(setUps, SawCare::isNarrow, Cautions.NARROW_RIP);
  }

  /** What these set-ups ask for besides what each cut does. */
  List<Caution> cautions(List<SetUp> setUps) {
    List<Caution> cautions = new ArrayList<>();
    caution(setUps, held -> held instanceof Held.Straightedge, large()).ifPresent(cautions::add);
    if (setUps.stream().anyMatch(this::turns)) {
      cautions.add(Cautions.TURNING);
    }
    narrow(setUps).ifPresent(cautions::add);
    return cautions;
  }

  private boolean turns(SetUp setUp) {
    return setUp.steps().stream().anyMatch(step -> turns(setUp, held(setUp, step)));
  }

  private Optional<Caution> caution(List<SetUp> setUps, Predicate<Held> asks, Caution caution) {
    return setUps.stream()
            .anyMatch(s -> s.steps().stream().map(step -> held(s, step)).anyMatch(asks))
        ? Optional.of(caution)
        : Optional.empty();
  }

  private Caution large() {
    String beyond =
        longestRip.map(most -> ", and longer rips than " + told(most, "longest-rip")).orElse("");
    String origin =
        widestCrosscut.isPresent() ? "widest-crosscut" : "held-crosscut, common practice";
    return Cautions.large(told(widest, origin), beyond);
  }

  private String told(Length length, String origin) {
    return job.style().text(length) + " (" + origin + ")";
  }
}
