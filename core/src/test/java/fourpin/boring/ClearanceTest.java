package fourpin.boring;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static fourpin.job.SampleJobs.pins;
import static fourpin.job.SampleJobs.strip;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Doors;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Shelves;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whether supports, strips and hinge plates leave each other room; worked by hand on the case of
 * {@link BorerTest}, whose shelves are 11 11/32 in deep with rows 1 1/2 in from both edges.
 */
class ClearanceTest {

  private final CaseDraft draft = new CaseDraft();
  private Settings settings = Settings.standard(Unit.INCH);

  private List<Finding> found(String kind) {
    draft.settings = settings;
    Job job = job(draft.order());
    var casework = CaseworkBuilder.build(job);
    assertThat(casework.cases()).as("%s", casework.findings()).hasSize(1);
    return Borer.bore(job, casework).findings().stream()
        .filter(f -> f.kind().equals(kind))
        .toList();
  }

  private void set(Setting setting, String length) {
    settings = settings.with(Map.of(setting, new SettingValue.OfLength(in(length))));
  }

  private static Bay bay(Support support, Shelves.Placing placing, Edging... edging) {
    return new Bay(
        Optional.empty(),
        List.of(),
        Optional.of(new Shelves(placing, "ply", List.of(edging), in("0"))),
        Optional.of(support),
        Optional.empty());
  }

  private static Shelves.Placing two() {
    return new Shelves.Placing.Evenly(2);
  }

  private static Shelves.Placing at(String... heights) {
    List<Length> lengths = Stream.of(heights).map(h -> in(h)).toList();
    return new Shelves.Placing.AtHeights(lengths);
  }

  private static Support standards(Support.Mounting mounting) {
    return new Support.Standards(
        mounting, in("5/8"), in("3/16"), in("1/2"), in("1/4"), in("1/16"), in("1/8"), in("96"));
  }

  private static Support cleats(String bore, String height) {
    return new Support.Cleats("oak", in("1 1/2"), in("3/4"), in(bore), in(height), in("3/4"));
  }

  private static Optional<Doors> plates(String setback, String length, String... heights) {
    List<Length> lengths = Stream.of(heights).map(h -> in(h)).toList();
    return Optional.of(
        new Doors(
            Doors.Kind.OVERLAY,
            1,
            in("3/4"),
            in("0"),
            lengths,
            in(setback),
            in(length),
            in("1/2")));
  }

  /**
   * A standard 41/64 wide in the middle of 1 1/2 lies from 1 23/128 to 1 105/128, a strip 1 1/2
   * wide from 3/4 to 2 1/4; plates are 1/2 wide.
   */
  @ParameterizedTest
  @CsvSource({
    "surface, 1 1/2, 'standard of the front row, bay 1 in left side (L) stands on a hinge plate'",
    "surface, 2 1/16, 'standard of the front row, bay 1 in left side (L) stands on a hinge plate'",
    "surface, 2 3/32, ",
    "cleats, 2 15/32, 'strip of the front row, bay 1 in left side (L) stands on a hinge plate'",
    "cleats, 2 1/2, "
  })
  void should_find_what_stands_on_a_hinge_plate(String support, String setback, String words) {
    draft.bays =
        List.of(
            bay(
                support.equals("surface")
                    ? standards(Support.Mounting.SURFACE)
                    : cleats("1 1/4", "1 1/8"),
                two()));
    draft.doors = plates(setback, "2", "20");
    List<Finding> found = found("hole-plate");
    if (words == null) {
      assertThat(found).isEmpty();
      return;
    }
    assertThat(found).hasSize(2).allMatch(f -> f.severity() == Severity.ERROR);
    assertThat(found.getFirst().what()).isEqualTo("1 " + words + " of bay 1.");
    assertThat(found.getFirst().remedies())
        .extracting(Finding.Remedy::what)
        .hasSize(2)
        .first()
        .asString()
        .startsWith("set standard-setback to ");
  }

  /** What stands on a face has nothing to do with the panels and screws that it stands beside. */
  @ParameterizedTest
  @CsvSource({"surface", "cleats"})
  void should_let_supports_stand_between_the_panels(String support) {
    draft.bays =
        List.of(
            bay(
                support.equals("surface")
                    ? standards(Support.Mounting.SURFACE)
                    : cleats("1 1/4", "1 1/8"),
                two()),
            bay(pins(), two()));
    draft.fixedShelfJoint = new fourpin.job.Joint(fourpin.job.Joint.Kind.BUTT, Optional.empty());
    for (String kind :
        List.of("hole-joint", "hole-panel", "hole-screw", "hole-edge", "rows-meet")) {
      assertThat(found(kind)).as(kind).isEmpty();
    }
  }

  /** Pins of 1/4 in at 3/4 begin 5/8 from the front edge. */
  @ParameterizedTest
  @CsvSource({"5/8, 2, ", "41/64, 2, 1 9/32", "3, 23/32, "})
  void should_find_hanging_strips_over_the_supports(String thickness, String height, String hangs) {
    draft.bays = List.of(bay(pins(), two(), strip(thickness, height)));
    set(Setting.FRONT_ROW, "3/4");
    List<Finding> found = found("strip-on-supports");
    if (hangs == null) {
      assertThat(found).isEmpty();
      return;
    }
    assertThat(found).hasSize(1).allMatch(f -> f.severity() == Severity.ERROR);
    assertThat(found.getFirst().what())
        .startsWith("The front strip of the shelves of bay 1 hangs " + hangs + " in below them");
    assertThat(found.getFirst().remedies().getFirst().what())
        .isEqualTo("set front-row to 49/64 in");
  }

  /**
   * A strip 1 1/2 high hangs 25/32 below its shelf. Wanted 1 17/32 apart, the shelves would go to
   * levels an inch apart or two; 9/32 under the upper one would be too little, 1 9/32 is enough.
   */
  @Test
  void should_seat_shelves_with_room_for_what_hangs_below() {
    draft.bays = List.of(bay(pins(), at("30", "31 17/32"), strip("1/2", "1 1/2")));
    draft.settings = settings;
    Job job = job(draft.order());
    var built = Borer.bore(job, CaseworkBuilder.build(job)).cases().getFirst();
    Length gap = built.part("1-S2").box().low().z().minus(built.part("1-S1").box().high().z());
    assertThat(gap).isEqualTo(in("1 9/32"));
  }

  @Test
  void should_find_strips_on_the_ends_that_hang_over_the_supports() {
    Edging ends =
        new Edging(Edging.Kind.STRIP, "oak", in("1/4"), in("1"), List.of(Edging.Edge.LEFT));
    draft.bays = List.of(bay(pins(), two(), ends));
    assertThat(found("strip-on-supports")).hasSize(1);
  }

  /**
   * Levels carry a shelf 23/32 thick with its upper face from 11 1/16 (10 7/32 + 1/8 + 23/32) to 78
   * 1/16, an inch apart.
   */
  @Test
  void should_say_when_a_shelf_is_far_from_the_height_asked_for() {
    draft.bays = List.of(bay(pins(), at("6", "30 1/2", "82"), strip("1/4", "23/32")));
    assertThat(found("shelf-moved"))
        .extracting(Finding::what)
        .containsExactly(
            "1-S1 is wanted at 6 in, where there is no level for it: it lies at 11 1/16 in,"
                + " 5 1/16 in higher.",
            "1-S3 is wanted at 82 in, where there is no level for it: it lies at 78 1/16 in,"
                + " 3 15/16 in lower.");
    draft.bays = List.of(bay(pins(), at("11 1/16", "30 1/2", "78 1/16")));
    assertThat(found("shelf-moved")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1, 1, 0", "1, 1 1/64, 1", "1 1/4, 1 1/8, 0"})
  void should_find_cleats_that_do_not_go_into_their_notches(String bore, String height, int count) {
    draft.bays = List.of(bay(cleats(bore, height), two()));
    set(Setting.PITCH, "2");
    assertThat(found("cleat-too-high")).hasSize(count);
  }

  @Test
  void should_find_rows_moved_from_under_the_shelf() {
    Bay plain = bay(pins(), two());
    draft.bays = List.of(moved(plain, "1 3/8"));
    assertThat(found("rows-off-shelf")).isEmpty();
    draft.bays = List.of(moved(plain, "1 25/64"));
    assertThat(found("rows-off-shelf")).hasSize(1);
  }

  private static Bay moved(Bay bay, String back) {
    return new Bay(
        bay.width(),
        bay.fixedShelves(),
        bay.shelves(),
        bay.supports(),
        bay.load(),
        in(back),
        in("0"));
  }

  /**
   * Holes an inch apart from 10 7/32 up; a plate 1/4 long at 20 keeps holes of 1/4 in out from 19
   * 1/2 to 20 1/2, so the one at 20 7/32 goes 9/32 up, when its neighbour comes to 19 1/2. Round a
   * plate 2 in long there is always a hole.
   */
  @Test
  void should_name_a_way_up_or_down_only_if_it_clears_the_plate() {
    draft.bays = List.of(bay(pins(), two()));
    draft.doors = plates("1 1/2", "1/4", "20");
    assertThat(remedies()).contains("set first-hole to 10 1/2 in");
    set(Setting.FIRST_HOLE, "10 1/2");
    assertThat(found("hole-plate")).isEmpty();
    settings = Settings.standard(Unit.INCH);
    draft.doors = plates("1 1/2", "2", "20");
    assertThat(remedies()).noneMatch(r -> r.startsWith("set first-hole"));
  }

  private List<String> remedies() {
    return found("hole-plate").getFirst().remedies().stream().map(Finding.Remedy::what).toList();
  }

  @Test
  void should_blame_a_first_hole_above_the_opening() {
    draft.bays = List.of(bay(pins(), new Shelves.Placing.Evenly(1)));
    set(Setting.FIRST_HOLE, "78");
    assertThat(found("no-level").getFirst().remedies())
        .extracting(Finding.Remedy::what)
        .contains("set first-hole to 77 9/32 in", "leave first-hole out");
    // One level is not enough for two shelves: what does not cure is not named.
    draft.bays = List.of(bay(pins(), two()));
    assertThat(found("no-level").getFirst().remedies())
        .extracting(Finding.Remedy::what)
        .doesNotContain("set first-hole to 77 9/32 in");
  }

  /** The lowest of two even shelves lies first at 29 11/32 to 30 1/16, the other an opening up. */
  @ParameterizedTest
  @CsvSource({"29, 1", "28, 0", "31 1/16, 0", "31, 1"})
  void should_doubt_a_plate_where_a_shelf_lies_first(String height, int shelves) {
    draft.bays = List.of(bay(pins(), new Shelves.Placing.AtHeights(List.of(in("30"), in("60")))));
    draft.doors = plates("3/4", "2", height);
    List<Finding> found = found("plate-at-shelf");
    assertThat(found).hasSize(shelves);
    if (shelves > 0) {
      assertThat(found.getFirst().what())
          .startsWith("1-S1 lies first from 29 11/32 in to 30 1/16 in, where the hinge plates at");
      assertThat(found.getFirst().remedies())
          .extracting(Finding.Remedy::what)
          .contains(
              "state plate-heights with 28 11/32 in or less, or 31 1/16 in or more, for this plate");
    }
  }

  @Test
  void should_say_of_turned_panels_only_what_holds_for_all_bays() {
    Bay plain = bay(pins(), two());
    draft.bays = List.of(plain, plain);
    Finding alike = found("balance").getFirst();
    assertThat(alike.remedies().getLast().what()).contains("stand both sides together");
    draft.bays = List.of(plain, plain.moved(in("0"), in("1/2")));
    Finding half = found("balance").getFirst();
    assertThat(half.what()).startsWith("A side turned end for end");
    assertThat(half.remedies().getLast().what()).contains("both uprights of each bay");
    draft.bays = List.of(plain, plain.moved(in("0"), in("1/8")));
    Finding unlike = found("balance").getFirst();
    assertThat(unlike.what()).startsWith("Bays with levels-up have their holes at other heights");
    assertThat(unlike.remedies()).hasSize(1);
  }

  /** Shelves of 11 11/32 with strips 5 7/8 in from both edges: the rows have passed each other. */
  @Test
  void should_make_no_cleats_between_rows_that_cross() {
    Support cleats =
        new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("1 1/4"), in("1 1/8"), in("3/4"));
    draft.bays = List.of(bay(cleats, two()));
    set(Setting.PITCH, "2");
    set(Setting.STANDARD_SETBACK, "5 7/8");
    assertThat(found("rows-close")).extracting(Finding::severity).containsExactly(Severity.ERROR);
  }
}
