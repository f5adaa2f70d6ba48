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
import fourpin.job.Bay;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Source;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Words the clashes of one kind in one upright, and computes what would cure them. */
final class ClashReport {

  /** Starts of the rows that are tried before there is said to be none. */
  private static final int MOST_STARTS = 4;

  /** The kind of finding of holes that meet. */
  static final String ROWS_MEET = "rows-meet";

  private final Part upright;
  private final List<Clash> clashes;
  private final Clash worst;
  private final Reporter reporter;
  private final Settings settings;
  private final int bays;
  private final Length start;

  /**
   * @param clashes of the same rows with the same thing; at least one
   * @param start height of the case's lowest hole
   */
  ClashReport(BuiltCase built, Part upright, List<Clash> clashes, Length start, Reporter reporter) {
    this.upright = upright;
    this.clashes = clashes;
    this.reporter = reporter;
    this.settings = built.order().settings();
    this.bays = built.bays().size();
    this.start = start;
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
    String words = "%s of bays %d and %d %s in %s (%s)%s: %s less %s and %s %s.";
    String what =
        Reporter.say(
            words,
            grooves ? "Grooves for standards" : clashes.size() + " pairs of holes",
            worst.row().grid().bay(),
            other.grid().bay(),
            worst.gap().isPositive() ? "come near each other" : "lie opposite each other",
            upright.name(),
            upright.mark(),
            rimWords(),
            reporter.text(upright.thickness()),
            reporter.text(worst.ours().depth()),
            reporter.text(worst.other().depth()),
            webWords());
    String kind = grooves ? "grooves-meet" : ROWS_MEET;
    return finding(kind, what, List.of(web()), rowRemedies(other, kind));
  }

  /** Of rows that don't lie over each other, how far they lie apart. */
  private String rimWords() {
    return worst.gap().isPositive()
        ? Reporter.say(
            ", %s between their rims, %s asked for",
            reporter.text(worst.gap()), reporter.text(settings.length(Setting.LEAST_EDGE)))
        : "";
  }

  private String webWords() {
    Length web = worst.web();
    return web.isPositive()
        ? "leaves a web of only "
            + reporter.text(web)
            + " where "
            + reporter.text(settings.length(Setting.LEAST_WEB))
            + " is asked for"
        : "leaves "
            + reporter.text(web)
            + " of wood"
            + (worst.gap().isPositive() ? "" : ": they meet");
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

  private List<Remedy> rowRemedies(OfRow other, String kind) {
    Cures cures = new Cures(reporter, kind, Optional.empty(), Trials.Reach.ALL);
    Length least = settings.length(Setting.LEAST_WEB);
    Length points = point(worst.row().grid()).plus(point(other.grid()));
    Length depth =
        reporter.roundedDown(OppositeHoles.deepest(upright.thickness(), points, settings));
    Length left = upright.thickness().minus(depth.times(2)).minus(points);
    cures.setting(
        Setting.HOLE_DEPTH,
        depth,
        Reporter.say(", on both faces: leaves %s, %s", reporter.text(left), pointWords(points)),
        ProudStems.cost(List.of(worst.row().grid(), other.grid()), depth, reporter));
    Length across = worst.row().grid().diameter().plus(other.grid().diameter()).over(2);
    Length stagger = reporter.roundedUp(across.plus(settings.length(Setting.LEAST_EDGE)));
    secondBays().back(cures, stagger);
    if (worst.ours().outline() instanceof Outline.Disc) {
      holeRemedies(cures, other);
    }
    Length enough = worst.ours().depth().plus(worst.other().depth()).plus(least);
    return cures
        .orElse(
            "choose a material of " + reporter.atLeast(enough) + " or more for the case",
            "price and weight")
        .list();
  }

  private Length point(BayGrid grid) {
    return reporter.trials().point(grid);
  }

  private String pointWords(Length points) {
    return points.isZero()
        ? "the bit has no point"
        : "points of " + reporter.text(point(worst.row().grid())) + " counted";
  }

  private SecondBays secondBays() {
    return new SecondBays(bays, reporter);
  }

  private void holeRemedies(Cures cures, OfRow other) {
    secondBays().up(cures, worst.row().grid().pitch());
    if (worst.row().grid().diameter().equals(other.grid().diameter()) && sharesCentre()) {
      cures.byHand(
          "bore one hole right through by hand, with a long pin that carries a shelf in both bays",
          "a pin for both bays, as long as the partition and both reaches; it goes in before"
              + " either shelf");
    }
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
    Cures cures = new Cures(reporter, obstacle.kind().finding(), Optional.of(upright.mark()));
    if (worst.opposite() && worst.web().isLessThan(settings.length(Setting.LEAST_WEB))) {
      shallower(cures);
    }
    inwards(cures);
    if (worst.ours().outline() instanceof Outline.Disc) {
      upOrDown(cures);
      cures.byHand(
          clashes.size() == 1
              ? "by hand: leave this hole out when the row is bored"
              : "by hand: leave these " + clashes.size() + " out when the row is bored",
          "as many levels fewer for this bay, in all its rows");
    }
    if (worst.row().grid().support() instanceof Support.Standards standards
        && standards.mounting() == Support.Mounting.LET_IN) {
      cures.stated(
          "state mounting: surface for the standards",
          "shelves " + reporter.text(standards.thickness().times(2)) + " shorter",
          Cures.bays(b -> true, ClashReport::onTheSurface));
    }
    if (obstacle.kind() == Kind.PLATE && worst.ours().isOnFace()) {
      Length forward = worst.other().outline().back().minus(worst.ours().outline().front());
      cures.byHand(
          "choose hinges whose plates end " + reporter.atLeast(forward) + " nearer to the front",
          "other hinges");
    }
    if (obstacle.kind() == Kind.SCREW && worst.ours().isOnFace()) {
      cures.byHand("hold the fixed shelves in dadoes, without screws", "one more cut each");
    }
    if (obstacle.kind() == Kind.SCREW) {
      cures.byHand("by hand: move the screw by " + reporter.atLeast(needed()), "uneven spacing");
    }
    return cures.orElse("choose supports that are not let in so deep", "other supports").list();
  }

  private static Bay onTheSurface(Bay bay) {
    return bay.supports().orElse(null) instanceof Support.Standards s
        ? bay.with(s.with(Support.Mounting.SURFACE))
        : bay;
  }

  private void shallower(Cures cures) {
    Length depth =
        reporter.roundedDown(
            upright
                .thickness()
                .minus(worst.other().depth())
                .minus(settings.length(Setting.LEAST_WEB)));
    cures.setting(
        Setting.HOLE_DEPTH, depth, ProudStems.cost(List.of(worst.row().grid()), depth, reporter));
  }

  /** The wood that is missing between the outlines. */
  private Length needed() {
    return settings.length(Setting.LEAST_EDGE).minus(worst.gap());
  }

  /** Moves the row towards the middle of the shelf until it is clear, if that clears it. */
  private void inwards(Cures cures) {
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
      return;
    }
    Setting setting =
        front ? ShelfRows.frontSetback(grid.support()) : ShelfRows.backSetback(grid.support());
    Length value = reporter.roundedUp(settings.length(setting).plus(by));
    cures.setting(
        setting,
        value,
        "the row stands " + reporter.atLeast(by) + " further in; the shelf tips sooner");
  }

  /** The nearest start of the rows that clears every one of them, if there is any. */
  private void upOrDown(Cures cures) {
    List<Length> starts =
        clashes.stream()
            .flatMap(c -> Stream.of(upFor(c), downFor(c).negated()))
            .filter(this::clearsAll)
            .sorted(Comparator.comparing(Length::abs))
            .flatMap(by -> starts(by).stream())
            .distinct()
            .limit(MOST_STARTS)
            .toList();
    cures.firstOf(Setting.FIRST_HOLE, starts, "every level of the case moves");
  }

  /** With the lowest hole where it then is, or one pitch higher where that is too low. */
  private List<Length> starts(Length by) {
    Length at = start.plus(by);
    Length shown = by.isNegative() ? reporter.roundedDown(at) : reporter.roundedUp(at);
    return List.of(shown, shown.plus(worst.row().grid().pitch()));
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
