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
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
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

  static Stream<Job> jobs() {
    return Stream.of(SampleJobs.readingRoom(), SampleJobs.musicLibrary());
  }

  /**
   * On letter and A4: wherever a step is told or referred to, a code opens it or the run's first.
   */
  @ParameterizedTest
  @MethodSource("jobs")
  void eachSheetAndEachStepOfTheListHasItsCode(Job job) throws IOException {
    Plan plan = Planner.plan(job);
    try (PDDocument document = pdf(plan, new Codes(Optional.of(BENCH)))) {
      TreeSet<String> read = new TreeSet<>();
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        String text = text(document, page + 1);
        List<String> here =
            codes(document, page, PARTS).stream().filter(CodesTest::ofStep).toList();
        if (!here.isEmpty()) {
          assertThat(here)
              .as("steps that stand on page " + (page + 1))
              .allMatch(code -> text.contains(code.substring(code.lastIndexOf('-') + 1)));
        }
        read.addAll(here);
      }
      assertThat(read).containsAll(expected(plan)).isSubsetOf(allowed(plan));
    }
  }

  private static boolean ofStep(String code) {
    return code.contains("#step-");
  }

  /** Of each sheet the first step, and every step that stands on no sheet. */
  private static TreeSet<String> expected(Plan plan) {
    TreeSet<String> all = new TreeSet<>();
    List<Integer> onSheets = new ArrayList<>();
    for (DrillingSheet sheet : DrillingSheet.of(plan)) {
      all.add(address(sheet.steps().getFirst()));
      sheet.steps().forEach(step -> onSheets.add(step.number()));
    }
    plan.steps().stream()
        .filter(step -> !onSheets.contains(step.number()))
        .forEach(step -> all.add(address(step)));
    return all;
  }

  /** Sheets of several pages have codes for later steps of theirs as well. */
  private static List<String> allowed(Plan plan) {
    return plan.steps().stream().map(CodesTest::address).toList();
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
                        mark -> parts.add(BENCH + "#part-" + Codes.key(step.caseName(), mark))));
    assertThat(parts).isNotEmpty();
    try (PDDocument document = pdf(plan, new Codes(Optional.of(BENCH)))) {
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

  private static String address(PlannedStep step) {
    return BENCH + "#step-" + step.number();
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
