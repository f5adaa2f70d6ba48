package fourpin.cutting;

import fourpin.measure.Length;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;

/** Guards of the constructors: what a caller must have checked before. */
final class Require {
  private Require() {}

  static void positive(Length length, String what) {
    if (!length.isPositive()) {
      throw new IllegalArgumentException(what + " must be more than zero, but is " + length);
    }
  }

  static void notNegative(Length length, String what) {
    if (length.isNegative()) {
      throw new IllegalArgumentException(what + " must not be below zero, but is " + length);
    }
  }

  static void notNegative(long number, String what) {
    if (number < 0) {
      throw new IllegalArgumentException(what + " must not be below zero, but is " + number);
    }
  }

  static void atLeastOne(int number, String what) {
    if (number < 1) {
      throw new IllegalArgumentException(what + " must be at least 1, but is " + number);
    }
  }

  static void named(String name, String what) {
    if (name.isBlank()) {
      throw new IllegalArgumentException(what + " must not be blank");
    }
  }

  static void distinct(Collection<String> names, String what) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        throw new IllegalArgumentException(what + " must differ, but " + name + " is there twice");
      }
    }
  }
}
