package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.PlannedStep.Stage;
import fourpin.strength.StackedCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The steps that set a case on another one and join them. */
final class StackSteps {

  /** Against sliding; those along the back hold it down. */
  private static final long IN_FRONT = 2;

  private final Job job;
  private final BuiltCase upper;
  private final StackedCase stack;
  private final LengthStyle style;

  StackSteps(Job job, BuiltCase upper, List<BuiltCase> cases) {
    this.job = job;
    this.upper = upper;
    this.stack = new StackedCase(job, upper, cases);
    this.style = job.style();
  }

  /** Screws that join one copy to the case below; none on the floor. */
  long screws() {
    return alongBack() == 0 ? 0 : alongBack() + IN_FRONT;
  }

  private long alongBack() {
    return stack.gap().isPositive()
        ? 0
        : stack.screws().map(f -> Math.round(f.value().value())).orElse(0L);
  }

  /** What a screw goes through and into. */
  String screwSize() {
    Length through = upper.part("B").thickness();
    Length thread = stack.thread().orElseThrow();
    return "for a hole of %s, %s long or the next length sold below %s"
        .formatted(
            style.text(upper.order().settings().length(Setting.SCREW_DIAMETER)),
            style.text(through.plus(thread)),
            style.text(through.plus(below().part("T").thickness())));
  }

  private BuiltCase below() {
    return stack.lower().orElseThrow();
  }

  /** None for a case on the floor. */
  List<PlannedStep> all() {
    return stack.lower().isEmpty() ? List.of() : List.of(set(), join());
  }

  private PlannedStep set() {
    List<Caution> cautions = new ArrayList<>(List.of(Cautions.STACK));
    cautions.addAll(new Lifting(job, upper).whole(upper));
    return step(
        ("When %s stands level and is fastened to the wall, lift %s onto it, empty, two people or"
                + " more, one at each end, hands under the bottom; set its back edge down first and"
                + " tip it up. Backs in line, %s. Clamp its bottom to the top below at both ends before"
                + " anyone lets go.")
            .formatted(name(), upper.order().name(), sides()),
        "Its sides are plumb and its back lies against the wall or in line with the back below.",
        cautions);
  }

  private String sides() {
    Length beside = less(Axis.X).over(2);
    return beside.isPositive()
        ? "each side " + style.text(beside) + " in from the outside of the side below"
        : "sides in line with those below";
  }

  private String name() {
    return below().order().name();
  }

  private Length less(Axis axis) {
    return below().outside().size(axis).minus(upper.outside().size(axis));
  }

  private PlannedStep join() {
    List<Caution> cautions = List.of(Cautions.DRILL, Cautions.TIP);
    return step(
        joined()
            + " Then fasten it to the wall too, near its top. Only then put the supports in and the"
            + " shelves on.",
        "Push at its top from the front and from the side: nothing moves between the two cases. Each"
            + " shelf lies on all its supports without rocking.",
        cautions);
  }

  private String joined() {
    return stack.gap().isPositive()
        ? "Join it to %s through strips as high as the gap under its bottom (%s), glued under it along front and back: they are in no cut list."
            .formatted(name(), style.text(stack.gap()))
        : String.format(
            Locale.ROOT,
            "Join it to %s from inside: %d screws through its bottom into the top below, %d evenly along"
                + " the back and %d in front, %s from back, front and sides."
                + " Bore clearance holes through the bottom and lead holes in the top, with a stop so"
                + " that no bit or point comes out underneath.",
            name(),
            screws(),
            alongBack(),
            IN_FRONT,
            style.text(stack.inset()));
  }

  private PlannedStep step(String words, String check, List<Caution> cautions) {
    return new PlannedStep(
        Stage.STAND, upper.order().name(), List.of(), words, List.of(), check, cautions);
  }
}
