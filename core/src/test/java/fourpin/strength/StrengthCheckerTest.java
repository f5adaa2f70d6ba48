package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Casework;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.BoardStock;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shelves;
import fourpin.job.Sizes;
import fourpin.job.Supply;
import fourpin.job.Support;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(CommaDecimals.class)
class StrengthCheckerTest {

  private static Strength check(Job job) {
    Casework casework = CaseworkBuilder.build(job);
    assertThat(casework.cases()).hasSameSizeAs(job.cases());
    return StrengthChecker.check(job, casework.cases());
  }

  private static Strength check(Bay... bays) {
    return check(SampleJobs.job(SampleJobs.bookcase(bays)));
  }

  private static Bay bay(int shelves, Load load) {
    Bay bay = SampleJobs.bay(shelves);
    return new Bay(
        bay.width(), bay.fixedShelves(), bay.shelves(), bay.supports(), Optional.of(load));
  }

  private static Bay bay(Shelves shelves, Support support) {
    return new Bay(
        Optional.empty(), List.of(), Optional.of(shelves), Optional.of(support), Optional.empty());
  }

  private static Shelves shelves(String material, List<Edging> edging) {
    return new Shelves(new Shelves.Placing.Evenly(1), material, edging, in("0"));
  }

  private static List<Finding> ofKind(Strength strength, String kind) {
    return strength.findings().stream().filter(f -> f.kind().equals(kind)).toList();
  }

  static List<Figure> figures(ShelfAnswer shelf) {
    List<Figure> all =
        new ArrayList<>(
            List.of(
                shelf.span(),
                shelf.load(),
                shelf.sagNow(),
                shelf.sagYears(),
                shelf.limitNow(),
                shelf.limitYears()));
    shelf.atReferenceLoads().forEach(r -> all.addAll(List.of(r.load(), r.now(), r.years())));
    all.addAll(shelf.supports());
    all.addAll(shelf.others());
    return all;
  }

  private static double value(Figure figure, String symbol) {
    return figure.inputs().stream()
        .filter(input -> input.symbol().equals(symbol))
        .mapToDouble(input -> input.value().value())
        .findFirst()
        .orElseThrow();
  }

  private static Figure named(ShelfAnswer shelf, String end) {
    return figures(shelf).stream()
        .filter(figure -> figure.id().endsWith("/" + end))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyShelfHasItsAnswer() {
    Strength strength = check(SampleJobs.bay(3), SampleJobs.bay(2), SampleJobs.bay(4));
    assertThat(strength.shelves())
        .extracting(ShelfAnswer::mark)
        .containsExactly("1-S1", "1-S2", "1-S3", "2-S1", "2-S2", "3-S1", "3-S2", "3-S3", "3-S4");
  }

  @Test
  void everyFigureHasItsOwnIdAndItsWorking() {
    List<Figure> all =
        check(SampleJobs.bay(3), SampleJobs.bay(2)).shelves().stream()
            .flatMap(shelf -> figures(shelf).stream())
            .toList();
    Set<String> ids = new HashSet<>();
    assertThat(all)
        .hasSizeGreaterThan(100)
        .allSatisfy(
            figure -> {
              assertThat(ids.add(figure.id())).as(figure.id()).isTrue();
              assertThat(figure.id()).matches("north/shelf-\\d-s\\d/[a-z0-9-]+");
              assertThat(figure.inputs()).as(figure.id()).isNotEmpty();
              assertThat(figure.formula()).isNotBlank();
            });
  }

  /** The formula that is printed, worked out from the inputs that are printed, gives the value. */
  @Test
  void printedWorkingGivesThePrintedSag() {
    for (ShelfAnswer shelf : check(SampleJobs.bay(2), SampleJobs.bay(1)).shelves()) {
      Stream.concat(
              Stream.of(shelf.sagNow()),
              shelf.atReferenceLoads().stream().map(ShelfAnswer.ReferenceSag::now))
          .forEach(StrengthCheckerTest::sagFollowsFromItsInputs);
      assertThat(shelf.sagYears().value().value())
          .isCloseTo(value(shelf.sagYears(), "k") * value(shelf.sagYears(), "s"), within(1e-12));
      assertThat(shelf.limitNow().value().value())
          .isCloseTo(value(shelf.limitNow(), "L") / 600, within(1e-12));
    }
  }

  private static void sagFollowsFromItsInputs(Figure sag) {
    assertThat(sag.formula())
        .isEqualTo("(q + g) L² (5 L² - 24 c²) / (384 E I) + (q + g) L² / (8 G A)");
    double w = value(sag, "q") + value(sag, "g");
    double l2 = Math.pow(value(sag, "L"), 2);
    double c2 = Math.pow(value(sag, "c"), 2);
    double expected =
        w * l2 * (5 * l2 - 24 * c2) / (384 * value(sag, "E I")) + w * l2 / (8 * value(sag, "G A"));
    assertThat(sag.value().value()).isCloseTo(expected, within(expected * 1e-7));
  }

  /** The supports of one end carry half the load and weight, and balance it front to back. */
  @Test
  void supportsCarryAllOfIt() {
    ShelfAnswer shelf = check(SampleJobs.bay(1)).shelves().getFirst();
    Figure front = shelf.supports().getFirst();
    Figure back = shelf.supports().get(1);
    double both = front.value().value() + back.value().value();
    double w = value(front, "q") + value(front, "g");
    assertThat(2 * both).isCloseTo(w * (value(front, "L") + 2 * value(front, "c")), within(1e-6));
    double backAt = value(back, "D") - value(back, "b");
    assertThat(front.value().value() * value(front, "a") + back.value().value() * backAt)
        .isCloseTo(both * value(front, "y"), within(1e-6 * both * backAt));
  }

  /**
   * Worked example of the trade (statics): a shelf 11 in deep that weighs 8 lb, front row 2 in
   * behind its edge, tips at 14 lb on the edge; at 1.46 in (37 mm) 22 lb; at 1 in 36 lb.
   */
  @Test
  void tippingLoadIsTheOneOfStatics() {
    for (Map.Entry<String, Double> example :
        Map.of("2 in", 14.0, "37 mm", 22.0, "1 in", 36.0).entrySet()) {
      Job job = withSetting(Setting.FRONT_ROW, new SettingValue.OfLength(in(example.getKey())));
      Figure tipping = named(check(job).shelves().getFirst(), "tipping");
      double a = value(tipping, "a") / 25.4;
      double scaled = 8 * (5.5 - a) / a;
      assertThat(scaled).isCloseTo(example.getValue(), within(0.5));
      assertThat(tipping.value().value())
          .isCloseTo(
              value(tipping, "W")
                  * (value(tipping, "y") - value(tipping, "a"))
                  / value(tipping, "a"),
              within(1e-9));
    }
  }

  private static Job withSetting(Setting setting, SettingValue value) {
    CaseDraft draft = new CaseDraft();
    draft.settings = draft.settings.with(setting, value);
    return SampleJobs.job(draft.order());
  }

  /** 72 in outside, two sides and one partition of 23/32, pins that reach 3/8 in. */
  @Test
  void spanRunsFromPinToPin() {
    ShelfAnswer shelf = check(SampleJobs.bay(1), SampleJobs.bay(1)).shelves().getFirst();
    double clear = (72 - 3 * 23 / 32.0) / 2;
    assertThat(shelf.span().value().value() / 25.4).isCloseTo(clear - 0.375, within(1e-6));
    assertThat(shelf.load().value().text(Unit.INCH)).isEqualTo("25 lb/ft");
    assertThat(shelf.load().title()).isEqualTo("load of books, average");
  }

  /** Surface loads act on the depth: 40 lb/sq ft on a shelf d in deep is 40 d/12 lb/ft. */
  @Test
  void loadsOnTheSurfaceTakeTheDepth() {
    Quantity psf =
        Quantity.of(40 / QuantityUnit.AREA_LOAD.factor(Unit.INCH), QuantityUnit.AREA_LOAD);
    ShelfAnswer shelf = check(bay(1, new Load.PerArea(psf))).shelves().getFirst();
    double depth = value(shelf.load(), "D") / 25.4;
    double plf = shelf.load().value().value() * QuantityUnit.LINE_LOAD.factor(Unit.INCH);
    assertThat(plf).isCloseTo(40 * depth / 12, within(1e-9));
    // The second reference load is the same one.
    assertThat(shelf.atReferenceLoads().get(1).now().value().value())
        .isCloseTo(shelf.sagNow().value().value(), within(1e-12));
  }

  @Test
  void alikeShelvesThatSagAreFoundTogetherWithCures() {
    Strength strength = check(SampleJobs.bay(2), SampleJobs.bay(2));
    List<Finding> sags = ofKind(strength, "sag");
    assertThat(sags).hasSize(1);
    Finding sag = sags.getFirst();
    assertThat(sag.severity()).isEqualTo(Severity.ERROR);
    assertThat(sag.place().part()).contains("1-S1");
    assertThat(sag.place().spot()).isPresent();
    assertThat(sag.what()).isEqualTo(WHAT);
    assertThat(sag.remedies()).extracting(r -> r.what() + " | " + r.cost()).containsExactly(CURES);
  }

  private static final String WHAT =
      "shelves 1-S1, 1-S2, 2-S1, 2-S2 sag in the middle by 0.0986 in now and 0.197 in after years;"
          + " 0.0576 in and 0.09 in are allowed";

  private static final String[] CURES = {
    "glue two layers of 'ply' together: sag 0.0136 in now, 0.0272 in after years"
        + " | 5.59 lb heavier, each shelf",
    "glue a strip of 'oak', 3/4 x 1 1/2 in, to the front edge over its whole length:"
        + " sag 0.0418 in now, 0.0835 in after years | 0.657 lb heavier, each shelf",
    "put a partition in the middle: sag 0.00578 in now, 0.0116 in after years; it holds up to a"
        + " span of 26.5 in"
        + " | one more upright and its rows; twice as many shelves of half the length",
    "keep the load to 10.3 lb/ft | room for less"
  };

  /** A wide bay on thin particleboard under books, in a job that has no boards. */
  private static Job thin(String thickness) {
    Material board =
        new Material(
            "mel",
            Material.Kind.SHEET,
            "particleboard",
            in(thickness),
            Optional.empty(),
            Material.Grain.NONE,
            Optional.empty(),
            Optional.empty());
    Job job = withMaterial(board, bay(shelves("mel", List.of()), SampleJobs.pins()));
    return new Job(
        job.title(),
        job.revision(),
        job.unit(),
        job.style(),
        job.paper(),
        job.currency(),
        job.room(),
        job.materials().stream().filter(m -> m.kind() != Material.Kind.BOARD).toList(),
        job.sheets(),
        List.of(),
        job.cases(),
        job.settings(),
        job.shop());
  }

  /** A bay of 70 9/16 in: what one partition can't cure, more can; hardly any load is no cure. */
  @Test
  void shelvesThatHardlyCarryThemselvesGetRealCures() {
    Finding sag = ofKind(check(thin("5/8")), "sag").getFirst();
    assertThat(sag.what())
        .endsWith("; it does not carry its own weight within the limits, whatever its load");
    assertThat(sag.remedies())
        .extracting(Remedy::what)
        .isNotEmpty()
        .noneMatch(w -> w.startsWith("keep the load") || w.contains("own weight"))
        .anyMatch(w -> w.matches("put [2-9] partitions in, spread evenly: sag .*; it holds up.*"));
  }

  /** Without boards in the job a strip of a usual hardwood is named, and that it is not stated. */
  @Test
  void stripsAreNamedWithoutBoardsToo() {
    assertThat(ofKind(check(thin("1 1/8")), "sag").getFirst().remedies())
        .extracting(Remedy::what)
        .anyMatch(
            w -> w.contains("a strip of 'oak, white' (the job states no boards yet), 3/4 x "));
  }

  /** What a job file can't say of a fixed shelf alone is called work by hand. */
  @Test
  void curesOfFixedShelvesAreByHand() {
    Bay held =
        new Bay(
            Optional.empty(),
            List.of(in("42")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Finding sag = ofKind(check(held), "sag").getFirst();
    assertThat(sag.remedies())
        .extracting(Remedy::what)
        .filteredOn(w -> w.contains("glue") || w.contains("make it of"))
        .isNotEmpty()
        .allMatch(w -> w.contains("(by hand: a job file states this for all panels of a case"));
  }

  /** Stock boards of 5 1/2 in are no shelf of 11 in. */
  @Test
  void narrowBoardsAreGluedUp() {
    Material thick = SampleJobs.board("beech", "oak, white", "1 3/4");
    Job job = withMaterial(thick, SampleJobs.bay(2), SampleJobs.bay(2));
    assertThat(cures(job))
        .anyMatch(
            w -> w.startsWith("make it of 'beech', 1 3/4 in, glued up from narrower boards: "));
    BoardStock wide =
        new BoardStock(
            "beech", in("96"), in("12"), Optional.empty(), Optional.empty(), Supply.TO_BUY);
    Job stocked =
        new Job(
            job.title(),
            job.revision(),
            job.unit(),
            job.style(),
            job.paper(),
            job.currency(),
            job.room(),
            job.materials(),
            job.sheets(),
            List.of(wide),
            job.cases(),
            job.settings(),
            job.shop());
    assertThat(cures(stocked)).anyMatch(w -> w.startsWith("make it of 'beech', 1 3/4 in: "));
  }

  private static List<String> cures(Job job) {
    return ofKind(check(job), "sag").getFirst().remedies().stream().map(Remedy::what).toList();
  }

  /** Each cure that is named holds when the case is built with it. */
  @Test
  void namedStripHoldsWhenBuilt() {
    Remedy strip =
        ofKind(check(SampleJobs.bay(2), SampleJobs.bay(2)), "sag").getFirst().remedies().stream()
            .filter(r -> r.what().startsWith("glue a strip"))
            .findFirst()
            .orElseThrow();
    String height = strip.what().replaceAll(".* x (.*) in, to the front.*", "$1");
    Shelves stripped = shelves("ply", List.of(SampleJobs.strip("3/4", height)));
    Strength cured = check(bay(stripped, SampleJobs.pins()), bay(stripped, SampleJobs.pins()));
    assertThat(ofKind(cured, "sag")).isEmpty();
    assertThat(strip.what())
        .contains(
            "sag "
                + cured.shelves().getFirst().sagNow().value().text(Unit.INCH)
                + " now, "
                + cured.shelves().getFirst().sagYears().value().text(Unit.INCH));
  }

  @Test
  void narrowBaysHold() {
    Strength strength = check(SampleJobs.bay(2), SampleJobs.bay(2), SampleJobs.bay(2));
    assertThat(strength.findings()).extracting(Finding::kind).containsOnly("tall-side");
  }

  @Test
  void tallSidesAreNoted() {
    List<Finding> tall = ofKind(check(SampleJobs.bay(2), SampleJobs.bay(2)), "tall-side");
    assertThat(tall).hasSize(2);
    assertThat(tall.getFirst().severity()).isEqualTo(Severity.NOTE);
    assertThat(tall.getFirst().what()).startsWith("the sides of bay 1 stand free over 79 1/16 in");
    Bay held =
        new Bay(
            Optional.empty(),
            List.of(in("42")),
            Optional.of(SampleJobs.shelves(2)),
            Optional.of(SampleJobs.pins()),
            Optional.empty());
    assertThat(ofKind(check(held, held), "tall-side")).isEmpty();
  }

  @Test
  void fixedShelvesSpanTheBay() {
    Bay held =
        new Bay(
            Optional.empty(),
            List.of(in("42")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    ShelfAnswer shelf = check(held, held).shelves().getFirst();
    assertThat(shelf.span().formula()).isEqualTo("W");
    assertThat(shelf.supports()).extracting(Figure::title).containsExactly("load on each end");
    assertThat(shelf.others()).extracting(Figure::id).noneMatch(id -> id.endsWith("tipping"));
  }

  @Test
  void glassIsHeldToItsStress() {
    Job job = withMaterial(glass("1/4"), bay(shelves("glass", List.of()), SampleJobs.pins()));
    Strength strength = check(job);
    ShelfAnswer shelf = strength.shelves().getFirst();
    assertThat(shelf.sagYears().value()).isEqualTo(shelf.sagNow().value());
    Finding stress = ofKind(strength, "glass-stress").getFirst();
    assertThat(stress.severity()).isEqualTo(Severity.ERROR);
    assertThat(stress.what()).contains("ask the glazier").contains("580 psi taken as allowed");
    assertThat(stress.remedies()).extracting(Remedy::what).noneMatch(w -> w.startsWith("glue"));
  }

  /** The largest load and the cures of glass keep to its stress, not to its sag alone. */
  @Test
  void glassCarriesNoMoreThanItsStressAllows() {
    Bay bay = bay(shelves("glass", List.of()), SampleJobs.pins());
    ShelfAnswer shelf = check(withMaterial(glass("1/2"), bay, bay)).shelves().getFirst();
    double largest = named(shelf, "largest-load").value().value();
    Bay loaded =
        new Bay(
            bay.width(),
            bay.fixedShelves(),
            bay.shelves(),
            bay.supports(),
            Optional.of(new Load.PerLength(Quantity.of(largest * 0.999, QuantityUnit.LINE_LOAD))));
    ShelfAnswer again = check(withMaterial(glass("1/2"), loaded, loaded)).shelves().getFirst();
    assertThat(named(again, "stress").value().value()).isLessThanOrEqualTo(4);
    Strength thin = check(withMaterial(glass("1/4"), bay, bay));
    assertThat(ofKind(thin, "glass-stress").getFirst().remedies())
        .extracting(Remedy::what)
        .noneMatch(what -> what.startsWith("make it of"));
  }

  @Test
  void thickGlassOverAShortSpanIsOnlyNoted() {
    Bay bay = bay(shelves("glass", List.of()), SampleJobs.pins());
    Strength strength = check(withMaterial(glass("3/4"), bay, bay, bay, bay));
    assertThat(ofKind(strength, "glass")).hasSize(1);
    assertThat(ofKind(strength, "glass").getFirst().severity()).isEqualTo(Severity.NOTE);
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

  private static Job withMaterial(Material material, Bay... bays) {
    Job job = SampleJobs.job(SampleJobs.bookcase(bays));
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(material);
    return new Job(
        job.title(),
        job.revision(),
        job.unit(),
        job.style(),
        job.paper(),
        job.currency(),
        job.room(),
        materials,
        job.sheets(),
        job.boards(),
        job.cases(),
        job.settings(),
        job.shop());
  }

  @Test
  void supportsThatReachFarAreFound() {
    Support reaching = new Support.Pins(in("1/4"), in("3/8"), in("20"), in("1/8"));
    Bay bay = bay(shelves("ply", List.of()), reaching);
    assertThat(ofKind(check(bay, bay), "supports-reach-far")).hasSize(1);
    assertThat(ofKind(check(SampleJobs.bay(1)), "supports-reach-far")).isEmpty();
  }

  @Test
  void metricJobsAreToldInMillimetres() {
    Job job = withMaterial(glass("1/2"), SampleJobs.bay(2), SampleJobs.bay(2));
    Job metric =
        new Job(
            job.title(),
            job.revision(),
            Unit.MILLIMETRE,
            LengthStyle.MILLIMETRES,
            job.paper(),
            job.currency(),
            job.room(),
            job.materials(),
            job.sheets(),
            job.boards(),
            job.cases(),
            job.settings(),
            job.shop());
    Finding sag = ofKind(check(metric), "sag").getFirst();
    assertThat(sag.what())
        .isEqualTo(
            "shelves 1-S1, 1-S2, 2-S1, 2-S2 sag in the middle by 2.5 mm now and 5.01 mm after years;"
                + " 1.46 mm and 2.29 mm are allowed");
    assertThat(sag.remedies())
        .extracting(Remedy::what)
        .anyMatch(w -> w.startsWith("glue a strip of 'oak', ≈ 19.1 x 40 mm, to the front edge"))
        .anyMatch(w -> w.matches("keep the load to \\d+(\\.\\d+)? kg/m"));
  }

  /** Whatever casework builds, strength answers. */
  @ParameterizedTest
  @ValueSource(longs = {1, 12, 123, 1234})
  void answersForWhateverCanBeBuilt(long seed) {
    Random random = new Random(seed);
    int built = 0;
    for (int i = 0; i < 150; i++) {
      Job job = withMaterial(glass("3/8"), anyBays(random));
      CaseDraft draft = CaseDraft.of(job.cases().getFirst());
      draft.sizes =
          new Sizes(
              Sizes.Measured.OUTSIDE,
              sixteenths(random, 16, 2400),
              sixteenths(random, 160, 1600),
              sixteenths(random, 16, 400));
      draft.edging = random.nextBoolean() ? List.of() : List.of(anyStrip(random));
      Casework casework = CaseworkBuilder.build(withCase(job, draft.order()));
      Strength strength = StrengthChecker.check(job, casework.cases());
      built += casework.cases().size();
      assertThat(
              strength.shelves().stream()
                  .flatMap(shelf -> figures(shelf).stream())
                  .filter(figure -> figure.value().value() < 0)
                  .map(Figure::id))
          .isEmpty();
    }
    assertThat(built).isGreaterThan(20);
  }

  private static Job withCase(Job job, CaseOrder order) {
    return job.with(List.of(order));
  }

  private static Length sixteenths(Random random, int least, int most) {
    return Length.inches(random.nextInt(least, most), 16);
  }

  private static Bay[] anyBays(Random random) {
    Bay[] bays = new Bay[random.nextInt(1, 5)];
    for (int i = 0; i < bays.length; i++) {
      List<Edging> edging = random.nextBoolean() ? List.of() : List.of(anyStrip(random));
      String material = List.of("ply", "oak", "glass").get(random.nextInt(3));
      bays[i] = bay(shelves(material, edging), anySupport(random));
    }
    return bays;
  }

  private static Edging anyStrip(Random random) {
    return new Edging(
        random.nextBoolean() ? Edging.Kind.STRIP : Edging.Kind.BANDING,
        "oak",
        sixteenths(random, 1, 40),
        sixteenths(random, 12, 60),
        random.nextBoolean()
            ? List.of(Edging.Edge.FRONT)
            : List.of(Edging.Edge.FRONT, Edging.Edge.BACK));
  }

  private static Support anySupport(Random random) {
    Support.Pins pins =
        new Support.Pins(in("1/4"), in("3/8"), sixteenths(random, 1, 200), in("1/8"));
    return switch (random.nextInt(4)) {
      case 0 -> pins;
      case 1 -> new Support.Sleeved(pins, in("9/32"), in("3/8"), in("1/32"));
      case 2 ->
          new Support.Standards(
              random.nextBoolean() ? Support.Mounting.LET_IN : Support.Mounting.SURFACE,
              in("5/8"),
              in("3/16"),
              in("1/2"),
              in("1/4"),
              in("1/16"),
              in("1/8"),
              in("72"));
      default -> new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("1 1/4"), in("1"), in("3/4"));
    };
  }

  /** What the maker measured goes over the table: twice the modulus, half the bending. */
  @Test
  void statedStiffnessGoesOverTheTable() {
    ShelfAnswer usual = check(boardOf(8_270)).shelves().getFirst();
    ShelfAnswer stiff = check(boardOf(16_540)).shelves().getFirst();
    assertThat(usual.sagNow().value().value() / stiff.sagNow().value().value())
        .isCloseTo(2, within(1e-6));
  }

  private static Job boardOf(double modulus) {
    Material board =
        new Material(
            "stiff",
            Material.Kind.SHEET,
            "plywood, veneer core",
            in("3/4"),
            Optional.empty(),
            Material.Grain.LENGTHWISE,
            Optional.of(Quantity.of(modulus, QuantityUnit.STRESS)),
            Optional.empty());
    return withMaterial(board, bay(shelves("stiff", List.of()), SampleJobs.pins()));
  }
}
