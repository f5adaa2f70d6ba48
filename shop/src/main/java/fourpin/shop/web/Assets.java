package fourpin.shop.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32C;

/** Style sheets, scripts and pictures; all from the jars, none from elsewhere. */
final class Assets {

  private static final String OURS = "/fourpin/shop/web/";
  private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js";

  private record Asset(String type, byte[] bytes, String tag) {}

  private final Map<String, Asset> assets = new LinkedHashMap<>();

  Assets() {
    add("fourpin.css", "text/css; charset=utf-8", OURS + "fourpin.css");
    add("desk.js", "text/javascript; charset=utf-8", OURS + "desk.js");
    add("bench.css", "text/css; charset=utf-8", OURS + "bench.css");
    add("bench.js", "text/javascript; charset=utf-8", OURS + "bench.js");
    add("bench-worker.js", "text/javascript; charset=utf-8", OURS + "bench-worker.js");
    add("htmx.js", "text/javascript; charset=utf-8", HTMX);
    add("mark.svg", "image/svg+xml", OURS + "mark.svg");
  }

  private void add(String name, String type, String resource) {
    try (InputStream in = Assets.class.getResourceAsStream(resource)) {
      byte[] bytes = Optional.ofNullable(in).orElseThrow().readAllBytes();
      CRC32C sum = new CRC32C();
      sum.update(bytes);
      assets.put(
          name, new Asset(type, bytes, "\"" + HexFormat.of().toHexDigits(sum.getValue()) + "\""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Kept by the browser, and asked after each time, so that a new build is seen at once. */
  void serve(Context http) {
    Optional<Asset> found = Optional.ofNullable(assets.get(http.pathParam("name")));
    if (found.isEmpty()) {
      http.status(HttpStatus.NOT_FOUND).result("There is no such file.\n");
      return;
    }
    Asset asset = found.get();
    http.header("Service-Worker-Allowed", "/jobs/");
    http.header("Cache-Control", "no-cache").header("ETag", asset.tag()).contentType(asset.type());
    if (asset.tag().equals(http.header("If-None-Match"))) {
      http.status(HttpStatus.NOT_MODIFIED);
    } else {
      http.result(asset.bytes());
    }
  }
}
