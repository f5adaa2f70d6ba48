package fourpin.casework;

import static fourpin.job.CaseDraft.joint;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Doors;
import fourpin.job.Drawers;
import fourpin.job.Edging;
import fourpin.job.FaceFrame;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.Material;
import fourpin.job.QuantityReader;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shelves;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What can't be built is refused with the place and the reason, and nothing else is. */
class RefusalTest {

  static Stream<Arguments> refusals() {
    return Stream.of(
        refusal(
            "no-room",
            "no room is left between the sides (-3/16 in)",
            d -> d.sizes = outside("1 1/4", "84", "12")),
        refusal(
            "no-room",
            "no room is left in front of the back (-3/32 in)",
            d -> d.sizes = outside("72", "84", "1/2")),
        refusal(
            "drawers-outside",
            "drawers of 16 in, 30 in above the foot, do not fit inside the case, which is 11 13/32 in deep",
            d ->
                d.drawers =
                    Optional.of(
                        new Drawers(
                            2,
                            in("30"),
                            in("16"),
                            in("12"),
                            QuantityReader.MASS.read("20 lb").orThrow()))),
        refusal(
            "joint-too-deep",
            "the partition joint is 3/4 in deep, in a panel of 23/32 in",
            d -> d.partitionJoint = joint(Joint.Kind.DADO, "3/4")),
        refusal(
            "joint-misplaced",
            "a dado can't hold the top, which lies at the end of the sides: there is no wood beyond it",
            d -> d.topJoint = joint(Joint.Kind.DADO, "1/4")),
        refusal(
            "joint-misplaced",
            "a rabbet can't hold the bottom, which does not lie at the end of what it joins",
            d -> d.bottomJoint = joint(Joint.Kind.RABBET, "1/4")),
        refusal(
            "joint-misplaced",
            "a dado can't hold the bottom, which lies at the end of the sides: there is no wood beyond it",
            d -> d.kick = Optional.empty()),
        refusal(
            "bays-do-not-fit",
            "the bays have 69 27/32 in between the sides, less 1 partitions, but the widths stated come to 60 in",
            d -> d.bays = List.of(wide("30"), wide("30"))),
        refusal(
            "bays-do-not-fit",
            "the bays have 69 27/32 in between the sides, less 1 partitions, but the widths stated come to 80 in",
            d -> d.bays = List.of(wide("80"), SampleJobs.bay(1))),
        refusal(
            "bay-too-narrow",
            "bay 1 is too small for its shelves: length 1/8 bay 1 - 1/8 end play = 0; width 12 case depth - 19/32 behind the face of the back - 1/16 back play = 11 11/32",
            d -> d.bays = List.of(wide("1/8"), SampleJobs.bay(1))),
        refusal(
            "fixed-shelf-misplaced",
            "the fixed shelf, bay 1 (1-F1) at 4 in does not lie between bottom and top with room below and above it, in rising order",
            d -> d.bays = List.of(fixed("4"))),
        refusal(
            "fixed-shelf-misplaced",
            "the fixed shelf, bay 1 (1-F2) at 30 in does not lie between bottom and top with room below and above it, in rising order",
            d -> d.bays = List.of(fixed("40", "30"))),
        refusal(
            "parts-overlap",
            "fixed shelf, bay 1 (1-F1) and shelf, bay 1 (1-S1) are in the same place, by 70 7/16 x 11 11/32 x 15/32 in",
            d -> d.bays = List.of(fixedAndShelf("40", "40 1/4"))),
        refusal(
            "shelf-outside-bay",
            "the shelf, bay 1 (1-S1) at 90 in is not between bottom and top of its bay, 4 7/32 in to 83 9/32 in",
            d -> d.bays = List.of(fixedAndShelf("40", "90"))),
        refusal(
            "cuts-meet",
            "the cuts for fixed shelf, bay 1 and fixed shelf, bay 2 in partition 1 (P1) lie opposite and leave -1/32 in",
            d -> {
              d.fixedShelfJoint = joint(Joint.Kind.DADO, "3/8");
              d.bays = List.of(fixed("40"), fixed("40"));
            }),
        refusal(
            "kick-too-deep",
            "the kick is recessed by 11 in, in a case that is 11 13/32 in deep inside",
            d -> d.kick = Optional.of(new Kick(in("3 1/2"), in("11"), "ply"))),
        refusal(
            "kick-too-deep",
            "behind the kick 19/32 in are left under the bottom, no room for what behind-kick says stands there",
            d -> {
              d.kick = Optional.of(new Kick(in("3 1/2"), in("10 11/16"), "ply"));
              d.settings = d.settings.with(Setting.BEHIND_KICK, new SettingValue.OfChoice("board"));
            }),
        refusal(
            "edging-in-joint",
            "edging of the case lies on edges that go into joints or against the back",
            d ->
                d.edging =
                    List.of(
                        new fourpin.job.Edging(
                            fourpin.job.Edging.Kind.BANDING,
                            "oak",
                            in("1/64"),
                            in("23/32"),
                            List.of(fourpin.job.Edging.Edge.LEFT)))),
        refusal(
            "edging-too-high",
            "edging of the case is 2 in high, on panels of 23/32 in: on sides and partitions it would stand out into the bays",
            d -> d.edging = List.of(SampleJobs.strip("1/4", "2"))),
        refusal(
            "board-too-thin",
            "an edge strip of 1 x 2 in is 1 in thick, 'oak' only 3/4 in",
            d -> d.bays = List.of(shelvesAt(SampleJobs.strip("1", "2"), "30"))),
        refusal(
            "board-too-thin",
            "a cleat strip is 1 in thick, 'oak' only 3/4 in",
            d -> d.bays = List.of(onCleats())),
        refusal(
            "strip-overlap",
            "the strip of the shelf, bay 1 (1-S2) hangs 1 9/32 in below it, 9/32 in into what lies under it",
            d -> d.bays = List.of(shelvesAt(SampleJobs.strip("3/4", "2"), "30", "31 23/32"))),
        refusal(
            "edging-on-glass",
            "shelves of 'glass' are glass, which takes no edging",
            d -> d.bays = List.of(ofGlass())),
        refusal(
            "frame-closes-case",
            "the stiles or rails of the face frame leave no opening",
            d -> d.faceFrame = Optional.of(frame("36", "2"))),
        refusal(
            "frame-below-floor",
            "the bottom rail is 5 in wide and ends below the floor: the bottom's upper face is at 4 7/32 in",
            d -> d.faceFrame = Optional.of(frame("2", "5"))));
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void should_refuse(String kind, String what, Consumer<CaseDraft> change) {
    Casework casework = build(change);
    assertThat(casework.cases()).isEmpty();
    assertThat(casework.findings())
        .filteredOn(f -> f.severity() == Severity.REFUSED)
        .extracting(Finding::kind, Finding::what)
        .contains(org.assertj.core.groups.Tuple.tuple(kind, what));
    assertThat(casework.findings()).allSatisfy(f -> assertThat(f.remedies()).isNotEmpty());
  }

  @Test
  void should_refuse_a_shelf_that_can_not_be_tilted_in() {
    // Opening 72 - 2 x 12 = 48 wide; the shelf is 70 7/16 long. cos a = 48 / 70.4 needs about 47
    // degrees and 52 in of
    // height; with the top rail and fixed shelves every 20 in there is far less.
    Casework casework =
        build(
            d -> {
              d.faceFrame = Optional.of(frame("12", "2"));
              d.bays = List.of(fixedAndShelf("24", "14"));
            });
    assertThat(casework.findings()).extracting(Finding::kind).contains("shelf-behind-frame");
  }

  @Test
  void should_let_a_shelf_through_that_can_be_tilted() {
    Casework casework =
        build(
            d -> {
              d.faceFrame = Optional.of(frame("2", "2"));
              d.bays = List.of(SampleJobs.bay(1));
            });
    assertThat(casework.findings()).isEmpty();
  }

  /**
   * Plane geometry with a 3-4-5 triangle: a line of 50 passes a width of 40 when tilted so that its
   * cosine is 4/5.
   */
  @Test
  void should_find_the_tilt_of_a_line() {
    assertThat(ShelfChecks.Passage.tilt(50, 0, 40).orElseThrow())
        .isCloseTo(Math.acos(0.8), org.assertj.core.data.Offset.offset(1e-9));
    assertThat(ShelfChecks.Passage.tilt(50, 45, 40)).isEmpty();
  }

  @Test
  void should_say_that_a_door_would_not_shut() {
    Casework casework =
        build(
            d ->
                d.doors =
                    Optional.of(
                        new Doors(
                            Doors.Kind.INSET,
                            1,
                            in("3/4"),
                            in("1/8"),
                            List.of(),
                            in("1 1/2"),
                            in("2"),
                            in("1"))));
    assertThat(casework.findings())
        .hasSize(8)
        .allSatisfy(
            f -> {
              assertThat(f.kind()).isEqualTo("shelf-in-door");
              assertThat(f.severity()).isEqualTo(Severity.ERROR);
              assertThat(f.remedies().getFirst().what()).isEqualTo("set its front back by 7/8 in");
            });
  }

  @Test
  void should_name_screws_that_come_out_under_a_shelf() {
    Casework casework =
        build(
            d -> {
              d.fixedShelfJoint = new Joint(Joint.Kind.BUTT, Optional.empty());
              d.bays = List.of(fixed("40"), fixed("40"));
            });
    // Two screws and more for each of the two shelves, each joint named once.
    assertThat(casework.findings())
        .hasSize(2)
        .allSatisfy(f -> assertThat(f.kind()).isEqualTo("screw-covered"));
  }

  /**
   * Clear inside from 4 7/32 to 83 9/32; a fixed shelf at 40 lies from 39 9/32 up, so that plates 2
   * in long clear it from 41 up and from 38 9/32 down.
   */
  @Test
  void should_keep_hinge_plates_on_the_sides_and_off_fixed_shelves() {
    Casework casework =
        build(
            d -> {
              d.bays = List.of(fixed("40"));
              d.doors = Optional.of(plates("5", "38 9/32", "40", "41", "83", "200"));
            });
    assertThat(casework.findings())
        .extracting(Finding::kind, Finding::what)
        .containsExactly(
            misplacedPlate("5"),
            misplacedPlate("83"),
            misplacedPlate("200"),
            org.assertj.core.groups.Tuple.tuple(
                "plate-on-shelf",
                "a hinge plate at 40 in lies where the fixed shelf, bay 1 (1-F1) meets its"
                    + " uprights"));
    assertThat(casework.findings().getLast().remedies().getFirst().what())
        .isEqualTo("move the plate to 41 in or above, or to 38 9/32 in or below");
  }

  private static org.assertj.core.groups.Tuple misplacedPlate(String height) {
    return org.assertj.core.groups.Tuple.tuple(
        "plate-misplaced",
        "the hinge plates at "
            + height
            + " in do not lie wholly on the sides inside the case, which are clear from 4 7/32 in"
            + " to 83 9/32 in and 11 13/32 in deep");
  }

  private static Doors plates(String... heights) {
    return new Doors(
        Doors.Kind.OVERLAY,
        1,
        in("3/4"),
        in("0"),
        Stream.of(heights).map(SampleJobs::in).toList(),
        in("1 1/2"),
        in("2"),
        in("1"));
  }

  private static Casework build(Consumer<CaseDraft> change) {
    CaseDraft draft = new CaseDraft();
    change.accept(draft);
    return CaseworkBuilder.build(withGlass(job(draft.order())));
  }

  private static Job withGlass(Job job) {
    Material glass =
        new Material(
            "glass",
            Material.Kind.GLASS,
            "glass, tempered",
            in("3/8"),
            Optional.empty(),
            Material.Grain.NONE,
            Optional.empty(),
            Optional.empty());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(glass);
    return JobDraft.changed(job, d -> d.materials = materials);
  }

  private static Arguments refusal(String kind, String what, Consumer<CaseDraft> change) {
    return arguments(kind, what, change);
  }

  private static Sizes outside(String width, String height, String depth) {
    return new Sizes(Sizes.Measured.OUTSIDE, in(width), in(height), in(depth));
  }

  private static Bay wide(String width) {
    return new Bay(
        Optional.of(in(width)),
        List.of(),
        Optional.of(SampleJobs.shelves(1)),
        Optional.of(SampleJobs.pins()),
        Optional.empty());
  }

  private static Bay fixed(String... heights) {
    List<Length> at = Stream.of(heights).map(SampleJobs::in).toList();
    return new Bay(Optional.empty(), at, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static Bay fixedAndShelf(String fixed, String shelf) {
    Shelves shelves =
        new Shelves(new Shelves.Placing.AtHeights(List.of(in(shelf))), "ply", List.of(), in("0"));
    return new Bay(
        Optional.empty(),
        List.of(in(fixed)),
        Optional.of(shelves),
        Optional.of(SampleJobs.pins()),
        Optional.empty());
  }

  private static Bay shelvesAt(Edging edging, String... heights) {
    List<Length> at = Stream.of(heights).map(SampleJobs::in).toList();
    return shelved(
        new Shelves(new Shelves.Placing.AtHeights(at), "ply", List.of(edging), in("0")),
        SampleJobs.pins());
  }

  private static Bay onCleats() {
    return shelved(
        SampleJobs.shelves(1),
        new Support.Cleats("oak", in("1 1/2"), in("1"), in("1"), in("1"), in("3/4")));
  }

  private static Bay shelved(Shelves shelves, Support support) {
    return new Bay(
        Optional.empty(), List.of(), Optional.of(shelves), Optional.of(support), Optional.empty());
  }

  private static Bay ofGlass() {
    Shelves shelves =
        new Shelves(
            new Shelves.Placing.Evenly(1), "glass", List.of(SampleJobs.strip("1/4", "1")), in("0"));
    return new Bay(
        Optional.empty(),
        List.of(),
        Optional.of(shelves),
        Optional.of(SampleJobs.pins()),
        Optional.empty());
  }

  private static FaceFrame frame(String stile, String bottomRail) {
    return new FaceFrame(
        "oak",
        in(stile),
        Optional.empty(),
        in("2"),
        in(bottomRail),
        in("0"),
        FaceFrame.Scribe.NONE);
  }
}
