package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.shop.edit.Edit;
import fourpin.shop.edit.Edited;
import fourpin.shop.edit.JobText;
import fourpin.shop.file.JobReader;
import fourpin.shop.store.DataPlace;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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

  private SqlStore store;
  private Desk desk;

  @BeforeEach
  void open() {
    open("shop.db");
  }

  private void open(String file) {
    store = SqlStore.open(new DataPlace.InFile(folder.resolve(file)), InstantSource.system());
    desk = new Desk(store.documents(), store.layouts());
  }

  @AfterEach
  void close() {
    store.close();
  }

  private State brought(List<String> drafts) {
    Desk.Taking taking = desk.createBest(drafts, "hall", "brought");
    assertThat(taking).isInstanceOf(Desk.Taking.Taken.class);
    return desk.newest(((Desk.Taking.Taken) taking).revision().document()).orElseThrow();
  }

  /** Of all presses on a job. @param asked words of cures that the maker is asked about */
  private record Pressed(int all, List<String> asked) {}

  private Pressed pressed(String job, List<String> drafts) {
    State seen = brought(drafts);
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
    Curing.Trial trial = new Curing(desk, seen, finding).tried(remedy);
    assertThat(trial).as(what).isInstanceOf(Curing.Trial.Would.class);
    Curing.Trial.Would would = (Curing.Trial.Would) trial;
    Plan then = plan(edited(seen.text(), would.edits()));
    assertThat(then.findings())
        .as(what)
        .noneMatch(f -> f.kind().equals(finding.kind()) && f.place().equals(finding.place()));
    Set<String> errors = errors(then);
    errors.removeAll(errors(seen.plan()));
    assertThat(would.spoilt()).as(what).extracting(Finding::kind).containsAll(errors);
    return !would.spoilt().isEmpty();
  }

  private static String edited(JobText text, List<Edit> edits) {
    JobText now = text;
    for (Edit edit : edits) {
      now = ((Edited.Done) now.with(edit)).text();
    }
    return now.text();
  }

  private Plan plan(String text) {
    JobReader.Outcome read =
        JobReader.read(text.getBytes(StandardCharsets.UTF_8), new KeptShop(store.documents()));
    assertThat(read).as(text).isInstanceOf(JobReader.Outcome.Good.class);
    return Planner.plan(((JobReader.Outcome.Good) read).job());
  }

  private static Set<String> errors(Plan plan) {
    return plan.findings().stream()
        .filter(f -> f.severity() == Severity.ERROR || f.severity() == Severity.REFUSED)
        .map(Finding::kind)
        .collect(Collectors.toSet());
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
      close();
      open(job.getFileName() + ".db");
      String kept = text(job.resolveSibling(shop.group(1)).normalize());
      store.documents().createShop(new fourpin.shop.store.Edit("shop", kept, "hall", "brought"));
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
