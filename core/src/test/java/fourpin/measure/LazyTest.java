package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LazyTest {

  private final AtomicInteger worked = new AtomicInteger();

  private List<String> work() {
    worked.incrementAndGet();
    return List.of("a", "b");
  }

  @Test
  void workIsDoneWhenAskedForAndOnce() {
    Lazy<List<String>> lazy = Lazy.of(this::work);
    assertThat(worked).hasValue(0);
    assertThat(lazy.get()).isSameAs(lazy.get()).containsExactly("a", "b");
    assertThat(worked).hasValue(1);
  }

  @Test
  void manyThreadsGetTheSameOfOneWork() throws Exception {
    Lazy<List<String>> lazy = Lazy.of(this::work);
    CountDownLatch together = new CountDownLatch(8);
    Callable<List<String>> asker =
        () -> {
          together.countDown();
          together.await();
          return lazy.get();
        };
    List<Future<List<String>>> asked = new ArrayList<>();
    try (ExecutorService askers = Executors.newFixedThreadPool(8)) {
      for (int i = 0; i < 8; i++) {
        asked.add(askers.submit(asker));
      }
    }
    for (Future<List<String>> answer : asked) {
      assertThat(answer.get()).isSameAs(lazy.get());
    }
    assertThat(worked).hasValue(1);
  }

  @Test
  void workThatFailsIsTriedAnew() {
    Lazy<Integer> lazy =
        Lazy.of(
            () -> {
              if (worked.incrementAndGet() == 1) {
                throw new IllegalStateException("not yet");
              }
              return 7;
            });
    assertThatThrownBy(lazy::get).hasMessage("not yet");
    assertThat(lazy.get()).isEqualTo(7);
  }

  @Test
  void itStandsForItsValue() {
    assertThat(Lazy.of(() -> 7))
        .isEqualTo(Lazy.of(() -> 3 + 4))
        .isNotEqualTo(Lazy.of(() -> 8))
        .hasSameHashCodeAs(7)
        .hasToString("7");
  }

  @Test
  void aListIsLeftAloneUntilSomebodyLooksIntoIt() {
    List<String> list = LazyList.copyOf(LazyList.copyOf(LazyList.of(this::work)));
    assertThat(worked).hasValue(0);
    assertThat(list).isEqualTo(List.of("a", "b")).hasSameHashCodeAs(List.of("a", "b"));
    assertThat(list.stream().toList()).containsExactly("a", "b");
    assertThat(worked).hasValue(1);
  }

  @Test
  void listsAreCopiedAndCannotBeChanged() {
    List<String> given = new ArrayList<>(List.of("a"));
    List<String> copy = LazyList.copyOf(given);
    List<String> lazy = LazyList.of(() -> given);
    assertThat(lazy).hasSize(1);
    given.add("b");
    assertThat(copy).containsExactly("a");
    assertThat(lazy).containsExactly("a");
    assertThatThrownBy(() -> lazy.add("c")).isInstanceOf(UnsupportedOperationException.class);
  }
}
