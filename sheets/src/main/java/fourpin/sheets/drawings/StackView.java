package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.sheets.drawings.Stacks.Placed;
import fourpin.sheets.drawings.Stacks.Stack;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Dimensions;
import fourpin.sheets.paint.Dimensions.Span;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Side;
import java.util.ArrayList;
import java.util.List;

/** A case with what stands on it, as they stand together. */
public final class StackView {

  private final Drafter drafter;
  private final Stack stack;

  public StackView(Drafter drafter, Stack stack) {
    this.drafter = drafter;
    this.stack = stack;
  }

  /** From the front, with the heights of both and over all, and both widths. */
  public Drawing front() {
    return view(Face.FRONT, Axis.X, "front", "Seen from the front.");
  }

  /** From the right: backs in line. */
  public Drawing side() {
    return view(Face.RIGHT, Axis.Y, "side", "Seen from the right side, front at the left.");
  }

  private Drawing view(Face face, Axis across, String view, String words) {
    Box lower = new Projection(face).box(stack.lower().outside());
    Box all = new Box(lower.left(), 0, lower.width(), stack.height());
    return drafter.largest(all, scale -> draw(scale, face, across, view, words));
  }

  private Drawing draw(Scale scale, Face face, Axis across, String view, String words) {
    List<Mark> marks = new ArrayList<>(drawn(scale, stack.lower(), face));
    for (Placed upper : stack.upper()) {
      double moved = across == Axis.X ? upper.right() : upper.back();
      marks.addAll(
          Mark.allMoved(
              drawn(scale, upper.built(), face), scale.toPaper(moved), scale.toPaper(upper.up())));
    }
    Box work = Mark.around(marks);
    marks.addAll(Dimensions.beside(Side.RIGHT, work.right(), heights(scale)));
    marks.addAll(Dimensions.beside(Side.BELOW, work.bottom(), List.of(lower(scale, across))));
    for (Placed upper : stack.upper()) {
      marks.addAll(Dimensions.beside(Side.ABOVE, work.top(), List.of(upper(scale, upper, across))));
    }
    return Drawing.toScale(
        Drafter.name(stack.name(), view),
        stack.name() + ", " + view + " view",
        words + " Heights of both cases and over all at the right.",
        scale,
        drafter.note(),
        marks);
  }

  private List<Mark> drawn(Scale scale, BuiltCase built, Face face) {
    return new CaseViews(drafter, built).bare(scale, face);
  }

  private List<Span> heights(Scale scale) {
    List<Span> spans = new ArrayList<>();
    double base = stack.lower().outside().size(Axis.Z).mm();
    spans.add(span(scale, 0, base));
    for (Placed upper : stack.upper()) {
      spans.add(span(scale, base, base + upper.built().outside().size(Axis.Z).mm()));
    }
    spans.add(span(scale, 0, stack.height()));
    return spans;
  }

  private Span lower(Scale scale, Axis across) {
    return along(scale, stack.lower(), across, 0);
  }

  private Span upper(Scale scale, Placed upper, Axis across) {
    return along(scale, upper.built(), across, across == Axis.X ? upper.right() : upper.back());
  }

  private Span along(Scale scale, BuiltCase of, Axis across, double moved) {
    return span(
        scale,
        moved + of.outside().low().along(across).mm(),
        moved + of.outside().high().along(across).mm());
  }

  private Span span(Scale scale, double from, double to) {
    return new Span(
        scale.toPaper(from),
        scale.toPaper(to),
        drafter.number(fourpin.measure.Length.nearestMm(to - from)));
  }
}
