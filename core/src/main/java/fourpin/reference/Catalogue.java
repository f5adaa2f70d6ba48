package fourpin.reference;

import fourpin.measure.Spelling;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A reference table whose rows are found by name: in any case and order of words, so that "white
 * oak" finds "oak, white".
 */
public final class Catalogue<T extends Listed> {

  private static final int MOST_SUGGESTIONS = 3;
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s,]+");

  private final List<T> rows;
  private final Map<String, T> asWritten = new HashMap<>();
  private final Map<String, T> byKey;

  /**
   * @throws IllegalArgumentException if two rows go by one name
   */
  Catalogue(List<? extends T> rows) {
    this.rows = List.copyOf(rows);
    Map<String, T> keys = new LinkedHashMap<>();
    for (T row : this.rows) {
      names(row).forEach(name -> enter(keys, name, row));
      names(row).forEach(name -> asWritten.put(name, row));
    }
    this.byKey = Collections.unmodifiableMap(keys);
  }

  private static <T> void enter(Map<String, T> keys, String name, T row) {
    T other = keys.putIfAbsent(key(name), row);
    if (other != null && !other.equals(row)) {
      throw new IllegalArgumentException("two rows go by the name '" + name + "'");
    }
  }

  /** The rows in the order of the table. */
  public List<T> rows() {
    return rows;
  }

  public Optional<T> find(String name) {
    return Optional.ofNullable(asWritten.get(name))
        .or(() -> Optional.ofNullable(byKey.get(key(name))));
  }

  /**
   * The row of a name that has been checked.
   *
   * @throws IllegalArgumentException if there is none
   */
  public T get(String name) {
    return find(name)
        .orElseThrow(() -> new IllegalArgumentException("no table lists '" + name + "'"));
  }

  /**
   * What may have been meant by a name that is not found, best first: rows whose names have all its
   * words ("oak"), else the nearest spelling.
   */
  public List<String> nearest(String name) {
    List<String> wanted = words(name);
    List<String> partly =
        rows.stream()
            .filter(
                row -> !wanted.isEmpty() && names(row).anyMatch(n -> words(n).containsAll(wanted)))
            .map(Listed::name)
            .limit(MOST_SUGGESTIONS)
            .toList();
    return partly.isEmpty() ? nearestSpelling(name).stream().toList() : partly;
  }

  private Optional<String> nearestSpelling(String name) {
    List<String> names = rows.stream().flatMap(Catalogue::names).toList();
    return Spelling.nearest(key(name), byKey.keySet())
        .or(() -> Spelling.nearest(name, names))
        .flatMap(this::find)
        .map(Listed::name);
  }

  private static Stream<String> names(Listed row) {
    return Stream.concat(Stream.of(row.name()), row.also().stream());
  }

  private static String key(String name) {
    return words(name).stream().sorted().collect(Collectors.joining(" "));
  }

  private static List<String> words(String name) {
    return BETWEEN_WORDS
        .splitAsStream(name.toLowerCase(Locale.ROOT))
        .filter(word -> !word.isEmpty())
        .toList();
  }
}
