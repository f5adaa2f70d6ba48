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
  private final List<Leader> leaders = new ArrayList<>();

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
    Leader leader = Leader.to(label.room(place), point);
    taken.add(label.room(place));
    leaders.add(leader);
    return List.of(leader.drawn(), label.lettering().at(place));
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
        if (isFree(room) && Leader.to(room, point).crossesNone(over)) {
          return Optional.of(place);
        }
      }
    }
    return Optional.empty();
  }

  /** What was taken, without what the point itself lies under. */
  private List<Box> over(Point point) {
    Box spot = Box.round(point);
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
    for (Leader leader : leaders) {
      if (leader.crosses(room)) {
        return false;
      }
    }
    return true;
  }

  /** A straight line from a point to the nearest place of its label. */
  private record Leader(Point from, Point to) {

    static Leader to(Box room, Point point) {
      return new Leader(
          point,
          new Point(
              Math.clamp(point.x(), room.left(), room.right()),
              Math.clamp(point.y(), room.bottom(), room.top())));
    }

    Mark.Path drawn() {
      return Mark.Path.line(from, to, Pen.DIMENSION);
    }

    boolean crossesNone(List<Box> boxes) {
      for (Box box : boxes) {
        if (crosses(box)) {
          return false;
        }
      }
      return true;
    }

    /** Whether it has a stretch inside the box (Liang and Barsky's clipping, 1984). */
    boolean crosses(Box box) {
      if (isBeside(from.x(), to.x(), box.left(), box.right())
          || isBeside(from.y(), to.y(), box.bottom(), box.top())) {
        return false;
      }
      double across = to.x() - from.x();
      double up = to.y() - from.y();
      double begin =
          Math.max(
              Math.max(0, begin(across, box.left() - from.x(), box.right() - from.x())),
              begin(up, box.bottom() - from.y(), box.top() - from.y()));
      double end =
          Math.min(
              Math.min(1, end(across, box.left() - from.x(), box.right() - from.x())),
              end(up, box.bottom() - from.y(), box.top() - from.y()));
      return end - begin > 1e-9;
    }

    /** Whether a run from {@code a} to {@code b} has nothing between two bounds. */
    private static boolean isBeside(double a, double b, double low, double high) {
      return Math.max(a, b) <= low || Math.min(a, b) >= high;
    }

    /**
     * The part of a run after which it is between two bounds, which are reckoned from its start.
     */
    private static double begin(double run, double low, double high) {
      return run == 0 ? 0 : Math.min(low / run, high / run);
    }

    private static double end(double run, double low, double high) {
      return run == 0 ? 1 : Math.max(low / run, high / run);
    }
  }
}
