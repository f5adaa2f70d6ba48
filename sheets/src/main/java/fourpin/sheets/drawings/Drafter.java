package fourpin.sheets.drawings;

import fourpin.job.Job;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Typeface;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * What all drawings of a job share: how lengths are printed, the scales of its units, and the room
 * on its paper.
 *
 * @param width and {@code height} that a drawing may take on paper, in millimetres
 */
public record Drafter(LengthStyle style, double width, double height) {

  static final double LABEL = 3;

  /** 7 points and a little, the least that is read at arm's length (common practice). */
  static final double SMALL = 2.5;

  public static Drafter of(Job job, double width, double height) {
    return new Drafter(job.style(), width, height);
  }

  /** The same with less height, for drawings that share a page. */
  public Drafter high(double newHeight) {
    return new Drafter(style, width, newHeight);
  }

  /** The same with less width, for drawings with something beside them. */
  public Drafter wide(double newWidth) {
    return new Drafter(style, newWidth, height);
  }

  String number(Length length) {
    return style.number(length);
  }

  /** A diameter as it stands on the bit. */
  String diameter(Length diameter) {
    return style.diameterNumber(diameter);
  }

  /** What a reader must know about the numbers. */
  String note() {
    return style.unit().customary() ? "dimensions in inches" : "dimensions in mm";
  }

  List<Scale> scales() {
    return style.unit().customary() ? Scale.CUSTOMARY : Scale.METRIC;
  }

  /**
   * @param real size of what is drawn, in millimetres of the case
   */
  Drawing largest(Box real, Function<Scale, Drawing> draw) {
    return Scale.largestFitting(scales(), real, width, height, draw);
  }

  /**
   * At any whole scale, for pictures that nobody measures or compares with others of the job.
   *
   * @param real size of what is drawn, in millimetres of the case
   */
  Drawing fill(Box real, Function<Scale, Drawing> draw) {
    return Scale.largestFitting(Scale.WHOLE, real, width, height, draw);
  }

  /**
   * @param bare draws no more than {@code whole} does too, and that quickly: where not even this
   *     fits, the whole is not drawn
   */
  Drawing fill(Box real, Function<Scale, Drawing> bare, Function<Scale, Drawing> whole) {
    return Scale.largestFitting(
        Scale.WHOLE, real, width, height, s -> bare.apply(s).fits(width, height), whole);
  }

  static Lettering label(String words) {
    return Lettering.of(words, Typeface.BOLD, LABEL);
  }

  static Lettering small(String words) {
    return Lettering.of(words, Typeface.NARROW, SMALL);
  }

  /** The words as a name for files: small letters, digits and hyphens; never empty. */
  public static String name(String... words) {
    String joined = String.join("-", words).toLowerCase(Locale.ROOT);
    String plain = joined.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return plain.isEmpty() ? "drawing" : plain;
  }

  /**
   * A label that may end in dots to keep to a width; its full words must stand elsewhere on the
   * page.
   */
  static Lettering shortLabel(String words, double width) {
    int end = words.length();
    Lettering label = label(words);
    while (label.width() > width && end > 1) {
      end--;
      label = label(words.substring(0, end) + "…");
    }
    return label;
  }
}
