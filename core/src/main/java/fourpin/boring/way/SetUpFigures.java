package fourpin.boring.way;

import fourpin.boring.way.Guide.GuideHole;
import fourpin.job.Setting;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What guide pages and drilling sheets print of a way, with its working. */
final class SetUpFigures {

  private final Group group;
  private final Way way;
  private final List<Figure> figures = new ArrayList<>();

  private SetUpFigures(Group group, Way way) {
    this.group = group;
    this.way = way;
  }

  static List<Figure> of(Group group, Way way, Method method) {
    SetUpFigures all = new SetUpFigures(group, way);
    switch (method) {
      case Method.Guided guided -> {
        all.reserve(guided.bit());
        all.guide(guided);
        all.rows();
      }
      case Method.Marked marked -> {
        all.reserve(marked.bit());
        all.rows();
      }
      case Method.Programmed programmed -> {
        all.reserve(programmed.bit());
        all.rows();
      }
      case Method.Grooved _, Method.ScrewedOn _, Method.Blanks _ -> {}
    }
    return List.copyOf(all.figures);
  }

  private void reserve(BitSetting bit) {
    add(
        "reserve",
        "wood behind the point of the bit in the thinnest panel",
        bit.reserve(),
        "t - d - p",
        input("t", "thickness of the thinnest panel", group.thinnest(), Source.STATED),
        input("d", "depth of the hole", bit.depth(), group.settings().source(Setting.HOLE_DEPTH)),
        input("p", "point of the bit beyond the full diameter", bit.point(), Source.STATED));
  }

  private void guide(Method.Guided method) {
    Guide guide = method.guide();
    GuideHole first = guide.holes().getFirst();
    GuideHole last = guide.holes().getLast();
    add(
        "guide-length",
        "length that a guide is cut to",
        guide.length().plus(guide.block()),
        "l + b",
        input("l", "from the stop face to the far end", guide.length(), Source.GEOMETRY),
        input("b", "thickness of the stop block on it", guide.block(), Source.STATED));
    add(
        "guide-width",
        "width of a guide",
        guide.width(),
        "f + r",
        input("f", "from its front edge to its holes", first.across(), Source.GEOMETRY),
        input(
            "r",
            "from its holes to its back edge",
            guide.width().minus(first.across()),
            Source.GEOMETRY));
    Length play = first.diameter().minus(method.bit().runs());
    add(
        "guide-hole",
        "diameter of the holes of a guide",
        first.diameter(),
        "c + s",
        input("c", "diameter of what runs in them", method.bit().runs(), Source.STATED),
        input("s", "play; below zero where a taper finds the middle", play, Source.GEOMETRY));
    add(
        "guide-first-hole",
        "from the stop face of a guide to its first hole",
        first.along(),
        "set by the lowest level that is bored and the panel's lower end, or by the strip");
    add(
        "guide-last-hole",
        "from the stop face of a guide to its last hole",
        last.along(),
        "f + w",
        input("f", "to the first hole", first.along(), Source.GEOMETRY),
        input("w", "from first to last hole", last.along().minus(first.along()), Source.GEOMETRY));
  }

  /** Of every row as it lies on its panel. */
  private void rows() {
    for (Column column : group.columns()) {
      String row =
          column.part().mark()
              + "-"
              + column.face()
              + "-bay-"
              + column.grid().bay()
              + "-"
              + column.row().name();
      String name = row.toLowerCase(Locale.ROOT);
      String words = column.grid().purpose(column.row()) + ", on " + column.part().mark();
      Length first = column.grid().levels().getFirst().height();
      Length last = column.grid().levels().getLast().height();
      add(
          name + "/from-front",
          "front edge to centres, " + words,
          column.fromFront(),
          "w - b",
          input(
              "w",
              "width of the panel",
              column.fromFront().plus(column.fromBack()),
              Source.GEOMETRY),
          input("b", "back edge to centres", column.fromBack(), Source.GEOMETRY));
      above(name + "/first-hole", "lower end to the first hole, " + words, column, first);
      above(name + "/last-hole", "lower end to the last hole, " + words, column, last);
    }
  }

  private void above(String what, String title, Column column, Length height) {
    add(
        what,
        title,
        height.minus(column.end()),
        "h - e",
        input("h", "height of the level above the foot of the case", height, Source.GEOMETRY),
        input("e", "height of the panel's lower end", column.end(), Source.GEOMETRY));
  }

  private void add(String what, String title, Length value, String formula, Input... inputs) {
    figures.add(
        new Figure(
            group.figureId(way, what),
            title,
            Quantity.of(value),
            formula,
            List.of(inputs),
            Source.GEOMETRY));
  }

  private static Input input(String symbol, String meaning, Length value, Source source) {
    return new Input(symbol, meaning, Quantity.of(value), source);
  }
}
