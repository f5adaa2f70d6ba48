package fourpin.shop.file;

import java.util.Optional;

/** What a value in the file can be: how it is read, and what its reader expects. */
public sealed interface Kind<T> permits Word, ListOf, Named, Short, Form, OneOf {

  /** The value, or nothing, with every complaint left at the spot. */
  Optional<T> read(Spot spot);

  /** What it is, for messages and documents: "a length". */
  String what();
}
