package fourpin.cutting;

import java.util.Comparator;
import java.util.List;

/**
 * What one layout is better by than another of the same problem: fewer parts left out (by area),
 * then less price, then less area of stock, then more worth of what is left over, then fewer
 * set-ups of the saw. The better one comes first.
 *
 * @param missing area of the parts left out, in square millimetres
 * @param price in the smallest coin
 * @param area of all sheets taken, in square millimetres
 * @param worth sum over the sheets of the largest offcut of each that is kept, in square
 *     millimetres: one large piece is worth more than the same wood in strips
 * @param setUps of the saw, sheets that are cut alike counted once
 */
public record Merit(double missing, long price, double area, double worth, long setUps)
    implements Comparable<Merit> {
  private static final Comparator<Merit> ORDER =
      Comparator.comparingDouble(Merit::missing)
          .thenComparingLong(Merit::price)
          .thenComparingDouble(Merit::area)
          .thenComparing(Comparator.comparingDouble(Merit::worth).reversed())
          .thenComparingLong(Merit::setUps);

  /** The merit of a layout. */
  public static Merit of(SheetProblem problem, Layout layout, Reusable kept) {
    List<SheetPattern> patterns = layout.patterns();
    return new Merit(
        layout.unplaced().stream().mapToDouble(u -> area(problem, u)).sum(),
        layout.price(),
        patterns.stream().mapToDouble(Merit::area).sum(),
        patterns.stream().mapToDouble(p -> kept.largest(p) * p.quantity()).sum(),
        patterns.stream().mapToLong(p -> setUps(p, problem.saw())).sum());
  }

  static long setUps(SheetPattern pattern, Saw saw) {
    return CuttingOrder.of(pattern, 1, saw).size();
  }

  private static double area(SheetPattern pattern) {
    return pattern.quantity() * pattern.sheet().length().mm() * pattern.sheet().width().mm();
  }

  private static double area(SheetProblem problem, Unplaced unplaced) {
    return problem.parts().stream()
        .filter(part -> part.mark().equals(unplaced.mark()))
        .mapToDouble(part -> unplaced.count() * part.length().mm() * part.width().mm())
        .sum();
  }

  @Override
  public int compareTo(Merit other) {
    return ORDER.compare(this, other);
  }
}
