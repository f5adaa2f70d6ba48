package fourpin.boring.tolerance;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** A shelf's place made ready for drawing, in arrays of numbers. */
final class Place {

  private final int[] shared;
  private final double[] normals;
  private final double[][] reaches;
  private final double[] gap;
  private final double[] left;
  private final double[] right;

  /**
   * @param shared pulls of causes that other places have as well, by their slot in the values drawn
   * @param own of this place alone
   */
  Place(Map<Integer, Pull> shared, List<Strand> own) {
    this.shared = shared.keySet().stream().mapToInt(Integer::intValue).toArray();
    this.normals = own.stream().mapToDouble(s -> s.spread().normal()).toArray();
    this.reaches =
        own.stream()
            .map(s -> s.spread().reaches().stream().mapToDouble(Double::doubleValue).toArray())
            .toArray(double[][]::new);
    int count = this.shared.length + own.size();
    this.gap = new double[count];
    this.left = new double[count];
    this.right = new double[count];
    int next = 0;
    for (Pull pull : shared.values()) {
      set(next++, pull);
    }
    for (Strand strand : own) {
      set(next++, strand.direction());
    }
  }

  private void set(int index, Pull pull) {
    gap[index] = pull.gap();
    left[index] = pull.left();
    right[index] = pull.right();
  }

  /**
   * One gap; the loop that everything waits for, so no objects in it.
   *
   * @param values of the shared causes
   */
  double drawn(double[] values, SplittableRandom random) {
    double corners = 0;
    double leftProud = 0;
    double rightProud = 0;
    for (int i = 0; i < gap.length; i++) {
      int own = i - shared.length;
      double value = own < 0 ? values[shared[i]] : own(own, random);
      corners += gap[i] * value;
      leftProud += left[i] * value;
      rightProud += right[i] * value;
    }
    return SixPoints.gap(corners, leftProud, rightProud);
  }

  private double own(int strand, SplittableRandom random) {
    double value = normals[strand] == 0 ? 0 : normals[strand] * random.nextGaussian();
    for (double reach : reaches[strand]) {
      value += uniform(reach, random);
    }
    return value;
  }

  static double uniform(double reach, SplittableRandom random) {
    return reach * (2 * random.nextDouble() - 1);
  }
}
