package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import fourpin.job.Job;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.Planner;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.paint.Drawing;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Codes as a reader that is given the printed page finds them. */
class CodesTest {

  private static final String BENCH =
      "http://192.168.7.2:7404/jobs/01a21b52-6960-7000-a02c-59d6f059df5d/bench";

  /** Less than any printer or phone has. */
  private static final int DOTS_PER_INCH = 200;

  /** Of the page's width, the last is looked at. */
  private static final int PARTS = 4;

  private static final Pattern STEPS =
      Pattern.compile(Pattern.quote(BENCH) + "#step-([\\d.-]+):([0-9a-f]{8})");

  static Stream<Job> jobs() {
    return Stream.of(SampleJobs.readingRoom(), SampleJobs.musicLibrary());
  }

  /** On letter and A4: each step has a code beside it, or beside the sheet or run it belongs to. */
  @ParameterizedTest
  @MethodSource("jobs")
  void eachStepIsOpenedByACodeOfThePageThatItStandsOn(Job job) throws IOException {
    Plan plan = Planner.plan(job);
    try (PDDocument document = pdf(plan, Codes.to(BENCH))) {
      TreeSet<Integer> opened = new TreeSet<>();
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        String text = text(document, page + 1);
        for (String code :
            codes(document, page, PARTS).stream().filter(CodesTest::ofStep).toList()) {
          List<Integer> steps = steps(code, plan);
          assertThat(text).as("page " + (page + 1)).contains(steps.getFirst().toString());
          opened.addAll(steps);
        }
      }
      assertThat(opened).isEqualTo(all(plan));
    }
  }

  private static TreeSet<Integer> all(Plan plan) {
    return new TreeSet<>(plan.steps().stream().map(PlannedStep::number).toList());
  }

  /** What a code opens, as the page reads it: "#step-9-14.20:0123abcd". */
  private static List<Integer> steps(String code, Plan plan) {
    Matcher read = STEPS.matcher(code);
    assertThat(read.matches()).as(code).isTrue();
    assertThat(Codes.digest(plan.steps())).startsWith(read.group(2));
    return Stream.of(read.group(1).split("\\."))
        .flatMapToInt(
            range -> {
              String[] ends = range.split("-");
              return IntStream.rangeClosed(
                  Integer.parseInt(ends[0]), Integer.parseInt(ends[ends.length - 1]));
            })
        .boxed()
        .toList();
  }

  /** Each sheet for a panel is one code for all that is done to the panel. */
  @Test
  void theCodeOfADrillingSheetIsOfAllItsSteps() {
    Plan plan = Planner.plan(SampleJobs.musicLibrary());
    List<String> drawn =
        Packet.compose(plan, Codes.to(BENCH)).drawings().stream().map(Drawing::name).toList();
    assertThat(DrillingSheet.of(plan)).isNotEmpty();
    for (DrillingSheet sheet : DrillingSheet.of(plan)) {
      List<PlannedStep> steps = sheet.steps();
      assertThat(drawn)
          .anyMatch(
              name ->
                  name.startsWith("code-step-" + steps.getFirst().number())
                      && (steps.size() == 1 || name.matches("code-step-\\d+[.-].*")));
    }
  }

  @Test
  void anotherStateOfTheJobIsToldByItsCodes() {
    Plan one = Planner.plan(SampleJobs.readingRoom());
    Plan other = Planner.plan(SampleJobs.musicLibrary());
    assertThat(Codes.digest(one.steps())).isNotEqualTo(Codes.digest(other.steps()));
    assertThat(Codes.digest(one.steps()))
        .isEqualTo(Codes.digest(Planner.plan(SampleJobs.readingRoom()).steps()));
  }

  private static boolean ofStep(String code) {
    return code.contains("#step-");
  }

  /** As a phone looks at one label after the other. */
  @ParameterizedTest
  @MethodSource("jobs")
  void eachPartThatStepsAreAboutHasALabelThatOpensIt(Job job) throws IOException {
    Plan plan = Planner.plan(job);
    TreeSet<String> parts = new TreeSet<>();
    plan.steps()
        .forEach(
            step ->
                step.parts()
                    .forEach(
                        mark ->
                            parts.add(
                                BENCH
                                    + "#part-"
                                    + Codes.key(step.caseName(), mark)
                                    + ":"
                                    + Codes.digest(plan.steps()).substring(0, 8))));
    assertThat(parts).isNotEmpty();
    try (PDDocument document = pdf(plan, Codes.to(BENCH))) {
      TreeSet<String> read = new TreeSet<>();
      int pages = document.getNumberOfPages();
      int first = pages - 1;
      while (!text(document, first + 1).contains("Labels for parts")) {
        first--;
      }
      for (int page = first; page < pages; page++) {
        read.addAll(codes(document, page, 1));
      }
      read.removeIf(CodesTest::ofStep);
      assertThat(read).isEqualTo(parts);
    }
  }

  @Test
  void withoutAnAddressThereAreNone() throws IOException {
    Plan plan = Planner.plan(SampleJobs.musicLibrary());
    assertThat(Packet.compose(plan, Codes.NONE).drawings())
        .noneMatch(drawing -> drawing.name().startsWith("code-"));
  }

  private static PDDocument pdf(Plan plan, Codes codes) throws IOException {
    return Loader.loadPDF(PdfPacket.write(Packet.compose(plan, codes)));
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper text = new PDFTextStripper();
    text.setStartPage(page);
    text.setEndPage(page);
    return text.getText(document);
  }

  /**
   * Codes of steps stand at the right, where the reader looks. @param of so many parts of a page
   */
  private static List<String> codes(PDDocument document, int page, int of) throws IOException {
    PDPage strip = document.getPage(page);
    PDRectangle whole = strip.getMediaBox();
    float part = whole.getWidth() / of;
    strip.setCropBox(new PDRectangle(whole.getWidth() - part, 0, part, whole.getHeight()));
    BufferedImage image =
        new PDFRenderer(document).renderImageWithDPI(page, DOTS_PER_INCH, ImageType.RGB);
    int width = image.getWidth();
    int height = image.getHeight();
    int[] dots = image.getRGB(0, 0, width, height, new int[width * height], 0, width);
    try {
      Result[] found =
          new QRCodeMultiReader()
              .decodeMultiple(
                  new BinaryBitmap(
                      new HybridBinarizer(new RGBLuminanceSource(width, height, dots))),
                  Map.of(DecodeHintType.TRY_HARDER, true));
      return Stream.of(found).map(Result::getText).toList();
    } catch (NotFoundException e) {
      return new ArrayList<>();
    }
  }
}
