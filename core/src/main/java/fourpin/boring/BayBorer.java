package fourpin.boring;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Run;
import fourpin.boring.BayGrid.Seat;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BaySpace.Opening;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.Bay;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Shelves;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The pattern of one bay, and its shelves on their levels. */
final class BayBorer {

  private final BuiltCase built;
  private final BaySpace bay;
  private final CasePattern pattern;
  private final Reporter reporter;
  private final Support support;
  private final Shelves.Placing placing;
  private final List<Part> shelves;
  private final Map<String, Length> seats = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final BayGrid grid;

  BayBorer(BuiltCase built, BaySpace bay, CasePattern pattern, Reporter reporter) {
    this.built = built;
    this.bay = bay;
    this.pattern = pattern;
    this.reporter = reporter;
    Bay stated = built.order().bays().get(bay.number() - 1);
    this.support = stated.supports().orElseThrow();
    this.placing = stated.shelves().orElseThrow().placing();
    this.shelves = shelves(built, bay);
    this.grid = work();
  }

  /**
   * The adjustable shelves of a bay, from the bottom up; none if the bay states no supports for
   * them.
   */
  static List<Part> shelves(BuiltCase built, BaySpace bay) {
    if (built.order().bays().get(bay.number() - 1).supports().isEmpty()) {
      return List.of();
    }
    String start = bay.number() + "-S";
    return built.parts().stream()
        .filter(p -> p.role() == Part.Role.SHELF && p.mark().startsWith(start))
        .toList();
  }

  private Bay stated() {
    return built.order().bays().get(bay.number() - 1);
  }

  BayGrid grid() {
    return grid;
  }

  List<Finding> findings() {
    return findings;
  }

  /** The shelves of the bay, each on its level; one without a level stays where it was planned. */
  List<Part> seated() {
    return shelves.stream().map(this::onItsLevel).toList();
  }

  private Part onItsLevel(Part shelf) {
    Length level = seats.get(shelf.mark());
    return level == null
        ? shelf
        : shelf.shifted(Axis.Z, level.plus(rise(support)).minus(shelf.box().low().z()));
  }

  private BayGrid work() {
    List<List<Length>> possible = new ArrayList<>();
    bay.openings().forEach(o -> possible.add(heights(o)));
    List<Length> all = possible.stream().flatMap(List::stream).toList();
    Set<Length> kept = new TreeSet<>();
    for (int i = 0; i < possible.size(); i++) {
      List<Length> heights = isSlotted() ? possible.get(i) : pattern.balanced(possible.get(i), all);
      kept.addAll(keep(heights, seat(bay.openings().get(i), heights)));
    }
    return grid(withPartners(kept, all));
  }

  /** Slots come with the standard; holes and notches follow the lattice. */
  private List<Length> heights(Opening opening) {
    if (!(support instanceof Support.Standards standards)) {
      return pattern.heights(bay, opening, stated().levelsUp());
    }
    Length first = opening.clear().low().z().plus(standards.firstSlot());
    return new Lattice(first, standards.slotPitch()).within(first, opening.clear().high().z());
  }

  private boolean isSlotted() {
    return support instanceof Support.Standards;
  }

  /** Seats the shelves of one opening and gives the indices of their levels. */
  private List<Integer> seat(Opening opening, List<Length> heights) {
    List<Part> here = shelves.stream().filter(s -> opening.equals(openingOf(s))).toList();
    if (here.isEmpty()) {
      return List.of();
    }
    List<Length> undersides = heights.stream().map(h -> h.plus(rise(support))).toList();
    Optional<List<Integer>> chosen = Seating.choose(opening.clear(), here, undersides, placing);
    if (chosen.isEmpty()) {
      findings.add(unseated(opening, here, undersides));
      return List.of();
    }
    for (int i = 0; i < here.size(); i++) {
      seats.put(here.get(i).mark(), heights.get(chosen.get().get(i)));
      moved(here.get(i), undersides.get(chosen.get().get(i))).ifPresent(findings::add);
    }
    return chosen.get();
  }

  /** A height that was asked for and lies over half a pitch from every level left to the shelf. */
  private Optional<Finding> moved(Part shelf, Length underside) {
    Length by = underside.minus(shelf.box().low().z());
    if (placing instanceof Shelves.Placing.Evenly || !by.abs().times(2).isMoreThan(pitch())) {
      return Optional.empty();
    }
    Length wanted = shelf.box().high().z();
    String words = "%s is wanted at %s, where there is no level for it: it lies at %s, %s %s.";
    return Optional.of(
        reporter.finding(
            Severity.DOUBT,
            "shelf-moved",
            Reporter.say(
                words,
                shelf.mark(),
                reporter.text(wanted),
                reporter.text(wanted.plus(by)),
                reporter.text(by.abs()),
                by.isNegative() ? "lower" : "higher"),
            List.of(),
            Optional.of(shelf.mark()),
            shelf.box(),
            movedRemedies(wanted.plus(by))));
  }

  private List<Finding.Remedy> movedRemedies(Length lies) {
    Finding.Remedy asked = Reporter.remedy("ask for it at " + reporter.text(lies), "nothing");
    return isSlotted()
        ? List.of(asked)
        : List.of(
            asked,
            Reporter.remedy(
                "set clear-below or clear-above to less, so that there are holes near its height",
                "holes nearer to the joints"));
  }

  private Opening openingOf(Part shelf) {
    Length middle = shelf.box().low().z().plus(shelf.box().high().z()).over(2);
    return bay.openings().stream()
        .filter(o -> middle.isLessThan(o.clear().high().z()))
        .findFirst()
        .orElse(bay.openings().getLast());
  }

  private List<Length> keep(List<Length> heights, List<Integer> seated) {
    if (isSlotted() || !settings().choice(Setting.ROWS).equals("grouped")) {
      return heights;
    }
    int reach = settings().count(Setting.GROUP) / 2;
    Set<Length> kept = new LinkedHashSet<>();
    for (int at : seated) {
      kept.addAll(
          heights.subList(Math.max(0, at - reach), Math.min(heights.size(), at + reach + 1)));
    }
    return List.copyOf(kept);
  }

  /** Groups of balanced rows get their like at the other end. */
  private List<Length> withPartners(Set<Length> kept, List<Length> all) {
    Set<Length> both = new TreeSet<>(kept);
    if (!isSlotted() && CasePattern.isBalanced(settings())) {
      kept.stream().map(pattern::turned).filter(all::contains).forEach(both::add);
    }
    return List.copyOf(both);
  }

  private BayGrid grid(List<Length> heights) {
    List<Level> levels = new ArrayList<>();
    for (Length height : heights) {
      levels.add(new Level(levels.size() + 1, height, height.plus(rise(support))));
    }
    return new BayGrid(
        built.order().name(),
        bay.number(),
        support,
        ShelfRows.of(shelves.getFirst().box(), support, settings(), stated().rowsBack()),
        levels,
        pitch(),
        diameter(),
        depth(),
        runs(),
        seats.entrySet().stream()
            .map(e -> new Seat(e.getKey(), heights.indexOf(e.getValue()) + 1))
            .toList());
  }

  private Length pitch() {
    return support instanceof Support.Standards s ? s.slotPitch() : pattern.lattice().pitch();
  }

  /** From the height of a level to the underside of a shelf that lies there. */
  static Length rise(Support support) {
    return switch (support) {
      case Support.Pins pins -> pins.rise();
      case Support.Sleeved sleeved -> sleeved.pins().rise();
      case Support.Standards standards -> standards.clipRise();
      // The cleat lies on the lowest point of the notch.
      case Support.Cleats cleats -> cleats.cleatHeight().minus(cleats.bore().over(2));
    };
  }

  private Length diameter() {
    return support instanceof Support.Cleats cleats ? cleats.bore() : support.breadth(settings());
  }

  private Length depth() {
    return switch (support) {
      case Support.Pins _ -> settings().length(Setting.HOLE_DEPTH);
      case Support.Sleeved sleeved -> sleeved.length();
      case Support.Standards standards ->
          standards.mounting() == Support.Mounting.LET_IN ? standards.thickness() : Length.ZERO;
      case Support.Cleats _ -> Length.ZERO;
    };
  }

  /** Standards and strips fill the clear height of each opening. */
  private List<Run> runs() {
    boolean upright = isSlotted() || support instanceof Support.Cleats;
    return upright
        ? bay.openings().stream()
            .map(o -> new Run(o.clear().low().z(), o.clear().high().z()))
            .toList()
        : List.of();
  }

  private Settings settings() {
    return pattern.settings();
  }

  private Finding unseated(Opening opening, List<Part> here, List<Length> undersides) {
    int most = most(opening, here, undersides);
    Box clear = opening.clear();
    String size = reporter.text(clear.size(Axis.Z));
    String words =
        undersides.isEmpty()
            ? Reporter.say(
                "Bay %d has no place for a level between %s and %s: the opening is %s high.",
                bay.number(), opening.below(), opening.above(), size)
            : Reporter.say(
                "Bay %d has %d shelves between %s and %s, but its %d levels in %s take only %d.",
                bay.number(),
                here.size(),
                opening.below(),
                opening.above(),
                undersides.size(),
                size,
                most);
    return reporter.finding(
        Severity.ERROR,
        undersides.isEmpty() ? "no-level" : "too-many-shelves",
        words,
        List.of(),
        Optional.empty(),
        clear,
        seatRemedies(clear, here, most));
  }

  private int most(Opening opening, List<Part> here, List<Length> undersides) {
    int most = here.size();
    while (most > 0
        && Seating.choose(opening.clear(), here.subList(0, most), undersides, placing).isEmpty()) {
      most--;
    }
    return most;
  }

  private List<Finding.Remedy> seatRemedies(Box clear, List<Part> here, int most) {
    Cures cures =
        new Cures(reporter, most == 0 ? "no-level" : "too-many-shelves", Optional.empty());
    cures.byHand(
        most == 0 ? "leave the shelves of this opening out" : "plan " + most + " here",
        here.size() - most + " fewer");
    Length stack = here.getFirst().box().size(Axis.Z).times(here.size());
    Length room = clear.size(Axis.Z).minus(stack).over(here.size() + 1L);
    Length last = clear.high().z().minus(settings().length(Setting.CLEAR_ABOVE));
    if (pattern.startsAbove(last) && !isSlotted()) {
      cures
          .setting(Setting.FIRST_HOLE, reporter.roundedDown(last), "every level of the case moves")
          .byHand("leave first-hole out", "every level of the case moves");
    } else if (!isSlotted() && room.isPositive()) {
      Length zone = reporter.roundedDown(room);
      Length pitch = reporter.roundedDown(finest(here, room));
      cures.stated(
          Reporter.say(
              "set clear-below and clear-above to %s and pitch to %s",
              reporter.text(zone), reporter.text(pitch)),
          "more holes; openings of about " + reporter.text(room),
          new Stated.OfSettings(
              List.of(
                  new Stated.OfSetting(Setting.CLEAR_BELOW, reporter.text(zone)),
                  new Stated.OfSetting(Setting.CLEAR_ABOVE, reporter.text(zone)),
                  new Stated.OfSetting(Setting.PITCH, reporter.text(pitch)))),
          o -> o.with(closer(o.settings(), zone, pitch)));
    }
    return cures.list();
  }

  private static Settings closer(Settings settings, Length zone, Length pitch) {
    return settings
        .with(Setting.CLEAR_BELOW, new SettingValue.OfLength(zone))
        .with(Setting.CLEAR_ABOVE, new SettingValue.OfLength(zone))
        .with(Setting.PITCH, new SettingValue.OfLength(pitch));
  }

  private static Length finest(List<Part> here, Length room) {
    return room.plus(here.getFirst().box().size(Axis.Z)).over(2);
  }
}
