package fourpin.trials;

import fourpin.shop.store.DocumentId;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Somebody who looks at the page of a job and changes a field on it, as a browser would. */
final class PageVisitor {

  /** What a page answers. */
  enum Said {
    SAVED,
    SOMEBODY_WAS_FIRST,
    OTHERWISE
  }

  private static final int OK = 200;
  private static final int CONFLICT = 409;
  private static final Pattern SEEN = Pattern.compile("data-seen=\"([^\"]*)\"");
  private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]*)\"");

  private final String origin;
  private final HttpClient client;

  /**
   * @param number of this one: each has a loopback address of its own, since the server counts the
   *     requests of an address
   */
  PageVisitor(int port, int number) {
    this.origin = "http://127.0.0.1:" + port;
    this.client =
        HttpClient.newBuilder()
            .localAddress(InetAddress.ofLiteral("127.0.1." + (number + 1)))
            .build();
  }

  /**
   * Looks at the job anew, and changes a field of what is seen.
   *
   * @param open which fields the page shows
   */
  Said change(DocumentId job, String open, String field, String value) {
    String page = origin + "/jobs/" + job.value();
    try {
      HttpResponse<String> shown = send(HttpRequest.newBuilder(URI.create(page)));
      return shown.statusCode() == OK
          ? change(page, shown.body(), open, field, value)
          : Said.OTHERWISE;
    } catch (IOException e) {
      // The line was shut without an answer, which is none either.
      return Said.OTHERWISE;
    }
  }

  private Said change(String page, String shown, String open, String field, String value)
      throws IOException {
    String form =
        "token="
            + first(TOKEN, shown)
            + "&seen="
            + first(SEEN, shown)
            + "&case=bookcase&open="
            + open
            + "&field="
            + field
            + "&value="
            + value;
    HttpResponse<String> answer =
        send(
            HttpRequest.newBuilder(URI.create(page + "/put"))
                .header("Origin", origin)
                .header("HX-Request", "true")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)));
    return switch (answer.statusCode()) {
      case OK -> Said.SAVED;
      case CONFLICT -> Said.SOMEBODY_WAS_FIRST;
      default -> Said.OTHERWISE;
    };
  }

  private HttpResponse<String> send(HttpRequest.Builder request) throws IOException {
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static String first(Pattern pattern, String page) {
    Matcher matcher = pattern.matcher(page);
    if (!matcher.find()) {
      throw new IllegalStateException("the page of a job says no " + pattern);
    }
    return matcher.group(1);
  }
}
