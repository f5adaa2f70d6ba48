package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What becomes of shelves on their supports: those that drop, that shrink, that nobody rates. */
@ExtendWith(CommaDecimals.class)
class SupportsInYearsTest {

  private static Strength of(CaseDraft draft) {
    return check(SampleJobs.job(draft.order()));
  }

  private static Figure find(Strength strength, String last) {
    return strength.shelves().getFirst().figures().stream()
        .filter(f -> f.id().endsWith("/" + last))
        .findFirst()
        .orElseThrow();
  }

  /** Eight feet of plywood sag so far that their ends draw in by more than lies on the pins. */
  @Test
  void aShelfWhoseEndLeavesItsPinsHasDropped() {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("96"), in("48"), in("12"));
    draft.bays = List.of(SampleJobs.bay(1));
    Strength strength = of(draft);
    assertThat(find(strength, "engagement-years").value().value()).isNegative();
    Finding finding = ofKind(strength, "engagement-years").getFirst();
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.what()).contains("beyond its pins, and it drops").doesNotContain("only 0");
  }

  /** Its back edge comes forward by as much as it shrinks. */
  @Test
  void aSolidShelfSlidesOffSoonerWhereItShrinks() {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(Shelving.bay(Shelving.shelves("oak", List.of()), SampleJobs.pins()));
    draft.settings =
        draft
            .settings
            .with(Setting.HUMIDITY_LOW, new SettingValue.OfNumber(10))
            .with(Setting.BENCH_HUMIDITY, new SettingValue.OfNumber(75));
    Figure off = find(of(draft), "slides-off");
    assertThat(input(off, "w")).isGreaterThan(5);
    assertThat(off.value().value()).isCloseTo(input(off, "b") - input(off, "w"), within(1e-9));
    assertThat(find(of(new CaseDraft()), "slides-off").formula()).isEqualTo("b");
  }

  private static Support standards() {
    return new Support.Standards(
        Support.Mounting.SURFACE,
        in("5/8"),
        in("3/16"),
        in("1/2"),
        in("3/4"),
        in("1/16"),
        in("1/8"),
        in("72"));
  }

  /** Nothing says what a standard bears until its maker does. */
  @Test
  void standardsOfNoRatingAreSaidToBeHeldAgainstNothing() {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(Shelving.bay(Shelving.shelves("ply", List.of()), standards()));
    assertThat(ofKind(of(draft), "support-unrated"))
        .extracting(Finding::severity)
        .containsExactly(Severity.NOTE);
    draft.settings = draft.settings.with(Setting.SUPPORT_RATING, new SettingValue.OfNumber(1000));
    assertThat(ofKind(of(draft), "support-unrated")).isEmpty();
    assertThat(ofKind(of(new CaseDraft()), "support-unrated")).isEmpty();
  }

  /** By statics two rows carry; the plate beside it has all three. */
  @Test
  void sixSupportsAreNotTakenForFour() {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("30"), in("48"), in("24"));
    assertThat(find(of(draft), "load-front").title())
        .endsWith("were there none half way between front and back");
    assertThat(find(of(new CaseDraft()), "load-front").title())
        .isEqualTo("load on each front support");
  }
}
