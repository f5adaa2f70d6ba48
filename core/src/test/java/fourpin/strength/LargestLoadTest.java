package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.named;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.job.CaseDraft;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is told as the most that a shelf carries. */
@ExtendWith(CommaDecimals.class)
class LargestLoadTest {

  private static Strength wide(String width) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in("84"), in("12"));
    draft.bays = List.of(SampleJobs.bay(1));
    draft.load = Optional.of(new Load.PerLength(Quantity.of(0.4, QuantityUnit.LINE_LOAD)));
    return check(SampleJobs.job(draft.order()));
  }

  /** Both are rounded down: what must not be more never reads as more. */
  @ParameterizedTest
  @ValueSource(strings = {"37", "38", "39", "40", "41", "42", "43", "44"})
  void theCureTellsWhatTheFigureTells(String width) {
    Strength strength = wide(width);
    Quantity largest = named(strength.shelves().getFirst(), "largest-load").value();
    assertThat(strength.findings())
        .flatMap(Finding::remedies)
        .extracting(Finding.Remedy::what)
        .filteredOn(what -> what.startsWith("keep the load to"))
        .isNotEmpty()
        .allMatch(what -> what.contains(" to " + largest.text(Unit.INCH)));
  }
}
