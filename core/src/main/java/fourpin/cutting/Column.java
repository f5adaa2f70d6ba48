package fourpin.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * A pattern as a column of the linear programme.
 *
 * @param panel index of the panel it is cut from
 * @param counts parts of each kind
 */
record Column(int panel, int[] counts, Draft draft) {

  static Column of(int panel, Draft draft, int kinds) {
    int[] counts = new int[kinds];
    count(draft, counts);
    return new Column(panel, counts, draft);
  }

  private static void count(Draft draft, int[] counts) {
    switch (draft) {
      case Draft.Place place -> counts[place.kind()]++;
      case Draft.Free free -> {}
      case Draft.Split split -> split.slices().forEach(slice -> count(slice.content(), counts));
    }
  }

  /** Equal for columns that differ at most in where their parts lie. */
  List<Integer> key() {
    List<Integer> key = new ArrayList<>();
    key.add(panel);
    for (int count : counts) {
      key.add(count);
    }
    return key;
  }

  /** What the parts are worth together. */
  long worth(long[] each) {
    long sum = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      sum += counts[kind] * each[kind];
    }
    return sum;
  }

  /** How often the whole column is wanted. */
  int most(int[] wanted) {
    int most = Integer.MAX_VALUE;
    for (int kind = 0; kind < counts.length; kind++) {
      most = counts[kind] > 0 ? Math.min(most, wanted[kind] / counts[kind]) : most;
    }
    return most;
  }

  /** The column without the parts that are no longer wanted; their places are left over. */
  Column without(int[] wanted) {
    return most(wanted) > 0 ? this : of(panel, thinned(draft, wanted.clone()), counts.length);
  }

  private static Draft thinned(Draft draft, int[] wanted) {
    return switch (draft) {
      case Draft.Place place -> wanted[place.kind()]-- > 0 ? place : Draft.FREE;
      case Draft.Free free -> free;
      case Draft.Split split -> thinned(split, wanted);
    };
  }

  private static Draft thinned(Draft.Split split, int[] wanted) {
    List<Draft.Slice> slices =
        split.slices().stream()
            .map(s -> new Draft.Slice(s.size(), thinned(s.content(), wanted)))
            .toList();
    boolean empty = slices.stream().allMatch(s -> s.content() instanceof Draft.Free);
    return empty ? Draft.FREE : new Draft.Split(split.direction(), slices);
  }
}
