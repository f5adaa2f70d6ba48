package fourpin.shop.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/** What stands in a file, apart from how it is laid out. Two are equal if they mean the same. */
public sealed interface Value {

  /** One value, without quotes. */
  record Text(String text) implements Value {}

  /** YAML's word for nothing, or no word at all. */
  record Nothing() implements Value {}

  /** A list. */
  record Items(List<Value> items) implements Value {
    public Items {
      items = List.copyOf(items);
    }
  }

  /** Values under keys; their order is kept and means nothing. */
  record Group(SequencedMap<String, Value> entries) implements Value {
    public Group {
      entries = new LinkedHashMap<>(entries);
    }
  }

  static Value of(String text) {
    return new Text(text);
  }

  static Value of(int number) {
    return new Text(Integer.toString(number));
  }

  static Value list(List<? extends Value> items) {
    return new Items(List.copyOf(items));
  }

  /** Keys and values in turn. */
  static Value group(Map<String, ? extends Value> entries) {
    return new Group(new LinkedHashMap<>(entries));
  }

  /** It on one line; of a group its keys. */
  default String words() {
    return switch (this) {
      case Text(String text) -> text;
      case Nothing() -> "nothing";
      case Items(var items) -> String.join(", ", items.stream().map(Value::words).toList());
      case Group(var entries) -> String.join(", ", entries.keySet());
    };
  }

  /** The value at the end of a way, if all of the way is there. */
  default Optional<Value> at(Route route) {
    Optional<Value> found = Optional.of(this);
    for (Route.Step step : route.steps()) {
      found = found.flatMap(value -> value.next(step));
    }
    return found;
  }

  private Optional<Value> next(Route.Step step) {
    return switch (step) {
      case Route.Key(String name) ->
          this instanceof Group group
              ? Optional.ofNullable(group.entries().get(name))
              : Optional.empty();
      case Route.Item(int number, int of) ->
          this instanceof Items list && list.items().size() == of && number <= of
              ? Optional.of(list.items().get(number - 1))
              : Optional.empty();
    };
  }

  /**
   * The same with something else, or nothing, at the end of a way. Groups that are missing on the
   * way are made; an item one behind the last, or one put where there is another, moves those
   * behind it on.
   *
   * @throws IllegalArgumentException if the way does not lead there
   */
  default Value with(Route route, Change change) {
    return route.isEmpty() ? change.value().orElse(new Nothing()) : with(route, 0, change);
  }

  private Value with(Route route, int depth, Change change) {
    boolean last = depth == route.steps().size() - 1;
    return switch (route.steps().get(depth)) {
      case Route.Key(String name) when this instanceof Group(var entries) -> {
        SequencedMap<String, Value> changed = new LinkedHashMap<>(entries);
        Value empty = new Group(new LinkedHashMap<>());
        if (last && change instanceof Change.Rename(String to)) {
          yield renamed(entries, name, to);
        } else if (last) {
          change.value().ifPresentOrElse(v -> changed.put(name, v), () -> changed.remove(name));
        } else {
          changed.put(name, changed.getOrDefault(name, empty).with(route, depth + 1, change));
        }
        yield new Group(changed);
      }
      case Route.Item(int number, int of) when this instanceof Items(var items) -> {
        List<Value> changed = new ArrayList<>(items);
        if (last) {
          change.on(changed, number);
        } else {
          changed.set(number - 1, changed.get(number - 1).with(route, depth + 1, change));
        }
        yield new Items(changed);
      }
      default -> throw new IllegalArgumentException("there is no " + route.text() + " here");
    };
  }

  private static Value renamed(SequencedMap<String, Value> entries, String name, String to) {
    if (!entries.containsKey(name) || entries.containsKey(to)) {
      throw new IllegalArgumentException(name + " cannot be called " + to);
    }
    SequencedMap<String, Value> changed = new LinkedHashMap<>();
    entries.forEach((key, value) -> changed.put(key.equals(name) ? to : key, value));
    return new Group(changed);
  }
}
