package fourpin.cutting;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What parts have to do with each other. No part is in two matched sets, or in two groups; a set is
 * in a group as a whole.
 */
public record Ties(List<Matched> matched, List<Together> together) {

  public static final Ties NONE = new Ties(List.of(), List.of());

  public Ties {
    matched = List.copyOf(matched);
    together = List.copyOf(together);
    Require.distinct(
        matched.stream().flatMap(set -> set.marks().stream().distinct()).toList(),
        "marks of matched parts");
    Require.distinct(
        together.stream().flatMap(group -> group.marks().stream()).toList(),
        "marks of parts that share a sheet");
    Require.distinct(
        Stream.concat(matched.stream().map(Matched::name), together.stream().map(Together::name))
            .toList(),
        "names of matched sets and groups");
  }

  /** The set that a part belongs to. */
  public Optional<Matched> matched(String mark) {
    return matched.stream().filter(set -> set.marks().contains(mark)).findFirst();
  }

  /** The group that a part belongs to. */
  public Optional<Together> together(String mark) {
    return together.stream().filter(group -> group.marks().contains(mark)).findFirst();
  }

  /** The same without groups. */
  Ties ofMatched() {
    return new Ties(matched, List.of());
  }

  /** Those of some parts; of a set or group all or none are among them. */
  public Ties among(List<Part> parts) {
    List<String> marks = parts.stream().map(Part::mark).toList();
    return new Ties(
        matched.stream().filter(set -> marks.containsAll(set.marks())).toList(),
        together.stream().filter(group -> marks.containsAll(group.marks())).toList());
  }

  /** Throws where parts don't go with each other as they are tied. */
  void require(List<Part> parts) {
    Map<String, Part> byMark =
        parts.stream().collect(Collectors.toMap(Part::mark, Function.identity()));
    together.stream().flatMap(group -> group.marks().stream()).forEach(mark -> part(byMark, mark));
    matched.forEach(set -> require(set, byMark));
    for (Matched set : matched) {
      if (set.marks().stream().map(this::together).distinct().count() > 1) {
        throw new IllegalArgumentException(
            "some parts of the matched set " + set.name() + " share a sheet with others");
      }
    }
  }

  private static void require(Matched set, Map<String, Part> parts) {
    List<Part> its = set.marks().stream().map(mark -> part(parts, mark)).toList();
    Part first = its.getFirst();
    boolean alike =
        its.stream()
            .allMatch(
                part ->
                    part.grain() == first.grain()
                        && (set.run() == Matched.Run.END_TO_END
                            ? part.width().equals(first.width())
                            : part.length().equals(first.length())));
    Map<String, Long> counts = set.counts();
    long sets = first.count() / counts.getOrDefault(first.mark(), 1L);
    boolean whole =
        its.stream().allMatch(part -> part.count() == sets * counts.getOrDefault(part.mark(), 1L));
    if (!alike || !whole) {
      throw new IllegalArgumentException(
          "the parts of the matched set " + set.name() + " differ in width, grain or number");
    }
  }

  private static Part part(Map<String, Part> parts, String mark) {
    return Optional.ofNullable(parts.get(mark))
        .orElseThrow(() -> new IllegalArgumentException("there is no part " + mark));
  }
}
