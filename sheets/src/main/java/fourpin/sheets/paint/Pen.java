package fourpin.sheets.paint;

import java.util.List;
import java.util.Locale;

/**
 * What a line means, and so how it is drawn.
 *
 * <p>Widths are from the series of ISO 128-2 (0.13, 0.18, 0.25, 0.35, 0.5, 0.7 mm) and line types
 * follow its use: wide for visible outlines, dashed for hidden edges, long dash and dot for centre
 * lines (series and use from memory of the standard). Meaning is carried by width and dashes; the
 * ink only repeats it.
 */
public enum Pen {
  /** The outline of what is drawn. */
  OUTLINE(0.5, Ink.BLACK),
  /** Edges that are seen but do not bound the whole. */
  EDGE(0.25, Ink.BLACK),
  /** Edges behind other wood. */
  HIDDEN(0.25, Ink.BLACK, 2, 1),
  /** Axes and the rows of holes. */
  CENTRE(0.18, Ink.BLACK, 6, 1, 0.5, 1),
  /** Dimension lines, their extensions, leaders. */
  DIMENSION(0.18, Ink.BLACK),
  HATCH(0.13, Ink.BLACK),
  /** The datum, and what must be found at once. */
  DATUM(0.7, Ink.BLACK),
  /** A cut to be sawn. */
  CUT(0.35, Ink.BLACK, 4, 1.5),
  /** The place of a finding: heavy, and of its own dash. */
  FLAG(0.7, Ink.RED, 1.5, 1),
  /** Rules of tables and frames. */
  RULE(0.18, Ink.BLACK);

  private final double width;
  private final Ink ink;
  private final List<Double> dashes;

  Pen(double width, Ink ink, double... dashes) {
    this.width = width;
    this.ink = ink;
    this.dashes = java.util.Arrays.stream(dashes).boxed().toList();
  }

  /** Millimetres. */
  public double width() {
    return width;
  }

  public Ink ink() {
    return ink;
  }

  /** Millimetres of line and gap in turn; empty for an unbroken line. */
  public List<Double> dashes() {
    return dashes;
  }

  /** A name for style sheets. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
