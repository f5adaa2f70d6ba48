package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static fourpin.strength.Shelving.withMaterial;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.job.Bay;
import fourpin.job.Edging;
import fourpin.job.Material;
import fourpin.job.Material.Layer;
import fourpin.job.Material.Turn;
import fourpin.job.SampleJobs;
import fourpin.measure.CommaDecimals;
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
    return new Layer(of, in(thickness), share, Turn.ALONG);
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
