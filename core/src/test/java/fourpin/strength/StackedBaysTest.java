package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.measure.Inputs.inputs;
import static fourpin.strength.Stacks.find;
import static fourpin.strength.Stacks.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What stands in one bay of a case on another one stands there, and not in the next bay. */
@ExtendWith(CommaDecimals.class)
class StackedBaysTest {

  /** Both as the tables of held things have them. */
  private static final String HEAVY = "books, art";

  private static final String LIGHT = "books, paperback";

  /** N/mm of 40 and 14 lb/ft. */
  private static final double HEAVY_LINE = 40 * 4.4482216 / 304.8;

  private static final double LIGHT_LINE = 14 * 4.4482216 / 304.8;

  private static CaseDraft draft(String name, List<Bay> bays) {
    CaseDraft draft = new CaseDraft();
    draft.name = name;
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("64"), in("30"), in("12"));
    draft.bays = bays;
    return draft;
  }

  private static Bay holding(String what) {
    Bay bay = SampleJobs.bay(1);
    return new Bay(
        bay.width(),
        bay.fixedShelves(),
        bay.shelves(),
        bay.supports(),
        Optional.of(new Load.Holds(what)));
  }

  private static CaseDraft upper(String left, String right) {
    return draft("Upper", List.of(holding(left), holding(right)));
  }

  /** Its bottom lies on the base. */
  private static CaseDraft flat(String left, String right) {
    return Stacks.flat(upper(left, right));
  }

  private static Strength stacked(CaseDraft upper) {
    CaseDraft base = draft("Base", List.of(SampleJobs.bay(1), SampleJobs.bay(1)));
    return Stacks.stacked(upper, Stacks.bare(base));
  }

  /**
   * The top over one bay is a beam of its own: 5 q L⁴ / (384 E I) and q L² / 8 (Wood Handbook
   * FPL-GTR-190, Table 9-1), the load over all but half an upright at each end.
   */
  @Test
  void theHeavierBayBendsTheTopUnderIt() {
    Strength strength = stacked(flat(HEAVY, LIGHT));
    Figure sag = find(strength, "stack-top-sag");
    double span = input(sag, "L");
    double all = HEAVY_LINE + inputs(sag, "q").getFirst() + input(sag, "g");
    assertThat(inputs(sag, "q").getLast()).isCloseTo(HEAVY_LINE, withPercentage(0.01));
    assertThat(sag.value().value())
        .isCloseTo(5 * all * Math.pow(span, 4) / (384 * input(sag, "E I")), withPercentage(2));
    assertThat(input(find(strength, "stack-top-stress"), "M"))
        .isCloseTo(all * span * span / 8, withPercentage(0.5));
  }

  /** It does so however little stands in the other one, to whichever side. */
  @Test
  void whatStandsInTheOtherBayChangesNothing() {
    Strength both = stacked(flat(HEAVY, HEAVY));
    for (Strength one : List.of(stacked(flat(HEAVY, LIGHT)), stacked(flat(LIGHT, HEAVY)))) {
      for (String figure : List.of("stack-top-sag", "stack-top-stress")) {
        assertThat(value(one, figure)).isCloseTo(value(both, figure), withPercentage(1e-6));
      }
    }
  }

  /** Half of what lies on the top over a bay comes to its end there. */
  @Test
  void eachEndBearsHalfOfItsOwnBay() {
    Strength strength = stacked(flat(HEAVY, LIGHT));
    double left = value(strength, "stack-top-l/joint-load");
    double right = value(strength, "stack-top-r/joint-load");
    double clear = (64 * 25.4 - 3 * 25.4 * 23 / 32) / 2;
    assertThat(left - right).isCloseTo((HEAVY_LINE - LIGHT_LINE) * clear / 2, withPercentage(0.5));
    assertThat(left)
        .isCloseTo(
            value(stacked(flat(HEAVY, HEAVY)), "stack-top-l/joint-load"), withPercentage(1e-6));
  }

  /**
   * A bottom off the top hangs on the uprights: half of what stands in a bay on each beside it.
   * What its shelves are shorter than a bay is shared by all, which tells a little.
   */
  @Test
  void eachUprightBearsHalfOfTheBaysBesideIt() {
    Strength strength = stacked(upper(HEAVY, LIGHT));
    double clear = (64 * 25.4 - 3 * 25.4 * 23 / 32) / 2;
    assertThat(input(find(strength, "stack-press-l"), "B"))
        .isCloseTo(HEAVY_LINE * clear / 2, withPercentage(0.01));
    assertThat(input(find(strength, "stack-press-p1"), "B"))
        .isCloseTo((HEAVY_LINE + LIGHT_LINE) * clear / 2, withPercentage(0.01));
    assertThat(value(strength, "stack-press-r"))
        .isCloseTo(value(stacked(upper(LIGHT, LIGHT)), "stack-press-r"), withPercentage(0.2));
  }
}
