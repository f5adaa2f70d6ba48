package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shelves;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.PlateSolver;
import fourpin.strength.plate.Rigidity;
import java.util.ArrayList;
import java.util.Collections;
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

  private static final double GRAVITY = 9.80665;
  private static final Made DEEP_GLASS = Made.plain(glass("0.23622"), 682, Made.Layers.ONE);
  private static final ShelfLimits GLASS_LIMITS =
      new ShelfLimits(
          ratio(1),
          ratio(600),
          ratio(384),
          Optional.of(Sourced.stated(Quantity.of(4, QuantityUnit.STRESS))));

  private static Strength check(CaseDraft draft, Material... more) {
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.addAll(List.of(more));
    Job all = JobDraft.changed(job, d -> d.materials = materials);
    return StrengthChecker.check(all, CaseworkBuilder.build(all).cases());
  }

  /** Two bays with one shelf each. */
  private static CaseDraft shelves(String material, Edging... edging) {
    CaseDraft draft = new CaseDraft();
    Shelves one = new Shelves(new Shelves.Placing.Evenly(1), material, List.of(edging), in("0"));
    Bay bay =
        new Bay(
            Optional.empty(),
            List.of(),
            Optional.of(one),
            Optional.of(SampleJobs.pins()),
            Optional.empty());
    draft.bays = List.of(bay, bay);
    return draft;
  }

  private static void load(CaseDraft draft, double newtonPerMm) {
    draft.load = Optional.of(new Load.PerLength(Quantity.of(newtonPerMm, QuantityUnit.LINE_LOAD)));
  }

  private static void set(CaseDraft draft, Setting setting, SettingValue value) {
    draft.settings = draft.settings.with(setting, value);
  }

  private static Material glass(String thickness) {
    return new Material(
        "glass",
        Material.Kind.GLASS,
        "glass, tempered",
        in(thickness),
        Optional.empty(),
        Material.Grain.NONE,
        Optional.empty(),
        Optional.empty());
  }

  private static Optional<Figure> find(ShelfAnswer shelf, String end) {
    return shelf.figures().stream().filter(f -> f.id().endsWith("/" + end)).findFirst();
  }

  private static double value(ShelfAnswer shelf, String end) {
    return find(shelf, end).orElseThrow().value().value();
  }

  private static double input(Figure figure, String symbol) {
    return figure.inputs().stream()
        .filter(input -> input.symbol().equals(symbol))
        .mapToDouble(input -> input.value().value())
        .findFirst()
        .orElseThrow();
  }

  private static List<Finding> ofKind(Strength strength, String kind) {
    return strength.findings().stream().filter(f -> f.kind().equals(kind)).toList();
  }

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
    assertThat(find(check(unnamed).shelves().getFirst(), "plate-front-row")).isEmpty();
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

  /** The formulas that are printed, worked out from the inputs that are printed. */
  @Test
  void theWorkingOfALowSupportGivesItsFigures() {
    CaseDraft draft = shelves("oak");
    set(draft, Setting.LOW_SUPPORT, new SettingValue.OfLength(in("1/8")));
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    Figure load = find(shelf, "low-support-load").orElseThrow();
    double newton = (input(load, "R") - input(load, "r₀")) / input(load, "s");
    assertThat(newton).isPositive();
    assertThat(load.value().value()).isCloseTo(newton / GRAVITY, within(1e-9));
    Figure closed = find(shelf, "low-support-closed").orElseThrow();
    double pushes = input(closed, "r₀") + input(closed, "s") * input(closed, "Q");
    assertThat(closed.value().value())
        .isCloseTo(input(closed, "d") * pushes / input(closed, "R"), within(1e-9));
  }

  /** A stiff shelf under a light load rocks on a low support; a limp one, or level pins, do not. */
  @Test
  void stiffShelvesRock() {
    CaseDraft draft = shelves("oak");
    load(draft, 0.005);
    set(draft, Setting.LOW_SUPPORT, new SettingValue.OfLength(in("3/16")));
    List<Finding> rocks = ofKind(check(draft), "shelf-rocks");
    assertThat(rocks).hasSize(1);
    assertThat(rocks.getFirst().severity()).isEqualTo(Severity.DOUBT);
    assertThat(rocks.getFirst().what())
        .startsWith("shelves 1-S1, 2-S1: with one support 0.188 in low, it rocks until ");
    assertThat(rocks.getFirst().figures()).hasSize(2);
    load(draft, 1);
    assertThat(ofKind(check(draft), "shelf-rocks")).isEmpty();
    load(draft, 0.005);
    set(draft, Setting.LOW_SUPPORT, new SettingValue.OfLength(in("0")));
    Strength level = check(draft);
    assertThat(ofKind(level, "shelf-rocks")).isEmpty();
    assertThat(find(level.shelves().getFirst(), "low-support-load")).isEmpty();
  }

  /**
   * On six supports a low one in the middle of the depth lets nothing rock: four corners carry the
   * shelf. Of low corners the worst closes at the load that is named, by the supports that touch of
   * themselves: a little less and a corner is free, a little more and all push.
   */
  @Test
  void onSixSupportsOnlyCornersRock() {
    CaseDraft draft = shelves("oak");
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("84"), in("20"));
    ShelfAnswer shelf = check(draft).shelves().getFirst();
    Figure load = find(shelf, "low-support-load").orElseThrow();
    Figure bent = find(shelf, "plate-middle").orElseThrow();
    Plate plate = onSix(bent);
    double own = input(bent, "g") / input(bent, "D");
    double closing = load.value().value() * GRAVITY / (input(bent, "l") * input(bent, "D"));
    double low = input(load, "d");
    assertThat(corners(plate, own, 2, low)).allMatch(push -> push > 0);
    assertThat(List.of(0, 1, 4, 5))
        .allMatch(
            i -> corners(plate, own + 1.01 * closing, i, low).stream().allMatch(push -> push > 0))
        .anyMatch(
            i -> corners(plate, own + 0.99 * closing, i, low).stream().anyMatch(push -> push <= 0));
  }

  private static Plate onSix(Figure bent) {
    double depth = input(bent, "D");
    double front = input(bent, "a");
    double back = depth - input(bent, "b");
    List<Plate.Support> six = new ArrayList<>();
    for (double y : List.of(front, (front + back) / 2, back)) {
      six.add(new Plate.Support(input(bent, "c"), y));
      six.add(new Plate.Support(input(bent, "l") - input(bent, "c"), y));
    }
    Rigidity rigidity =
        new Rigidity(
            input(bent, "Dx"),
            input(bent, "Dy"),
            input(bent, "ν") * input(bent, "Dy"),
            input(bent, "Dxy"));
    return Plate.even(input(bent, "l"), depth, rigidity, Plate.Edges.FREE, six);
  }

  /** How hard the corners push under an even pressure with one support low. */
  private static List<Double> corners(Plate plate, double pressure, int support, double low) {
    List<Double> lows = new ArrayList<>(Collections.nCopies(6, 0.0));
    lows.set(support, low);
    List<Double> pushes =
        new PlateSolver(plate)
            .under(List.of(plate.evenly(pressure)), lows)
            .orElseThrow()
            .reactions();
    return List.of(pushes.get(0), pushes.get(1), pushes.get(4), pushes.get(5));
  }

  /** No load is named that the shelf could not bear. */
  @Test
  void aShelfThatRocksWhateverItMayBearIsSaidToDoSo() {
    CaseDraft draft = shelves("oak");
    load(draft, 0.005);
    set(draft, Setting.LOW_SUPPORT, new SettingValue.OfLength(in("3/16")));
    assertThat(find(check(draft).shelves().getFirst(), "low-support-most")).isEmpty();
    set(draft, Setting.SAG_LIMIT, new SettingValue.OfNumber(2000));
    Strength strength = check(draft);
    Figure most = find(strength.shelves().getFirst(), "low-support-most").orElseThrow();
    assertThat(most.value().value())
        .isCloseTo(input(most, "q₀") * input(most, "l") / GRAVITY, within(1e-9))
        .isLessThan(input(most, "Q₀"));
    assertThat(ofKind(strength, "shelf-rocks").getFirst().what())
        .contains("it rocks under any load within its limits, up to ");
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

  /**
   * A glass shelf deeper than long bends from front to back. An energy solution in other functions
   * (Ritz, polynomials over the whole plate, supports that only push) gives 6.36 MPa across at the
   * centre and 6.96 MPa in the middle of the end edges, under 50 kg on each metre.
   */
  @Test
  void glassIsStressedMostInAnyDirection() {
    double most = deepGlass(0.4903).loaded().stress().get();
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
            List.of());
    return new Verdict(glass, new PlateBending.Memory());
  }

  private static Sourced mm(double length) {
    return Sourced.stated(Quantity.of(length, QuantityUnit.LENGTH));
  }

  private static Sourced ratio(double ratio) {
    return Sourced.stated(Quantity.of(ratio, QuantityUnit.RATIO));
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
