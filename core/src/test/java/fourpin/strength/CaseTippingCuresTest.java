package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding.Remedy;
import fourpin.job.CaseDraft;
import fourpin.job.Drawers;
import fourpin.job.QuantityReader;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What keeps a case from falling forward: each cure does what it says, and none is idle. */
@ExtendWith(CommaDecimals.class)
class CaseTippingCuresTest {

  private static final Pattern OUT = Pattern.compile("come out (.*?) at the most");
  private static final Pattern UNTIL = Pattern.compile("stands then until a push of ([0-9.]+) lbf");
  private static final Pattern HEAVIER = Pattern.compile("([0-9.]+) lb heavier");

  /**
   * A case that falls, or not.
   *
   * @param perBay doors; none at 0
   * @param drawers none at 0
   */
  private record Tipping(
      int perBay, double slope, double hangs, int drawers, String out, String mass, String depth) {

    /** Where nothing else is asked of it than to stand. */
    private Strength strength() {
      return pushed(0);
    }

    private Strength pushed(double push) {
      CaseDraft draft = new CaseDraft();
      draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in("36"), in(depth));
      draft.bays = List.of(SampleJobs.bay(1));
      draft.set(Setting.FLOOR_SLOPE, slope);
      draft.set(Setting.DOOR_PULL, hangs);
      draft.set(Setting.LIGHT_PUSH, push);
      draft.overlayDoors(perBay);
      return check(
          SampleJobs.job(
              drawers == 0 ? draft.order() : draft.order().holding(Optional.of(drawn()))));
    }

    private Drawers drawn() {
      return new Drawers(
          drawers, in("30"), in("18"), in(out), QuantityReader.MASS.read(mass).orThrow());
    }

    private boolean falls() {
      return !ofKind(strength(), "case-tips").isEmpty();
    }

    private List<Remedy> cures() {
      return ofKind(strength(), "case-tips").getFirst().remedies();
    }

    private Optional<Remedy> cure(String start) {
      return cures().stream().filter(r -> r.what().startsWith(start)).findFirst();
    }

    private Tipping level() {
      return new Tipping(perBay, 0, hangs, drawers, out, mass, depth);
    }

    private Tipping narrow() {
      return new Tipping(2, slope, hangs, drawers, out, mass, depth);
    }

    private Tipping with(int count, String further) {
      return new Tipping(perBay, slope, hangs, count, further, mass, depth);
    }
  }

  /**
   * Whatever a cure says of itself is so when the case is built so. A floor that falls by 1 mm on a
   * metre takes less than one in a hundred of what is lacking here, which is no cure.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 60",
    "1, 0, 60",
    "1, 5, 60",
    "1, 5, 100",
    "1, 40, 30",
    "2, 1, 150",
    "2, 5, 150",
    "2, 0, 150",
    "2, 50, 60"
  })
  void curesOfDoorsHoldWhenBuilt(int perBay, double slope, double hangs) {
    Tipping tips = new Tipping(perBay, slope, hangs, 0, "0", "0 kg", "12");
    assertThat(tips.falls()).isTrue();
    assertThat(tips.cure("level it").isPresent()).isEqualTo(slope >= 5);
    tips.cure("level it").ifPresent(cure -> assertTrue(cure, tips.level()));
    assertThat(tips.cure("hang two narrow doors").isPresent()).isEqualTo(perBay == 1);
    tips.cure("hang two narrow doors").ifPresent(cure -> assertTrue(cure, tips.narrow()));
    assertThat(tips.cure("take slides")).isEmpty();
  }

  private static void assertTrue(Remedy cure, Tipping then) {
    assertThat(cure.what().contains("it stands then")).isEqualTo(!then.falls());
    assertThat(cure.what().contains("cure that too")).isEqualTo(then.falls());
  }

  @ParameterizedTest
  @CsvSource({
    "3, 18, 10 kg, 0",
    "3, 18, 40 kg, 0",
    "3, 14, 20 kg, 200",
    "1, 18, 40 kg, 0",
    "2, 18, 20 kg, 0"
  })
  void curesOfDrawersHoldWhenBuilt(int count, String out, String mass, double leans) {
    Tipping tips = new Tipping(0, 0, leans, count, out, mass, "20");
    assertThat(tips.falls()).isTrue();
    assertThat(tips.cure("hang two narrow doors")).isEmpty();
    assertThat(tips.cure("level it")).isEmpty();
    tips.cure("take slides that let one").ifPresent(c -> assertTrue(c, tips.with(1, out)));
    if (count == 1) {
      assertThat(tips.cure("take slides that let one")).isEmpty();
    }
    tips.cure("take slides that come out")
        .ifPresent(
            cure -> {
              String most = group(OUT, cure.what());
              assertTrue(cure, tips.with(count, most));
              String more = "" + (in(most).inches() + 0.25);
              assertThat(in(more).isAtLeast(in(out)) || tips.with(count, more).falls()).isTrue();
            });
  }

  private static String group(Pattern pattern, String words) {
    Matcher matcher = pattern.matcher(words);
    assertThat(matcher.find()).isTrue();
    return matcher.group(1);
  }

  /** By hand: what is lacking over the lever of the bottom, rounded up to whole pounds. */
  @Test
  void aWeightOnTheBottomIsWhatIsLacking() {
    Tipping tips = new Tipping(1, 0, 100, 0, "0", "0 kg", "12");
    Figure hung =
        tips.strength().cases().getFirst().standing().stream()
            .filter(f -> f.id().endsWith("/tips-at-hung"))
            .findFirst()
            .orElseThrow();
    double lacks =
        input(hung, "G") * input(hung, "m")
            + input(hung, "Q") * (input(hung, "b") + input(hung, "a"))
            - input(hung, "F") * input(hung, "y");
    Remedy weigh = tips.cure("weigh its bottom down").orElseThrow();
    double pounds = Double.parseDouble(group(HEAVIER, weigh.cost()));
    assertThat(lacks).isPositive();
    double lever = lacks / (9.80665 * 0.45359237 * pounds);
    assertThat(lever).isCloseTo(6 * 25.4, within(8.0));
    assertThat(weigh.what()).contains("it stands then");
  }

  /**
   * By hand: a weight takes what is lacking and the light push at the top of a case that is lower
   * than a hand reaches, in whole pounds.
   */
  @Test
  void aWeightOnTheBottomStandsALightPushBesides() {
    Tipping tips = new Tipping(1, 0, 60, 0, "0", "0 kg", "12");
    double bare = pounds(ofKind(tips.strength(), "case-tips").getFirst().remedies());
    List<Remedy> cures = ofKind(tips.pushed(44), "case-tips").getFirst().remedies();
    double moment = 44 * 36 * 25.4;
    assertThat(pounds(cures) - bare)
        .isCloseTo(moment / (9.80665 * 0.45359237 * 6 * 25.4), within(4.0));
    assertThat(cures)
        .extracting(Remedy::what)
        .filteredOn(what -> what.startsWith("weigh its bottom down"))
        .singleElement()
        .satisfies(
            what ->
                assertThat(Double.parseDouble(group(UNTIL, what)) * 4.4482216)
                    .isBetween(44.0, 46.0));
  }

  private static double pounds(List<Remedy> cures) {
    return cures.stream()
        .filter(cure -> cure.what().startsWith("weigh its bottom down"))
        .mapToDouble(cure -> Double.parseDouble(group(HEAVIER, cure.cost())))
        .findFirst()
        .orElseThrow();
  }

  /** What only just stands is said to, with the push that is left and that asked for. */
  @Test
  void whatBarelyStandsIsToldAsSuch() {
    Tipping tips = new Tipping(1, 5, 60, 0, "0", "0 kg", "12");
    List<String> cures =
        ofKind(tips.pushed(300), "case-tips").getFirst().remedies().stream()
            .map(Remedy::what)
            .toList();
    assertThat(cures)
        .anyMatch(
            cure ->
                cure.contains("it then stands barely, until a push of")
                    && cure.endsWith("less than the light push of 67.4 lbf"));
  }

  /** What stands after one change comes before what only helps. */
  @Test
  void whatOnlyHelpsComesLast() {
    List<String> cures =
        new Tipping(1, 40, 100, 0, "0", "0 kg", "12").cures().stream().map(Remedy::what).toList();
    assertThat(cures.getFirst()).startsWith("fasten it to the wall");
    assertThat(cures.get(1)).startsWith("weigh its bottom down").contains("it stands then");
    assertThat(cures.subList(2, cures.size()))
        .isNotEmpty()
        .allMatch(cure -> cure.contains("it still lacks"));
  }
}
