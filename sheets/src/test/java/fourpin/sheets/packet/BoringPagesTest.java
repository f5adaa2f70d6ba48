package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.BayGrid;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Method;
import fourpin.boring.way.WayAnswer;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.job.Job;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
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
import java.util.Optional;
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
    Plan plan = Planner.plan(job);
    CaseBoring boring = SampleBorings.guided(plan).getFirst();
    String text = text(job, new WayPages(List.of(boring), new Words(job)).section());
    for (WayAnswer answer : boring.answers()) {
      assertThat(text).contains(plain(answer.way().title()));
      answer.reasons().forEach(r -> assertThat(text).contains(plain(r.what()), plain(r.remedy())));
    }
    assertThat(text)
        .contains(plain("→ " + Way.CENTRING_GUIDE.title()), plain(boring.because()))
        .contains(plain("Time, min"), plain("Cost, $"), "84.5", "84.50", "672");
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void theGuideIsDrawnListedAndItsUseTold(Job job) throws IOException {
    Plan plan = Planner.plan(job);
    List<CaseBoring> borings = SampleBorings.guided(plan);
    Guide guide = ((Method.Guided) borings.getFirst().method()).guide();
    String text = text(job, new GuidePages(borings, new Words(job)).section());
    guide.holes().forEach(h -> assertThat(text).contains(plain(job.style().number(h.along()))));
    assertThat(text)
        .contains(plain("STOP BLOCK, THIS END DOWN ↓"), plain("FRONT EDGE →"))
        .contains(plain("side B up, the guide turned over"), plain("Tape over holes 1 to 2"))
        .contains(plain(job.style().number(guide.length())), "MDF");
  }

  @Test
  void aStripThatIsSoldTellsWhichOfItsHolesIsTheFirst() throws IOException {
    Job job = SampleJobs.readingRoom();
    CaseBoring boring = SampleBorings.guided(Planner.plan(job)).getFirst();
    Method.Guided guided = (Method.Guided) boring.method();
    Guide g = guided.guide();
    Guide sold =
        new Guide(
            g.mark(),
            new Guide.Make.Sold("steel strap", 4),
            g.material(),
            g.length(),
            g.width(),
            g.thickness(),
            g.holes(),
            g.block());
    CaseBoring strap =
        with(boring, new Method.Guided(Method.How.BY_HAND, sold, guided.bit(), guided.clampings()));
    assertThat(text(job, new GuidePages(List.of(strap), new Words(job)).section()))
        .contains(plain("Hole 1 is hole 4 of the strip"));
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
            old.figures()));
    return new CaseBoring(
        boring.caseName(), boring.grids(), answers, boring.chosen(), boring.because());
  }

  /** Each on a page of its own, with its settings, its check and every caution of boring. */
  @ParameterizedTest
  @MethodSource("jobs")
  void thereIsOneSheetForEachFaceThatIsBored(Job job) throws IOException {
    Plan plan = Planner.plan(job);
    List<CaseBoring> borings = SampleBorings.guided(plan);
    BitSetting bit = ((Method.Guided) borings.getFirst().method()).bit();
    List<String> pages = pages(job, new DrillingPages(plan, borings, new Words(job)).section());
    assertThat(pages).hasSize(2 * plan.grids().size());
    BuiltCase built = plan.cases().getFirst();
    for (BayGrid grid : plan.grids()) {
      for (Face face : List.of(Face.RIGHT, Face.LEFT)) {
        var bay = built.bays().get(grid.bay() - 1);
        String mark = face == Face.RIGHT ? bay.left() : bay.right();
        String title = mark + ", " + Words.lower(face) + " face up, bay " + grid.bay();
        String page =
            pages.stream().filter(p -> p.contains(plain(title))).findFirst().orElseThrow();
        Length end = built.part(mark).box().at(Face.BOTTOM);
        assertThat(page)
            .contains(plain("side " + (face == Face.LEFT ? "A" : "B") + " up"))
            .contains(plain(job.style().number(bit.stop())))
            .contains(plain(job.style().text(grid.levels().getLast().height().minus(end))))
            .contains(plain(grid.levels().size() + " holes in each row"))
            .contains(plain("Strike out each copy that is bored and checked: 1 2"));
        assertThat(page).contains(plain("Caution"));
        plan.steps().stream()
            .filter(s -> s.stage() == PlannedStep.Stage.BORE && s.parts().contains(mark))
            .flatMap(s -> s.cautions().stream())
            .forEach(c -> assertThat(page).contains(plain(c.text())));
      }
    }
  }

  @Test
  void theStopIsASumOfHoleAndGuide() throws IOException {
    Job job = SampleJobs.readingRoom();
    Plan plan = Planner.plan(job);
    assertThat(
            text(
                job, new DrillingPages(plan, SampleBorings.guided(plan), new Words(job)).section()))
        .contains(plain("3/8 hole + 1/4 guide = 5/8 in"));
  }

  @Test
  void markedAndProgrammedPanelsGetSheetsOfTheirOwn() throws IOException {
    assertThat(sheets(new Method.Marked(Method.How.BY_HAND, bit("brad-point bit"), List.of())))
        .contains(plain("Lay the stick along the panel"), plain("Punch each cross"))
        .contains(plain("its zero at the panel's lower end"), plain("its end mark"))
        .contains(plain("Key: mark 1 of the stick is level 1 of the bay"))
        .contains(plain("to the full diameter, not to the point"));
    assertThat(sheets(new Method.Marked(Method.How.DRILL_PRESS, bit("brad-point bit"), List.of())))
        .contains(plain("front row 1 1/2 in, front edge at the fence"))
        .contains(plain("back edge at the fence"));
    assertThat(sheets(new Method.Programmed("the hall's machine", bit("cutter"))))
        .contains(plain("the hall's machine"))
        .contains(plain("Zero is the lower left corner, of lower end and front edge"))
        .contains(plain("Zero is the lower right corner, of lower end and front edge"));
    Plan plan = Planner.plan(SampleJobs.readingRoom());
    List<CaseBoring> none = SampleBorings.with(plan, new Method.ScrewedOn());
    assertThat(new DrillingPages(plan, none, new Words(plan.job())).section()).isEmpty();
    assertThat(new GuidePages(none, new Words(plan.job())).section()).isEmpty();
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
    Plan plan = Planner.plan(job);
    List<CaseBoring> borings = SampleBorings.with(plan, method);
    return text(job, new DrillingPages(plan, borings, new Words(job)).section());
  }

  @Test
  void thePagesKeepTheStandardForAccess() throws Exception {
    Job job = SampleJobs.readingRoom();
    Plan plan = Planner.plan(job);
    List<CaseBoring> borings = SampleBorings.guided(plan);
    Words words = new Words(job);
    byte[] pdf =
        pdf(
            job,
            Stream.of(
                    new WayPages(borings, words).section(),
                    new GuidePages(borings, words).section(),
                    new DrillingPages(plan, borings, words).section())
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

  private static String text(Job job, Optional<Section> section) throws IOException {
    return String.join("", pages(job, section));
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
