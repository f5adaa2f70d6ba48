package fourpin.sheets.pages;

import fourpin.sheets.paint.Box;

/** Sizes of paper, upright, in millimetres, and what of it is printed on. */
public enum Paper {
  /** ISO 216. */
  A4("A4", 210, 297),
  /** ANSI/ASME Y14.1, size A: 8 1/2 by 11 in. */
  LETTER("Letter", 215.9, 279.4);

  private static final double LEFT = 20;
  private static final double RIGHT = 12;
  private static final double TOP = 12;
  private static final double BOTTOM = 10;
  private static final double FOOT = 11;
  private static final double UNPRINTED = 5;
  private static final double ABOVE_BODY = 1.5;

  private final String label;
  private final double width;
  private final double height;

  Paper(String label, double width, double height) {
    this.label = label;
    this.width = width;
    this.height = height;
  }

  public String label() {
    return label;
  }

  public double width() {
    return width;
  }

  public double height() {
    return height;
  }

  /** Where text and drawings stand, from the lower left corner of the paper. */
  public Box body() {
    return new Box(LEFT, BOTTOM + FOOT, width - RIGHT, height - TOP);
  }

  /** Where a warning stands, at the head of each page, within what most printers reach. */
  public Box head() {
    return new Box(LEFT, height - TOP + ABOVE_BODY, width - RIGHT, height - UNPRINTED);
  }

  /** Where the title block stands, at the foot of each page. */
  public Box foot() {
    return new Box(LEFT, BOTTOM, width - RIGHT, BOTTOM + FOOT - 3);
  }
}
