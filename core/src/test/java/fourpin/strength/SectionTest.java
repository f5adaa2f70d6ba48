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

/** What holds of sections; printed answers of textbooks stand in {@code fourpin.validation}. */
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
