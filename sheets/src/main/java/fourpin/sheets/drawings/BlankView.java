package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.plan.CleatBlank;
import fourpin.sheets.drawings.Projection.Edge;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Sketch;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Blanks for cleat strips as they lie on the bench, lower ends below, each with the stick beside it
 * and the line that it is ripped on afterwards. Of a stack the uppermost is seen.
 */
public final class BlankView {

  private static final double APART = 3;
  private static final double BETWEEN = 8;
  private static final double LINE = 4;

  private final Drafter drafter;
  private final BuiltCase built;
  private final List<CleatBlank> blanks;
  private final Lie lie;
  private final List<Integer> marks;

  /** How blanks that are bored alike lie. */
  public enum Lie {
    SIDE_BY_SIDE,
    STACKED
  }

  /**
   * @param blanks with holes at the same heights; of a stack the uppermost first
   * @param marks number of each height's mark on the stick, rising
   */
  public BlankView(
      Drafter drafter, BuiltCase built, List<CleatBlank> blanks, Lie lie, List<Integer> marks) {
    this.drafter = drafter;
    this.built = built;
    this.blanks = List.copyOf(blanks);
    this.lie = lie;
    this.marks = List.copyOf(marks);
  }

  public Drawing draw() {
    Box one = view(seen().getFirst()).box(seen().getFirst().wood().box());
    Box all = new Box(0, 0, one.width() * seen().size(), one.height());
    return drafter.fill(all, this::draw);
  }

  private List<CleatBlank> seen() {
    return lie == Lie.STACKED ? blanks.subList(0, 1) : blanks;
  }

  private Drawing draw(Scale scale) {
    List<Mark> all = new ArrayList<>();
    for (CleatBlank blank : seen()) {
      List<Mark> picture = picture(scale, blank);
      double left = all.isEmpty() ? 0 : Mark.around(all).right() + BETWEEN;
      all.add(
          new Mark.Group(
              blank.wood().mark(), Mark.allMoved(picture, left - Mark.around(picture).left(), 0)));
    }
    String names = String.join(" ", blanks.stream().map(b -> b.wood().mark()).toList());
    return Drawing.toScale(
        Drafter.name(built.order().name(), names, "drilling"),
        built.order().name() + ", cleat blanks " + names + ", with the stick",
        marks.size() + " holes on the middle line, which the blank is ripped on afterwards.",
        scale,
        drafter.note(),
        all);
  }

  private static Projection view(CleatBlank blank) {
    return new Projection(holes(blank.wood()).getFirst().face());
  }

  private static List<Hole> holes(Part wood) {
    return wood.features().stream()
        .flatMap(f -> f instanceof Hole hole ? Stream.of(hole) : Stream.empty())
        .toList();
  }

  private List<Mark> picture(Scale scale, CleatBlank blank) {
    Part wood = blank.wood();
    Projection view = view(blank);
    Box box = view.box(wood.box());
    Sketch sketch = new Sketch(scale);
    sketch.rectangle(box, Pen.OUTLINE, Fill.WHITE);
    for (Hole hole : holes(wood)) {
      sketch.circle(
          view.u(hole.centre()), view.v(hole.centre()), hole.diameter().mm(), Pen.EDGE, Fill.TINT);
    }
    double middle = view.u(holes(wood).getFirst().centre());
    sketch.line(middle, box.bottom(), middle, box.top(), Pen.CENTRE);
    datum(sketch, view, box);
    new StickBeside(drafter, wood, view, heights(wood), marks, APART).draw(sketch);
    words(sketch, blank, view, box);
    return sketch.marks();
  }

  private static List<Length> heights(Part wood) {
    return holes(wood).stream()
        .map(h -> wood.from(Axis.Z, h.centre().z()))
        .distinct()
        .sorted()
        .toList();
  }

  private static void datum(Sketch sketch, Projection view, Box box) {
    double front = view.front() == Edge.LEFT ? box.left() : box.right();
    sketch.line(front, box.bottom(), front, box.top(), Pen.DATUM);
    sketch.line(box.left(), box.bottom(), box.right(), box.bottom(), Pen.DATUM);
  }

  /** Above it what it is and how it lies, below it where its halves will be. */
  private void words(Sketch sketch, CleatBlank blank, Projection view, Box box) {
    Box work = sketch.onPaper(box);
    List<String> above = new ArrayList<>(List.of("TOP", blank.wood().mark()));
    if (lie == Lie.STACKED) {
      blanks.stream().skip(1).forEach(b -> above.add(1, "under it " + b.wood().mark()));
    }
    for (int i = 0; i < above.size(); i++) {
      sketch.add(
          Drafter.label(above.get(i))
              .with(Lettering.Align.MIDDLE, Lettering.Seat.BOTTOM)
              .at(new Point(work.centre().x(), work.top() + 1 + i * LINE)));
    }
    String front = view.front() == Edge.LEFT ? "← FRONT" : "FRONT →";
    sketch.add(
        Drafter.label(front)
            .with(Lettering.Align.MIDDLE, Lettering.Seat.TOP)
            .at(new Point(work.centre().x(), work.bottom() - 1)));
  }
}
