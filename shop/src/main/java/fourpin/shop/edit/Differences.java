package fourpin.shop.edit;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.SequencedSet;
import java.util.Set;

/** Where several files that mean much the same do not. */
public final class Differences {

  /**
   * A key that is not the same in all of them.
   *
   * @param path the way to it, {@code cases.bookcase.bays.2.width}
   * @param words what stands there in each file, in their order; nothing where it is not stated
   */
  public record Difference(String path, List<Optional<String>> words) {
    public Difference {
      words = List.copyOf(words);
    }
  }

  private Differences() {}

  /** In the order of the first file, then of the others. */
  public static List<Difference> of(List<Value> files) {
    List<SequencedMap<String, String>> all = files.stream().map(Differences::words).toList();
    Set<String> paths = new LinkedHashSet<>();
    all.forEach(file -> paths.addAll(file.keySet()));
    return paths.stream()
        .map(path -> new Difference(path, all.stream().map(f -> find(f, path)).toList()))
        .filter(d -> Set.copyOf(d.words()).size() > 1)
        .toList();
  }

  /**
   * What one file states and another does not, by the way to it; of a whole group that is missing,
   * each entry.
   */
  public static List<String> missing(Value of, Value in) {
    SequencedSet<String> missing = new LinkedHashSet<>();
    if (of instanceof Value.Group(var entries)) {
      entries.forEach((key, value) -> missing(key, value, in.at(Route.of(key)), missing));
    }
    return List.copyOf(missing);
  }

  private static void missing(
      String path, Value value, Optional<Value> there, SequencedSet<String> into) {
    boolean isTop = !path.contains(".");
    if (value instanceof Value.Group(var entries) && (there.isPresent() || isTop)) {
      entries.forEach(
          (key, v) -> missing(below(path, key), v, there.flatMap(t -> t.at(Route.of(key))), into));
    } else if (there.isEmpty()) {
      into.add(path);
    }
  }

  private static Optional<String> find(Map<String, String> file, String path) {
    return Optional.ofNullable(file.get(path));
  }

  /** Every single value by the way to it. */
  private static SequencedMap<String, String> words(Value file) {
    SequencedMap<String, String> words = new LinkedHashMap<>();
    collect("", file, words);
    return words;
  }

  private static void collect(String path, Value value, Map<String, String> into) {
    switch (value) {
      case Value.Text(String text) -> into.put(path, text);
      case Value.Nothing() -> into.put(path, "nothing");
      case Value.Group(var entries) -> entries.forEach((k, v) -> collect(below(path, k), v, into));
      case Value.Items(var items) -> {
        for (int i = 0; i < items.size(); i++) {
          collect(below(path, Integer.toString(i + 1)), items.get(i), into);
        }
      }
    }
  }

  private static String below(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
