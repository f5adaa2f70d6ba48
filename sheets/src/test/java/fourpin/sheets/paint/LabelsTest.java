package fourpin.sheets.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class LabelsTest {

  private static final double PAPER = 30;
  private static final double ROUNDING = 1e-6;

  private final Labels labels = new Labels();

  private static Lettering words(int number) {
    return Lettering.of("P" + number, Typeface.BOLD, 3);
  }

  private static Point somewhere(Random random) {
    return new Point(random.nextDouble(PAPER), random.nextDouble(PAPER));
  }

  /** Judged by the geometry of java.awt, which shares nothing with the search. */
  @RepeatedTest(40)
  void labelsKeepOffWhatIsReservedOffEachOtherAndOffLeaders(RepetitionInfo run) {
    Random random = new Random(run.getCurrentRepetition());
    List<Box> kept = new ArrayList<>();
    List<Line2D> leaders = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      Box box = Box.at(somewhere(random), random.nextDouble(4), random.nextDouble(4));
      labels.reserve(box);
      kept.add(box);
    }
    for (int i = 0; i < 30; i++) {
      List<Mark> marks =
          i % 2 == 0
              ? labels.on(somewhere(random), words(i))
              : labels.near(somewhere(random), words(i));
      Box text = marks.getLast().extent();
      assertThat(kept).noneMatch(text::overlaps);
      assertThat(leaders).noneMatch(inside(text)::intersectsLine);
      kept.add(text);
      marks.stream()
          .filter(Mark.Path.class::isInstance)
          .forEach(leader -> leaders.add(line((Mark.Path) leader)));
    }
  }

  private static Rectangle2D inside(Box box) {
    Box less = box.grown(-ROUNDING);
    return new Rectangle2D.Double(less.left(), less.bottom(), less.width(), less.height());
  }

  private static Line2D line(Mark.Path leader) {
    Point from = leader.points().getFirst();
    Point to = leader.points().getLast();
    return new Line2D.Double(from.x(), from.y(), to.x(), to.y());
  }

  @Test
  void leadersGoRoundWhatStandsBesideTheirPoint() {
    Box wall = new Box(0.3, -20, 0.35, 20);
    labels.reserve(wall);
    Mark.Path leader = (Mark.Path) labels.near(Point.ORIGIN, words(1)).getFirst();
    assertThat(inside(wall).intersectsLine(line(leader))).isFalse();
  }
}
