package fourpin.shop.line;

import static fourpin.shop.line.Cuttings.parts;
import static fourpin.shop.line.Cuttings.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a maker sees of a cutting without a job. */
class CutCommandTest {

  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final Path PARTS = EXAMPLES.resolve("tool-rack-parts.csv");
  private static final Path STOCK = EXAMPLES.resolve("tool-rack-stock.csv");

  @TempDir private Path shop;

  private static Map<String, String> files(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(
            folder.relativize(file).toString().replace('\\', '/'),
            new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }

  @Test
  void aFolderThatIsNotOursIsRefusedBeforeTheSearch() throws IOException {
    Path notes = Files.createDirectory(shop.resolve("notes"));
    Files.writeString(notes.resolve("mine.txt"), "mine");
    assertThat(run(PARTS, STOCK, "--out", notes, "--seconds", "0"))
        .startsWith("2")
        .contains("holds files and is no packet")
        .contains("--seconds 0");
    assertThat(run(PARTS, STOCK, "--out", notes.resolve("mine.txt").resolve("deeper")))
        .startsWith("2")
        .contains("mine.txt is a file");
  }

  @ParameterizedTest
  @CsvSource({"kerf, nothing is said of its value", "kerf=1 mm, it is set before"})
  void aSettingIsWrittenWholeAndOnce(String second, String rule) {
    assertThat(run(PARTS, STOCK, "--set", "kerf=2 mm", "--set", second))
        .startsWith("2")
        .contains("--set " + second + ": error: " + rule);
  }

  /** Two sheets at 50, and one of the rack that has no price. */
  @Test
  void tellsWhatIsToBeBought() throws IOException {
    Files.writeString(
        shop.resolve("parts.csv"), "part,material,length,width,count\nlid,ply,90 in,40 in,3\n");
    Files.writeString(
        shop.resolve("rack.csv"),
        "material,length,width,count,price,supply\n"
            + "ply,8 ft,4 ft,1,,on-hand\nply,8 ft,4 ft,,50,to-buy\n");
    Path out = shop.resolve("out");
    assertThat(run(shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", out))
        .startsWith("0")
        .contains("To be bought, where it has a price: 100.00\n");
    assertThat(Files.readString(out.resolve("stock.csv")))
        .contains("on hand\",1,0,,\r\n")
        .endsWith(",2,2,50,100\r\n");
  }

  /** An offcut that is worth 10 of the job's money is taken, and nothing is spent. */
  @Test
  void tellsWhatOfTheCostIsWorthOnHand() throws IOException {
    Path parts = shop.resolve("parts.csv");
    Path rack = shop.resolve("rack.csv");
    Files.writeString(parts, "part,material,length,width,count\nlid,ply,90 in,40 in,1\n");
    Files.writeString(
        rack,
        "material,length,width,count,price,supply,worth\n"
            + "ply,8 ft,4 ft,1,,on-hand,10\nply,8 ft,4 ft,,50,to-buy,\n");
    assertThat(run(parts, rack, "--out", shop.resolve("out")))
        .startsWith("0")
        .contains(
            "cost 10.00 (none comes to less than 10.00): proven to be the least; 10.00 of the cost"
                + " is the worth stated of stock on hand, not money to be spent\n");
  }

  /** A line that was broken by hand would be broken again by a terminal of 80. */
  @Test
  void theHelpIsNoWiderThanATerminalAndBreaksOnlyThere() {
    List<String> lines = run("--help").lines().toList();
    assertThat(lines).allMatch(line -> line.length() <= 80);
    int first =
        lines.indexOf(
            lines.stream().filter(l -> l.startsWith("PARTS needs")).findFirst().orElseThrow());
    assertThat(lines.subList(first, lines.size() - 1)).allMatch(line -> line.length() > 55);
  }

  /** What is said of the others is not said of all: of oak one is placed, of elm none. */
  @Test
  void nothingIsSaidOfTheLeastWherePartsAreLeftOut() throws IOException {
    Path parts = shop.resolve("parts.csv");
    Path rack = shop.resolve("rack.csv");
    Files.writeString(
        parts,
        "part,material,length,width,count\n"
            + "lid,oak,900 mm,400 mm,1\ntop,oak,2500 mm,400 mm,1\ntop,elm,2500 mm,400 mm,1\n");
    Files.writeString(
        rack,
        "material,length,width,count,price\noak,1000 mm,500 mm,1,40\nelm,1000 mm,500 mm,1,50\n");
    assertThat(run(parts, rack, "--out", shop.resolve("out")))
        .contains(
            "oak, sheets: 1 (no layout of what has a place needs fewer than 1), cost 40.00 (none"
                + " comes to less than 40.00): parts without a place\n",
            "elm, sheets: no part has a place\n")
        .doesNotContain("proven", "above the least");
  }

  @Test
  void writesEveryFileOfTheExampleAndTheSameBytesAgain() throws IOException {
    Path first = shop.resolve("first");
    Path second = shop.resolve("second");
    assertThat(run(PARTS, STOCK, "--out", first))
        .isEqualTo(
            """
            0
            birch ply, sheets: 3 (no layout needs fewer than 3), cost 172.00 (none comes to less than 172.00): proven to be the least
            back ply, sheets: 2 (no layout needs fewer than 2), cost 69.00 (none comes to less than 69.00): proven to be the least
            ash, boards, cut to length and width: 2 (no layout needs fewer than 2), cost 50.00 (none comes to less than 50.00): proven to be the least
            To be bought, where it has a price: 291.00
            The cutting is in %s.
            """
                .formatted(first));
    run(PARTS, STOCK, "--out", second);
    assertThat(files(first)).isEqualTo(files(second));
    assertThat(files(first).keySet())
        .contains("cutting.pdf", "layouts.csv", "cutting-order.csv", "stock.csv")
        .anyMatch(name -> name.startsWith("drawings/") && name.endsWith(".svg"));
  }

  /** Two boards of 8 ft by 6 in, 5/4: 10 board feet; four rails of 40 by 6 in: 8 1/3. */
  @Test
  void tellsTheYieldOfBoardsInWordsTablesAndOnThePage() throws IOException {
    Path parts = shop.resolve("rails.csv");
    Path stock = shop.resolve("ash.csv");
    Files.writeString(parts, "part,material,length,width,count\nrail,ash,40 in,6 in,4\n");
    Files.writeString(stock, "material,kind,length,width,thickness\nash,board,8 ft,6 in,5/4\n");
    Path out = shop.resolve("out");
    assertThat(run(parts, stock, "--out", out))
        .startsWith("0")
        .contains("ash: 10 bd ft taken, 8.33 bd ft in parts, yield 83.3 %\n");
    // 144 cubic inches of 16387.064 mm³ are 0.00235974 m³.
    assertThat(Files.readString(out.resolve("yield.csv")))
        .isEqualTo(
            "material,taken bd ft,in parts bd ft,taken m3,in parts m3,yield %\r\n"
                + "ash,10,8.33,0.0236,0.0197,83.3\r\n");
  }

  /** A top 400 wide, and 6 to plane, from four strips of 102 with 3 off both their edges. */
  @Test
  void aPanelWiderThanTheBoardsIsGluedFromStrips() throws IOException {
    Path parts = shop.resolve("top.csv");
    Path stock = shop.resolve("ash.csv");
    Files.writeString(
        parts, "part,material,length,width,glue-up\ntop,ash,800 mm,400 mm,60 mm..120 mm\n");
    Files.writeString(
        stock,
        "material,kind,length,width,thickness,rough-length,rough-width,rough-thickness,jointing\n"
            + "ash,board,2 m,150 mm,27 mm,25 mm,6 mm,5 mm,3 mm\n");
    Path out = shop.resolve("out");
    // 2 boards of 2 x 0.15 x 0.027 m; 0.8 x 0.4 x 0.022 m.
    assertThat(run(parts, stock, "--out", out))
        .startsWith("0")
        .contains("ash: 0.0162 m³ taken, 0.00704 m³ in parts, yield 43.5 %\n");
    assertThat(parts(out, "1 top")).isEqualTo(4);
    assertThat(Files.readString(out.resolve("finished.csv")))
        .endsWith("ash,1 top,4,825,108,800,400,22,825,108,800,400,22\r\n");
  }

  /** Counted in the table of layouts against the table of parts. */
  @Test
  void everyPartStandsInTheLayouts() throws IOException {
    Path out = shop.resolve("out");
    run(PARTS, STOCK, "--out", out);
    List<String> layouts = Files.readAllLines(out.resolve("layouts.csv"));
    Map<String, Long> cut = new TreeMap<>();
    for (String line : layouts.subList(1, layouts.size())) {
      // The name of the stock may hold a comma, so count from the end.
      String[] cells = line.split(",");
      long alike = Long.parseLong(line.replaceFirst(".*,S\\d+,(\\d+),.*", "$1"));
      String part = cells[cells.length - 7];
      if (!part.isEmpty()) {
        cut.merge(part, alike, Long::sum);
      }
    }
    assertThat(cut)
        .isEqualTo(
            new TreeMap<>(
                Map.of(
                    "1 side",
                    4L,
                    "2 shelf",
                    10L,
                    "3 divider",
                    6L,
                    "4 kick",
                    2L,
                    "5 back",
                    2L,
                    "6 rail",
                    4L,
                    "7 drawer front",
                    6L,
                    "8 peg",
                    12L)));
  }

  @Test
  void saysWhichPartsHaveNoPlaceAndWritesTheRest() throws IOException {
    Path stock = shop.resolve("stock.csv");
    Files.writeString(
        stock,
        """
        material,length,width,count,kind
        birch ply,8 ft,4 ft,1,sheet
        back ply,8 ft,4 ft,,sheet
        ash,8 ft,5 1/2 in,,board
        """);
    String told = run(PARTS, stock, "--out", shop.resolve("out"));
    assertThat(told)
        .startsWith("1\n")
        .containsPattern("error: \\d+ of line \\d [a-z]+ can't be cut from birch ply")
        .contains("The cutting is in");
    assertThat(shop.resolve("out/cutting.pdf")).exists();
  }

  @Test
  void tellsAllThatIsWrongAndWritesNothing() throws IOException {
    Path parts = shop.resolve("parts.csv");
    Files.writeString(parts, "part,material,length,width\nside,ply,72,11 in\n");
    Path stock = shop.resolve("stock.csv");
    Files.writeString(stock, "material,length,width,price\nply,96 in,48 in,dear\n");
    Path out = shop.resolve("out");
    assertThat(run(parts, stock, "--out", out, "--set", "kref=3 mm", "--set", "sheet-trim=1/4"))
        .isEqualTo(
            """
            2
            %s:2:10: error: length '72': a length without a unit. Write the unit, as in 31 1/2 in or 800 mm, or state it for all with --unit inch or --unit mm.
            %s:2:17: error: price 'dear': it is an amount like 92 or 92.50, below 1000000000. Write digits, with a point before cents, and no sign of money.
            --set kref=3 mm: error: cutting has no such setting. Did you mean 'kerf'?
            --set sheet-trim=1/4: error: a length without a unit. Write it like 1/8 in or 3.2 mm.
            """
                .formatted(parts, stock));
    assertThat(out).doesNotExist();
  }

  /** Whatever is no number from 1 to a day's gets one message, and hides no other. */
  @ParameterizedTest
  @ValueSource(strings = {"0", "abc", "1.5", "86401", "99999999999"})
  void tellsWhatSecondsAreWithAllElseThatIsWrong(String seconds) {
    assertThat(run(PARTS, STOCK, "--seconds", seconds, "--set", "kref=3 mm"))
        .isEqualTo(
            """
            2
            --set kref=3 mm: error: cutting has no such setting. Did you mean 'kerf'?
            --seconds %s: error: it is a whole number from 1 to 86400. Write how many seconds to search for.
            """
                .formatted(seconds));
  }

  /** The lid is wider than any board and no longer; the leg is longer, and in the line after it. */
  @Test
  void tellsPartsWithoutAPlaceInTheOrderOfTheirLinesWithTheirCures() throws IOException {
    Path parts = shop.resolve("parts.csv");
    Path stock = shop.resolve("stock.csv");
    Files.writeString(
        parts,
        """
        part,material,length,width,grain,match,together
        lid,ash,900 mm,400 mm,length,,
        leg,ash,2500 mm,90 mm,length,,
        low,ply,900 mm,300 mm,length,m1,
        high,ply,1700 mm,300 mm,length,m1,
        door,ply,600 mm,300 mm,any,,g
        slab,ply,2600 mm,300 mm,any,,g
        """);
    Files.writeString(
        stock,
        """
        material,kind,length,width,price
        ash,board,2 m,150 mm,9
        ply,sheet,2440 mm,1220 mm,40
        """);
    Path out = shop.resolve("out");
    assertThat(run(parts, stock, "--out", out))
        .isEqualTo(
            """
            1
            ash, boards, cut to length and width: no part has a place
            ply, sheets: no part has a place
            error: 1 of line 1 lid can't be cut from ash: it is wider than any of the stock, trimmed (it is 900 x 400 mm, the largest of the stock 2000 x 150 mm, trimmed 1950 x 150 mm, and 147 mm wide where it is ripped)
              - cure: glue it up from strips, edge to edge: write their least and greatest width under glue-up in the table of parts, as in 2 in..4 1/2 in; cost: time
              - cure: state more or larger stock of ash; cost: its price
              - cure: make it smaller, or divide it; cost: looks
            error: 1 of line 2 leg can't be cut from ash: it is longer than any of the stock, trimmed (it is 2500 x 90 mm, the largest of the stock 2000 x 150 mm, trimmed 1950 x 150 mm, and 147 mm wide where it is ripped)
              - cure: state more or larger stock of ash; cost: its price
              - cure: make it smaller, or divide it; cost: looks
            error: 1 of line 3 low can't be cut from ply: its strip m1 is longer than any of the stock, trimmed (with the kerfs between its parts it is 2603.2 x 300 mm, the largest of the stock 2440 x 1220 mm, trimmed 2430 x 1210 mm)
              - cure: state more or larger stock of ply; cost: its price
              - cure: make it smaller, or divide it; cost: looks
            error: 1 of line 4 high can't be cut from ply: its strip m1 is longer than any of the stock, trimmed (with the kerfs between its parts it is 2603.2 x 300 mm, the largest of the stock 2440 x 1220 mm, trimmed 2430 x 1210 mm)
              - cure: state more or larger stock of ply; cost: its price
              - cure: make it smaller, or divide it; cost: looks
            error: 1 of line 5 door can't be cut from ply: it has to share a sheet with line 6 slab, which can't be cut: it is longer than any of the stock, trimmed (it is 2600 x 300 mm, the largest of the stock 2440 x 1220 mm, trimmed 2430 x 1210 mm)
              - cure: state more or larger stock of ply; cost: its price
              - cure: make it smaller, or divide it; cost: looks
            error: 1 of line 6 slab can't be cut from ply: it is longer than any of the stock, trimmed (it is 2600 x 300 mm, the largest of the stock 2440 x 1220 mm, trimmed 2430 x 1210 mm)
              - cure: state more or larger stock of ply; cost: its price
              - cure: make it smaller, or divide it; cost: looks
            The cutting is in %s.
            """
                .formatted(out));
  }

  /** As the tables themselves name them. */
  @Test
  void helpNamesEveryColumn() throws IOException {
    Path bare = Files.writeString(shop.resolve("bare.csv"), "x\ny\n");
    String help = run("--help");
    List<String> columns =
        Pattern.compile("Write the columns (.*) in any order")
            .matcher(run(bare, bare))
            .results()
            .flatMap(found -> Stream.of(found.group(1).split(", ")))
            .toList();
    assertThat(columns).contains("glue-up", "jointing");
    assertThat(columns).allMatch(help::contains);
  }

  @Test
  void aWiderKerfTakesNoFewerSheets() {
    String thin = run(PARTS, STOCK, "--out", shop.resolve("thin"), "--set", "kerf=0.5 mm");
    String wide = run(PARTS, STOCK, "--out", shop.resolve("wide"), "--set", "kerf=8 mm");
    assertThat(sheets(wide)).isGreaterThanOrEqualTo(sheets(thin));
  }

  private static int sheets(String told) {
    return told.lines()
        .filter(line -> line.contains("; no layout"))
        .mapToInt(line -> Integer.parseInt(line.replaceFirst(".*: (\\d+); no.*", "$1")))
        .sum();
  }

  @Test
  void aJobKeepsItsOwnUnitAndSettings() {
    assertThat(run(EXAMPLES.resolve("reading-room.yaml"), "--set", "kerf=1/8 in"))
        .startsWith("2")
        .contains("a job states its own unit and settings");
  }
}
