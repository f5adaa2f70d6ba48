package fourpin.shop.file;

import fourpin.measure.Reading;
import fourpin.shop.yaml.FileKind;
import fourpin.shop.yaml.Path;
import fourpin.shop.yaml.Place;
import fourpin.shop.yaml.Problem;
import fourpin.shop.yaml.Yaml;
import java.util.List;
import java.util.Optional;

/**
 * A value in the file while it is read: knows what it is called and takes complaints about it.
 *
 * @param key the key or number that it stands under
 * @param problems where complaints go
 */
record Spot(Yaml value, Path path, String key, Context context, List<Problem> problems) {

  static Spot top(FileKind file, Yaml.Entries root, Context context, List<Problem> problems) {
    return new Spot(root, Path.top(file), "", context, problems);
  }

  Spot at(Yaml.Entry entry) {
    String name = entry.key().text();
    return new Spot(entry.value(), path.to(name), name, context, problems);
  }

  Spot item(Yaml item, int number) {
    return new Spot(item, path.item(number), Integer.toString(number), context, problems);
  }

  /** Notes what is wrong with the value; nothing comes of it. */
  <T> Optional<T> refuse(String rule, String remedy) {
    problems.add(new Problem(value.place(), thing(), rule, remedy));
    return Optional.empty();
  }

  /** Notes what is wrong at another place, about what stands there. */
  void refuseAt(Place place, String thing, String rule, String remedy) {
    problems.add(new Problem(place, thing, rule, remedy));
  }

  <T> Optional<T> take(Reading<T> reading) {
    return switch (reading) {
      case Reading.Good<T>(T good) -> Optional.of(good);
      case Reading.Bad<T>(String rule, String remedy) -> refuse(rule, remedy);
    };
  }

  /** The value as written, where it is a single one. */
  Optional<String> text() {
    return value instanceof Yaml.Text text && !text.isNothing()
        ? Optional.of(text.text().strip())
        : Optional.empty();
  }

  private String thing() {
    return path.name() + text().map(t -> " " + Problem.quoted(t)).orElse("");
  }
}
