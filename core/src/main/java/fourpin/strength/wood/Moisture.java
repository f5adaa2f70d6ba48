package fourpin.strength.wood;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.reference.WoodMovement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Moisture in wood and what it does to sizes (Wood Handbook FPL-GTR-190, 2010). */
public final class Moisture {

  /** Equation 4-5. */
  public static final String EQUILIBRIUM =
      "1800 / W × (K h / (1 - K h) + (K₁ K h + 2 K₁ K₂ K² h²) / (1 + K₁ K h + K₁ K₂ K² h²)),"
          + " h = H / 100";

  /** Between these moistures a size changes evenly, per cent (Table 13-5). */
  private static final double EVENLY_FROM = 6;

  private static final double EVENLY_TO = 14;

  /** Per cent, above which wood does not move (Wood Handbook, Eq. 13-2). */
  public static final double FIBRE_SATURATION = 30;

  private Moisture() {}

  /** Which way a size runs in a board. */
  public enum Way {
    /** Across a flat-sawn board. */
    TANGENTIAL,
    /** Across a quarter-sawn board. */
    RADIAL
  }

  /**
   * Per cent of moisture that wood comes to, in time.
   *
   * @param celsius temperature
   * @param humidity relative, per cent
   */
  public static double equilibrium(double celsius, double humidity) {
    double k = curve("K", celsius) * humidity / 100;
    double k1 = curve("K1", celsius) * k;
    double k12 = k1 * curve("K2", celsius) * k;
    return 1800 / curve("W", celsius) * (k / (1 - k) + (k1 + 2 * k12) / (1 + k1 + k12));
  }

  /** The numbers of {@link #EQUILIBRIUM} that go by temperature, each by its symbol. */
  public static Map<String, Sourced> curves(double celsius) {
    Map<String, Sourced> curves = new LinkedHashMap<>();
    List.of("W", "K", "K1", "K2")
        .forEach(
            name ->
                curves.put(
                    name.replace('1', '₁').replace('2', '₂'),
                    new Sourced(
                        Quantity.of(curve(name, celsius), QuantityUnit.RATIO),
                        Reference.moisture().get(name).source())));
    return curves;
  }

  private static double curve(String name, double celsius) {
    return Reference.moisture().get(name).at(celsius);
  }

  public static Source source() {
    return Reference.moisture().get("W").source();
  }

  /**
   * By how much a size grows from one moisture to another: evenly from 6 to 14 %, else by the
   * shrinkage from green to ovendry (Eq. 13-2; the second form from memory).
   *
   * @param size at {@code from}, mm
   * @param from moisture, per cent
   */
  public static double change(WoodMovement wood, Way way, double size, double from, double to) {
    return isEven(from, to)
        ? size * each(wood, way) * (to - from)
        : size * (to - from) / (FIBRE_SATURATION * (100 / shrinkage(wood, way) - 1) + from);
  }

  /** Whether a size changes evenly from one moisture to another: Table 13-5 holds there. */
  public static boolean isEven(double from, double to) {
    return Math.min(from, to) >= EVENLY_FROM && Math.max(from, to) <= EVENLY_TO;
  }

  /** Change for each per cent of moisture, as a share of the size. */
  public static double each(WoodMovement wood, Way way) {
    return switch (way) {
      case TANGENTIAL -> wood.tangential();
      case RADIAL -> wood.radial();
    };
  }

  /** From green to ovendry, per cent of the green size. */
  public static double shrinkage(WoodMovement wood, Way way) {
    return switch (way) {
      case TANGENTIAL -> wood.tangentialShrinkage();
      case RADIAL -> wood.radialShrinkage();
    };
  }
}
