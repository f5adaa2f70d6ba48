package fourpin.sheets.paint;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * A drawing's scale: so much on paper for so much of the case.
 *
 * @param paper above 0
 * @param real above 0
 */
public record Scale(int paper, int real) {

  public static final Scale FULL = new Scale(1, 1);

  /**
   * ISO 5455 recommended scales that suit furniture, with 1:15 between them (common practice),
   * largest first.
   */
  public static final List<Scale> METRIC = series(1, 2, 5, 10, 15, 20, 25, 50, 100, 200, 500, 1000);

  /**
   * Scales of the inch rules: 1 in. is so many, full, half, quarter ... down to 1/8 in to the foot
   * (common practice).
   */
  public static final List<Scale> CUSTOMARY =
      series(1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 192, 480, 960);

  /** Every whole reduction to 1:1000, for pictures that are to be as large as their room. */
  public static final List<Scale> WHOLE =
      IntStream.rangeClosed(1, 1000).mapToObj(real -> new Scale(1, real)).toList();

  public Scale {
    if (paper < 1 || real < 1) {
      throw new IllegalArgumentException(
          "A scale needs whole numbers above 0, not " + paper + ":" + real);
    }
  }

  private static List<Scale> series(int... reductions) {
    return java.util.Arrays.stream(reductions).mapToObj(real -> new Scale(1, real)).toList();
  }

  /** Millimetres on paper for millimetres of the case. */
  public double toPaper(double real) {
    return real * paper / this.real;
  }

  /** Millimetres of the case for millimetres on paper. */
  public double toReal(double onPaper) {
    return onPaper * real / paper;
  }

  /** As printed: 1:10. */
  public String label() {
    return paper + ":" + real;
  }

  /**
   * The drawing at the first scale of the series at which it fits, its dimensions and legend
   * included.
   *
   * @param real size of what is drawn, in millimetres of the case; scales at which not even this
   *     fits are not tried
   * @throws IllegalStateException if it fits at none
   */
  public static Drawing largestFitting(
      List<Scale> series, Box real, double width, double height, Function<Scale, Drawing> draw) {
    return largestFitting(series, real, width, height, _ -> true, draw);
  }

  /**
   * The same where it is told faster that a drawing does not fit than it is drawn.
   *
   * @param mayFit whether it is worth drawing at a scale
   */
  public static Drawing largestFitting(
      List<Scale> series,
      Box real,
      double width,
      double height,
      Predicate<Scale> mayFit,
      Function<Scale, Drawing> draw) {
    return series.stream()
        .filter(scale -> scale.toPaper(real.width()) <= width)
        .filter(scale -> scale.toPaper(real.height()) <= height)
        .filter(mayFit)
        .map(draw)
        .filter(drawing -> drawing.fits(width, height))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "A drawing fits at no scale into " + width + " x " + height + " mm"));
  }
}
