package fourpin.shop.edit;

import java.util.List;
import java.util.Optional;

/** What becomes of a value. */
public sealed interface Change {

  /** What stands there afterwards, if anything. */
  Optional<Value> value();

  /** Puts a value in place of another, or under a key that was not there. */
  record Put(Value now) implements Change {
    @Override
    public Optional<Value> value() {
      return Optional.of(now);
    }
  }

  /** Puts a new item into a list, before the one that stands there. */
  record Insert(Value now) implements Change {
    @Override
    public Optional<Value> value() {
      return Optional.of(now);
    }
  }

  /** Takes a key with its value, or an item, away. */
  record Remove() implements Change {
    @Override
    public Optional<Value> value() {
      return Optional.empty();
    }
  }

  /** Gives a key another name; what stands under it stays as it is. */
  record Rename(String to) implements Change {
    @Override
    public Optional<Value> value() {
      return Optional.empty();
    }
  }

  /** The same to a list. @param number of the item, from 1 */
  default void on(List<Value> items, int number) {
    switch (this) {
      case Put(Value now) -> items.set(number - 1, now);
      case Insert(Value now) -> items.add(number - 1, now);
      case Remove() -> items.remove(number - 1);
      case Rename _ -> throw new IllegalArgumentException("an item of a list has no name");
    }
  }
}
