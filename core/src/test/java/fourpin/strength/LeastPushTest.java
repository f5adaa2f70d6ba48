package fourpin.strength;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.SampleJobs;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.ShelfOnSupports.Bearing.Count;
import fourpin.strength.ShelfPlate.Prop;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What statics tells of supports, held against the plate. */
class LeastPushTest {

  private static final ShelfLimits LIMITS =
      new ShelfLimits(ratio(1), ratio(600), ratio(384), Optional.empty());

  /** Nothing is called too much that the plate finds borne. */
  @ParameterizedTest
  @EnumSource
  void noSupportCarriesLess(Count count) {
    Random random = new Random(7);
    for (int i = 0; i < 25; i++) {
      Candidate shelf = any(random, count);
      assertThat(LeastPush.isTooMuch(limited(shelf, push(shelf)))).isFalse();
    }
  }

  /** Of two rows, all that the plate tells but of loads on one half. */
  @ParameterizedTest
  @CsvSource({"TWO, 0.99", "THREE, 0.5"})
  void whatNoRowCanCarryIsTold(Count count, double share) {
    Random random = new Random(8);
    for (int i = 0; i < 25; i++) {
      Candidate shelf = any(random, count);
      assertThat(LeastPush.isTooMuch(limited(shelf, share * push(shelf)))).isTrue();
    }
  }

  private static double push(Candidate shelf) {
    Verdict verdict = new Verdict(shelf, new PlateBending.Memory());
    return verdict.under(LoadCase.EVEN).orElseThrow().push();
  }

  private static Candidate any(Random random, Count count) {
    Made made =
        Made.plain(
            SampleJobs.board("panel", "plywood, veneer core", "3/4"),
            random.nextDouble(200, 400),
            Made.Layers.ONE);
    Bearing rows =
        new Bearing.Rows(mm(random.nextDouble(20, 80)), mm(random.nextDouble(20, 80)), count);
    LoadedShelf beam =
        new LoadedShelf(
            made.section(), random.nextDouble(300, 1200), 6, random.nextDouble(0.05, 1));
    return new Candidate(
        beam, rows, Prop.NONE, LIMITS, Optional.empty(), mm(0), List.of(), Optional.empty());
  }

  private static Candidate limited(Candidate shelf, double push) {
    Quantity most = Quantity.of(push, QuantityUnit.FORCE);
    return shelf.on(List.of(new SupportLimit(most, most, "as stated", Source.STATED)));
  }

  private static Sourced mm(double length) {
    return Sourced.stated(Quantity.of(length, QuantityUnit.LENGTH));
  }

  private static Sourced ratio(double ratio) {
    return Sourced.stated(Quantity.of(ratio, QuantityUnit.RATIO));
  }
}
