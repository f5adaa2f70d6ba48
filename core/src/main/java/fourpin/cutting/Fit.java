package fourpin.cutting;

import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.List;

/** Whether a part, or the matched set that it is in, can be cut from a whole sheet of a stock. */
public record Fit(StockSheet sheet, Verdict verdict) {

  /** Whether it can, and if not, why. */
  public enum Verdict {
    CAN_BE_CUT,
    /** It could, were the board clear; no place between its defects is large enough. */
    DEFECTS_IN_THE_WAY,
    /** It is small enough, but no cuts within the limits of the saw get it out. */
    BEYOND_THE_SAW,
    /** The sheet, trimmed, is too small for it, as its grain has to run. */
    TOO_SMALL
  }

  /** The size of a part or, with the kerfs between its parts, of the set that it is in. */
  public record Size(Length length, Length width) {}

  /** For each stock of a problem, in its order. */
  public static List<Fit> of(SheetProblem problem, String mark) {
    Inflated inflated = new Inflated(problem);
    int kind = inflated.kind(mark);
    return inflated.panels.stream()
        .map(p -> new Fit(p.sheet(), verdict(inflated, kind, p)))
        .toList();
  }

  private static Verdict verdict(Inflated problem, int kind, Inflated.Panel panel) {
    if (panel.takes(kind)) {
      return ClearPlace.of(problem, panel, kind).isPresent()
          ? Verdict.CAN_BE_CUT
          : Verdict.DEFECTS_IN_THE_WAY;
    }
    return Misfits.isLargeEnough(panel, problem.kinds.get(kind))
        ? Verdict.BEYOND_THE_SAW
        : Verdict.TOO_SMALL;
  }

  /** How large a part is, or the set that it is cut in. */
  public static Size size(SheetProblem problem, String mark) {
    Inflated inflated = new Inflated(problem);
    Inflated.Kind kind = inflated.kinds.get(inflated.kind(mark));
    Unit unit = inflated.part(mark).length().unit();
    return new Size(
        new Length(kind.length() - inflated.kerf, unit),
        new Length(kind.width() - inflated.kerf, unit));
  }
}
