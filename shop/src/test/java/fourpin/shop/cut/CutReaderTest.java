package fourpin.shop.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fourpin.cutting.Grain;
import fourpin.cutting.Matched;
import fourpin.cutting.Part;
import fourpin.cutting.Ties;
import fourpin.cutting.Together;
import fourpin.job.Supply;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import fourpin.plan.Stock;
import fourpin.plan.Wanted;
import fourpin.shop.yaml.Problem;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CutReaderTest {

  private static final String PARTS = "part,material,length,width,count,grain\n";
  private static final String STOCK = "material,length,width,count,price,kind,supply\n";
  static final String SIDE = PARTS + "side,ply,72 in,11 in,2,length\n";
  static final String SHEET = STOCK + "ply,96 in,48 in,,92.50,sheet,\n";

  private static CutReader.Outcome read(String parts, String stock, Optional<Unit> bare) {
    return CutReader.read(
        parts.getBytes(StandardCharsets.UTF_8), stock.getBytes(StandardCharsets.UTF_8), bare);
  }

  static CutReader.Outcome.Good good(String parts, String stock, Optional<Unit> bare) {
    CutReader.Outcome outcome = read(parts, stock, bare);
    assertThat(outcome).isInstanceOf(CutReader.Outcome.Good.class);
    return (CutReader.Outcome.Good) outcome;
  }

  static String problems(String parts, String stock) {
    return switch (read(parts, stock, Optional.empty())) {
      case CutReader.Outcome.Good _ -> "";
      case CutReader.Outcome.Refused(List<Problem> ofParts, List<Problem> ofStock) ->
          Stream.concat(
                  ofParts.stream().map(p -> p.text("p")), ofStock.stream().map(p -> p.text("s")))
              .collect(Collectors.joining("\n"));
    };
  }

  @Test
  void readsBothTables() {
    CutReader.Outcome.Good read =
        good(
            SIDE + "shelf,ply,\"34 1/2\"\"\",11\",,any\n",
            SHEET + "ply,40 in,30 in,1,,sheet,on-hand\nash,8 ft,5 1/2 in,,,board,\n",
            Optional.empty());
    assertThat(read.style()).isEqualTo(LengthStyle.FRACTIONS);
    assertThat(read.wanted())
        .containsExactly(
            new Wanted(
                "ply",
                Wanted.Kind.SHEETS,
                List.of(
                    new Part("1 side", Length.inches(72), Length.inches(11), 2, Grain.FIXED),
                    new Part("2 shelf", Length.inches(69, 2), Length.inches(11), 1, Grain.FREE)),
                List.of(
                    new Stock(
                        "1: 96 x 48 in",
                        Length.inches(96),
                        Length.inches(48),
                        Optional.empty(),
                        Optional.of(new BigDecimal("92.50")),
                        Supply.TO_BUY),
                    new Stock(
                        "2: 40 x 30 in, on hand",
                        Length.inches(40),
                        Length.inches(30),
                        Optional.of(1),
                        Optional.empty(),
                        Supply.ON_HAND))));
  }

  private static final String TIED =
      """
      part,material,length,width,count,grain,spares,match,together
      low,ply,300 mm,400 mm,1,length,,drawers,
      high,ply,200 mm,400 mm,2,length,,drawers along,
      left,ply,600 mm,300 mm,1,length,1,pair across,front
      right,ply,600 mm,290 mm,1,length,,pair across,front
      """;

  @Test
  void readsWhatPartsHaveToDoWithEachOther() {
    CutReader.Outcome outcome =
        read(TIED, "material,length,width\nply,8 ft,4 ft\n", Optional.empty());
    assertThat(outcome).isInstanceOf(CutReader.Outcome.Good.class);
    Wanted wanted = ((CutReader.Outcome.Good) outcome).wanted().getFirst();
    assertThat(wanted.spares()).isEqualTo(Map.of("3 left", 1));
    assertThat(wanted.parts()).extracting(Part::count).containsExactly(1, 2, 2, 1);
    assertThat(wanted.ties())
        .isEqualTo(
            new Ties(
                List.of(
                    new Matched(
                        "strip drawers",
                        Matched.Run.END_TO_END,
                        List.of("1 low", "2 high", "2 high")),
                    new Matched(
                        "strip pair",
                        Matched.Run.SIDE_BY_SIDE,
                        List.of("3 left", "3 left", "4 right"))),
                List.of(new Together("sheet front", List.of("3 left", "4 right")))));
  }

  /** The change of one cell, and what is said of it. */
  @ParameterizedTest
  @CsvSource({
    "'200 mm,400 mm', '200 mm,390 mm', along it the same width",
    "'600 mm,290 mm', '590 mm,290 mm', across it the same length",
    "'290 mm,1,length', '290 mm,1,any', have the same grain",
    "'length,,drawers along', 'length,,', only one part comes from that strip",
    "'length,,pair across,front', 'length,,pair across,', only some parts of that strip",
    "'length,1,pair', 'length,-1,pair', whole number"
  })
  void refusesWhatCannotLieInOneStrip(String cell, String changed, String said) {
    CutReader.Outcome outcome =
        read(
            TIED.replace(cell, changed),
            "material,length,width\nply,8 ft,4 ft\n",
            Optional.empty());
    assertThat(outcome).isInstanceOf(CutReader.Outcome.Refused.class);
    assertThat(((CutReader.Outcome.Refused) outcome).ofParts())
        .singleElement()
        .satisfies(problem -> assertThat(problem.rule()).contains(said));
  }

  /** As spreadsheets of other countries write them: semicolons, CRLF, a mark at the start. */
  @Test
  void readsSemicolonsAndAnyOrderAndCase() {
    CutReader.Outcome.Good read =
        good(
            "\uFEFFWidth;LENGTH;Part;Material\r\n280;720;side;ply\r\n\r\n;;;\r\n",
            "material;length;width\r\nply;2500;1250\r\n",
            Optional.of(Unit.MILLIMETRE));
    assertThat(read.style()).isEqualTo(LengthStyle.MILLIMETRES);
    assertThat(read.wanted().getFirst().parts())
        .containsExactly(new Part("1 side", Length.mm(720), Length.mm(280), 1, Grain.FIXED));
  }

  /** With a unit, bare, and as an amount of money; a point holds there too. */
  @Test
  void readsDecimalCommasWhereSemicolonsPartTheCells() {
    CutReader.Outcome.Good read =
        good(
            "part;material;length;width\nside;ply;720,25 mm;280,5\nshelf;ply;1.25 m;30,5 cm\n",
            "material;length;width;price\nply;2500;1250,0;92,5\n",
            Optional.of(Unit.MILLIMETRE));
    Wanted wanted = read.wanted().getFirst();
    assertThat(wanted.parts())
        .extracting(part -> part.length().mm(), part -> part.width().mm())
        .containsExactly(tuple(720.25, 280.5), tuple(1250.0, 305.0));
    assertThat(wanted.stock().getFirst().price()).contains(new BigDecimal("92.5"));
  }

  /** There a comma parts cells, or is one in quotes; nor is one a mark of thousands. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          part,material,length,width#side,ply,720 mm,"280,5 mm"   | width '280,5 mm': a comma in a length
          part,material,length,width#side,ply,720 mm,280,5 mm     | '5 mm': there are more cells than columns
          part;material;length;width#side;ply;720 mm;1.280,5 mm   | width '1.280,5 mm': a comma in a length
          part;material;length;width#side;ply;1,200 mm;280 mm     | length '1,200 mm': it is from
          """)
  void refusesCommasThatMayMeanAnythingElse(String parts, String rule) {
    assertThat(problems(parts.replace("#", "\n") + "\n", "material,length,width\nply,8 ft,4 ft\n"))
        .startsWith("p:2:")
        .contains(rule);
  }

  @Test
  void aPartWithoutAWidthIsAsWideAsTheBoards() {
    CutReader.Outcome.Good read =
        good(
            PARTS + "rail,ash,30 in,,4,\n",
            STOCK + "ash,8 ft,5 1/2 in,,,board,\nash,6 ft,5 1/2 in,,,board,\n",
            Optional.empty());
    assertThat(read.wanted().getFirst().parts().getFirst().width()).isEqualTo(Length.inches(11, 2));
  }

  static Stream<Arguments> bad() {
    return Stream.of(
        Arguments.of(
            PARTS + "side,ply,72,11 in,2,length\n",
            SHEET,
            "p:2:10: error: length '72': a length without a unit. Write the unit, as in 31 1/2 in or"
                + " 800 mm, or state it for all with --unit inch or --unit mm."),
        Arguments.of(
            PARTS + "side,ply,9 m,11 in,2,length\n",
            SHEET,
            "p:2:10: error: length '9 m': it is from 5 mm to 8 m. Check the number and its unit."),
        Arguments.of(
            PARTS + "side,ply,72 in,11 in,0,along\n,ply,72 in,11 in,1.5,\n",
            SHEET,
            """
            p:2:22: error: count '0': it is a whole number from 1 to 9999. Write how many.
            p:2:24: error: grain 'along': it is one of any, length. Choose one of them, or leave it empty.
            p:3:1: error: part '': nothing stands there. Write a name.
            p:3:18: error: count '1.5': it is a whole number from 1 to 9999. Write how many."""),
        Arguments.of(
            PARTS + "\"two\nlines\",pyl,72 in,11 in,2,\n",
            SHEET,
            "p:3:8: error: material 'pyl': no stock is of that material. Did you mean 'ply'?"),
        Arguments.of(
            PARTS + "rail,ply,30 in,,4,\n",
            SHEET,
            "p:2:16: error: width '': only parts from boards of one width may leave theirs out."
                + " Write the width."),
        Arguments.of(
            SIDE,
            STOCK + "ply,96 in,48 in,x,$92,plank,on-hand\nply,96 in,48 in,,,,on-hand\n",
            """
            s:2:17: error: count 'x': it is a whole number from 1 to 9999. Write how many.
            s:2:19: error: price '$92': it is an amount like 92 or 92.50, below 1000000000. Write digits, with a point before cents, and no sign of money.
            s:2:23: error: kind 'plank': it is one of board, sheet. Choose one of them, or leave it empty.
            s:3:20: error: supply 'on-hand': what is on hand has a count. Write how many there are."""),
        Arguments.of(
            SIDE,
            SHEET + "ply,8 ft,5 in,,,board,\n",
            "s:3:17: error: kind 'board': 'ply' is both sheets and boards. Give one of them another"
                + " name."),
        Arguments.of(
            "part,material,lenght,width,part\nside,ply,72 in,11 in,x,y\n",
            SHEET,
            """
            p:1:1: error: the first line: it has no column 'length'. Write the columns part, material, length, width, count, grain, spares, match, together, thickness, glue-up in any order.
            p:1:15: error: column 'lenght': there is no such column. Did you mean 'length'?
            p:1:28: error: column 'part': it stands twice. Leave one of them out.
            p:2:24: error: 'y': there are more cells than columns. Put quotes round a cell that holds a comma."""),
        Arguments.of(
            "part;material;length;width\nside;ply;72 in;11 in;;x\n",
            SHEET,
            "p:2:23: error: 'x': there are more cells than columns. Put quotes round a cell that holds"
                + " a semicolon, which parts the cells as in the first line."),
        Arguments.of(
            PARTS + "\"side,ply,72 in,11 in,2,\n",
            SHEET,
            "p:2:1: error: the line: a quote is opened and not closed, or something stands after a"
                + " closed one. Write a quote within quotes twice, or leave all quotes out: 31 1/2"
                + " in."),
        Arguments.of(
            SIDE,
            "material,length,width,worth\nply,8 ft,4 ft,x\n",
            "s:2:15: error: worth 'x': it is an amount like 92 or 92.50, below 1000000000. Write"
                + " digits, with a point before cents, and no sign of money."),
        Arguments.of(
            "",
            PARTS,
            """
            p:1:1: error: the file: it is empty. Write the names of the columns in line 1.
            s:1:1: error: column 'part': there is no such column. The columns are material, length, width, count, price, kind, supply, worth, defects, thickness, rough-length, rough-width, rough-thickness, jointing, first-cut.
            s:1:34: error: column 'grain': there is no such column. The columns are material, length, width, count, price, kind, supply, worth, defects, thickness, rough-length, rough-width, rough-thickness, jointing, first-cut."""));
  }

  private static final String STRIPS =
      "part,material,length,width,grain,match\n"
          + "low,ply,300 mm,400 mm,length,m1\n"
          + "high,ply,300 mm,400 mm,length,m1 across\n"
          + "top,ply,300 mm,400 mm,any,m1\n"
          + "mid,ply,300 mm,390 mm,,m1\n";

  /** Each line against the first of its strip: another way, another grain, another width. */
  @Test
  void tellsWhatEachPartOfAStripHasOtherwise() {
    assertThat(problems(STRIPS, "material,length,width\nply,8 ft,4 ft\n"))
        .isEqualTo(
            """
            p:3:31: error: match 'm1 across': its strip runs along in line 2, and across here. Write the same way in all lines of the strip, or name another strip.
            p:4:23: error: grain 'any': parts of one strip have the same grain, which is length in line 2, and any here. Write the same grain in all lines of the strip, or name another strip under match.
            p:5:24: error: match 'm1': parts of one strip have along it the same width. Correct the sizes, or name another strip.""");
  }

  /** Nothing else is told, since it would be told of the wrong table. */
  @ParameterizedTest
  @ValueSource(strings = {STOCK + "ply,8 ft,4 ft,,x,,\n", "length;Material;width\n1 m;ply;1 m\n"})
  void tellsOnceThatTheTablesAreSwapped(String stock) {
    assertThat(problems(stock, STRIPS))
        .isEqualTo(
            "p:1:1: error: the two tables: they are swapped: this one has the columns of stock, the"
                + " other those of parts. Name the table of parts first and that of stock after"
                + " it.");
  }

  /** The same table twice, and one of parts whose name of that column is misspelt. */
  @ParameterizedTest
  @ValueSource(strings = {STRIPS, "prat,material,length,width,grain\nx,ply,1 m,1 m,any\n"})
  void doesNotTakeOtherTablesForSwappedOnes(String parts) {
    assertThat(problems(parts, STRIPS)).doesNotContain("swapped").contains("s:1:1: error: column");
  }

  /** Errors of one table hide none of the other, nor errors of one material those of another. */
  @Test
  void tellsWhatIsWrongInBothTablesAtOnce() {
    assertThat(
            problems(
                "part,material,length,width,grain,glue-up,match\n"
                    + "top,oak,800 mm,400 mm,length,120 mm..60 mm,\n"
                    + "lid,ply,800 mm,,length,,\n"
                    + "leg,ash,700 mm,50 mm,length,,\n"
                    + "one,ply,700 mm,50 mm,length,,strip\n"
                    + "two,mdf,700 mm,50 mm,length,,strip\n",
                "material,kind,length,width,count,defects\n"
                    + "oak,board,2 m,100 mm,1,3 m..3.1 m x 0 mm..2 mm\n"
                    + "ply,sheet,2 m,1 m,,\n"
                    + "mdf,sheet,2 m,1 m,,\n"))
        .isEqualTo(
            """
            p:2:30: error: glue-up '120 mm..60 mm': it ends before it begins. Write the lesser width first.
            p:3:16: error: width '': only parts from boards of one width may leave theirs out. Write the width.
            p:4:5: error: material 'ash': no stock is of that material. Add a line with it to the stock.
            p:6:30: error: match 'strip': only one part comes from that strip. Name it in the line of another part too, or leave it empty.
            s:2:24: error: defects '3 m..3.1 m x 0 mm..2 mm': it ends beyond the board, which has the length and width of its line. Measure along from the near end, and across from the near edge.""");
  }

  @ParameterizedTest
  @MethodSource("bad")
  void tellsEveryErrorWithItsPlace(String parts, String stock, String messages) {
    assertThat(problems(parts, stock)).isEqualTo(messages);
  }

  @Test
  void refusesWhatIsNotText() {
    byte[] latin =
        "part,material,length,width\nTür,ply,1 m,1 m\n".getBytes(StandardCharsets.ISO_8859_1);
    CutReader.Outcome outcome =
        CutReader.read(latin, SHEET.getBytes(StandardCharsets.UTF_8), Optional.empty());
    assertThat(((CutReader.Outcome.Refused) outcome).ofParts().getFirst().text("p"))
        .isEqualTo("p:1:1: error: the file: it is not text in UTF-8. Save it as CSV UTF-8.");
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** Tables with letters left out, doubled and changed, the signs of the format above all. */
  @ParameterizedTest
  @MethodSource("seeds")
  void neverThrowsForWhatATableHolds(long seed) {
    Random random = new Random(seed);
    CutReader.Outcome outcome = read(spoilt(SIDE, random), spoilt(SHEET, random), Optional.empty());
    switch (outcome) {
      case CutReader.Outcome.Good read -> assertThat(read.wanted()).isNotEmpty();
      case CutReader.Outcome.Refused(var ofParts, var ofStock) ->
          assertThat(ofParts.size() + ofStock.size()).isPositive();
    }
  }

  private static String spoilt(String text, Random random) {
    String signs = "\",;\n\r\t '½/-0é\uFEFF";
    StringBuilder spoilt = new StringBuilder(text);
    IntStream.range(0, random.nextInt(8))
        .forEach(
            _ -> {
              int at = random.nextInt(spoilt.length());
              char sign = signs.charAt(random.nextInt(signs.length()));
              switch (random.nextInt(3)) {
                case 0 -> spoilt.deleteCharAt(at);
                case 1 -> spoilt.insert(at, sign);
                default -> spoilt.setCharAt(at, sign);
              }
            });
    return spoilt.toString();
  }
}
