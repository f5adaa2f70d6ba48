package fourpin.boring.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.boring.tolerance.ErrorModel.Cause;
import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.ErrorModel.Shape;
import fourpin.boring.tolerance.ErrorModel.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SimulationTest {

  private static final double LIMIT = 0.8;
  private static final int CASES = 20_000;

  /** Four holes each with an error of its own, a common seat to the left, play in each hole. */
  private static ErrorModel model(int positions) {
    List<Cause> causes = new ArrayList<>();
    causes.add(new Cause(CauseKind.SEAT, "", Shape.NORMAL, 0.2));
    causes.add(new Cause(CauseKind.PLAY, "stop", Shape.UNIFORM, 0.1));
    List<Position> places = new ArrayList<>();
    for (int p = 0; p < positions; p++) {
      List<List<Term>> corners = new ArrayList<>();
      for (int corner = 0; corner < 4; corner++) {
        causes.add(new Cause(CauseKind.WANDER, "", Shape.NORMAL, 0.15));
        causes.add(new Cause(CauseKind.PLAY, "", Shape.UNIFORM, 0.05));
        int last = causes.size() - 1;
        List<Term> terms = new ArrayList<>(List.of(new Term(last - 1, 1), new Term(last, 1)));
        if (corner == 0) {
          terms.add(new Term(0, 1));
          terms.add(new Term(1, -1));
        }
        corners.add(terms);
      }
      places.add(
          Position.of(1, p + 1, corners.get(0), corners.get(1), corners.get(2), corners.get(3)));
    }
    return new ErrorModel(causes, places);
  }

  private static Tally run(ErrorModel model, long seed) {
    return Simulation.run(model, LIMIT, CASES, seed);
  }

  private static List<Object> all(Tally tally, int positions) {
    List<Object> values = new ArrayList<>(List.of(tally.cases(), tally.oddsOfAny()));
    for (int p = 0; p < positions; p++) {
      values.addAll(List.of(tally.odds(p), tally.mean(p), tally.deviation(p)));
    }
    return values;
  }

  @Test
  void theSameSeedGivesTheSameAnswerOnAnyNumberOfThreads() throws Exception {
    ErrorModel model = model(5);
    List<Object> expected = all(run(model, 7), 5);
    for (int threads : List.of(1, 2, 5)) {
      try (ForkJoinPool pool = new ForkJoinPool(threads)) {
        assertThat(pool.submit(() -> all(run(model, 7), 5)).get())
            .as("%d threads", threads)
            .isEqualTo(expected);
      }
    }
  }

  @Test
  void anotherSeedGivesOtherCases() {
    assertThat(all(run(model(3), 8), 3)).isNotEqualTo(all(run(model(3), 7), 3));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 499, 500, 501, 1234})
  void makesAsManyCasesAsAskedFor(int cases) {
    assertThat(Simulation.run(model(1), LIMIT, cases, 1).cases()).isEqualTo(cases);
  }

  /** Variance by hand: seat 0.04, stop 0.01, four holes of 0.0225 + 0.0025 each. */
  @Test
  void theDeviationIsTheOneWorkedOutByHand() {
    Tally tally = run(model(2), 3);
    double byHand = Math.sqrt(0.04 + 0.01 + 4 * 0.025);
    // The relative standard error of a deviation is at most 1 / √(2 n).
    double four = 4 * byHand / Math.sqrt(2.0 * CASES);
    assertThat(tally.deviation(0)).isCloseTo(byHand, within(four));
    assertThat(tally.deviation(1)).isCloseTo(byHand, within(four));
  }

  @Test
  void oneBadPlaceInACaseIsEnough() {
    Tally tally = run(model(20), 3);
    assertThat(tally.oddsOfAny()).isGreaterThan(tally.odds(0)).isLessThan(tally.expected());
  }

  /** Shared by all places and nothing else: all of them miss, or none. */
  @Test
  void whatIsSharedStrikesAllPlacesAtOnce() {
    Term seat = new Term(0, 1);
    Position place = Position.of(1, 1, List.of(seat), List.of(), List.of(), List.of());
    ErrorModel model =
        new ErrorModel(
            List.of(new Cause(CauseKind.SEAT, "", Shape.NORMAL, 0.5)),
            List.of(place, place, place));
    Tally tally = run(model, 4);
    assertThat(tally.oddsOfAny()).isEqualTo(tally.odds(2)).isBetween(0.08, 0.14);
    assertThat(tally.expected()).isCloseTo(3 * tally.odds(0), within(1e-12));
  }

  /** The same cases are counted twice, so a part can't miss where the whole does not. */
  @Test
  void somePositionsAreCountedApart() {
    ErrorModel model = model(4);
    Tally none = run(model, 6);
    Tally all = Simulation.run(model, LIMIT, CASES, 6, p -> true);
    Tally one = Simulation.run(model, LIMIT, CASES, 6, p -> p.level() == 2);
    assertThat(none.apartBeyond()).isZero();
    assertThat(all.oddsOfAnyApart()).isEqualTo(all.oddsOfAny()).isEqualTo(none.oddsOfAny());
    assertThat(one.oddsOfAnyApart()).isEqualTo(one.odds(1)).isLessThan(one.oddsOfAny());
  }

  @Test
  void whatCancelsIsNotThereAtAll() {
    List<Term> hole = List.of(new Term(0, 1));
    ErrorModel model =
        new ErrorModel(
            List.of(new Cause(CauseKind.GUIDE_HOLE, "", Shape.NORMAL, 0.5)),
            List.of(Position.of(1, 1, hole, hole, hole, hole)));
    Tally tally = Simulation.run(model, 0, CASES, 5);
    assertThat(tally.oddsOfAny()).isZero();
    assertThat(tally.deviation(0)).isZero();
  }
}
