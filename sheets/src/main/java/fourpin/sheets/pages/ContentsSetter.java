package fourpin.sheets.pages;

import fourpin.sheets.pages.Strip.Anchor;
import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import java.util.ArrayList;
import java.util.List;

/** Sets the table of contents. Page numbers are put in when all pages are known. */
final class ContentsSetter {

  private static final double NUMBER_WIDTH = 8;
  private static final double DOTS = 3;

  private final List<Outlined> outline;
  private final Room room;

  ContentsSetter(List<Outlined> outline, Room room) {
    this.outline = outline;
    this.room = room;
  }

  List<Strip> strips(Tag tag) {
    List<Strip> strips = new ArrayList<>();
    String place = "";
    for (Outlined line : outline) {
      boolean changes = !line.place().isEmpty() && !line.place().equals(place);
      if (changes) {
        place = line.place();
        strips.addAll(heading(place, tag.add(Tag.Role.CONTENTS_ITEM)));
      }
      Strip entry = entry(line.anchor(), tag.add(Tag.Role.CONTENTS_ITEM));
      strips.add(changes ? entry.starting(Strip.Start.WITH_LAST) : entry);
    }
    return strips;
  }

  private List<Strip> heading(String place, Tag tag) {
    return Strip.spaced(
        room.headingGap(),
        Strip.together(
            Typesetter.lines(
                Prose.bold(place), room.heading(), tag.add(Tag.Role.PARAGRAPH), room.width())));
  }

  private Strip entry(Anchor anchor, Tag item) {
    Wrap.Type type = room.body();
    double indent = (anchor.level() - 1) * Types.INDENT / 2;
    Tag tag = item.add(Tag.Role.REFERENCE).add(Tag.Role.LINK, "to " + anchor.title());
    Prose title = anchor.level() == 1 ? Prose.bold(anchor.title()) : Prose.plain(anchor.title());
    List<Wrap.Line> lines =
        Wrap.lines(title.then(Prose.plain(" ")), type, room.width() - indent - NUMBER_WIDTH - DOTS);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      marks.addAll(lines.get(i).marks(indent, type, i * type.lineHeight()));
    }
    double down = (lines.size() - 1) * type.lineHeight();
    Strip.Link link =
        new Strip.Link(
            anchor.number(), new Point(room.width(), -down - Wrap.Line.baseline(type)), type);
    Mark dots = dots(indent + lines.getLast().width() + 2, down);
    return Strip.of(
        lines.size() * type.lineHeight(),
        List.of(Piece.link(tag, marks, link), Piece.decoration(List.of(dots))));
  }

  private Mark dots(double from, double down) {
    double y = -down - room.body().lineHeight() / 2 - 1;
    double to = Math.max(from + 1, room.width() - NUMBER_WIDTH);
    return Mark.Path.line(new Point(from, y), new Point(to, y), Pen.RULE);
  }
}
