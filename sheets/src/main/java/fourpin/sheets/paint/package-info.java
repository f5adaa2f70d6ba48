/**
 * Drawings as data, and what every output shares: pens, lettering, dimensions, hatching.
 *
 * <p>One convention throughout: millimetres on paper as doubles, x to the right, y <em>up</em>, as
 * on a drawing board. A {@link fourpin.sheets.paint.Sketch} brings lengths of the case to paper at
 * a scale; writers turn a drawing into SVG or PDF and decide nothing about it.
 */
@NullMarked
package fourpin.sheets.paint;

import org.jspecify.annotations.NullMarked;
