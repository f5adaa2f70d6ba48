package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.measure.Length;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.packet.Packet;
import fourpin.sheets.packet.PdfPacket;
import fourpin.sheets.paint.Fractions;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the packets of the examples print for setting up, against figures that are common practice,
 * as the second column says, but for the last: that is the published convention of 32 mm
 * cabinetmaking ("All About Shelf Supports"; "Methods of 32 mm System Layout").
 */
class CommonPracticeOnPaperTest {

  private static final Path EXAMPLES = Path.of("..", "examples");

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ways/router-guide.yaml | a bushing of 3/8 in has 1/64 in of slip | 3/8 in runs in the holes of the guide
          ways/router-guide.yaml | a bushing of 3/8 in has 1/64 in of slip | side A · holes Ø 25/64
          ways/router-guide.yaml | hole 3/8 in + guide 1/4 in = stop 5/8 in | Stop 3/8 hole + 1/4 guide = 5/8 in
          ways/centring-guide.yaml | hole 3/8 in + guide 1/4 in = stop 5/8 in | Stop 3/8 hole + 1/4 guide = 5/8 in
          ways/short-guide.yaml | a pin in the last hole bored finds the next place | black pin: 1 in 12, then holes 2 to 12
          ways/hardboard-strip.yaml | hole 3/8 in + strip 1/4 in = stop 5/8 in | Stop 3/8 hole + 1/4 guide = 5/8 in
          ways/hardboard-strip.yaml | perforated hardboard has holes of 1/4 in | side A · holes Ø 1/4
          ways/hardboard-strip.yaml | they are 1 in apart | to (42) 41 23/32 in, every 1 in.
          ways/steel-strap.yaml | straps have holes of 5/16 in | side A · holes Ø 5/16
          ways/steel-strap.yaml | they are 3/4 in apart | to (57) 42 23/32 in, every 3/4 in.
          ways/steel-strap.yaml | every second hole gives 1 1/2 in | 14 to 56, every second hole
          pottery-cabinet.yaml | grooves are 3/16 in deep, by steps | Depth 1/8 in, then 3/16 in
          ways/story-stick.yaml | pins are 1/4 in thick | Bit 1/4 in, brad-point-bit
          ways/drill-press.yaml | pins are 1/4 in thick | Bit 1/4 in, brad-point-bit
          music-library.yaml | or 5 mm | bit 5 mm, 12 mm deep
          ways/machine.yaml | holes of 5 mm | bit 5 mm, 12 mm deep
          ways/machine.yaml | 32 mm apart | 247.6 mm to 1047.6 mm, every 32 mm
          ways/machine.yaml | 37 mm behind the front edge | on the face, 37 mm from the index edge
          """)
  void the_packet_prints_what_shops_commonly_do(String example, String practice, String printed)
      throws IOException {
    assertThat(text(plan(example))).as(practice).contains(plain(printed));
  }

  /** Standards are 5/8 in wide; the example adds 1/64 in of play. Their slots are 1/2 in apart. */
  @ParameterizedTest
  @CsvSource("pottery-cabinet.yaml")
  void grooves_fit_common_standards(String example) throws IOException {
    Plan plan = plan(example);
    Length wide = Length.inches(5, 8).plus(Length.inches(1, 64));
    assertThat(wide.inches()).isEqualTo(0.640625);
    assertThat(text(plan)).contains("≈0.641", plain("3/16"));
    assertThat(plan.grids())
        .allSatisfy(g -> assertThat(steps(g)).containsExactly(Length.inches(1, 2)));
  }

  /** Between levels of one opening. */
  private static Set<Length> steps(BayGrid grid) {
    return grid.runs().stream()
        .map(run -> grid.levels().stream().map(Level::height).filter(h -> isIn(run, h)).toList())
        .flatMap(h -> IntStream.range(1, h.size()).mapToObj(i -> h.get(i).minus(h.get(i - 1))))
        .collect(Collectors.toSet());
  }

  private static boolean isIn(BayGrid.Run run, Length height) {
    return height.isAtLeast(run.bottom()) && run.top().isAtLeast(height);
  }

  private static Plan plan(String example) {
    return switch (new JobSource(EXAMPLES.resolve(example)).read()) {
      case JobSource.Outcome.Good(var job) -> Planner.plan(job);
      case JobSource.Outcome.Refused(var messages) -> throw new AssertionError(messages.toString());
    };
  }

  private static String text(Plan plan) throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfPacket.write(Packet.compose(plan)))) {
      return squeezed(new PDFTextStripper().getText(document));
    }
  }

  /** As typeset, without spaces: lines break anywhere. */
  private static String plain(String text) {
    return squeezed(Fractions.set(text));
  }

  private static String squeezed(String text) {
    return text.replaceAll("[\\s\u00a0]+", "");
  }
}
