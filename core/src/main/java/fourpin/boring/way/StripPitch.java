package fourpin.boring.way;

import fourpin.casework.Finding;
import fourpin.casework.Place;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.job.Tool.StripKind;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The pitch that a strip with holes gives a case: a whole number of its own. */
public final class StripPitch {

  private StripPitch() {}

  /**
   * The job with the pitch of those cases that are to be bored through a strip replaced by what the
   * strip gives, the nearest to the pitch wished at which all their bays on pins can be bored so.
   * Cases whose pitch fits stay, and those that can't be bored through a strip at any of its
   * pitches.
   */
  public static Job taken(Job job) {
    return job.with(job.cases().stream().map(order -> taken(job, order)).toList());
  }

  private static CaseOrder taken(Job job, CaseOrder order) {
    return given(job, order).map(given -> with(order, given.pitch())).orElse(order);
  }

  /** What a strip gives instead of the pitch that is wished. */
  private record Given(PerforatedStrip strip, Length pitch) {}

  /** None where the pitch stays as it is wished. */
  private static Optional<Given> given(Job job, CaseOrder order) {
    return strips(order.settings())
        .flatMap(way -> nearest(job, order, way))
        .filter(given -> !given.pitch().equals(order.settings().length(Setting.PITCH)));
  }

  /** What the cases lose or win whose pitch is replaced. */
  public static List<Finding> notes(Job stated) {
    return stated.cases().stream().flatMap(order -> note(stated, order).stream()).toList();
  }

  private static Optional<Finding> note(Job job, CaseOrder order) {
    return given(job, order).map(given -> note(job, order, given));
  }

  private static Finding note(Job job, CaseOrder order, Given given) {
    Length wished = order.settings().length(Setting.PITCH);
    Repitched.Loss loss = Repitched.Loss.of(job, order, wished, given.pitch());
    String name = "pitch-of-strip";
    Source asked = order.settings().source(Setting.PITCH);
    return new Finding(
        Finding.Severity.NOTE,
        name,
        loss.words(job.style(), "The strip") + ".",
        List.of(loss.figure(Figure.id(order.name(), name), given.strip().pitch(), asked)),
        Place.of(order.name()),
        List.of(new Finding.Remedy(remedy(job, order, given.pitch()), "nothing more than now")));
  }

  private static String remedy(Job job, CaseOrder order, Length given) {
    return canBeWritten(job, given)
        ? "set pitch to " + job.style().text(given)
        : "leave way: "
            + order.settings().choice(Setting.WAY)
            + " stated: the plan follows the strip's pitch";
  }

  /** Whether the job's unit writes a pitch without rounding it. */
  static boolean canBeWritten(Job job, Length pitch) {
    return job.style().rounded(pitch).equals(pitch);
  }

  /** The same case at another pitch. */
  static CaseOrder with(CaseOrder order, Length pitch) {
    return order.with(order.settings().with(Setting.PITCH, new SettingValue.OfLength(pitch)));
  }

  private static Optional<Way> strips(Settings settings) {
    return Way.named(settings.choice(Setting.WAY)).filter(way -> kind(way).isPresent());
  }

  private static Optional<StripKind> kind(Way way) {
    return switch (way) {
      case HARDBOARD_STRIP -> Optional.of(StripKind.HARDBOARD);
      case STEEL_STRAP -> Optional.of(StripKind.STEEL);
      default -> Optional.empty();
    };
  }

  /** Of all strips of the kind, what comes nearest; the first of those that come equally near. */
  private static Optional<Given> nearest(Job job, CaseOrder order, Way way) {
    Length wished = order.settings().length(Setting.PITCH);
    return job.shop()
        .strips(kind(way).orElseThrow())
        .map(strip -> new Given(strip, nearest(strip, wished)))
        .sorted(Comparator.comparing(given -> given.pitch().minus(wished).abs()))
        .filter(given -> isPossible(Repitched.groups(job, order, given.pitch()), way))
        .findFirst();
  }

  private static boolean isPossible(List<Group> groups, Way way) {
    List<Group> pins = groups.stream().filter(Group::hasPins).toList();
    return !pins.isEmpty()
        && pins.stream().allMatch(g -> Answers.proposal(g, way) instanceof Proposal.Can);
  }

  /** The multiple of a strip's pitch nearest to a wished one, within what the setting allows. */
  static Length nearest(PerforatedStrip strip, Length wished) {
    Length pitch = strip.pitch();
    long times = wished.plus(pitch.over(2)).wholeTimes(pitch);
    long least =
        limit(Setting.PITCH.least())
            .plus(pitch)
            .minus(new Length(1, Unit.MILLIMETRE))
            .wholeTimes(pitch);
    long most = limit(Setting.PITCH.most()).wholeTimes(pitch);
    return pitch.times(Math.max(1, Math.min(most, Math.max(least, times)))).in(wished.unit());
  }

  private static Length limit(String text) {
    return new LengthReader(Unit.MILLIMETRE).read(text).orThrow();
  }
}
