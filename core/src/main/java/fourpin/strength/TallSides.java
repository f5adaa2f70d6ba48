package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BaySpace.Opening;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Back;
import fourpin.job.Job;
import fourpin.job.Material.Kind;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Notes bays whose sides stand free over a greater height than is usual. */
final class TallSides {

  private TallSides() {}

  /**
   * @param bows how far sides bow, worked out where shelves stand on pins in them
   */
  static List<Finding> of(Job job, BuiltCase built, List<Figure> bows) {
    Length most = built.order().settings().length(Setting.TALL_SIDE);
    List<Finding> findings = new ArrayList<>();
    for (BaySpace bay : built.bays()) {
      for (Opening opening : bay.openings()) {
        if (opening.clear().size(Axis.Z).isMoreThan(most)) {
          findings.add(finding(job, built, bay, opening, most, bows));
        }
      }
    }
    return findings;
  }

  private static Finding finding(
      Job job, BuiltCase built, BaySpace bay, Opening opening, Length most, List<Figure> bows) {
    Length free = opening.clear().size(Axis.Z);
    Length middle = opening.clear().low().z().plus(free.over(2));
    String what =
        "the sides of bay %s stand free over %s between %s and %s; over %s they may spread, and"
            + " shelves drop off their supports";
    String id = SideBow.id(built, bay, opening);
    Optional<Figure> bow = bows.stream().filter(f -> f.id().equals(id)).findFirst();
    return new Finding(
        Severity.NOTE,
        "tall-side",
        what.formatted(
                bay.number(),
                job.style().text(free),
                opening.below(),
                opening.above(),
                job.style().text(most))
            + bow.map(f -> bent(job, f)).orElse(""),
        Stream.concat(Stream.of(figure(built, bay, opening)), bow.stream()).toList(),
        new Place(built.order().name(), Optional.of(bay.left()), Optional.of(opening.clear())),
        cures(job, built, middle));
  }

  private static List<Remedy> cures(Job job, BuiltCase built, Length middle) {
    List<Remedy> all = new ArrayList<>();
    all.add(
        new Remedy(
            "put a fixed shelf near the middle, " + job.style().text(middle) + " up",
            "that shelf can't be moved"));
    built
        .order()
        .back()
        .filter(back -> job.material(back.material()).kind() == Kind.SHEET)
        .filter(_ -> !built.order().settings().choice(Setting.BACK_FIXING).equals("glued"))
        .ifPresent(back -> all.add(glued(back)));
    return all;
  }

  /**
   * Holds the back edges alone, so that the front is still to be looked at. Solid wood can't be.
   */
  private static Remedy glued(Back back) {
    return new Remedy(
        "glue the back in along the uprights",
        back.kind() == Back.Kind.APPLIED
            ? "glue along its edges, and it can't be taken off any more"
            : "glue in its grooves or rabbets, and it can't be taken out any more");
  }

  /** The rule counts what no figure does: sides that are not straight, and joints that give. */
  private static String bent(Job job, Figure bow) {
    return "; straight ones bow by %s under the shelves stated"
        .formatted(bow.value().text(job.unit()));
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
