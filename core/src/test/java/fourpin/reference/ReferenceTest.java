package fourpin.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReferenceTest {

  static Stream<Listed> everyRow() {
    return Stream.of(
            Reference.substances(),
            Reference.movement(),
            Reference.elasticRatios(),
            Reference.creep(),
            Reference.loads(),
            Reference.sagLimits(),
            Reference.things(),
            Reference.pins(),
            Reference.sleeves(),
            Reference.standards(),
            Reference.glassStresses(),
            Reference.glassThicknesses(),
            Reference.powerLaws(),
            Reference.moisture(),
            Reference.colours())
        .flatMap(table -> table.rows().stream());
  }

  @Test
  void everyRowHasItsSource() {
    assertThat(everyRow())
        .hasSizeGreaterThan(180)
        .allSatisfy(
            row -> {
              assertThat(row.name()).isNotBlank();
              assertThat(row.source().title()).as(row.name()).isNotBlank();
              assertThat(row.source().standing()).isNotEqualTo(Source.Standing.STATED);
            });
  }

  @Test
  void countsAreWhatTheReadmeSays() {
    assertThat(Reference.woods().rows()).hasSize(59);
    assertThat(Reference.panels().rows()).hasSizeGreaterThanOrEqualTo(15);
    assertThat(Reference.loads().rows()).hasSize(3);
  }

  /** Wood Handbook (2010), Table 4-6a: white ash, specific gravity 0.60 at 12 %, 672 kg/m³. */
  @Test
  void densityIsTheHandbooks() {
    Quantity density = Reference.woods().get("ash, white").density().typical();
    assertThat(density.value()).isCloseTo(672, within(0.01));
    assertThat(density.text(Unit.INCH)).isEqualTo("42 lb/cu ft");
  }

  @ParameterizedTest
  @MethodSource("woods")
  void woodsLieInPhysicalBands(Wood wood) {
    assertThat(wood.specificGravity()).isBetween(0.30, 0.75);
    assertThat(wood.modulus().typical().value()).isBetween(5_000.0, 16_000.0);
    assertThat(wood.rupture().value()).isBetween(40.0, 150.0);
    assertThat(wood.density().typical().value())
        .isCloseTo(1120 * wood.specificGravity(), within(6.0));
    wood.sideHardness().ifPresent(h -> assertThat(h.value()).isBetween(1_300.0, 9_000.0));
    // A wood breaks at between 0.6 and 1.1 % of its modulus: the two columns belong together.
    assertThat(wood.rupture().value() / wood.modulus().typical().value()).isBetween(0.0058, 0.0111);
  }

  static Stream<Wood> woods() {
    return Reference.woods().rows().stream();
  }

  @ParameterizedTest
  @MethodSource("panels")
  void panelsLieInPhysicalBands(PanelProduct panel) {
    boolean glass = panel.family() == Substance.Family.GLASS;
    assertThat(panel.density().low().value()).isBetween(400.0, 2_500.0);
    assertThat(panel.density().high().value()).isBetween(500.0, 2_520.0);
    assertThat(panel.modulus().low().value()).isBetween(1_500.0, glass ? 73_000.0 : 13_000.0);
    assertThat(panel.modulus().high().value()).isLessThan(glass ? 73_000 : 20_000);
    panel
        .modulusAcross()
        .ifPresent(
            across ->
                assertThat(across.typical().value())
                    .isLessThanOrEqualTo(panel.modulus().typical().value()));
  }

  static Stream<PanelProduct> panels() {
    return Reference.panels().rows().stream();
  }

  /** Stiffer and softer families, as the Wood Handbook (2010), Table 12-1 orders them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      textBlock =
          """
          laminated veneer lumber > plywood, softwood
          glued-laminated timber  > plywood, softwood
          plywood, softwood       > OSB
          OSB                     > hardboard
          hardboard               > MDF
          MDF                     > particleboard
          plywood, birch throughout > plywood, veneer core
          particleboard, M-3      > particleboard, M-2
          particleboard, M-2      > particleboard, M-S
          particleboard, M-S      > particleboard, M-1
          MDF, grade 155          > MDF, grade 130
          glass, annealed         > laminated veneer lumber
          birch, yellow           > oak, white
          oak, white              > cherry, black
          hickory, shagbark       > maple, sugar
          maple, sugar            > maple, red
          maple, red              > maple, silver
          birch, sweet            > birch, yellow
          birch, yellow           > birch, paper
          ash, white              > ash, black
          pine, longleaf          > pine, loblolly
          pine, loblolly          > pine, ponderosa
          """)
  void familiesAreOrdered(String stiffer, String softer) {
    assertThat(stiffness(stiffer)).isGreaterThan(stiffness(softer));
  }

  private static double stiffness(String name) {
    return Reference.substances().get(name).modulus().typical().value();
  }

  /** The heavier third of the woods is stiffer on average than the lightest third. */
  @Test
  void denserWoodsAreStifferOnAverage() {
    List<Wood> byWeight =
        woods().sorted((a, b) -> Double.compare(a.specificGravity(), b.specificGravity())).toList();
    int third = byWeight.size() / 3;
    assertThat(mean(byWeight.subList(byWeight.size() - third, byWeight.size())))
        .isGreaterThan(1.3 * mean(byWeight.subList(0, third)));
  }

  private static double mean(List<Wood> woods) {
    return woods.stream().mapToDouble(w -> w.modulus().typical().value()).average().orElseThrow();
  }

  /** Wood Handbook (2010), Tables 4-3 and 13-5. */
  @ParameterizedTest
  @CsvSource({
    "'walnut, black',5.5,7.8,0.0019,0.00274",
    "'maple, sugar',4.8,9.9,0.00165,0.00353",
    "'oak, northern red',4.0,8.6,0.00158,0.00369",
    "'oak, white',5.6,10.5,0.0018,0.00365",
    "'cherry, black',3.7,7.1,0.00126,0.00248"
  })
  void movementIsTheHandbooks(String name, double sr, double st, double cr, double ct) {
    WoodMovement movement = Reference.movement().get(name);
    assertThat(movement.radialShrinkage()).isEqualTo(sr);
    assertThat(movement.tangentialShrinkage()).isEqualTo(st);
    assertThat(movement.radial()).isEqualTo(cr);
    assertThat(movement.tangential()).isEqualTo(ct);
  }

  /**
   * C = S/(30 - 20 S), the rule that the coefficients of Table 13-5 follow, except for commercial
   * groups and imported woods, whose shrinkage row is that of one species.
   */
  @Test
  void coefficientsFollowFromShrinkage() {
    List<String> apart =
        List.of("oak, northern red", "oak, white", "hickory, shagbark", "mahogany, true", "teak");
    assertThat(Reference.movement().rows())
        .filteredOn(row -> !apart.contains(row.name()))
        .hasSizeGreaterThan(40)
        .allSatisfy(
            row -> {
              assertThat(row.radial())
                  .as(row.name())
                  .isCloseTo(rule(row.radialShrinkage()), within(1.5e-5));
              assertThat(row.tangential())
                  .as(row.name())
                  .isCloseTo(rule(row.tangentialShrinkage()), within(1.5e-5));
            });
  }

  private static double rule(double percent) {
    double s = percent / 100;
    return s / (30 - 20 * s);
  }

  @Test
  void tangentialMovementIsTheGreater() {
    assertThat(Reference.movement().rows())
        .allSatisfy(row -> assertThat(row.tangential()).isGreaterThan(row.radial()));
  }

  /** ANSI/KCMA A161.1 prints 15 lb/ft² as 718 Pa. */
  @Test
  void referenceLoadsAreThePublishedOnes() {
    assertThat(Reference.loads().rows())
        .extracting(row -> row.load().text(Unit.INCH))
        .containsExactly("15 lbf/sq ft", "40 lbf/sq ft", "50 lbf/sq ft");
    assertThat(Reference.loads().get("kitchen shelf").load().value())
        .isCloseTo(0.718, within(5e-4));
  }

  @Test
  void thingsHaveSensibleWeightsAndSizes() {
    assertThat(Reference.things().rows())
        .hasSizeGreaterThan(15)
        .allSatisfy(
            thing -> {
              assertThat(thing.height()).isBetween(Length.inches(2), Length.inches(20));
              assertThat(thing.depth()).isBetween(Length.inches(4), Length.inches(20));
              assertThat(thing.load().typical().unit())
                  .isIn(QuantityUnit.LINE_LOAD, QuantityUnit.AREA_LOAD);
              assertThat(poundsPerFoot(thing)).as(thing.name()).isBetween(2.0, 60.0);
            });
    assertThat(Reference.things().get("books").load().typical().text(Unit.INCH))
        .isEqualTo("25 lb/ft");
    assertThat(Reference.things().get("records").height().inches()).isEqualTo(12.375);
  }

  private static double poundsPerFoot(HeldThing thing) {
    Quantity load = thing.load().typical();
    return load.value() * load.unit().factor(Unit.INCH);
  }

  /** A row of books weighs no more than a block of coated paper, some 75 lb/cu ft. */
  @Test
  void booksAreNoDenserThanPaper() {
    assertThat(Reference.things().rows())
        .filteredOn(thing -> thing.name().startsWith("books"))
        .hasSize(4)
        .allSatisfy(
            thing -> {
              double squareFeet = thing.height().inches() * thing.depth().inches() / 144;
              assertThat(poundsPerFoot(thing) / squareFeet).as(thing.name()).isLessThan(75);
            });
  }

  @Test
  void creepNeverShrinksSag() {
    assertThat(Reference.creep().rows())
        .allSatisfy(row -> assertThat(row.totalOverFirst()).isBetween(1.0, 4.0));
    assertThat(Reference.creep().get("eurocode, solid wood").totalOverFirst()).isEqualTo(1.6);
  }

  @Test
  void hardwareFits() {
    assertThat(Reference.pins().rows())
        .allSatisfy(pin -> assertThat(pin.hole()).isGreaterThanOrEqualTo(pin.stem()));
    assertThat(Reference.sleeves().rows())
        .allSatisfy(sleeve -> assertThat(sleeve.outside()).isGreaterThan(sleeve.pin()));
    assertThat(Reference.standards().get("5/8 in").slotPitch()).isEqualTo(Length.inches(1, 2));
  }

  @Test
  void limitsAreThePublishedOnes() {
    assertThat(Reference.sagLimits().get("woodwork standard").spanOver()).isEqualTo(144);
    assertThat(Reference.sagLimits().get("kitchen cabinets").spanOver()).isEqualTo(192);
    assertThat(Reference.glassStresses().rows())
        .allSatisfy(row -> assertThat(row.stress().value()).isBetween(3.0, 10.0));
  }

  /** Table 5-1, Douglas-fir, as an extract of FPL-GTR-282 prints it: 0.050 and 0.078. */
  @Test
  void douglasFirIsAsPrinted() {
    ElasticRatios ratios = Reference.ratiosOf(Reference.woods().get("douglas-fir, coast"));
    assertThat(ratios.across()).isEqualTo(0.050);
    assertThat(ratios.shear()).isEqualTo(0.078);
  }

  @Test
  void everySubstanceBendsBothWays() {
    assertThat(Reference.substances().rows())
        .allSatisfy(
            row -> {
              ElasticRatios ratios = Reference.ratiosOf(row);
              double free = 1 - ratios.poisson() * ratios.poisson() * ratios.across();
              assertThat(ratios.across()).as(row.name()).isBetween(0.02, 1.0);
              assertThat(ratios.shear()).as(row.name()).isBetween(0.03, 0.42);
              assertThat(free).as(row.name()).isBetween(0.9, 1.0);
            });
  }

  /** What is alike in all directions shears by {@code E / (2 (1 + ν))}. */
  @ParameterizedTest
  @ValueSource(strings = {"particleboard", "fibreboard", "glass"})
  void evenMaterialsShearByTheirPoissonRatio(String family) {
    ElasticRatios ratios = Reference.elasticRatios().get(family);
    assertThat(ratios.across()).isEqualTo(1);
    assertThat(ratios.shear()).isCloseTo(1 / (2 * (1 + ratios.poisson())), within(1e-6));
  }

  @ParameterizedTest
  @EnumSource(Wood.Kind.class)
  void kindsAreTheMiddleOfTheirWoods(Wood.Kind kind) {
    ElasticRatios row = Reference.elasticRatios().get(ElasticRatios.rowOf(kind));
    assertThat(row.across()).isCloseTo(middle(kind, ElasticRatios::across), within(1e-9));
    assertThat(row.shear()).isCloseTo(middle(kind, ElasticRatios::shear), within(1e-9));
    assertThat(row.poisson()).isCloseTo(middle(kind, ElasticRatios::poisson), within(1e-9));
  }

  private static double middle(Wood.Kind kind, ToDoubleFunction<ElasticRatios> column) {
    double[] sorted =
        Reference.elasticRatios().rows().stream()
            .filter(
                row -> Reference.woods().find(row.name()).filter(w -> w.kind() == kind).isPresent())
            .mapToDouble(column)
            .sorted()
            .toArray();
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  @Test
  void everySubstanceHasAColourOfAScreen() {
    assertThat(Reference.substances().rows())
        .map(Reference::colourOf)
        .allSatisfy(
            colour ->
                assertThat(List.of(colour.red(), colour.green(), colour.blue()))
                    .allSatisfy(part -> assertThat(part).isBetween(0, 255)));
  }

  /** As the Wood Handbook describes them: walnut darker than cherry, cherry than maple. */
  @Test
  void darkWoodsAreDark() {
    assertThat(light("walnut, black")).isLessThan(light("cherry, black"));
    assertThat(light("cherry, black")).isLessThan(light("oak, white"));
    assertThat(light("oak, white")).isLessThan(light("maple, sugar"));
  }

  private static int light(String wood) {
    Colour colour = Reference.colourOf(Reference.woods().get(wood));
    return colour.red() + colour.green() + colour.blue();
  }
}
