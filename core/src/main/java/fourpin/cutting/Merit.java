package fourpin.cutting;

import fourpin.measure.Length;
import java.util.Comparator;
import java.util.List;

/**
 * What one layout is better by than another of the same problem: fewer parts left out (by area),
 * then less price, then less area of stock, then more worth of what is left over, then fewer pieces
 * too small to be held, then fewer set-ups of the saw, then fewer turns. The better one comes
 * first.
 *
 * @param missing area of the parts left out, in square millimetres
 * @param price in the smallest coin
 * @param area of all sheets taken, in square millimetres
 * @param worth sum over the sheets of the largest offcut of each that is kept, in square
 *     millimetres: one large piece is worth more than the same wood in strips
 * @param small pieces that are too small to be held when they are cut, sheets that are cut alike
 *     counted once
 * @param setUps of the saw, sheets that are cut alike counted once
 * @param turns set-ups that cut another way than the one before them on the same sheet
 */
public record Merit(
    double missing, long price, double area, double worth, long small, long setUps, long turns)
    implements Comparable<Merit> {
  private static final Comparator<Merit> ORDER =
      Comparator.comparingDouble(Merit::missing)
          .thenComparingLong(Merit::price)
          .thenComparingDouble(Merit::area)
          .thenComparing(Comparator.comparingDouble(Merit::worth).reversed())
          .thenComparingLong(Merit::small)
          .thenComparingLong(Merit::setUps)
          .thenComparingLong(Merit::turns);

  /**
   * What counts besides price and area.
   *
   * @param kept offcuts that are worth something
   * @param least length of a piece that can be held at the saw
   * @param holds what else the shop can hold: passes that are held in another way are another
   *     set-up
   */
  public record Aims(Reusable kept, Length least, HoldLimits holds) {

    /** The same where a piece is held by its shape alone. */
    public Aims(Reusable kept, Length least) {
      this(kept, least, HoldLimits.NONE);
    }
  }

  /** Of layouts, that of most merit. What takes long to find out is asked only among equals. */
  static Layout best(SheetProblem problem, List<Layout> layouts, Aims aims) {
    Comparator<Layout> first =
        Comparator.comparingDouble((Layout layout) -> leftOut(problem, layout))
            .thenComparingLong(Layout::price)
            .thenComparingDouble(Merit::taken);
    Layout one = layouts.stream().min(first).orElseThrow();
    List<Layout> equals = layouts.stream().filter(l -> first.compare(l, one) == 0).toList();
    return equals.size() == 1
        ? one
        : equals.stream().min(Comparator.comparing(l -> of(problem, l, aims))).orElseThrow();
  }

  private static double leftOut(SheetProblem problem, Layout layout) {
    return layout.unplaced().stream().mapToDouble(u -> area(problem, u)).sum();
  }

  private static double taken(Layout layout) {
    return layout.patterns().stream().mapToDouble(Merit::area).sum();
  }

  /** The merit of a layout. */
  public static Merit of(SheetProblem problem, Layout layout, Aims aims) {
    List<SheetPattern> patterns = layout.patterns();
    List<OfSheet> sheets =
        patterns.stream().map(pattern -> OfSheet.of(pattern, problem.saw(), aims)).toList();
    return new Merit(
        leftOut(problem, layout),
        layout.price(),
        taken(layout),
        patterns.stream().mapToDouble(p -> aims.kept.largest(p) * p.quantity()).sum(),
        sheets.stream().mapToLong(OfSheet::small).sum(),
        sheets.stream().mapToLong(OfSheet::setUps).sum(),
        sheets.stream().mapToLong(OfSheet::turns).sum());
  }

  /** What one sheet adds to the last four; the better one comes first. */
  record OfSheet(double worth, long small, long setUps, long turns) implements Comparable<OfSheet> {
    private static final Comparator<OfSheet> ORDER =
        Comparator.comparingDouble(OfSheet::worth)
            .reversed()
            .thenComparingLong(OfSheet::small)
            .thenComparingLong(OfSheet::setUps)
            .thenComparingLong(OfSheet::turns);

    static OfSheet of(SheetPattern pattern, Saw saw, Aims aims) {
      List<SetUp> setUps = CuttingOrder.of(pattern, 1, saw, aims.holds);
      return new OfSheet(
          aims.kept.largest(pattern),
          SmallPieces.cut(setUps, aims.least).size(),
          setUps.size(),
          SetUp.turns(setUps));
    }

    @Override
    public int compareTo(OfSheet other) {
      return ORDER.compare(this, other);
    }
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
