package fourpin.strength.plate;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Which of a few supports touch a plate, and how hard they push. Supports push and never pull;
 * where one does not push, the plate has lifted off it. Of all sets of supports, one fits: the
 * plate's bending, its rolling about, and the balance of forces settle how hard each of a set
 * pushes, and the set fits if each pushes and no other support lies above the plate's underside.
 */
final class Contact {

  /** Forces and gaps count as nothing below this share of the largest. */
  private static final double NOTHING = 1e-9;

  /** Determinant below which supports stand in one line, their places in lengths of the plate. */
  private static final double IN_LINE = 1e-9;

  private final double[][] give;
  private final double[][] rolling;
  private final List<Integer> sets;

  /**
   * @param give how far the plate goes down at a support for each N that pushes down at another,
   *     while held
   * @param rolling how far it goes down at each support for each of its free movements; none for a
   *     plate that is held
   */
  Contact(double[][] give, double[][] rolling) {
    this.give = give;
    this.rolling = rolling;
    this.sets =
        IntStream.range(0, 1 << give.length)
            .boxed()
            .sorted((one, other) -> Integer.bitCount(other) - Integer.bitCount(one))
            .toList();
  }

  /**
   * What the supports do.
   *
   * @param pushes of each support, N
   * @param rolled how far along each of the free movements
   */
  record Touch(double[] pushes, double[] rolled) {}

  /**
   * Finds the set that touches, the largest first.
   *
   * @param down how far the loads bend the plate down at each support, while it is held
   * @param work of the loads on each of the free movements
   * @param low how low each support lies
   * @return nothing if the plate tips off its supports
   */
  Optional<Touch> find(double[] down, double[] work, double[] low) {
    for (int set : sets) {
      Optional<Touch> touch = solve(set, down, work, low).filter(t -> fits(set, t, down, low));
      if (touch.isPresent()) {
        return touch;
      }
    }
    return Optional.empty();
  }

  /** How hard each support pushes if all touch and the plate is held down on them. */
  Touch all(double[] down, double[] work, double[] low) {
    return solve((1 << give.length) - 1, down, work, low).orElseThrow();
  }

  private boolean fits(int set, Touch touch, double[] down, double[] low) {
    double most = largest(touch.pushes());
    double far = Math.max(largest(down), largest(low));
    for (int i = 0; i < give.length; i++) {
      boolean touches = (set >> i & 1) == 1;
      if (touches && touch.pushes()[i] < -NOTHING * most) {
        return false;
      }
      if (!touches && place(i, touch, down) > low[i] + NOTHING * far) {
        return false;
      }
    }
    return true;
  }

  private static double largest(double[] values) {
    double most = 0;
    for (double value : values) {
      most = Math.max(most, Math.abs(value));
    }
    return most;
  }

  /** How low the plate's underside lies at a support. */
  private double place(int support, Touch touch, double[] down) {
    double place = down[support];
    for (int j = 0; j < give.length; j++) {
      place -= give[support][j] * touch.pushes()[j];
    }
    for (int m = 0; m < touch.rolled().length; m++) {
      place += rolling[support][m] * touch.rolled()[m];
    }
    return place;
  }

  private Optional<Touch> solve(int set, double[] down, double[] work, double[] low) {
    int[] touching = IntStream.range(0, give.length).filter(i -> (set >> i & 1) == 1).toArray();
    if (!holds(touching, work.length)) {
      return Optional.empty();
    }
    int count = touching.length;
    int size = count + work.length;
    DMatrixRMaj left = new DMatrixRMaj(size, size);
    DMatrixRMaj right = new DMatrixRMaj(size, 1);
    for (int i = 0; i < count; i++) {
      right.set(i, 0, down[touching[i]] - low[touching[i]]);
      for (int j = 0; j < count; j++) {
        left.set(i, j, give[touching[i]][touching[j]]);
      }
      for (int m = 0; m < work.length; m++) {
        left.set(i, count + m, -rolling[touching[i]][m]);
        left.set(count + m, i, rolling[touching[i]][m]);
      }
    }
    for (int m = 0; m < work.length; m++) {
      right.set(count + m, 0, work[m]);
    }
    DMatrixRMaj unknowns = new DMatrixRMaj(size, 1);
    if (size > 0 && !CommonOps_DDRM.solve(left, right, unknowns)) {
      throw new IllegalStateException("no balance on supports " + Arrays.toString(touching));
    }
    return Optional.of(touch(touching, unknowns.data));
  }

  /** Whether a set leaves the plate no free movement: three supports or more, not in one line. */
  private boolean holds(int[] touching, int movements) {
    if (movements == 0) {
      return true;
    }
    DMatrixRMaj gram = new DMatrixRMaj(movements, movements);
    for (int support : touching) {
      for (int m = 0; m < movements; m++) {
        for (int n = 0; n < movements; n++) {
          gram.add(m, n, rolling[support][m] * rolling[support][n]);
        }
      }
    }
    return CommonOps_DDRM.det(gram) > IN_LINE;
  }

  private Touch touch(int[] touching, double[] unknowns) {
    double[] pushes = new double[give.length];
    for (int i = 0; i < touching.length; i++) {
      pushes[touching[i]] = unknowns[i];
    }
    return new Touch(pushes, Arrays.copyOfRange(unknowns, touching.length, unknowns.length));
  }
}
