package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import fourpin.strength.Balance.Load;
import fourpin.strength.CaseTippingCures.Falling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Stacked cases that fall forward by themselves, when they are opened, or when lightly pushed. */
final class StackTippingFindings {

  private final Job job;
  private final StackTipping stack;

  StackTippingFindings(Job job, StackTipping stack) {
    this.job = job;
    this.stack = stack;
  }

  /** The worst that is done to them, if it tips them. */
  Optional<Finding> finding() {
    return byThemselves().or(this::used).or(this::opened).or(this::overPushed);
  }

  private Optional<Finding> byThemselves() {
    if (stack.topHeavyHeld() <= 0) {
      return Optional.of(
          byThemselves(
              "the upper one loaded and the lower one empty",
              stack.topHeavy(),
              StackTipping::topHeavyHeld));
    }
    return stack.forwardHeld() <= 0
        ? Optional.of(
            byThemselves(Load.FORWARD.words(), stack.forward(), StackTipping::forwardHeld))
        : Optional.empty();
  }

  private Finding byThemselves(String loaded, Figure figure, ToDoubleFunction<StackTipping> held) {
    return finding(
        Severity.ERROR,
        "%s, %s, both fall forward by themselves".formatted(stack.floor(), loaded),
        figure,
        held,
        0);
  }

  /** By what is done every day. */
  private Optional<Finding> used() {
    if (stack.doorsOpened() <= 0) {
      String when = "when all doors are open" + more(stack.doorsOpened());
      return Optional.of(falls(Severity.ERROR, when, stack.doors()));
    }
    return stack
        .drawn()
        .filter(one -> one <= 0)
        .map(
            one ->
                falls(
                    Severity.ERROR,
                    "when one full drawer is pulled out" + more(one),
                    stack.drawer(one)));
  }

  /** That cures are sized for more, where that tips both more. @param held of what is told */
  private String more(double held) {
    return stack.held() < held
        ? ", the more when someone leans on what is open, which cures count too"
        : "";
  }

  private Optional<Finding> opened() {
    if (stack.reach().isEmpty() || stack.held() > 0) {
      return Optional.empty();
    }
    return Optional.of(
        stack.opened() <= 0
            ? falls(
                Severity.DOUBT,
                "when " + stack.opening().when() + more(stack.opened()),
                stack.open())
            : falls(
                Severity.DOUBT,
                "when, with %s, someone leans on one of them".formatted(stack.opening().done()),
                stack.leant()));
  }

  private Finding falls(Severity severity, String when, Figure figure) {
    return finding(
        severity,
        stack.loaded() + " otherwise and not fastened to the wall, both fall forward " + when,
        figure,
        StackTipping::held,
        0);
  }

  private Optional<Finding> overPushed() {
    return stack.pushed() > 0
        ? Optional.empty()
        : Optional.of(
            finding(
                Severity.DOUBT,
                "%s and not fastened to the wall, %s, %s tips both forward"
                    .formatted(
                        stack.loaded(),
                        stack.floor(),
                        stack.light().words(job.unit(), stack.height())),
                stack.pushedOver(),
                StackTipping::forwardHeld,
                stack.light().moment(stack.height())));
  }

  private Finding finding(
      Severity severity,
      String what,
      Figure figure,
      ToDoubleFunction<StackTipping> held,
      double enough) {
    return new Finding(
        severity,
        "stack-tips",
        "screwed to %s, %s".formatted(below(), what),
        List.of(figure),
        Place.of(stack.upper().order().name(), "T", stack.upper().part("T").box()),
        LazyList.of(() -> remedies(held, enough)));
  }

  private String below() {
    return stack.lower().order().name();
  }

  private List<Remedy> remedies(ToDoubleFunction<StackTipping> held, double enough) {
    List<Remedy> all = new ArrayList<>();
    all.add(
        new Remedy(
            "fasten both to the wall before anything else; the pull on their anchors stands"
                + " under \"standing and wall\"",
            "screws into studs"));
    all.addAll(new CaseTippingCures(job, falling(held, enough)).all());
    return all;
  }

  private Falling falling(ToDoubleFunction<StackTipping> held, double enough) {
    return new Falling(
        FloorSlope.To.FRONT,
        stack.opening().orders(),
        change -> held.applyAsDouble(stack.ordered(change)),
        enough,
        stack.light(),
        "the bottom of " + below(),
        stack.lever(),
        stack.height());
  }
}
