package fourpin.shop.file;

import fourpin.shop.yaml.Problem;
import fourpin.shop.yaml.Yaml;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

/** The values of a group of keys that were read. */
final class Values {

  private final Spot spot;
  private final Map<Key<?>, Object> read = new IdentityHashMap<>();

  Values(Spot spot) {
    this.spot = spot;
  }

  /** Reads the value of a key; one that is refused is not there. */
  <T> void read(Key<T> key, Yaml.Entry entry) {
    key.kind().read(spot.at(entry)).ifPresent(v -> read.put(key, v));
  }

  /** The value of a required key. */
  <T> T get(Key<T> key) {
    return find(key).orElseThrow(() -> new IllegalStateException(key.name() + " was not read"));
  }

  /** Only {@link #read} puts values in, each under its own key. */
  @SuppressWarnings("unchecked")
  <T> Optional<T> find(Key<T> key) {
    return Optional.ofNullable((T) read.get(key));
  }

  /** The value of a required key that is a single word, as it is written in the file. */
  String stated(Key<?> key) {
    return spot(key).value() instanceof Yaml.Text text ? Problem.quoted(text.text()) : "";
  }

  /** Notes at a key what does not hold between it and the other keys of the group. */
  void require(boolean holds, Key<?> key, String rule, String remedy) {
    if (!holds) {
      spot(key).refuse(rule, remedy);
    }
  }

  /** What the group stands under. */
  String name() {
    return spot.key();
  }

  Context context() {
    return spot.context();
  }

  /** The group itself. */
  Spot spot() {
    return spot;
  }

  /** The value of a key as it stands in the file; the group where the key is not there. */
  Spot spot(Key<?> key) {
    return spot.value() instanceof Yaml.Entries entries
        ? entries.entry(key.name()).map(spot::at).orElse(spot)
        : spot;
  }
}
