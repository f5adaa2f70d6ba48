package fourpin.cutting;

import fourpin.cutting.Inflated.Option;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The smallest boxes from which each portion of few parts can be cut: of one part as it may lie, of
 * more from the boxes of two portions that make it up, side by side in both ways. A box counts if
 * no other of its portion is as small in both ways, if it lies on the panel, and if it leaves no
 * more of itself unused than may be left of the stock in all.
 *
 * <p>P.Y. Wang, Two algorithms for constrained two-dimensional cutting stock problems, Operations
 * Research 31 (1983) 573-586; L. Stockmeyer, Optimal orientations of cells in slicing floorplan
 * designs, Information and Control 57 (1983) 91-101 (both from memory). Without limits of the saw
 * nothing is missed; with them, what the saw can't cut is passed over, and what might be cut in
 * larger boxes of the same portion is not looked for.
 */
final class Boxes {

  /** So much of an area counts as none, for sums of areas are rounded. */
  private static final double ROUNDING = 1e-9;

  private final Panel panel;
  private final Portions portions;
  private final long kerf;
  private final Work work;
  private final double[] most;

  /** Of each portion, from the lowest and longest box to the highest and shortest. */
  private final List<List<Box>> boxes = new ArrayList<>();

  /**
   * @param unused area that may be left in a box
   * @param work once it is spent, boxes of further portions are not looked for
   */
  Boxes(Inflated problem, Panel panel, Portions portions, double unused, Work work) {
    this.panel = panel;
    this.portions = portions;
    this.work = work;
    kerf = problem.kerf;
    most = new double[portions.all() + 1];
    for (int portion = 0; portion < most.length; portion++) {
      most[portion] = unused + portions.area(portion) + ROUNDING * panel.area();
      boxes.add(new ArrayList<>());
    }
    fill();
  }

  /** Whether a portion can be cut from one panel. */
  boolean fit(int portion) {
    return panel.rules().limit() ? draft(portion).isPresent() : !boxes.get(portion).isEmpty();
  }

  /** A portion as a pattern of the panel. */
  Optional<Draft> draft(int portion) {
    return boxes.get(portion).stream().flatMap(box -> box.on(panel, kerf).stream()).findFirst();
  }

  private void fill() {
    for (Option option : panel.options()) {
      if (portions.count(portions.all(), option.kind()) > 0) {
        offer(boxes.get(portions.one(option.kind())), new Box.One(option));
      }
    }
    for (int portion = 1; portion < most.length && !work.spent(); portion++) {
      pair(portion);
    }
  }

  private void pair(int portion) {
    int[] parts = portions.of(portion);
    work.spend(parts.length / 2);
    for (int i = 1; i <= (parts.length - 1) / 2; i++) {
      List<Box> near = boxes.get(parts[i]);
      List<Box> far = boxes.get(parts[parts.length - 1 - i]);
      if (!near.isEmpty() && !far.isEmpty()) {
        work.spend(2L * (near.size() + far.size()));
        besides(portion, near, far);
        above(portion, near, far);
      }
    }
  }

  /** For each width, the shortest box of either: the first that is no wider from the end. */
  private void besides(int portion, List<Box> near, List<Box> far) {
    int i = near.size() - 1;
    int j = far.size() - 1;
    while (i >= 0 && j >= 0) {
      Box one = near.get(i);
      Box other = far.get(j);
      join(portion, Direction.CROSSCUT, one, other);
      i -= one.dy() >= other.dy() ? 1 : 0;
      j -= other.dy() >= one.dy() ? 1 : 0;
    }
  }

  /** For each length, the narrowest box of either. */
  private void above(int portion, List<Box> near, List<Box> far) {
    int i = 0;
    int j = 0;
    while (i < near.size() && j < far.size()) {
      Box one = near.get(i);
      Box other = far.get(j);
      join(portion, Direction.RIP, one, other);
      i += one.dx() >= other.dx() ? 1 : 0;
      j += other.dx() >= one.dx() ? 1 : 0;
    }
  }

  /**
   * Sizes first, so that most pairs are left before they are boxes. Of pieces between parallel cuts
   * the smallest portion is put to all the others, so that not every order of them is tried.
   */
  private void join(int portion, Direction cut, Box near, Box far) {
    boolean rip = cut == Direction.RIP;
    long across = Math.max(near.across(cut), far.across(cut));
    long along = near.along(cut) + far.along(cut);
    boolean fits = along <= (rip ? panel.width() : panel.length());
    if (fits
        && !near.isCut(cut)
        && (double) across * along <= most[portion]
        && panel.rules().reach(cut, across)) {
      offer(boxes.get(portion), Box.of(cut, near, far));
    }
  }

  private static void offer(List<Box> known, Box box) {
    int at = 0;
    while (at < known.size() && known.get(at).dy() < box.dy()) {
      at++;
    }
    boolean lower = at > 0 && known.get(at - 1).dx() <= box.dx();
    boolean equal =
        at < known.size() && known.get(at).dy() == box.dy() && known.get(at).dx() <= box.dx();
    if (!lower && !equal) {
      while (at < known.size() && known.get(at).dx() >= box.dx()) {
        known.remove(at);
      }
      known.add(at, box);
    }
  }
}
