package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;
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

  /** Sides of plywood, turned by five shelves of heavy things on pins. */
  private static CaseDraft bowing(String play, String reach, String least) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("34"), in("79"), in("11"));
    Bay bay = SampleJobs.bay(5);
    Support pins = new Support.Pins(in("1/4"), in("3/8"), in(reach), in("1/8"));
    draft.bays =
        List.of(new Bay(Optional.empty(), List.of(), bay.shelves(), Optional.of(pins), HEAVY));
    draft.settings =
        draft
            .settings
            .with(Setting.END_PLAY, new SettingValue.OfLength(in(play)))
            .with(Setting.LEAST_ENGAGEMENT, new SettingValue.OfLength(in(least)));
    return draft;
  }

  private static final Optional<Load> HEAVY =
      Optional.of(new Load.PerLength(Quantity.of(0.5, QuantityUnit.LINE_LOAD)));

  private static List<String> slipping(CaseDraft draft) {
    return ofKind(of(draft), "engagement-years").stream()
        .flatMap(finding -> finding.remedies().stream())
        .map(Finding.Remedy::what)
        .toList();
  }

  /** Done as told, each leaves as much of the pin under the shelf as it says, and no finding. */
  @Test
  void curesOfPinsThatSlipOutHoldWhenTheyAreDone() {
    List<String> cures = slipping(bowing("1/8", "3/8", "1/4"));
    assertThat(cures).hasSize(2);
    assertThat(cures.getFirst()).startsWith("cut the shelves closer, for an end-play of 3/32 in: ");
    done(cures.getFirst(), bowing("3/32", "3/8", "1/4"));
    assertThat(cures.getLast()).startsWith("use pins that reach 0.406 in out of the side: ");
    done(cures.getLast(), bowing("1/8", "13/32", "1/4"));
  }

  private static void done(String cure, CaseDraft draft) {
    Strength strength = of(draft);
    assertThat(ofKind(strength, "engagement-years")).isEmpty();
    assertThat(cure)
        .contains("then " + find(strength, "engagement-years").value().text(Unit.INCH) + " of");
  }

  private static CaseDraft wide(String play, String reach) {
    CaseDraft draft = bowing(play, reach, "1/8");
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("60"), in("79"), in("11"));
    return draft;
  }

  /** Of each two the first that do; done as told, they leave what they say. */
  @Test
  void whereNoCureAloneKeepsPinsTwoDo() {
    List<String> cures = slipping(wide("1/8", "1/4"));
    assertThat(cures).hasSize(3).allMatch(cure -> cure.contains(", and "));
    assertThat(cures.getFirst())
        .startsWith(
            "cut the shelves closer, for an end-play of 1/16 in, and use pins that reach 0.5 in out"
                + " of the side: ");
    done(cures.getFirst(), wide("1/16", "1/2"));
    assertThat(cures.getLast())
        .matches(
            "use pins that reach 0.313 in out of the side, and stiffen the shelves, until they sag by"
                + " 0.73 in after years at the most: then 0.125 in of the pins lie .*");
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

  /** Whoever cuts cleats is their maker: nobody else can be asked. */
  @Test
  void cleatsAreTriedRatherThanAskedFor() {
    CaseDraft draft = new CaseDraft();
    Support cleats =
        new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("1"), in("3/4"), in("3/4"));
    draft.bays = List.of(Shelving.bay(Shelving.shelves("ply", List.of()), cleats));
    assertThat(ofKind(of(draft), "support-unrated").getFirst().remedies())
        .extracting(Finding.Remedy::what)
        .allMatch(what -> what.contains("load a pair on a scrap") && !what.contains("maker"));
  }

  /** Nothing says what a standard bears until its maker does. */
  @Test
  void standardsOfNoRatingAreSaidToBeHeldAgainstNothing() {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(Shelving.bay(Shelving.shelves("ply", List.of()), standards()));
    List<Finding> told = ofKind(of(draft), "support-unrated");
    assertThat(told).extracting(Finding::severity).containsExactly(Severity.NOTE);
    assertThat(told.getFirst().remedies())
        .extracting(Finding.Remedy::what)
        .containsExactly("ask its maker what one of them bears, and set support-rating");
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
