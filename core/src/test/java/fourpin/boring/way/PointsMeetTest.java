package fourpin.boring.way;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.bookcase;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseOrder;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.measure.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holes from both faces of a partition of 23/32 in, worked by hand. */
class PointsMeetTest {

  private static CaseOrder bored(String depth, String point, Bay second) {
    CaseOrder order = bookcase(bay(2), second);
    return order.with(
        order
            .settings()
            .with(Setting.HOLE_DEPTH, new SettingValue.OfLength(in(depth)))
            .with(Setting.BIT_POINT, new SettingValue.OfLength(in(point))));
  }

  private static List<Finding> found(CaseOrder order, List<Tool> tools) {
    return WaysTest.ways(job(order).with(new Shop("shop", tools))).findings().stream()
        .filter(f -> f.kind().equals("points-meet"))
        .toList();
  }

  /**
   * 23/32 less twice hole and point: 5/16 and 1/8 share 5/32, 1/4 and 7/64 just meet, 1/4 and 3/32
   * leave 1/32 where 1/16 is asked for, 1/4 and 5/64 leave 1/16. A bit without a point is the
   * matter of the floors alone, and holes whose floors meet are found with the pattern.
   */
  @ParameterizedTest
  @CsvSource({
    "5/16, 1/8, ERROR, -10/64",
    "1/4, 7/64, ERROR, 0/64",
    "1/4, 3/32, DOUBT, 2/64",
    "1/4, 5/64, , ",
    "5/16, 0, , ",
    "3/8, 1/8, , "
  })
  void should_count_the_points_from_both_faces(
      String depth, String point, Severity severity, String left) {
    List<Finding> found = found(bored(depth, point, bay(2)), List.of());
    if (severity == null) {
      assertThat(found).isEmpty();
      return;
    }
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().severity()).isEqualTo(severity);
    assertThat(found.getFirst().place().part()).contains("P1");
    int parts = Integer.parseInt(left.replace("/64", ""));
    assertThat(found.getFirst().figures().getFirst().value())
        .isEqualTo(Quantity.of(in("1").times(parts).over(64)));
  }

  /** The usual 1/8 in is no more than an assumption. */
  @Test
  void should_only_doubt_where_nobody_states_a_bit() {
    CaseOrder order = bookcase(bay(2), bay(2));
    SettingValue depth = new SettingValue.OfLength(in("5/16"));
    Finding finding =
        found(order.with(order.settings().with(Setting.HOLE_DEPTH, depth)), List.of()).getFirst();
    assertThat(finding.severity()).isEqualTo(Severity.DOUBT);
    assertThat(finding.what()).endsWith("No bit is stated: its point is taken as is usual.");
  }

  /** (23/32 - 1/16 - 2 x 1/8) / 2 = 13/64; a point of (3/32 - 1/16) / 2 = 1/64 at 5/16. */
  @Test
  void should_say_what_cures_points_that_meet() {
    Finding finding = found(bored("5/16", "1/8", bay(2)), List.of()).getFirst();
    assertThat(finding.what())
        .isEqualTo(
            "Holes of bays 1 and 2 lie opposite each other in partition 1 (P1): of 23/32 in the"
                + " holes take 5/16 in and 5/16 in, and the points of the bits 1/8 in and 1/8 in"
                + " more: they meet.");
    assertThat(finding.remedies())
        .extracting(Remedy::what)
        .containsExactly(
            "set hole-depth to 13/64 in, on both faces: leaves 1/16 in, points counted",
            "set bit-point to 1/64 in: a bit with no longer point",
            "state rows-back: 1/2 in for bay 2",
            "state levels-up: 1/2 in, half a pitch, for bay 2");
    assertThat(finding.remedies().getFirst().cost())
        .isEqualTo("stems of 3/8 in then stand 11/64 in proud: shorter ones, or shorten them");
  }

  /** The shop's bit has a point of 1/16 in: 23/32 - 2 x (1/4 + 1/16) = 3/32, whatever is set. */
  @Test
  void should_take_the_point_of_the_bit_that_bores() {
    CaseOrder order = bored("1/4", "1/8", bay(2));
    assertThat(found(order, List.of())).hasSize(1);
    Tool bit = new Tool.PlainBit("bit", in("1/4"), in("1/16"), in("3"), Optional.empty());
    assertThat(found(order, List.of(bit))).isEmpty();
  }

  /** Holes half a pitch higher or half an inch further back lie opposite nothing. */
  @Test
  void should_be_content_when_every_second_bay_is_moved() {
    Bay up = bay(2).moved(in("0"), in("1/2"));
    Bay back = bay(2).moved(in("1/2"), in("0"));
    assertThat(found(bored("5/16", "1/8", up), List.of())).isEmpty();
    assertThat(found(bored("5/16", "1/8", back), List.of())).isEmpty();
  }

  /** An eighth of an inch up each point aims at the other floor: 23/32 - 2 x 1/4 - 3/16 = 1/32. */
  @Test
  void should_count_one_point_where_they_run_beside_each_other() {
    Bay up = bay(2).moved(in("0"), in("1/8"));
    Finding finding = found(bored("1/4", "3/16", up), List.of()).getFirst();
    assertThat(finding.severity()).isEqualTo(Severity.DOUBT);
    assertThat(finding.figures().getFirst().formula()).isEqualTo("t - d1 - d2 - max(p1, p2)");
    assertThat(finding.figures().getFirst().value()).isEqualTo(Quantity.of(in("1/32")));
  }
}
