package fourpin.shop.fields;

import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Where a group of keys stands or would stand.
 *
 * @param shortKey the key for which a single value may stand in place of the group; empty for none
 */
record Slot(JobText text, Route route, String shortKey) {

  Optional<Value> value() {
    return text.value(route);
  }

  private boolean isShort() {
    return !shortKey.isEmpty() && value().map(v -> v instanceof Value.Text).orElse(false);
  }

  Optional<Value> value(String key) {
    return isShort()
        ? value().filter(_ -> key.equals(shortKey))
        : value().flatMap(v -> v.at(Route.of(key)));
  }

  /** What stands under a key, as it would be typed. */
  String written(String key) {
    return value(key).map(Slot::words).orElse("");
  }

  private static String words(Value value) {
    return switch (value) {
      case Value.Text(String word) -> word;
      case Value.Nothing() -> "";
      case Value.Items(var items) -> String.join(", ", items.stream().map(Slot::words).toList());
      case Value.Group _ -> "";
    };
  }

  /** Puts a value under a key, or takes it away. */
  List<Target> with(String key, Optional<Value> now) {
    return now.map(v -> List.of(put(key, v))).orElseGet(() -> without(key));
  }

  private Target put(String key, Value now) {
    boolean bare = key.equals(shortKey) && (isShort() || value().isEmpty());
    if (bare) {
      return Target.put(route, now);
    }
    return isShort() ? Target.put(route, lengthened(key, now)) : Target.put(route.to(key), now);
  }

  private Value lengthened(String key, Value now) {
    LinkedHashMap<String, Value> group = new LinkedHashMap<>();
    group.put(shortKey, value().orElseThrow());
    group.put(key, now);
    return Value.group(group);
  }

  /** A group with nothing left in it goes too. */
  private List<Target> without(String key) {
    if (value(key).isEmpty()) {
      return List.of();
    }
    boolean only =
        isShort()
            || (!route.isEmpty()
                && value().orElseThrow() instanceof Value.Group(var entries)
                && entries.size() == 1);
    return List.of(Target.remove(only ? route : route.to(key)));
  }
}
