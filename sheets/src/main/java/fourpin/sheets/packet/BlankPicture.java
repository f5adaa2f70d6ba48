package fourpin.sheets.packet;

import fourpin.bench.Step;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Method;
import fourpin.plan.CleatBlank;
import fourpin.sheets.drawings.BlankRipView;
import fourpin.sheets.drawings.BlankView;
import fourpin.sheets.drawings.BlankView.Lie;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Block.SetUp;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Picture and settings of the sheet of blanks for cleat strips, which are bored and then ripped.
 */
record BlankPicture(Words words, DrillingSheet sheet) {

  /** Room of the picture of the saw cut, below the steps. */
  private static final double CUT_WIDE = 90;

  private static final double CUT_HIGH = 75;

  /**
   * @param method by which the bay of the blanks gets its places for shelves
   */
  DrillingPicture of(Method method) {
    List<CleatBlank> blanks = sheet.blanks();
    List<Integer> marks = DrillingPicture.marks(sheet);
    return new DrillingPicture(
        sheet.worked(),
        new SetUp(lines(method)),
        drafter -> new BlankView(drafter, sheet.built(), blanks, lie(method), marks).draw(),
        blanks.stream().limit(1).map(this::rip).toList(),
        List.of());
  }

  private static Lie lie(Method method) {
    return method instanceof Method.Blanks(_, _, int stack) && stack > 1
        ? Lie.STACKED
        : Lie.SIDE_BY_SIDE;
  }

  private Block rip(CleatBlank blank) {
    return new Block.Figure(
        new BlankRipView(words.fullPage().wide(CUT_WIDE).high(CUT_HIGH), sheet.built(), blank)
            .draw(),
        "Round a hole of " + blank.wood().mark() + ": the saw cut is cross-hatched.");
  }

  private List<SetUp.Line> lines(Method method) {
    List<SetUp.Line> lines = new ArrayList<>();
    if (method instanceof Method.Blanks blanks) {
      BitSetting bit = blanks.bit();
      lines.add(new SetUp.Line("Bit", words.diameter(bit.diameter()) + ", " + bit.tool()));
      lines.add(new SetUp.Line("Blanks", number(lie(method))));
      if (blanks.how() == Method.How.DRILL_PRESS) {
        bores().limit(1).forEach(row -> lines.add(fence(row)));
      }
    }
    rips().limit(1).forEach(rip -> lines.add(saw(rip)));
    return lines;
  }

  private String number(Lie lie) {
    int blanks = sheet.blanks().size();
    return blanks + (blanks == 1 ? "" : lie == Lie.STACKED ? ", in one stack" : ", one by one");
  }

  private SetUp.Line fence(Step.BoreRow row) {
    return new SetUp.Line("Fence to bit's centre", words.length(row.offset()));
  }

  private SetUp.Line saw(Step.Rip rip) {
    return new SetUp.Line(
        "Then rip, fence to blade",
        words.length(rip.width()) + ", kerf " + words.length(rip.kerf()));
  }

  private Stream<Step> typed() {
    return sheet.worked().stream().flatMap(s -> s.typed().stream());
  }

  private Stream<Step.BoreRow> bores() {
    return typed().flatMap(s -> s instanceof Step.BoreRow row ? Stream.of(row) : Stream.empty());
  }

  private Stream<Step.Rip> rips() {
    return typed().flatMap(s -> s instanceof Step.Rip rip ? Stream.of(rip) : Stream.empty());
  }
}
