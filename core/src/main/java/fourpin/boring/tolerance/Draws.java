package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Cause;
import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.ErrorModel.Shape;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A model made ready for drawing, in arrays of numbers.
 *
 * <p>Causes that several positions share are drawn once for each case; the others once for each
 * position, those that pull at it alike as one. What cancels is not drawn.
 */
final class Draws {

  private final double[] sharedNormals;
  private final double[] sharedReaches;
  private final Place[] places;

  /** By place, 1 where it is counted apart as well, else 0. */
  private final int[] apart;

  private Draws(double[] sharedNormals, double[] sharedReaches, Place[] places, int[] apart) {
    this.sharedNormals = sharedNormals;
    this.sharedReaches = sharedReaches;
    this.places = places;
    this.apart = apart;
  }

  static Draws of(ErrorModel model, Predicate<Position> apart) {
    List<Map<Integer, Pull>> pulls =
        model.positions().stream().map(p -> Pull.of(model, p)).toList();
    List<Integer> shared = shared(pulls);
    List<Integer> normals = of(Shape.NORMAL, shared, model.causes());
    List<Integer> uniforms = of(Shape.UNIFORM, shared, model.causes());
    Map<Integer, Integer> slots = new TreeMap<>();
    Stream.of(normals, uniforms)
        .flatMap(List::stream)
        .forEach(index -> slots.put(index, slots.size()));
    return new Draws(
        normals.stream().mapToDouble(i -> model.causes().get(i).deviation()).toArray(),
        uniforms.stream()
            .mapToDouble(i -> Spread.reachOf(model.causes().get(i).deviation()))
            .toArray(),
        pulls.stream().map(p -> place(model.causes(), p, slots)).toArray(Place[]::new),
        model.positions().stream().mapToInt(p -> apart.test(p) ? 1 : 0).toArray());
  }

  /** Causes that more than one position has. */
  private static List<Integer> shared(List<Map<Integer, Pull>> pulls) {
    Map<Integer, Integer> count = new TreeMap<>();
    pulls.forEach(p -> p.keySet().forEach(index -> count.merge(index, 1, Integer::sum)));
    return count.entrySet().stream().filter(e -> e.getValue() > 1).map(Map.Entry::getKey).toList();
  }

  private static List<Integer> of(Shape shape, List<Integer> indices, List<Cause> causes) {
    return indices.stream().filter(i -> causes.get(i).shape() == shape).toList();
  }

  private static Place place(
      List<Cause> causes, Map<Integer, Pull> pulls, Map<Integer, Integer> slots) {
    Map<Integer, Pull> shared = new TreeMap<>();
    Map<Integer, Pull> own = new TreeMap<>();
    pulls.forEach(
        (index, pull) -> {
          if (slots.containsKey(index)) {
            shared.put(slots.get(index), pull);
          } else {
            own.put(index, pull);
          }
        });
    return new Place(shared, Strand.of(causes, own));
  }

  /** Makes cases and counts. */
  Tally make(int cases, double limit, SplittableRandom random) {
    int[] beyond = new int[places.length];
    double[] sums = new double[places.length];
    double[] squares = new double[places.length];
    double[] shared = new double[sharedNormals.length + sharedReaches.length];
    int casesBeyond = 0;
    int apartBeyond = 0;
    for (int made = 0; made < cases; made++) {
      drawShared(shared, random);
      int found = 0;
      int foundApart = 0;
      for (int p = 0; p < places.length; p++) {
        double miss = places[p].drawn(shared, random);
        int over = miss > limit ? 1 : 0;
        beyond[p] += over;
        found |= over;
        foundApart |= over & apart[p];
        sums[p] += miss;
        squares[p] += miss * miss;
      }
      casesBeyond += found;
      apartBeyond += foundApart;
    }
    return new Tally(cases, casesBeyond, apartBeyond, beyond, sums, squares);
  }

  private void drawShared(double[] shared, SplittableRandom random) {
    for (int i = 0; i < sharedNormals.length; i++) {
      shared[i] = sharedNormals[i] * random.nextGaussian();
    }
    for (int i = 0; i < sharedReaches.length; i++) {
      shared[sharedNormals.length + i] = Place.uniform(sharedReaches[i], random);
    }
  }
}
