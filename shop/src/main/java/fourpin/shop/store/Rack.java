package fourpin.shop.store;

import java.util.List;
import java.util.Optional;

/** Stock and offcuts that the shop has. */
public interface Rack {

  /** By material, form and size, the largest first. */
  List<Racked> all();

  Racked add(Piece piece);

  /** Changes a piece if nobody did since. */
  Change change(Racked seen, Piece piece);

  /** Takes a piece out if nobody changed it since. */
  Change remove(Racked seen);

  /** What came of a change. */
  sealed interface Change {

    /**
     * @param now the piece; nothing if it was taken out
     */
    record Made(Optional<Racked> now) implements Change {}

    /**
     * Nothing was written.
     *
     * @param now the piece as somebody else changed it; nothing if it was taken out
     */
    record Overtaken(Optional<Racked> now) implements Change {}
  }
}
