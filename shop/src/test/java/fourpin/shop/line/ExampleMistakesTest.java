package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Removal;
import fourpin.bench.Span;
import fourpin.bench.Step;
import fourpin.bench.WorkedPiece;
import fourpin.boring.BayGrid;
import fourpin.job.Job;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.Mistake;
import fourpin.plan.MistakeReport;
import fourpin.plan.MistakeReport.Check;
import fourpin.plan.MistakeReport.Outcome;
import fourpin.plan.MistakeReport.Rescue;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.Planner;
import fourpin.sheets.packet.Packet;
import fourpin.sheets.pages.Booklet;
import fourpin.sheets.pages.PdfWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every mistake at boring in every way that there is an example of: wrong panels differ from right
 * ones, and what is printed to tell them apart is measured anew on both.
 */
class ExampleMistakesTest {

  /** "shelf 1-S2 on level 18 of bay 1 (underside 33 11/32 in up)". */
  private static final Pattern PLACE =
      Pattern.compile("(?:shelf (\\S+) on )?level (\\d+) of bay (\\d+) \\(underside ([^)]+) up\\)");

  /** Between the strips that a blank is ripped into. */
  private static final Pattern PLUS = Pattern.compile("\\+");

  private static Plan plan(String example) {
    return PlannedExamples.plan(Path.of("..", "examples", example + ".yaml"));
  }

  private static char letter(MistakeReport report) {
    return switch (report.outcome()) {
      case Outcome.Spoilt _ -> 's';
      case Outcome.Harmless _ -> 'h';
      case Outcome.Impossible _ -> 'i';
    };
  }

  /** s for spoilt, h for harmless, i for impossible; more letters for more mistakes alike. */
  @ParameterizedTest
  @CsvSource({
    // way, end for end, wrong edge, panel turned, two left, skipped, stop, other bit
    "ways/hardboard-strip, s, s, s, s, s, s, s",
    "ways/centring-guide,  s, s, s, s, s, s, s",
    "ways/router-guide,    s, s, s, s, s, s, s",
    "ways/steel-strap,     s, s, s, s, s, s, s",
    "ways/drill-press,     s, s, s, s, s, s, s",
    "ways/story-stick,     s, s, s, s, s, s, s",
    "ways/marked-in-pairs, s, s, s, s, s, s, s",
    "ways/machine,         i, s, s, s, s, s, s",
    "reading-room,         s, s, s, s, s, s, s",
    "music-library,        s, s, s, s, s, s, s",
    // Standards upside down, and cut at the wrong end by whole pitches; a pass for a hole.
    "pottery-cabinet,      sh, s, s, s, s, s, s",
    // Whole holes on the middle line; a rip off it, and halves swapped.
    "tool-cupboard,        s, hs, s, hs, s, i, s",
  })
  void everyMistakeIsMadeInEveryWay(
      String example,
      String endForEnd,
      String wrongEdge,
      String turned,
      String secondLeft,
      String skipped,
      String stop,
      String bit) {
    Map<Mistake, String> made = made(example);
    made.keySet()
        .removeAll(Set.of(Mistake.MASKED_HOLE, Mistake.SPACER_FORGOTTEN, Mistake.WRONG_SPACER));
    assertThat(made)
        .isEqualTo(
            Map.of(
                Mistake.END_FOR_END, endForEnd,
                Mistake.WRONG_EDGE, wrongEdge,
                Mistake.PANEL_TURNED, turned,
                Mistake.SECOND_LEFT, secondLeft,
                Mistake.HOLE_SKIPPED, skipped,
                Mistake.STOP_SLIPPED, stop,
                Mistake.OTHER_BIT, bit));
  }

  /** Strips that are sold have holes to tape over and need spacers; "-" where there are none. */
  @ParameterizedTest
  @CsvSource({
    "ways/hardboard-strip, s, s, s",
    "ways/steel-strap,     s, s, s",
    "ways/centring-guide,  -, -, -",
    "ways/router-guide,    -, -, -",
    "ways/drill-press,     -, -, -",
    "reading-room,         -, s, -",
  })
  void whatKeepsGuidesRightIsForgotten(
      String example, String tape, String spacer, String otherSpacer) {
    Map<Mistake, String> made = made(example);
    assertThat(made.getOrDefault(Mistake.MASKED_HOLE, "-")).isEqualTo(tape);
    assertThat(made.getOrDefault(Mistake.SPACER_FORGOTTEN, "-")).isEqualTo(spacer);
    assertThat(made.getOrDefault(Mistake.WRONG_SPACER, "-")).isEqualTo(otherSpacer);
  }

  /**
   * Its partitions stand on the bottom and go by a spacer under the guide's block: without it all
   * four rows of one are off, where the other spacer is needed for one row of each panel.
   */
  @Test
  void theSpacerIsForgottenThatMostDependsOn() {
    MistakeReport report =
        plan("reading-room").mistakes().stream()
            .filter(r -> r.mistake() == Mistake.SPACER_FORGOTTEN)
            .findFirst()
            .orElseThrow();
    assertThat(report.part()).isEqualTo("P1");
    assertThat(report.what())
        .isEqualTo(
            "For each row of P1 the guide is laid on without its spacer bookcase E1 (4 5/32 in).");
    assertThat(report.test()).contains("(4 5/32 in more).");
  }

  private static Map<Mistake, String> made(String example) {
    return plan(example).mistakes().stream()
        .collect(
            Collectors.groupingBy(
                r -> r.mistake().like(),
                HashMap::new,
                Collectors.mapping(r -> String.valueOf(letter(r)), Collectors.joining())));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ways/hardboard-strip",
        "ways/centring-guide",
        "ways/short-guide",
        "ways/router-guide",
        "ways/steel-strap",
        "ways/drill-press",
        "ways/story-stick",
        "ways/marked-in-pairs",
        "ways/machine",
        "reading-room",
        "music-library",
        "pottery-cabinet",
        "tool-cupboard"
      })
  void whatIsPrintedTellsWrongPanelsFromRightOnes(String example) {
    Plan plan = plan(example);
    for (MistakeReport report : plan.mistakes()) {
      switch (report.outcome()) {
        case Outcome.Spoilt spoilt -> {
          differs(plan, report, spoilt);
          showsAtAShelf(plan, report);
        }
        case Outcome.Harmless(String why) -> saysWhy(report, why, report.shows());
        case Outcome.Impossible(String why) -> saysWhy(report, why, report.what());
      }
      assertThat(report.test()).as(report.mistake().title()).isNotEmpty();
      assertThat(report.how()).as(report.mistake().title()).isNotEmpty();
    }
    assertThat(pages(plan)).isEqualTo(1);
  }

  /**
   * What is marked or bored in one act goes wrong in all that lies in it: lines are squared across
   * both uprights of a bay, blanks for cleats bored in one stack.
   */
  @ParameterizedTest
  @CsvSource({
    "ways/drill-press,     L R",
    "ways/marked-in-pairs, L R",
    "ways/story-stick,     L R",
    "tool-cupboard,        1-LF 1-RF",
    "ways/hardboard-strip, L",
    "ways/router-guide,    L",
    "ways/machine,         L",
    "reading-room,         L",
    "music-library,        L P1",
  })
  void oneActSpoilsAllThatItTouches(String example, String parts) {
    Plan plan = plan(example);
    Set<Mistake> ofTheStick = Set.of(Mistake.END_FOR_END, Mistake.HOLE_SKIPPED);
    for (MistakeReport report : plan.mistakes()) {
      if (report.outcome() instanceof Outcome.Spoilt spoilt) {
        List<String> touched = touched(plan, report.part());
        assertThat(touched).containsAll(spoilt.alike());
        saysWhatIsAlike(report, spoilt);
        if (ofTheStick.contains(report.mistake().like())) {
          assertThat(spoilt.alike()).as(report.what()).isEqualTo(touched);
          assertThat(String.join(" ", all(report.part(), touched))).isEqualTo(parts);
        }
      }
    }
  }

  private static List<String> all(String part, List<String> others) {
    return Stream.concat(Stream.of(part), others.stream()).toList();
  }

  /** Where both hands are off alike shelves do not slope, and a square across tells nothing. */
  private static void saysWhatIsAlike(MistakeReport report, Outcome.Spoilt spoilt) {
    boolean alike = !spoilt.alike().isEmpty();
    assertThat(report.shows().contains("on both hands")).as(report.shows()).isEqualTo(alike);
    if (alike) {
      assertThat(report.shows())
          .contains(", in " + spoilt.alike().getFirst() + " alike.")
          .doesNotContain("rocks", "slopes");
      assertThat(report.test()).doesNotContain("Later");
    }
  }

  /** What is marked or bored by the same act, as the steps of the plan have it. */
  private static List<String> touched(Plan plan, String part) {
    return plan.steps().stream()
        .filter(s -> s.words().contains("the stack") || isSquaring(s))
        .map(PlannedStep::sheet)
        .map(s -> s.stream().map(f -> PLUS.split(f.part())[0]).toList())
        .filter(s -> s.contains(part))
        .flatMap(List::stream)
        .filter(p -> !p.equals(part))
        .toList();
  }

  private static boolean isSquaring(PlannedStep step) {
    return step.typed().stream().anyMatch(t -> t instanceof Step.SquareAcross);
  }

  /**
   * Strips no longer than their pitch was measured over, 24 and 18 in, are moved along sides of 48
   * in; in the strap every second hole of 3/4 in is used, so that the next hole is 1 1/2 in off.
   */
  @ParameterizedTest
  @CsvSource({
    "ways/hardboard-strip, 1 in less",
    "ways/steel-strap, 1 1/2 in less",
  })
  void aPinInTheWrongHoleIsSeenWhereStripsAreShort(String example, String off) {
    Job job = plan(example).job();
    List<Tool> tools = job.shop().tools().stream().map(ExampleMistakesTest::shortened).toList();
    Plan plan = Planner.plan(job.with(new Shop(job.shop().name(), tools)));
    MistakeReport report =
        plan.mistakes().stream()
            .filter(r -> r.mistake() == Mistake.PIN_IN_WRONG_HOLE)
            .findFirst()
            .orElseThrow();
    differs(plan, report, (Outcome.Spoilt) report.outcome());
    assertThat(report.test()).contains("(" + off + ").");
    assertThat(report.shows()).containsPattern(PLACE);
  }

  private static Tool shortened(Tool tool) {
    return tool instanceof PerforatedStrip s
        ? new PerforatedStrip(
            s.name(),
            s.kind(),
            s.hole(),
            s.over(),
            s.spaces(),
            s.fromEnd(),
            s.fromEdge(),
            s.thickness(),
            s.over(),
            s.width(),
            s.toBuy())
        : tool;
  }

  private static void saysWhy(MistakeReport report, String why, String said) {
    assertThat(said).as(report.mistake().title()).contains(why).hasSizeGreaterThan(why.length());
    assertThat(report.rescue()).isEqualTo(Rescue.NOT_NEEDED);
  }

  private static void differs(Plan plan, MistakeReport report, Outcome.Spoilt spoilt) {
    String title = report.mistake().title();
    LengthStyle style = plan.job().style();
    Check check = spoilt.check();
    Length wrong = check.wrong().orElseThrow();
    assertThat(spoilt.wrong()).as(title).isNotEqualTo(spoilt.right());
    assertThat(measured(spoilt.right())).as(title).contains(check.right());
    assertThat(measured(spoilt.wrong())).as(title).contains(wrong);
    assertThat(style.text(wrong)).as(title).isNotEqualTo(style.text(check.right()));
    assertThat(report.test())
        .as(title)
        .contains(style.text(check.right()), ", not ", style.text(wrong.abs()));
  }

  /** All that a rule can be laid to on a piece, and its own ends. */
  private static List<Length> measured(WorkedPiece piece) {
    List<Length> all = new ArrayList<>(List.of(Length.ZERO, piece.length(), piece.width()));
    for (Removal removal : piece.removals()) {
      switch (removal) {
        case Removal.Bore b -> {
          fromBothSides(all, b.length(), piece.length());
          fromBothSides(all, b.width(), piece.width());
          all.add(b.diameter());
          all.add(b.depth());
        }
        case Removal.Block b -> {
          ends(all, b.length(), piece.length());
          ends(all, b.width(), piece.width());
          all.add(b.width().size());
          all.add(b.thickness().size());
        }
      }
    }
    return all;
  }

  private static void ends(List<Length> all, Span span, Length whole) {
    fromBothSides(all, span.from(), whole);
    fromBothSides(all, span.to(), whole);
  }

  private static void fromBothSides(List<Length> all, Length at, Length whole) {
    all.add(at);
    all.add(whole.minus(at));
  }

  /** The shelf, level and height that are named are those of the plan; no shelf where none lies. */
  private static void showsAtAShelf(Plan plan, MistakeReport report) {
    Optional<MatchResult> place = PLACE.matcher(report.shows()).results().findFirst();
    assertThat(place).as(report.shows()).isPresent();
    MatchResult named = place.orElseThrow();
    BayGrid grid =
        plan.grids().stream()
            .filter(g -> g.caseName().equals(report.caseName()))
            .filter(g -> g.bay() == Integer.parseInt(named.group(3)))
            .findFirst()
            .orElseThrow();
    int level = Integer.parseInt(named.group(2));
    assertThat(grid.seats().stream().filter(s -> s.level() == level).map(BayGrid.Seat::shelf))
        .as(report.shows())
        .isEqualTo(Optional.ofNullable(named.group(1)).stream().toList());
    assertThat(plan.job().style().text(grid.levels().get(level - 1).underside()))
        .isEqualTo(named.group(4));
  }

  /** Behind another section, since the title of the packet stands on the first page. */
  private static int pages(Plan plan) {
    Booklet whole = Packet.compose(plan).booklet();
    Booklet.Section first = whole.sections().getFirst();
    List<Booklet.Section> mistakes =
        whole.sections().stream()
            .filter(s -> s.title().equals("Before you drill the second panel"))
            .toList();
    assertThat(mistakes).hasSize(1);
    return pages(whole, List.of(first, mistakes.getFirst())) - pages(whole, List.of(first));
  }

  private static int pages(Booklet whole, List<Booklet.Section> sections) {
    return PdfWriter.pages(
        new Booklet(
            whole.title(),
            whole.subtitle(),
            whole.job(),
            whole.revision(),
            whole.warning(),
            whole.paper(),
            sections));
  }
}
