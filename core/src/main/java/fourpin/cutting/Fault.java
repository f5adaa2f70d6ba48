package fourpin.cutting;

import fourpin.measure.Length;

/** What is wrong with a layout, as found by {@link VirtualSaw}. Patterns are counted from 1. */
public sealed interface Fault {

  /** Blade not inside the piece: the fence setting is not above zero, or reaches the far side. */
  record CutOutsidePiece(int pattern, Direction direction, Length fence, Length extent)
      implements Fault {}

  /** The layout reckons with another kerf than the blade takes here. */
  record WrongKerf(int pattern, Direction direction, Length fence, Length stated, Length taken)
      implements Fault {}

  /** More than the kerf was left beyond the fence setting, but the layout says that nothing is. */
  record PieceForgotten(int pattern, Direction direction, Length fence, Length left)
      implements Fault {}

  /** The layout goes on with a piece beyond the blade where the blade took all. */
  record PieceFromDust(int pattern, Direction direction, Length fence) implements Fault {}

  /** Dust at a place where a piece must be: against the fence or a whole sheet. */
  record DustForPiece(int pattern) implements Fault {}

  /** The trim at an edge is not what was asked for, is done twice, or takes the whole sheet. */
  record WrongTrim(int pattern, Edge edge, Length asked, Length done) implements Fault {}

  /** The piece is longer, along the cut, than the saw can cut. */
  record CutTooLong(int pattern, Direction direction, Length extent, Length most)
      implements Fault {}

  /** The first cut of the sheet does not run the way it must. */
  record WrongFirstCut(int pattern, Direction direction) implements Fault {}

  /** The cuts run another way more often than they may. */
  record TooManyStages(int pattern, int stages, int most) implements Fault {}

  /** Parts of a matched set do not lie one after the other in one piece. */
  record NotMatched(int pattern, String set) implements Fault {}

  /** Parts that must share a sheet come from several, or some of them only are cut. */
  record NotTogether(String group) implements Fault {}

  /** A part holds something of a defect. */
  record OnDefect(int pattern, String mark, Defect defect) implements Fault {}

  /** A piece was ripped with its rough edge against the fence. */
  record RoughAtFence(int pattern, Length fence) implements Fault {}

  /**
   * A trimming cut after the first parting cut, other than straightening what is ripped next, once.
   */
  record LateTrim(int pattern, Edge edge) implements Fault {}

  /** A piece taken for a part is not of its size. */
  record WrongSize(int pattern, String mark, Length length, Length width) implements Fault {}

  /** Worked to its size, a part of this mark is of another, or short of it. */
  record WrongWhenWorked(String mark, Length length, Length width) implements Fault {}

  /** The part lies across the grain that it must follow. */
  record WrongGrain(int pattern, String mark) implements Fault {}

  /** No part of this mark was asked for. */
  record UnknownPart(int pattern, String mark) implements Fault {}

  /** The sheet is not in stock as described. */
  record UnknownSheet(int pattern, String name) implements Fault {}

  /** More sheets are used than there are. */
  record StockExceeded(String name, long used, int available) implements Fault {}

  /** Cut and left out do not add up to what was asked for. */
  record WrongCount(String mark, int asked, long cut, long leftOut) implements Fault {}

  /**
   * A part was left out, or left out for this reason, although a whole sheet that it fits on is
   * there.
   */
  record NeedlesslyLeftOut(String mark, Unplaced.Reason reason, String sheet) implements Fault {}

  /** Left out for want of sheets, but it fits on none at all. */
  record WrongReason(String mark, Unplaced.Reason reason) implements Fault {}

  /** Two pieces lie over each other. */
  record Overlap(int pattern, String first, String second) implements Fault {}

  /** A piece reaches over the edge of the sheet. */
  record OutsideSheet(int pattern, String what) implements Fault {}

  /** Parts, offcuts, kerf and trim do not add up to the sheet; in square picometres. */
  record AreaDoesNotBalance(int pattern, String sheet, String accounted) implements Fault {}
}
