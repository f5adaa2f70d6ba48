package fourpin.shop.file;

import fourpin.shop.yaml.Yaml;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A list; one item may stand alone without the list.
 *
 * @param most items
 */
public record ListOf<T>(Kind<T> item, int most) implements Kind<List<T>> {

  @Override
  public String what() {
    return "a list; of each, " + item.what();
  }

  @Override
  public Optional<List<T>> read(Spot spot) {
    return spot.value() instanceof Yaml.Items items
        ? all(items.items(), spot)
        : item.read(spot).map(List::of);
  }

  private Optional<List<T>> all(List<Yaml> items, Spot spot) {
    if (items.isEmpty() || items.size() > most) {
      return spot.refuse(
          "the list has from 1 to " + most + " items, not " + items.size(),
          items.isEmpty()
              ? "list one at least, or leave out a key that may be missing"
              : "leave some out");
    }
    List<T> good = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      item.read(spot.item(items.get(i), i + 1)).ifPresent(good::add);
    }
    return good.size() == items.size() ? Optional.of(good) : Optional.empty();
  }
}
