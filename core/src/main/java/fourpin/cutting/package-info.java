/**
 * Sheets and boards into parts: guillotine layouts, the order of the cuts, and a virtual saw that
 * checks them.
 *
 * <p>A problem is the parts of one material, the stock of that material, and the saw. A {@link
 * fourpin.cutting.SheetCutter} answers with a {@link fourpin.cutting.Layout}: one tree of cuts per
 * pattern, with the number of sheets cut like it, and what could not be placed, with the reason.
 * {@link fourpin.cutting.VirtualSaw} shares no arithmetic with the search.
 *
 * <p>How to lay parts out, and go on until something has been found or seconds have gone by:
 *
 * {@snippet :
 * Part side = new Part("side", Length.mm(1800), Length.mm(280), 8, Grain.FIXED);
 * Part shelf = new Part("shelf", Length.mm(762), Length.mm(275), 26, Grain.FIXED);
 * StockSheet plywood =
 *     new StockSheet(
 *         "birch plywood",
 *         Length.mm(2440),
 *         Length.mm(1220),
 *         SheetGrain.ALONG_LENGTH,
 *         Supply.unlimited(),
 *         9_200,
 *         Origin.TO_BUY);
 * Saw saw = new Saw(Length.inches(1, 8), Trim.allRound(Length.mm(6)));
 * SheetProblem problem = new SheetProblem(List.of(side, shelf), List.of(plywood), saw);
 *
 * Reusable kept = new Reusable(Length.mm(300), Length.mm(100));
 * Merit.Aims aims = new Merit.Aims(kept, Length.mm(300));
 * long end = System.nanoTime() + 5_000_000_000L;
 * Watch watch = Watch.until(() -> System.nanoTime() > end);
 * Layout layout = new ThoroughCutter(aims, ThoroughCutter.Limit.WATCH, watch).cut(problem);
 *
 * System.out.println(layout.sheets() + " sheets; none needs fewer than " + layout.bound().sheets());
 * for (SheetPattern pattern : layout.patterns()) {
 *   System.out.println(pattern.quantity() + " with " + pattern.parts().size() + " parts");
 * }
 * System.out.println("faults: " + VirtualSaw.check(problem, layout));
 * }
 *
 * <p>Without a limit and a watch the answer hangs on the problem alone, not on the machine.
 *
 * <p>Coordinates: x runs along the length of a sheet from its near end, y along its width from its
 * near edge. A rip runs parallel to the length of the sheet and a crosscut parallel to its width,
 * whichever way the grain runs.
 */
@NullMarked
package fourpin.cutting;

import org.jspecify.annotations.NullMarked;
