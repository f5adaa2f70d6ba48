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

/**
 * How set-ups of a layout are made with hands away from the blade: narrow strips fall off outside
 * it (common practice), and what is too wide for a table saw is crosscut by another one.
 */
public final class SawCare {

  private final Job job;
  private final Length narrow;
  private final Length widest;

  /**
   * @param job whose settings hold
   */
  public SawCare(Job job) {
    Settings settings = job.settings();
    this.job = job;
    this.narrow = settings.length(Setting.NARROW_RIP);
    this.widest =
        settings
            .optionalLength(Setting.WIDEST_CROSSCUT)
            .orElseGet(() -> settings.length(Setting.HELD_CROSSCUT));
  }

  /** Where the fence stands for one pass of a rip. */
  public sealed interface Fence {

    /** At the setting of the set-up: what comes off lies between fence and blade. */
    record AtSetting() implements Fence {}

    /** At the width that remains: the strip falls off outside the blade. */
    record AtRest(Length rest) implements Fence {}

    /** Nowhere: neither the strip nor what remains is wide enough between fence and blade. */
    record Nowhere() implements Fence {}
  }

  /** Where the fence stands for a pass of a set-up. */
  public Fence fence(SetUp setUp, SawStep step) {
    if (!isNarrow(setUp)) {
      return new Fence.AtSetting();
    }
    return step.far()
        .map(Piece::width)
        .filter(rest -> !rest.isLessThan(narrow))
        .<Fence>map(Fence.AtRest::new)
        .orElseGet(Fence.Nowhere::new);
  }

  /** Whether a set-up rips strips too narrow to lie between fence and blade. */
  public boolean isNarrow(SetUp setUp) {
    return setUp instanceof SetUp.CutTo cut
        && cut.direction() == Direction.RIP
        && cut.fence().isLessThan(narrow);
  }

  /** Whether some of its strips leave too little beside the fence to be ripped at a table saw. */
  public boolean isTooNarrow(SetUp setUp) {
    return setUp.steps().stream().anyMatch(s -> fence(setUp, s) instanceof Fence.Nowhere);
  }

  /** Whether a set-up crosscuts, or trims the ends of, what is too wide for a table saw. */
  public boolean isLarge(SetUp setUp) {
    return setUp.direction() == Direction.CROSSCUT
        && setUp.steps().stream().anyMatch(step -> step.from().width().isMoreThan(widest));
  }

  /** For narrow strips; empty if none of these set-ups rips any. */
  public Optional<Caution> narrow(List<SetUp> setUps) {
    return setUps.stream().anyMatch(this::isNarrow)
        ? Optional.of(Cautions.NARROW_RIP)
        : Optional.empty();
  }

  /** What these set-ups ask for besides what each cut does. */
  List<Caution> cautions(List<SetUp> setUps) {
    List<Caution> cautions = new ArrayList<>();
    if (setUps.stream().anyMatch(this::isLarge)) {
      cautions.add(Cautions.large(job.style().text(widest) + " (" + origin() + ")"));
    }
    narrow(setUps).ifPresent(cautions::add);
    return cautions;
  }

  private String origin() {
    return job.settings().optionalLength(Setting.WIDEST_CROSSCUT).isPresent()
        ? "widest-crosscut"
        : "held-crosscut, common practice";
  }
}
