package fourpin.shop.web;

import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import fourpin.job.CaseOrder;
import fourpin.job.Material;
import fourpin.measure.Length;
import fourpin.sheets.packet.Words;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.fields.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SequencedMap;

/** What a maker's wish about a case comes to in its job. */
final class Wishes {

  private Wishes() {}

  /** A shelf on another level. @return nothing if there is no such shelf or level */
  static List<Target> moved(State seen, CaseOrder order, int bay, int shelf, int level) {

    List<String> heights = new ArrayList<>(new BayFields(new AtCase(seen, order)).heights(bay));
    Optional<String> to = level(seen, order, bay, level);
    if (to.isEmpty() || shelf < 1 || shelf > heights.size()) {
      return List.of();
    }
    heights.set(shelf - 1, to.get());
    List<Value> values = heights.stream().map(Value::of).toList();
    return StatedBays.of(seen, order).shelves(bay, "at", Optional.of(Value.list(values)));
  }

  /** The upper face of a shelf on a level, as it is printed. */
  static Optional<String> level(State seen, CaseOrder order, int bay, int level) {
    Optional<BuiltCase> built = seen.built(order);
    Optional<BayGrid> grid =
        new BayFields(new AtCase(seen, order))
            .grid(bay)
            .filter(g -> level >= 1 && level <= g.levels().size());
    if (built.isEmpty() || grid.isEmpty() || grid.get().seats().isEmpty()) {
      return Optional.empty();
    }
    Part part = built.get().part(grid.get().seats().getFirst().shelf());
    Length top = grid.get().levels().get(level - 1).underside().plus(part.thickness());
    return Optional.of(BayFields.plain(new Words(seen.job()).number(top)));
  }

  /** Two bays of half the room that a partition of the case's wood leaves. */
  static List<Target> divided(State seen, CaseOrder order, int bay) {
    return divided(seen, order, bay, 1);
  }

  /** Bays of equal shares of the room that so many partitions of the case's wood leave. */
  private static List<Target> divided(State seen, CaseOrder order, int bay, int partitions) {
    Words words = new Words(seen.job());
    Length wood = thickness(seen, order).times(partitions);
    return seen.built(order)
        .flatMap(b -> b.bays().stream().filter(s -> s.number() == bay).findFirst())
        .map(BaySpace::clear)
        .map(clear -> clear.size(Axis.X).minus(wood).over(partitions + 1))
        .filter(Length::isPositive)
        .filter(_ -> order.bays().size() + partitions <= CaseOrder.MOST_BAYS)
        .map(share -> StatedBays.of(seen, order).divided(bay, partitions + 1, exact(share, words)))
        .map(bays -> HungDoors.of(order).divided(bay, partitions + 1, bays))
        .orElse(List.of());
  }

  private static Length thickness(State seen, CaseOrder order) {
    return material(seen, order.material()).thickness();
  }

  private static Material material(State seen, String name) {
    return seen.job().materials().stream()
        .filter(m -> m.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Rounded to what is printed, shares would push the other bays aside. */
  private static String exact(Length share, Words words) {
    String printed = words.number(share);
    return printed.equals(BayFields.plain(printed)) ? printed : RackFields.written(share);
  }

  /** A bay and the next as one. @return nothing if there is no next */
  static List<Target> joined(State seen, CaseOrder order, int bay) {
    boolean last = bay < 1 || bay >= order.bays().size();
    return last
        ? List.of()
        : HungDoors.of(order).joined(bay, StatedBays.of(seen, order).joined(bay));
  }

  /**
   * A bay and the next in each other's place. @return nothing if there is no next, or all are alike
   */
  static List<Target> swapped(State seen, CaseOrder order, int bay) {
    boolean last = bay < 1 || bay >= order.bays().size();
    return last ? List.of() : StatedBays.of(seen, order).swapped(bay);
  }

  /** What a cure states. */
  static List<Target> cured(
      State seen, CaseOrder order, Finding finding, Finding.Stated.One stated) {
    return switch (stated) {
      case Finding.Stated.OfSetting one -> List.of(setting(order, one));
      case Finding.Stated.OfSettings(var all) -> all.stream().map(s -> setting(order, s)).toList();
      case Finding.Stated.Partitions(int count) ->
          bayOf(seen, finding).map(bay -> divided(seen, order, bay, count)).orElse(List.of());
      case Finding.Stated.PartitionsIn(int bay, int count) -> divided(seen, order, bay, count);
      case Finding.Stated.ShelvesOf of ->
          bayOf(seen, finding).map(bay -> shelves(seen, order, bay, of)).orElse(List.of());
      case Finding.Stated.ShelvesDoubled(String of) ->
          bayOf(seen, finding)
              .map(bay -> Doubled.of(seen, order, bay, material(seen, of)))
              .orElse(List.of());
      case Finding.Stated.EverySecondBay(Finding.Moved moved, Length by) ->
          StatedBays.of(seen, order)
              .each(
                  moved.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                  bay ->
                      bay % 2 == 0
                          ? Optional.of(Value.of(RackFields.written(by)))
                          : Optional.empty());
    };
  }

  private static Target setting(CaseOrder order, Finding.Stated.OfSetting one) {
    return Target.put(
        Route.of("cases", order.name(), "settings", one.setting().key()), Value.of(one.value()));
  }

  private static List<Target> shelves(
      State seen, CaseOrder order, int bay, Finding.Stated.ShelvesOf of) {
    SequencedMap<String, Value> keys = new LinkedHashMap<>();
    of.material().ifPresent(m -> keys.put("material", Value.of(m)));
    of.strip()
        .map(strip -> EdgingWords.of(List.of(strip)))
        .or(
            () ->
                of.material()
                    .flatMap(m -> EdgingWords.on(order, bay, material(seen, m).thickness())))
        .ifPresent(edging -> keys.put("edging", edging));
    return StatedBays.of(seen, order).shelfKeys(bay, keys);
  }

  private static Optional<Integer> bayOf(State seen, Finding finding) {
    return seen.plan().grids().stream()
        .filter(g -> g.caseName().equals(finding.place().caseName()))
        .filter(
            g ->
                g.seats().stream()
                    .anyMatch(s -> finding.place().part().equals(Optional.of(s.shelf()))))
        .map(BayGrid::bay)
        .min(Comparator.naturalOrder());
  }
}
