package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.BayGrid;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Method;
import fourpin.boring.way.WayAnswer;
import fourpin.casework.Face;
import fourpin.job.Job;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.PlannedStep.FaceUp;
import fourpin.plan.Planner;
import fourpin.sheets.SampleBorings;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.pages.Booklet;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.PdfWriter;
import fourpin.sheets.pages.Standards;
import fourpin.sheets.paint.Fractions;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Pages of boring, composed from ways that are set up by hand. */
class BoringPagesTest {

  /** Planning takes longer than composing the pages. */
  private static final Map<Job, Plan> PLANS = new ConcurrentHashMap<>();

  /** On Letter in inches and on A4 in millimetres, tall and low, one bay and several. */
  static Stream<Job> jobs() {
    return Stream.of(
        SampleJobs.readingRoom(),
        SampleJobs.musicLibrary(),
        SampleJobs.job("Low", "low", Unit.INCH, 1, "36"),
        SampleJobs.job("High", "high", Unit.MILLIMETRE, 5, "110"));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyWayIsComparedAndTheOneTakenIsMarked(Job job) throws IOException {
    Plan plan = PLANS.computeIfAbsent(job, Planner::plan);
    CaseBoring boring = SampleBorings.guided(plan).getFirst();
    String text = text(job, new WayPages(List.of(boring), new Words(job)).section());
    for (WayAnswer answer : boring.answers()) {
      assertThat(text).contains(plain(answer.way().title()));
      answer.reasons().forEach(r -> assertThat(text).contains(plain(r.what()), plain(r.remedy())));
    }
    assertThat(text)
        .contains(plain("→ " + Way.CENTRING_GUIDE.title()), plain(boring.because()))
        .contains(plain("Time, min"), plain("Cost, $"), "84.5", "84.50", "672")
        .as("a figure of one panel is not the way's")
        .doesNotContain("9876");
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void theGuideIsDrawnListedAndItsUseTold(Job job) throws IOException {
    Plan plan = PLANS.computeIfAbsent(job, Planner::plan);
    List<CaseBoring> borings = SampleBorings.guided(plan);
    Guide guide = ((Method.Guided) borings.getFirst().method()).guide();
    Plan bored = SampleBorings.plan(plan, borings);
    String text =
        text(job, new GuidePages(bored, new Words(job), Codes.NONE).section(new CautionSigns()));
    guide.holes().forEach(h -> assertThat(text).contains(plain(job.style().number(h.along()))));
    assertThat(text)
        .contains(plain("STOP BLOCK, THIS END DOWN ↓"), plain("FRONT EDGE →"))
        .contains(plain("tape over holes 1 to 2"))
        .contains(plain(job.style().text(guide.length()) + " from zero to the far end"), "MDF")
        .contains(plain("Where guide “" + guide.mark() + "” lies."));
  }

  @Test
  void aStripThatIsSoldTellsWhereItIsSawnAndWhichOfItsHolesIsTheFirst() throws IOException {
    Job job = SampleJobs.readingRoom();
    CaseBoring boring = SampleBorings.guided(PLANS.computeIfAbsent(job, Planner::plan)).getFirst();
    Method.Guided guided = (Method.Guided) boring.method();
    Guide g = guided.guide();
    Guide sold =
        new Guide(
            g.mark(),
            new Guide.Make.Sold(
                "steel strap",
                Tool.StripKind.STEEL,
                4,
                SampleJobs.in("13/32"),
                SampleJobs.in("3/32")),
            g.material(),
            g.length(),
            g.width(),
            g.thickness(),
            g.holes(),
            g.block());
    CaseBoring strap =
        with(boring, new Method.Guided(Method.How.BY_HAND, sold, guided.bit(), guided.clampings()));
    Plan bored = SampleBorings.plan(PLANS.computeIfAbsent(job, Planner::plan), List.of(strap));
    assertThat(
            text(
                job, new GuidePages(bored, new Words(job), Codes.NONE).section(new CautionSigns())))
        .contains(plain("saw 13/32 in off one end"), plain("before the centre of hole 4"))
        .contains(plain("Its hole 4, counted from that end as it was sold, becomes hole 1"))
        .contains(
            plain("Hole 3 of the strip, which shows 3/32 in beyond the block, is not counted"))
        .contains(plain("not beyond the block is not drawn and not counted."));
  }

  /** Of a bay, before and behind the cleats. */
  private static final int STRIPS = 4;

  /** Their centres lie half a saw cut beyond the strip, where nobody can measure. */
  @Test
  void halfHolesOfCleatStripsAreLeftToTheirBlanks() throws IOException {
    Job job = SampleJobs.onCleats();
    Plan plan = PLANS.computeIfAbsent(job, Planner::plan);
    String text = text(job, new PanelPages(plan, new Words(job)).section());
    assertThat(text.split(plain("Do not bore the strip"), -1)).hasSize(STRIPS + 1);
    assertThat(text.split(plain("back edge 1 1/2"), -1)).hasSize(STRIPS / 2 + 1);
    assertThat(text.split(plain("front edge 1 1/2"), -1)).hasSize(STRIPS / 2 + 1);
    assertThat(text).doesNotContain(plain("-1/16"), "-1/16", plain("1 9/16"));
  }

  private static CaseBoring with(CaseBoring boring, Method method) {
    List<WayAnswer> answers = new ArrayList<>(boring.answers());
    WayAnswer old = boring.answer(boring.chosen());
    answers.set(
        boring.chosen().ordinal(),
        new WayAnswer(
            old.way(),
            old.verdict(),
            old.reasons(),
            old.together(),
            Optional.of(method),
            old.purchases(),
            old.figures()));
    return new CaseBoring(
        boring.caseName(),
        boring.grids(),
        answers,
        boring.chosen(),
        boring.because(),
        boring.figures());
  }

  /** Each with its settings, its own steps word for word, and their cautions. */
  @ParameterizedTest
  @MethodSource("jobs")
  void thereIsOneSheetForEachFaceThatIsBored(Job job) throws IOException {
    Plan sample = PLANS.computeIfAbsent(job, Planner::plan);
    List<CaseBoring> borings = SampleBorings.guided(sample);
    Plan plan = SampleBorings.plan(sample, borings);
    BitSetting bit = ((Method.Guided) borings.getFirst().method()).bit();
    List<DrillingSheet> sheets = DrillingSheet.of(plan);
    String text =
        text(job, new DrillingPages(plan, new Words(job), Codes.NONE).section(new CautionSigns()));
    assertThat(sheets).hasSize(2 * plan.grids().size());
    for (DrillingSheet sheet : sheets) {
      FaceUp up = sheet.faces().getFirst();
      BayGrid grid =
          plan.grids().stream()
              .filter(g -> g.caseName().equals(sheet.built().order().name()))
              .filter(g -> g.bay() == sheet.bay(up).orElseThrow())
              .findFirst()
              .orElseThrow();
      Length end = sheet.built().part(up.part()).box().at(Face.BOTTOM);
      String page = text.substring(text.indexOf(plain(sheet.title())));
      assertThat(page)
          .contains(plain("side " + (up.face() == Face.LEFT ? "A" : "B") + " showing"))
          .contains(plain(job.style().number(bit.stop())))
          .contains(plain(job.style().text(grid.levels().getLast().height().minus(end))))
          .contains(plain("Strike out each copy that is bored and checked: 1 2"));
      for (PlannedStep step : sheet.steps()) {
        assertThat(page).contains(plain(step.number() + step.words()), plain(step.check()));
        step.items().forEach(i -> assertThat(page).contains(plain(i)));
        step.cautions().forEach(c -> assertThat(text).contains(plain(c.text())));
        step.cautions().forEach(c -> assertThat(page).contains(plain(c.essence())));
      }
    }
  }

  /** Printed twice a step would be ticked off twice, or on one page and not on the other. */
  @ParameterizedTest
  @MethodSource("jobs")
  void everyStepIsPrintedOnce(Job job) throws IOException {
    Plan sample = PLANS.computeIfAbsent(job, Planner::plan);
    Plan plan = SampleBorings.plan(sample, SampleBorings.guided(sample));
    Words words = new Words(job);
    String text =
        text(job, new GuidePages(plan, words, Codes.NONE).section(new CautionSigns()))
            + text(job, new DrillingPages(plan, words, Codes.NONE).section(new CautionSigns()))
            + text(job, new StepPages(plan, new Words(plan.job()), Codes.NONE).section());
    for (PlannedStep step : plan.steps()) {
      String first = step.items().isEmpty() ? step.words() : step.items().getFirst();
      assertThat(text).contains(plain(first));
    }
    assertThat(StepNumbers.in(Packet.compose(plan).booklet()))
        .containsExactlyInAnyOrderElementsOf(StepNumbers.of(plan));
    DrillingSheet sheet = DrillingSheet.of(plan).getFirst();
    int from = sheet.steps().getFirst().number();
    int to = sheet.steps().getLast().number();
    assertThat(text)
        .contains(
            plain("Steps " + from + " to " + to + " stand on the page “" + sheet.title() + "”"));
  }

  @Test
  void theStopIsASumOfHoleAndGuide() throws IOException {
    Job job = SampleJobs.readingRoom();
    Plan plan = PLANS.computeIfAbsent(job, Planner::plan);
    assertThat(
            text(
                job,
                new DrillingPages(
                        SampleBorings.plan(plan, SampleBorings.guided(plan)),
                        new Words(job),
                        Codes.NONE)
                    .section(new CautionSigns())))
        .contains(plain("3/8 hole + 1/4 guide = 5/8 in"));
  }

  @Test
  void markedAndProgrammedPanelsGetSheetsOfTheirOwn() throws IOException {
    assertThat(sheets(new Method.Marked(Method.How.BY_HAND, bit("brad-point bit"), List.of())))
        .contains(plain("prick every centre with a punch"), plain("its zero at the index end"))
        .contains(plain("its end mark"), plain("makes level 1 of the bay"))
        .contains(plain("to the full diameter, not to the point"));
    assertThat(sheets(new Method.Marked(Method.How.DRILL_PRESS, bit("brad-point bit"), List.of())))
        .contains(plain("the index edge to the fence, centre of the bit 1 1/2 in from the fence"))
        .contains(plain("the far edge to the fence"));
    assertThat(sheets(new Method.Programmed("the hall's machine", bit("cutter"))))
        .contains(plain("the hall's machine"))
        .contains(plain("zero is the lower left corner"), plain("zero is the lower right corner"));
    Plan plan = PLANS.computeIfAbsent(SampleJobs.readingRoom(), Planner::plan);
    Plan none = SampleBorings.plan(plan, SampleBorings.with(plan, new Method.ScrewedOn()));
    assertThat(new GuidePages(none, new Words(plan.job()), Codes.NONE).section(new CautionSigns()))
        .isEmpty();
  }

  /** Names of tools are the maker's; a sheet that they make too long goes on on the next page. */
  @Test
  void longNamesOfToolsFindRoom() throws IOException {
    String name = "a bit of a very long name ".repeat(30);
    assertThat(sheets(new Method.Marked(Method.How.BY_HAND, bit(name), List.of())))
        .contains(plain(name));
  }

  private static BitSetting bit(String tool) {
    return new BitSetting(
        tool,
        SampleJobs.in("1/4"),
        Length.ZERO,
        Length.ZERO,
        SampleJobs.in("3/8"),
        SampleJobs.in("1/16"),
        SampleJobs.in("5/16"));
  }

  private static String sheets(Method method) throws IOException {
    Job job = SampleJobs.readingRoom();
    Plan plan = PLANS.computeIfAbsent(job, Planner::plan);
    Plan bored = SampleBorings.plan(plan, SampleBorings.with(plan, method));
    return text(
        job, new DrillingPages(bored, new Words(job), Codes.NONE).section(new CautionSigns()));
  }

  @Test
  void thePagesKeepTheStandardForAccess() throws Exception {
    Job job = SampleJobs.readingRoom();
    Plan plan = PLANS.computeIfAbsent(job, Planner::plan);
    List<CaseBoring> borings = SampleBorings.guided(plan);
    Words words = new Words(job);
    byte[] pdf =
        pdf(
            job,
            Stream.of(
                    new WayPages(borings, words).section(),
                    new GuidePages(SampleBorings.plan(plan, borings), words, Codes.NONE)
                        .section(new CautionSigns()),
                    new DrillingPages(SampleBorings.plan(plan, borings), words, Codes.NONE)
                        .section(new CautionSigns()))
                .flatMap(Optional::stream)
                .toList());
    assertThat(Standards.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
  }

  private static byte[] pdf(Job job, List<Section> sections) {
    return PdfWriter.write(
        new Booklet(
            job.title(),
            "Pages of boring",
            job.title(),
            job.revision(),
            Optional.empty(),
            new Words(job).paper(),
            sections));
  }

  /** Without the footers of the pages, which part a sentence that goes on over the page. */
  private static String text(Job job, Optional<Section> section) throws IOException {
    String footer = Pattern.quote(plain(job.title())) + "revision\\w+?(A4|Letter)page\\d+of\\d+";
    return String.join("", pages(job, section)).replaceAll(footer, "");
  }

  private static List<String> pages(Job job, Optional<Section> section) throws IOException {
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf(job, section.stream().toList()))) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(squeezed(stripper.getText(document)));
      }
    }
    return pages;
  }

  /** As typeset, without spaces: lines break anywhere. */
  private static String plain(String text) {
    return squeezed(Fractions.set(text));
  }

  private static String squeezed(String text) {
    return text.replaceAll("[\\s\u00a0]+", "");
  }
}
