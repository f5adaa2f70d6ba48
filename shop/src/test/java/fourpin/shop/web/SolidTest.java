package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.solid.Solid;
import fourpin.shop.file.JobReader;
import fourpin.shop.packet.Glb;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The case in three dimensions on its page. */
class SolidTest {

  private static final Path EXAMPLE = Path.of("..", "examples", "music-library.yaml");

  @TempDir static Path folder;

  private static Caller caller;
  private static String job;

  @BeforeAll
  static void start() throws IOException {
    caller = Caller.at(folder);
    job = caller.bring(Files.readString(EXAMPLE));
  }

  @AfterAll
  static void stop() {
    caller.close();
  }

  @Test
  void thePageSaysInWordsWhatThePictureShows() {
    String section = Caller.element(caller.get(job).body(), "section", "solid");
    assertThat(section)
        .contains("cabinet: 2 bays, 3 shelves to move, 2 doors.")
        .contains("data-file=\"" + job + "/solid.glb?case=cabinet\"");
  }

  /** What is looked at is what the packet holds. */
  @Test
  void theFileIsThatOfThePacket() throws IOException, InterruptedException {
    HttpResponse<byte[]> answer =
        HttpClient.newHttpClient()
            .send(
                caller.request(job + "/solid.glb?case=cabinet").build(),
                HttpResponse.BodyHandlers.ofByteArray());
    Plan plan = plan();
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("model/gltf-binary");
    assertThat(answer.body()).isEqualTo(Glb.write(Solid.of(plan, plan.cases().getFirst())));
  }

  private static Plan plan() throws IOException {
    return switch (JobReader.read(Files.readAllBytes(EXAMPLE))) {
      case JobReader.Outcome.Good(var read) -> Planner.plan(read);
      case JobReader.Outcome.Refused refused -> throw new AssertionError(refused.toString());
    };
  }

  /** Each module that is asked for, by the page or by a module, is one that is served. */
  @Test
  void modulesFindEachOtherWithoutAMap() {
    Deque<String> open = new ArrayDeque<>(Set.of("solid.js"));
    Set<String> found = new HashSet<>();
    while (!open.isEmpty()) {
      String name = open.pop();
      if (found.add(name)) {
        HttpResponse<String> answer = caller.get("/own/" + name);
        assertThat(answer.statusCode()).as(name).isEqualTo(200);
        open.addAll(imported(answer.body()));
      }
    }
    assertThat(found)
        .containsExactlyInAnyOrder(
            "solid.js",
            "three.module.min.js",
            "three.core.min.js",
            "GLTFLoader.js",
            "BufferGeometryUtils.js",
            "OrbitControls.js");
  }

  /** Comments, a star or two strokes before each line, show imports too. */
  private static Set<String> imported(String script) {
    String code = script.replaceAll("(?m)^\\s*(\\*|//).*$", "");
    Set<String> names = new HashSet<>();
    Stream.of(
            "\\b(?:import|export)\\s*\\{[^}]*\\}\\s*from\\s*[\"']([^\"']+)[\"']",
            "\\bimport\\([\"']([^\"']+)[\"']\\)")
        .flatMap(pattern -> Caller.all(code, pattern).stream())
        .forEach(
            address -> {
              assertThat(address).startsWith("./");
              names.add(address.substring(2));
            });
    return names;
  }

  /** The policy of the pages forbids code that is made from text. */
  @Test
  void noModuleMakesCodeFromText() {
    for (String name : Set.of("three.module.min.js", "three.core.min.js", "GLTFLoader.js")) {
      assertThat(caller.get("/own/" + name).body())
          .doesNotContainPattern("\\beval\\(|new Function\\(");
    }
  }
}
