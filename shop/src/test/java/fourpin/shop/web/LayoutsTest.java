package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Layout;
import fourpin.cutting.LowerBound;
import fourpin.cutting.Part;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StripCutter;
import fourpin.job.Job;
import fourpin.plan.CutPlanner;
import fourpin.plan.FoundLayouts;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.shop.edit.JobText;
import fourpin.shop.file.JobReader;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.KeptLayout;
import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The longer search for layouts. */
class LayoutsTest {

  @TempDir Path folder;

  private static State state() throws IOException {
    return state(FoundLayouts.NONE);
  }

  private static State state(FoundLayouts planned) throws IOException {
    Job job =
        switch (JobReader.read(Caller.readingRoom().getBytes(StandardCharsets.UTF_8))) {
          case JobReader.Outcome.Good(Job good) -> good;
          case JobReader.Outcome.Refused refused ->
              throw new IllegalStateException(refused.toString());
        };
    RevisionId id = new RevisionId("r");
    return new State(
        new Revision(
            id,
            new DocumentId("d"),
            1,
            Revision.Kind.EDIT,
            id,
            "n",
            Instant.EPOCH,
            "b",
            "w",
            Optional.empty()),
        JobText.of(Caller.readingRoom()),
        job,
        Planner.plan(job, planned),
        new FoundBefore(List.of()));
  }

  /** A clock that has gone on by an hour whenever it is asked: the time is over at once. */
  @Test
  void aSearchEndsWithItsTimeAndEveryPartHasAPlace() throws IOException {
    List<KeptLayout> kept = new ArrayList<>();
    State state = state();
    Search search = hurried(state, kept);
    assertThat(search.isGoing()).isTrue();
    search.run();
    search.enough();
    assertThat(said(search)).as("a word too late stops nothing").isEqualTo("The search is done.");
    assertThat(search.progress())
        .isInstanceOfSatisfying(
            Search.Progress.Done.class,
            done -> {
              assertThat(done.plan().complete()).isTrue();
              assertThat(done.lots()).allMatch(lot -> lot.near().gap().value().value() >= 0);
              assertThat(done.lots()).hasSize(lots(state.plan()));
            });
    assertThat(kept).as("what the plan has was found by no longer search").isEmpty();
  }

  /** A clock that has gone on by an hour whenever it is asked. */
  private static Search hurried(State state, List<KeptLayout> kept) {
    AtomicLong clock = new AtomicLong();
    return new Search(
        state,
        Duration.ofSeconds(10),
        () -> clock.addAndGet(Duration.ofHours(1).toNanos()),
        kept::addAll);
  }

  /** Each line of parts on stock of its own: more of it than is needed. */
  private static Layout poor(SheetProblem problem) {
    List<SheetPattern> patterns = new ArrayList<>();
    for (Part part : problem.parts()) {
      SheetProblem alone = new SheetProblem(List.of(part), problem.stock(), problem.saw());
      patterns.addAll(new StripCutter().cut(alone).patterns());
    }
    return new Layout(patterns, List.of(), new LowerBound(0, 1));
  }

  private static FoundLayouts poor() {
    return problem -> Optional.of(new FoundLayouts.Found(poor(problem), Optional.empty()));
  }

  @Test
  void whatIsBetterIsKeptAndSaysSo() throws IOException {
    List<KeptLayout> kept = new ArrayList<>();
    State state = state(poor());
    hurried(state, kept).run();
    assertThat(kept).isNotEmpty();
    Plan again = Planner.plan(state.job(), new FoundBefore(kept));
    for (int i = 0; i < again.materials().size(); i++) {
      List<StockLayout> layouts = again.materials().get(i).layouts();
      List<StockLayout> planned = state.plan().materials().get(i).layouts();
      boolean better = CutPlanner.isBetter(state.job(), layouts, planned);
      assertThat(layouts)
          .allSatisfy(
              l ->
                  assertThat(l.origin())
                      .isEqualTo(
                          Optional.of("found by a longer search for change 1")
                              .filter(_ -> better)));
    }
  }

  private static int lots(Plan plan) {
    return plan.materials().stream().mapToInt(m -> m.layouts().size()).sum();
  }

  /** The clock stands, so that nothing but the word ends it. */
  @Test
  void goodEnoughEndsIt() throws IOException {
    Search search = new Search(state(), Duration.ofDays(1), () -> 0L, _ -> {});
    assertThat(said(search)).isEqualTo("Waiting for another search to end.");
    search.enough();
    search.run();
    assertThat(search.progress())
        .isInstanceOfSatisfying(
            Search.Progress.Done.class, done -> assertThat(done.plan().complete()).isTrue());
    assertThat(said(search))
        .isEqualTo("Stopped before its time, after 0 s. The best it had by then stands below.");
  }

  private static String said(Search search) {
    return LayoutsPage.of(search.state(), Optional.of(search), "", "").says();
  }

  /** Each look at the clock finds it a second later; the word comes while it goes on, and after. */
  @Test
  void whatIsStoppedSaysSoFromTheWordOn() throws IOException {
    AtomicLong clock = new AtomicLong();
    List<String> before = new ArrayList<>();
    List<String> after = new ArrayList<>();
    Search[] one = new Search[1];
    Search search =
        new Search(
            state(),
            Duration.ofDays(1),
            () -> clock.addAndGet(Duration.ofSeconds(1).toNanos()),
            _ -> {
              before.add(said(one[0]));
              one[0].enough();
              after.add(said(one[0]));
            });
    one[0] = search;
    search.run();
    assertThat(before).first().asString().startsWith("Searching for ");
    assertThat(after).first().asString().startsWith("Stopping; ");
    assertThat(said(search)).startsWith("Stopped before its time, after ");
  }

  @Test
  void aPlanWantsWhatItsLayoutsHold() throws IOException {
    Plan plan = state().plan();
    assertThat(CutPlanner.wanted(plan).stream().map(w -> w.material()))
        .containsExactlyElementsOf(
            plan.materials().stream().map(m -> m.material().name()).toList());
  }

  /**
   * The cases of the reading room from plywood in six sizes at odd prices: so many sums of sheets
   * lie between the least known and the best found that the search goes on, ever to find a better
   * one, where one size is soon proven.
   */
  private static String hardToProve() {
    String one = "    - material: oak-ply\n      length: 96\n      width: 48\n      price: 128\n";
    String other = "    - material: oak-ply\n      length: %s\n      width: %s\n      price: %s\n";
    assertThat(Caller.readingRoom()).containsOnlyOnce(one);
    String sizes =
        Stream.of(
                "96 48 127.93",
                "97 49 131.71",
                "120 60 197.57",
                "84 36 86.41",
                "108 42 123.19",
                "90 54 133.37")
            .map(size -> other.formatted((Object[]) size.split(" ")))
            .collect(Collectors.joining());
    return Caller.readingRoom().replace(one, sizes);
  }

  @Test
  void aSearchIsBegunOnceEndedByAPressAndItsFilesComeOut() throws IOException {
    try (Caller caller = Caller.at(folder)) {
      String job = caller.bring(hardToProve());
      assertThat(caller.get(job + "/layouts.zip").statusCode()).isEqualTo(404);
      HttpResponse<String> begun = caller.submit(job + "/layouts", "seconds", "1800");
      assertThat(begun.statusCode()).isEqualTo(303);
      assertThat(caller.submit(job + "/layouts", "seconds", "10").statusCode()).isEqualTo(409);
      String page = ended(caller, job);
      assertThat(page).containsPattern("Stopped before its time, after \\d+ s\\.");
      assertThat(new String(caller.bytes(job + "/layouts.zip"), StandardCharsets.ISO_8859_1))
          .startsWith("PK")
          .contains("cutting.pdf");
    }
  }

  private static String ended(Caller caller, String job) {
    assertThat(caller.submit(job + "/layouts/enough").statusCode()).isEqualTo(303);
    String page = caller.get(job + "/layouts").body();
    while (page.contains("every 2s")) {
      Thread.onSpinWait();
      page = caller.get(job + "/layouts").body();
    }
    return page;
  }

  /** With a narrower case its parts are others; taken back, they are the same again. */
  @Test
  void whatWasFoundIsInTheFilesUntilThePartsChange() throws IOException {
    try (Caller caller = Caller.at(folder)) {
      String job = caller.bring(Caller.readingRoom());
      List<KeptLayout> kept = new ArrayList<>();
      hurried(state(poor()), kept).run();
      caller.keep(job, kept);
      assertThat(plan(caller, job)).contains("found by a longer search for change 1");
      HttpResponse<String> narrower = narrow(caller, job);
      assertThat(narrower.body()).contains("the packet has its own again");
      assertThat(plan(caller, job)).doesNotContain("longer search");
      assertThat(caller.get(job + "/layouts").body()).contains("the packet has its own again");
      caller.post(job + "/undo", "seen", caller.seen(job), "case", "bookcase");
      assertThat(plan(caller, job)).contains("found by a longer search for change 1");
    }
  }

  private static HttpResponse<String> narrow(Caller caller, String job) {
    return caller.post(
        job + "/put",
        "seen",
        caller.seen(job),
        "case",
        "bookcase",
        "field",
        "outside_width",
        "value",
        "78");
  }

  private static String plan(Caller caller, String job) throws IOException {
    byte[] zip = caller.bytes(job + "/packet.zip");
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      while (!in.getNextEntry().getName().endsWith("plan.json")) {
        in.closeEntry();
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "7", "99999", "x"})
  void itHasOneOfTheTimesOnThePage(String seconds) throws IOException {
    try (Caller caller = Caller.at(folder)) {
      String job = caller.bring(Caller.readingRoom());
      assertThat(caller.submit(job + "/layouts", "seconds", seconds).statusCode()).isEqualTo(404);
    }
  }
}
