package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.job.CaseDraft;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.SettingValue;
import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shelves that tip under a row in front, and what then holds. */
class TippingCuresTest {

  private static final List<String> WRONG =
      List.of("shelf-tips", "support-crushes", "support-rating", "pin-bends");

  private static final Pattern FARTHEST = Pattern.compile("it tips from more than (.* in) on");

  private static CaseDraft tipping(String things) {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.Holds(things));
    draft.settings =
        draft
            .settings
            .with(Setting.FRONT_ROW, new SettingValue.OfLength(in("5")))
            .with(Setting.HAND_PUSH, new SettingValue.OfNumber(0.1));
    return draft;
  }

  private static Strength strength(CaseDraft draft) {
    return check(SampleJobs.job(draft.order()));
  }

  private static List<Remedy> cures(CaseDraft draft, String kind) {
    return ofKind(strength(draft), kind).getFirst().remedies();
  }

  private static CaseDraft with(CaseDraft draft, List<Stated.OfSetting> all) {
    CaseDraft with = CaseDraft.of(draft.order());
    for (Stated.OfSetting one : all) {
      with.settings =
          with.settings.with(
              one.setting(), SettingReader.read(one.setting(), one.value(), Unit.INCH).orThrow());
    }
    return with;
  }

  private static List<Stated.OfSetting> settings(Remedy remedy) {
    return switch (remedy.stated().orElse(null)) {
      case Stated.OfSetting one -> List.of(one);
      case Stated.OfSettings(var all) -> all;
      case null, default -> List.of();
    };
  }

  /**
   * By moments about the front row, 100 mm behind the front edge, of a load of 100 N and a shelf of
   * 20 N whose middle lies 150 mm behind it.
   */
  @ParameterizedTest
  @CsvSource({"50, 1, 66.667, 26.667, 20", "50, 1.5, 66.667, 43.333, 20", "0, 1, 25, 60, 10"})
  void loadAndWeightBalance(double at, double margin, double middle, double held, double most) {
    Resting resting = new Resting(100, at, 20, 150);
    assertThat(resting.middle()).isCloseTo(middle, offset(0.001));
    assertThat(resting.heldDown(100, 150, margin)).isCloseTo(held, offset(0.001));
    assertThat(resting.most(100)).isCloseTo(most, offset(0.001));
  }

  /** The setback named is within a step of the one at which it tips; what is stated holds. */
  @Test
  void theFrontRowIsBroughtForwardAsFarAsItHasTo() {
    CaseDraft draft = tipping("discs in cases");
    Remedy forward = cures(draft, "shelf-tips").getFirst();
    assertThat(forward.what())
        .startsWith("bring the front row to ")
        .contains(" a support then carries ");
    List<Stated.OfSetting> stated = settings(forward);
    assertThat(stated).hasSize(1);
    assertThat(strength(with(draft, stated)).findings())
        .extracting(Finding::kind)
        .doesNotContain("shelf-tips");
    SettingValue.OfLength here =
        (SettingValue.OfLength)
            SettingReader.read(Setting.FRONT_ROW, stated.getFirst().value(), Unit.INCH).orThrow();
    CaseDraft further = CaseDraft.of(draft.order());
    further.settings =
        further.settings.with(
            Setting.FRONT_ROW, new SettingValue.OfLength(farthest(forward, here).plus(in("1/16"))));
    assertThat(ofKind(strength(further), "shelf-tips")).isNotEmpty();
  }

  private static Length farthest(Remedy forward, SettingValue.OfLength here) {
    Matcher named = FARTHEST.matcher(forward.what());
    return named.find()
        ? new LengthReader(Unit.INCH).read(named.group(1)).orThrow()
        : here.length();
  }

  /** In figures, where words alone stood. */
  @Test
  void whatHoldsItDownIsAForce() {
    List<String> cures =
        cures(tipping("discs in cases"), "shelf-tips").stream().map(Remedy::what).toList();
    assertThat(cures)
        .anyMatch(
            cure ->
                cure.matches(
                    "hold the shelf down over its back row .* each good for [0-9.]+ lbf, the load taken 1\\.5 times .*"));
    assertThat(cures).noneMatch(cure -> cure.contains("heavier or thicker"));
  }

  /** What a support carries is not said of a shelf that tips, but of one that does not any more. */
  @Test
  void supportsOfAShelfThatTipsAreCuredTogetherWithThat() {
    List<Remedy> ofPins = new ArrayList<>();
    for (double load = 0.1; load < 0.5; load += 0.05) {
      CaseDraft draft = tipping("discs in cases");
      draft.load = Optional.of(new Load.PerLength(Quantity.of(load, QuantityUnit.LINE_LOAD)));
      draft.settings = draft.settings.with(Setting.HAND_PUSH, new SettingValue.OfNumber(20));
      Strength strength = strength(draft);
      assertThat(ofKind(strength, "shelf-tips")).isNotEmpty();
      for (Finding crushes : ofKind(strength, "support-crushes")) {
        crushes.remedies().stream()
            .filter(cure -> cure.what().contains(" at the most"))
            .peek(cure -> assertNothingWrong(draft, cure))
            .forEach(ofPins::add);
      }
    }
    assertThat(ofPins)
        .isNotEmpty()
        .allMatch(cure -> cure.what().contains("bring the front row to "));
  }

  private static void assertNothingWrong(CaseDraft draft, Remedy cure) {
    List<Stated.OfSetting> stated = settings(cure);
    if (!stated.isEmpty()) {
      assertThat(strength(with(draft, stated)).findings())
          .as(cure.what())
          .extracting(Finding::kind)
          .doesNotContainAnyElementsOf(WRONG);
    }
  }

  /** One shelf tips, several tip. */
  @Test
  void theyAreSpokenOfInTheirNumber() {
    String what = ofKind(strength(tipping("discs in cases")), "shelf-tips").getFirst().what();
    assertThat(what).containsPattern(what.startsWith("shelves") ? " tip off " : " tips off ");
  }
}
