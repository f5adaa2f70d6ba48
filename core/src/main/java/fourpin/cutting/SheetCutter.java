package fourpin.cutting;

/**
 * Lays parts out on sheets by guillotine cuts.
 *
 * <p>What every implementation promises: the same problem gives the same layout when work and not
 * time limits it; every part is either in a pattern or in {@link Layout#unplaced()}; a part is left
 * out only when it fits on no sheet or the sheets that it fits on are used up; {@link VirtualSaw}
 * finds no fault. Effort, seeds and deadlines are arguments of the implementation, not of the
 * problem.
 */
@FunctionalInterface
public interface SheetCutter {

  Layout cut(SheetProblem problem);
}
