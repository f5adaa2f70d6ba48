package fourpin.sheets.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds room for labels: each goes where it is wanted if that is free, else to the nearest free
 * place round it, joined to its point by a leader. No label lies on another, on a leader, or on
 * what was reserved.
 */
public final class Labels {

  private static final double STEP = 1.5;
  private static final int DIRECTIONS = 16;
  private static final double CLEAR = 0.4;

  private static final List<Point> WAYS =
      IntStream.range(0, DIRECTIONS)
          .mapToObj(i -> new Point(1, 0).turned(45 + 360.0 * i / DIRECTIONS))
          .toList();

  /** How many rings are tried for a leader that crosses nothing. */
  private static final int NEAR = 40;

  private final List<Box> taken = new ArrayList<>();
  private final List<Mark.Path> leaders = new ArrayList<>();

  /** Keeps labels away from a place. */
  public void reserve(Box box) {
    taken.add(box);
  }

  /** The label centred on its point if that is free, else near it. */
  public List<Mark> on(Point point, Lettering lettering) {
    return onFirstFree(List.of(point), lettering);
  }

  /** The label centred on the first of its places that is free, else near the first of all. */
  public List<Mark> onFirstFree(List<Point> places, Lettering lettering) {
    Label label = Label.of(lettering);
    for (Point place : places) {
      if (isFree(label.room(place))) {
        taken.add(label.room(place));
        return List.of(label.lettering().at(place));
      }
    }
    return near(places.getFirst(), lettering);
  }

  /** The label beside its point, with a leader. */
  public List<Mark> near(Point point, Lettering lettering) {
    Label label = Label.of(lettering);
    Point place = leading(point, label).orElseGet(() -> free(point, label));
    Mark.Path leader = leader(point, label.room(place));
    taken.add(label.room(place));
    leaders.add(leader);
    return List.of(leader, label.lettering().at(place));
  }

  /**
   * A lettering centred on its place.
   *
   * @param round what it takes up on the origin
   */
  private record Label(Lettering lettering, Box round) {

    static Label of(Lettering lettering) {
      Lettering centred = lettering.with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE).backed();
      return new Label(centred, centred.at(Point.ORIGIN).extent().grown(CLEAR));
    }

    Box room(Point place) {
      return round.moved(place.x(), place.y());
    }
  }

  /** The nearest free place whose leader crosses nothing. */
  private Optional<Point> leading(Point point, Label label) {
    List<Box> over = over(point);
    for (int ring = 1; ring <= NEAR; ring++) {
      for (Point place : ring(point, label, ring * STEP)) {
        Box room = label.room(place);
        if (isFree(room) && over.stream().noneMatch(box -> crosses(leader(point, room), box))) {
          return Optional.of(place);
        }
      }
    }
    return Optional.empty();
  }

  /** What was taken, without what the point itself lies under. */
  private List<Box> over(Point point) {
    Box spot = Box.round(List.of(point));
    return taken.stream().filter(box -> !box.contains(spot)).toList();
  }

  /** The nearest free place; there is one far enough out. */
  private Point free(Point point, Label label) {
    for (int ring = 1; ; ring++) {
      for (Point place : ring(point, label, ring * STEP)) {
        if (isFree(label.room(place))) {
          return place;
        }
      }
    }
  }

  private static List<Point> ring(Point point, Label label, double reach) {
    double across = label.lettering().width() / 2;
    double up = label.lettering().height() / 2;
    return WAYS.stream()
        .map(way -> point.moved(way.x() * (reach + across), way.y() * (reach + up)))
        .toList();
  }

  private boolean isFree(Box room) {
    for (Box box : taken) {
      if (room.overlaps(box)) {
        return false;
      }
    }
    for (Mark.Path leader : leaders) {
      if (crosses(leader, room)) {
        return false;
      }
    }
    return true;
  }

  private static Mark.Path leader(Point point, Box room) {
    Point end =
        new Point(
            Math.clamp(point.x(), room.left(), room.right()),
            Math.clamp(point.y(), room.bottom(), room.top()));
    return Mark.Path.line(point, end, Pen.DIMENSION);
  }

  /** Whether a straight leader has a stretch inside the box (Liang and Barsky's clipping, 1984). */
  private static boolean crosses(Mark.Path leader, Box box) {
    Point a = leader.points().getFirst();
    Point b = leader.points().getLast();
    double[] range = {0, 1};
    clip(range, b.x() - a.x(), box.left() - a.x(), box.right() - a.x());
    clip(range, b.y() - a.y(), box.bottom() - a.y(), box.top() - a.y());
    return range[1] - range[0] > 1e-9;
  }

  private static void clip(double[] range, double run, double low, double high) {
    if (run == 0) {
      if (low >= 0 || high <= 0) {
        range[1] = range[0];
      }
      return;
    }
    range[0] = Math.max(range[0], Math.min(low / run, high / run));
    range[1] = Math.min(range[1], Math.max(low / run, high / run));
  }
}
