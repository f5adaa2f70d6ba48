package fourpin.sheets.pages;

import fourpin.sheets.pages.Strip.Anchor;
import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Typeface;
import java.util.ArrayList;
import java.util.List;

/**
 * A booklet broken into leaves; page numbers are put in when all pages are known.
 *
 * @param root what the marks are, in reading order
 */
record Layout(Booklet booklet, Tag root, List<Leaf> leaves) {

  /** One side of paper: its marks in order, from the lower left corner, and the anchors on it. */
  record Leaf(List<Piece> pieces, List<Landed> anchors) {}

  /** An anchor and the height of its top above the lower edge of the paper. */
  record Landed(Anchor anchor, double top) {}

  static Layout of(Booklet booklet) {
    Tag root = Tag.root();
    Box body = booklet.paper().body();
    List<Strip> strips = new Typesetter(body.width(), outline(booklet)).booklet(booklet, root);
    return new Layout(booklet, root, Breaker.leaves(strips, body)).numbered();
  }

  /** All headings in reading order, numbered as the typesetter will meet them. */
  private static List<Outlined> outline(Booklet booklet) {
    List<Outlined> outline = new ArrayList<>();
    for (Booklet.Section section : booklet.sections()) {
      outline.add(new Outlined(new Anchor(outline.size(), 1, section.title()), section.place()));
      addHeadings(section.blocks(), outline);
    }
    return outline;
  }

  private static void addHeadings(List<Block> blocks, List<Outlined> outline) {
    for (Block block : blocks) {
      switch (block) {
        case Block.Heading heading ->
            outline.add(new Outlined(new Anchor(outline.size(), 2, heading.text()), ""));
        case Block.Together together -> addHeadings(together.blocks(), outline);
        case Block.Columns columns -> addHeadings(columns.blocks(), outline);
        case Block.Steps steps -> steps.steps().forEach(step -> addHeadings(step.more(), outline));
        default -> {
          // holds no headings
        }
      }
    }
  }

  /** The page of each anchor, counted from 1, by the anchor's number. */
  List<Integer> pagesOfAnchors() {
    List<Integer> pages = new ArrayList<>();
    for (int i = 0; i < leaves.size(); i++) {
      for (int n = 0; n < leaves.get(i).anchors().size(); n++) {
        pages.add(i + 1);
      }
    }
    return pages;
  }

  /** With the page numbers at the foot and in the contents. */
  private Layout numbered() {
    List<Integer> pages = pagesOfAnchors();
    List<Leaf> numbered = new ArrayList<>();
    for (int i = 0; i < leaves.size(); i++) {
      List<Piece> pieces = new ArrayList<>();
      leaves.get(i).pieces().forEach(piece -> pieces.add(numbered(piece, pages)));
      booklet.warning().ifPresent(words -> pieces.add(Piece.decoration(head(words))));
      pieces.add(Piece.decoration(foot(i + 1)));
      numbered.add(new Leaf(List.copyOf(pieces), leaves.get(i).anchors()));
    }
    return new Layout(booklet, root, List.copyOf(numbered));
  }

  private static Piece numbered(Piece piece, List<Integer> pages) {
    return piece
        .link()
        .map(link -> piece.numbered(Integer.toString(pages.get(link.target()))))
        .orElse(piece);
  }

  private List<Mark> head(String warning) {
    Box head = booklet.paper().head();
    Mark words =
        Lettering.of(warning, Typeface.BOLD, Types.HEAD.size())
            .with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE)
            .at(head.centre());
    return List.of(Mark.Path.rectangle(head, Pen.DATUM, Fill.NONE), words);
  }

  private List<Mark> foot(int page) {
    Box foot = booklet.paper().foot();
    String number = "page " + page + " of " + leaves.size();
    String state = "revision " + booklet.revision() + "   " + booklet.paper().label();
    double beside = width(number) + width(state) + 12;
    return List.of(
        Mark.Path.line(
            new Point(foot.left(), foot.top()), new Point(foot.right(), foot.top()), Pen.EDGE),
        words(fitted(booklet.job(), foot.width() - beside), Lettering.Align.START, foot.left()),
        words(state, Lettering.Align.END, foot.right() - width(number) - 6),
        words(number, Lettering.Align.END, foot.right()));
  }

  /**
   * The job's name on one line; its full text stands on the first page, so here it may end in dots.
   */
  private static String fitted(String text, double room) {
    if (width(text) <= room) {
      return text;
    }
    int end = text.length();
    while (end > 0 && width(text.substring(0, end) + "…") > room) {
      end--;
    }
    return text.substring(0, end) + "…";
  }

  private static double width(String text) {
    return Typeface.NARROW_BOLD.width(text, Types.FOOT.size());
  }

  private Mark words(String text, Lettering.Align align, double x) {
    return Lettering.of(text, Typeface.NARROW_BOLD, Types.FOOT.size())
        .with(align, Lettering.Seat.MIDDLE)
        .at(new Point(x, booklet.paper().foot().centre().y()));
  }
}
