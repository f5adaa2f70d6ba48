package fourpin.sheets.pages;

import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import java.util.ArrayList;
import java.util.List;

/** Sets what stands in frames. */
final class FrameSetter {

  private static final double SIGN_WIDTH = 11;
  private static final double FRAME_PAD = 2;

  /** Millimetres; what is higher goes on in another frame. */
  private static final double MOST_FRAMED = 150;

  private static final double SET_UP_GAP = 1.5;

  private FrameSetter() {}

  static List<Strip> callout(Block.Callout callout, Tag tag, Room room) {
    return frames(callout, tag.add(Tag.Role.FRAME), room.less(SIGN_WIDTH + FRAME_PAD)).stream()
        .flatMap(frame -> Strip.inLots(frame, MOST_FRAMED).stream())
        .map(lot -> framed(callout.sign(), lot, room.width()))
        .toList();
  }

  /** Each under the title, and parted between texts where it can be: none is torn for a word. */
  private static List<List<Strip>> frames(Block.Callout callout, Tag frame, Room inner) {
    List<List<Strip>> frames = new ArrayList<>();
    List<Strip> inside = titled(callout, frame, inner);
    int title = inside.size();
    for (Prose prose : callout.text()) {
      List<Strip> text = Typesetter.lines(prose, frame.add(Tag.Role.PARAGRAPH), inner);
      if (inside.size() > title && height(inside) + height(text) > MOST_FRAMED) {
        frames.add(inside);
        inside = titled(callout, frame, inner);
      }
      inside.addAll(text);
    }
    frames.add(inside);
    return frames;
  }

  private static List<Strip> titled(Block.Callout callout, Tag frame, Room inner) {
    return new ArrayList<>(
        Typesetter.lines(Prose.bold(callout.title()), frame.add(Tag.Role.PARAGRAPH), inner));
  }

  private static double height(List<Strip> strips) {
    return strips.stream().mapToDouble(Strip::height).sum();
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

  static List<Strip> setUp(Block.SetUp setUp, Tag tag, double room) {
    Tag frame = tag.add(Tag.Role.FRAME);
    double inner = room - 2 * FRAME_PAD;
    List<Strip> inside = new ArrayList<>();
    List<Prose> settings = setUp.lines().stream().map(FrameSetter::setting).toList();
    int next = 0;
    while (next < settings.size()) {
      boolean two = next + 1 < settings.size() && areShort(settings.subList(next, next + 2), inner);
      List<Strip> strips =
          two
              ? List.of(beside(settings.get(next), settings.get(next + 1), frame, inner))
              : Typesetter.lines(
                  settings.get(next), Types.LARGE, frame.add(Tag.Role.PARAGRAPH), inner);
      inside.addAll(Strip.spaced(SET_UP_GAP, strips));
      next += two ? 2 : 1;
    }
    return Strip.inLots(inside, MOST_FRAMED).stream().map(lot -> heavilyFramed(lot, room)).toList();
  }

  private static Prose setting(Block.SetUp.Line line) {
    return Prose.plain(line.what() + "  ").then(Prose.bold(line.to()));
  }

  /** Whether settings find room side by side. */
  private static boolean areShort(List<Prose> settings, double room) {
    return settings.stream()
        .allMatch(s -> Wrap.natural(s, Types.LARGE) + Columns.BETWEEN <= room / settings.size());
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
}
