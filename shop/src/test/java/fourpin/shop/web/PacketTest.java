package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.file.JobReader;
import fourpin.shop.packet.PacketFile;
import fourpin.shop.packet.PlanFiles;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The packet as a browser gets it. */
class PacketTest {

  @TempDir static Path folder;

  private static Caller caller;

  @BeforeAll
  static void start() {
    caller = Caller.at(folder);
  }

  @AfterAll
  static void stop() {
    caller.close();
  }

  /** The same bytes as the command line writes. */
  @Test
  void allFilesComeInOne() throws IOException {
    String job = caller.bring(Caller.readingRoom());
    Map<String, byte[]> files = new LinkedHashMap<>();
    byte[] bytes = caller.bytes(job + "/packet.zip");
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        files.put(entry.getName(), zip.readAllBytes());
      }
    }
    JobReader.Outcome read = JobReader.read(Caller.readingRoom().getBytes(StandardCharsets.UTF_8));
    assertThat(read).isInstanceOf(JobReader.Outcome.Good.class);
    var plan = fourpin.plan.Planner.plan(((JobReader.Outcome.Good) read).job());
    for (PacketFile file : PlanFiles.of(plan)) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      file.content().writeTo(out);
      assertThat(files.remove(file.name())).as(file.name()).isEqualTo(out.toByteArray());
    }
    assertThat(files).isEmpty();
    assertThat(caller.bytes(job + "/packet.zip")).isEqualTo(bytes);
  }

  @ParameterizedTest
  @CsvSource({"paper, a4, 'print: 1/32', A4", "print, 0.1 mm, 'print: 0.1 mm', Millimetres"})
  void aSwitchChangesHowTheJobIsPrintedAndNoSizeOfIt(
      String key, String value, String stands, String words) throws IOException {
    String job = caller.bring(Caller.readingRoom());
    HttpResponse<String> answer =
        caller.submit(job + "/print", "seen", caller.seen(job), "key", key, "value", value);
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(caller.file(job)).contains(stands, "width: 80");
    assertThat(caller.get(job + "/packet").body())
        .contains("aria-pressed=\"true\">" + words + "</button>");
  }

  @Test
  void otherKeysAreNoSwitches() throws IOException {
    String job = caller.bring(Caller.readingRoom());
    HttpResponse<String> answer =
        caller.submit(job + "/print", "seen", caller.seen(job), "key", "title", "value", "x");
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(caller.file(job)).isEqualTo(Caller.readingRoom());
  }
}
