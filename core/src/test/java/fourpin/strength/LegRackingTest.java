package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Racks.back;
import static fourpin.strength.Racks.find;
import static fourpin.strength.Racks.of;
import static fourpin.strength.Racks.value;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Back;
import fourpin.job.CaseDraft;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Unit;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far the part of a case below its bottom sways: its legs, and the kick that holds them. */
@ExtendWith(CommaDecimals.class)
class LegRackingTest {

  private static Consumer<CaseDraft> onLegs(String height, String kick) {
    return d -> {
      back(d, Back.Kind.RABBET);
      d.kick = Optional.of(new Kick(in(height), in("0"), kick));
    };
  }

  /** By hand: a frame above, legs below, each with its burden; two equations of moments. */
  @ParameterizedTest
  @CsvSource({"3.5, ply", "20, ply", "20, back"})
  void whatStandsBelowTheBottomSwaysToo(String height, String kick) {
    Figure sway = find(of(onLegs(height, kick)), "sway").orElseThrow();
    double above = input(sway, "J") + input(sway, "K") - input(sway, "B");
    double below = input(sway, "L") - input(sway, "D");
    double coupled = input(sway, "C");
    double h = input(sway, "h");
    double l = input(sway, "l");
    double push = input(sway, "P");
    assertThat(sway.value().value() * (above * below - coupled * coupled))
        .isCloseTo(
            push * (below * h * h + 2 * coupled * h * l + above * l * l), withPercentage(1e-6));
    assertThat(l).isCloseTo(25.4 * (Double.parseDouble(height) + 0.375), within(1.0));
  }

  /** All that stands on the legs leans them, as high as they are; what is in the legs less. */
  @Test
  void allThatTheCaseWeighsStandsOnItsLegs() {
    Strength strength = of(onLegs("20", "ply"));
    Figure sway = find(strength, "sway").orElseThrow();
    double weight =
        strength.cases().getFirst().standing().stream()
            .filter(f -> f.id().equals("north/weight-up-loaded"))
            .flatMap(f -> f.inputs().stream())
            .filter(i -> i.symbol().equals("F"))
            .mapToDouble(i -> i.value().value())
            .sum();
    double onTop =
        strength.cases().getFirst().standing().stream()
            .filter(f -> f.id().equals("north/floor-load"))
            .mapToDouble(f -> input(f, "F₃"))
            .sum();
    assertThat(onTop).isPositive();
    weight += onTop;
    assertThat(input(sway, "D"))
        .isBetween(0.95 * weight * input(sway, "l"), weight * input(sway, "l"));
  }

  /** Four screws 3 3/4 in apart, pulled as stiffly as they slide; 15 in are bored for four. */
  @Test
  void aKickHoldsItsLegsByItsScrews() {
    Strength strength = of(onLegs("20", "ply"));
    Figure kick = find(strength, "sway-kick-stiffness").orElseThrow();
    double squares =
        kick.inputs().stream()
            .filter(i -> i.symbol().equals("r"))
            .mapToDouble(i -> i.value().value() * i.value().value())
            .sum();
    assertThat(squares).isCloseTo(2 * 25.4 * 25.4 * (2.5 * 2.5 + 7.5 * 7.5), within(1e-6));
    double end = input(kick, "k") * squares;
    assertThat(kick.value().value())
        .isCloseTo(
            2
                / (1 / end
                    + input(kick, "b") / (6 * input(kick, "E I"))
                    + 2 / (input(kick, "b") * input(kick, "G A"))),
            withPercentage(1e-9));
    assertThat(find(strength, "sway").orElseThrow().title()).contains("braced by the kick");
  }

  @Test
  void aKickTooThinForItsScrewsIsNotCountedOn() {
    Strength strength = of(onLegs("20", "back"));
    assertThat(find(strength, "sway-kick-stiffness")).isEmpty();
    assertThat(find(strength, "sway").orElseThrow().title())
        .contains("the kick too thin for its screws and not counted on");
    assertThat(value(strength, "sway")).isGreaterThan(10 * value(of(onLegs("20", "ply")), "sway"));
  }

  /** Tall legs in butt joints under books, and no kick that holds: cures say what would. */
  @Test
  void legsThatLeanOverAreAnErrorAndAKickThatHoldsCuresIt() {
    Consumer<CaseDraft> tall =
        onLegs("60", "back")
            .andThen(
                d -> {
                  d.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("110"), in("8"));
                  d.bottomJoint = CaseDraft.joint(Joint.Kind.BUTT, "0");
                });
    Finding falls = ofKind(of(tall), "case-sways").getFirst();
    assertThat(falls.severity()).isEqualTo(Severity.ERROR);
    assertThat(falls.what()).contains("gives way below its bottom first");
    assertThat(falls.place().part()).contains("K");
    assertThat(falls.remedies().getFirst().what()).startsWith("make the kick of 'ply'");
    assertThat(
            ofKind(
                of(tall.andThen(d -> d.kick = Optional.of(new Kick(in("60"), in("0"), "ply")))),
                "case-sways"))
        .isEmpty();
  }

  /** Boards in front and at the back hold the legs twice as stiffly, as the cure told. */
  @Test
  void aSecondBoardHoldsLegsAsItsCureSays() {
    Consumer<CaseDraft> legs = onLegs("20", "ply");
    Consumer<CaseDraft> strict =
        legs.andThen(
            d -> {
              d.set(Setting.SWAY_PUSH, 2000);
              d.set(Setting.SWAY_LIMIT, 1000);
            });
    Finding sways = ofKind(of(strict), "case-sways").getFirst();
    String cure =
        sways.remedies().stream()
            .map(Remedy::what)
            .filter(what -> what.startsWith("screw a second board like the kick"))
            .findFirst()
            .orElseThrow();
    Strength board =
        of(
            strict.andThen(
                d ->
                    d.settings =
                        d.settings.with(Setting.BEHIND_KICK, new SettingValue.OfChoice("board"))));
    assertThat(value(board, "sway-kick-stiffness"))
        .isCloseTo(2 * value(of(legs), "sway-kick-stiffness"), withPercentage(1e-9));
    assertThat(cure)
        .contains(", and set behind-kick to board: sway ")
        .contains("sway " + find(board, "sway").orElseThrow().value().text(Unit.INCH));
    assertThat(find(board, "sway").orElseThrow().title())
        .contains("braced by the kick and a second one alone");
  }

  /** A loose back is not reached where the legs give first. */
  @Test
  void aLooseBackOnLegsIsWorkedOutAsTheFormulaSays() {
    Strength strength =
        of(
            d -> {
              back(d, Back.Kind.GROOVE);
              d.kick = Optional.of(new Kick(in("20"), in("0"), "ply"));
            });
    Figure sway = find(strength, "sway").orElseThrow();
    double above = input(sway, "J") + input(sway, "K") - input(sway, "B");
    double below = input(sway, "L") - input(sway, "D");
    double c = input(sway, "C");
    double h = input(sway, "h");
    double l = input(sway, "l");
    double under = input(sway, "P") * l;
    double moment = input(sway, "P") * h + input(sway, "K") * input(sway, "φ");
    assertThat(sway.value().value())
        .isCloseTo(
            (h * (below * moment + c * under) + l * (above * under + c * moment))
                / (above * below - c * c),
            withPercentage(1e-6));
  }
}
