package fourpin.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.Section.Layer;
import fourpin.strength.Section.Matter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Composite sections against printed answers of textbooks. */
class SectionTest {

  static Matter matter(double modulus, double density) {
    return new Matter(
        isotropic(modulus),
        sourced(modulus / 16, QuantityUnit.STRESS),
        sourced(density, QuantityUnit.DENSITY));
  }

  /** Alike both ways, as glass is: Poisson ratio 0.22. */
  static Flat isotropic(double modulus) {
    Sourced along = sourced(modulus, QuantityUnit.STRESS);
    return new Flat(
        along,
        along,
        sourced(modulus / 2.44, QuantityUnit.STRESS),
        sourced(0.22, QuantityUnit.RATIO));
  }

  private static Sourced sourced(double value, QuantityUnit unit) {
    return new Sourced(Quantity.of(value, unit), Source.STATED);
  }

  private static Layer layer(double modulus, double width, double thickness, double top) {
    return new Layer("layer", matter(modulus, 1), width, thickness, 0, top);
  }

  /**
   * Gere, Mechanics of Materials, Examples 6.1 and 6.3 (pp. 400, 407): wood 4 x 6 in, E 1500 ksi,
   * over steel 4 x 0.5 in, E 30000 ksi, M 60 kip-in: axis 5.031 in from the top, wood 1305 psi,
   * steel 7621 psi. In inches and pounds, as printed.
   */
  @Test
  void woodOverSteel() {
    Layer wood = layer(1.5e6, 4, 6, 0);
    Layer steel = layer(30e6, 4, 0.5, 6);
    Section section = new Section(List.of(wood, steel));
    assertThat(section.neutralAxis()).isCloseTo(5.031, within(0.001));
    assertThat(section.stress(wood, 60_000)).isCloseTo(1305, within(1.0));
    assertThat(section.stress(steel, 60_000)).isCloseTo(7621, within(1.0));
    assertThat(section.mostStressed()).isEqualTo(steel);
  }

  /**
   * Popov, Engineering Mechanics of Solids, Example 6.8 (p. 303): wood 150 x 250 mm, E 10 GPa, with
   * steel 150 x 10 mm below, E 200 GPa, M 30 kN m: wood 11.49 MPa, steel 97.09 MPa.
   */
  @Test
  void woodWithSteelBelow() {
    Layer wood = layer(10_000, 150, 250, 0);
    Layer steel = layer(200_000, 150, 10, 250);
    Section section = new Section(List.of(wood, steel));
    assertThat(section.stress(wood, 30e6)).isCloseTo(11.49, within(0.01));
    assertThat(section.stress(steel, 30e6)).isCloseTo(97.09, within(0.01));
  }

  /**
   * Beer, Johnston, DeWolf, Mechanics of Materials, Sample Problem 4.3 (p. 248): a T of two steel
   * plates, flange 200 x 20 mm and web 20 x 300 mm, with oak 75 x 300 mm on either side of the web;
   * E 12.5 and 200 GPa, M 50 kN m: wood 4.57 MPa.
   */
  @Test
  void steelTeeBetweenTimbers() {
    Layer oak = layer(12_500, 150, 300, 20);
    Section section =
        new Section(List.of(layer(200_000, 200, 20, 0), layer(200_000, 20, 300, 20), oak));
    assertThat(section.stress(oak, 50e6)).isCloseTo(4.57, within(0.01));
  }

  /** One rectangle: b t³/12, axis in the middle, stress 6 M/(b t²). */
  @ParameterizedTest
  @CsvSource({"280,18,8000", "11.25,0.75,1.2e6", "1,1,1"})
  void plainRectangle(double width, double thickness, double modulus) {
    Layer layer = layer(modulus, width, thickness, 0);
    Section section = new Section(List.of(layer));
    double inertia = width * Math.pow(thickness, 3) / 12;
    assertThat(section.bendingStiffness())
        .isCloseTo(modulus * inertia, within(modulus * inertia * 1e-12));
    assertThat(section.neutralAxis()).isEqualTo(thickness / 2);
    assertThat(section.stress(layer, 7))
        .isCloseTo(6 * 7 / (width * thickness * thickness), within(1e-9));
    assertThat(section.depth()).isEqualTo(width);
  }

  /** Cutting a rectangle in pieces changes nothing. */
  @Test
  void piecesAreAsStiffAsTheWhole() {
    Section whole = new Section(List.of(layer(9000, 300, 20, 0)));
    Section halves = new Section(List.of(layer(9000, 300, 8, 0), layer(9000, 300, 12, 8)));
    assertThat(halves.bendingStiffness())
        .isCloseTo(whole.bendingStiffness(), within(whole.bendingStiffness() * 1e-12));
    assertThat(halves.shearStiffness())
        .isCloseTo(whole.shearStiffness(), within(whole.shearStiffness() * 1e-12));
  }

  /** 600 kg/m³, 300 x 20 mm: 3.6 kg a metre, 35.3 N; a heavier strip draws the centre to it. */
  @Test
  void weighsAndBalances() {
    Layer board = new Layer("shelf", matter(9000, 600), 300, 20, 0, 0);
    assertThat(new Section(List.of(board)).weight() * 1000).isCloseTo(3.6 * 9.80665, within(1e-9));
    assertThat(new Section(List.of(board)).centreOfWeight()).isCloseTo(150, within(1e-9));
    Layer strip = new Layer("front strip", matter(9000, 1200), 20, 40, 0, 0);
    Layer behind = new Layer("shelf", matter(9000, 600), 280, 20, 20, 0);
    Section both = new Section(List.of(strip, behind));
    assertThat(both.centreOfWeight())
        .isCloseTo((20 * 40 * 1200 * 10 + 280 * 20 * 600 * 160) / (960e3 + 3360e3), within(1e-6));
    assertThat(both.depth()).isEqualTo(300);
  }

  @Test
  void hasSizeAndLayers() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Section(List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> layer(1, 0, 1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> layer(1, 1, Double.NaN, 0));
  }
}
