package fourpin.plan;

import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/** The bit that is most easily mistaken for the right one. */
sealed interface OtherBit {

  /** A bit of the shop's own. */
  record Own(Length bores) implements OtherBit {}

  /** A bit of the next size that is sold, in a shop that states no tools. */
  record Unstated(Length bores) implements OtherBit {}

  /** The same from elsewhere, since the shop has no other that fits. */
  record Borrowed(Length bores, Lack lack) implements OtherBit {}

  /** Not even a borrowed one fits. */
  record None(Lack lack) implements OtherBit {}

  /**
   * That no other bit that the shop states fits and is nearly as wide.
   *
   * @param kind of bit, in words
   * @param refused the shop's own of that kind and another size
   */
  record Lack(String kind, List<Refused> refused) {
    public Lack {
      refused = List.copyOf(refused);
    }
  }

  /**
   * A bit that does not fit.
   *
   * @param size of it that is too much
   * @param into what it does not go, in words, with {@code room} for it
   */
  record Refused(String name, Length size, String into, Length room) {}

  /** What it bores; nothing if there is none. */
  default Optional<Length> diameter() {
    return switch (this) {
      case Own(Length bores) -> Optional.of(bores);
      case Unstated(Length bores) -> Optional.of(bores);
      case Borrowed(Length bores, _) -> Optional.of(bores);
      case None _ -> Optional.empty();
    };
  }
}
