package fourpin.sheets.drawings;

import fourpin.cutting.Defect;
import fourpin.cutting.Lay;
import fourpin.cutting.Node;
import fourpin.cutting.Piece;
import fourpin.cutting.Placed;
import fourpin.cutting.SheetPattern;
import fourpin.measure.Length;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Dimensions;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import fourpin.sheets.paint.Spread;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How one sheet or board is cut: parts with their sizes, what is left over hatched, grain along the
 * length.
 */
public final class LayoutView {

  private static final double LINE = 3.2;
  private static final double MARGIN = 1.5;

  /** The least height of a part for words, which have letters that reach below the line. */
  private static final double LEAST_FOR_WORDS = 3.1;

  /** The same for figures, which have none. */
  private static final double LEAST_FOR_FIGURES = 2.1;

  private static final double LINE_HEIGHT = 1.2;

  /** Height that dimensions and legend take above and below the sheet. */
  private static final double ROUND_SHEET = 35;

  private static final double GAP = 1;
  private static final double LEADER = 5;

  /**
   * Stock narrower than this part of its length is drawn wider, so that strips can be told apart.
   */
  private static final double NARROW = 0.15;

  private static final int STRETCH = 6;

  private final Drafter drafter;
  private final SheetPattern pattern;
  private final int number;
  private final String title;
  private final Map<Piece, Rest> rests;

  /** Whether what is left over is worth keeping. */
  public enum Rest {
    KEPT,
    NOT_KEPT
  }

  /**
   * @param number of the pattern among all of its material, from 1
   * @param title of the material and stock
   * @param rests pieces that are left over, by their names at the saw
   */
  public LayoutView(
      Drafter drafter, SheetPattern pattern, int number, String title, Map<Piece, Rest> rests) {
    this.drafter = drafter;
    this.pattern = pattern;
    this.number = number;
    this.title = title;
    this.rests = rests;
  }

  public Drawing draw() {
    return drafter.fill(sheet(), this::draw);
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    Box sheet = sheet();
    sketch.rectangle(sheet, Pen.OUTLINE, Fill.TINT);
    pattern.offcuts().forEach(offcut -> sketch.rectangle(box(offcut), Pen.EDGE, Fill.HATCH));
    rests.forEach((piece, rest) -> named(sketch, piece, rest));
    pattern.parts().forEach(part -> sketch.rectangle(box(part), Pen.DIMENSION, Fill.WHITE));
    pattern.sheet().defects().forEach(defect -> crossed(sketch, defect));
    List<Placed> beside = pattern.parts().stream().filter(part -> !isNamed(sketch, part)).toList();
    beside(sketch, beside);
    outside(sketch, sketch.onPaper(sheet));
    return Drawing.toScale(
        Drafter.name("layout", title, Integer.toString(number)),
        title + ", layout S" + number,
        pattern.parts().size()
            + " parts on a sheet of "
            + drafter.number(pattern.sheet().length())
            + " x "
            + drafter.number(pattern.sheet().width())
            + "; what is left over is hatched.",
        scale,
        drafter.note(),
        sketch.marks());
  }

  /** The name of a rest in its hatching, on white so that it can be read; nothing without room. */
  private void named(Sketch sketch, Piece piece, Rest rest) {
    if (!(piece.content() instanceof Piece.Content.LeftOver(Length x, Length y))) {
      throw new IllegalArgumentException(piece.name() + " is not left over");
    }
    Box room =
        sketch.onPaper(
            Box.at(
                new Point(x.mm(), stretch() * y.mm()),
                piece.length().mm(),
                stretch() * piece.width().mm()));
    String name = piece.name();
    Stream<String> wordings =
        rest == Rest.KEPT ? Stream.of(name + ", keep", name) : Stream.of(name);
    wordings
        .flatMap(words -> either(words, room))
        .findFirst()
        .ifPresent(
            words -> {
              sketch.add(Mark.Path.rectangle(plate(words, room), Pen.HATCH, Fill.WHITE));
              sketch.add(centred(words).at(room.centre()));
            });
  }

  private static Box plate(Lettering words, Box room) {
    double along = words.width() + MARGIN;
    boolean upright = words.degrees() == 0;
    double wide = upright ? along : LEAST_FOR_WORDS;
    double high = upright ? LEAST_FOR_WORDS : along;
    return Box.at(room.centre().moved(-wide / 2, -high / 2), wide, high);
  }

  /** A defect, with its diagonals, as it is chalked on the board. */
  private void crossed(Sketch sketch, Defect defect) {
    Box box =
        Box.at(
            new Point(defect.x().mm(), stretch() * defect.y().mm()),
            defect.length().mm(),
            stretch() * defect.width().mm());
    sketch.rectangle(box, Pen.OUTLINE, Fill.WHITE);
    Box paper = sketch.onPaper(box);
    line(sketch, new Point(paper.left(), paper.bottom()), new Point(paper.right(), paper.top()));
    line(sketch, new Point(paper.left(), paper.top()), new Point(paper.right(), paper.bottom()));
  }

  private static void line(Sketch sketch, Point from, Point to) {
    sketch.add(new Mark.Path(List.of(from, to), Mark.Path.Shape.OPEN, Pen.DIMENSION, Fill.NONE));
  }

  private Box sheet() {
    double width = stretch() * pattern.sheet().width().mm();
    return new Box(0, 0, pattern.sheet().length().mm(), width);
  }

  private int stretch() {
    return pattern.sheet().width().ratioTo(pattern.sheet().length()) < NARROW ? STRETCH : 1;
  }

  private Box box(Placed placed) {
    return Box.at(
        new Point(placed.x().mm(), stretch() * placed.y().mm()),
        placed.length().mm(),
        stretch() * placed.width().mm());
  }

  private void outside(Sketch sketch, Box work) {
    sketch.addAll(
        Dimensions.beside(
            Side.BELOW,
            work.bottom(),
            List.of(
                new Dimensions.Span(
                    work.left(), work.right(), drafter.number(pattern.sheet().length())))));
    sketch.addAll(
        Dimensions.beside(
            Side.LEFT,
            work.left(),
            List.of(
                new Dimensions.Span(
                    work.bottom(), work.top(), drafter.number(pattern.sheet().width())))));
    above(sketch, work, 0, "grain →  near edge below, near end at the left");
    if (stretch() > 1) {
      above(sketch, work, 1, "widths drawn " + stretch() + " times");
    }
  }

  private static void above(Sketch sketch, Box work, int line, String words) {
    sketch.add(
        Drafter.small(words)
            .with(Lettering.Align.START, Lettering.Seat.BOTTOM)
            .at(new Point(work.left(), work.top() + 1 + line * LINE)));
  }

  /** Writes name and size into the part, upright or turned as it fits, else the name or number. */
  private boolean isNamed(Sketch sketch, Placed placed) {
    Node.Finished part = (Node.Finished) placed.node();
    Box room = sketch.onPaper(box(placed));
    Lettering name = Drafter.small(part.mark());
    Lettering size = Drafter.small(size(placed, part.lay()));
    double wide = Math.max(name.width(), size.width()) + MARGIN;
    if (wide <= room.width() && 2 * LINE <= room.height()) {
      sketch.add(centred(name).at(room.centre().moved(0, LINE / 2)));
      sketch.add(centred(size).at(room.centre().moved(0, -LINE / 2)));
      return true;
    }
    if (wide <= room.height() && 2 * LINE <= room.width()) {
      sketch.add(centred(name).turned(90).at(room.centre().moved(-LINE / 2, 0)));
      sketch.add(centred(size).turned(90).at(room.centre().moved(LINE / 2, 0)));
      return true;
    }
    Optional<Lettering> fitting = shortName(part.mark(), room);
    fitting.ifPresent(words -> sketch.add(centred(words).at(room.centre())));
    return fitting.isPresent();
  }

  /** On one line the name, upright or turned, or the number before it. */
  private static Optional<Lettering> shortName(String mark, Box room) {
    return Stream.of(mark, number(mark)).flatMap(words -> either(words, room)).findFirst();
  }

  /** Upright, then turned, where it has room. */
  private static Stream<Lettering> either(String words, Box room) {
    return Stream.concat(
        fitting(words, room.width(), room.height()).stream(),
        fitting(words, room.height(), room.width()).stream().map(name -> name.turned(90)));
  }

  private static Optional<Lettering> fitting(String words, double along, double across) {
    boolean figures = words.chars().allMatch(Character::isDigit);
    double least = figures ? LEAST_FOR_FIGURES : LEAST_FOR_WORDS;
    return Optional.of(Drafter.small(words))
        .filter(name -> name.width() + MARGIN <= along && least <= across);
  }

  private static String number(String mark) {
    return mark.split(" ")[0];
  }

  /** Names of parts that have no room for them, right of the sheet, each with a leader. */
  private void beside(Sketch sketch, List<Placed> parts) {
    List<Placed> sorted =
        withRoom(parts).stream()
            .sorted(Comparator.comparingDouble(part -> sketch.onPaper(box(part)).centre().y()))
            .toList();
    List<Double> places =
        Spread.apart(
            sorted.stream().map(part -> sketch.onPaper(box(part)).centre().y()).toList(),
            Drafter.SMALL * LINE_HEIGHT);
    double right = sketch.onPaper(sheet()).right();
    for (int i = 0; i < sorted.size(); i++) {
      Box room = sketch.onPaper(box(sorted.get(i)));
      double height = room.centre().y();
      Point end = new Point(right + LEADER, places.get(i));
      sketch.add(
          new Mark.Path(
              List.of(
                  new Point(room.right() - Math.min(GAP, room.width() / 2), height),
                  new Point(right + GAP, height),
                  end),
              Mark.Path.Shape.OPEN,
              Pen.DIMENSION,
              Fill.NONE));
      sketch.add(
          Drafter.small(((Node.Finished) sorted.get(i).node()).mark())
              .with(Lettering.Align.START, Lettering.Seat.MIDDLE)
              .at(end.moved(GAP, 0)));
    }
  }

  /** All parts, or where there is no room for so many names one of each kind. */
  private List<Placed> withRoom(List<Placed> parts) {
    int room = (int) ((drafter.height() - ROUND_SHEET) / (Drafter.SMALL * LINE_HEIGHT));
    if (parts.size() <= room) {
      return parts;
    }
    Map<String, Placed> kinds = new LinkedHashMap<>();
    parts.forEach(p -> kinds.putIfAbsent(((Node.Finished) p.node()).mark(), p));
    return kinds.values().stream().limit(room).toList();
  }

  private static Lettering centred(Lettering lettering) {
    return lettering.with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE);
  }

  private String size(Placed placed, Lay lay) {
    return switch (lay) {
      case STRAIGHT -> drafter.number(placed.length()) + " x " + drafter.number(placed.width());
      case TURNED -> drafter.number(placed.width()) + " x " + drafter.number(placed.length());
    };
  }
}
