package fourpin.boring.way;

import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.job.Tool.StripKind;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A strip that is sold with holes, made a guide by a block on it (or, for a standing case, by
 * sawing its end off square) so that one of its holes comes over the lowest level. Every m-th hole
 * from there is used, below it too where the strip is moved along, and the rest are masked. It is
 * cut a margin above the last that is needed.
 */
final class SoldGuide {

  private final Group group;
  private final PerforatedStrip strip;
  private final Stations stations;

  /** How many spaces of the strip make a pitch of the case. */
  private final int every;

  private final Across across;

  private SoldGuide(Group group, PerforatedStrip strip, Stations stations) {
    this.group = group;
    this.strip = strip;
    this.stations = stations;
    this.every = (int) group.pitch().wholeTimes(strip.pitch());
    this.across = new Across(group, strip.fromEdge(), strip.width());
  }

  /** For a strip whose pitch goes into the case's a whole number of times. */
  static Designed of(Group group, PerforatedStrip strip) {
    Length room = strip.hole().over(2);
    return Stations.of(group, room, Passing.chuck(group))
        .map(stations -> new SoldGuide(group, strip, stations).design())
        .orElseGet(() -> Designed.tooLow(group, room));
  }

  private Length block() {
    return group.isBoredAfterAssembly()
        ? Length.ZERO
        : group.settings().length(Setting.GUIDE_BLOCK);
  }

  /** The strip's first hole that leaves room for the block below the guide's first. */
  private int lowest() {
    Length below = stations.first().plus(block()).minus(strip.fromEnd());
    return below.isPositive()
        ? 1
            + (int)
                below
                    .plus(strip.pitch())
                    .minus(new Length(1, below.unit()))
                    .wholeTimes(strip.pitch())
        : 1;
  }

  /** From the guide's zero to a hole of the strip, counted from 1. */
  private Length along(int hole) {
    return stations.first().plus(strip.pitch().times((long) hole - lowest()));
  }

  /** Of the strip above the guide's zero, or as much of it as fits under every panel above. */
  private Length room() {
    Length end = strip.length().minus(strip.fromEnd()).plus(along(1));
    return stations.lowestCeiling().map(c -> Length.min(c, end)).orElse(end);
  }

  private Designed design() {
    if (across.strikesTheBack()) {
      return new Designed.Failed(tooWide());
    }
    Optional<Reason> frame = across.atTheFrame();
    if (frame.isPresent()) {
      return new Designed.Failed(frame.get());
    }
    int count = Math.min(Math.floorDiv(last(room()), every), stations.top()) + 1;
    Length length = length(count);
    int shift = lowest() - first();
    int below = count > stations.top() ? 0 : shift / every;
    Optional<Clampings> clampings =
        count < 1
            ? Optional.empty()
            : Clampings.of(
                group,
                stations,
                across,
                new Walk.Holes(below, below + count),
                length,
                i -> 1 + shift + (i - below) * every);
    return clampings
        .<Designed>map(c -> made(c, length))
        .orElseGet(() -> Designed.tooShort(group, strip.name()));
  }

  /** It can be made narrower, as long as wood stays round its holes. */
  private Reason tooWide() {
    Length behind = strip.width().minus(strip.fromEdge());
    Length room = across.beforeTheBack();
    Telling tell = new Telling(group, "strip-behind-row", "strip too wide behind its holes, by");
    String words =
        strip.name()
            + " reaches "
            + tell.stated("b", "behind its holes", behind)
            + " behind its holes, and the back stands "
            + tell.derived("r", "least from a row to the back", room)
            + " behind a row";
    boolean saws = room.isMoreThan(strip.hole().over(2));
    String narrower =
        saws
            ? "saw it to a width of "
                + tell.derived("w", "width that goes there", strip.fromEdge().plus(room))
                + " and state that, or "
            : "";
    return tell.reason(words, narrower + "bore before assembly", "b - r", behind.minus(room));
  }

  /** How many spaces of the strip from its lowest hole to the last one whole within a length. */
  private int last(Length length) {
    Length above = length.minus(strip.hole().over(2)).minus(stations.first());
    return (int) Math.min(strip.holes() - lowest(), above.wholeTimes(strip.pitch()));
  }

  /** No more than holes so many pitches apart need. */
  private Length length(int count) {
    Length top = along(lowest() + (count - 1) * every);
    Length margin = group.settings().length(Setting.GUIDE_MARGIN);
    return Length.min(room(), top.plus(Length.max(margin, strip.hole().over(2))));
  }

  /** The strip's first hole beyond the guide's zero. */
  private int first() {
    int hole = lowest();
    while (hole > 1 && along(hole - 1).isPositive()) {
      hole--;
    }
    return hole;
  }

  /** From the strip's end to the guide's. */
  private Length off() {
    return strip.fromEnd().minus(along(1)).minus(block());
  }

  /** Of the hole below the first: a maker who counts what shows would count it. */
  private Length behind() {
    Length reach = along(first() - 1).plus(strip.hole().over(2));
    return first() > 1 && reach.isPositive() ? reach : Length.ZERO;
  }

  private Designed made(Clampings clampings, Length length) {
    List<GuideHole> holes = new ArrayList<>();
    for (int hole = first(); hole <= lowest() + last(length); hole++) {
      int number = hole - first() + 1;
      holes.add(
          new GuideHole(
              number, along(hole), strip.fromEdge(), strip.hole(), use(clampings.used(), number)));
    }
    Guide guide =
        new Guide(
            group.mark(),
            new Guide.Make.Sold(strip.name(), strip.kind(), first(), off(), behind()),
            strip.kind() == StripKind.STEEL ? "perforated steel" : "perforated hardboard",
            length,
            strip.width(),
            strip.thickness(),
            holes,
            block());
    return new Designed.Made(guide, clampings.list(), clampings.mostUses());
  }

  private static Guide.Use use(Map<Integer, Long> used, int number) {
    return used.containsKey(number) ? Guide.Use.BORED : Guide.Use.MASKED;
  }
}
