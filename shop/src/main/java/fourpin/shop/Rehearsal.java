package fourpin.shop;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Edit;
import fourpin.shop.store.sql.SqlStore;
import fourpin.shop.web.WebServer;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;

/**
 * Does once what most runs begin with: writes a packet, and shows the first pages. The launcher
 * makes an archive of the classes that were used, from which Java starts faster.
 */
final class Rehearsal {

  private Rehearsal() {}

  /**
   * @param args a job file, and a folder for what is written
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path folder = Files.createDirectories(Path.of(args[1]));
    Path packet = folder.resolve("packet");
    Main.line("--help").execute("--help");
    String[] plan = {"plan", args[0], "--out", packet.toString()};
    Main.line(plan).execute(plan);
    DataPlace place = new DataPlace.InFile(folder.resolve("shop.db"));
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      Edit edit = new Edit("Rehearsal", Files.readString(Path.of(args[0])), "launcher", "begun");
      DocumentId job = store.documents().create(edit).document();
      try (WebServer server = WebServer.start(store, Throwable::printStackTrace, 0)) {
        show(server, List.of("/", "/jobs/" + job.value()));
      }
    }
  }

  private static void show(WebServer server, List<String> paths)
      throws IOException, InterruptedException {
    try (HttpClient client = HttpClient.newHttpClient()) {
      for (String path : paths) {
        URI page = URI.create("http://127.0.0.1:" + server.port() + path);
        client.send(HttpRequest.newBuilder(page).build(), HttpResponse.BodyHandlers.discarding());
      }
    }
  }
}
