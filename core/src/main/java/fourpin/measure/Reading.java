package fourpin.measure;

import java.util.function.Function;

/** What came of reading a text that a maker wrote: a value, or what is wrong with the text. */
public sealed interface Reading<T> {

  /** The text was understood. */
  record Good<T>(T value) implements Reading<T> {}

  /**
   * The text was refused.
   *
   * @param rule what the text breaks, as a clause: "1/3 in is not a whole number of picometres"
   * @param remedy what to write instead, as a clause
   */
  record Bad<T>(String rule, String remedy) implements Reading<T> {}

  static <T> Reading<T> good(T value) {
    return new Good<>(value);
  }

  static <T> Reading<T> bad(String rule, String remedy) {
    return new Bad<>(rule, remedy);
  }

  default <R> Reading<R> then(Function<? super T, ? extends Reading<R>> next) {
    return switch (this) {
      case Good<T>(T value) -> next.apply(value);
      case Bad<T>(String rule, String remedy) -> bad(rule, remedy);
    };
  }

  /** The value. @throws IllegalArgumentException with rule and remedy if the text was refused */
  default T orThrow() {
    return switch (this) {
      case Good<T>(T value) -> value;
      case Bad<T>(String rule, String remedy) ->
          throw new IllegalArgumentException(rule + "; " + remedy);
    };
  }
}
