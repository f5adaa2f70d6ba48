package fourpin.boring.tolerance;

import static fourpin.job.SampleJobs.in;

import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Method;
import fourpin.job.Setting;
import fourpin.job.Way;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Deviations of ways without a guide, worked out by hand; settings hold two standard deviations.
 */
class UnguidedErrorsTest {

  private static final BitSetting BIT =
      new BitSetting("bit", in("1/4"), in("0"), in("0"), in("3/8"), in("1/8"), in("3/16"));
  private static final Method IN_PAIRS =
      new Method.Marked(
          Method.How.BY_HAND,
          BIT,
          List.of(Workshop.pair(1, "L", "P1"), Workshop.pair(2, "P1", "R")));
  private static final Method BY_HAND = new Method.Marked(Method.How.BY_HAND, BIT, List.of());

  /** Marks on the stick are common to a level; marks on the panel are not. */
  @Test
  void theStickCancelsAndTheMarksDoNot() {
    Workshop stick = Workshop.with(Workshop.only(Setting.STICK_ERROR, ErrorModelsTest.HALF_MM));
    ErrorModelsTest.deviates(stick.model(Way.STORY_STICK, BY_HAND, Alteration.NONE), 0);
    Workshop marks = Workshop.with(Workshop.only(Setting.MARK_ERROR, ErrorModelsTest.HALF_MM));
    ErrorModelsTest.deviates(
        marks.model(Way.STORY_STICK, BY_HAND, Alteration.NONE), 2 * ErrorModelsTest.SIGMA);
  }

  /**
   * Uprights side by side: what all holes of a level share cancels, and so does what both rows of a
   * panel share. The lines rise by the setting from edge to edge of both, 12 and 11 13/32 in; rows
   * are 8 11/32 in apart, on both panels.
   */
  @ParameterizedTest
  @CsvSource({
    "SEAT_ERROR, 2, 0",
    "STICK_ERROR, 0, 0",
    "MARK_ERROR, 2, 0",
    "PUNCH_ERROR, 0, 2",
    "DRILL_WANDER, 2, 2",
    "SQUARE_ERROR, 0, 0.712950601"
  })
  void linesAcrossBothUprightsAreCommonToALevel(Setting setting, double single, double paired) {
    Workshop shop = Workshop.with(Workshop.only(setting, ErrorModelsTest.HALF_MM));
    ErrorModelsTest.deviates(
        shop.model(Way.STORY_STICK, BY_HAND, Alteration.NONE), single * ErrorModelsTest.SIGMA);
    ErrorModelsTest.deviates(
        shop.model(Way.STORY_STICK, IN_PAIRS, Alteration.NONE), paired * ErrorModelsTest.SIGMA);
  }

  /** A blank gives both strips of a side: its holes cancel, its seats don't. */
  @Test
  void cleatsOfOneBlankCancel() {
    Method blanks = new Method.Blanks(Method.How.DRILL_PRESS, BIT, 1);
    Workshop press = Workshop.with(Workshop.only(Setting.PRESS_ERROR, ErrorModelsTest.HALF_MM));
    ErrorModelsTest.deviates(press.model(Way.CLEAT_BLANK, blanks, Alteration.NONE), 0);
    Workshop seat = Workshop.with(Workshop.only(Setting.SEAT_ERROR, ErrorModelsTest.HALF_MM));
    ErrorModelsTest.deviates(
        seat.model(Way.CLEAT_BLANK, blanks, Alteration.NONE), 2 * ErrorModelsTest.SIGMA);
  }

  @Test
  void standardsMissByTheirEndsAndSlots() {
    Method standards = new Method.ScrewedOn();
    for (Setting setting : List.of(Setting.CUT_ERROR, Setting.SLOT_ERROR)) {
      Workshop shop = Workshop.with(Workshop.only(setting, ErrorModelsTest.HALF_MM));
      ErrorModelsTest.deviates(
          shop.model(Way.GROOVED_STANDARDS, standards, Alteration.NONE), 2 * ErrorModelsTest.SIGMA);
    }
  }

  @Test
  void aMachineMissesHoleByHoleAndLaysBothRowsOnAtOnce() {
    Method machine = new Method.Programmed("borer", BIT);
    Workshop holes = Workshop.with(Workshop.only(Setting.MACHINE_ERROR, ErrorModelsTest.HALF_MM));
    ErrorModelsTest.deviates(
        holes.model(Way.MACHINE, machine, Alteration.NONE), 2 * ErrorModelsTest.SIGMA);
    Workshop seat = Workshop.with(Workshop.only(Setting.SEAT_ERROR, ErrorModelsTest.HALF_MM));
    ErrorModelsTest.deviates(seat.model(Way.MACHINE, machine, Alteration.NONE), 0);
  }
}
