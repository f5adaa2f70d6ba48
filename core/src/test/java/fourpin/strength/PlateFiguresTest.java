package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.PlateShelving.check;
import static fourpin.strength.PlateShelving.find;
import static fourpin.strength.PlateShelving.input;
import static fourpin.strength.PlateShelving.load;
import static fourpin.strength.PlateShelving.set;
import static fourpin.strength.PlateShelving.shelves;
import static fourpin.strength.PlateShelving.value;
import static fourpin.strength.Shelving.glass;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Edging;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the plan says of shelves as plates. */
@ExtendWith(CommaDecimals.class)
class PlateFiguresTest {

  /** Without a strip, beam and plate of the same shelf are 5 % apart at the most. */
  @ParameterizedTest
  @ValueSource(strings = {"ply", "oak"})
  void aPlainShelfSagsAsItsBeam(String material) {
    ShelfAnswer shelf = check(shelves(material)).shelves().getFirst();
    double beam = value(shelf, "sag-beam");
    for (String place : List.of("plate-front", "plate-middle", "plate-back")) {
      assertThat(value(shelf, place)).isCloseTo(beam, withPercentage(5));
    }
    assertThat(value(shelf, "plate-stress")).isCloseTo(value(shelf, "stress"), withPercentage(5));
    assertThat(value(shelf, "plate-load-front"))
        .isCloseTo(value(shelf, "load-front"), withPercentage(0.01));
    double most =
        Stream.of("plate-front", "plate-middle", "plate-back")
            .mapToDouble(place -> value(shelf, place))
            .max()
            .orElseThrow();
    assertThat(value(shelf, "sag-now")).isEqualTo(most);
  }

  /** A strip holds its own edge up; the other one is little better off than without it. */
  @Test
  void aStripInFrontHoldsTheFrontUp() {
    double bare = value(check(shelves("ply")).shelves().getFirst(), "plate-back");
    CaseDraft draft = shelves("ply", SampleJobs.strip("3/4", "1 1/2"));
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    double beam = value(shelf, "sag-beam");
    assertThat(value(shelf, "plate-front")).isLessThan(beam);
    assertThat(value(shelf, "plate-back")).isBetween(beam, bare);
    assertThat(find(shelf, "plate-stress").orElseThrow().title()).contains("front strip");
    Figure front = find(shelf, "plate-front").orElseThrow();
    double height = 1.5 * 25.4;
    assertThat(input(front, "E A") * height * height / 12)
        .isCloseTo(input(front, "E I"), withPercentage(1e-6));
  }

  /**
   * The same by the energy of two half waves, worked by hand with {@code w = (A + B η) sin(π x /
   * l)}, η from -1 at the strip to 1: a plate stiff across sags 0.69 and 2.16 times as far as the
   * beam.
   */
  @Test
  void aStripInFrontDoesWhatTheEnergySays() {
    CaseDraft draft = shelves("ply", SampleJobs.strip("3/4", "1 1/2"));
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    double beam = value(shelf, "sag-beam");
    assertThat(value(shelf, "plate-front") / beam).isCloseTo(0.69, within(0.1));
    assertThat(value(shelf, "plate-back") / beam).isCloseTo(2.16, within(0.2));
  }

  /** An edge that its beam would let pass fails, and passes with the strip that the cure names. */
  @Test
  void anEdgeThatSagsMoreThanTheBeamFails() {
    CaseDraft draft = shelves("ply", SampleJobs.strip("3/4", "1 1/2"));
    load(draft, 0.25);
    Strength strength = check(draft);
    ShelfAnswer shelf = strength.shelves().getFirst();
    assertThat(value(shelf, "sag-beam")).isLessThan(shelf.limitNow().value().value());
    Finding sag = ofKind(strength, "sag").getFirst();
    assertThat(sag.severity()).isEqualTo(Severity.ERROR);
    assertThat(sag.what()).contains("sag at the back edge by").contains("are allowed");
    assertThat(sag.remedies())
        .extracting(Finding.Remedy::what)
        .anyMatch(what -> what.contains("to the front edge and one to the back edge"));
    assertThat(ofKind(check(withBothStrips(draft)), "sag")).isEmpty();
  }

  /** At its largest load it uses all that is allowed, and not less, where that is worst. */
  @ParameterizedTest
  @ValueSource(strings = {"ply", "oak"})
  void theLargestLoadUsesAllThatIsAllowed(String material) {
    CaseDraft draft = shelves(material, SampleJobs.strip("3/4", "1 1/2"));
    load(draft, 0.25);
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    load(draft, value(shelf, "largest-load"));
    Strength full = check(draft);
    assertThat(full.shelves()).allSatisfy(s -> assertThat(s.beyond()).isEmpty());
    load(draft, (1 + 1e-6) * value(shelf, "largest-load"));
    assertThat(check(draft).shelves()).allSatisfy(s -> assertThat(s.beyond()).hasSize(1));
  }

  /** Books less deep than the shelf, lined up with its front, bend the front edge more. */
  @Test
  void booksAtTheFrontBendTheFront() {
    ShelfAnswer shelf = check(shelves("ply")).shelves().getFirst();
    Figure row = find(shelf, "plate-front-row").orElseThrow();
    assertThat(row.value().value()).isGreaterThan(value(shelf, "plate-front"));
    assertThat(input(row, "d")).isEqualTo(6.5 * 25.4);
    CaseDraft unnamed = shelves("ply");
    load(unnamed, 0.3);
    Figure assumed = find(check(unnamed).shelves().getFirst(), "plate-front-row").orElseThrow();
    assertThat(input(assumed, "d")).isEqualTo(6.5 * 25.4);
  }

  /** What the cure says, stated in the job. */
  private static CaseDraft withBothStrips(CaseDraft draft) {
    Edging front = SampleJobs.strip("3/4", "1 1/2");
    Edging back =
        new Edging(
            front.kind(),
            front.material(),
            front.thickness(),
            front.height(),
            List.of(Edging.Edge.BACK));
    CaseDraft both = shelves("ply", front, back);
    both.load = draft.load;
    return both;
  }

  /**
   * By statics, of an even load on one half a shelf's near supports carry three quarters but for
   * what hangs over, and of its own weight a half: on each of two alike that is W / 4 + Q (l / 4 +
   * l / 2 - 2 c) / (l - 2 c) / 4, with Q on the half. Its middle sags by half of what a full load
   * adds there, by superposition; a beam sags 1.008 times as much at the most (0.006563 over 5 /
   * 768).
   */
  @Test
  void aShelfLoadedOnOneHalf() {
    CaseDraft draft = shelves("ply");
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    Figure half = find(shelf, "plate-half").orElseThrow();
    double l = input(half, "l");
    double c = input(half, "c");
    double own = input(half, "g") * l;
    double load = input(half, "q") * l / 2;
    double near = own / 2 + load * (l - c - l / 4) / (l - 2 * c);
    assertThat(value(shelf, "plate-half-push")).isCloseTo(near / 2, withPercentage(3));
    assertThat(value(shelf, "plate-half-lifted")).isZero();
    load(draft, 0);
    double empty = value(check(draft).shelves().getFirst(), "plate-middle");
    double full = value(shelf, "plate-middle");
    assertThat(half.value().value()).isCloseTo((empty + full) / 2 * 1.008, withPercentage(2));
  }

  /** Rows alike far from both edges do not twist an even shelf; a front row far back does. */
  @Test
  void aShelfTwistsWhereItsRowsAreUnlike() {
    CaseDraft draft = shelves("mdf");
    Material mdf = SampleJobs.sheet("mdf", "MDF", "3/4", "0.72");
    double alike = value(check(draft, mdf).shelves().getFirst(), "plate-half-twist");
    set(draft, Setting.FRONT_ROW, new SettingValue.OfLength(in("4")));
    double unlike = value(check(draft, mdf).shelves().getFirst(), "plate-half-twist");
    assertThat(alike).isZero();
    assertThat(unlike).isGreaterThan(1e-3);
  }

  /** The hand that tips the shelf is the one that statics names. */
  @Test
  void aHandTipsAShelfWhereStaticsSaysSo() {
    CaseDraft draft = shelves("ply");
    double tips = value(check(draft).shelves().getFirst(), "tipping");
    set(draft, Setting.HAND_PUSH, new SettingValue.OfNumber(0.99 * tips));
    Strength before = check(draft);
    assertThat(ofKind(before, "shelf-tips")).isEmpty();
    assertThat(value(before.shelves().getFirst(), "hand-front")).isPositive();
    set(draft, Setting.HAND_PUSH, new SettingValue.OfNumber(1.01 * tips));
    Strength after = check(draft);
    assertThat(ofKind(after, "shelf-tips").getFirst().severity()).isEqualTo(Severity.ERROR);
    assertThat(ofKind(after, "shelf-tips").getFirst().figures()).hasSize(1);
    assertThat(find(after.shelves().getFirst(), "hand-front")).isEmpty();
  }

  @Test
  void deepShelvesLieOnSixSupports() {
    CaseDraft draft = shelves("ply");
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("84"), in("20"));
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    Figure front = find(shelf, "plate-load-front").orElseThrow();
    double all =
        2
            * (front.value().value()
                + value(shelf, "plate-load-middle")
                + value(shelf, "plate-load-back"));
    assertThat(all)
        .isCloseTo((input(front, "q") + input(front, "g")) * input(front, "l"), within(1e-6));
    assertThat(value(shelf, "plate-load-middle")).isGreaterThan(front.value().value());
  }

  @Test
  void fixedShelvesAreHingedAtTheirEnds() {
    CaseDraft draft = new CaseDraft();
    Bay held =
        new Bay(
            Optional.empty(),
            List.of(in("42")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    draft.bays = List.of(held, held);
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    double beam = value(shelf, "sag-beam");
    assertThat(value(shelf, "plate-front")).isCloseTo(beam, withPercentage(4));
    assertThat(shelf.plate())
        .extracting(Figure::id)
        .noneMatch(id -> id.contains("low-support") || id.contains("plate-load"));
  }

  @Test
  void glassIsStressedAsItsBeamSays() {
    ShelfAnswer shelf = check(shelves("glass"), glass("1/2")).shelves().getFirst();
    assertThat(value(shelf, "plate-stress")).isCloseTo(value(shelf, "stress"), withPercentage(6));
  }

  /** Rows that a bay moves off its shelf leave no plate to speak of. */
  @Test
  void shelvesBesideTheirSupportsAreNoPlates() {
    CaseDraft draft = shelves("ply");
    set(draft, Setting.FRONT_ROW, new SettingValue.OfLength(in("5")));
    Bay bay = draft.bays.getFirst();
    Bay moved =
        new Bay(
            bay.width(),
            bay.fixedShelves(),
            bay.shelves(),
            bay.supports(),
            bay.load(),
            in("7"),
            in("0"));
    draft.bays = List.of(moved, moved);
    assertThat(check(draft).shelves()).allSatisfy(s -> assertThat(s.plate()).isEmpty());
  }

  /**
   * Torsion of a rectangle, {@code k a b³}: k 0.1406, 0.196, 0.229, 0.263, 0.312 for sides as 1,
   * 1.5, 2, 3 and 10 to 1 (Timoshenko and Goodier, Theory of Elasticity, table of chapter 10, from
   * memory).
   */
  @ParameterizedTest
  @CsvSource({"1, 0.1406", "1.5, 0.196", "2, 0.229", "3, 0.263", "10, 0.312"})
  void stripsTwistAsTheTableSays(double ratio, double factor) {
    assertThat(Flat.torsion(20, ratio * 20) / (ratio * 160_000))
        .isCloseTo(factor, withPercentage(0.5));
    assertThat(Flat.torsion(ratio * 20, 20)).isEqualTo(Flat.torsion(20, ratio * 20));
  }
}
