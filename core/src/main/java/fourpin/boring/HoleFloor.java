package fourpin.boring;

import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Source;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether enough wood stays behind the point of a bit: depth, point and reserve against the
 * thickness that the panel really has.
 */
record HoleFloor(BuiltCase built, BayGrid grid, Reporter reporter) {

  List<Finding> findings(BaySpace bay) {
    return Stream.of(bay.left(), bay.right()).map(built::part).flatMap(this::in).toList();
  }

  private Stream<Finding> in(Part upright) {
    Settings settings = settings();
    Length point = settings.length(Setting.BIT_POINT);
    Length left = upright.thickness().minus(grid.depth()).minus(point);
    Length least = settings.length(Setting.LEAST_FLOOR);
    return left.isLessThan(least) ? Stream.of(floor(upright, point, left, least)) : Stream.empty();
  }

  private Settings settings() {
    return built.order().settings();
  }

  private Finding floor(Part upright, Length point, Length left, Length least) {
    Length deepest = upright.thickness().minus(point).minus(least);
    Length shortest = Length.max(Length.ZERO, upright.thickness().minus(grid.depth()).minus(least));
    Figure figure =
        reporter.figure(
            "floor/" + upright.mark() + "/bay-" + grid.bay(),
            "wood behind the bit's point in " + upright.name(),
            left,
            "t - d - p",
            List.of(
                Reporter.input("t", "thickness", upright.thickness(), Source.STATED),
                Reporter.input("d", "depth", grid.depth(), settings().source(Setting.HOLE_DEPTH)),
                Reporter.input("p", "bit's point", point, settings().source(Setting.BIT_POINT))));
    String words =
        left.isNegative()
            ? "Holes %s deep with a point of %s go through %s (%s), which is %s thick."
            : "Holes %s deep with a point of %s leave too little of %s (%s), which is %s thick.";
    return reporter.finding(
        left.isNegative() ? Severity.ERROR : Severity.DOUBT,
        "hole-floor",
        Reporter.say(
            words,
            reporter.text(grid.depth()),
            reporter.text(point),
            upright.name(),
            upright.mark(),
            reporter.text(upright.thickness())),
        List.of(figure),
        Optional.of(upright.mark()),
        upright.box(),
        new Cures(reporter, "hole-floor", Optional.of(upright.mark()))
            .setting(
                Setting.HOLE_DEPTH,
                reporter.roundedDown(deepest),
                ProudStems.cost(List.of(grid), reporter.roundedDown(deepest), reporter))
            .setting(
                Setting.BIT_POINT,
                reporter.roundedDown(shortest),
                ": a bit with no longer point",
                "a Forstner or router bit")
            .orElse(
                Reporter.say(
                    "choose a material of %s or more for the case",
                    reporter.atLeast(grid.depth().plus(point).plus(least))),
                "price and weight")
            .list());
  }
}
