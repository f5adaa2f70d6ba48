package fourpin.boring;

import fourpin.boring.Cut.Kind;
import fourpin.boring.Cut.Owner.Obstacle;
import fourpin.boring.Cut.Owner.OfRow;
import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Words the clashes of one kind in one upright, and computes what would cure them. */
final class ClashReport {

  private final Part upright;
  private final List<Clash> clashes;
  private final Clash worst;
  private final Reporter reporter;
  private final Settings settings;

  /**
   * @param clashes of the same rows with the same thing; at least one
   */
  ClashReport(BuiltCase built, Part upright, List<Clash> clashes, Reporter reporter) {
    this.upright = upright;
    this.clashes = clashes;
    this.reporter = reporter;
    this.settings = built.order().settings();
    this.worst =
        clashes.stream()
            .min(Comparator.comparing(Clash::severity).thenComparing(Clash::gap))
            .orElseThrow();
  }

  Finding finding() {
    return switch (worst.other().owner()) {
      case OfRow other -> withRow(other);
      case Obstacle obstacle -> withObstacle(obstacle);
    };
  }

  private Finding withRow(OfRow other) {
    boolean grooves = worst.ours().outline() instanceof Outline.Rectangle;
    String words = "%s of bays %d and %d lie opposite each other in %s (%s): %s less %s and %s %s.";
    String what =
        Reporter.say(
            words,
            grooves ? "Grooves for standards" : clashes.size() + " pairs of holes",
            worst.row().grid().bay(),
            other.grid().bay(),
            upright.name(),
            upright.mark(),
            reporter.text(upright.thickness()),
            reporter.text(worst.ours().depth()),
            reporter.text(worst.other().depth()),
            webWords());
    return finding(
        grooves ? "grooves-meet" : "rows-meet", what, List.of(web()), rowRemedies(other));
  }

  private String webWords() {
    Length web = worst.web();
    return web.isPositive()
        ? "leaves a web of only "
            + reporter.text(web)
            + " where "
            + reporter.text(settings.length(Setting.LEAST_WEB))
            + " is asked for"
        : "leaves " + reporter.text(web) + " of wood: they meet";
  }

  private Figure web() {
    return reporter.figure(
        "web/" + upright.mark() + "/" + kindName(),
        "wood left between both faces of " + upright.name(),
        worst.web(),
        "t - d1 - d2",
        List.of(
            Reporter.input("t", "thickness", upright.thickness(), Source.STATED),
            Reporter.input(
                "d1",
                worst.ours().owner().name(),
                worst.ours().depth(),
                settings.source(Setting.HOLE_DEPTH)),
            Reporter.input(
                "d2",
                worst.other().owner().name(),
                worst.other().depth(),
                settings.source(Setting.HOLE_DEPTH))));
  }

  private String kindName() {
    return switch (worst.other().owner()) {
      case OfRow _ -> "rows";
      case Obstacle obstacle ->
          obstacle.kind().finding() + "/" + worst.ours().owner().name() + "/" + obstacle.name();
    };
  }

  private List<Remedy> rowRemedies(OfRow other) {
    List<Remedy> remedies = new ArrayList<>();
    Length least = settings.length(Setting.LEAST_WEB);
    Length depth = reporter.roundedDown(upright.thickness().minus(least).over(2));
    Length deepest = Length.max(worst.ours().depth(), worst.other().depth());
    if (depth.isPositive() && depth.isLessThan(deepest)) {
      remedies.add(
          Reporter.remedy(
              Reporter.say(
                  "no deeper than %s on both faces: leaves %s",
                  reporter.text(depth), reporter.text(upright.thickness().minus(depth.times(2)))),
              "supports that need no more than that depth"));
    }
    Length across = worst.row().grid().diameter().plus(other.grid().diameter()).over(2);
    Length stagger = across.plus(settings.length(Setting.LEAST_EDGE));
    remedies.add(
        Reporter.remedy(
            Reporter.say(
                "state rows-back: %s for bay %d", reporter.atLeast(stagger), other.grid().bay()),
            "the rows of the two bays no longer stand in line; levels stay the same"));
    if (worst.ours().outline() instanceof Outline.Disc) {
      remedies.addAll(holeRemedies(other, stagger));
    }
    return remedies;
  }

  private List<Remedy> holeRemedies(OfRow other, Length stagger) {
    List<Remedy> remedies = new ArrayList<>();
    Length half = worst.row().grid().pitch().over(2);
    if (half.isAtLeast(stagger)) {
      remedies.add(
          Reporter.remedy(
              Reporter.say(
                  "state levels-up: %s, half a pitch, for bay %d",
                  reporter.text(half), other.grid().bay()),
              "shelves of the two bays no longer line up"));
    }
    if (worst.row().grid().diameter().equals(other.grid().diameter()) && sharesCentre()) {
      remedies.add(
          Reporter.remedy(
              "bore one hole right through by hand, with a long pin that carries a shelf in both bays",
              "a pin for both bays, as long as the partition and both reaches; it goes in before"
                  + " either shelf"));
    }
    return remedies;
  }

  private boolean sharesCentre() {
    return worst.ours().outline().equals(worst.other().outline());
  }

  private Finding withObstacle(Obstacle obstacle) {
    String what =
        Reporter.say(
            "%s of %s in %s (%s) %s %s%s.",
            counted(),
            worst.ours().owner().name(),
            upright.name(),
            upright.mark(),
            verb(),
            obstacle.name(),
            distance());
    return finding(obstacle.kind().finding(), what, List.of(gap()), remedies(obstacle));
  }

  private String counted() {
    return isOne() ? "1 " + thing() : clashes.size() + " " + thing() + "s";
  }

  private String thing() {
    if (worst.ours().outline() instanceof Outline.Disc) {
      return "hole";
    }
    if (!worst.ours().isOnFace()) {
      return "groove";
    }
    return worst.row().grid().support() instanceof Support.Cleats ? "strip" : "standard";
  }

  private boolean isOne() {
    return clashes.size() == 1;
  }

  private String verb() {
    if (worst.ours().isOnFace()) {
      return isOne() ? "stands on" : "stand on";
    }
    if (worst.severity() == Severity.ERROR) {
      return isOne() ? "cuts into" : "cut into";
    }
    return isOne() ? "comes near" : "come near";
  }

  private String distance() {
    if (worst.severity() == Severity.ERROR) {
      return "";
    }
    boolean beside = worst.gap().isPositive();
    return Reporter.say(
        beside ? ": %s left, %s asked for" : " on the other face: %s left, %s asked for",
        reporter.text(beside ? worst.gap() : worst.web()),
        reporter.text(settings.length(beside ? Setting.LEAST_EDGE : Setting.LEAST_WEB)));
  }

  private Figure gap() {
    return worst.web().isPositive()
        ? web()
        : reporter.figure(
            "gap/" + upright.mark() + "/" + kindName(),
            "wood left between the rim and " + worst.other().owner().name().replace("the ", ""),
            worst.gap(),
            "distance of the outlines",
            List.of());
  }

  private List<Remedy> remedies(Obstacle obstacle) {
    List<Remedy> remedies = new ArrayList<>();
    if (worst.opposite() && worst.web().isLessThan(settings.length(Setting.LEAST_WEB))) {
      shallower().ifPresent(remedies::add);
    }
    inwards().ifPresent(remedies::add);
    if (worst.ours().outline() instanceof Outline.Disc) {
      upOrDown().ifPresent(remedies::add);
      remedies.add(
          Reporter.remedy(
              clashes.size() == 1
                  ? "leave this hole out"
                  : "leave these " + clashes.size() + " out",
              "as many levels fewer for this bay, in all its rows"));
    }
    if (worst.row().grid().support() instanceof Support.Standards standards
        && standards.mounting() == Support.Mounting.LET_IN) {
      remedies.add(
          Reporter.remedy(
              "put the standards on the surface",
              "shelves " + reporter.text(standards.thickness().times(2)) + " shorter"));
    }
    if (obstacle.kind() == Kind.PLATE && worst.ours().isOnFace()) {
      Length forward = worst.other().outline().back().minus(worst.ours().outline().front());
      remedies.add(
          Reporter.remedy(
              "choose hinges whose plates end "
                  + reporter.atLeast(forward)
                  + " nearer to the front",
              "other hinges"));
    }
    if (obstacle.kind() == Kind.SCREW && worst.ours().isOnFace()) {
      remedies.add(
          Reporter.remedy("hold the fixed shelves in dadoes, without screws", "one more cut each"));
    }
    if (obstacle.kind() == Kind.SCREW) {
      remedies.add(
          Reporter.remedy("move the screw by " + reporter.atLeast(needed()), "uneven spacing"));
    }
    return remedies;
  }

  private Optional<Remedy> shallower() {
    Length depth =
        upright.thickness().minus(worst.other().depth()).minus(settings.length(Setting.LEAST_WEB));
    return depth.isPositive() && depth.isLessThan(worst.ours().depth())
        ? Optional.of(
            Reporter.remedy(
                "no deeper than " + reporter.atMost(depth), "supports that need no more depth"))
        : Optional.empty();
  }

  /** The wood that is missing between the outlines. */
  private Length needed() {
    return settings.length(Setting.LEAST_EDGE).minus(worst.gap());
  }

  /** Moves the row towards the middle of the shelf until it is clear, if that clears it. */
  private Optional<Remedy> inwards() {
    BayGrid grid = worst.row().grid();
    Outline ours = worst.ours().outline();
    Outline other = worst.other().outline();
    Length edge = settings.length(Setting.LEAST_EDGE);
    boolean front = worst.row().row().name() == BayGrid.Row.Name.FRONT;
    Length by =
        front
            ? other.back().plus(edge).minus(ours.front())
            : ours.back().plus(edge).minus(other.front());
    if (worst.row().row().name() == BayGrid.Row.Name.MIDDLE
        || by.isMoreThan(upright.box().size(Axis.Y).over(2))) {
      return Optional.empty();
    }
    Setting setting =
        front ? ShelfRows.frontSetback(grid.support()) : ShelfRows.backSetback(grid.support());
    return Optional.of(
        Reporter.remedy(
            "set " + setting.key() + " to " + reporter.atLeast(settings.length(setting).plus(by)),
            "the row stands " + reporter.atLeast(by) + " further in; the shelf tips sooner"));
  }

  /** The shortest way up or down that clears every one of them, if there is any. */
  private Optional<Remedy> upOrDown() {
    return clashes.stream()
        .flatMap(c -> Stream.of(upFor(c), downFor(c).negated()))
        .filter(this::clearsAll)
        .min(Comparator.comparing(Length::abs))
        .map(
            by ->
                Reporter.remedy(
                    Reporter.say(
                        "start the rows %s %s",
                        reporter.atLeast(by.abs()), by.isNegative() ? "lower" : "higher"),
                    "every level of the case moves; check again"));
  }

  private Length upFor(Clash clash) {
    return clash.other().outline().top().plus(edge()).minus(clash.ours().outline().bottom());
  }

  private Length downFor(Clash clash) {
    return clash.ours().outline().top().plus(edge()).minus(clash.other().outline().bottom());
  }

  /** Whether every hole of the row is clear when all are moved. */
  private boolean clearsAll(Length by) {
    return clashes.stream().allMatch(c -> clears(c, by));
  }

  private boolean clears(Clash clash, Length by) {
    Length radius = worst.row().grid().diameter().over(2);
    Length high = clash.other().outline().top().plus(edge()).plus(radius);
    Length low = clash.other().outline().bottom().minus(edge()).minus(radius);
    return worst.row().grid().levels().stream()
        .map(level -> level.height().plus(by))
        .allMatch(z -> z.isAtLeast(high) || low.isAtLeast(z));
  }

  private Length edge() {
    return settings.length(Setting.LEAST_EDGE);
  }

  private Finding finding(String kind, String what, List<Figure> figures, List<Remedy> remedies) {
    Box spot = clashes.getFirst().ours().block();
    for (Clash clash : clashes) {
      spot = spot.around(clash.ours().block());
    }
    return reporter.finding(
        worst.severity(), kind, what, figures, Optional.of(upright.mark()), spot, remedies);
  }
}
