package fourpin.sheets.pages;

import fourpin.sheets.pages.Strip.Anchor;
import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.pages.Strip.Start;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import java.util.ArrayList;
import java.util.List;

/** Turns blocks into strips, and grows the tree of tags as it goes. */
final class Typesetter {

  private static final double SIGN_WIDTH = 11;
  private static final double FRAME_PAD = 2;

  /** Millimetres; a longer callout goes on in another frame. */
  private static final double MOST_FRAMED = 150;

  private static final double SET_UP_GAP = 1.5;
  private static final double NUMBER_WIDTH = 12;
  private static final double TICK = 3;
  private static final double BETWEEN = 5;

  private final double width;
  private final List<Anchor> outline;
  private int anchors;

  /**
   * @param outline every heading in reading order
   */
  Typesetter(double width, List<Anchor> outline) {
    this.width = width;
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
    return followed(blocks, tag, width);
  }

  private List<Strip> title(Booklet booklet, Tag root) {
    List<Strip> strips =
        new ArrayList<>(lines(Prose.plain(booklet.title()), Types.TITLE, root.add(Tag.Role.TITLE)));
    strips.addAll(lines(Prose.plain(booklet.subtitle()), Types.BODY, root.add(Tag.Role.PARAGRAPH)));
    return Strip.together(strips);
  }

  private List<Strip> section(Booklet.Section section, Tag tag, boolean first) {
    List<Strip> strips = new ArrayList<>();
    strips.addAll(
        heading(
            section.title(), Types.SECTION, tag.add(Tag.Role.SECTION_TITLE), 1, Types.SECTION_GAP));
    strips.set(0, strips.getFirst().starting(first ? Start.ANYWHERE : Start.NEW_PAGE));
    strips.addAll(followed(section.blocks(), tag, width));
    return strips;
  }

  /** Blocks after a heading: what follows it first stays with it. */
  private List<Strip> followed(List<Block> blocks, Tag tag, double room) {
    List<Strip> strips = new ArrayList<>();
    boolean keep = true;
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
      } else if (keep) {
        next.set(0, next.getFirst().starting(Start.WITH_LAST));
      }
      strips.addAll(next);
      newPage = false;
      keep = block instanceof Block.Heading;
    }
    return strips;
  }

  private List<Strip> set(Block block, Tag tag, double room) {
    return switch (block) {
      case Block.Heading heading ->
          heading(heading.text(), Types.HEADING, tag.add(Tag.Role.HEADING), 2, Types.HEADING_GAP);
      case Block.Paragraph paragraph ->
          spaced(lines(paragraph.prose(), Types.BODY, tag.add(Tag.Role.PARAGRAPH), room));
      case Block.Bullets bullets -> bullets(bullets, tag, room);
      case Block.Steps steps -> steps(steps, tag, room);
      case Block.Callout callout -> callout(callout, tag, room);
      case Block.SetUp setUp -> setUp(setUp, tag, room);
      case Block.Figure figure -> figure(figure, tag, room);
      case Block.Together together -> Strip.together(followed(together.blocks(), tag, room));
      case Block.Beside beside -> beside(beside, tag, room);
      case Block.NewPage newPage ->
          throw new IllegalStateException("A page can be begun only between blocks");
      case Block.Contents contents -> contents(tag.add(Tag.Role.CONTENTS));
      case Table table -> spaced(TableSetter.strips(table, tag, room));
    };
  }

  private static List<Strip> spaced(List<Strip> strips) {
    return Strip.spaced(Types.BLOCK_GAP, strips);
  }

  private List<Strip> lines(Prose prose, Wrap.Type type, Tag tag) {
    return lines(prose, type, tag, width);
  }

  /** A strip for each line; the first two and the last two stay together. */
  private static List<Strip> lines(Prose prose, Wrap.Type type, Tag tag, double room) {
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

  private List<Strip> heading(String text, Wrap.Type type, Tag tag, int level, double gap) {
    List<Strip> strips = new ArrayList<>(Strip.together(lines(Prose.plain(text), type, tag)));
    strips.set(0, strips.getFirst().withGap(gap).anchored(new Anchor(anchors++, level, text)));
    return strips;
  }

  private List<Strip> bullets(Block.Bullets bullets, Tag tag, double room) {
    Tag list = tag.add(Tag.Role.LIST);
    List<Strip> strips = new ArrayList<>();
    for (Prose item : bullets.items()) {
      Tag entry = list.add(Tag.Role.ITEM);
      strips.addAll(
          spacedItem(
              bullet(entry),
              lines(item, Types.BODY, entry.add(Tag.Role.BODY), room - Types.INDENT)));
    }
    return spaced(strips);
  }

  private static Piece bullet(Tag entry) {
    Wrap.Line dot = Wrap.lines(Prose.plain("•"), Types.BODY, Types.INDENT).getFirst();
    return Piece.of(entry.add(Tag.Role.LABEL), dot.marks(2, Types.BODY, 0));
  }

  private static List<Strip> spacedItem(Piece label, List<Strip> lines) {
    List<Strip> strips = new ArrayList<>(lines.stream().map(s -> s.moved(Types.INDENT)).toList());
    strips.set(0, strips.getFirst().withGap(0.8).ledBy(label));
    return strips;
  }

  private List<Strip> steps(Block.Steps steps, Tag tag, double room) {
    Tag list = tag.add(Tag.Role.LIST);
    List<Strip> strips = new ArrayList<>();
    steps.steps().forEach(step -> strips.addAll(step(step, list.add(Tag.Role.ITEM), room)));
    return strips;
  }

  private List<Strip> step(Block.Step step, Tag entry, double room) {
    Piece number = number(step.number(), entry.add(Tag.Role.LABEL));
    Tag body = entry.add(Tag.Role.BODY);
    double inner = room - NUMBER_WIDTH;
    List<Strip> strips =
        new ArrayList<>(lines(step.prose(), Types.BODY, body.add(Tag.Role.PARAGRAPH), inner));
    strips.addAll(followed(step.more(), body, inner));
    strips.replaceAll(strip -> strip.moved(NUMBER_WIDTH));
    strips.set(0, strips.getFirst().ledBy(number).plus(Piece.decoration(List.of(tickBox()))));
    return spaced(strips);
  }

  private static Piece number(String number, Tag label) {
    Wrap.Line line = Wrap.lines(Prose.bold(number), Types.BODY, NUMBER_WIDTH - TICK - 1).getFirst();
    return Piece.of(label, line.marks(TICK + 1.5, Types.BODY, 0));
  }

  private static Mark tickBox() {
    double top = (Types.BODY.lineHeight() - TICK) / 2;
    return Mark.Path.rectangle(new Box(0, -top - TICK, TICK, -top), Pen.EDGE, Fill.NONE);
  }

  private List<Strip> callout(Block.Callout callout, Tag tag, double room) {
    Tag frame = tag.add(Tag.Role.FRAME);
    double inner = room - SIGN_WIDTH - FRAME_PAD;
    List<Strip> inside =
        new ArrayList<>(
            lines(Prose.bold(callout.title()), Types.BODY, frame.add(Tag.Role.PARAGRAPH), inner));
    callout
        .text()
        .forEach(
            prose -> inside.addAll(lines(prose, Types.BODY, frame.add(Tag.Role.PARAGRAPH), inner)));
    return spaced(
        Strip.inLots(inside, MOST_FRAMED).stream()
            .map(lot -> framed(callout.sign(), lot, room))
            .toList());
  }

  private static Strip framed(Block.Sign sign, List<Strip> inside, double room) {
    Strip solid = Strip.solid(inside);
    double height = Math.max(solid.height(), Signs.HEIGHT) + 2 * FRAME_PAD;
    List<Piece> pieces = new ArrayList<>();
    Mark border = Mark.Path.rectangle(new Box(0, -height, room, 0), Pen.EDGE, Fill.NONE);
    Point place = new Point(SIGN_WIDTH / 2, -FRAME_PAD - Signs.HEIGHT / 2);
    pieces.add(Piece.decoration(List.of(border)));
    pieces.add(Piece.decoration(Signs.marks(sign, place)));
    solid.pieces().forEach(piece -> pieces.add(piece.moved(SIGN_WIDTH, -FRAME_PAD)));
    return Strip.of(height, pieces);
  }

  private static List<Strip> setUp(Block.SetUp setUp, Tag tag, double room) {
    Tag frame = tag.add(Tag.Role.FRAME);
    double inner = room - 2 * FRAME_PAD;
    List<Strip> inside = new ArrayList<>();
    List<Prose> settings = setUp.lines().stream().map(Typesetter::setting).toList();
    int next = 0;
    while (next < settings.size()) {
      boolean two = next + 1 < settings.size() && areShort(settings.subList(next, next + 2), inner);
      List<Strip> strips =
          two
              ? List.of(beside(settings.get(next), settings.get(next + 1), frame, inner))
              : lines(settings.get(next), Types.LARGE, frame.add(Tag.Role.PARAGRAPH), inner);
      inside.addAll(Strip.spaced(SET_UP_GAP, strips));
      next += two ? 2 : 1;
    }
    return spaced(
        Strip.inLots(inside, MOST_FRAMED).stream().map(lot -> heavilyFramed(lot, room)).toList());
  }

  private static Prose setting(Block.SetUp.Line line) {
    return Prose.plain(line.what() + "  ").then(Prose.bold(line.to()));
  }

  /** Whether settings find room side by side. */
  private static boolean areShort(List<Prose> settings, double room) {
    return settings.stream()
        .allMatch(s -> Wrap.natural(s, Types.LARGE) + BETWEEN <= room / settings.size());
  }

  private static Strip beside(Prose left, Prose right, Tag frame, double room) {
    return Strip.of(
        Types.LARGE.lineHeight(),
        List.of(
            onOneLine(left, 0, frame.add(Tag.Role.PARAGRAPH), room),
            onOneLine(right, room / 2, frame.add(Tag.Role.PARAGRAPH), room)));
  }

  private static Piece onOneLine(Prose prose, double left, Tag tag, double room) {
    return Piece.of(
        tag, Wrap.lines(prose, Types.LARGE, room).getFirst().marks(left, Types.LARGE, 0));
  }

  private static Strip heavilyFramed(List<Strip> inside, double room) {
    Strip solid = Strip.solid(inside);
    double height = solid.height() + 2 * FRAME_PAD;
    Mark border = Mark.Path.rectangle(new Box(0, -height, room, 0), Pen.DATUM, Fill.NONE);
    List<Piece> pieces = new ArrayList<>(List.of(Piece.decoration(List.of(border))));
    solid.pieces().forEach(piece -> pieces.add(piece.moved(FRAME_PAD, -FRAME_PAD)));
    return Strip.of(height, pieces);
  }

  private List<Strip> beside(Block.Beside beside, Tag tag, double room) {
    double left = beside.share() * (room - BETWEEN);
    Strip first = Strip.solid(followed(beside.left(), tag, left));
    Strip second =
        Strip.solid(followed(beside.right(), tag, room - BETWEEN - left)).moved(left + BETWEEN);
    List<Piece> pieces = new ArrayList<>(first.pieces());
    pieces.addAll(second.pieces());
    return spaced(List.of(Strip.of(Math.max(first.height(), second.height()), pieces)));
  }

  private List<Strip> figure(Block.Figure figure, Tag tag, double room) {
    Drawing drawing = figure.drawing();
    Box box = drawing.extent();
    if (box.width() > room + 0.01) {
      throw new OverflowException(
          "The drawing " + drawing.name() + " is wider than its room of " + room + " mm");
    }
    Tag tagged = tag.add(Tag.Role.FIGURE, drawing.title() + ". " + drawing.description());
    double left = (room - box.width()) / 2;
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
                  room)));
    }
    return spaced(Strip.together(strips));
  }

  private List<Strip> contents(Tag tag) {
    List<Strip> strips = new ArrayList<>();
    for (Anchor anchor : outline) {
      strips.add(entry(anchor, tag.add(Tag.Role.CONTENTS_ITEM)));
    }
    return spaced(strips);
  }

  private Strip entry(Anchor anchor, Tag item) {
    double indent = (anchor.level() - 1) * Types.INDENT;
    Tag tag = item.add(Tag.Role.REFERENCE).add(Tag.Role.LINK, "to " + anchor.title());
    double room = width - indent - NUMBER_WIDTH;
    Prose title = anchor.level() == 1 ? Prose.bold(anchor.title()) : Prose.plain(anchor.title());
    List<Wrap.Line> lines = Wrap.lines(title.then(Prose.plain(" ")), Types.BODY, room);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      marks.addAll(lines.get(i).marks(indent, Types.BODY, i * Types.BODY.lineHeight()));
    }
    double down = (lines.size() - 1) * Types.BODY.lineHeight();
    double baseline = down + Types.BODY.lineHeight() / 2 + Types.BODY.size() * 0.35;
    Strip.Link link = new Strip.Link(anchor.number(), new Point(width, -baseline));
    Mark dots = dots(indent + lines.getLast().width() + 2, down);
    return Strip.of(
        lines.size() * Types.BODY.lineHeight(),
        List.of(Piece.link(tag, marks, link), Piece.decoration(List.of(dots))));
  }

  private Mark dots(double from, double down) {
    double y = -down - Types.BODY.lineHeight() / 2 - 1;
    double to = Math.max(from + 1, width - NUMBER_WIDTH + 3);
    return Mark.Path.line(new Point(from, y), new Point(to, y), Pen.RULE);
  }
}
