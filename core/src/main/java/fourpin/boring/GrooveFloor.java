package fourpin.boring;

import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.Source;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is left of the uprights behind the grooves of standards that are let in. */
record GrooveFloor(BuiltCase built, BayGrid grid, Reporter reporter) {

  List<Finding> findings(BaySpace bay) {
    return Stream.of(bay.left(), bay.right())
        .map(built::part)
        .filter(upright -> left(upright).isLessThan(least()))
        .map(this::finding)
        .toList();
  }

  private Length least() {
    return built.order().settings().length(Setting.LEAST_FLOOR);
  }

  private Length left(Part upright) {
    return upright.thickness().minus(grid.depth());
  }

  private Finding finding(Part upright) {
    boolean through = !left(upright).isPositive();
    String words =
        through
            ? "Grooves %s deep for the standards of bay %d go through %s (%s), which is %s thick."
            : "Grooves %s deep for the standards of bay %d leave too little of %s (%s), which is %s"
                + " thick.";
    return reporter.finding(
        through ? Severity.ERROR : Severity.DOUBT,
        "groove-floor",
        Reporter.say(
            words,
            reporter.text(grid.depth()),
            grid.bay(),
            upright.name(),
            upright.mark(),
            reporter.text(upright.thickness())),
        List.of(
            reporter.figure(
                "groove-floor/" + upright.mark() + "/bay-" + grid.bay(),
                "wood behind the grooves in " + upright.name(),
                left(upright),
                "t - d",
                List.of(
                    Reporter.input("t", "thickness", upright.thickness(), Source.STATED),
                    Reporter.input(
                        "d", "thickness of the standards", grid.depth(), Source.STATED)))),
        Optional.of(upright.mark()),
        upright.box(),
        List.of(
            Reporter.remedy(
                "state mounting: surface for the standards", "standards that stand proud"),
            Reporter.remedy(
                Reporter.say(
                    "choose a material of %s or more for the case",
                    reporter.atLeast(grid.depth().plus(least()))),
                "price and weight")));
  }
}
