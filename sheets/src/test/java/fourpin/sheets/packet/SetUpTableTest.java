package fourpin.sheets.packet;

import static fourpin.sheets.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Direction;
import fourpin.cutting.Edge;
import fourpin.cutting.Hold;
import fourpin.cutting.Lay;
import fourpin.cutting.Piece;
import fourpin.cutting.SawStep;
import fourpin.cutting.SetUp;
import fourpin.job.Job;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What stands at the saw: rip and crosscut by the grain, what holds the piece by its shape. */
class SetUpTableTest {

  private final Job job = SampleJobs.readingRoom();
  private final SetUpTable table =
      new SetUpTable(LayoutPages.Told.OF_PARTS, new Words(job), Set.of("S1-T", "S1-U", "S1-V"));

  private static Piece piece(String name, String length, String width) {
    return new Piece(name, new Piece.Content.ToCut(), in(length), in(width));
  }

  private static Piece part(String mark, String length, String width) {
    return new Piece(
        "S1-Z", new Piece.Content.FinishedPart(mark, Lay.STRAIGHT), in(length), in(width));
  }

  private static SawStep step(Piece from, Piece near, Piece far) {
    return new SawStep(from, near, Optional.of(far));
  }

  private static SetUp cut(Direction way, String size, Hold hold, SawStep... steps) {
    return new SetUp.CutTo(way, in(size), hold, List.of(steps));
  }

  /** By a quarter, of 96 by 48. */
  private static SetUp trim(Edge edge, Hold hold) {
    Piece sheet = piece("S1", "96", "48");
    boolean rip = edge.direction() == Direction.RIP;
    Piece rest = rip ? piece("S1", "96", "47 3/4") : piece("S1", "95 3/4", "48");
    return new SetUp.TrimEdge(
        edge, in("1/4"), hold, List.of(step(sheet, piece("S1-A", "96", "1/8"), rest)));
  }

  private String text(SetUp... setUps) {
    return table.of(List.of(setUps)).rows().stream()
        .map(SetUpTableTest::text)
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static String text(Table.Row row) {
    return row.cells().stream().map(Prose::text).collect(Collectors.joining(" | "));
  }

  /** Which edge runs where, and where the fence stands. */
  @Test
  void trimsSayWhatHoldsThePiece() {
    assertThat(
            text(
                trim(Edge.NEAR_EDGE, Hold.FIRST_EDGE),
                trim(Edge.FAR_EDGE, Hold.FENCE_AT_REST),
                trim(Edge.NEAR_END, Hold.STRAIGHTEDGE),
                trim(Edge.FAR_END, Hold.STRAIGHTEDGE)))
        .isEqualTo(
            """
            1 | trim near edge by 1/4, kerf included, with a hand-held saw along a straightedge, \
            on a sled or at a jointer (first edge: see the caution) | S1
            2 | trim far edge by 1/4, kerf included, near edge at the fence, trim outside the \
            blade | fence at 47 3/4: S1
            3 to 4 | trim near end, far end by 1/4, kerf included, with a hand-held saw along a \
            straightedge (large: see the caution) | S1
            """);
    assertThat(
            text(
                trim(Edge.NEAR_END, Hold.GAUGE),
                trim(Edge.FAR_END, Hold.FENCE_AT_REST),
                trim(Edge.FAR_EDGE, Hold.BAND_SAW)))
        .isEqualTo(
            """
            1 | trim near end by 1/4, kerf included, at a mitre gauge | S1
            2 | trim far end by 1/4, kerf included, near end at the fence, trim outside the blade \
            | fence at 95 3/4: S1
            3 | trim far edge by 1/4, kerf included, by band saw or hand (narrow: see the caution) \
            | S1
            """);
  }

  @Test
  void whatHoldsThePieceFollowsItsShape() {
    assertThat(
            text(
                cut(
                    Direction.RIP,
                    "12",
                    Hold.FENCE,
                    step(
                        piece("S1-E", "60", "48"),
                        part("1 side", "60", "12"),
                        piece("S1-F", "60", "35"))),
                cut(
                    Direction.CROSSCUT,
                    "30",
                    Hold.GAUGE,
                    step(
                        piece("S1-G", "60", "12"),
                        part("2 top", "30", "12"),
                        piece("S1-H", "29", "12"))),
                cut(
                    Direction.CROSSCUT,
                    "30",
                    Hold.STRAIGHTEDGE,
                    step(
                        piece("S1-I", "60", "36"),
                        part("3 back", "30", "36"),
                        piece("S1-J", "29", "36"))),
                cut(
                    Direction.RIP,
                    "36",
                    Hold.GAUGE,
                    step(
                        piece("S1-K", "1", "48"),
                        part("4 slip", "1", "36"),
                        piece("S1-L", "1", "11")))))
        .isEqualTo(
            """
            1 | rip, fence at 12 | S1-E → [1 side] + S1-F
            2 | crosscut, stop at 30 | S1-G → [2 top] + S1-H
            3 | crosscut at 30 with a hand-held saw along a straightedge (large: see the caution) \
            | S1-I → [3 back] + S1-J
            4 | rip, stop at 36 (turns at the fence: see the caution) | S1-K → [4 slip] + S1-L
            """);
  }

  /** Strips of 1 across the grain of a piece 36 wide. */
  @Test
  void narrowStripsFallOffOutsideTheBladeAcrossTheGrainToo() {
    assertThat(
            text(
                cut(
                    Direction.CROSSCUT,
                    "1",
                    Hold.FENCE_AT_REST,
                    step(
                        piece("S1-P", "5", "36"),
                        part("2 slip", "1", "36"),
                        piece("S1-Q", "3 7/8", "36")),
                    step(
                        piece("S1-Q", "3 7/8", "36"),
                        part("2 slip", "1", "36"),
                        piece("S1-R", "2 3/4", "36"))),
                cut(
                    Direction.CROSSCUT,
                    "1",
                    Hold.BAND_SAW,
                    step(
                        piece("S1-R", "2 3/4", "36"),
                        part("2 slip", "1", "36"),
                        part("2 slip", "1 5/8", "36")))))
        .isEqualTo(
            """
            1 | crosscut strips of 1 outside the blade, fence set anew for each (narrow: see the \
            caution) | fence at 3 7/8: S1-P → [2 slip] + S1-Q; fence at 2 3/4: S1-Q → [2 slip] + \
            S1-R
            2 | crosscut strips of 1 by band saw or hand (narrow: see the caution) | S1-R → [2 \
            slip] + [2 slip]
            """);
  }

  @Test
  void smallPiecesAreMarked() {
    assertThat(
            text(
                cut(
                    Direction.RIP,
                    "2",
                    Hold.GAUGE,
                    step(
                        piece("S1-S", "10", "14"),
                        part("5 block", "10", "2"),
                        piece("S1-T", "10", "11")),
                    step(
                        piece("S1-T", "10", "11"),
                        part("5 block", "10", "2"),
                        piece("S1-U", "10", "8")))))
        .isEqualTo(
            """
            1 | rip, stop at 2 (turns at the fence, small: see the cautions) | S1-S → [5 block] + \
            S1-T; S1-T, small → [5 block] + S1-U
            """);
  }

  @Test
  void longPiecesSayWhatHoldsThemAndWhatSupportsThem() {
    assertThat(
            text(
                trim(Edge.NEAR_END, Hold.MITRE_SAW),
                cut(
                    Direction.CROSSCUT,
                    "80",
                    Hold.MITRE_SAW,
                    step(
                        piece("S1-B", "195", "12"),
                        part("7 shelf", "80", "12"),
                        piece("S1-C", "114", "12")))))
        .isEqualTo(
            """
            1 | trim near end by 1/4, kerf included, at a mitre saw or with a hand-held saw along a \
            straightedge, both ends supported (long: see the caution) | S1
            2 | crosscut at 80, at a mitre saw or with a hand-held saw along a straightedge, both \
            ends supported (long: see the caution) | S1-B → [7 shelf] + S1-C
            """);
  }

  /** Of a rest of 10 by 8 and a quarter. */
  @Test
  void whatIsSmallIsClamped() {
    SawStep ripped =
        step(piece("S1-T", "10", "8"), part("5 block", "10", "2"), piece("S1-W", "10", "5 7/8"));
    SawStep crosscut =
        step(piece("S1-T", "10", "8"), part("5 block", "3", "8"), piece("S1-W", "6 7/8", "8"));
    SawStep trimmed =
        step(piece("S1-T", "10", "8 1/4"), piece("S1-W", "10", "1/8"), piece("S1-T", "10", "8"));
    assertThat(
            text(
                new SetUp.TrimEdge(Edge.NEAR_EDGE, in("1/4"), Hold.JIG, List.of(trimmed)),
                new SetUp.TrimEdge(Edge.NEAR_END, in("1/4"), Hold.CLAMPED_GAUGE, List.of(trimmed)),
                cut(Direction.RIP, "2", Hold.JIG, ripped),
                cut(Direction.CROSSCUT, "3", Hold.CLAMPED_GAUGE, crosscut)))
        .isEqualTo(
            """
            1 | trim near edge by 1/4, kerf included, clamped on a sled or in a jig, or with a hand \
            saw (small: see the caution) | S1-T, small
            2 | trim near end by 1/4, kerf included, clamped to the mitre gauge (small: see the \
            caution) | S1-T, small
            3 | rip at 2, clamped on a sled or in a jig, or with a hand saw (small: see the \
            caution) | S1-T, small → [5 block] + S1-W
            4 | crosscut, stop at 3, clamped to the mitre gauge (small: see the caution) | S1-T, \
            small → [5 block] + S1-W
            """);
  }

  /** A block of 3 by 1 off a strip of 60. */
  @Test
  void smallPartsAreMarkedWhereTheyComeOff() {
    Piece block =
        new Piece(
            "S1-V", new Piece.Content.FinishedPart("6 block", Lay.STRAIGHT), in("3"), in("1"));
    assertThat(
            text(
                cut(
                    Direction.CROSSCUT,
                    "3",
                    Hold.GAUGE,
                    step(piece("S1-Y", "60", "1"), block, piece("S1-X", "56 7/8", "1")))))
        .isEqualTo(
            """
            1 | crosscut, stop at 3 (small: see the caution) | S1-Y → small [6 block] + S1-X
            """);
  }
}
