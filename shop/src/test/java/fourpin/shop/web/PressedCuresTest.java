package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every cure that has a press keeps its promise: it can be read, its finding is gone from a plan of
 * the text that comes of it, and no new kind of error is in that unless the maker was asked.
 */
class PressedCuresTest {

  private static final Path EXAMPLES = Path.of("..", "examples");

  private static final Pattern SHOP = Pattern.compile("(?m)^shop: (\\S+)");

  @TempDir Path folder;

  private Presses presses;

  @BeforeEach
  void open() {
    presses = new Presses(folder.resolve("shop.db"));
  }

  @AfterEach
  void close() {
    presses.close();
  }

  /** Of all presses on a job. @param asked words of cures that the maker is asked about */
  private record Pressed(int all, List<String> asked) {}

  private Pressed pressed(String job, List<String> drafts) {
    State seen = presses.brought(drafts);
    List<String> asked = new ArrayList<>();
    int all = 0;
    for (Finding finding : seen.plan().findings()) {
      for (Remedy remedy : finding.remedies()) {
        if (remedy.stated().isPresent()) {
          all++;
          if (isAsked(job + ": " + remedy, seen, finding, remedy)) {
            asked.add(remedy.what().split("[:,]")[0]);
          }
        }
      }
    }
    return new Pressed(all, asked);
  }

  private boolean isAsked(String what, State seen, Finding finding, Remedy remedy) {
    return !presses.pressed(what, seen, finding, remedy).would().spoilt().isEmpty();
  }

  private static Stream<Path> files(Path folder) {
    try (Stream<Path> all = Files.list(folder)) {
      return all
          .filter(p -> p.toString().endsWith(".yaml"))
          .filter(p -> !p.toString().endsWith("shop.yaml"))
          .sorted()
          .toList()
          .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The shop that a job names, kept in a store of its own. */
  private void openFor(Path job) {
    Matcher shop = SHOP.matcher(text(job));
    if (shop.find()) {
      presses.close();
      presses = new Presses(folder.resolve(job.getFileName() + ".db"));
      presses.bringShop(text(job.resolveSibling(shop.group(1)).normalize()));
    }
  }

  /**
   * Shallower holes would crush under the pins of the music library, whose partitions and strips a
   * maker chooses.
   */
  @Test
  void examplesAreCuredAndTheMakerIsAskedOnceOnly() {
    List<String> asked = new ArrayList<>();
    int all = 0;
    for (Path file : Stream.concat(files(EXAMPLES), files(EXAMPLES.resolve("ways"))).toList()) {
      openFor(file);
      Pressed pressed = pressed(file.toString(), List.of(text(file)));
      pressed.asked().forEach(cure -> asked.add(file.getFileName() + ": " + cure));
      all += pressed.all();
    }
    assertThat(all).isGreaterThanOrEqualTo(20);
    assertThat(asked).containsExactly("music-library.yaml: set hole-depth to 5.1 mm");
  }

  /** With two bays in place of three its shelves sag, supports crush and points meet. */
  @Test
  void aReadingRoomOfTwoBaysIsCured() {
    String text = Caller.readingRoom().replace("    bays: 3\n", "    bays: 2\n");
    Pressed pressed = pressed("two bays", List.of(text));
    assertThat(pressed.all()).isGreaterThanOrEqualTo(8);
    assertThat(pressed.asked()).isEmpty();
  }

  @Test
  void whatTheSurveyMakesIsCured() {
    int all = 0;
    for (String thing : List.of("children's books", "records, 7 in")) {
      all += pressed("mm", thing, "plywood, birch throughout");
      all += pressed("mm", thing, "MDF");
    }
    all += pressed("inch", "dishes", "MDF");
    assertThat(all).isGreaterThanOrEqualTo(8);
  }

  private int pressed(String unit, String thing, String wood) {
    String job = String.join(", ", unit, thing, wood);
    Pressed pressed = pressed(job, drafts(unit, thing, wood));
    assertThat(pressed.asked()).as(job).isEmpty();
    return pressed.all();
  }

  private static List<String> drafts(String unit, String thing, String wood) {
    boolean metric = unit.equals("mm");
    Map<String, String> answers =
        Map.of(
            "unit",
            unit,
            "holds",
            thing,
            "wood",
            wood,
            "back",
            "applied",
            "width",
            metric ? "3048" : "60",
            "ceiling",
            metric ? "2134" : "96");
    return ((Survey.Outcome.Drafts) new Survey(answers).job()).texts();
  }
}
