package fourpin.boring;

import fourpin.boring.BayGrid.Row;
import fourpin.boring.BayGrid.Run;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether supports, holes and shelves of one bay fit each other. */
final class FitChecks {

  private static final SettingValue AS_WIDE = new SettingValue.OfNumber(0);

  private final BuiltCase built;
  private final BayGrid grid;
  private final BaySpace bay;
  private final Reporter reporter;
  private final Settings settings;
  private final List<Finding> findings = new ArrayList<>();

  FitChecks(BuiltCase built, BayGrid grid, Reporter reporter) {
    this.built = built;
    this.grid = grid;
    this.bay = built.bays().get(grid.bay() - 1);
    this.reporter = reporter;
    this.settings = built.order().settings();
  }

  List<Finding> findings() {
    rows();
    new HangingStrips(shelf(), grid, settings, reporter).finding().ifPresent(findings::add);
    switch (grid.support()) {
      case Support.Pins pins -> {
        pin(pins);
        wobble();
        holes();
        engagement(pins.reach(), "pin");
      }
      case Support.Sleeved sleeved -> {
        pin(sleeved.pins());
        holes();
        engagement(sleeved.pins().reach(), "pin");
      }
      case Support.Standards standards -> {
        findings.addAll(new GrooveFloor(built, grid, reporter).findings(bay));
        standards(standards);
      }
      case Support.Cleats cleats -> {
        pitch();
        findings.addAll(
            new CleatChecks(cleats, grid.bay(), bay.clear(), reporter).findings(settings));
        engagement(cleats.cleatThickness(), "cleat");
      }
    }
    return findings;
  }

  private void holes() {
    pitch();
    findings.addAll(new HoleFloor(built, grid, reporter).findings(bay));
  }

  /** A shelf lies safely only with a row on each side of its middle. */
  private void rows() {
    Box shelf = shelf().box();
    Length middle = shelf.low().y().plus(shelf.high().y()).over(2);
    Row front = grid.rows().getFirst();
    Row back = grid.rows().getLast();
    if (!front.y().isLessThan(middle) || !middle.isLessThan(back.y())) {
      add(
          Severity.ERROR,
          "rows-close",
          Reporter.say(
              "The rows of bay %d do not lie on both sides of the middle of a shelf %s deep: it"
                  + " would fall.",
              grid.bay(), reporter.text(depth(shelf))),
          setbackRemedies(shelf, "rows-close"));
      return;
    }
    if (front.front(grid).isLessThan(shelf.low().y())
        || back.back(grid).isMoreThan(shelf.high().y())) {
      add(
          Severity.ERROR,
          "rows-off-shelf",
          Reporter.say(
              "The rows of bay %d do not lie wholly under its shelves, which are %s deep.",
              grid.bay(), reporter.text(depth(shelf))),
          setbackRemedies(shelf, "rows-off-shelf"));
      return;
    }
    Length wood = back.y().minus(front.y()).minus(grid.diameter());
    if (wood.isLessThan(settings.length(Setting.LEAST_EDGE))) {
      add(
          wood.isPositive() ? Severity.DOUBT : Severity.ERROR,
          "rows-close",
          Reporter.say(
              "The front and back rows of bay %d leave %s of wood between them under a shelf %s"
                  + " deep.",
              grid.bay(), reporter.text(wood), reporter.text(depth(shelf))),
          setbackRemedies(shelf, "rows-close"));
    }
  }

  private static Length depth(Box shelf) {
    return shelf.high().y().minus(shelf.low().y());
  }

  /** Half way between the edges and the middle, or a shelf with room for the stated setbacks. */
  private List<Remedy> setbackRemedies(Box shelf, String kind) {
    Length halfWay = reporter.style().rounded(depth(shelf).over(2).over(2));
    Length front = settings.length(ShelfRows.frontSetback(grid.support()));
    Length back = settings.length(ShelfRows.backSetback(grid.support()));
    Length deep = Length.max(front, back).times(2).plus(grid.diameter());
    Length enough = deep.plus(settings.length(Setting.LEAST_EDGE));
    Setting first = ShelfRows.frontSetback(grid.support());
    Setting last = ShelfRows.backSetback(grid.support());
    SettingValue both = new SettingValue.OfLength(halfWay);
    Length deeper = reporter.roundedUp(enough.minus(depth(shelf)));
    return cures(kind)
        .stated(
            first == last
                ? Reporter.say("set %s to %s", first.key(), reporter.text(halfWay))
                : Reporter.say(
                    "set %s and %s to %s", first.key(), last.key(), reporter.text(halfWay)),
            "supports show nearer to the front",
            new Stated.OfSettings(
                Stream.of(first, last)
                    .distinct()
                    .map(s -> new Stated.OfSetting(s, reporter.text(halfWay)))
                    .toList()),
            o -> o.with(o.settings().with(first, both).with(last, both)))
        .stated(
            Reporter.say(
                "state a depth of %s for the case, %s more",
                reporter.text(built.order().sizes().depth().plus(deeper)), reporter.text(deeper)),
            "room",
            o -> o.with(deeper(o.sizes(), deeper)))
        .orElse(
            "choose smaller supports for shelves " + reporter.text(depth(shelf)) + " deep",
            "other supports")
        .list();
  }

  private static Sizes deeper(Sizes sizes, Length by) {
    return new Sizes(sizes.measured(), sizes.width(), sizes.height(), sizes.depth().plus(by));
  }

  private Cures cures(String kind) {
    return new Cures(reporter, kind, Optional.empty());
  }

  private void pin(Support.Pins pins) {
    Length over = pins.stem().minus(grid.depth());
    if (!over.isPositive()) {
      return;
    }
    add(
        Severity.DOUBT,
        "pin-stem",
        Reporter.say(
            "The pins of bay %d have stems %s long in holes %s deep: they stand %s proud.",
            grid.bay(),
            reporter.text(pins.stem()),
            reporter.text(grid.depth()),
            reporter.text(over)),
        cures("pin-stem")
            .setting(
                Setting.HOLE_DEPTH,
                pins.stem(),
                "leaves "
                    + reporter.text(thinnest().minus(pins.stem()))
                    + " behind the hole, the bit's point not counted")
            .byHand(
                Reporter.say(
                    "buy pins with stems of %s or less and state their stem",
                    reporter.text(grid.depth())),
                "other pins")
            .byHand("by hand: shorten the stems by " + reporter.atLeast(over), "a minute a pin")
            .list());
  }

  private void wobble() {
    double more = settings.number(Setting.HOLE_ALLOWANCE);
    boolean tight = more < 0;
    if (!tight && more < settings.number(Setting.LOOSE_HOLE)) {
      return;
    }
    Length by = Length.nearestMm(Math.abs(more));
    Length pin = grid.diameter().minus(Length.nearestMm(more));
    add(
        Severity.DOUBT,
        "pin-fit",
        Reporter.say(
            "The holes of bay %d are %s %s than the pins: %s.",
            grid.bay(),
            reporter.text(by),
            tight ? "smaller" : "wider",
            tight ? "they may not go in" : "they wobble"),
        cures("pin-fit")
            .stated(
                "set hole-allowance to 0: bore " + reporter.text(pin) + ", as wide as the pin",
                "another bit",
                new Stated.OfSetting(Setting.HOLE_ALLOWANCE, "0"),
                o -> o.with(o.settings().with(Setting.HOLE_ALLOWANCE, AS_WIDE)))
            .byHand(
                "test in scrap of the same stock with the actual pin, finish on",
                "a quarter of an hour")
            .list());
  }

  private void pitch() {
    Length wood = grid.pitch().minus(grid.diameter());
    if (wood.isPositive()) {
      return;
    }
    Length wide = grid.diameter().plus(settings.length(Setting.LEAST_EDGE));
    add(
        Severity.ERROR,
        "holes-run-together",
        Reporter.say(
            "Holes of %s at a pitch of %s run together in bay %d.",
            reporter.across(grid.diameter()), reporter.text(grid.pitch()), grid.bay()),
        cures("holes-run-together")
            .setting(Setting.PITCH, reporter.roundedUp(wide), "fewer levels")
            .byHand(
                "choose supports for holes of less than " + reporter.text(grid.pitch()),
                "other supports")
            .list());
  }

  /** What lies under the shelf's end: the reach less the gap that the shelf leaves there. */
  private void engagement(Length reach, String support) {
    Box shelf = shelf().box();
    Length gaps =
        shelf
            .low()
            .x()
            .minus(bay.clear().low().x())
            .plus(bay.clear().high().x().minus(shelf.high().x()));
    Length centred = reach.minus(gaps.over(2));
    Length pushed = reach.minus(gaps);
    Length least = settings.length(Setting.LEAST_ENGAGEMENT);
    if (centred.isAtLeast(least) && pushed.isPositive()) {
      return;
    }
    String words =
        "A %s reaches %s; with %s of play at each end of the shelves of bay %d %s lie on it, %s"
            + " when a shelf is pushed to one end. Asked for: %s.";
    findings.add(
        reporter.finding(
            pushed.isPositive() ? Severity.DOUBT : Severity.ERROR,
            "engagement",
            Reporter.say(
                words,
                support,
                reporter.text(reach),
                reporter.text(gaps.over(2)),
                grid.bay(),
                reporter.text(centred),
                reporter.text(pushed),
                reporter.text(least)),
            List.of(engagementFigure(reach, gaps.over(2), centred)),
            Optional.of(shelf().mark()),
            shelf,
            engagementRemedies(gaps, least.minus(centred))));
  }

  private Figure engagementFigure(Length reach, Length gap, Length left) {
    return reporter.figure(
        "engagement/bay-" + grid.bay(),
        "length of support under the end of a shelf",
        left,
        "r - g",
        List.of(
            Reporter.input("r", "reach", reach, Source.STATED),
            Reporter.input("g", "gap at each end", gap, settings.source(Setting.END_PLAY))));
  }

  private List<Remedy> engagementRemedies(Length gaps, Length missing) {
    Length longer = Length.max(missing, gaps.over(2));
    Length play = settings.length(Setting.END_PLAY);
    Length tighter = Length.min(play.minus(missing.times(2)), play.over(2));
    return new Cures(reporter, "engagement", Optional.of(shelf().mark()))
        .byHand(
            Reporter.say(
                "buy supports that reach %s further and state their reach",
                reporter.atLeast(longer)),
            "other supports")
        .setting(Setting.END_PLAY, reporter.roundedDown(tighter), "shelves that must be cut closer")
        .list();
  }

  private void standards(Support.Standards standards) {
    Length longest = grid.runs().stream().map(Run::length).max(Length::compareTo).orElseThrow();
    if (!longest.isMoreThan(standards.soldIn())) {
      return;
    }
    add(
        Severity.DOUBT,
        "standard-length",
        Reporter.say(
            "Standards of bay %d must be %s long and are sold in %s: two pieces in one run keep"
                + " their slots in step only if the joint is cut at a whole pitch.",
            grid.bay(), reporter.text(longest), reporter.text(standards.soldIn())),
        cures("standard-length")
            .byHand(
                Reporter.say(
                    "buy standards of %s or more and state sold-in", reporter.text(longest)),
                "price and carriage")
            .byHand(
                "state fixed-shelves so that no opening is higher than "
                    + reporter.text(standards.soldIn()),
                "a shelf that does not move")
            .list());
  }

  private Part shelf() {
    return BayBorer.shelves(built, bay).getFirst();
  }

  private Length thinnest() {
    return Length.min(built.part(bay.left()).thickness(), built.part(bay.right()).thickness());
  }

  private void add(Severity severity, String kind, String what, List<Remedy> remedies) {
    findings.add(
        reporter.finding(severity, kind, what, List.of(), Optional.empty(), bay.clear(), remedies));
  }
}
