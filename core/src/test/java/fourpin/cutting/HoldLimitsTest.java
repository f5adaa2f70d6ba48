package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Common practice: narrow strips fall off outside the blade, whichever way the grain runs; what is
 * shorter along the cut than across it does not go to the rip fence. Sizes in inches, kerf 1/8.
 */
class HoldLimitsTest {

  private static final Length EIGHTH = Length.inches(1, 8);
  private static final StockSheet SHEET = Examples.sheet("sheet", 96, 48, Supply.of(1), 1);
  private static final StockSheet ROUGH =
      new StockSheet(
          "board",
          Length.inches(96),
          Length.inches(6),
          SheetGrain.ALONG_LENGTH,
          Supply.of(1),
          1,
          Origin.TO_BUY,
          List.of(),
          Length.inches(1, 4));

  /** Fences of 1 1/2 in at least; at a gauge crosscuts of 24 in, and pieces of 120 in. */
  private static final HoldLimits LIMITS =
      new HoldLimits(
          Length.ZERO,
          Length.inches(3, 2),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.of(Length.inches(24)),
          Optional.of(Length.inches(120)));

  /** As these, with rails of 30 in. */
  private static final HoldLimits REACH_30 =
      new HoldLimits(
          Length.ZERO,
          Length.inches(3, 2),
          Optional.of(Length.inches(30)),
          Optional.empty(),
          Optional.empty(),
          Optional.of(Length.inches(24)),
          Optional.of(Length.inches(120)));

  /** As these, and what is shorter than 12 in is small. */
  private static final HoldLimits SMALL_12 =
      new HoldLimits(
          Length.inches(12),
          Length.inches(3, 2),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.of(Length.inches(24)),
          Optional.of(Length.inches(120)));

  private static Length eighths(double inches) {
    return Length.inches(Math.round(inches * 8), 8);
  }

  private static Placed placed(double length, double width) {
    return new Placed(new Node.Offcut(), Length.ZERO, Length.ZERO, eighths(length), eighths(width));
  }

  private static Node.Cut cut(Direction way, double size) {
    return new Node.Cut(way, eighths(size), EIGHTH, new Node.Offcut(), new Node.Offcut());
  }

  private static Node.TrimOff trim(Edge edge) {
    return new Node.TrimOff(edge, Length.inches(1, 4), new Node.Offcut());
  }

  @ParameterizedTest
  @CsvSource({
    // as long along the cut as across it
    "RIP, 12, 60, 48, FENCE",
    "RIP, 12, 36, 36, FENCE",
    "CROSSCUT, 12, 30, 36, FENCE",
    // shorter along the cut: it turns at the fence
    "RIP, 36, 1, 48, GAUGE",
    "CROSSCUT, 36, 96, 6, GAUGE",
    "CROSSCUT, 78, 96, 24, GAUGE",
    "CROSSCUT, 78, 96, 25, STRAIGHTEDGE",
    "RIP, 12, 24, 48, GAUGE",
    "RIP, 12, 30, 48, STRAIGHTEDGE",
    // by the length of the piece, however short the cut
    "CROSSCUT, 80, 195, 12, MITRE_SAW",
    "CROSSCUT, 80, 120, 12, GAUGE",
    "CROSSCUT, 80, 195, 30, STRAIGHTEDGE",
    "RIP, 12, 195, 12, FENCE",
    // strips, and what is as wide as guard and push block
    "RIP, 0.375, 96, 2.25, FENCE_AT_REST",
    "RIP, 0.375, 96, 1.75, BAND_SAW",
    "RIP, 1.5, 96, 2.625, FENCE",
    "CROSSCUT, 1, 6, 36, FENCE_AT_REST",
    "CROSSCUT, 1, 2.125, 36, BAND_SAW",
    "CROSSCUT, 1, 60, 12, GAUGE",
  })
  void a_piece_is_held_by_its_shape(
      Direction way, double size, double length, double width, Hold hold) {
    assertThat(LIMITS.cut(placed(length, width), cut(way, size), SHEET)).isEqualTo(hold);
  }

  /** With a strip off the near edge the fence would stand along the far one, which is rough. */
  @Test
  void a_rough_edge_never_lies_along_the_fence() {
    Node.Cut strip = cut(Direction.RIP, 1);
    assertThat(LIMITS.cut(placed(40, 6), strip, ROUGH)).isEqualTo(Hold.BAND_SAW);
    assertThat(LIMITS.cut(placed(40, 5), strip, ROUGH)).isEqualTo(Hold.FENCE_AT_REST);
    assertThat(LIMITS.cut(placed(40, 6), strip, SHEET)).isEqualTo(Hold.FENCE_AT_REST);
    assertThat(LIMITS.cut(placed(40, 6), cut(Direction.RIP, 3), ROUGH)).isEqualTo(Hold.FENCE);
  }

  /** No strip of trim between fence and blade, and no edge at the fence before it is straight. */
  @ParameterizedTest
  @CsvSource({
    "NEAR_EDGE, 96, 48, FIRST_EDGE",
    "FAR_EDGE, 96, 48, FENCE_AT_REST",
    "NEAR_EDGE, 40, 6, FIRST_EDGE",
    "FAR_EDGE, 96, 1.75, FENCE_AT_REST",
    "FAR_EDGE, 96, 1.625, BAND_SAW",
    "NEAR_END, 30, 36, FIRST_EDGE",
    "FAR_END, 30, 36, FENCE_AT_REST",
    // no edge leads it there
    "NEAR_END, 96, 48, STRAIGHTEDGE",
    "FAR_END, 96, 48, STRAIGHTEDGE",
    "NEAR_END, 96, 6, GAUGE",
    "NEAR_EDGE, 4, 6, GAUGE",
    "FAR_END, 195, 6, MITRE_SAW",
  })
  void the_first_edge_is_straightened_and_leads_the_opposite_one(
      Edge edge, double length, double width, Hold hold) {
    assertThat(LIMITS.trim(placed(length, width), trim(edge))).isEqualTo(hold);
  }

  /** A sheet longer than the saw can rip is trimmed all the same. */
  @Test
  void what_is_beyond_the_saw_is_trimmed_along_a_straightedge() {
    HoldLimits short80 =
        new HoldLimits(
            Length.ZERO,
            Length.ZERO,
            Optional.empty(),
            Optional.of(Length.inches(80)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    HoldLimits narrow40 =
        new HoldLimits(
            Length.ZERO,
            Length.ZERO,
            Optional.empty(),
            Optional.empty(),
            Optional.of(Length.inches(40)),
            Optional.empty(),
            Optional.empty());
    assertThat(short80.trim(placed(96, 48), trim(Edge.NEAR_EDGE))).isEqualTo(Hold.STRAIGHTEDGE);
    assertThat(narrow40.trim(placed(30, 48), trim(Edge.NEAR_END))).isEqualTo(Hold.STRAIGHTEDGE);
    assertThat(narrow40.trim(placed(96, 40), trim(Edge.NEAR_END))).isEqualTo(Hold.GAUGE);
  }

  /** Where the fence would stand: at the setting, at what remains, at what stays. */
  @ParameterizedTest
  @CsvSource({
    "RIP, 30, 96, 48, FENCE",
    "RIP, 30.125, 96, 48, STRAIGHTEDGE",
    "CROSSCUT, 31, 40, 48, STRAIGHTEDGE",
    "RIP, 1, 96, 31.125, FENCE_AT_REST",
    "RIP, 1, 96, 31.25, STRAIGHTEDGE",
    // not by a fence
    "CROSSCUT, 31, 96, 12, GAUGE",
    "RIP, 1, 96, 2.5, BAND_SAW",
  })
  void the_fence_stands_no_farther_than_it_reaches(
      Direction way, double size, double length, double width, Hold hold) {
    assertThat(REACH_30.cut(placed(length, width), cut(way, size), SHEET)).isEqualTo(hold);
  }

  @Test
  void the_opposite_edge_of_what_is_wide_is_trimmed_along_the_straightedge_too() {
    assertThat(REACH_30.trim(placed(96, 48), trim(Edge.NEAR_EDGE))).isEqualTo(Hold.FIRST_EDGE);
    assertThat(REACH_30.trim(placed(96, 48), trim(Edge.FAR_EDGE))).isEqualTo(Hold.STRAIGHTEDGE);
    assertThat(REACH_30.trim(placed(96, 30.25), trim(Edge.FAR_EDGE))).isEqualTo(Hold.FENCE_AT_REST);
  }

  /** Common practice: nothing shorter than 12 in goes along the rip fence, and no hand holds it. */
  @ParameterizedTest
  @CsvSource({
    // at the fence by its shape
    "RIP, 4, 11.875, 8, JIG",
    "RIP, 4, 12, 8, FENCE",
    "CROSSCUT, 4, 8, 11.875, JIG",
    // a strip: the fence at what remains, or a band saw
    "RIP, 0.5, 11, 8, JIG",
    "RIP, 0.5, 11, 1.75, JIG",
    "RIP, 0.5, 12, 8, FENCE_AT_REST",
    // at the gauge
    "CROSSCUT, 4, 11, 8, CLAMPED_GAUGE",
    "RIP, 4, 8, 11, CLAMPED_GAUGE",
    "CROSSCUT, 4, 12, 8, GAUGE",
  })
  void what_is_small_is_clamped(
      Direction way, double size, double length, double width, Hold hold) {
    assertThat(SMALL_12.cut(placed(length, width), cut(way, size), SHEET)).isEqualTo(hold);
  }

  @ParameterizedTest
  @CsvSource({
    "NEAR_EDGE, 11, 8, JIG",
    "FAR_EDGE, 11, 8, JIG",
    "NEAR_EDGE, 12, 8, FIRST_EDGE",
    "FAR_EDGE, 12, 8, FENCE_AT_REST",
    "NEAR_END, 11, 8, CLAMPED_GAUGE",
    "NEAR_END, 12, 8, GAUGE",
  })
  void what_is_small_is_clamped_for_trimming(Edge edge, double length, double width, Hold hold) {
    assertThat(SMALL_12.trim(placed(length, width), trim(edge))).isEqualTo(hold);
  }

  /** What a saw of little reach does not cut may be small too, and no hand holds that either. */
  @Test
  void what_is_small_and_beyond_the_saw_is_clamped_as_well() {
    HoldLimits short8 =
        new HoldLimits(
            Length.inches(12),
            Length.ZERO,
            Optional.empty(),
            Optional.of(Length.inches(8)),
            Optional.empty(),
            Optional.of(Length.inches(6)),
            Optional.empty());
    assertThat(short8.trim(placed(10, 4), trim(Edge.NEAR_EDGE))).isEqualTo(Hold.JIG);
    assertThat(short8.cut(placed(11, 7), cut(Direction.CROSSCUT, 4), SHEET)).isEqualTo(Hold.JIG);
  }

  @Test
  void nothing_is_trimmed_between_fence_and_blade() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new SetUp.TrimEdge(Edge.NEAR_EDGE, Length.inches(1, 4), Hold.FENCE, List.of()))
        .withMessageContaining("between fence and blade");
  }

  @Test
  void without_limits_only_the_shape_counts() {
    assertThat(HoldLimits.NONE.cut(placed(96, 48), cut(Direction.RIP, 0.125), SHEET))
        .isEqualTo(Hold.FENCE);
    assertThat(HoldLimits.NONE.cut(placed(96, 48), cut(Direction.CROSSCUT, 1), SHEET))
        .isEqualTo(Hold.GAUGE);
    assertThat(HoldLimits.NONE.trim(placed(96, 48), trim(Edge.NEAR_EDGE)))
        .isEqualTo(Hold.FIRST_EDGE);
  }
}
