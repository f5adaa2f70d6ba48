package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import fourpin.bench.Caution;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.Finding;
import fourpin.job.Job;
import fourpin.measure.Unit;
import fourpin.plan.CutItem;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.Planner;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.pages.Standards;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fractions;
import fourpin.strength.ShelfAnswer;
import fourpin.strength.SpanTable.Lying;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.xml.sax.InputSource;

class PacketTest {

  /** Letters of a page with a line or two, beside its foot. */
  private static final int FEW = 250;

  static Stream<Job> jobs() {
    return Stream.of(SampleJobs.readingRoom(), SampleJobs.musicLibrary());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aPacketHasADozenPagesAndNoneIsEmpty(Job job) throws IOException {
    try (PDDocument document = pdf(job)) {
      assertThat(document.getNumberOfPages()).isGreaterThanOrEqualTo(12);
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        assertThat(text(document, page, page))
            .contains(
                "page" + page + "of" + document.getNumberOfPages(),
                "revisionB",
                plain(job.title()));
        assertThat(text(document, page, page).length()).as("page %s", page).isGreaterThan(FEW);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everythingInThePlanIsPrinted(Job job) throws IOException {
    Plan plan = Planner.plan(job);
    try (PDDocument document = pdf(job)) {
      String text = running(document);
      for (PlannedStep step : plan.steps()) {
        assertThat(text).contains(plain(step.words()), plain(step.check()));
        step.items().forEach(item -> assertThat(text).contains(plain(item)));
      }
      plan.steps().stream()
          .flatMap(s -> s.cautions().stream())
          .map(Caution::text)
          .forEach(c -> assertThat(text).contains(plain(c)));
      for (Finding finding : plan.findings()) {
        assertThat(text).contains(plain(Words.whole(finding.what())));
        finding.remedies().forEach(r -> assertThat(text).contains(plain(r.what())));
      }
      for (CaseBoring boring : plan.borings()) {
        assertThat(text).contains(plain(boring.because()));
        boring.answers().forEach(a -> assertThat(text).contains(plain(a.way().title())));
        boring.answers().stream()
            .flatMap(a -> a.reasons().stream())
            .forEach(r -> assertThat(text).contains(plain(r.what()), plain(r.remedy())));
      }
      plan.levelness().stream()
          .flatMap(l -> Stream.of(l.gains(), l.mixed(), l.harms()).flatMap(List::stream))
          .forEach(c -> assertThat(text).contains(plain(c.what())));
      plan.mistakes().forEach(m -> assertThat(text).contains(plain(m.shows()), plain(m.test())));
      plan.hardware().forEach(h -> assertThat(text).contains(plain(h.name())));
      plan.tools().forEach(t -> assertThat(text).contains(plain(t.tool().name())));
      plan.totals().forEach(f -> assertThat(text).contains(plain(f.title())));
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyLineOfTheCutListIsPrinted(Job job) throws IOException {
    Plan plan = Planner.plan(job);
    assertThat(plan.cutList()).isNotEmpty();
    try (PDDocument document = pdf(job)) {
      String text = running(document);
      for (CutItem item : plan.cutList()) {
        assertThat(text)
            .contains(plain(item.name()), plain(job.style().number(item.cutLength().total())));
        item.marks().forEach(mark -> assertThat(text).contains(plain(mark)));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = PDFAFlavour.class,
      names = {"PDFUA_1", "PDFA_2_A"})
  void thePacketKeepsTheStandardsForAccessAndKeeping(PDFAFlavour flavour) throws Exception {
    Packet packet = Packet.compose(Planner.plan(SampleJobs.readingRoom()));
    assertThat(Standards.faults(PdfPacket.write(packet), flavour)).isEmpty();
  }

  @Test
  void sectionsComeInTheOrderOfTheWork() throws IOException {
    try (PDDocument document = pdf(SampleJobs.readingRoom())) {
      String text = text(document, 3, document.getNumberOfPages());
      assertThat(text)
          .containsSubsequence(
              "Findings",
              "Hardwareandbuyinglist",
              "Cutlist",
              "Cuttinglayouts",
              "Steps",
              "Panels",
              "Drillingsheets",
              "Beforeyoudrillthesecondpanel",
              "Views",
              "Waystobore",
              "Howlevelshelveswilllie",
              "Shelvesundertheirload",
              "Whatthisrestson");
    }
  }

  @Test
  void aPlanThatWouldSpoilTheWorkSaysSoFirst() throws IOException {
    Plan plan = Planner.plan(SampleJobs.musicLibrary());
    assertThat(plan.readyForTheBench()).isFalse();
    try (PDDocument document = pdf(SampleJobs.musicLibrary())) {
      assertThat(text(document, 1, 1)).contains(plain("Do not cut to this plan"));
    }
  }

  /** Pages get loose in a workshop: each of them tells, or none does. */
  @Test
  void everyPageOfAPlanThatWouldSpoilTheWorkForbidsCutting() throws IOException {
    try (PDDocument document = pdf(SampleJobs.musicLibrary())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        assertThat(text(document, page, page))
            .contains(plain("DO NOT CUT: 1 finding to settle first, see Findings"));
      }
    }
    Job sound = SampleJobs.job("One bay", "one", Unit.INCH, 1, "36");
    assertThat(Planner.plan(sound).readyForTheBench()).isTrue();
    try (PDDocument document = pdf(sound)) {
      assertThat(text(document, 1, document.getNumberOfPages())).doesNotContain("DONOTCUT");
    }
  }

  /** The whole text once for each stage and once at the layouts, its essence at every step. */
  @Test
  void aCautionStandsAtEveryStepAndInFullAtTheFirstOfItsStage() throws IOException {
    Plan plan = Planner.plan(SampleJobs.readingRoom());
    Caution dust =
        plan.steps().stream()
            .flatMap(s -> s.cautions().stream())
            .filter(c -> c.hazard().equals("dust"))
            .findFirst()
            .orElseThrow();
    List<PlannedStep> dusty =
        plan.steps().stream().filter(s -> s.cautions().contains(dust)).toList();
    long stages = dusty.stream().map(PlannedStep::stage).distinct().count();
    assertThat(dusty.size()).isGreaterThan((int) stages);
    List<DrillingSheet> sheets =
        DrillingSheet.of(plan).stream()
            .filter(s -> s.steps().stream().anyMatch(dusty::contains))
            .toList();
    long onSheets = sheets.stream().mapToLong(s -> s.steps().size()).sum();
    assertThat(dusty).containsAll(sheets.stream().flatMap(s -> s.worked().stream()).toList());
    try (PDDocument document = pdf(SampleJobs.readingRoom())) {
      String text = running(document);
      int start = text.indexOf(plain(plan.steps().getFirst().words()));
      String steps = text.substring(start, text.indexOf(plain("Ways to bore"), start));
      assertThat(count(steps, plain(dust.text()))).isEqualTo(stages);
      assertThat(count(steps, plain(dust.hazard() + ": " + dust.essence())))
          .as("at each step of the list, and at the head of each drilling sheet")
          .isEqualTo(dusty.size() - onSheets + sheets.size());
    }
  }

  private static int count(String text, String part) {
    return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
  }

  /** A case's own depth of holes is what is bored, so it is what is printed. */
  @Test
  void settingsThatACaseOverridesArePrintedAsTheyAreUsed() throws IOException {
    Job job = SampleJobs.twoDepths();
    try (PDDocument document = pdf(job)) {
      String text = text(document, 1, document.getNumberOfPages());
      assertThat(text)
          .contains(plain("hole-depth in low 3/8 in"), plain("hole-depth in high 5/16 in"))
          .contains(plain("first-hole none"), "job/holes");
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void shelvesAreDrawnUnderTheLoadThatSagsThemMost(Job job) throws IOException {
    Plan plan = Planner.plan(job);
    try (PDDocument document = pdf(job)) {
      String text = text(document, 1, document.getNumberOfPages());
      assertThat(plan.shelves()).isNotEmpty();
      for (ShelfAnswer shelf : plan.shelves()) {
        assertThat(text).contains(drawnUnder(shelf.shape().orElseThrow().load()));
      }
    }
  }

  private static String drawnUnder(Lying load) {
    return plain(
        switch (load) {
          case EVENLY -> "spread evenly and its own weight, at once";
          case IN_A_ROW -> "in a row along the front edge and its own weight, at once";
          case AGAINST_THE_BACK -> "in a row against the back and its own weight, at once";
          case OVER_THE_EDGE ->
              "against the back, standing out over the front edge and its own weight, at once";
          case ON_ONE_HALF -> "on one half of its length alone and its own weight, at once";
        });
  }

  @Test
  void sameJobSameBytesInEveryLocale() {
    byte[] here = PdfPacket.write(Packet.compose(Planner.plan(SampleJobs.readingRoom())));
    Map<String, String> svgs = Packet.compose(Planner.plan(SampleJobs.readingRoom())).svgs();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      Packet there = Packet.compose(Planner.plan(SampleJobs.readingRoom()));
      assertThat(PdfPacket.write(there)).isEqualTo(here);
      assertThat(there.svgs()).isEqualTo(svgs);
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyDrawingIsAnSvgOfItsOwnThatForbidsMeasuring(Job job) throws Exception {
    Packet packet = Packet.compose(Planner.plan(job));
    Map<String, String> svgs = packet.svgs();
    assertThat(svgs).hasSameSizeAs(packet.drawings()).hasSizeGreaterThan(12);
    for (Drawing drawing : packet.drawings()) {
      assertThat(drawing.title()).isNotBlank();
      assertThat(drawing.description()).isNotBlank();
    }
    for (Map.Entry<String, String> svg : svgs.entrySet()) {
      assertThat(svg.getKey()).matches("[a-z0-9-]+");
      assertThat(svg.getValue()).contains("DRAWING, DO NOT MEASURE · scale 1:");
      DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new java.io.StringReader(svg.getValue())));
    }
  }

  /**
   * Names are the maker's: very long, without a break, of letters that the font lacks, or like
   * markup.
   */
  static Stream<String> names() {
    return Stream.of(
        "x".repeat(300),
        "a very long name ".repeat(40),
        "書架\ud83d\udcda",
        "<b>&\"'",
        "CASE/1:2\\",
        "1/2 1/2 1/2");
  }

  @ParameterizedTest
  @MethodSource("names")
  void anyNameCanBePrinted(String name) {
    Plan plan = Planner.plan(SampleJobs.job(name, name, Unit.INCH, 2, "60"));
    assertThat(plan.cases()).isNotEmpty();
    assertThatCode(() -> PdfPacket.write(Packet.compose(plan))).doesNotThrowAnyException();
  }

  @ParameterizedTest
  @org.junit.jupiter.params.provider.CsvSource({"1, 36", "5, 96", "12, 84", "12, 110"})
  void smallAndLargeCasesFitOnTheirPages(int bays, String height) {
    Plan plan = Planner.plan(SampleJobs.job("Wall", "wall", Unit.INCH, bays, height));
    assertThat(plan.cases()).isNotEmpty();
    assertThatCode(() -> PdfPacket.write(Packet.compose(plan))).doesNotThrowAnyException();
  }

  @Test
  void aJobWhoseCaseCannotBeBuiltStillGetsItsFindings() throws IOException {
    Job job = SampleJobs.job("Odd", "odd", Unit.INCH, 2, "20");
    Plan plan = Planner.plan(job);
    assertThat(plan.cases()).isEmpty();
    try (PDDocument document = pdf(job)) {
      assertThat(text(document, 1, document.getNumberOfPages()))
          .contains(
              plain("Do not cut to this plan"),
              plain("cannot be built"),
              plain(Words.whole(plan.findings().getFirst().what())));
    }
  }

  private static PDDocument pdf(Job job) throws IOException {
    return Loader.loadPDF(PdfPacket.write(Packet.compose(Planner.plan(job))));
  }

  /** All pages without what stands at their feet, so that text runs on from page to page. */
  private static String running(PDDocument document) throws IOException {
    StringBuilder all = new StringBuilder();
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      all.append(
          text(document, page, page)
              .replaceFirst(
                  "(DONOTCUT:\\d+findings?tosettlefirst,seeFindings)?(Readingroom|Musiclibrary)revisionB(A4|Letter)page.*$",
                  ""));
    }
    return all.toString();
  }

  private static String text(PDDocument document, int from, int to) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(from);
    stripper.setEndPage(to);
    return squeezed(stripper.getText(document));
  }

  /** As typeset, without spaces: lines break anywhere. */
  private static String plain(String text) {
    return squeezed(Fractions.set(text));
  }

  private static String squeezed(String text) {
    return text.replaceAll("[\\s\u00a0]+", "");
  }
}
