package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Position;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;

/**
 * A shelf on three rows, the third half way between the two others, and how it rocks.
 *
 * <p>Say that on one side the back pin stands s higher than the front pin, and the middle pin p
 * higher than half way between them. Pushed down along its front edge, a rigid shelf lies on both
 * front pins and rises towards the back as little as the others let it: by s, or by s + 2 p where
 * the middle pin stands proud (p above 0), on whichever side that is more. Its gap over a back pin
 * is that rise less the s of that pin's side. Pushed down along its back edge, it rises by the most
 * that s, or s - 2 p, allow, and is off the front pins likewise. The widest of these four gaps is
 * |s<sub>left</sub> - s<sub>right</sub>| + 2 max(0, p<sub>left</sub>, p<sub>right</sub>). Without
 * proud middle pins it is the gap under the fourth corner ({@link Miss#GAP}). A middle pin below
 * the line of its neighbours is reached only by a shelf that sags.
 *
 * <p>A largest of several sums has no closed form here, so that it is simulated.
 *
 * @param strands all that the errors come from, independent of each other
 */
record SixPoints(List<Strand> strands) {

  /** Standard error of odds of 5 in 100: 0.2 in 100. */
  private static final int SAMPLES = 10_000;

  private static final long SEED = 20_260_102;

  SixPoints {
    strands = List.copyOf(strands);
  }

  static SixPoints of(ErrorModel model, Position position) {
    return new SixPoints(Strand.of(model.causes(), Pull.of(model, position)));
  }

  /**
   * The widest gap under a corner pin; that of four points where none stands proud.
   *
   * @param corners gap of the corners, with its sign
   */
  static double gap(double corners, double leftProud, double rightProud) {
    return Math.abs(corners) + 2 * Math.max(0, Math.max(leftProud, rightProud));
  }

  SimulatedGap simulated() {
    Place place = new Place(Map.of(), strands);
    SplittableRandom random = new SplittableRandom(SEED);
    double[] none = {};
    return new SimulatedGap(
        this, DoubleStream.generate(() -> place.drawn(none, random)).limit(SAMPLES).toArray());
  }
}
