package fourpin.job;

import fourpin.measure.Length;

/** The paper that the packet is printed on. */
public enum Paper {
  /** ISO 216: 210 x 297 mm. */
  A4(Length.mm(210), Length.mm(297)),
  /** ANSI/ASME Y14.1 size A: 8.5 x 11 in. */
  LETTER(Length.inches(17, 2), Length.inches(11));

  private final Length width;
  private final Length height;

  Paper(Length width, Length height) {
    this.width = width;
    this.height = height;
  }

  public Length width() {
    return width;
  }

  public Length height() {
    return height;
  }
}
