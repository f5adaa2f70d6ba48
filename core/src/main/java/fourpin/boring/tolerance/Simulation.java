package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Position;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Cases made at random, as many as asked for, each with errors drawn from a model.
 *
 * <p>Cases are made in lots of a fixed size, each lot from a random generator of its own, and lots
 * are summed in their order: the answer is the same however many processors work on it.
 */
public final class Simulation {

  private static final int LOT = 500;

  private Simulation() {}

  /**
   * Makes cases and measures the gap at every position of each.
   *
   * @param limit what a gap is held against, mm
   * @param seed the same seed gives the same cases
   */
  public static Tally run(ErrorModel model, double limit, int cases, long seed) {
    return run(model, limit, cases, seed, _ -> false);
  }

  /**
   * The same, with some positions counted apart as well.
   *
   * @param apart whether a position is
   */
  public static Tally run(
      ErrorModel model, double limit, int cases, long seed, Predicate<Position> apart) {
    Draws draws = Draws.of(model, apart);
    List<SplittableRandom> randoms = split(seed, (cases + LOT - 1) / LOT);
    return IntStream.range(0, randoms.size())
        .parallel()
        .mapToObj(lot -> draws.make(size(lot, cases), limit, randoms.get(lot)))
        .toList()
        .stream()
        .reduce(Tally.none(model.positions().size()), Tally::plus);
  }

  private static int size(int lot, int cases) {
    return Math.min(LOT, cases - lot * LOT);
  }

  private static List<SplittableRandom> split(long seed, int lots) {
    SplittableRandom first = new SplittableRandom(seed);
    return Stream.generate(first::split).limit(lots).toList();
  }
}
