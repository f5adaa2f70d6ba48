package fourpin.sheets.pages;

import fourpin.sheets.pages.Strip.Anchor;
import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.pages.Strip.Start;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import java.util.ArrayList;
import java.util.List;

/** Turns blocks into strips, and grows the tree of tags as it goes. */
final class Typesetter {

  private static final double NUMBER_WIDTH = 12;
  private static final double TICK = 3;

  private final Room page;
  private final List<Outlined> outline;
  private int anchors;

  /**
   * @param outline every heading in reading order
   */
  Typesetter(double width, List<Outlined> outline) {
    this.page = new Room(width, Block.Print.USUAL);
    this.outline = outline;
  }

  List<Strip> booklet(Booklet booklet, Tag root) {
    List<Strip> strips = new ArrayList<>(title(booklet, root));
    for (int i = 0; i < booklet.sections().size(); i++) {
      strips.addAll(section(booklet.sections().get(i), root.add(Tag.Role.SECTION), i == 0));
    }
    return strips;
  }

  List<Strip> strips(List<Block> blocks, Tag tag) {
    return followed(blocks, tag, page);
  }

  private List<Strip> title(Booklet booklet, Tag root) {
    List<Strip> strips =
        new ArrayList<>(
            lines(
                Prose.plain(booklet.title()), Types.TITLE, root.add(Tag.Role.TITLE), page.width()));
    strips.addAll(
        lines(
            Prose.plain(booklet.subtitle()),
            Types.BODY,
            root.add(Tag.Role.PARAGRAPH),
            page.width()));
    return Strip.together(strips);
  }

  private List<Strip> section(Booklet.Section section, Tag tag, boolean first) {
    List<Strip> strips = new ArrayList<>();
    strips.addAll(
        heading(
            new Anchor(anchors++, 1, section.title()),
            Types.SECTION,
            tag.add(Tag.Role.SECTION_TITLE),
            page.width(),
            Types.SECTION_GAP));
    boolean goesOn = first || section.opening() == Booklet.Opening.GOES_ON;
    strips.set(0, strips.getFirst().starting(goesOn ? Start.ANYWHERE : Start.NEW_PAGE));
    strips.addAll(followed(section.blocks(), tag, page));
    return strips;
  }

  /**
   * Blocks after a heading: what follows it first stays with it, and words with what they lead to.
   */
  private List<Strip> followed(List<Block> blocks, Tag tag, Room room) {
    List<Strip> strips = new ArrayList<>();
    boolean keep = true;
    boolean ledIn = false;
    boolean newPage = false;
    for (Block block : blocks) {
      if (block instanceof Block.NewPage) {
        // Where nothing stands yet, the page is new already.
        newPage = !strips.isEmpty();
        continue;
      }
      List<Strip> next = new ArrayList<>(set(block, tag, room));
      if (newPage) {
        next.set(0, next.getFirst().starting(Start.NEW_PAGE));
      } else if (keep || (ledIn && !(block instanceof Block.Paragraph))) {
        next.set(0, next.getFirst().starting(Start.WITH_LAST));
      }
      strips.addAll(next);
      newPage = false;
      ledIn = keep && block instanceof Block.Paragraph;
      keep = block instanceof Block.Heading;
    }
    return strips;
  }

  private List<Strip> set(Block block, Tag tag, Room room) {
    return switch (block) {
      case Block.Heading heading ->
          heading(
              new Anchor(anchors++, 2, heading.text()),
              room.heading(),
              tag.add(Tag.Role.HEADING),
              room.width(),
              room.headingGap());
      case Block.Paragraph paragraph ->
          spaced(lines(paragraph.prose(), tag.add(Tag.Role.PARAGRAPH), room), room);
      case Block.Bullets bullets -> bullets(bullets, tag, room);
      case Block.Steps steps -> steps(steps, tag, room);
      case Block.Callout callout -> spaced(FrameSetter.callout(callout, tag, room), room);
      case Block.SetUp setUp -> spaced(FrameSetter.setUp(setUp, tag, room.width()), room);
      case Block.Figure figure -> figure(figure, tag, room);
      case Block.Together together -> Strip.together(followed(together.blocks(), tag, room));
      case Block.Beside beside -> beside(beside, tag, room);
      case Block.Columns columns -> columns(columns, tag, room);
      case Block.NewPage newPage ->
          throw new IllegalStateException("A page can be begun only between blocks");
      case Block.Contents contents ->
          spaced(new ContentsSetter(outline, room).strips(tag.add(Tag.Role.CONTENTS)), room);
      case Table table -> spaced(TableSetter.strips(table, tag, room.width(), room.print()), room);
    };
  }

  private static List<Strip> spaced(List<Strip> strips, Room room) {
    return Strip.spaced(room.blockGap(), strips);
  }

  private List<Strip> columns(Block.Columns columns, Tag tag, Room room) {
    double width =
        room.width() / columns.count() - Columns.BETWEEN * (columns.count() - 1) / columns.count();
    return spaced(
        followed(columns.blocks(), tag, new Room(width, columns.print())).stream()
            .map(strip -> strip.inColumns(columns.count()))
            .toList(),
        room);
  }

  static List<Strip> lines(Prose prose, Tag tag, Room room) {
    return lines(prose, room.body(), tag, room.width());
  }

  /** A strip for each line; the first two and the last two stay together. */
  static List<Strip> lines(Prose prose, Wrap.Type type, Tag tag, double room) {
    List<Wrap.Line> lines = Wrap.lines(prose, type, room);
    List<Strip> strips = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Strip strip =
          Strip.of(type.lineHeight(), List.of(Piece.of(tag, lines.get(i).marks(0, type, 0))));
      boolean lonely = i == 1 || (i > 0 && i == lines.size() - 1);
      strips.add(lonely ? strip.starting(Start.WITH_LAST) : strip);
    }
    return strips;
  }

  private static List<Strip> heading(
      Anchor anchor, Wrap.Type type, Tag tag, double width, double gap) {
    List<Strip> strips =
        new ArrayList<>(Strip.together(lines(Prose.plain(anchor.title()), type, tag, width)));
    strips.set(0, strips.getFirst().withGap(gap).anchored(anchor));
    return strips;
  }

  private List<Strip> bullets(Block.Bullets bullets, Tag tag, Room room) {
    Tag list = tag.add(Tag.Role.LIST);
    List<Strip> strips = new ArrayList<>();
    for (Prose item : bullets.items()) {
      Tag entry = list.add(Tag.Role.ITEM);
      strips.addAll(
          spacedItem(
              bullet(entry, room.body()),
              lines(item, entry.add(Tag.Role.BODY), room.less(Types.INDENT))));
    }
    return spaced(strips, room);
  }

  private static Piece bullet(Tag entry, Wrap.Type type) {
    Wrap.Line dot = Wrap.lines(Prose.plain("•"), type, Types.INDENT).getFirst();
    return Piece.of(entry.add(Tag.Role.LABEL), dot.marks(2, type, 0));
  }

  private static List<Strip> spacedItem(Piece label, List<Strip> lines) {
    List<Strip> strips = new ArrayList<>(lines.stream().map(s -> s.moved(Types.INDENT)).toList());
    strips.set(0, strips.getFirst().withGap(0.8).ledBy(label));
    return strips;
  }

  private List<Strip> steps(Block.Steps steps, Tag tag, Room room) {
    Tag list = tag.add(Tag.Role.LIST);
    List<Strip> strips = new ArrayList<>();
    steps.steps().forEach(step -> strips.addAll(step(step, list.add(Tag.Role.ITEM), room)));
    return strips;
  }

  private List<Strip> step(Block.Step step, Tag entry, Room room) {
    Piece number = number(step.number(), entry.add(Tag.Role.LABEL), room.body());
    Tag body = entry.add(Tag.Role.BODY);
    Room inner = room.less(NUMBER_WIDTH);
    List<Strip> strips = new ArrayList<>(lines(step.prose(), body.add(Tag.Role.PARAGRAPH), inner));
    strips.addAll(followed(step.more(), body, inner));
    strips.replaceAll(strip -> strip.moved(NUMBER_WIDTH));
    strips.set(
        0, strips.getFirst().ledBy(number).plus(Piece.decoration(List.of(tickBox(room.body())))));
    return spaced(strips, room);
  }

  private static Piece number(String number, Tag label, Wrap.Type type) {
    Wrap.Line line = Wrap.lines(Prose.bold(number), type, NUMBER_WIDTH - TICK - 1).getFirst();
    return Piece.of(label, line.marks(TICK + 1.5, type, 0));
  }

  private static Mark tickBox(Wrap.Type type) {
    double top = (type.lineHeight() - TICK) / 2;
    return Mark.Path.rectangle(new Box(0, -top - TICK, TICK, -top), Pen.EDGE, Fill.NONE);
  }

  private List<Strip> beside(Block.Beside beside, Tag tag, Room room) {
    double left = beside.share() * (room.width() - Columns.BETWEEN);
    Strip first = Strip.solid(followed(beside.left(), tag, room.of(left)));
    Strip second =
        Strip.solid(followed(beside.right(), tag, room.less(Columns.BETWEEN + left)))
            .moved(left + Columns.BETWEEN);
    List<Piece> pieces = new ArrayList<>(first.pieces());
    pieces.addAll(second.pieces());
    return spaced(List.of(Strip.of(Math.max(first.height(), second.height()), pieces)), room);
  }

  private List<Strip> figure(Block.Figure figure, Tag tag, Room room) {
    Drawing drawing = figure.drawing();
    Box box = drawing.extent();
    if (box.width() > room.width() + 0.01) {
      throw new OverflowException(
          "The drawing " + drawing.name() + " is wider than its room of " + room.width() + " mm");
    }
    Tag tagged = tag.add(Tag.Role.FIGURE, drawing.title() + ". " + drawing.description());
    double left = (room.width() - box.width()) / 2;
    Piece piece = Piece.of(tagged, Mark.allMoved(drawing.marks(), left - box.left(), -box.top()));
    List<Strip> strips = new ArrayList<>(List.of(Strip.of(box.height(), List.of(piece))));
    if (!figure.caption().isEmpty()) {
      strips.addAll(
          Strip.spaced(
              1,
              lines(
                  Prose.plain(figure.caption()),
                  Types.CAPTION,
                  tag.add(Tag.Role.PARAGRAPH),
                  room.width())));
    }
    return spaced(Strip.together(strips), room);
  }
}
