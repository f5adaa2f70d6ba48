package fourpin.cutting;

import fourpin.measure.Length;
import java.util.Optional;

/**
 * What becomes of the pieces of one mark: each is cut over size and worked to the finished size, or
 * several strips of one width are glued edge to edge and then worked to it.
 *
 * @param mark of the pieces
 * @param length finished, along the grain, above zero
 * @param width finished, above zero
 * @param strips how many pieces one is glued from; 1 where nothing is glued
 * @param allowance that the pieces are cut with
 */
public record Blank(String mark, Length length, Length width, int strips, Allowance allowance) {

  /** Widths that strips to be glued may have as cut; the least at most the greatest. */
  public record Widths(Length least, Length greatest) {}

  public Blank {
    Require.named(mark, "mark of a blank");
    Require.positive(length, "length of blank " + mark);
    Require.positive(width, "width of blank " + mark);
    Require.atLeastOne(strips, "strips of blank " + mark);
  }

  /** In one piece. */
  public static Blank whole(String mark, Length length, Length width, Allowance allowance) {
    return new Blank(mark, length, width, 1, allowance);
  }

  /**
   * From as few strips as can be: one piece where it is narrow enough. Empty where no number of
   * equal strips has a width within the limits.
   *
   * @param step whole multiples of which strips are wide before the allowance for their edges
   */
  public static Optional<Blank> glued(Blank whole, Widths widths, Length step) {
    boolean thin =
        widths.greatest.isLessThan(step.plus(whole.allowance.edge().times(2)))
            && whole.cutWidth(step).isMoreThan(widths.greatest);
    if (thin) {
      return Optional.empty();
    }
    int strips = 1;
    Blank blank = whole;
    while (blank.cutWidth(step).isMoreThan(widths.greatest)
        && blank.cutWidth(step).isAtLeast(widths.least)) {
      strips++;
      blank = new Blank(whole.mark, whole.length, whole.width, strips, whole.allowance);
    }
    boolean within =
        widths.greatest.isAtLeast(blank.cutWidth(step))
            && (strips == 1 || blank.cutWidth(step).isAtLeast(widths.least));
    return within ? Optional.of(blank) : Optional.empty();
  }

  /** As long as each piece is cut. */
  public Length cutLength() {
    return length.plus(allowance.length());
  }

  /** As wide as each piece is cut; of strips rounded up to a step, so that they can be set. */
  public Length cutWidth(Length step) {
    Length whole = width.plus(allowance.width());
    if (strips == 1) {
      return whole;
    }
    Length all = step.times(strips);
    long steps = whole.plus(all).minus(new Length(1, whole.unit())).wholeTimes(all);
    return step.times(steps).in(whole.unit()).plus(allowance.edge().times(2));
  }

  /** The pieces to be cut. @param count of finished ones */
  public Part pieces(int count, Grain grain, Length step) {
    return new Part(mark, cutLength(), cutWidth(step), Math.multiplyExact(count, strips), grain);
  }
}
