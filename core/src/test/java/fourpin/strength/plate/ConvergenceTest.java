package fourpin.strength.plate;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.GeneratedDocument;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/**
 * How near the answers come with finer meshes; the page of it, and what is asked of the default.
 */
class ConvergenceTest {

  private static final List<Integer> PARTS = List.of(4, 6, PlateSolver.PARTS, 16, 24);
  private static final double SIDE = 1000;
  private static final double DEFAULT_ERROR = 0.01;
  private static final Rigidity STIFF = Rigidity.isotropic(70_000, 0.3, 10);
  private static final Rigidity OAK = Rigidity.of(12_300, 886, 0.43, 1058, 19);
  private static final List<Support> CORNERS = supports(SIDE, SIDE, 0, 0);

  private static final Ritz ON_CORNERS = Ritz.onFour(SIDE, SIDE, STIFF, 0, 0);
  private static final Ritz ON_PINS = Ritz.onFour(800, 300, OAK, 5, 37);

  /**
   * One answer that is known by other means.
   *
   * @param known in the units of {@code answer}
   */
  private record Case(
      String name, String source, double known, Plate plate, ToDoubleFunction<BentPlate> answer) {

    private double error(int parts) {
      List<PlateLoad> load = List.of(plate.evenly(1));
      BentPlate bent = new PlateSolver(plate, parts).under(load).orElseThrow();
      return answer.applyAsDouble(bent) / known - 1;
    }
  }

  static final List<Case> CASES =
      List.of(
          new Case(
              "hinged square, even load, sag in the middle",
              "Navier's series, 0.0040624 q a⁴ / D",
              0.00406235266,
              square(Edges.all(Hold.HINGED), List.of()),
              b -> factor(b, SIDE / 2)),
          new Case(
              "hinged square, even load, moment in the middle",
              "Navier's series, 0.047886 q a²",
              0.0478863,
              square(Edges.all(Hold.HINGED), List.of()),
              b -> b.moments(SIDE / 2, SIDE / 2).x() / (SIDE * SIDE)),
          new Case(
              "clamped square, even load, sag in the middle",
              "polynomials with the least energy, 0.0012653 q a⁴ / D",
              factor(Ritz.clamped(SIDE, SIDE, STIFF).sag(SIDE / 2, SIDE / 2)),
              square(Edges.all(Hold.CLAMPED), List.of()),
              b -> factor(b, SIDE / 2)),
          new Case(
              "square on its corners, even load, sag in the middle",
              "polynomials with the least energy, 0.025507 q a⁴ / D",
              factor(ON_CORNERS.sag(SIDE / 2, SIDE / 2)),
              square(Edges.FREE, CORNERS),
              b -> factor(b, SIDE / 2)),
          new Case(
              "square on its corners, even load, moment half way along an edge",
              "polynomials with the least energy, 0.15044 q a²",
              ON_CORNERS.momentX(SIDE / 2, 0),
              square(Edges.FREE, CORNERS),
              b -> b.moments(SIDE / 2, 0).x()),
          new Case(
              "ends hinged, front and back free, sag of the free edge",
              "Lévy's series, 0.015011 q a⁴ / D",
              levyEdge(),
              square(Edges.ends(Hold.HINGED), List.of()),
              b -> factor(b, 0)),
          new Case(
              "oak shelf 800 x 300 x 19 on four pins, front edge",
              "polynomials with the least energy",
              ON_PINS.sag(400, 0),
              shelf(),
              b -> b.deflection(400, 0)),
          new Case(
              "the same, moment in the middle",
              "polynomials with the least energy",
              ON_PINS.momentX(400, 150),
              shelf(),
              b -> b.moments(400, 150).x()),
          new Case(
              "the same, moment at the front edge",
              "polynomials with the least energy",
              ON_PINS.momentX(400, 0),
              shelf(),
              b -> b.moments(400, 0).x()));

  private static double factor(BentPlate bent, double y) {
    return factor(bent.deflection(SIDE / 2, y));
  }

  private static double factor(double deflection) {
    return deflection * STIFF.alongX() / Math.pow(SIDE, 4);
  }

  private static Plate square(Edges edges, List<Support> supports) {
    return Plate.even(SIDE, SIDE, STIFF, edges, supports);
  }

  private static Plate shelf() {
    return Plate.even(800, 300, OAK, Edges.FREE, supports(800, 300, 5, 37));
  }

  private static double levyEdge() {
    return Series.levy(1, 1);
  }

  private static List<Support> supports(double length, double depth, double end, double edge) {
    return List.of(
        new Support(end, edge),
        new Support(length - end, edge),
        new Support(end, depth - edge),
        new Support(length - end, depth - edge));
  }

  @ParameterizedTest
  @FieldSource("CASES")
  void theDefaultMeshIsWithinOnePerCent(Case known) {
    assertThat(Math.abs(known.error(PlateSolver.PARTS))).isLessThan(DEFAULT_ERROR);
  }

  @ParameterizedTest
  @FieldSource("CASES")
  void finerMeshesComeNearer(Case known) {
    assertThat(Math.abs(known.error(24))).isLessThan(Math.abs(known.error(4)));
  }

  @Test
  void thePageIsCurrent() {
    GeneratedDocument.hold("plate-convergence.md", page());
  }

  private static String page() {
    String head =
        "# How fine a mesh a shelf needs\n\n"
            + "Written by a test (`ConvergenceTest`). By how much answers of the plate solver miss values known by"
            + " other means,\nfor so many spaces along the plate; the program uses "
            + PlateSolver.PARTS
            + ".\n\n";
    return head
        + row("case", "known by", PARTS.stream().map(Object::toString))
        + row("---", "---", PARTS.stream().map(_ -> "---:"))
        + CASES.stream().map(ConvergenceTest::row).collect(Collectors.joining());
  }

  private static String row(Case known) {
    return row(known.name(), known.source(), PARTS.stream().map(p -> text(known.error(p))));
  }

  private static String row(String name, String source, Stream<String> cells) {
    return "| " + name + " | " + source + " | " + cells.collect(Collectors.joining(" | ")) + " |\n";
  }

  private static String text(double error) {
    return String.format(Locale.ROOT, "%.2f %%", 100 * Math.abs(error));
  }
}
