/**
 * Sheets and boards into parts: guillotine layouts, the order of the cuts, and a virtual saw that
 * checks them.
 *
 * <p>A problem is the parts of one material, the stock of that material, and the saw. A {@link
 * fourpin.cutting.SheetCutter} answers with a {@link fourpin.cutting.Layout}: one tree of cuts per
 * pattern, with the number of sheets cut like it, and what could not be placed, with the reason.
 * {@link fourpin.cutting.VirtualSaw} shares no arithmetic with the search.
 *
 * <p>Coordinates: x runs along the length of a sheet from its near end, y along its width from its
 * near edge. A rip runs parallel to the length of the sheet and a crosscut parallel to its width,
 * whichever way the grain runs.
 */
@NullMarked
package fourpin.cutting;

import org.jspecify.annotations.NullMarked;
