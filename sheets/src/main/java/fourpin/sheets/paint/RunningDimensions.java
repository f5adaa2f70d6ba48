package fourpin.sheets.paint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Running dimensions: the distance of each place from one datum, written at the end of its own
 * line, so that errors cannot add. Numbers that would meet are moved apart and joined to their
 * places by a kink in the line.
 */
public final class RunningDimensions {

  private static final double STRAIGHT = 3;
  private static final double KINK = 4;
  private static final double TAIL = 1.5;
  private static final double LINE_HEIGHT = 1.15;
  private static final double DATUM_RADIUS = 1;

  private final Side side;
  private final double edge;
  private final DimensionStyle style = DimensionStyle.USUAL;

  private RunningDimensions(Side side, double edge) {
    this.side = side;
    this.edge = edge;
  }

  /** A place along the side, millimetres on paper, and its distance from the datum as printed. */
  public record Station(double along, String label) {}

  /**
   * @param edge where the work ends on this side, millimetres on paper
   * @param stations none of them draws nothing, not even the datum
   * @param datum where the distances are counted from, along the side
   */
  public static List<Mark> beside(Side side, double edge, double datum, List<Station> stations) {
    if (stations.isEmpty()) {
      return List.of();
    }
    RunningDimensions running = new RunningDimensions(side, edge);
    List<Station> all = new ArrayList<>(stations);
    all.add(new Station(datum, "0"));
    all.sort(Comparator.comparingDouble(Station::along));
    List<Mark> marks = new ArrayList<>();
    marks.add(running.datum(datum));
    marks.addAll(running.stations(all));
    return marks;
  }

  private Mark datum(double along) {
    return new Mark.Circle(
        side.at(along, style.gap() + DATUM_RADIUS, edge), DATUM_RADIUS, Pen.OUTLINE, Fill.WHITE);
  }

  private List<Mark> stations(List<Station> sorted) {
    List<Double> places =
        Spread.apart(sorted.stream().map(Station::along).toList(), style.text() * LINE_HEIGHT);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      marks.add(leader(sorted.get(i).along(), places.get(i)));
      marks.add(number(sorted.get(i).label(), places.get(i)));
    }
    return marks;
  }

  private Mark leader(double from, double to) {
    double bend = style.gap() + STRAIGHT;
    return new Mark.Path(
        List.of(
            side.at(from, style.gap(), edge),
            side.at(from, bend, edge),
            side.at(to, bend + KINK, edge),
            side.at(to, bend + KINK + TAIL, edge)),
        Mark.Path.Shape.OPEN,
        Pen.DIMENSION,
        Fill.NONE);
  }

  private Mark number(String label, double along) {
    Lettering.Align align =
        side == Side.LEFT || side == Side.BELOW ? Lettering.Align.END : Lettering.Align.START;
    double away = style.gap() + STRAIGHT + KINK + TAIL + style.gap() / 2;
    return Lettering.of(label, Typeface.REGULAR, style.text())
        .with(align, Lettering.Seat.MIDDLE)
        .turned(side.upright() ? 0 : 90)
        .at(side.at(along, away, edge));
  }
}
