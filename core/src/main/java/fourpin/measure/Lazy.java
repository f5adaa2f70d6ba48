package fourpin.measure;

import java.util.function.Supplier;

/**
 * A value that is worked out when it is first asked for, and then kept. It stands for that value:
 * two are equal if what they stand for is.
 *
 * <p>The work must be a pure function of immutable things, so that nobody can tell when it was
 * done. It is done once, whichever threads ask; if it fails, whoever asks is told, and it is tried
 * anew when asked again.
 */
public final class Lazy<T> implements Supplier<T> {

  private sealed interface State<T> {
    record ToDo<T>(Supplier<? extends T> work) implements State<T> {}

    record Done<T>(T value) implements State<T> {}
  }

  /** The work is let go of once it is done. */
  private volatile State<T> state;

  private Lazy(Supplier<? extends T> work) {
    this.state = new State.ToDo<>(work);
  }

  public static <T> Lazy<T> of(Supplier<? extends T> work) {
    return new Lazy<>(work);
  }

  @Override
  public T get() {
    return state instanceof State.Done<T>(T value) ? value : done();
  }

  private synchronized T done() {
    return switch (state) {
      case State.Done<T>(T value) -> value;
      case State.ToDo<T>(Supplier<? extends T> work) -> {
        T value = work.get();
        state = new State.Done<>(value);
        yield value;
      }
    };
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Lazy<?> lazy && get().equals(lazy.get());
  }

  @Override
  public int hashCode() {
    return get().hashCode();
  }

  @Override
  public String toString() {
    return get().toString();
  }
}
