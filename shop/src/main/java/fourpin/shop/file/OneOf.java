package fourpin.shop.file;

import fourpin.shop.yaml.Yaml;
import java.util.Map;
import java.util.Optional;

/**
 * A group of keys that is one of several kinds, each with keys of its own.
 *
 * @param what it is, whatever its kind: "a tool"
 * @param forms by the word that stands under {@link #KEY}, in the order of the documents; each has
 *     that key too
 */
public record OneOf<T>(String what, Map<String, Form<? extends T>> forms) implements Kind<T> {

  /** The key that tells the kind. */
  public static final String KEY = "kind";

  @Override
  public Optional<T> read(Spot spot) {
    if (!(spot.value() instanceof Yaml.Entries entries)) {
      return spot.refuse(
          "a group of keys is expected, not " + spot.value().what(),
          "write its keys on lines of their own below, the first kind: " + example());
    }
    return entries.entry(KEY).map(e -> ofKind(spot.at(e), spot)).orElseGet(() -> without(spot));
  }

  private String example() {
    return forms.keySet().iterator().next();
  }

  private Optional<T> ofKind(Spot kind, Spot spot) {
    return Words.choice(forms).read(kind).flatMap(form -> form.read(spot));
  }

  private Optional<T> without(Spot spot) {
    spot.refuseAt(
        spot.value().place(),
        spot.path().name(),
        "the key " + KEY + " is missing",
        "state " + KEY + ": one of " + String.join(", ", forms.keySet()));
    return Optional.empty();
  }
}
