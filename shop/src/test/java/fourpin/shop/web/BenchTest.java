package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.bench.Step;
import fourpin.casework.Feature;
import fourpin.job.Job;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.Planner;
import fourpin.shop.file.JobReader;
import fourpin.shop.file.Opened;
import fourpin.shop.file.ShopFiles;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bench page and its ticks. */
class BenchTest {

  private static final Path JOB = Path.of("..", "examples", "reading-room.yaml");
  private static final String PLAN = "0123456789abcdef0123456789abcdef";

  /** The shop that examples name. */
  private static final ShopFiles SHOP =
      new ShopFiles() {
        @Override
        public Optional<Opened> standard() {
          return Optional.empty();
        }

        @Override
        public Opened named(String name) {
          return Opened.open(Path.of("..", "examples", "shop.yaml"), "it is there", "it is one");
        }
      };

  @TempDir static Path folder;

  private static Caller caller;
  private static String job;

  @BeforeAll
  static void start() throws IOException {
    caller = Caller.at(folder);
    job = caller.bring(Files.readString(JOB));
  }

  @AfterAll
  static void stop() {
    caller.close();
  }

  private static Plan plan() throws IOException {
    return plan(JOB);
  }

  private static Plan plan(Path file) throws IOException {
    return switch (JobReader.read(Files.readAllBytes(file), SHOP)) {
      case JobReader.Outcome.Good(Job read) -> Planner.plan(read);
      case JobReader.Outcome.Refused refused -> throw new IllegalStateException(refused.toString());
    };
  }

  private static String plain(String html) {
    return html.replaceAll("<[^>]*>", "")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }

  @Test
  void everyStepStandsThereWithItsCautionsNumbersAndCheck() throws IOException {
    String[] cards = caller.get(job + "/bench").body().split("<article class=\"step\"");
    List<PlannedStep> steps = plan().steps();
    assertThat(cards).hasSize(steps.size() + 1);
    for (PlannedStep step : steps) {
      String card = plain(cards[step.number()]);
      assertThat(card).contains(step.words()).contains(step.check());
      assertThat(step.items()).allMatch(card::contains);
      for (Caution caution : step.cautions()) {
        assertThat(card.replaceAll("\\s+", " "))
            .contains(caution.hazard() + ": " + caution.text().replaceAll("\\s+", " "));
      }
      if (!step.sheet().isEmpty()) {
        assertThat(cards[step.number()]).as("set-up of step " + step.number()).contains("<svg");
      }
    }
  }

  /** Who opens the page from a code never sees the drawing with its findings. */
  @Test
  void aPlanThatMustNotBeCutSaysSoAboveItsSteps() throws IOException {
    String refused =
        caller.bring(Files.readString(Path.of("..", "examples", "music-library.yaml")));
    String words = Judgement.of(plan(Path.of("..", "examples", "music-library.yaml"))).words();
    assertThat(words).startsWith("Do not cut yet");
    assertThat(head(refused)).contains(words);
    assertThat(head(job)).doesNotContain("Do not cut");
  }

  private static String head(String of) {
    return plain(caller.get(of + "/bench").body().split("<main>")[0]);
  }

  /** Holes of the case's own parts: each is counted in one step, in as many copies as are made. */
  @Test
  void everyHoleOfTheCaseIsCountedInOneStep() throws IOException {
    Plan plan = plan();
    String[] cards = caller.get(job + "/bench").body().split("<article class=\"step\"");
    long bored =
        plan.cases().stream()
            .mapToLong(
                built ->
                    built.order().quantity()
                        * built.parts().stream()
                            .flatMap(p -> p.features().stream())
                            .filter(f -> f instanceof Feature.Hole)
                            .count())
            .sum();
    long counted = 0;
    for (PlannedStep step : plan.steps()) {
      List<String> said = Caller.all(cards[step.number()], "data-holes=\"(\\d+)\"");
      assertThat(said).as("step " + step.number()).hasSize(step.holes() > 0 ? 1 : 0);
      counted += said.stream().mapToLong(Long::parseLong).sum();
    }
    assertThat(bored).isPositive();
    assertThat(counted).isEqualTo(bored);
  }

  /**
   * Each step that is on a sheet has a picture of its own, its number in it where a guide is moved.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "reading-room.yaml",
        "ways/centring-guide.yaml",
        "ways/short-guide.yaml",
        "ways/router-guide.yaml",
        "ways/drill-press.yaml"
      })
  void eachStepOnASheetHasItsPictures(String name) throws IOException {
    Plan plan = plan(Path.of("..", "examples").resolve(name));
    BenchPage page = BenchPage.of(plan, "/jobs/one");
    for (PlannedStep step : plan.steps()) {
      List<String> pictures = page.cards().get(step.number() - 1).pictures();
      if (!step.sheet().isEmpty()) {
        assertThat(pictures).as("step " + step.number()).hasSizeBetween(1, step.sheet().size());
      }
      if (step.typed().stream().anyMatch(t -> t instanceof Step.BoreThrough)) {
        assertThat(plain(pictures.getFirst())).contains("step " + step.number() + ":");
      }
    }
  }

  /**
   * Drawings have names of their own for lines and letters, which the page's rules must not meet.
   */
  @Test
  void rulesOfThePageLeaveThePicturesAlone() {
    String page = caller.get(job + "/bench").body();
    Set<String> drawn = new HashSet<>();
    Caller.all(page, "(?s)(<svg.*?</svg>)")
        .forEach(svg -> drawn.addAll(Caller.all(svg, "class=\"([^\"]*)\"")));
    assertThat(drawn).isNotEmpty();
    assertThat(Caller.all(caller.get("/own/bench.css").body(), "(?m)^\\s*\\.([a-z-]+)\\s*[,{]"))
        .isNotEmpty()
        .doesNotContainAnyElementsOf(drawn);
  }

  @Test
  void thePageShowsItselfWithoutAnythingFromElsewhere() {
    String page = caller.get(job + "/bench").body();
    assertThat(Caller.all(page, "(?:src|href)=\"([^\"#]*)\"")).allMatch(a -> a.startsWith("/"));
    assertThat(page).doesNotContain(" style=", "<style", "onclick=");
    assertThat(caller.get("/own/bench-worker.js").headers().firstValue("Service-Worker-Allowed"))
        .contains("/jobs/");
  }

  private static HttpResponse<String> say(String json) {
    return caller.send(
        caller
            .request(job + "/ticks")
            .header("Origin", caller.origin())
            .header("Content-Type", "application/json")
            .header("Fourpin-Token", caller.token())
            .POST(BodyPublishers.ofString(json, StandardCharsets.UTF_8)));
  }

  private static String ticks(String plan, long said, String state, int counted) {
    return String.format(
        Locale.ROOT,
        "{\"plan\":\"%s\",\"sent\":%d,\"ticks\":[{\"step\":\"7\",\"state\":\"%s\",\"counted\":%d,\"said\":%d}]}",
        plan,
        said,
        state,
        counted,
        said);
  }

  private static String held(String plan) {
    return Caller.first(untimed(caller.get(job + "/ticks?plan=" + plan)), "\"ticks\":(\\[.*])");
  }

  private static String untimed(HttpResponse<String> answer) {
    return answer.body().replaceAll("\"at\":\\d+,", "");
  }

  private static String shown(String own) {
    return Caller.first(caller.get(own + "/bench").body(), "data-plan=\"([^\"]*)\"");
  }

  /** A page that is open meanwhile shows sizes that are no longer right. */
  @Test
  void whoAsksForTicksIsToldWhichStepsTheJobHasByNow() {
    String own = caller.bring(Caller.readingRoom());
    String plan = shown(own);
    assertThat(caller.get(own + "/ticks?plan=" + plan).body())
        .contains("\"newest\":\"" + plan + "\"");
    caller.submit(
        own + "/put",
        "seen",
        caller.seen(own),
        "case",
        "bookcase",
        "field",
        "outside_width",
        "value",
        "81");
    assertThat(caller.get(own + "/ticks?plan=" + plan).body())
        .contains("\"newest\":\"" + shown(own) + "\"")
        .doesNotContain(plan);
  }

  /** Said four seconds before it was sent, by a clock that is years behind. */
  @Test
  void whenATickWasSaidIsToldByTheClockOfTheServer() {
    String plan = PLAN.replace('0', '2');
    String said = ticks(plan, 1_000, "done", 0).replace("\"sent\":1000", "\"sent\":5000");
    String answer = say(said).body();
    long at = Long.parseLong(Caller.first(answer, "\"at\":(\\d+)"));
    long now = Long.parseLong(Caller.first(answer, "\"now\":(\\d+)"));
    assertThat(now - at).isBetween(4_000L, 60_000L);
  }

  @Test
  void ticksAreTakenOnceAndTheLastWordHolds() {
    String held =
        "[{\"step\":\"7\",\"state\":\"done\",\"counted\":56,\"device\":\"this machine\"}]";
    assertThat(held(PLAN)).isEqualTo("[]");
    assertThat(untimed(say(ticks(PLAN, 2_000, "done", 56)))).contains(held);
    assertThat(untimed(say(ticks(PLAN, 1_000, "open", 12)))).as("said earlier").contains(held);
    assertThat(untimed(say(ticks(PLAN, 2_000, "done", 56)))).as("said again").contains(held);
    assertThat(held(PLAN)).isEqualTo(held);
    assertThat(say(ticks(PLAN, 3_000, "open", 0)).body()).contains("\"open\"");
    assertThat(held(PLAN.replace('0', '1'))).as("of other steps").isEqualTo("[]");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "null",
        "{}",
        "{\"plan\":\"0123456789abcdef0123456789abcdef\",\"sent\":1}",
        "{\"plan\":\"'; drop table tick; --\",\"sent\":1,\"ticks\":[]}",
        "{\"plan\":\"0123456789abcdef0123456789abcdef\",\"sent\":-1,\"ticks\":[]}",
        "{\"plan\":\"0123456789abcdef0123456789abcdef\",\"sent\":9223372036854775807,\"ticks\":[]}",
        "{\"plan\":\"0123456789abcdef0123456789abcdef\",\"sent\":1,\"ticks\":[null]}",
        "{\"plan\":\"0123456789abcdef0123456789abcdef\",\"sent\":1,\"ticks\":[{\"step\":\"7\",\"state\":\"gone\",\"counted\":1,\"said\":1}]}",
        "{\"plan\":\"0123456789abcdef0123456789abcdef\",\"sent\":1,\"ticks\":[{\"step\":\"7\",\"state\":\"done\",\"counted\":-1,\"said\":1}]}",
        "{\"plan\":\"0123456789abcdef0123456789abcdef\",\"sent\":1,\"ticks\":[[[[[[[[]]]]]]]]}",
      })
  void whatAreNoTicksIsRefused(String json) {
    assertThat(say(json).statusCode()).isEqualTo(400);
  }

  @Test
  void onlyJobsThatAreThereHaveABench() {
    assertThat(caller.get("/jobs/none/bench").statusCode()).isEqualTo(404);
    assertThat(caller.get("/jobs/none/ticks?plan=" + PLAN).statusCode()).isEqualTo(404);
    assertThat(caller.get(job + "/ticks").statusCode()).isEqualTo(400);
  }
}
