package fourpin.shop.edit;

import java.util.Optional;

/** What came of an edit. */
public sealed interface Edited {

  /**
   * It was made.
   *
   * @param inverse leads back to the same meaning, and for a value in place of another to the same
   *     text
   */
  record Done(JobText text, Edit inverse) implements Edited {}

  /** Somebody else changed the same thing in between. @param now what stands there */
  record Conflict(Edit edit, Optional<Value> now) implements Edited {}

  /** The file is laid out in a way that only its writer can change. @param reason as a clause */
  record Refused(Edit edit, String reason) implements Edited {}
}
