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

  /** On letter and A4: a code on each drilling sheet for a step of it, and one for each stage. */
  @ParameterizedTest
  @MethodSource("jobs")
  void eachSheetAndStageOpensItsStep(Job job) throws IOException {
    Plan plan = Planner.plan(job);
    try (PDDocument document = pdf(plan, new Codes(Optional.of(BENCH)))) {
      TreeSet<String> read = new TreeSet<>();
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        String text = text(document, page + 1);
        List<String> here = codes(document, page);
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

  /** Of each sheet and of each stage the first step. */
  private static TreeSet<String> expected(Plan plan) {
    TreeSet<String> all = new TreeSet<>();
    DrillingSheet.of(plan).forEach(sheet -> all.add(address(sheet.steps().getFirst())));
    for (PlannedStep.Stage stage : PlannedStep.Stage.values()) {
      plan.steps().stream()
          .filter(s -> s.stage() == stage)
          .findFirst()
          .map(CodesTest::address)
          .ifPresent(all::add);
    }
    return all;
  }

  /** Sheets of several pages have codes for later steps of theirs as well. */
  private static List<String> allowed(Plan plan) {
    return Stream.concat(
            expected(plan).stream(),
            DrillingSheet.of(plan).stream()
                .flatMap(sheet -> sheet.steps().stream())
                .map(CodesTest::address))
        .toList();
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

  /** Codes stand at the right, where the reader looks. */
  private static List<String> codes(PDDocument document, int page) throws IOException {
    PDPage strip = document.getPage(page);
    PDRectangle whole = strip.getMediaBox();
    float part = whole.getWidth() / PARTS;
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
