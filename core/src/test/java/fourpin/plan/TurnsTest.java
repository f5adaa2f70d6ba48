package fourpin.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fourpin.cutting.Watch;
import fourpin.plan.Turns.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Searches whose work moves the clock on, each asking its watch after every step. */
class TurnsTest {

  private static final long SECOND = 1_000_000_000;
  private static final long STEP = SECOND / 100;
  private static final long NEVER = Long.MAX_VALUE;

  private long now = 7 * SECOND;
  private final List<String> begun = new ArrayList<>();

  /** How long it had. @param proven after so much of its own time it is done */
  private Function<Turn, Long> search(String name, long step, long proven, long end) {
    return turn -> {
      begun.add(name);
      Watch watch = turn.of(Watch.until(() -> now >= end));
      long had = 0;
      while (had < proven && !watch.enough()) {
        now += step;
        had += step;
      }
      return had;
    };
  }

  private List<Long> millis(List<Function<Turn, Long>> searches) {
    return Turns.take(searches, () -> now).stream().map(nanos -> nanos / 1_000_000).toList();
  }

  /** Of 9 s one takes 1, first, between or last: the others have 4 each, give or take a turn. */
  @Test
  void whatOneLeavesGoesToAllOthersEvenly() {
    for (int proven = 0; proven < 3; proven++) {
      long end = now + 9 * SECOND;
      List<Function<Turn, Long>> searches = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        searches.add(search("s" + i, STEP, i == proven ? SECOND : NEVER, end));
      }
      List<Long> had = new ArrayList<>(millis(searches));
      assertThat(had.remove(proven)).isEqualTo(1_000);
      assertThat(had).hasSize(2).allMatch(ms -> Math.abs(ms - 4_000) <= 60);
      assertThat(now).isEqualTo(end);
    }
  }

  /** The first answer of a large one takes a second, in which nothing is asked. */
  @Test
  void oneThatIsSeldomAskedHasNoMoreThanTheOthers() {
    long end = now + 9 * SECOND;
    List<Long> had =
        millis(
            List.of(
                search("coarse", SECOND, NEVER, end),
                search("fine", STEP, NEVER, end),
                search("other", STEP, NEVER, end)));
    assertThat(had).allMatch(ms -> Math.abs(ms - 3_000) <= 100);
  }

  /** So that each has a first answer, whatever the others still look for. */
  @Test
  void allBeginInTheirOrderWithinATurnEach() {
    long end = now + 4 * Turns.TURN;
    List<Long> had =
        millis(
            List.of(
                search("a", STEP, NEVER, end),
                search("b", STEP, NEVER, end),
                search("c", STEP, NEVER, end)));
    assertThat(begun).containsExactly("a", "b", "c");
    assertThat(had).allMatch(ms -> ms >= 50);
  }

  /** Without a time each is done before the next. */
  @Test
  void underAClockThatStandsTheyFollowEachOther() {
    List<String> told = new ArrayList<>();
    Function<Turn, Integer> one =
        turn -> {
          Watch watch = turn.of(Watch.NOBODY);
          for (int i = 0; i < 3; i++) {
            told.add(i + " " + watch.enough());
          }
          return told.size();
        };
    assertThat(Turns.take(List.of(one, one), () -> 0)).containsExactly(3, 6);
    assertThat(told)
        .containsExactly("0 false", "1 false", "2 false", "0 false", "1 false", "2 false");
  }

  @Test
  void whereOneFailsTheOthersEndAndItIsTold() {
    Function<Turn, Long> broken =
        turn -> {
          throw new IllegalStateException("the layout can't be sawn");
        };
    List<Function<Turn, Long>> searches =
        List.of(search("first", STEP, NEVER, NEVER), broken, search("last", STEP, NEVER, NEVER));
    assertThatThrownBy(() -> Turns.take(searches, () -> now))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("the layout can't be sawn");
  }
}
