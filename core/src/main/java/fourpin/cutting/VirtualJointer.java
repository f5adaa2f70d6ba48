package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Works the pieces that a layout holds to their finished sizes, as a maker would: takes the
 * allowance off the edges of strips, glues them, takes the rest off, and measures. An independent
 * check: it looks at the pieces as cut and not at how their sizes were reckoned.
 *
 * <p>What comes out is as long as it must be, and as wide; of strips, which are rounded up, it is
 * wider by less than the step for each.
 */
public final class VirtualJointer {

  private final Layout layout;
  private final long step;
  private final List<Fault> faults = new ArrayList<>();

  private VirtualJointer(Layout layout, Length step) {
    this.layout = layout;
    this.step = step.picometres();
  }

  /**
   * All that comes out of the wrong size, once for each blank and size of piece.
   *
   * @param step whole multiples of which strips are wide before the allowance for their edges
   */
  public static List<Fault> check(List<Blank> blanks, Layout layout, Length step) {
    VirtualJointer jointer = new VirtualJointer(layout, step);
    blanks.forEach(jointer::work);
    return List.copyOf(jointer.faults);
  }

  private void work(Blank blank) {
    layout.patterns().stream()
        .flatMap(pattern -> pattern.parts().stream())
        .filter(piece -> ((Node.Finished) piece.node()).mark().equals(blank.mark()))
        .map(VirtualJointer::alongTheGrain)
        .distinct()
        .forEach(piece -> work(blank, piece));
  }

  /** Length and width in picometres, as the part is meant. */
  private record Cut(long length, long width) {}

  private static Cut alongTheGrain(Placed piece) {
    boolean turned = ((Node.Finished) piece.node()).lay() == Lay.TURNED;
    long along = piece.length().picometres();
    long across = piece.width().picometres();
    return turned ? new Cut(across, along) : new Cut(along, across);
  }

  private void work(Blank blank, Cut piece) {
    boolean glued = blank.strips() > 1;
    long edges = glued ? 2 * blank.allowance().edge().picometres() : 0;
    long glueUp = blank.strips() * (piece.width - edges);
    long width = glueUp - blank.allowance().width().picometres();
    long length = piece.length - blank.allowance().length().picometres();
    long over = width - blank.width().picometres();
    boolean wide = glued ? over >= 0 && over < blank.strips() * step : over == 0;
    if (length != blank.length().picometres() || !wide) {
      faults.add(
          new Fault.WrongWhenWorked(
              blank.mark(),
              new Length(length, blank.length().unit()),
              new Length(width, blank.width().unit())));
    }
  }
}
