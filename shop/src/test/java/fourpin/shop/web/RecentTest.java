package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What the desk need not work out again. */
class RecentTest {

  private final Recent<Integer, Integer> recent = new Recent<>();
  private final List<Integer> worked = new ArrayList<>();

  private int ask(int key) {
    return recent.get(
        key,
        () -> {
          worked.add(key);
          return key * key;
        });
  }

  @Test
  void whatWasAskedIsNotWorkedOutAgain() {
    assertThat(ask(3)).isEqualTo(9);
    assertThat(ask(3)).isEqualTo(9);
    assertThat(worked).containsExactly(3);
  }

  @Test
  void whatWasPutNeedsNoWork() {
    recent.put(7, 49);
    assertThat(ask(7)).isEqualTo(49);
    assertThat(worked).isEmpty();
  }

  @Test
  void whatWasNotAskedForLongestGoesFirst() {
    IntStream.range(0, Recent.MOST).forEach(this::ask);
    ask(0);
    ask(Recent.MOST);
    worked.clear();
    ask(0);
    ask(1);
    assertThat(worked).containsExactly(1);
  }

  @Test
  void jobsAndWhatPagesStillShowOfThemAreAllKept() {
    int jobs = 20;
    IntStream.range(0, jobs + jobs / 2).forEach(this::ask);
    worked.clear();
    IntStream.range(0, jobs + jobs / 2).forEach(this::ask);
    assertThat(worked).isEmpty();
  }

  @Test
  void whatIsBeingWorkedOutIsWaitedFor() throws InterruptedException {
    AtomicInteger heard = new AtomicInteger();
    Thread second = new Thread(() -> heard.set(ask(3)));
    recent.get(
        3,
        () -> {
          startTillItWaits(second);
          return 10;
        });
    second.join();
    assertThat(heard).hasValue(10);
    assertThat(worked).isEmpty();
  }

  @Test
  void whoWaitedForWhatFailsWorksItOutItself() throws InterruptedException {
    AtomicInteger heard = new AtomicInteger();
    Thread second = new Thread(() -> heard.set(ask(3)));
    assertThatThrownBy(
            () ->
                recent.get(
                    3,
                    () -> {
                      startTillItWaits(second);
                      throw new IllegalStateException("stopped");
                    }))
        .hasMessage("stopped");
    second.join();
    assertThat(heard).hasValue(9);
    assertThat(worked).containsExactly(3);
  }

  private static void startTillItWaits(Thread thread) {
    thread.start();
    while (thread.getState() != Thread.State.WAITING) {
      Thread.onSpinWait();
    }
  }
}
