package fourpin.shop.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32C;

/** Style sheets, scripts and pictures; all from the jars, none from elsewhere. */
final class Assets {

  private static final String OURS = "/fourpin/shop/web/";
  private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js";
  private static final String THREE = "/META-INF/resources/webjars/three/0.181.1/";
  private static final String SCRIPT = "text/javascript; charset=utf-8";

  /**
   * Where the modules of three.js find each other: all lie side by side here, and names without an
   * address would take an import map, which is inline code.
   */
  private static final Map<String, String> BESIDE =
      Map.of(
          "from 'three'", "from './three.module.min.js'",
          "from '../utils/BufferGeometryUtils.js'", "from './BufferGeometryUtils.js'");

  private record Asset(String type, byte[] bytes, String tag) {}

  private final Map<String, Asset> assets = new LinkedHashMap<>();

  Assets() {
    add("fourpin.css", "text/css; charset=utf-8", OURS + "fourpin.css");
    add("desk.js", SCRIPT, OURS + "desk.js");
    add("focus.js", SCRIPT, OURS + "focus.js");
    add("bench.css", "text/css; charset=utf-8", OURS + "bench.css");
    add("bench.js", SCRIPT, OURS + "bench.js");
    add("bench-worker.js", SCRIPT, OURS + "bench-worker.js");
    add("htmx.js", SCRIPT, HTMX);
    add("mark.svg", "image/svg+xml", OURS + "mark.svg");
    add("solid.js", SCRIPT, OURS + "solid.js");
    add("three.module.min.js", SCRIPT, THREE + "build/three.module.min.js");
    add("three.core.min.js", SCRIPT, THREE + "build/three.core.min.js");
    addModule("GLTFLoader.js", THREE + "examples/jsm/loaders/GLTFLoader.js");
    addModule("BufferGeometryUtils.js", THREE + "examples/jsm/utils/BufferGeometryUtils.js");
    addModule("OrbitControls.js", THREE + "examples/jsm/controls/OrbitControls.js");
  }

  private void add(String name, String type, String resource) {
    add(name, type, read(resource));
  }

  private void addModule(String name, String resource) {
    String text = new String(read(resource), StandardCharsets.UTF_8);
    for (Map.Entry<String, String> place : BESIDE.entrySet()) {
      text = text.replace(place.getKey(), place.getValue());
    }
    add(name, SCRIPT, text.getBytes(StandardCharsets.UTF_8));
  }

  private void add(String name, String type, byte[] bytes) {
    CRC32C sum = new CRC32C();
    sum.update(bytes);
    assets.put(
        name, new Asset(type, bytes, "\"" + HexFormat.of().toHexDigits(sum.getValue()) + "\""));
  }

  private static byte[] read(String resource) {
    try (InputStream in = Assets.class.getResourceAsStream(resource)) {
      return Optional.ofNullable(in).orElseThrow().readAllBytes();
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
