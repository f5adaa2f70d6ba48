package fourpin.shop.web;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.KeptLayout;
import fourpin.shop.store.sql.SqlStore;
import fourpin.shop.web.guard.Limits;
import fourpin.shop.web.guard.Reach;
import fourpin.shop.web.trust.Authority;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A server on a port of its own, and somebody who asks it things over real HTTP. */
final class Caller implements AutoCloseable {

  /** Tests ask more often than people. */
  private static final Limits OFTEN =
      new Limits(
          Limits.STANDARD.formBytes(),
          Limits.STANDARD.fileBytes(),
          Limits.STANDARD.backupBytes(),
          Limits.STANDARD.addressChars(),
          1_000_000,
          1_000_000,
          Limits.STANDARD.codeLife(),
          Limits.STANDARD.codeTries(),
          Limits.STANDARD.pairingLife());

  private static final int ANY_PORT = 0;
  private static final String BOUNDARY = "----a-part";

  private final SqlStore store;
  private final List<Throwable> failures = new CopyOnWriteArrayList<>();
  private final WebServer server;
  private final HttpClient client =
      HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();

  private Caller(SqlStore store, Reach reach, Optional<Authority> authority, int port) {
    this.store = store;
    this.server = WebServer.start(store, failures::add, () -> reach, authority, port, OFTEN);
  }

  static Caller at(Path folder) {
    return at(folder, ANY_PORT);
  }

  /** With a server where another was before. */
  static Caller at(Path folder, int port) {
    return new Caller(store(folder), Reach.loopback(), Optional.empty(), port);
  }

  /** With a server that devices find as well; the caller is this machine. */
  static Caller onNetwork(Path folder) {
    return new Caller(store(folder), OneAuthority.REACH, Optional.of(OneAuthority.get()), ANY_PORT);
  }

  private static SqlStore store(Path folder) {
    Path file = folder.resolve("shop.db");
    return SqlStore.open(new DataPlace.InFile(file), InstantSource.system());
  }

  /** Keeps layouts with a job as if a longer search had found them. */
  void keep(String job, List<KeptLayout> layouts) {
    store.layouts().keep(new DocumentId(job.substring(job.lastIndexOf('/') + 1)), layouts);
  }

  String origin() {
    return "http://127.0.0.1:" + server.port();
  }

  /** The job of the reading room, as its example states it. */
  static String readingRoom() {
    try {
      return Files.readString(Path.of("..", "examples", "reading-room.yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  int port() {
    return server.port();
  }

  HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(origin() + path));
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  HttpResponse<String> get(String path) {
    return send(request(path));
  }

  byte[] bytes(String path) {
    try {
      return client.send(request(path).build(), HttpResponse.BodyHandlers.ofByteArray()).body();
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What our pages put into their forms. */
  String token() {
    return first(get("/new").body(), "name=\"token\" value=\"([^\"]*)\"");
  }

  /** As a page of ours with scripts sends it. @param form names and values in turn */
  HttpResponse<String> post(String path, String... form) {
    return send(posting(path, form).header("Origin", origin()).header("HX-Request", "true"));
  }

  /** As a browser without scripts sends it. */
  HttpResponse<String> submit(String path, String... form) {
    return send(posting(path, form).header("Origin", origin()));
  }

  HttpRequest.Builder posting(String path, String... form) {
    StringBuilder body = new StringBuilder("token=" + token());
    for (int i = 0; i < form.length; i += 2) {
      body.append("&").append(form[i]).append('=');
      body.append(URLEncoder.encode(form[i + 1], StandardCharsets.UTF_8));
    }
    return request(path)
        .header("Content-Type", "application/x-www-form-urlencoded")
        .POST(HttpRequest.BodyPublishers.ofString(body.toString()));
  }

  HttpResponse<String> upload(String path, String text, String... form) {
    return upload(path, text.getBytes(StandardCharsets.UTF_8), form);
  }

  HttpResponse<String> upload(String path, byte[] file, String... form) {
    StringBuilder before = new StringBuilder();
    before.append(part("name=\"token\"", token()));
    for (int i = 0; i < form.length; i += 2) {
      before.append(part("name=\"" + form[i] + "\"", form[i + 1]));
    }
    before.append(head("name=\"file\"; filename=\"a-file\""));
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    body.writeBytes(before.toString().getBytes(StandardCharsets.UTF_8));
    body.writeBytes(file);
    body.writeBytes(("\r\n--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
    return send(
        request(path)
            .header("Origin", origin())
            .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
            .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray())));
  }

  private static String part(String head, String text) {
    return head(head) + text + "\r\n";
  }

  private static String head(String head) {
    return "--" + BOUNDARY + "\r\nContent-Disposition: form-data; " + head + "\r\n\r\n";
  }

  /** Brings a job in. @return the address of its page */
  String bring(String text) {
    HttpResponse<String> answer = upload("/jobs", text);
    return answer
        .headers()
        .firstValue("Location")
        .orElseThrow(() -> new IllegalStateException(answer.statusCode() + " " + answer.body()));
  }

  /** The revision that the page of a job shows. */
  String seen(String job) {
    return first(get(job).body(), "data-seen=\"([^\"]*)\"");
  }

  /** The text of a job, without what a file that leaves it says of itself. */
  String file(String job) {
    return Leaf.back(download(job)).text();
  }

  String download(String job) {
    return get(job + "/job.yaml").body();
  }

  static String first(String text, String pattern) {
    return all(text, pattern).getFirst();
  }

  static List<String> all(String text, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    return matcher.results().map(r -> r.group(1)).toList();
  }

  /** What of a page stands between a tag with an id and its end. */
  static String element(String page, String tag, String id) {
    String[] cut = page.split("<" + tag + " id=\"" + Pattern.quote(id) + "\"", 2);
    return cut.length < 2 ? "" : Arrays.asList(cut[1].split("</" + tag + ">", 2)).getFirst();
  }

  @Override
  public void close() {
    server.close();
    store.close();
    failures.forEach(
        failure -> {
          throw new AssertionError("The program itself failed", failure);
        });
  }
}
