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
  record Conflict(Edit edit, Optional<Value> now) implements Edited {

    /** Whether it was the same change; a name that is gone may have become any. */
    public boolean isMade() {
      return !(edit.change() instanceof Change.Rename) && now.equals(edit.change().value());
    }

    /** What stands there, on one line. */
    public String words() {
      return now.orElseGet(Value.Nothing::new).words();
    }
  }

  /** The file is laid out in a way that only its writer can change. @param reason as a clause */
  record Refused(Edit edit, String reason) implements Edited {}
}
