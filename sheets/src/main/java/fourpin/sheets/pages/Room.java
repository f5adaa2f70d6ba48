package fourpin.sheets.pages;

import fourpin.sheets.pages.Block.Print;

/** What blocks are set in: its width in millimetres, and how large their words are. */
record Room(double width, Print print) {

  Room less(double taken) {
    return of(width - taken);
  }

  Room of(double newWidth) {
    return new Room(newWidth, print);
  }

  Wrap.Type body() {
    return switch (print) {
      case USUAL -> Types.BODY;
      case COMPACT -> Types.COMPACT_BODY;
      case SMALL -> Types.SMALL_BODY;
    };
  }

  Wrap.Type heading() {
    return switch (print) {
      case USUAL -> Types.HEADING;
      case COMPACT -> Types.COMPACT_HEADING;
      case SMALL -> Types.SMALL_HEADING;
    };
  }

  double headingGap() {
    return switch (print) {
      case USUAL -> Types.HEADING_GAP;
      case COMPACT, SMALL -> Types.SMALL_HEADING_GAP;
    };
  }

  double blockGap() {
    return switch (print) {
      case USUAL -> Types.BLOCK_GAP;
      case COMPACT, SMALL -> Types.SMALL_BLOCK_GAP;
    };
  }
}
