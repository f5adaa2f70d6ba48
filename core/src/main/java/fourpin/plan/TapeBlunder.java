package fourpin.plan;

import fourpin.bench.Step;
import fourpin.bench.VirtualBench;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A hole of a guide is bored through on one panel that should be taped over.
 *
 * @param piece mark of the panel
 * @param steps as they should be
 */
record TapeBlunder(String piece, List<Step> steps) {

  /** What is done. @param number of the guide's hole */
  record Done(List<Step> steps, int number) {}

  /**
   * Each time that one more hole is bored through the guide as it is laid on first, which is taped
   * over: those between others first, from the lowest up, then those beside them.
   */
  private List<Done> bored() {
    return steps.stream()
        .filter(s -> s instanceof Step.BoreThrough b && b.piece().equals(piece))
        .map(s -> (Step.BoreThrough) s)
        .findFirst()
        .map(b -> masked(b).stream().map(n -> with(b, n)).toList())
        .orElse(List.of());
  }

  /** The first of these that can be. */
  Optional<Done> first() {
    return bored().stream()
        .filter(d -> VirtualBench.run(d.steps()).mishaps().isEmpty())
        .findFirst();
  }

  private List<Integer> masked(Step.BoreThrough bore) {
    int least = Collections.min(bore.numbers());
    int most = Collections.max(bore.numbers());
    return steps.stream()
        .filter(s -> s instanceof Step.MaskHoles m && m.guide().equals(bore.guide()))
        .flatMap(s -> ((Step.MaskHoles) s).numbers().stream())
        .filter(n -> n >= least - 1 && n <= most + 1)
        .sorted(Comparator.comparing((Integer n) -> n < least || n > most).thenComparing(n -> n))
        .toList();
  }

  private Done with(Step.BoreThrough bore, int masked) {
    List<Step> done = new ArrayList<>(steps);
    done.replaceAll(
        s ->
            s instanceof Step.MaskHoles m && m.guide().equals(bore.guide())
                ? new Step.MaskHoles(
                    m.guide(), m.numbers().stream().filter(n -> n != masked).toList())
                : s);
    List<Integer> numbers =
        Stream.concat(bore.numbers().stream(), Stream.of(masked)).sorted().toList();
    done.set(
        done.indexOf(bore),
        new Step.BoreThrough(bore.guide(), bore.piece(), numbers, bore.purpose()));
    return new Done(done, masked);
  }
}
