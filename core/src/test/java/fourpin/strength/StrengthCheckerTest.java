package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.bay;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.figures;
import static fourpin.strength.Shelving.glass;
import static fourpin.strength.Shelving.named;
import static fourpin.strength.Shelving.ofKind;
import static fourpin.strength.Shelving.shelves;
import static fourpin.strength.Shelving.withMaterial;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Support;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

@ExtendWith(CommaDecimals.class)
class StrengthCheckerTest {

  private static double value(Figure figure, String symbol) {
    return figure.inputs().stream()
        .filter(input -> input.symbol().equals(symbol))
        .mapToDouble(input -> input.value().value())
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
      sagFollowsFromItsInputs(named(shelf, "sag-beam"));
      assertThat(shelf.sagNow().value().value())
          .isEqualTo(
              shelf.sagNow().inputs().stream()
                  .mapToDouble(input -> input.value().value())
                  .max()
                  .orElseThrow());
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

  /**
   * Though books in a row in front press harder on the pins than the NDS allows, and a kick leaves
   * the bottom to bend behind it.
   */
  @Test
  void narrowBaysHold() {
    Strength strength = check(SampleJobs.bay(2), SampleJobs.bay(2), SampleJobs.bay(2));
    assertThat(strength.findings())
        .extracting(Finding::kind)
        .containsOnly(
            "support-crushes", "tall-side", "partition-sinks", "bottom-breaks", "bottom-sags");
  }

  @Test
  void tallSidesAreNoted() {
    List<Finding> tall = ofKind(check(SampleJobs.bay(2), SampleJobs.bay(2)), "tall-side");
    assertThat(tall).hasSize(2);
    assertThat(tall.getFirst().severity()).isEqualTo(Severity.NOTE);
    assertThat(tall.getFirst().what())
        .startsWith("the sides of bay 1 stand free over 79 1/16 in")
        .contains("; straight ones bow by 0.");
    assertThat(tall.getFirst().figures())
        .extracting(Figure::id)
        .containsExactly("north/free-height-1-b", "north/bow-1-b");
    Bay held =
        new Bay(
            Optional.empty(),
            List.of(in("42")),
            Optional.of(SampleJobs.shelves(2)),
            Optional.of(SampleJobs.pins()),
            Optional.empty());
    assertThat(ofKind(check(held, held), "tall-side")).isEmpty();
  }

  /** Where there is no back nothing is glued in, nor twice where it is glued. */
  @Test
  void onlyABackThatIsNotGluedIsGluedIn() {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(SampleJobs.bay(2), SampleJobs.bay(2));
    assertThat(tallSideCures(draft)).hasSize(2);
    draft.settings = draft.settings.with(Setting.BACK_FIXING, new SettingValue.OfChoice("glued"));
    assertThat(tallSideCures(draft)).singleElement().asString().startsWith("put a fixed shelf");
    draft.back = Optional.empty();
    draft.settings = draft.settings.with(Setting.BACK_FIXING, new SettingValue.OfChoice("planned"));
    assertThat(tallSideCures(draft)).singleElement().asString().startsWith("put a fixed shelf");
  }

  private static List<String> tallSideCures(CaseDraft draft) {
    Finding tall = ofKind(check(SampleJobs.job(draft.order())), "tall-side").getFirst();
    return tall.remedies().stream().map(Finding.Remedy::what).toList();
  }

  /** A partition cures fixed shelves too, and is bored from both faces for what stands on pins. */
  @Test
  void aPartitionUnderAFixedShelfIsBoredFromBothFaces() {
    Bay held =
        new Bay(
            Optional.empty(),
            List.of(in("42")),
            Optional.of(SampleJobs.shelves(2)),
            Optional.of(SampleJobs.pins()),
            Optional.of(new Load.PerLength(Quantity.of(2, QuantityUnit.LINE_LOAD))));
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(held);
    List<Finding> sags =
        ofKind(check(SampleJobs.job(draft.order())), "sag").stream()
            .filter(finding -> finding.what().contains("1-F1"))
            .toList();
    assertThat(sags).isNotEmpty();
    assertThat(sags)
        .allSatisfy(
            finding ->
                assertThat(finding.remedies())
                    .extracting(Finding.Remedy::what)
                    .filteredOn(what -> what.startsWith("put ") && what.contains("partition"))
                    .isNotEmpty()
                    .allMatch(what -> what.contains("from both faces")));
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
    assertThat(stress.what())
        .contains("ask the glazier")
        .contains("580 psi taken as allowed")
        .contains("thinner than stated: measure it");
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

  @Test
  void supportsThatReachFarAreFound() {
    Support reaching = new Support.Pins(in("1/4"), in("3/8"), in("20"), in("1/8"));
    Bay bay = bay(shelves("ply", List.of()), reaching);
    assertThat(ofKind(check(bay, bay), "supports-reach-far")).hasSize(1);
    assertThat(ofKind(check(SampleJobs.bay(1)), "supports-reach-far")).isEmpty();
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
