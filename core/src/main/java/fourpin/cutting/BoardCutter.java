package fourpin.cutting;

public final class BoardCutter {
  public Layout cut(BoardProblem p) {
    return new StripCutter().cut(p.asSheets());
  }
}
