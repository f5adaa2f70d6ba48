package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sizes of pieces that are worked to size or glued, reckoned by hand, and the check of them. */
class BlankTest {

  private static Length length(String text) {
    return new LengthReader(Unit.MILLIMETRE).read(text).orThrow();
  }

  /**
   * 400 and 6 to plane are 406: a quarter is 101.5, so 102, and 3 off both edges 108. 16 and 1/4 in
   * are 16 1/4: a quarter is 4 1/16, and 1/8 off both edges 4 5/16; a third would be 5 11/16.
   */
  @ParameterizedTest
  @CsvSource({
    "400 mm, 6 mm, 3 mm, 60 mm, 120 mm, 1 mm, 4, 108 mm",
    "400 mm, 6 mm, 3 mm, 60 mm, 142 mm, 1 mm, 3, 142 mm",
    "400 mm, 6 mm, 3 mm, 60 mm, 141 mm, 1 mm, 4, 108 mm",
    "400 mm, 0 mm, 0 mm, 60 mm, 100 mm, 1 mm, 4, 100 mm",
    "16 in, 1/4 in, 1/8 in, 2 in, 5 in, 1/16 in, 4, 4 5/16 in",
    "100 mm, 6 mm, 3 mm, 60 mm, 120 mm, 1 mm, 1, 106 mm",
    "40 mm, 6 mm, 3 mm, 60 mm, 120 mm, 1 mm, 1, 46 mm"
  })
  void gluesFromAsFewStripsAsCanBe(
      String width,
      String rough,
      String edge,
      String least,
      String greatest,
      String step,
      int strips,
      String cut) {
    Blank blank = glued(width, rough, edge, least, greatest, step).orElseThrow();
    assertThat(blank.strips()).isEqualTo(strips);
    assertThat(blank.cutWidth(length(step))).isEqualTo(length(cut));
    assertThat(blank.cutLength()).isEqualTo(length("825 mm"));
  }

  private static Optional<Blank> glued(
      String width, String rough, String edge, String least, String greatest, String step) {
    Allowance allowance = new Allowance(length("25 mm"), length(rough), length(edge));
    return Blank.glued(
        Blank.whole("A", length("800 mm"), length(width), allowance),
        new Blank.Widths(length(least), length(greatest)),
        length(step));
  }

  /** Four strips would be 108, five 88; and edges that eat the strip leave none at all. */
  @ParameterizedTest
  @CsvSource({"3 mm, 90 mm, 105 mm", "10 mm, 1 mm, 20 mm"})
  void saysWhereNoNumberOfStripsFits(String edge, String least, String greatest) {
    assertThat(glued("400 mm", "6 mm", edge, least, greatest, "1 mm")).isEmpty();
  }

  private static final Length STEP = Length.mm(1);

  private static final Blank TOP =
      new Blank(
          "A",
          Length.mm(800),
          Length.mm(400),
          4,
          new Allowance(Length.mm(25), Length.mm(6), Length.mm(3)));

  /** One piece of that size from a board, as if a search had answered so. */
  private static List<Fault> faults(Blank blank, int length, int width, Lay lay) {
    boolean straight = lay == Lay.STRAIGHT;
    StockSheet board =
        new StockSheet(
            "board",
            Length.mm(straight ? length : width),
            Length.mm(straight ? width : length),
            SheetGrain.NONE,
            Supply.unlimited(),
            0,
            Origin.TO_BUY);
    SheetPattern pattern = new SheetPattern(board, 1, new Node.Finished("A", lay));
    Layout layout = new Layout(List.of(pattern), List.of(), new LowerBound(0, 1));
    return VirtualJointer.check(List.of(blank), layout, STEP);
  }

  /** 4 x (108 - 6) - 6 is 402: wide enough, and by less than a millimetre a strip too wide. */
  @Test
  void theVirtualJointerPassesWhatComesOutWideEnough() {
    assertThat(faults(TOP, 825, 108, Lay.STRAIGHT)).isEmpty();
    assertThat(faults(TOP, 825, 108, Lay.TURNED)).isEmpty();
    Blank leg = Blank.whole("A", Length.mm(800), Length.mm(40), TOP.allowance());
    assertThat(faults(leg, 825, 46, Lay.STRAIGHT)).isEmpty();
  }

  /** 4 x (107 - 6) - 6 is 398, 4 x (109 - 6) - 6 is 406. */
  @Test
  void theVirtualJointerSeesPiecesOfTheWrongSize() {
    assertThat(faults(TOP, 825, 107, Lay.STRAIGHT))
        .containsExactly(new Fault.WrongWhenWorked("A", Length.mm(800), Length.mm(398)));
    assertThat(faults(TOP, 825, 109, Lay.STRAIGHT))
        .containsExactly(new Fault.WrongWhenWorked("A", Length.mm(800), Length.mm(406)));
    assertThat(faults(TOP, 824, 108, Lay.STRAIGHT)).hasSize(1);
    Blank leg = Blank.whole("A", Length.mm(800), Length.mm(40), TOP.allowance());
    assertThat(faults(leg, 825, 47, Lay.STRAIGHT)).hasSize(1);
    assertThat(faults(leg, 825, 45, Lay.STRAIGHT)).hasSize(1);
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** Whatever is asked for: the check agrees, one strip less would be too wide. */
  @ParameterizedTest
  @MethodSource("seeds")
  void everyGlueUpComesOutAndNoneHasAStripTooMany(long seed) {
    Random random = new Random(seed);
    Allowance allowance =
        new Allowance(
            Length.mm(random.nextInt(40)),
            Length.mm(random.nextInt(12)),
            Length.mm(random.nextInt(5)));
    Blank whole = Blank.whole("A", Length.mm(100), Length.mm(50 + random.nextInt(900)), allowance);
    Length greatest = Length.mm(40 + random.nextInt(160));
    Blank blank = Blank.glued(whole, new Blank.Widths(Length.mm(10), greatest), STEP).orElseThrow();
    int width = Math.toIntExact(Math.round(blank.cutWidth(STEP).mm()));
    int length = Math.toIntExact(Math.round(blank.cutLength().mm()));
    assertThat(greatest.mm()).isGreaterThanOrEqualTo(width);
    assertThat(faults(blank, length, width, Lay.STRAIGHT)).isEmpty();
    if (blank.strips() > 1) {
      Blank fewer = new Blank("A", whole.length(), whole.width(), blank.strips() - 1, allowance);
      assertThat(fewer.cutWidth(STEP).isMoreThan(greatest)).isTrue();
    }
  }
}
