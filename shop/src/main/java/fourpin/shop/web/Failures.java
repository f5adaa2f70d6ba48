package fourpin.shop.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.eclipse.jetty.io.EofException;

/**
 * What visitors are told when the program itself fails. Whoever runs it gets the details.
 *
 * @param details where they go
 */
record Failures(Consumer<Throwable> details, Pages pages) {

  private static final String TITLE = "Fourpin itself failed";

  /** A change is kept before its answer is written, so that one that failed may be kept. */
  private static final List<String> REST =
      List.of(
          "The job is whole. Open its page anew to see whether the last change was kept.",
          "Whoever started Fourpin finds more where it runs.");

  /** Visitors who hang up or fall silent in the middle are no failures. */
  void add(JavalinConfig config) {
    config.routes.exception(EofException.class, (_, http) -> http.status(HttpStatus.BAD_REQUEST));
    config.routes.exception(
        TimeoutException.class, (_, http) -> http.status(HttpStatus.REQUEST_TIMEOUT));
    config.routes.exception(UnreadableException.class, this::unreadable);
    config.routes.exception(Exception.class, this::page);
    config.router.javaLangErrorHandler(this::words);
  }

  /** The maker's text is all there; who can read it is told what the program can't. */
  private void unreadable(UnreadableException kept, Context http) {
    List<String> lines = new ArrayList<>(kept.problems().stream().map(p -> p.text("job")).toList());
    lines.add(
        "It was kept by another version of Fourpin, or put here past it. Nothing of it is lost:"
            + " download it, correct it in an editor, and bring it in as a new job.");
    http.status(HttpStatus.UNPROCESSABLE_CONTENT);
    pages.show(
        http,
        "trouble",
        Map.of(
            "title",
            "This job can't be read as it is kept",
            "lines",
            lines,
            "file",
            "/jobs/" + kept.job().value() + "/job.yaml"));
  }

  private void page(Exception failure, Context http) {
    details.accept(failure);
    http.status(HttpStatus.INTERNAL_SERVER_ERROR);
    pages.show(http, "trouble", Map.of("title", title(failure), "lines", REST));
  }

  /** When memory or the stack ran out, a page of the usual kind may fail as well. */
  private void words(HttpServletResponse answer, Error failure) {
    details.accept(failure);
    answer.setStatus(HttpServletResponse.SC_INTERNAL_SERVER_ERROR);
    answer.setContentType("text/plain; charset=utf-8");
    String words = title(failure) + ". " + String.join(" ", REST);
    try {
      answer.getOutputStream().write(words.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String title(Throwable failure) {
    return TITLE + " (" + failure.getClass().getSimpleName() + ")";
  }
}
