package fourpin.shop.web;

import fourpin.shop.yaml.Problem;
import java.util.List;

/** What came of a wish to change a job. Only {@link Saved} wrote anything. */
sealed interface Answer {

  /** The newest state as it is now. */
  State now();

  record Saved(State now) implements Answer {}

  /** There was nothing to change. */
  record Same(State now) implements Answer {}

  /** What was typed cannot be. @param problems at least one */
  record Wrong(State now, List<Problem> problems) implements Answer {
    public Wrong {
      problems = List.copyOf(problems);
    }
  }

  /** Somebody else changed the same thing first. @param theirs what stands there now */
  record Taken(State now, String by, String theirs) implements Answer {}

  /** It cannot be done. @param reason as a sentence */
  record Refused(State now, String reason) implements Answer {}
}
