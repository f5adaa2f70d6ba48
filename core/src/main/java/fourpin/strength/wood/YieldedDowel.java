package fourpin.strength.wood;

import java.util.stream.DoubleStream;

/**
 * A dowel, nail or screw that joins two parts side by side and is pushed across, until wood or
 * dowel yields: the six ways of Johansen's theory, as NDS 2018, Table 12.3.1A, and EN 1995-1-1,
 * 8.2.2, have them, without the pull of the rope that Eurocode 5 may add.
 *
 * @param diameter of what bears, mm
 * @param side length in the part that it goes through, mm; {@code main} in the other
 * @param sideBearing bearing strength there, MPa; {@code mainBearing} in the other
 * @param moment at which the dowel yields, N·mm
 */
public record YieldedDowel(
    double diameter,
    double side,
    double main,
    double sideBearing,
    double mainBearing,
    double moment) {

  /** The least push at which any way of yielding comes, N. */
  public double yieldsAt() {
    return DoubleStream.of(
            diameter * main * mainBearing,
            diameter * side * sideBearing,
            tilts(),
            bendsInSide(),
            bendsInMain(),
            bendsTwice())
        .min()
        .orElseThrow();
  }

  private double bearings() {
    return mainBearing / sideBearing;
  }

  /** It turns in both parts: mode II. */
  private double tilts() {
    double re = bearings();
    double rt = main / side;
    double root = Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re);
    return (root - re * (1 + rt)) / (1 + re) * diameter * side * sideBearing;
  }

  /** It turns in the main part and bends once: mode III m. */
  private double bendsInSide() {
    double re = bearings();
    double bent = 4 * moment * (1 + 2 * re) / (diameter * mainBearing * main * main);
    double k = -1 + Math.sqrt(2 * (1 + re) + bent);
    return k * diameter * main * mainBearing / (1 + 2 * re);
  }

  /** It turns in the side part and bends once: mode III s. */
  private double bendsInMain() {
    double re = bearings();
    double bent = 4 * moment * (2 + re) / (diameter * mainBearing * side * side);
    double k = -1 + Math.sqrt(2 * (1 + re) / re + bent);
    return k * diameter * side * mainBearing / (2 + re);
  }

  private double bendsTwice() {
    return Math.sqrt(4 * diameter * mainBearing * moment / (1 + bearings()));
  }
}
