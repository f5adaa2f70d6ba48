package fourpin.casework;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.bookcase;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Channel.Kind;
import fourpin.job.Back;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Sizes;
import fourpin.measure.LengthStyle;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Hand calculations on one case: 72 x 84 x 12 in outside, 23/32 in plywood, 7/32 in back. */
class CaseworkBuilderTest {

  private final Casework casework = CaseworkBuilder.build(job(bookcase(bay(4), bay(4))));
  private final BuiltCase built = casework.cases().getFirst();

  @Test
  void should_build_without_findings() {
    assertThat(casework.findings()).isEmpty();
    assertThat(built.parts())
        .extracting(Part::mark)
        .containsExactly(
            "L", "R", "P1", "T", "B", "BK", "K", "1-S1", "1-S2", "1-S3", "1-S4", "2-S1", "2-S2",
            "2-S3", "2-S4");
  }

  @Test
  void should_sum_lengths_as_a_maker_would() {
    // 72 - 2 x 23/32 = 70 9/16 clear; less one partition 23/32 leaves 69 27/32 for two bays.
    assertThat(built.part("T").length().text(LengthStyle.FRACTIONS))
        .isEqualTo("72 case width - 2 x 23/32 side + 2 x 3/8 rabbet = 71 5/16");
    assertThat(built.part("B").length().total()).isEqualTo(in("71 1/16"));
    assertThat(built.part("P1").length().text(LengthStyle.FRACTIONS))
        .isEqualTo(
            "84 case height - 2 x 23/32 top and bottom - 3 1/2 kick + 2 x 1/4 dado = 79 9/16");
    assertThat(built.bays().getFirst().clear().size(Axis.X)).isEqualTo(in("34 59/64"));
    assertThat(built.part("1-S1").length().text(LengthStyle.FRACTIONS))
        .isEqualTo("34 59/64 bay 1 - 1/8 end play = 34 51/64");
    // 12 - back 7/32 - inset 3/8 = 11 13/32 to the back; - 1/16 play.
    assertThat(built.part("1-S1").width().total()).isEqualTo(in("11 11/32"));
    assertThat(built.part("1-S1").cutWidth().total()).isEqualTo(in("11 3/32"));
  }

  @Test
  void should_cut_every_joint_into_the_side() {
    assertThat(built.part("L").features())
        .containsExactly(
            new Channel(
                Kind.GROOVE,
                Face.RIGHT,
                Box.of(in("15/32"), in("23/32"), in("11 13/32"), in("11 5/8"), in("0"), in("84")),
                "back"),
            new Channel(
                Kind.RABBET,
                Face.RIGHT,
                Box.of(in("11/32"), in("23/32"), in("0"), in("12"), in("83 9/32"), in("84")),
                "top"),
            new Channel(
                Kind.DADO,
                Face.RIGHT,
                Box.of(in("15/32"), in("23/32"), in("0"), in("12"), in("3 1/2"), in("4 7/32")),
                "bottom"),
            built.part("L").features().get(3),
            built.part("L").features().get(4));
    assertThat(built.part("L").features().subList(3, 5))
        .allSatisfy(
            f -> {
              assertThat(f).isInstanceOf(Feature.Hole.class);
              assertThat(f.purpose()).isEqualTo("kick");
            });
  }

  @Test
  void should_spread_shelves_evenly() {
    // Clear height 84 - 3 1/2 - 2 x 23/32 = 79 1/16; less 4 shelves of 23/32 = 76 3/16; five gaps
    // of 15 19/80.
    var gap = in("76 3/16").over(5);
    assertThat(built.part("1-S1").box().low().z()).isEqualTo(in("4 7/32").plus(gap));
    assertThat(built.part("2-S4").box().high().z().plus(gap).mm())
        .isCloseTo(in("83 9/32").mm(), org.assertj.core.data.Offset.offset(1e-6));
  }

  @Test
  void should_fit_the_back_with_play() {
    // 70 9/16 + 2 x 1/4 - 1/16; 79 1/16 + 2 x 1/4 - 1/16
    assertThat(built.part("BK").width().total()).isEqualTo(in("71"));
    assertThat(built.part("BK").length().total()).isEqualTo(in("79 1/2"));
  }

  /**
   * 70 9/16 less two partitions is no multiple of three in picometres; the dadoes are alike all the
   * same.
   */
  @Test
  void should_cut_dadoes_alike_where_bays_do_not_divide_evenly() {
    CaseDraft draft = new CaseDraft();
    draft.bays =
        java.util.Collections.nCopies(
            3,
            new Bay(
                Optional.empty(),
                java.util.List.of(in("40")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72 1/64"), in("84"), in("12"));
    BuiltCase three = CaseworkBuilder.build(job(draft.order())).cases().getFirst();
    for (String mark : new String[] {"L", "P1", "P2", "R"}) {
      assertThat(three.part(mark).features())
          .filteredOn(f -> f.purpose().startsWith("fixed shelf"))
          .isNotEmpty()
          .allSatisfy(f -> assertThat(((Channel) f).volume().size(Axis.X)).isEqualTo(in("1/4")));
    }
  }

  @Test
  void should_divide_the_back_on_the_partitions() {
    CaseDraft draft = new CaseDraft();
    draft.back =
        Optional.of(new Back(Back.Kind.GROOVE, "back", Optional.of(in("1/4")), Back.Pieces.BY_BAY));
    BuiltCase divided = CaseworkBuilder.build(job(draft.order())).cases().getFirst();
    // 34 59/64 bay + 1/4 groove + 23/64 half a partition - 1/16 play
    assertThat(divided.part("BK1").width().total()).isEqualTo(in("35 15/32"));
    assertThat(divided.part("BK2").width().total()).isEqualTo(in("35 15/32"));
    // The panels stand the play apart, and half of it from the bottom of each groove.
    assertThat(divided.part("BK1").box().low().x()).isEqualTo(in("1/2"));
    assertThat(divided.part("BK2").box().low().x().minus(divided.part("BK1").box().high().x()))
        .isEqualTo(in("1/16"));
  }
}
