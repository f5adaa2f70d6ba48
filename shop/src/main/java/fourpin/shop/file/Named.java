package fourpin.shop.file;

import fourpin.shop.yaml.Yaml;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Things under names of the maker's choice, in file order.
 *
 * @param what the thing is: "a case"
 * @param most things
 */
public record Named<T>(String what, Kind<T> thing, int most) implements Kind<List<T>> {

  /** What a material and a case are called in a sentence. */
  static final String MATERIAL = "a material";

  static final String CASE = "a case";

  static final int LONGEST = 30;

  /** Names stand in file names and on parts. */
  static final String PATTERN = "[\\p{L}\\p{N}]([\\p{L}\\p{N} _-]{0,28}[\\p{L}\\p{N}])?";

  private static final Pattern NAME = Pattern.compile(PATTERN);

  @Override
  public Optional<List<T>> read(Spot spot) {
    if (!(spot.value() instanceof Yaml.Entries entries)) {
      return spot.refuse(
          "names are expected, not " + spot.value().what(),
          "give " + what + " a name and a colon, and its keys below");
    }
    if (entries.entries().isEmpty() || entries.entries().size() > most) {
      return spot.refuse(
          "there are from 1 to " + most + " of them, not " + entries.entries().size(),
          entries.entries().isEmpty() ? "state " + what : spot.path().file().tooMany());
    }
    List<T> good = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Yaml.Entry entry : entries.entries()) {
      checkName(entry, spot, names);
      thing.read(spot.at(entry)).ifPresent(good::add);
    }
    return good.size() == entries.entries().size() ? Optional.of(good) : Optional.empty();
  }

  /** Names that look alike would be taken for each other on parts, and be one as file names. */
  private void checkName(Yaml.Entry entry, Spot spot, Set<String> names) {
    String plain = entry.key().text().toLowerCase(Locale.ROOT).replaceAll("[ _]", "-");
    if (!names.add(plain)) {
      spot.refuseAt(
          entry.key().place(),
          spot.at(entry).path().name(),
          "another name is the same but for capitals, blanks and hyphens",
          "choose a name of its own");
    }
    if (!NAME.matcher(entry.key().text()).matches()) {
      spot.refuseAt(
          entry.key().place(),
          spot.at(entry).path().name(),
          "a name has from 1 to " + LONGEST + " letters, digits, blanks and hyphens",
          "name " + what + " like north-wall");
    }
  }
}
