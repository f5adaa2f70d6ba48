package fourpin.boring.way;

import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Station.Run;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.GuideStock;
import fourpin.measure.Length;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;

/** A guide that is cut and bored in the shop: one column of holes at the levels of the group. */
final class MadeGuide {

  private final Group group;
  private final GuideStock stock;
  private final Length hole;
  private final Length room;
  private final Passing passing;

  private MadeGuide(Group group, GuideStock stock, Length hole, Passing passing) {
    this.group = group;
    this.stock = stock;
    this.passing = passing;
    this.hole = hole;
    this.room = hole.over(2).plus(group.settings().length(Setting.GUIDE_WEB));
  }

  /**
   * @param hole diameter of the guide's holes
   */
  static Designed of(Group group, GuideStock stock, Length hole, Passing passing) {
    MadeGuide guide = new MadeGuide(group, stock, hole, passing);
    return Stations.of(group, guide.room, passing)
        .map(guide::design)
        .orElseGet(() -> Designed.tooLow(group, guide.room));
  }

  private Designed design(Stations stations) {
    Across across = Across.made(group, room);
    Optional<Reason> narrow = narrow(across);
    if (narrow.isPresent()) {
      return new Designed.Failed(narrow.get());
    }
    int most = count(stations);
    if (most < 1) {
      return tooShort();
    }
    return most > stations.top() ? whole(stations, across) : moved(stations, across, most);
  }

  /** As long as the longest row, with those holes alone that are bored through. */
  private Designed whole(Stations stations, Across across) {
    TreeSet<Integer> bored = new TreeSet<>();
    stations.list().forEach(s -> bored.addAll(s.run().levels()));
    Walk.Holes holes = new Walk.Holes(0, stations.top() + 1);
    return lay(stations, across, holes, i -> bored.headSet(i).size() + 1)
        .<Designed>map(c -> made(stations, across, length(stations, holes), bored, c))
        .orElseGet(this::tooShort);
  }

  /** Moved along: any of its holes may come over a level. */
  private Designed moved(Stations stations, Across across, int most) {
    Map<Run, Long> runs = stations.runs();
    return new FewestMoves(
            below(stations), most, holes -> places(runs, holes, length(stations, holes)))
        .holes()
        .<Designed>map(holes -> moved(stations, across, holes))
        .orElseGet(this::tooShort);
  }

  private OptionalLong places(Map<Run, Long> runs, Walk.Holes holes, Length length) {
    long places = 0;
    for (Map.Entry<Run, Long> alike : runs.entrySet()) {
      Run run = alike.getKey();
      OptionalInt one = Walk.count(run.levels(), holes, run.room(length, group.pitch()));
      if (one.isEmpty()) {
        return OptionalLong.empty();
      }
      places += alike.getValue() * one.getAsInt();
    }
    return OptionalLong.of(places);
  }

  private Designed moved(Stations stations, Across across, Walk.Holes holes) {
    Clampings clampings = lay(stations, across, holes).orElseThrow();
    return made(stations, across, length(stations, holes), all(holes), clampings);
  }

  private Optional<Clampings> lay(Stations stations, Across across, Walk.Holes holes) {
    return lay(stations, across, holes, i -> i + 1);
  }

  private Optional<Clampings> lay(
      Stations stations, Across across, Walk.Holes holes, IntUnaryOperator number) {
    return Clampings.of(group, stations, across, holes, length(stations, holes), number);
  }

  private Designed tooShort() {
    return Designed.tooShort(group, "a guide from " + stock.name());
  }

  /** In pitches above the lowest level. */
  private static TreeSet<Integer> all(Walk.Holes holes) {
    TreeSet<Integer> all = new TreeSet<>();
    for (int i = -holes.below(); i < holes.above(); i++) {
      all.add(i);
    }
    return all;
  }

  private Optional<Reason> narrow(Across across) {
    if (across.width().isMoreThan(stock.width())) {
      return Optional.of(wider(across));
    }
    return across.strikesTheBack() ? Optional.of(atTheBack(across)) : across.atTheFrame();
  }

  private Reason wider(Across across) {
    Telling tell = new Telling(group, "guide-over-stock", "guide wider than its stock, by");
    return tell.reason(
        "the guide is "
            + tell.derived("g", "width of the guide", across.width())
            + " wide and "
            + stock.name()
            + " is "
            + tell.stated("s", "width of " + stock.name(), stock.width()),
        "take wider stock",
        "g - s",
        across.width().minus(stock.width()));
  }

  private Reason atTheBack(Across across) {
    Telling tell =
        new Telling(group, "guide-behind-row", "what the guide needs between a row and its edge");
    String wide = tell.across("d", "diameter of the guide's holes", hole, Source.GEOMETRY);
    tell.set("w", Setting.GUIDE_WEB);
    return tell.reason(
        "the back row lies too near to the back for a guide with holes of " + wide,
        "bore before assembly",
        "d / 2 + w",
        across.width().minus(across.column()));
  }

  private Length block() {
    return group.isBoredAfterAssembly()
        ? Length.ZERO
        : group.settings().length(Setting.GUIDE_BLOCK);
  }

  private Length margin() {
    return Length.max(
        room, Length.max(passing.end(), group.settings().length(Setting.GUIDE_MARGIN)));
  }

  /** How many holes a pitch apart there is length for, and no more than the levels want. */
  private int count(Stations stations) {
    Length fromStock = stock.length().minus(block()).minus(margin());
    Length last =
        stations
            .lowestCeiling()
            .map(ceiling -> Length.min(fromStock, ceiling.minus(room)))
            .orElse(fromStock);
    long holes = last.minus(stations.first()).wholeTimes(group.pitch()) + 1;
    return (int) Math.min(holes, stations.top() + 1L);
  }

  /** Holes that there is room for below the first; what holds the bit stands on the guide there. */
  private int below(Stations stations) {
    Length room = stations.first().minus(Length.max(this.room, passing.block()));
    return room.isPositive() ? (int) room.wholeTimes(group.pitch()) : 0;
  }

  private Length length(Stations stations, Walk.Holes holes) {
    Length wished = stations.first().plus(group.pitch().times(holes.above() - 1L)).plus(margin());
    return stations.lowestCeiling().map(c -> Length.min(c, wished)).orElse(wished);
  }

  private Designed made(
      Stations stations,
      Across across,
      Length length,
      TreeSet<Integer> bored,
      Clampings clampings) {
    List<GuideHole> holes = new ArrayList<>();
    for (int at : bored) {
      holes.add(
          new GuideHole(
              holes.size() + 1,
              stations.first().plus(group.pitch().times(at)),
              across.column(),
              hole,
              Guide.Use.BORED));
    }
    Guide guide =
        new Guide(
            group.mark(),
            new Guide.Make.Bored(stock.name()),
            stock.material(),
            length,
            across.width(),
            stock.thickness(),
            holes,
            block());
    return new Designed.Made(guide, clampings.list(), clampings.mostUses());
  }
}
