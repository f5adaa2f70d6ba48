package fourpin.sheets.paint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Linear dimensions stacked in rows beside a drawing, short ones inside, so that no number or line
 * of one dimension lies on another's.
 *
 * <p>A number stands in the middle of its line; where the line is too short, beside it, on the side
 * that leaves it nearer to the work.
 */
public final class Dimensions {

  /** How far off two ends may be and still share one extension line. */
  private static final double SAME = 0.01;

  private final Side side;
  private final double edge;
  private final DimensionStyle style;
  private final List<List<Choice>> rows = new ArrayList<>();
  private final List<Placed> placed = new ArrayList<>();

  private Dimensions(Side side, double edge, DimensionStyle style) {
    this.side = side;
    this.edge = edge;
    this.style = style;
  }

  /**
   * One dimension, in millimetres on paper along its side.
   *
   * @param to more than {@code from}
   */
  public record Span(double from, double to, String label) {

    public Span {
      if (!(from < to)) {
        throw new IllegalArgumentException(
            "A dimension needs from < to, not " + from + " and " + to);
      }
    }

    double length() {
      return to - from;
    }
  }

  /** A dimension with a place for its number, and all that it takes up along its row. */
  private record Choice(Span span, double textAt, double low, double high) {

    boolean clashes(Choice other) {
      return low < other.high - SAME && other.low < high - SAME;
    }

    boolean isOutside() {
      return textAt < span.from() || textAt > span.to();
    }
  }

  /** A choice made, so far away from the work. */
  private record Placed(Choice choice, double away) {}

  /**
   * @param edge where the work ends on this side, millimetres on paper
   */
  public static List<Mark> beside(Side side, double edge, List<Span> spans) {
    Dimensions dimensions = new Dimensions(side, edge, DimensionStyle.USUAL);
    spans.stream()
        .sorted(Comparator.comparingDouble(Span::length).thenComparingDouble(Span::from))
        .forEach(dimensions::place);
    return dimensions.marks();
  }

  private void place(Span span) {
    List<Choice> choices = choices(span);
    for (int row = 0; row < rows.size(); row++) {
      Optional<Choice> free = free(choices, rows.get(row));
      if (free.isPresent()) {
        take(free.get(), row);
        return;
      }
    }
    rows.add(new ArrayList<>());
    take(choices.getFirst(), rows.size() - 1);
  }

  private static Optional<Choice> free(List<Choice> choices, List<Choice> row) {
    return choices.stream().filter(c -> row.stream().noneMatch(c::clashes)).findFirst();
  }

  private void take(Choice choice, int row) {
    rows.get(row).add(choice);
    placed.add(new Placed(choice, style.first() + row * style.pitch()));
  }

  private List<Choice> choices(Span span) {
    double text = lettering(span.label()).width();
    double beside = text + 2 * style.gap();
    double middle = (span.from() + span.to()) / 2;
    if (beside + 2 * style.tick() <= span.length()) {
      return List.of(new Choice(span, middle, span.from(), span.to()));
    }
    double low = span.from() - style.tick() - style.gap();
    double high = span.to() + style.tick() + style.gap();
    return List.of(
        new Choice(span, high + text / 2, low, high + beside),
        new Choice(span, low - text / 2, low - beside, high));
  }

  private Lettering lettering(String label) {
    return Lettering.of(label, Typeface.REGULAR, style.text())
        .with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE)
        .turned(side.upright() ? 90 : 0)
        .backed();
  }

  private List<Mark> marks() {
    List<Mark> marks = new ArrayList<>(extensions());
    placed.forEach(dimension -> marks.addAll(line(dimension)));
    placed.forEach(dimension -> marks.add(number(dimension)));
    return List.copyOf(marks);
  }

  /**
   * One extension line for each place where dimensions end, as long as the farthest of them needs.
   */
  private List<Mark> extensions() {
    Map<Long, Double> farthest = new TreeMap<>();
    for (Placed dimension : placed) {
      Span span = dimension.choice.span();
      farthest.merge(Math.round(span.from() / SAME), dimension.away, Math::max);
      farthest.merge(Math.round(span.to() / SAME), dimension.away, Math::max);
    }
    return farthest.entrySet().stream()
        .map(e -> extension(e.getKey() * SAME, e.getValue()))
        .toList();
  }

  private Mark extension(double along, double away) {
    return stroke(along, style.gap(), along, away + style.overrun());
  }

  private List<Mark> line(Placed dimension) {
    Span span = dimension.choice.span();
    double beyond = dimension.choice.isOutside() ? style.tick() + style.gap() : 0;
    return List.of(
        stroke(span.from() - beyond, dimension.away, span.to() + beyond, dimension.away),
        tick(span.from(), dimension.away),
        tick(span.to(), dimension.away));
  }

  private Mark tick(double along, double away) {
    Point centre = side.at(along, away, edge);
    double reach = style.tick();
    return Mark.Path.line(centre.moved(-reach, -reach), centre.moved(reach, reach), Pen.EDGE);
  }

  private Mark stroke(double along1, double away1, double along2, double away2) {
    return Mark.Path.line(
        side.at(along1, away1, edge), side.at(along2, away2, edge), Pen.DIMENSION);
  }

  private Mark number(Placed dimension) {
    Choice choice = dimension.choice;
    return lettering(choice.span().label()).at(side.at(choice.textAt(), dimension.away, edge));
  }
}
