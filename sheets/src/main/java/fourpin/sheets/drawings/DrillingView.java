package fourpin.sheets.drawings;

import fourpin.bench.Numbers;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Guide;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Sketch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A panel with the guide on it as they lie on the bench, its lower end below: one picture for each
 * clamping, side by side in the order of work.
 */
public final class DrillingView {

  private static final double BETWEEN = 8;
  private static final double LINE = 4;

  /** Of a line under a picture; longer ones go on after a comma. */
  private static final double WIDE = 44;

  /** Of the height, what lines under the pictures may take. */
  private static final double MOST_TOLD = 0.25;

  /** Whether labels are drawn for which room has to be searched, which takes most of the time. */
  private enum Labelling {
    WITHOUT,
    WITH
  }

  private final Drafter drafter;
  private final BuiltCase built;
  private final Part part;
  private final Face face;
  private final Guide guide;
  private final List<Clamping> clampings;
  private final List<Integer> steps;

  /**
   * @param face that lies up
   * @param clampings of the guide on this face, at least one
   * @param steps number of the step that each of them is
   */
  public DrillingView(
      Drafter drafter,
      BuiltCase built,
      Part part,
      Face face,
      Guide guide,
      List<Clamping> clampings,
      List<Integer> steps) {
    this.drafter = drafter;
    this.built = built;
    this.part = part;
    this.face = face;
    this.guide = guide;
    this.clampings = List.copyOf(clampings);
    this.steps = List.copyOf(steps);
  }

  public Drawing draw() {
    Box one = new Projection(face).box(part.box());
    Box all = new Box(0, 0, one.width() * clampings.size(), one.height());
    return drafter.fill(all, s -> draw(s, Labelling.WITHOUT), s -> draw(s, Labelling.WITH));
  }

  private Drawing draw(Scale scale, Labelling labelling) {
    List<Mark> marks = new ArrayList<>();
    List<List<Mark>> pictures = clampings.stream().map(c -> picture(scale, c, labelling)).toList();
    double bottom =
        pictures.stream().mapToDouble(p -> Mark.around(p).bottom()).min().orElseThrow() - 1;
    for (int i = 0; i < pictures.size(); i++) {
      List<Mark> picture = new ArrayList<>(pictures.get(i));
      picture.addAll(under(scale, i, bottom));
      double left = marks.isEmpty() ? 0 : Mark.around(marks).right() + BETWEEN;
      marks.add(new Mark.Group(title(i), moved(picture, left)));
    }
    String up = face.name().toLowerCase(Locale.ROOT);
    return Drawing.toScale(
        Drafter.name(built.order().name(), part.mark(), up, "drilling"),
        built.order().name() + ", " + part.mark() + ", " + up + " face up, with " + guide.mark(),
        description(),
        scale,
        drafter.note(),
        marks);
  }

  private static List<Mark> moved(List<Mark> picture, double left) {
    return Mark.allMoved(picture, left - Mark.around(picture).left(), 0);
  }

  private String description() {
    return IntStream.range(0, clampings.size())
        .mapToObj(i -> title(i) + ": " + holes(clampings.get(i)))
        .collect(Collectors.joining("; ", "", ". Holes that are not bored are crossed out."));
  }

  private static String holes(Clamping clamping) {
    return clamping.reaches().stream().map(DrillingView::holes).collect(Collectors.joining("; "));
  }

  private String title(int index) {
    String row = clampings.get(index).row().name().toLowerCase(Locale.ROOT) + " row";
    return "step " + steps.get(index) + ": " + row;
  }

  private List<Mark> picture(Scale scale, Clamping clamping, Labelling labelling) {
    Sketch sketch = new Sketch(scale);
    ClampedGuide clamped = new ClampedGuide(drafter, part, guide, clamping);
    if (clamping.bearing() instanceof Bearing.PanelBelow(String mark, _)) {
      clamped.below(sketch, built.part(mark));
    }
    clamped.draw(sketch);
    if (labelling == Labelling.WITH) {
      clamped.label(sketch);
    }
    return sketch.marks();
  }

  /** What stands under a picture: its row, the guide's side, the holes. */
  private List<Mark> under(Scale scale, int index, double bottom) {
    Clamping clamping = clampings.get(index);
    double middle = scale.toPaper(new Projection(face).box(part.box()).centre().x());
    List<String> lines = new ArrayList<>();
    lines.add(title(index));
    lines.add("side " + clamping.showing() + " of the guide shows");
    if (tellHoles()) {
      clamping.reaches().forEach(reach -> lines.addAll(wrapped(holes(reach))));
    }
    return IntStream.range(0, lines.size())
        .mapToObj(i -> under(lines.get(i), i).at(new Point(middle, bottom - i * LINE)))
        .map(Mark.class::cast)
        .toList();
  }

  /** Where all find room under the pictures; what is told beside the drawing says them too. */
  private boolean tellHoles() {
    double wide = (drafter.width() - (clampings.size() - 1) * BETWEEN) / clampings.size();
    double high = drafter.height() * MOST_TOLD;
    return clampings.stream()
        .map(c -> c.reaches().stream().flatMap(r -> wrapped(holes(r)).stream()).toList())
        .allMatch(
            lines ->
                lines.size() * LINE <= high
                    && lines.stream().allMatch(line -> under(line, 1).width() <= wide));
  }

  private static String holes(Reach reach) {
    String holes = "holes " + Numbers.words(reach.holes(), "hole");
    return reach
        .step()
        .map(step -> "black pin: " + step.pin() + " in " + step.into() + ", then " + holes)
        .orElse(holes);
  }

  private static List<String> wrapped(String words) {
    List<String> lines = new ArrayList<>();
    for (String piece : words.split("(?<=,) ", -1)) {
      String longer = lines.isEmpty() ? piece : lines.getLast() + " " + piece;
      if (!lines.isEmpty() && Drafter.small(longer).width() <= WIDE) {
        lines.removeLast();
        lines.add(longer);
      } else {
        lines.add(piece);
      }
    }
    return lines;
  }

  /** The row large, the rest narrow, so that words do not make the picture small. */
  private static Lettering under(String words, int line) {
    return (line == 0 ? Drafter.label(words) : Drafter.small(words))
        .with(Lettering.Align.MIDDLE, Lettering.Seat.TOP);
  }
}
