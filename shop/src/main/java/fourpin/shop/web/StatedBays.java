package fourpin.shop.web;

import fourpin.job.CaseOrder;
import fourpin.shop.edit.Change;
import fourpin.shop.edit.Edit;
import fourpin.shop.edit.Edited;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.fields.Target;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * The bays of a case as its file states them, one by one or only by their number.
 *
 * @param count how many there are
 */
record StatedBays(JobText text, Route aCase, int count) {

  private static final Value EMPTY = new Value.Group(new LinkedHashMap<>());

  private static final List<String> OF_THE_PLACE = List.of("rows-back", "levels-up");

  static StatedBays of(State state, CaseOrder order) {
    return new StatedBays(state.text(), Route.of("cases", order.name()), order.bays().size());
  }

  private Route all() {
    return aCase.to("bays");
  }

  private Optional<List<Value>> list() {
    return text.value(all())
        .flatMap(
            v ->
                v instanceof Value.Items(var items)
                    ? Optional.of(items)
                    : v instanceof Value.Group ? Optional.of(List.of(v)) : Optional.empty());
  }

  private boolean hasOwnRoutes() {
    return text.value(all()).orElse(EMPTY) instanceof Value.Items;
  }

  /** The job with every bay in a list of its own words, as it may be written too. */
  JobText spelledOut() {
    Edit edit = Edit.on(text, all(), new Change.Put(Value.list(each())));
    return !hasOwnRoutes() && text.with(edit) instanceof Edited.Done(JobText made, _) ? made : text;
  }

  /** Where a bay stands in the job that is spelled out. @param bay from 1 */
  Route item(int bay) {
    return all().item(bay, count);
  }

  /** Changes of the job that is spelled out, made to the job as it is written. */
  List<Target> asWritten(List<Target> targets) {
    if (hasOwnRoutes() || targets.isEmpty()) {
      return targets;
    }
    Value changed = spelledOut().value();
    for (Target target : targets) {
      changed = changed.with(target.route(), target.change());
    }
    return changed.at(all()).orElse(EMPTY) instanceof Value.Items(var bays)
        ? List.of(put(bays))
        : List.of();
  }

  /** What a bay states under a key. @param bay from 1 */
  Optional<Value> value(int bay, String key) {
    return list().flatMap(l -> l.get(bay - 1).at(Route.of(key)));
  }

  /** Puts something under a key of a bay, or takes it away. */
  List<Target> with(int bay, String key, Optional<Value> now) {
    if (now.isEmpty() && value(bay, key).isEmpty()) {
      return List.of();
    }
    if (hasOwnRoutes()) {
      Route route = all().item(bay, count).to(key);
      return List.of(
          new Target(route, now.<Change>map(Change.Put::new).orElseGet(Change.Remove::new)));
    }
    return List.of(put(replaced(each(), bay, keyed(each().get(bay - 1), key, now))));
  }

  /** All of them, however they are stated. */
  private List<Value> each() {
    return list().orElseGet(() -> Collections.nCopies(count, EMPTY));
  }

  private Target put(List<Value> bays) {
    boolean plain = bays.stream().allMatch(EMPTY::equals);
    return new Target(all(), new Change.Put(plain ? Value.of(bays.size()) : Value.list(bays)));
  }

  private static List<Value> replaced(List<Value> bays, int bay, Value... with) {
    List<Value> changed = new ArrayList<>(bays);
    changed.remove(bay - 1);
    changed.addAll(bay - 1, List.of(with));
    return changed;
  }

  private static Value keyed(Value bay, String key, Optional<Value> now) {
    SequencedMap<String, Value> entries =
        new LinkedHashMap<>(bay instanceof Value.Group(var e) ? e : new LinkedHashMap<>());
    now.ifPresentOrElse(v -> entries.put(key, v), () -> entries.remove(key));
    return new Value.Group(entries);
  }

  /** So many bays: new ones on the right, or fewer from there. */
  Target resized(int wanted) {
    List<Value> bays = new ArrayList<>(each());
    while (bays.size() > wanted) {
      bays.removeLast();
    }
    while (bays.size() < wanted) {
      bays.add(EMPTY);
    }
    return put(bays);
  }

  /**
   * Several bays in place of one, alike in all else.
   *
   * @param width of each; the others stay as they are
   */
  Target divided(int bay, int into, String width) {
    Value each =
        count == 1 ? open(1) : keyed(each().get(bay - 1), "width", Optional.of(Value.of(width)));
    return put(replaced(each(), bay, Collections.nCopies(into, each).toArray(Value[]::new)));
  }

  /** One bay in place of this and the next. */
  Target joined(int bay) {
    List<Value> fewer = replaced(each(), bay, open(bay));
    fewer.remove(bay);
    return put(fewer);
  }

  /**
   * This bay and the next in each other's place. Which rows stand off those of their neighbours is
   * of the place and stays, so that holes in a partition meet no more than before.
   */
  List<Target> swapped(int bay) {
    if (!hasOwnRoutes()) {
      return List.of();
    }
    return List.of(
        new Target(item(bay), new Change.Put(moved(bay + 1, bay))),
        new Target(item(bay + 1), new Change.Put(moved(bay, bay + 1))));
  }

  private Value moved(int from, int to) {
    Value moved = each().get(from - 1);
    for (String key : OF_THE_PLACE) {
      if (value(from, key).isPresent() || value(to, key).isPresent()) {
        moved = keyed(moved, key, value(to, key));
      }
    }
    return moved;
  }

  private Value open(int bay) {
    return keyed(each().get(bay - 1), "width", Optional.empty());
  }

  /**
   * The shelves of one bay, so many or at some heights; what else is said of them stays.
   *
   * @param key count or at
   */
  List<Target> shelves(int bay, String key, Optional<Value> now) {
    Optional<Value> former = value(bay, "shelves");
    SequencedMap<String, Value> entries = new LinkedHashMap<>();
    if (former.isPresent() && former.get() instanceof Value.Group(var stated)) {
      entries.putAll(stated);
    }
    entries.remove("count");
    entries.remove("at");
    now.ifPresent(v -> entries.put(key, v));
    boolean onlyCount = entries.keySet().equals(java.util.Set.of("count"));
    Optional<Value> value =
        onlyCount
            ? now
            : entries.isEmpty() ? Optional.empty() : Optional.of(new Value.Group(entries));
    return with(bay, "shelves", value);
  }

  /** A key of every bay. @param now what it is in the bay of that number; nothing takes it away */
  List<Target> each(String key, IntFunction<Optional<Value>> now) {
    if (hasOwnRoutes()) {
      return IntStream.rangeClosed(1, count)
          .boxed()
          .flatMap(bay -> with(bay, key, now.apply(bay)).stream())
          .toList();
    }
    List<Value> all = new ArrayList<>();
    for (Value bay : each()) {
      all.add(keyed(bay, key, now.apply(all.size() + 1)));
    }
    return List.of(put(all));
  }

  /** Keys of the shelves of a bay, where it states those itself; else of the shelves of all. */
  List<Target> shelfKeys(int bay, Map<String, Value> keys) {
    Optional<Value> own = value(bay, "shelves");
    Route ofCase = aCase.to("shelves");
    Optional<Value> shared = text.value(ofCase);
    boolean statesThem =
        keys.keySet().stream().anyMatch(k -> own.flatMap(v -> v.at(Route.of(k))).isPresent());
    if (statesThem || shared.isEmpty()) {
      return with(bay, "shelves", own.map(v -> shelves(v, keys)));
    }
    return shared.get() instanceof Value.Text
        ? List.of(Target.put(ofCase, shelves(shared.get(), keys)))
        : keys.entrySet().stream()
            .map(e -> Target.put(ofCase.to(e.getKey()), e.getValue()))
            .toList();
  }

  /** A number alone is a count. */
  private static Value shelves(Value former, Map<String, Value> keys) {
    SequencedMap<String, Value> entries = new LinkedHashMap<>();
    if (former instanceof Value.Group(var stated)) {
      entries.putAll(stated);
    } else {
      entries.put("count", former);
    }
    entries.putAll(keys);
    return new Value.Group(entries);
  }
}
