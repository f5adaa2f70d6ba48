package fourpin.shop.line;

import static fourpin.shop.line.Cuttings.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a maker reads at the saw, on the pages and in the table of passes. */
class AtTheSawTest {

  private static final String SHEET =
      "material,kind,length,width,count,price\nply,sheet,2440 mm,1220 mm,1,50\n";

  @TempDir private Path shop;

  private Path cut(String parts, String stock, Object... more) throws IOException {
    Path asked = Files.writeString(shop.resolve("parts.csv"), parts);
    Path rack = Files.writeString(shop.resolve("rack.csv"), stock);
    Path out = shop.resolve("out");
    List<Object> words = new ArrayList<>(List.of(asked, rack, "--out", out));
    words.addAll(List.of(more));
    assertThat(run(words.toArray())).startsWith("0");
    return out;
  }

  /** On one line, whatever lines the page has. */
  private static String printed(Path out) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(out.resolve("cutting.pdf")))) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }

  /** A sheet that the saw cannot rip is trimmed along a straightedge, and the page says so. */
  @Test
  void stripsAreNamedByTheGrainAndHeldByTheirShape() throws IOException {
    Path out =
        cut(
            "part,material,length,width,count,grain\n"
                + "panel,ply,2000 mm,1180 mm,1,length\nslip,ply,900 mm,25 mm,8,any\n",
            SHEET,
            "--set",
            "longest-rip=2100mm",
            "--set",
            "first-cut=across");
    assertThat(printed(out))
        .contains(
            "1 to 4 trim near edge, far edge, near end, far end by 5, kerf included, with a"
                + " hand-held saw along a straightedge (large: see the caution)",
            "crosscut strips of 25 outside the blade, fence set anew for each (narrow: see the"
                + " caution)",
            "rip, stop at 900 (turns at the fence: see the caution)",
            "and longer rips than 2100 mm (longest-rip)",
            "turning at the fence: Lay what is shorter along the cut than across it",
            "narrow rips: Guard and riving knife stay on.");
    List<String> order = Files.readAllLines(out.resolve("cutting-order.csv"));
    assertThat(order.getFirst()).endsWith("far,far is,held by,care,fence or stop,fence or stop mm");
    assertThat(order.subList(1, order.size()))
        .filteredOn(line -> line.contains(",rip,900,"))
        .isNotEmpty()
        .allMatch(line -> line.endsWith(",\"mitre gauge, stop\",,900,900"));
    assertThat(order)
        .filteredOn(line -> line.contains(",crosscut,25,"))
        .isNotEmpty()
        .allMatch(
            line -> line.matches(".*,\"fence, strip outside the blade\",narrow(,[\\d.]+){2}"));
  }

  /** 5 off each edge: the first along a straightedge, the other with the fence at what stays. */
  @Test
  void noStripOfTrimLiesBetweenFenceAndBlade() throws IOException {
    Path out =
        cut(
            "part,material,length,width,count\npanel,ply,2000 mm,1000 mm,1\n",
            SHEET,
            "--set",
            "fence-reach=1300mm");
    assertThat(printed(out))
        .contains(
            "trim near edge by 5, kerf included, with a hand-held saw along a straightedge, on a"
                + " sled or at a jointer (first edge: see the caution)",
            "trim far edge by 5, kerf included, near edge at the fence, trim outside the blade"
                + " fence at 1210: S1",
            "first edge: Never lay an edge along the rip fence that is not straight yet");
    assertThat(Files.readAllLines(out.resolve("cutting-order.csv")))
        .filteredOn(line -> line.contains(",trim "))
        .hasSize(4)
        .noneMatch(line -> line.contains(",fence,"))
        .anyMatch(l -> l.endsWith(",\"fence, strip outside the blade\",,1210,1210"))
        .anyMatch(l -> l.endsWith(",\"straightedge and hand-held saw, sled, or jointer\",,,"));
  }

  /** The same sheet with rails of the usual reach: 1000 and what stays, 1210, are beyond it. */
  @Test
  void whatIsWiderThanTheFenceReachesIsCutAlongAStraightedge() throws IOException {
    Path out = cut("part,material,length,width,count\npanel,ply,2000 mm,1000 mm,1\n", SHEET);
    assertThat(printed(out))
        .contains(
            "trim far edge, near end, far end by 5, kerf included, with a hand-held saw along a"
                + " straightedge (large: see the caution)",
            "rip at 1000 with a hand-held saw along a straightedge (large: see the caution)",
            "where the rip fence would stand farther out than 760 mm (fence-reach)")
        .doesNotContain("fence at");
    assertThat(Files.readAllLines(out.resolve("cutting-order.csv")))
        .filteredOn(line -> line.contains(",rip,1000,"))
        .isNotEmpty()
        .allMatch(line -> line.endsWith(",\"straightedge, hand-held saw\",,,"));
  }

  /** The near edge of a rough board never lies along the fence before it is straight. */
  @Test
  void theEdgeOfARoughBoardIsStraightenedAwayFromTheFence() throws IOException {
    Path out =
        cut(
            "part,material,length,width,count\nrail,ash,900 mm,60 mm,4\n",
            "material,kind,length,width,count\nash,board,2000 mm,150 mm,2\n");
    assertThat(Files.readAllLines(out.resolve("cutting-order.csv")))
        .filteredOn(line -> line.contains(",trim near edge,"))
        .isNotEmpty()
        .allMatch(l -> l.contains("straightedge and hand-held saw, sled, or jointer"));
    assertThat(printed(out)).contains("first edge: Never lay an edge along the rip fence");
  }

  /** Blocks from a rest of 250 by 200: all passes are marked, at their rows. */
  @Test
  void smallPiecesAreMarkedAtTheirPasses() throws IOException {
    Path out =
        cut(
            "part,material,length,width,count\nblock,ply,100 mm,80 mm,4\n",
            "material,kind,length,width,count,supply\nply,sheet,250 mm,200 mm,1,on-hand\n");
    assertThat(printed(out))
        .containsPattern("\\(small: see the caution\\)|, small: see the cautions\\)")
        .contains("S1, small", "S1-E, small →")
        .contains("clamped on a sled or in a jig, or with a hand saw", "clamped to the mitre gauge")
        .doesNotContain("fence at")
        .doesNotContain("Too small to be held safely when they are cut:");
    List<String> order = Files.readAllLines(out.resolve("cutting-order.csv"));
    assertThat(order.subList(1, order.size()))
        .isNotEmpty()
        .allMatch(l -> l.contains(",small,"))
        .allMatch(
            l ->
                l.contains(", clamped\",")
                    || l.contains(",mitre gauge, clamped,")
                    || l.contains(",\"clamped sled or jig, or hand saw\","));
  }

  /** A block off a long strip, by a stop: neither the strip nor the stop makes it large. */
  @Test
  void aSmallPartIsMarkedWhereItComesOffAtAStop() throws IOException {
    Path out =
        cut(
            "part,material,length,width,count\nblock,ply,80 mm,30 mm,2\n",
            "material,kind,length,width,count\nply,board,1200 mm,30 mm,1\n");
    assertThat(printed(out))
        .contains(
            "crosscut, stop at 80 (small: see the caution) S1",
            "small [1 block]",
            "stops: Measure by a stop that can't pinch what comes off",
            "small pieces: Cut and work small pieces while they are still part of a long one",
            "A small part that comes off is held down");
    assertThat(Files.readAllLines(out.resolve("cutting-order.csv")))
        .filteredOn(line -> line.contains(",crosscut,80,"))
        .hasSize(2)
        .allMatch(line -> line.endsWith(",\"mitre gauge, stop\",small part,80,80"));
  }

  /** What is left of a long board is short enough for the gauge again. */
  @Test
  void longBoardsAreNotCrosscutAtAMitreGauge() throws IOException {
    Path out =
        cut(
            "part,material,length,width,count\nshelf,ash,2000 mm,300 mm,1\nrail,ash,700 mm,300 mm,2\n",
            "material,kind,length,width,count\nash,board,4950 mm,300 mm,1\n");
    assertThat(printed(out))
        .contains(
            "crosscut at 2000, at a mitre saw or with a hand-held saw along a straightedge, both"
                + " ends supported (long: see the caution)",
            "long pieces: Do not crosscut at a mitre gauge what is longer than 1800 mm"
                + " (held-length, common practice)");
    assertThat(Files.readAllLines(out.resolve("cutting-order.csv")))
        .filteredOn(line -> line.contains(",crosscut,2000,"))
        .hasSize(1)
        .allMatch(line -> line.endsWith("\"mitre saw, or straightedge and hand-held saw\",,,"));
  }

  /** A sheet of the rack, worth 20, and one to be bought at 50. */
  @Test
  void theWorthOfStockOnHandIsNoMoneyToBeSpent() throws IOException {
    Path out =
        cut(
            "part,material,length,width,count\nlid,ply,2300 mm,1100 mm,2\n",
            "material,kind,length,width,count,price,supply,worth\n"
                + "ply,sheet,2440 mm,1220 mm,1,,on-hand,20\n"
                + "ply,sheet,2440 mm,1220 mm,,50,to-buy,\n");
    assertThat(printed(out))
        .contains(
            "To be bought where it has a price 50",
            "70.00 70.00 0 % proven",
            "ply, sheets: 20.00 of it is the worth stated of stock on hand, not money to be spent.");
  }
}
