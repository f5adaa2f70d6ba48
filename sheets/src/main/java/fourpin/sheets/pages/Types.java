package fourpin.sheets.pages;

import fourpin.sheets.paint.Typeface;

/** The sizes of lettering on pages, in millimetres, and the distances between blocks. */
final class Types {

  static final Wrap.Type TITLE = new Wrap.Type(Typeface.BOLD, Typeface.BOLD, 8, 1.25);
  static final Wrap.Type SECTION = new Wrap.Type(Typeface.BOLD, Typeface.BOLD, 6, 1.3);
  static final Wrap.Type HEADING = new Wrap.Type(Typeface.BOLD, Typeface.BOLD, 4.4, 1.3);
  static final Wrap.Type BODY = new Wrap.Type(Typeface.REGULAR, Typeface.BOLD, 3.5, 1.4);
  static final Wrap.Type LARGE = new Wrap.Type(Typeface.REGULAR, Typeface.BOLD, 5, 1.25);
  static final Wrap.Type CAPTION = new Wrap.Type(Typeface.REGULAR, Typeface.BOLD, 3.1, 1.35);
  static final Wrap.Type TABLE = new Wrap.Type(Typeface.NARROW, Typeface.NARROW_BOLD, 3.5, 1.3);
  static final Wrap.Type HEAD = new Wrap.Type(Typeface.BOLD, Typeface.BOLD, 3.5, 1.3);
  static final Wrap.Type FOOT = new Wrap.Type(Typeface.NARROW, Typeface.NARROW_BOLD, 3, 1.3);

  static final Wrap.Type COMPACT_BODY = new Wrap.Type(Typeface.REGULAR, Typeface.BOLD, 3.2, 1.3);
  static final Wrap.Type COMPACT_HEADING = new Wrap.Type(Typeface.BOLD, Typeface.BOLD, 4, 1.3);
  static final Wrap.Type SMALL_BODY = new Wrap.Type(Typeface.REGULAR, Typeface.BOLD, 2.9, 1.3);
  static final Wrap.Type SMALL_HEADING = new Wrap.Type(Typeface.BOLD, Typeface.BOLD, 3.5, 1.3);

  static final double BLOCK_GAP = 2.5;
  static final double SMALL_BLOCK_GAP = 1.8;
  static final double SECTION_GAP = 7;
  static final double HEADING_GAP = 5;
  static final double SMALL_HEADING_GAP = 3.5;
  static final double INDENT = 6;

  private Types() {}
}
