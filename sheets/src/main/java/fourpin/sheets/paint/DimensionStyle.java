package fourpin.sheets.paint;

/**
 * How dimensions look, in millimetres on paper.
 *
 * <p>Ends are oblique strokes, which ISO 129-1 allows beside arrows; distances follow its
 * proportions (from memory).
 *
 * @param text height of the em
 * @param gap between a number and what stands beside it, and between the work and an extension line
 * @param first from the edge of the work to the nearest dimension line
 * @param pitch from dimension line to dimension line
 * @param tick half the length of an oblique stroke, across and up
 * @param overrun of an extension line beyond its dimension line
 */
public record DimensionStyle(
    double text, double gap, double first, double pitch, double tick, double overrun) {

  public static final DimensionStyle USUAL = new DimensionStyle(2.8, 1, 7, 5.5, 0.9, 1.5);
}
