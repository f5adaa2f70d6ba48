package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static fourpin.strength.Shelving.withMaterial;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.job.Bay;
import fourpin.job.Edging;
import fourpin.job.Material;
import fourpin.job.Material.Layer;
import fourpin.job.Material.Turn;
import fourpin.job.SampleJobs;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.strength.Section.Matter;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shelves of panels that the maker glues up. */
@ExtendWith(CommaDecimals.class)
class LayeredPanelsTest {

  private static final String PLY = "plywood, veneer core";

  private static Layer layer(String of, String thickness, double share) {
    return layer(of, thickness, share, Turn.ALONG);
  }

  /** Ribs 3/4 in thick. */
  private static Layer layer(String of, String thickness, double share, Turn turn) {
    return new Layer(
        of,
        in(thickness),
        share,
        turn,
        Optional.of("ribs").filter(_ -> share < 1),
        Optional.of(in("3/4")).filter(_ -> share < 1));
  }

  private static Material panel(String thickness, Layer... layers) {
    return new Material(
        "panel",
        Material.Kind.SHEET,
        PLY,
        in(thickness),
        Optional.empty(),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(layers));
  }

  private static ShelfAnswer shelf(Material panel, List<Edging> edging) {
    Bay bay = Shelving.bay(Shelving.shelves("panel", edging), SampleJobs.pins());
    return check(withMaterial(panel, bay, bay)).shelves().getFirst();
  }

  private static double sag(Material panel) {
    return shelf(panel, List.of()).sagNow().value().value();
  }

  /** Two layers of one sheet are a sheet as thick as both. */
  @Test
  void aDoubledPanelIsAThickerOne() {
    Material doubled = panel("1 1/2", layer(PLY, "3/4", 1), layer(PLY, "3/4", 1));
    assertThat(sag(doubled)).isCloseTo(sag(panel("1 1/2")), withPercentage(1e-6));
    ShelfAnswer strips = shelf(doubled, List.of(SampleJobs.strip("3/4", "2")));
    ShelfAnswer solid = shelf(panel("1 1/2"), List.of(SampleJobs.strip("3/4", "2")));
    assertThat(strips.sagNow().value().value())
        .isCloseTo(solid.sagNow().value().value(), withPercentage(1e-6));
  }

  private static Laminate box(String face, String ribs, double share, Turn turn) {
    return Matters.laminate(
        panel("2", layer(PLY, face, 1), layer(PLY, ribs, share, turn), layer(PLY, face, 1)));
  }

  /**
   * Chords between rigid posts: {@code S = 24 E I / s²}, I of one face, s from post to post; each
   * half of a chord bends as a cantilever {@code V / 2 (s / 2)³ / (3 E I)}, twice in s (any statics
   * of the Vierendeel girder). Ribs that bend and shear take a tenth or so of it besides.
   */
  @ParameterizedTest
  @CsvSource({"1/8, 1, 0.05", "1/8, 1 1/2, 0.1", "1/4, 1, 0.04"})
  void acrossItsRibsABoxIsAVierendeelGirder(String face, String ribs, double share) {
    Laminate box = box(face, ribs, share, Turn.ACROSS);
    double t = in(face).mm();
    double apart = in("3/4").mm() / share;
    double chord = box.plies().getFirst().along() * t * t * t / 12;
    double cantilever = Math.pow(apart / 2, 3) / (3 * chord) / 2;
    double girder = apart / (2 * cantilever);
    assertThat(24 * chord / (apart * apart)).isCloseTo(girder, withPercentage(1e-9));
    double stiff = 5.0 / 6 * box.shearing() * box.thickness();
    assertThat(stiff).isLessThan(girder).isGreaterThan(0.7 * girder);
  }

  /** Ribs pass nothing on across themselves: only the faces bend, (T³ - c³) / T³ of a solid. */
  @Test
  void ribsCountAlongThemselvesOnly() {
    Laminate box = box("1/4", "1", 0.13, Turn.ACROSS);
    double along = box.plies().getFirst().along();
    assertThat(box.bendingAlong() / along)
        .isCloseTo(1 - Math.pow(1 / 1.5, 3), withPercentage(1e-9));
    assertThat(box.turned().turned()).isEqualTo(box);
    assertThat(box.turned().shearing()).isGreaterThan(20 * box.shearing());
    assertThat(box.bendingAcross()).isGreaterThan(box.turned().bendingAlong() * (1 - 1e-12));
  }

  /** Where nobody says how far apart they stand: two boards that slide on each other. */
  @Test
  void ribsOfWhichNothingIsKnownJoinNothingAcross() {
    Layer face = layer(PLY, "1/4", 1);
    Layer ribs = new Layer(PLY, in("1"), 0.13, Turn.ACROSS);
    Material unknown = panel("1 1/2", face, ribs, face);
    Laminate box = Matters.laminate(unknown);
    assertThat(box.bendingAlong() / box.plies().getFirst().along())
        .isCloseTo(2 * Math.pow(0.25 / 1.5, 3), withPercentage(1e-9));
    assertThat(sag(unknown)).isGreaterThan(20 * sag(panel("1 1/2")));
    Strength strength = check(withMaterial(unknown, SampleJobs.bay(1)));
    assertThat(ofKind(strength, "ribs-unknown"))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Finding.Severity.ERROR));
  }

  /** The same box with its ribs turned sags far more, with a strip on its front too. */
  @Test
  void ribsAcrossSagMoreThanRibsAlong() {
    Layer face = layer(PLY, "1/8", 1);
    Material along = panel("1 3/4", face, layer(PLY, "1 1/2", 0.13), face);
    Material across = panel("1 3/4", face, layer(PLY, "1 1/2", 0.13, Turn.ACROSS), face);
    List<Edging> strip = List.of(SampleJobs.strip("1/4", "2"));
    double sagAlong = figure(shelf(along, List.of()), "plate-middle");
    double sagAcross = figure(shelf(across, List.of()), "plate-middle");
    assertThat(sagAcross).isGreaterThan(4 * sagAlong);
    assertThat(figure(shelf(across, strip), "plate-back")).isGreaterThan(0.5 * sagAcross);
    assertThat(figure(shelf(along, List.of()), "plate-shear-across"))
        .isGreaterThan(figure(shelf(along, List.of()), "plate-shear"));
  }

  /** {@code 5 p l⁴ / (384 E I)} of a strip, and where it hardly bends nothing is said. */
  @Test
  void facesBendBetweenRibs() {
    Layer thin = layer(PLY, "1/8", 1);
    Layer thick = layer(PLY, "1/2", 1);
    Material skin = panel("1 1/4", thin, layer(PLY, "1", 0.1), thin);
    Material stout = panel("2", thick, layer(PLY, "1", 0.2), thick);
    ShelfAnswer shelf = shelf(skin, List.of());
    double apart = in("3/4").mm() * (1 / 0.1 - 1);
    Figure sag = PlateShelving.find(shelf, "face-sag").orElseThrow();
    double p = input(sag, "q") / input(sag, "D") + input(sag, "g") / 1000;
    double stiff = input(sag, "E") * Math.pow(in("1/8").mm(), 3) / 12;
    assertThat(input(sag, "E")).isEqualTo(3500);
    assertThat(sag.value().value())
        .isCloseTo(5 * p * Math.pow(apart, 4) / (384 * stiff), withPercentage(1e-6));
    assertThat(ofKind(checked(skin), "face-sags"))
        .isNotEmpty()
        .allMatch(
            f ->
                f.what()
                    .contains("held against nothing: stress-allowed is what its faces may bear"));
    assertThat(ofKind(checked(stout), "face-sags")).isEmpty();
  }

  private static Strength checked(Material panel) {
    Bay bay = Shelving.bay(Shelving.shelves("panel", List.of()), SampleJobs.pins());
    return check(withMaterial(panel, bay, bay));
  }

  /** Ribs across, one along each end, lie over pins that reach no farther; ribs along do not. */
  @Test
  void supportsNeedARibOverThem() {
    Layer face = layer(PLY, "1/4", 1);
    Material along = panel("1 1/2", face, layer(PLY, "1", 0.13), face);
    Material across = panel("1 1/2", face, layer(PLY, "1", 0.13, Turn.ACROSS), face);
    Finding told = ofKind(checked(along), "hollow-over-support").getFirst();
    assertThat(told.remedies().getFirst().what()).contains("solid block");
    Figure gives = told.figures().getFirst();
    double l = in("3/4").mm() * (1 / 0.13 - 1);
    double inertia = input(gives, "b") * Math.pow(in("1/4").mm(), 3) / 12;
    assertThat(gives.value().value())
        .isCloseTo(input(gives, "r") * l * l * l / (48 * 3500 * inertia), withPercentage(1e-6));
    assertThat(ofKind(checked(across), "hollow-over-support")).isEmpty();
    assertThat(ofKind(checked(panel("1 1/2")), "hollow-over-support")).isEmpty();
  }

  /** Faces carry the bending: (T³ - c³ (1 - s)) / T³ of the solid panel, c the ribs' height. */
  @Test
  void aTorsionBoxIsALightSolidPanel() {
    Material box =
        panel("1 1/2", layer(PLY, "1/4", 1), layer(PLY, "1", 0.13), layer(PLY, "1/4", 1));
    Matter matter = Matters.of(box);
    Matter solid = Matters.of(panel("1 1/2"));
    double bends = 1 - Math.pow(1 / 1.5, 3) * (1 - 0.13);
    assertThat(matter.modulus().number() / solid.modulus().number())
        .isCloseTo(bends, withPercentage(1e-6));
    assertThat(matter.density().number() / solid.density().number())
        .isCloseTo((0.5 + 0.13) / 1.5, withPercentage(1e-6));
    assertThat(matter.modulus().number() * matter.stretch() / solid.modulus().number())
        .isCloseTo((0.5 + 0.13) / 1.5, withPercentage(1e-6));
    assertThat(sag(box)).isGreaterThan(sag(panel("1 1/2")));
    assertThat(sag(box)).isLessThan(sag(panel("3/4")));
  }

  /**
   * Ribs alone give way between thin faces: {@code A G = b d² G / c}, d from face to face, c the
   * ribs' height (Allen, Analysis and Design of Structural Sandwich Panels, 1969; from memory).
   */
  @ParameterizedTest
  @CsvSource({"0.05, 1, 0.13", "0.02, 1.5, 0.05", "0.03, 0.8, 0.1"})
  void aTorsionBoxGivesWayToShearAsItsRibsDo(String face, String ribs, double share) {
    double c = in(ribs).mm();
    double t = in(face).mm();
    Laminate box =
        Matters.laminate(
            panel("2", layer(PLY, face, 1), layer(PLY, ribs, share), layer(PLY, face, 1)));
    double ribShear = box.plies().get(1).shear() * share;
    double sandwich = ribShear * (c + t) * (c + t) / c;
    assertThat(5.0 / 6 * box.shearing() * box.thickness()).isCloseTo(sandwich, withPercentage(6));
  }

  /**
   * One piece, however it is glued up, gives way as one; a plate of a box sags as its beam does.
   */
  @Test
  void aPlateOfABoxSagsByShearToo() {
    Laminate halves = Matters.laminate(panel("1 1/2", layer(PLY, "1/2", 1), layer(PLY, "1", 1)));
    assertThat(halves.shearing())
        .isCloseTo(halves.plies().getFirst().shear(), withPercentage(1e-9));
    ShelfAnswer box =
        shelf(
            panel("1 1/2", layer(PLY, "1/4", 1), layer(PLY, "1", 0.13), layer(PLY, "1/4", 1)),
            List.of());
    double plate = figure(box, "plate-middle");
    assertThat(figure(box, "plate-shear")).isGreaterThan(0.1);
    assertThat(plate).isCloseTo(box.sagNow().value().value(), withPercentage(4));
  }

  private static double figure(ShelfAnswer shelf, String id) {
    return shelf.figures().stream()
        .filter(f -> f.id().endsWith("/" + id))
        .findFirst()
        .orElseThrow()
        .value()
        .value();
  }

  /** Ribs take little where strips pull at the panel: the stretching counts, not the bending. */
  @Test
  void stripsPullAtWhatStretches() {
    Material box =
        panel("1 1/2", layer(PLY, "1/4", 1), layer(PLY, "1", 0.13), layer(PLY, "1/4", 1));
    Matter matter = Matters.of(box);
    Section alone = new Section(List.of(new Section.Layer("shelf", matter, 250, 38.1, 0, 0)));
    assertThat(alone.bendingStiffness())
        .isCloseTo(matter.modulus().number() * 250 * Math.pow(38.1, 3) / 12, withPercentage(1e-9));
    assertThat(matter.outer()).isGreaterThan(1);
  }

  @Test
  void theMakerIsToldThatLayersAreNotCut() {
    Material doubled = panel("1 1/2", layer(PLY, "3/4", 1), layer(PLY, "3/4", 1));
    Strength strength = check(withMaterial(doubled, SampleJobs.bay(1)));
    assertThat(ofKind(strength, "glued-up")).hasSize(1);
    assertThat(ofKind(strength, "glued-up").getFirst().figures())
        .anySatisfy(f -> assertThat(f.id()).isEqualTo("materials/panel/layers-along"));
    assertThat(ofKind(check(SampleJobs.bay(1)), "glued-up")).isEmpty();
  }
}
