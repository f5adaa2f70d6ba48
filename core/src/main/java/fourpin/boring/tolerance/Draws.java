package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.ErrorModel.Shape;
import fourpin.boring.tolerance.NetError.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * A model made ready for drawing, in arrays of numbers.
 *
 * <p>Normal causes that only one position has are merged into one: their sum is normal. Causes that
 * several positions share are drawn once for each case, the others once for each position. What
 * cancels is not drawn.
 */
final class Draws {

  private final double[] sharedNormals;
  private final double[] sharedReaches;
  private final Place[] places;

  /**
   * One position. A shared cause is an index in the shared normals, and after these in the shared
   * uniforms.
   *
   * @param normal deviation of its own normal cause
   * @param reaches of its own uniform causes
   * @param apart 1 where it is counted apart as well, else 0
   */
  private record Place(
      int[] shared, double[] factors, double normal, double[] reaches, int apart) {}

  private Draws(double[] sharedNormals, double[] sharedReaches, Place[] places) {
    this.sharedNormals = sharedNormals;
    this.sharedReaches = sharedReaches;
    this.places = places;
  }

  static Draws of(ErrorModel model, Predicate<Position> apart) {
    List<NetError> errors =
        model.positions().stream().map(p -> NetError.of(model, p, Miss.GAP)).toList();
    List<Share> shared = shared(errors);
    List<Share> normals = of(Shape.NORMAL, shared);
    List<Share> uniforms = of(Shape.UNIFORM, shared);
    Map<Integer, Integer> slots = new TreeMap<>();
    normals.forEach(s -> slots.put(s.index(), slots.size()));
    uniforms.forEach(s -> slots.put(s.index(), slots.size()));
    return new Draws(
        normals.stream().mapToDouble(s -> s.cause().deviation()).toArray(),
        uniforms.stream().mapToDouble(s -> Spread.reachOf(s.cause().deviation())).toArray(),
        IntStream.range(0, errors.size())
            .mapToObj(
                p -> place(errors.get(p), slots, apart.test(model.positions().get(p)) ? 1 : 0))
            .toArray(Place[]::new));
  }

  /** One share of each cause that more than one position has. */
  private static List<Share> shared(List<NetError> errors) {
    Map<Integer, List<Share>> byCause = new TreeMap<>();
    for (NetError error : errors) {
      error
          .shares()
          .forEach(s -> byCause.computeIfAbsent(s.index(), i -> new ArrayList<>()).add(s));
    }
    return byCause.values().stream().filter(s -> s.size() > 1).map(List::getFirst).toList();
  }

  private static List<Share> of(Shape shape, List<Share> shares) {
    return shares.stream().filter(s -> s.cause().shape() == shape).toList();
  }

  private static Place place(NetError error, Map<Integer, Integer> slots, int apart) {
    List<Share> shared = error.shares().stream().filter(s -> slots.containsKey(s.index())).toList();
    List<Share> own = error.shares().stream().filter(s -> !slots.containsKey(s.index())).toList();
    Spread spread = new NetError(own).spread();
    return new Place(
        shared.stream().mapToInt(s -> slots.get(s.index())).toArray(),
        shared.stream().mapToDouble(Share::factor).toArray(),
        spread.normal(),
        spread.reaches().stream().mapToDouble(Double::doubleValue).toArray(),
        apart);
  }

  /** Makes cases and counts; the loop that everything waits for, so no objects in it. */
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
        double miss = Math.abs(miss(places[p], shared, random));
        int over = miss > limit ? 1 : 0;
        beyond[p] += over;
        found |= over;
        foundApart |= over & places[p].apart;
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
      shared[sharedNormals.length + i] = uniform(sharedReaches[i], random);
    }
  }

  private static double miss(Place place, double[] shared, SplittableRandom random) {
    double miss = place.normal == 0 ? 0 : place.normal * random.nextGaussian();
    for (int i = 0; i < place.shared.length; i++) {
      miss += place.factors[i] * shared[place.shared[i]];
    }
    for (double reach : place.reaches) {
      miss += uniform(reach, random);
    }
    return miss;
  }

  private static double uniform(double reach, SplittableRandom random) {
    return reach * (2 * random.nextDouble() - 1);
  }
}
