package fourpin.shop.web;

import fourpin.shop.yaml.Problem;
import java.util.List;

/** A text that was kept can no longer be read: the shop file, or the program, has changed. */
final class UnreadableException extends RuntimeException {
  private static final long serialVersionUID = 1;
  private final transient List<Problem> problems;

  UnreadableException(List<Problem> problems) {
    super("a job that is kept cannot be read");
    this.problems = List.copyOf(problems);
  }

  List<Problem> problems() {
    return problems;
  }
}
