package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BaySpace.Opening;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Notes bays whose sides stand free over a greater height than is usual. */
final class TallSides {

  private TallSides() {}

  static List<Finding> of(Job job, BuiltCase built) {
    Length most = built.order().settings().length(Setting.TALL_SIDE);
    List<Finding> findings = new ArrayList<>();
    for (BaySpace bay : built.bays()) {
      for (Opening opening : bay.openings()) {
        if (opening.clear().size(Axis.Z).isMoreThan(most)) {
          findings.add(finding(job, built, bay, opening, most));
        }
      }
    }
    return findings;
  }

  private static Finding finding(
      Job job, BuiltCase built, BaySpace bay, Opening opening, Length most) {
    Length free = opening.clear().size(Axis.Z);
    Length middle = opening.clear().low().z().plus(free.over(2));
    String what =
        "the sides of bay %s stand free over %s between %s and %s; over %s they may spread, and"
            + " shelves drop off their supports";
    return new Finding(
        Severity.NOTE,
        "tall-side",
        what.formatted(
            bay.number(),
            job.style().text(free),
            opening.below(),
            opening.above(),
            job.style().text(most)),
        List.of(figure(built, bay, opening)),
        new Place(built.order().name(), Optional.of(bay.left()), Optional.of(opening.clear())),
        List.of(
            new Remedy(
                "put a fixed shelf near the middle, " + job.style().text(middle) + " up",
                "that shelf can't be moved"),
            new Remedy("glue the back in along the uprights", "nothing, if it is let in")));
  }

  private static Figure figure(BuiltCase built, BaySpace bay, Opening opening) {
    Length low = opening.clear().low().z();
    Length high = opening.clear().high().z();
    return new Figure(
        Figure.id(built.order().name(), "free-height-" + bay.number() + "-" + opening.below()),
        "free height of the sides of bay " + bay.number(),
        Quantity.of(high.minus(low)),
        "h - l",
        List.of(
            new Input("h", "underside of " + opening.above(), Quantity.of(high), Source.GEOMETRY),
            new Input("l", "top of " + opening.below(), Quantity.of(low), Source.GEOMETRY)),
        Source.GEOMETRY);
  }
}
