package fourpin.casework;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.CaseDraft;
import fourpin.job.Doors;
import fourpin.job.Doors.Hang;
import fourpin.job.SampleJobs;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Doors of a case 72 x 84 in of 23/32 in plywood, worked out by hand: bays are clear 34 59/64 in.
 */
class DoorLeafTest {

  private static Casework with(
      Doors.Kind kind, int perBay, List<Hang> hangs, Optional<Length> over) {
    CaseDraft draft = new CaseDraft();
    draft.doors =
        Optional.of(
            new Doors(
                kind, perBay, in("3/4"), in("1/8"), List.of(), in("2"), in("2"), in("1/2"), hangs,
                over));
    return CaseworkBuilder.build(SampleJobs.job(draft.order()));
  }

  private static List<DoorLeaf> leaves(Casework casework) {
    return DoorLeaf.of(casework.cases().getFirst());
  }

  private static void assertSpans(
      DoorLeaf leaf, String left, String right, String foot, String head) {
    Box box = leaf.shut();
    assertThat(List.of(box.low().x(), box.high().x(), box.low().z(), box.high().z()))
        .containsExactly(in(left), in(right), in(foot), in(head));
  }

  /** Over the sides whole, half a gap off the middle of the partition, and down to the kick. */
  @Test
  void overlay_doors_reach_the_outside_and_nearly_each_other() {
    List<DoorLeaf> leaves =
        leaves(with(Doors.Kind.OVERLAY, 1, List.of(Hang.RIGHT), Optional.empty()));
    assertSpans(leaves.getFirst(), "0", "35 15/16", "3 1/2", "84");
    assertSpans(leaves.getLast(), "36 1/16", "72", "3 1/2", "84");
    assertThat(leaves).extracting(DoorLeaf::hinges).containsOnly(Face.RIGHT);
    assertThat(leaves.getFirst().shut().low().y()).isEqualTo(in("3/4").negated());
    assertThat(leaves.getFirst().shut().high().y()).isEqualTo(in("0"));
  }

  @Test
  void overlay_doors_lie_as_far_over_as_is_stated() {
    Casework casework =
        with(Doors.Kind.OVERLAY, 1, List.of(Hang.LEFT, Hang.RIGHT), Optional.of(in("1/4")));
    List<DoorLeaf> leaves = leaves(casework);
    assertSpans(leaves.getFirst(), "15/32", "35 57/64", "3 31/32", "83 17/32");
    assertThat(leaves).extracting(DoorLeaf::hinges).containsExactly(Face.LEFT, Face.RIGHT);
    assertThat(casework.findings()).noneMatch(f -> f.kind().equals("doors-over"));
  }

  /** Half of 23/32 in less half of 1/8 in is 19/64 in. */
  @Test
  void doors_that_would_strike_each_other_are_found() {
    Casework casework = with(Doors.Kind.OVERLAY, 1, List.of(Hang.LEFT), Optional.of(in("3/8")));
    assertThat(casework.findings())
        .filteredOn(f -> f.kind().equals("doors-over"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Finding.Severity.ERROR);
              assertThat(f.what()).contains("lie 3/8 in over", "room for 19/64 in");
            });
  }

  @Test
  void two_inset_doors_hang_on_either_side_with_a_gap_round_each() {
    List<DoorLeaf> leaves = leaves(with(Doors.Kind.INSET, 2, List.of(Hang.LEFT), Optional.empty()));
    assertThat(leaves).hasSize(4);
    assertThat(leaves.subList(0, 2))
        .extracting(DoorLeaf::hinges)
        .containsExactly(Face.LEFT, Face.RIGHT);
    // The middle of the bay is at 18 23/128 in; a sixteenth either way of it.
    assertSpans(leaves.get(0), "27/32", "18 15/128", "4 11/32", "83 5/32");
    assertSpans(leaves.get(1), "18 31/128", "35 33/64", "4 11/32", "83 5/32");
    assertThat(leaves.get(0).shut().high().y()).isEqualTo(in("3/4"));
  }
}
