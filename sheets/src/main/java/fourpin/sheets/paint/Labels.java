package fourpin.sheets.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds room for labels: each goes where it is wanted if that is free, else to the nearest free
 * place round it, joined to its point by a leader. No label lies on another, on a leader, or on
 * what was reserved.
 */
public final class Labels {

  private static final double STEP = 1.5;
  private static final int DIRECTIONS = 16;
  private static final double CLEAR = 0.4;

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
    Lettering centred = centred(lettering);
    Box wanted = room(centred.at(point));
    if (isFree(wanted)) {
      taken.add(wanted);
      return List.of(centred.at(point));
    }
    return near(point, lettering);
  }

  /** The label centred on the first of its places that is free, else near the first of all. */
  public List<Mark> onFirstFree(List<Point> places, Lettering lettering) {
    Lettering centred = centred(lettering);
    return places.stream()
        .filter(place -> isFree(room(centred.at(place))))
        .findFirst()
        .map(place -> on(place, lettering))
        .orElseGet(() -> near(places.getFirst(), lettering));
  }

  /** The label beside its point, with a leader. */
  public List<Mark> near(Point point, Lettering lettering) {
    Lettering centred = centred(lettering);
    Mark.Text text =
        rings(point, centred, IntStream.rangeClosed(1, NEAR))
            .filter(candidate -> leadsFreely(point, candidate))
            .findFirst()
            .or(() -> rings(point, centred, IntStream.iterate(1, i -> i + 1)).findFirst())
            .orElseThrow();
    Mark.Path leader = leader(point, room(text));
    taken.add(room(text));
    leaders.add(leader);
    return List.of(leader, text);
  }

  private static Lettering centred(Lettering lettering) {
    return lettering.with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE).backed();
  }

  private static Box room(Mark.Text text) {
    return text.extent().grown(CLEAR);
  }

  /** Free places on rings round the point, the nearest first; there is one far enough out. */
  private Stream<Mark.Text> rings(Point point, Lettering lettering, IntStream rings) {
    return rings
        .boxed()
        .flatMap(ring -> ring(point, lettering, ring * STEP))
        .filter(candidate -> isFree(room(candidate)));
  }

  private static Stream<Mark.Text> ring(Point point, Lettering lettering, double reach) {
    double across = lettering.width() / 2;
    double up = lettering.height() / 2;
    return IntStream.range(0, DIRECTIONS)
        .mapToObj(i -> new Point(1, 0).turned(45 + 360.0 * i / DIRECTIONS))
        .map(way -> point.moved(way.x() * (reach + across), way.y() * (reach + up)))
        .map(lettering::at);
  }

  /** Whether the leader crosses no label but those that its point lies under. */
  private boolean leadsFreely(Point point, Mark.Text candidate) {
    Mark.Path leader = leader(point, room(candidate));
    Box spot = Box.round(List.of(point));
    return taken.stream().noneMatch(box -> !box.contains(spot) && crosses(leader, box));
  }

  private boolean isFree(Box room) {
    return taken.stream().noneMatch(room::overlaps)
        && leaders.stream().noneMatch(leader -> crosses(leader, room));
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
