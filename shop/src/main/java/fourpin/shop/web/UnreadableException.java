package fourpin.shop.web;

import fourpin.shop.store.DocumentId;
import fourpin.shop.yaml.Problem;
import java.util.List;

/** A text that was kept can no longer be read: the shop file, or the program, has changed. */
final class UnreadableException extends RuntimeException {
  private static final long serialVersionUID = 1;
  private final transient DocumentId job;
  private final transient List<Problem> problems;

  UnreadableException(DocumentId job, List<Problem> problems) {
    super("a job that is kept cannot be read");
    this.job = job;
    this.problems = List.copyOf(problems);
  }

  DocumentId job() {
    return job;
  }

  List<Problem> problems() {
    return problems;
  }
}
