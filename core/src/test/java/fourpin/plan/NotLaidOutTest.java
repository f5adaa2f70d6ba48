package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Defect;
import fourpin.cutting.Grain;
import fourpin.cutting.Matched;
import fourpin.cutting.Part;
import fourpin.cutting.Ties;
import fourpin.cutting.Together;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.Supply;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Kerf 1/8, sheets trimmed by 1/4 all round, boards by 1 at the ends. */
class NotLaidOutTest {
  private static Part part(String mark, String length, String width, int count) {
    return new Part(mark, in(length), in(width), count, Grain.FIXED);
  }

  private static Stock stock(String length, String width, int count) {
    Optional<Integer> number = count > 0 ? Optional.of(count) : Optional.empty();
    return new Stock(
        length + " x " + width, in(length), in(width), number, Optional.empty(), Supply.TO_BUY);
  }

  private static Wanted wanted(Wanted.Kind kind, List<Part> parts, Ties ties, Stock... stock) {
    return new Wanted(
        "ash",
        kind,
        parts,
        List.of(stock),
        ties,
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        0,
        Map.of());
  }

  private static List<String> refusals(Job job, Wanted wanted) {
    return CutPlanner.plan(job, List.of(wanted)).findings().stream()
        .map(finding -> finding.what() + " | " + finding.remedies().getFirst().what())
        .toList();
  }

  private static Job with(Job job, Setting setting, String value) {
    return JobDraft.changed(
        job,
        d ->
            d.settings =
                job.settings()
                    .with(setting, SettingReader.read(setting, value, Unit.INCH).orThrow()));
  }

  /**
   * One sheet 40 long is ripped on the saw; the other, 96 long, is not, since 48 of 50 can only be
   * crosscut off before where it is not too wide.
   */
  @Test
  void tellsStockUsedUpFromStockThatTheSawRefuses() {
    Wanted panels =
        wanted(
            Wanted.Kind.SHEETS,
            List.of(part("side", "39", "20", 3)),
            Ties.NONE,
            stock("40", "24", 1),
            stock("96", "48", 0));
    Job job = with(with(job(), Setting.LONGEST_RIP, "50"), Setting.WIDEST_CROSSCUT, "30");
    assertThat(refusals(job, panels))
        .containsExactly(
            "2 of line side can't be cut from ash: the stock for it is used up (40 x 24: 1 of 1"
                + " used); the limits of the saw (longest-rip 50 in, widest-crosscut 30 in) bar it"
                + " from 96 x 48 | state more or larger stock of ash");
  }

  @Test
  void saysWhichStockIsUsedUpAndWhichIsTooSmall() {
    Wanted rails =
        wanted(
            Wanted.Kind.BOARDS,
            List.of(part("rail", "40", "5 1/2", 3)),
            Ties.NONE,
            stock("96", "5 1/2", 1),
            stock("30", "5 1/2", 0));
    assertThat(refusals(job(), rails))
        .containsExactly(
            "1 of line rail can't be cut from ash: the stock for it is used up (96 x 5 1/2: 1 of 1"
                + " used); 40 x 5 1/2 in does not fit 30 x 5 1/2 | state more or larger stock of ash");
  }

  /** The knot leaves 4 in on one side of it and 46 on the other; the second board is too short. */
  @Test
  void saysWhereDefectsAreInTheWay() {
    Stock knotty =
        new Stock(
            "1. 52 x 5 1/2",
            in("52"),
            in("5 1/2"),
            Optional.of(1),
            Optional.empty(),
            Supply.ON_HAND,
            Optional.empty(),
            List.of(new Defect(in("5"), in("2"), in("1/2"), in("1"))));
    Wanted rails =
        wanted(
            Wanted.Kind.BOARDS,
            List.of(part("rail", "48", "4", 1)),
            Ties.NONE,
            knotty,
            stock("30", "5 1/2", 0));
    assertThat(refusals(job(), rails))
        .containsExactly(
            "1 of line rail can't be cut from ash: between the defects of 1. 52 x 5 1/2 no place is"
                + " clear for it, 48 x 4 in; 48 x 4 in does not fit 30 x 5 1/2 | state more or"
                + " larger stock of ash");
  }

  /** 40 + 1/8 + 60. */
  @Test
  void givesTheSizeOfTheWholeStrip() {
    Matched bank = new Matched("strip bank", Matched.Run.END_TO_END, List.of("a", "b"));
    Wanted fronts =
        wanted(
            Wanted.Kind.SHEETS,
            List.of(part("a", "40", "10", 1), part("b", "60", "10", 1)),
            new Ties(List.of(bank), List.of()),
            stock("96", "48", 0));
    assertThat(refusals(job(), fronts))
        .hasSize(2)
        .first()
        .asString()
        .isEqualTo(
            "1 of line a can't be cut from ash: its strip bank is longer than any of the stock,"
                + " trimmed (with the kerfs between its parts it is 100 1/8 x 10 in, the largest of"
                + " the stock 96 x 48 in, trimmed 95 1/2 x 47 1/2 in) | state more or larger stock"
                + " of ash");
  }

  /** Four of 50 by 20: 4000 of 95 1/2 by 47 1/2, which are 4536.25. */
  @Test
  void saysThatNoSheetHoldsTheGroup() {
    Together doors = new Together("sheet doors", List.of("left", "right"));
    Wanted pairs =
        wanted(
            Wanted.Kind.SHEETS,
            List.of(part("left", "50", "20", 2), part("right", "50", "20", 2)),
            new Ties(List.of(), List.of(doors)),
            stock("96", "48", 0));
    assertThat(refusals(job(), pairs))
        .hasSize(2)
        .first()
        .asString()
        .isEqualTo(
            "2 of line left can't be cut from ash: no one sheet was found to hold lines left, right"
                + " (sheet doors), not even a whole one: its parts are 88 % of the largest, 96 x 48"
                + " in, trimmed | ask fewer parts to come from one sheet");
  }

  /**
   * The rail is ripped off, then what is left is crosscut at 60, and the shelves are ripped from
   * one another: three stages, the first a rip; four where it must be a crosscut. Another stock is
   * just as large as the panel.
   */
  private static Wanted railAndShelves() {
    Together all = new Together("sheet all", List.of("rail", "shelf", "panel"));
    return wanted(
        Wanted.Kind.SHEETS,
        List.of(
            part("rail", "95", "4", 1), part("shelf", "60", "20", 2), part("panel", "30", "42", 1)),
        new Ties(List.of(), List.of(all)),
        stock("96", "48", 0),
        stock("30 1/2", "42 1/2", 0));
  }

  private static String barredBy(String limits, String lifted) {
    return "1 of line rail can't be cut from ash: no one sheet was found to hold lines rail, shelf,"
        + " panel (sheet all) within the limits of the saw ("
        + limits
        + "), not even a whole one; "
        + lifted
        + " they fit on one 96 x 48 | cut it by other means, and set longest-rip, widest-crosscut,"
        + " first-cut or cut-stages to what these can do";
  }

  @Test
  void namesTheLimitThatKeepsAGroupFromOneSheet() {
    assertThat(refusals(job(), railAndShelves())).isEmpty();
    Job job = with(with(job(), Setting.CUT_STAGES, "2"), Setting.WIDEST_CROSSCUT, "48");
    assertThat(refusals(job, railAndShelves()))
        .hasSize(3)
        .first()
        .isEqualTo(barredBy("cut-stages 2", "without that limit"));
  }

  @Test
  void namesTheLimitsAnyOfWhichKeepsAGroupFromOneSheet() {
    Job job = with(with(job(), Setting.CUT_STAGES, "3"), Setting.FIRST_CUT, "across");
    assertThat(refusals(job, railAndShelves()))
        .hasSize(3)
        .first()
        .isEqualTo(barredBy("first-cut across, cut-stages 3", "without any one of these"));
  }

  /** What is left of the rail is 43 wide, and is crosscut. */
  @Test
  void namesTheLimitsThatTogetherKeepAGroupFromOneSheet() {
    Job job = with(with(job(), Setting.CUT_STAGES, "2"), Setting.WIDEST_CROSSCUT, "30");
    assertThat(refusals(job, railAndShelves()))
        .hasSize(3)
        .first()
        .isEqualTo(barredBy("widest-crosscut 30 in, cut-stages 2", "without all of these"));
  }

  private static Stock knotty(String name, String length, Defect... defects) {
    return new Stock(
        name,
        in(length),
        in("6"),
        Optional.of(1),
        Optional.empty(),
        Supply.ON_HAND,
        Optional.empty(),
        List.of(defects));
  }

  private static Wanted rails(String width, int count, Stock... stock) {
    Together set = new Together("set", List.of("rail"));
    return wanted(
        Wanted.Kind.BOARDS,
        List.of(part("rail", "30", width, count)),
        new Ties(List.of(), List.of(set)),
        stock);
  }

  /** By hand: 3 x 30 and a kerf of 1/8 in one of two stretches, of 39 and 49 between the trim. */
  @Test
  void provesThatNoBoardIsClearForAGroup() {
    Defect knot = new Defect(in("40"), in("2"), in("6"), in("2"));
    assertThat(refusals(job(), rails("4", 3, knotty("1: knotty", "96", knot))))
        .containsExactly(
            "3 of line rail can't be cut from ash: no one sheet can hold lines rail (set): on"
                + " 1: knotty no two of rail lie beside each other, and end to end they take"
                + " 90 1/8 in, of which 88 in are clear | ask fewer parts to come from one sheet");
  }

  /** 4 of 30 by 2 1/2 are 300 of 94 by 6, less 8 by 6 and more: 564 - 48 - 240. */
  @Test
  void provesThatABoardIsTooSmallForAGroup() {
    Defect split = new Defect(in("0"), in("0"), in("9"), in("6"));
    Defect rot = new Defect(in("49"), in("0"), in("40"), in("6"));
    assertThat(refusals(job(), rails("2 1/2", 4, knotty("1: rotten", "96", split, rot))))
        .containsExactly(
            "4 of line rail can't be cut from ash: no one sheet can hold lines rail (set):"
                + " 1: rotten has 92 % of the area that its parts take | ask fewer parts to come"
                + " from one sheet");
  }

  /** One goes into 44 and one into 49; by the sum, 93 for 90 1/8, three would. */
  @Test
  void saysHowFarItWasLookedForAGroup() {
    Defect knot = new Defect(in("45"), in("2"), in("1"), in("2"));
    assertThat(refusals(job(), rails("4", 3, knotty("1: knotty", "96", knot))))
        .containsExactly(
            "3 of line rail can't be cut from ash: no one sheet was found to hold lines rail (set),"
                + " not even a whole one: its parts are 65 % of the largest, 96 x 6 in, trimmed;"
                + " each board was tried by itself, with its defects cut out in some of all ways |"
                + " ask fewer parts to come from one sheet");
  }

  /** The large one is too wide to be crosscut and too long to be ripped, the small one is not. */
  @Test
  void namesThePartThatKeepsAGroupFromItsSheet() {
    Together pair = new Together("sheet pair", List.of("small", "large"));
    Wanted panels =
        wanted(
            Wanted.Kind.SHEETS,
            List.of(part("small", "20", "10", 1), part("large", "80", "40", 1)),
            new Ties(List.of(), List.of(pair)),
            stock("96", "48", 0));
    Job job = with(with(job(), Setting.LONGEST_RIP, "100"), Setting.WIDEST_CROSSCUT, "30");
    assertThat(refusals(job, panels))
        .hasSize(2)
        .first()
        .asString()
        .startsWith(
            "1 of line small can't be cut from ash: it has to share a sheet with line large, which"
                + " can't be cut: no cuts within the limits of the saw (widest-crosscut 30 in) get"
                + " it out of the stock")
        .endsWith(
            " | cut it by other means, and set longest-rip, widest-crosscut, first-cut or"
                + " cut-stages to what these can do");
  }

  /** The board is as wide as the part: it is only cut to length, which is not too long to rip. */
  @Test
  void namesTheLimitThatBarsAPartAsWideAsItsBoard() {
    Wanted shelves =
        wanted(
            Wanted.Kind.BOARDS,
            List.of(part("shelf", "40", "6", 1)),
            Ties.NONE,
            stock("96", "6", 0));
    Job job = with(with(job(), Setting.LONGEST_RIP, "120"), Setting.WIDEST_CROSSCUT, "5");
    assertThat(refusals(job, shelves))
        .containsExactly(
            "1 of line shelf can't be cut from ash: no cuts within the limits of the saw"
                + " (widest-crosscut 5 in) get it out of the stock (it is 40 x 6 in, the largest of"
                + " the stock 96 x 6 in, trimmed 94 x 6 in, and 5 7/8 in wide where it is ripped) |"
                + " cut it by other means, and set longest-rip, widest-crosscut, board-first-cut or"
                + " cut-stages to what these can do");
  }
}
