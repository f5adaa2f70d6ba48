package fourpin.strength;

import static fourpin.strength.PlateShelving.shelves;
import static fourpin.strength.Shelving.glass;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.SampleJobs;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Lazy;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.ShelfOnSupports.Bearing;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Shelves as plates beside their limits, and plates of glass deeper than long. */
@ExtendWith(CommaDecimals.class)
class PlateVerdictTest {

  private static final Made DEEP_GLASS = Made.plain(glass("0.23622"), 682, Made.Layers.ONE);
  private static final ShelfLimits GLASS_LIMITS =
      new ShelfLimits(
          ratio(1),
          ratio(600),
          ratio(384),
          Optional.of(Sourced.stated(Quantity.of(4, QuantityUnit.STRESS))));

  /**
   * A glass shelf deeper than long bends from front to back. An energy solution in other functions
   * (Ritz, polynomials over the whole plate, supports that only push) gives 6.36 MPa across at the
   * centre and 6.96 MPa in the middle of the end edges, under 50 kg on each metre.
   */
  @Test
  void glassIsStressedMostInAnyDirection() {
    double most = deepGlass(0.4903).loaded().stresses().get().getFirst().all();
    assertThat(most).isCloseTo(6.96, withPercentage(2));
    assertThat(deepGlass(0.4903).holds(LoadCase.EVEN, Use.Limit.STRESS)).isFalse();
  }

  /** With a support in its middle it sags most elsewhere than as a beam, and nowhere more. */
  @ParameterizedTest
  @CsvSource({"NONE, true", "NONE, false", "BACK, true", "FRONT_AND_BACK, true"})
  void noPlaceOfALineSagsMoreThanItsFigure(ShelfPlate.Prop prop, boolean evenly) {
    LoadCase of = evenly ? LoadCase.EVEN : LoadCase.ONE_HALF;
    LoadedShelf shelf = new LoadedShelf(DEEP_GLASS.section(), 1000, 10, 0.2);
    Bearing rows = new Bearing.Rows(mm(150), mm(37), Bearing.Count.TWO);
    PlateBending plate =
        new PlateBending.Memory().of(ShelfPlate.of(shelf, rows, prop).orElseThrow());
    Deflection most = Deflection.of(plate.under(of, 0.2).orElseThrow());
    plate
        .shape(of, 0.2, ANY, ANY)
        .orElseThrow()
        .sags()
        .forEach(
            (spot, sags) ->
                assertThat(Collections.max(sags))
                    .isLessThanOrEqualTo(most.at(spot) + 0.005 * most.sag()));
  }

  private static final Figure ANY =
      new Figure("sag", "sag", Quantity.of(Length.mm(1)), "as stated", List.of(), Source.STATED);

  /** Between its rows it sags 1.2 mm over whatever span, of which 1 in 600 is allowed. */
  @Test
  void glassTooDeepForItsThicknessHasNoLongestSpan() {
    assertThat(deepGlass(0.4903).longestSpan()).isEmpty();
    for (double span = 100; span < 2000; span *= 1.1) {
      assertThat(deepGlass(0.4903, span).holds()).isFalse();
    }
  }

  /** Bent over its longest span, a plate holds; over one that is 3 % longer, it does not. */
  @ParameterizedTest
  @ValueSource(doubles = {0.005, 0.02, 0.05, 0.1})
  void theLongestSpanHolds(double load) {
    double longest = deepGlass(load).longestSpan().orElseThrow().number();
    assertThat(deepGlass(load, longest).holds()).isTrue();
    assertThat(deepGlass(load, 1.03 * longest).holds()).isFalse();
  }

  /** 361 x 682 x 6 mm, its rows 37 mm from the edges, its pins 3.5 mm from the ends. */
  private static Verdict deepGlass(double load) {
    return deepGlass(load, 354);
  }

  private static Verdict deepGlass(double load, double span) {
    Bearing rows = new Bearing.Rows(mm(37), mm(37), Bearing.Count.TWO);
    LoadedShelf shelf = new LoadedShelf(DEEP_GLASS.section(), span, 3.5, load);
    Candidate glass =
        new Candidate(
            shelf,
            rows,
            ShelfPlate.Prop.NONE,
            GLASS_LIMITS,
            Optional.empty(),
            Sourced.stated(Quantity.of(0, QuantityUnit.FORCE)),
            List.of(),
            Optional.empty());
    return new Verdict(glass, new PlateBending.Memory());
  }

  private static Sourced mm(double length) {
    return Sourced.stated(Quantity.of(length, QuantityUnit.LENGTH));
  }

  private static Sourced ratio(double ratio) {
    return Sourced.stated(Quantity.of(ratio, QuantityUnit.RATIO));
  }

  /** Errors of the sums must not tell which edge is named. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.8, 1, BACK",
    "1.0000000001, 0.8, 1, BACK",
    "1.01, 0.8, 1, FRONT",
    "1, 0.8, 1.01, BACK",
    "1, 0.9999999999, 1, MIDDLE"
  })
  void edgesThatSagAlikeAreNamedAlike(double front, double middle, double back, Spot spot) {
    Deflection down =
        new Deflection(
            front, middle, back, front, Lazy.of(List::of), Lazy.of(List::of), Lazy.of(List::of));
    assertThat(down.spot()).isEqualTo(spot);
  }

  @Test
  void shelvesAlikeAreBentOnce() {
    PlateBending.Memory memory = new PlateBending.Memory();
    CaseDraft draft = shelves("ply");
    Job job = SampleJobs.job(draft.order());
    ShelfReader reader = new ShelfReader(job, CaseworkBuilder.build(job).cases().getFirst());
    List<ShelfPlate> plates =
        reader.shelves().stream()
            .map(reader::read)
            .flatMap(s -> ShelfPlate.of(s.loaded(), s.bearing()).stream())
            .toList();
    assertThat(plates).hasSize(2);
    assertThat(memory.of(plates.get(0))).isSameAs(memory.of(plates.get(1)));
  }
}
