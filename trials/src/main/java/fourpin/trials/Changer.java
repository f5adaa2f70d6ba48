package fourpin.trials;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Somebody who changes the example over and over on its page, as the page's script does. */
final class Changer {

  private static final Pattern SEEN = Pattern.compile("data-seen=\"([^\"]*)\"");
  private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]*)\"");
  private static final Pattern TIMING = Pattern.compile("answer;dur=([0-9.]+)");
  private static final int GOOD = 200;
  private static final double NANOS_PER_MS = 1e6;

  /** So many thirty-seconds of an inch are taken off the width, one after the other. */
  private static final int WIDTHS = 64;

  private static final int LEVELS = 5;
  private static final int LOWEST_LEVEL = 14;

  private final HttpClient client = HttpClient.newHttpClient();
  private final URI job;
  private final String token;
  private String seen;

  /**
   * Milliseconds that an answer took.
   *
   * @param here from the request's first byte sent to the answer's last one read
   * @param atServer as the server says, its own handling of the connection left out
   */
  record Took(double here, double atServer) {}

  /**
   * @param job address of its page
   */
  Changer(URI job) throws IOException, InterruptedException {
    this.job = job;
    String page = client.send(get(), HttpResponse.BodyHandlers.ofString()).body();
    this.token = found(TOKEN, page);
    this.seen = found(SEEN, page);
  }

  private HttpRequest get() {
    return HttpRequest.newBuilder(job).build();
  }

  /** The page as it stands. */
  Took look() throws IOException, InterruptedException {
    return took(get());
  }

  /** A shelf moved, a width changed, another wood, in turn; no two give the same job. */
  Took change(int number) throws IOException, InterruptedException {
    return switch (number % 4) {
      case 0 -> put("SIZES", "outside_width", width(number / 4));
      case 1 -> move("1", number / 4);
      case 2 -> put("PANELS", "material", number / 4 % 2 == 0 ? "oak" : "oak-ply");
      default -> move("3", number / 4);
    };
  }

  private static String width(int number) {
    return String.format(Locale.ROOT, "79 %d/64", number % WIDTHS);
  }

  /**
   * @param drawer of the page that the field lies in
   */
  private Took put(String drawer, String field, String value)
      throws IOException, InterruptedException {
    return post("put", Map.of("open", drawer, "field", field, "value", value));
  }

  private Took move(String bay, int number) throws IOException, InterruptedException {
    String level = Integer.toString(LOWEST_LEVEL + number % LEVELS);
    return post("move", Map.of("bay", bay, "shelf", "2", "level", level));
  }

  private Took post(String what, Map<String, String> form)
      throws IOException, InterruptedException {
    String mine =
        Map.of("token", token, "seen", seen, "case", "bookcase").entrySet().stream()
            .map(Changer::encoded)
            .collect(Collectors.joining("&"));
    String theirs = form.entrySet().stream().map(Changer::encoded).collect(Collectors.joining("&"));
    return took(
        HttpRequest.newBuilder(URI.create(job + "/" + what))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .header("Origin", job.resolve("/").toString().replaceAll("/$", ""))
            .header("HX-Request", "true")
            .POST(HttpRequest.BodyPublishers.ofString(mine + "&" + theirs))
            .build());
  }

  private static String encoded(Map.Entry<String, String> field) {
    return field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8);
  }

  private Took took(HttpRequest request) throws IOException, InterruptedException {
    long begun = System.nanoTime();
    HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
    double here = (System.nanoTime() - begun) / NANOS_PER_MS;
    if (answer.statusCode() != GOOD || !answer.body().contains("<svg")) {
      throw new IllegalStateException(
          request.uri() + " gave " + answer.statusCode() + ":\n" + answer.body());
    }
    seen = found(SEEN, answer.body());
    List<String> timing = answer.headers().allValues("Server-Timing");
    return new Took(here, Double.parseDouble(found(TIMING, String.join(",", timing))));
  }

  private static String found(Pattern what, String text) {
    Matcher matcher = what.matcher(text);
    if (!matcher.find()) {
      throw new IllegalStateException("No " + what + " in\n" + text);
    }
    return matcher.group(1);
  }
}
