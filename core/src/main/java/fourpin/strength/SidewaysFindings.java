package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.measure.LazyList;
import fourpin.strength.CaseTippingCures.Falling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cases, and stacks of two, that tip sideways by themselves or when lightly pushed. */
final class SidewaysFindings {

  private final Job job;
  private final List<BuiltCase> cases;
  private final SidewaysTipping tipping;

  /**
   * @param cases from the floor upwards
   */
  SidewaysFindings(Job job, List<BuiltCase> cases) {
    this.job = job;
    this.cases = List.copyOf(cases);
    this.tipping = new SidewaysTipping(job, cases);
  }

  Optional<Finding> byItself() {
    return tipping.held() > 0
        ? Optional.empty()
        : Optional.of(
            finding(
                Severity.ERROR,
                "%s, nothing beside it, %s, %s sideways by %s, %s"
                    .formatted(
                        tipping.worst().words(),
                        tipping.floor(),
                        cases.size() > 1 ? "both fall" : "it falls",
                        cases.size() > 1 ? "themselves" : "itself",
                        tipping.way()),
                0));
  }

  /** Where it stands by itself. */
  Optional<Finding> pushedOver() {
    double light = tipping.light().moment(tipping.height());
    return tipping.held() <= 0 || tipping.held() > light
        ? Optional.empty()
        : Optional.of(
            finding(
                Severity.DOUBT,
                "%s and not fastened, nothing beside it, %s, %s tips %s sideways, %s"
                    .formatted(
                        tipping.worst().words(),
                        tipping.floor(),
                        tipping.light().words(job.unit(), tipping.height()),
                        cases.size() > 1 ? "both" : "it",
                        tipping.way()),
                light));
  }

  private Finding finding(Severity severity, String what, double enough) {
    BuiltCase top = cases.getLast();
    return new Finding(
        severity,
        cases.size() > 1 ? "stack-tips" : "case-tips",
        cases.size() > 1 ? "screwed to %s, %s".formatted(below(), what) : what,
        List.of(tipping.pushedOver()),
        Place.of(top.order().name(), "T", top.part("T").box()),
        LazyList.of(() -> remedies(enough)));
  }

  private String below() {
    return cases.getFirst().order().name();
  }

  private List<Remedy> remedies(double enough) {
    List<Remedy> all = new ArrayList<>();
    all.add(
        new Remedy(
            "fasten it to the wall before anything else, and to what stands beside it; that is not"
                + " counted on until it is done",
            "screws into studs"));
    all.addAll(new CaseTippingCures(job, falling(enough)).all());
    return all;
  }

  private Falling falling(double enough) {
    return new Falling(
        FloorSlope.To.SIDE,
        tipping.orders(),
        change -> tipping.ordered(change).held(),
        enough,
        tipping.light(),
        cases.size() > 1 ? "the bottom of " + below() : "its bottom",
        tipping.lever(),
        tipping.height());
  }
}
