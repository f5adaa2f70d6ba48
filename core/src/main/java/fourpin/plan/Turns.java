package fourpin.plan;

import fourpin.cutting.Layout;
import fourpin.cutting.Watch;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Searches that share time evenly. Each has a thread of its own, since a search can't be left and
 * taken up again otherwise, but only one runs at a time: wherever its watch is asked, it makes way
 * for the one that has had least. So what time one leaves goes to all others, those that began
 * before it too.
 */
final class Turns {

  /** By how much more than another one has had before it makes way, in nanoseconds. */
  static final long TURN = 50_000_000;

  private final LongSupplier nanos;
  private final List<Semaphore> calls;
  private final long[] had;
  private final boolean[] ended;
  private boolean failed;
  private long since;

  /** The place of a search among the others. */
  interface Turn {

    /** With no others. */
    Turn ALONE = watch -> watch;

    /** The same watch, which makes way when it is asked. */
    Watch of(Watch watch);
  }

  private Turns(int searches, LongSupplier nanos) {
    this.nanos = nanos;
    this.calls = Stream.generate(() -> new Semaphore(0)).limit(searches).toList();
    this.had = new long[searches];
    this.ended = new boolean[searches];
  }

  /**
   * What all searches come to. Where one fails, the others end and its failure is thrown.
   *
   * @param nanos a clock; one that stands has them run one after the other
   */
  static <R> List<R> take(List<Function<Turn, R>> searches, LongSupplier nanos) {
    Turns turns = new Turns(searches.size(), nanos);
    try (ExecutorService threads =
        Executors.newThreadPerTaskExecutor(Thread.ofPlatform().daemon().name("turn").factory())) {
      List<CompletableFuture<R>> running =
          IntStream.range(0, searches.size())
              .mapToObj(i -> CompletableFuture.supplyAsync(() -> turns.run(i, searches), threads))
              .toList();
      turns.next();
      return running.stream().map(CompletableFuture::join).toList();
    } catch (CompletionException failure) {
      switch (failure.getCause()) {
        case Error error -> throw error;
        case RuntimeException cause -> throw cause;
        case null, default -> throw failure;
      }
    }
  }

  private <R> R run(int search, List<Function<Turn, R>> searches) {
    calls.get(search).acquireUninterruptibly();
    boolean whole = false;
    try {
      R result = searches.get(search).apply(watch -> asking(search, watch));
      whole = true;
      return result;
    } finally {
      failed |= !whole;
      ended[search] = true;
      next();
    }
  }

  private Watch asking(int search, Watch watch) {
    return new Watch() {
      @Override
      public void better(Layout layout) {
        watch.better(layout);
      }

      @Override
      public boolean enough() {
        makeWay(search);
        return failed || watch.enough();
      }
    };
  }

  private void makeWay(int search) {
    long now = nanos.getAsLong();
    had[search] += now - since;
    since = now;
    if (going().anyMatch(other -> had[search] - had[other] >= TURN)) {
      next();
      calls.get(search).acquireUninterruptibly();
    }
  }

  /** Calls the one that has had least. */
  private void next() {
    since = nanos.getAsLong();
    going()
        .boxed()
        .min(Comparator.comparingLong(other -> had[other]))
        .ifPresent(least -> calls.get(least).release());
  }

  private IntStream going() {
    return IntStream.range(0, ended.length).filter(search -> !ended[search]);
  }
}
