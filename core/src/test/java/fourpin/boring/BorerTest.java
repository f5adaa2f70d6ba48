package fourpin.boring;

import static fourpin.job.SampleJobs.bookcase;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static fourpin.job.SampleJobs.pins;
import static fourpin.job.SampleJobs.shelves;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Feature;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Doors;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Shelves;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked by hand on a case of 72 x 84 x 12 in, 23/32 in plywood: bottom's upper face at 4 7/32,
 * top's lower face at 83 9/32, face of the back 11 13/32 behind the front. All rests on this one
 * case, and so the file is long.
 */
class BorerTest {

  private static Map<Setting, SettingValue> set(String key, String value) {
    Setting setting = Setting.named(key).orElseThrow();
    SettingValue read =
        switch (setting.kind()) {
          case LENGTH -> new SettingValue.OfLength(in(value));
          case NUMBER, COUNT -> new SettingValue.OfNumber(Double.parseDouble(value));
          case CHOICE -> new SettingValue.OfChoice(value);
          default -> throw new IllegalArgumentException(key);
        };
    return Map.of(setting, read);
  }

  private static Bay bay(Support support, int shelves, String... fixed) {
    List<Length> heights = List.of(fixed).stream().map(f -> in(f)).toList();
    return new Bay(
        Optional.empty(),
        heights,
        Optional.of(shelves(shelves)),
        Optional.of(support),
        Optional.empty());
  }

  private static Boring bore(CaseOrder order) {
    Job job = job(order);
    var casework = CaseworkBuilder.build(job);
    assertThat(casework.cases()).as("%s", casework.findings()).hasSize(1);
    return Borer.bore(job, casework);
  }

  private static CaseOrder with(
      CaseOrder order, Settings settings, Optional<Doors> doors, Joint fixed) {
    CaseDraft draft = CaseDraft.of(order);
    draft.settings = settings;
    draft.doors = doors;
    draft.fixedShelfJoint = fixed;
    return draft.order();
  }

  @SafeVarargs
  private static CaseOrder set(CaseOrder order, Map<Setting, SettingValue>... values) {
    Settings settings = Settings.standard(Unit.INCH);
    for (Map<Setting, SettingValue> value : values) {
      settings = settings.with(value);
    }
    return with(order, settings, order.doors(), order.fixedShelfJoint());
  }

  private static List<Finding> kind(Boring boring, String kind) {
    return boring.findings().stream().filter(f -> f.kind().equals(kind)).toList();
  }

  private static List<Feature.Hole> supports(BuiltCase built, String mark) {
    return built.part(mark).features().stream()
        .filter(f -> f instanceof Feature.Hole h && h.use() == Feature.Hole.Use.SUPPORT)
        .map(f -> (Feature.Hole) f)
        .toList();
  }

  @Test
  void should_start_where_the_zone_without_holes_ends() {
    BayGrid grid = bore(bookcase(bay(pins(), 4))).grids().getFirst();
    // 4 7/32 + 6 = 10 7/32; highest 83 9/32 - 6 = 77 9/32: 67 1/16 hold 67 whole pitches of 1 in.
    assertThat(grid.levels()).hasSize(68);
    assertThat(grid.levels().getFirst().height()).isEqualTo(in("10 7/32"));
    assertThat(grid.levels().getLast().height()).isEqualTo(in("77 7/32"));
    assertThat(grid.levels().getFirst().underside()).isEqualTo(in("10 11/32"));
    assertThat(grid.levels()).extracting(BayGrid.Level::number).startsWith(1, 2, 3);
    // Shelf 0 to 11 11/32: rows 1 1/2 from its front edge and from its back edge.
    assertThat(grid.rows())
        .containsExactly(
            new BayGrid.Row(BayGrid.Row.Name.FRONT, in("1 1/2")),
            new BayGrid.Row(BayGrid.Row.Name.BACK, in("9 27/32")));
  }

  @Test
  void should_seat_shelves_with_openings_as_equal_as_the_holes_allow() {
    Boring boring = bore(bookcase(bay(pins(), 4)));
    // Gaps of 15 19/80 would be equal; undersides lie at 10 11/32 + k.
    assertThat(boring.grids().getFirst().seats())
        .extracting(BayGrid.Seat::level)
        .containsExactly(10, 26, 42, 58);
    Part shelf = boring.cases().getFirst().part("1-S1");
    assertThat(shelf.box().low().z()).isEqualTo(in("19 11/32"));
    assertThat(shelf.box().high().z()).isEqualTo(in("20 1/16"));
  }

  @Test
  void should_put_shelves_at_stated_heights_on_the_nearest_level() {
    Shelves stated =
        new Shelves(
            new Shelves.Placing.AtHeights(List.of(in("30"), in("31"), in("60"))),
            "ply",
            List.of(),
            in("0"));
    Bay bay =
        new Bay(
            Optional.empty(),
            List.of(),
            Optional.of(stated),
            Optional.of(pins()),
            Optional.empty());
    BayGrid grid = bore(bookcase(bay)).grids().getFirst();
    // Undersides wanted 29 9/32, 30 9/32, 59 9/32; levels at 29 11/32, 30 11/32, 59 11/32.
    assertThat(grid.seats().stream().map(s -> grid.levels().get(s.level() - 1).underside()))
        .containsExactly(in("29 11/32"), in("30 11/32"), in("59 11/32"));
  }

  @Test
  void should_keep_rows_clear_of_fixed_shelves_and_in_line_with_the_neighbour() {
    Boring boring = bore(bookcase(bay(pins(), 2, "40"), bay(pins(), 2)));
    List<Length> left = boring.grids().get(0).levels().stream().map(BayGrid.Level::height).toList();
    List<Length> right =
        boring.grids().get(1).levels().stream().map(BayGrid.Level::height).toList();
    assertThat(right).containsAll(left);
    // Fixed shelf from 39 9/32 to 40: no hole between 33 9/32 and 46.
    assertThat(left)
        .noneMatch(h -> h.isMoreThan(in("33 9/32")) && h.isLessThan(in("46")))
        .contains(in("33 7/32"), in("46 7/32"));
  }

  @Test
  void should_bore_both_uprights_of_a_bay_from_one_pattern() {
    BuiltCase built = bore(bookcase(bay(pins(), 3), bay(pins(), 3))).cases().getFirst();
    assertThat(supports(built, "L")).hasSize(2 * 68).hasSameSizeAs(supports(built, "R"));
    assertThat(supports(built, "P1")).hasSize(4 * 68);
    assertThat(supports(built, "L"))
        .allSatisfy(h -> assertThat(h.centre().x()).isEqualTo(in("23/32")));
    assertThat(supports(built, "R"))
        .allSatisfy(h -> assertThat(h.centre().x()).isEqualTo(in("71 9/32")));
  }

  @Test
  void should_bore_groups_round_the_planned_levels() {
    BayGrid grid = bore(set(bookcase(bay(pins(), 4)), set("rows", "grouped"))).grids().getFirst();
    assertThat(grid.levels()).hasSize(12);
    assertThat(grid.seats()).extracting(BayGrid.Seat::level).containsExactly(2, 5, 8, 11);
    assertThat(grid.levels().get(1).underside()).isEqualTo(in("19 11/32"));
  }

  /**
   * Two 3/8 holes in 23/32 meet, 5/16 leave 3/32 (common practice, worked by hand). With points of
   * 1/8 to come, (23/32 - 1/16 - 2 x 1/8) / 2 = 13/64 leaves 1/16 behind them.
   */
  @ParameterizedTest
  @CsvSource({"3/8, ERROR, -1/32", "11/32, DOUBT, 1/32", "5/16, , "})
  void should_find_rows_that_meet_in_a_partition(String depth, Severity severity, String web) {
    Boring boring = bore(set(bookcase(bay(pins(), 2), bay(pins(), 2)), set("hole-depth", depth)));
    List<Finding> found = kind(boring, "rows-meet");
    if (severity == null) {
      assertThat(found).isEmpty();
      return;
    }
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().severity()).isEqualTo(severity);
    assertThat(found.getFirst().figures().getFirst().value())
        .isEqualTo(Quantity.of(OutlineTest.signed(web)));
    assertThat(found.getFirst().place().part()).contains("P1");
    assertThat(found.getFirst().remedies())
        .extracting(Finding.Remedy::what)
        .containsExactly(
            "set hole-depth to 13/64 in, on both faces: leaves 1/16 in, points of 1/8 in"
                + " counted",
            "state rows-back: 1/2 in for bay 2",
            "state levels-up: 1/2 in, half a pitch, for bay 2",
            "bore one hole right through by hand, with a long pin that carries a shelf in both bays");
  }

  /** A router bit has no point: (23/32 - 3/32) / 2 = 5/16, which takes stems of 5/16 whole. */
  @Test
  void should_cure_rows_that_meet_by_the_bit_that_bores() {
    Support stems = new Support.Pins(in("1/4"), in("5/16"), in("3/8"), in("0"));
    Job job = job(set(bookcase(bay(stems, 2), bay(stems, 2)), set("hole-depth", "3/8")));
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job), _ -> Optional.of(Length.ZERO));
    assertThat(kind(boring, "rows-meet").getFirst().remedies().getFirst())
        .extracting(Finding.Remedy::what, Finding.Remedy::cost)
        .containsExactly(
            "set hole-depth to 5/16 in, on both faces: leaves 3/32 in, the bit has no point",
            "nothing: stems of 5/16 in still go in whole");
  }

  @Test
  void should_be_content_with_rows_staggered_as_the_remedy_says() {
    Settings settings = Settings.standard(Unit.INCH);
    BayGrid grid = bore(bookcase(bay(pins(), 2))).grids().getFirst();
    Cut.Owner owner = new Cut.Owner.OfRow(grid, grid.rows().getFirst());
    Cut left = hole("1 1/2", "0", "3/8", owner);
    assertThat(Clash.of(left, hole("2", "11/32", "23/32", owner), settings)).isEmpty();
    assertThat(Clash.of(left, hole("1 63/64", "11/32", "23/32", owner), settings)).isPresent();
  }

  @Test
  void should_be_content_when_a_bay_takes_either_remedy() {
    Bay plain = bay(pins(), 2);
    assertThat(kind(bore(bookcase(plain, moved(plain, "1/2", "0"))), "rows-meet")).isEmpty();
    assertThat(kind(bore(bookcase(plain, moved(plain, "0", "1/2"))), "rows-meet")).isEmpty();
    assertThat(kind(bore(bookcase(plain, moved(plain, "1/8", "0"))), "rows-meet")).isNotEmpty();
  }

  /**
   * Half an inch up at 383/384 in leaves 191/384 - 1/4 = ≈ 0.247 in of wood between rims: no rule
   * shows that 1/4 in is missed. At 31/32 in it is 15/32 - 1/4 = 7/32, and they do not meet.
   */
  @Test
  void should_not_doubt_what_a_strips_pitch_misses_by_less_than_a_rule_shows() {
    Bay plain = bay(pins(), 2);
    CaseOrder order = bookcase(plain, moved(plain, "0", "1/2"));
    Length odd = in("1").times(383).over(384);
    assertThat(
            kind(
                bore(set(order, Map.of(Setting.PITCH, new SettingValue.OfLength(odd)))),
                "rows-meet"))
        .isEmpty();
    assertThat(kind(bore(set(order, set("pitch", "31/32"))), "rows-meet").getFirst().what())
        .contains(
            "pairs of holes of bays 1 and 2 come near each other", "7/32 in between their rims")
        .endsWith("leaves -1/32 in of wood.");
  }

  @Test
  void should_move_only_the_bay_that_says_so() {
    Bay plain = bay(pins(), 2);
    List<BayGrid> grids = bore(bookcase(plain, moved(plain, "1/2", "1/4"))).grids();
    for (int i = 0; i < 2; i++) {
      assertThat(grids.get(1).rows().get(i).y())
          .isEqualTo(grids.get(0).rows().get(i).y().plus(in("1/2")));
    }
    assertThat(grids.get(1).levels().getFirst().height())
        .isEqualTo(grids.get(0).levels().getFirst().height().plus(in("1/4")));
  }

  private static Bay moved(Bay bay, String back, String up) {
    return new Bay(
        bay.width(),
        bay.fixedShelves(),
        bay.shelves(),
        bay.supports(),
        bay.load(),
        in(back),
        in(up));
  }

  private static Cut hole(String y, String from, String to, Cut.Owner owner) {
    return new Cut(new Outline.Disc(in(y), in("20"), in("1/4")), in(from), in(to), owner);
  }

  @ParameterizedTest
  @CsvSource({
    // 3/8 deep + 1/8 point leaves 7/32; 17/32 leaves 1/16; 9/16 leaves 1/32; 5/8 goes through.
    "3/8, ",
    "17/32, ",
    "9/16, DOUBT",
    "5/8, ERROR"
  })
  void should_keep_wood_behind_the_point(String depth, Severity severity) {
    Boring boring = bore(set(bookcase(bay(pins(), 2)), set("hole-depth", depth)));
    assertThat(kind(boring, "hole-floor"))
        .extracting(Finding::severity)
        .containsOnly(severity == null ? new Severity[0] : new Severity[] {severity});
  }

  /** 1/16 gap at each end: 3/16 leaves 1/8 under the shelf. */
  @ParameterizedTest
  @CsvSource({"3/16, ", "11/64, DOUBT", "1/8, ERROR"})
  void should_keep_enough_pin_under_the_shelf(String reach, Severity severity) {
    Support pins = new Support.Pins(in("1/4"), in("3/8"), in(reach), in("1/8"));
    List<Finding> found = kind(bore(bookcase(bay(pins, 2))), "engagement");
    assertThat(found.stream().map(Finding::severity).toList())
        .isEqualTo(severity == null ? List.of() : List.of(severity));
  }

  @Test
  void should_find_holes_on_a_dado_and_near_one() {
    // First hole 1/16 above the bottom: the rim (1/8) cuts into the bottom's dado.
    List<Finding> found =
        kind(bore(set(bookcase(bay(pins(), 2)), set("first-hole", "4 9/32"))), "hole-joint");
    assertThat(found).hasSize(4).allMatch(f -> f.severity() == Severity.ERROR);
    assertThat(found.getFirst().what())
        .isEqualTo(
            "1 hole of the front row, bay 1 in left side (L) cuts into the dado for bottom.");
    // 1/4 + 1/8 above it is far enough, 1/64 less is not.
    assertThat(
            kind(bore(set(bookcase(bay(pins(), 2)), set("first-hole", "4 19/32"))), "hole-joint"))
        .isEmpty();
    assertThat(
            kind(bore(set(bookcase(bay(pins(), 2)), set("first-hole", "4 37/64"))), "hole-joint"))
        .hasSize(4)
        .allMatch(f -> f.severity() == Severity.DOUBT);
  }

  @Test
  void should_find_holes_on_the_dado_of_the_other_face() {
    // Bay 1 has a fixed shelf whose dado is 1/4 deep in P1; 3/8 holes of bay 2 leave 3/32 behind
    // it.
    CaseOrder order = bookcase(bay(pins(), 2, "40"), bay(pins(), 2));
    assertThat(kind(bore(set(order, set("hole-depth", "3/8"))), "hole-joint")).isEmpty();
    List<Finding> found = kind(bore(set(order, set("hole-depth", "7/16"))), "hole-joint");
    assertThat(found).hasSize(2).allMatch(f -> f.severity() == Severity.DOUBT);
    assertThat(found.getFirst().remedies().getFirst().what()).isEqualTo("set hole-depth to 3/8 in");
  }

  @Test
  void should_find_holes_under_hinge_plates() {
    Doors doors =
        new Doors(
            Doors.Kind.OVERLAY,
            2,
            in("3/4"),
            in("1/8"),
            List.of(in("20")),
            in("1 1/2"),
            in("2"),
            in("5/8"));
    CaseOrder order = bookcase(bay(pins(), 2));
    CaseOrder hung = with(order, order.settings(), Optional.of(doors), order.fixedShelfJoint());
    List<Finding> found = kind(bore(hung), "hole-plate");
    // Plate from 19 to 21: holes at 19 7/32 and 20 7/32 under it, those at 18 7/32 and 21 7/32
    // 21/32 and 3/32 away from it.
    assertThat(found).extracting(f -> f.place().part().orElseThrow()).containsExactly("L", "R");
    assertThat(found).allMatch(f -> f.severity() == Severity.ERROR);
    assertThat(found.getFirst().what())
        .isEqualTo(
            "3 holes of the front row, bay 1 in left side (L) cut into a hinge plate of bay 1.");
  }

  @Test
  void should_find_holes_near_the_screws_and_the_end_of_a_butt_joint() {
    // Screws at 2 109/128 from the front and 39 41/64 up; the hole at 2 27/32 and 39 9/32: 23/64
    // apart, less the radii 1/8 and 0.095 leaves about 0.14. The shelf's end covers half the hole.
    CaseOrder order = bookcase(bay(pins(), 2, "40"));
    Settings close =
        Settings.standard(Unit.INCH)
            .with(set("clear-below", "0"))
            .with(set("clear-above", "0"))
            .with(set("first-hole", "5 9/32"))
            .with(set("front-row", "2 27/32"));
    Boring boring =
        bore(with(order, close, Optional.empty(), new Joint(Joint.Kind.BUTT, Optional.empty())));
    assertThat(kind(boring, "hole-screw"))
        .extracting(Finding::severity)
        .containsExactly(Severity.DOUBT, Severity.DOUBT);
    assertThat(kind(boring, "hole-screw").getFirst().what())
        .isEqualTo(
            "1 hole of the front row, bay 1 in left side (L) comes near the screws for fixed shelf,"
                + " bay 1: ≈ 0.139 in left, 1/4 in asked for.");
    assertThat(kind(boring, "hole-panel").getFirst().severity()).isEqualTo(Severity.ERROR);
  }

  @Test
  void should_refuse_rows_too_near_the_front_edge() {
    // 5/16 setback less half of 1/4 leaves 3/16; 1/4 is asked for.
    List<Finding> found =
        kind(bore(set(bookcase(bay(pins(), 2)), set("front-row", "21/64"))), "hole-edge");
    assertThat(found).hasSize(2).allMatch(f -> f.severity() == Severity.DOUBT);
    assertThat(found.getFirst().what())
        .startsWith("68 holes of the front row, bay 1 in left side (L) come near the front edge");
    assertThat(found.getFirst().remedies().getFirst().what()).isEqualTo("set front-row to 3/8 in");
  }

  @Test
  void should_say_when_there_are_too_many_shelves_or_no_level() {
    Bay many = bay(pins(), 12);
    Boring few = bore(set(bookcase(many), set("pitch", "7 in")));
    assertThat(kind(few, "too-many-shelves")).hasSize(1);
    assertThat(kind(few, "too-many-shelves").getFirst().what())
        .isEqualTo(
            "Bay 1 has 12 shelves between B and T, but its 10 levels in 79 1/16 in take only 10.");
    Boring none =
        bore(
            set(
                bookcase(bay(pins(), 1)),
                set("clear-below", "39"),
                set("clear-above", "39"),
                set("first-hole", "60")));
    assertThat(kind(none, "no-level").getFirst().severity()).isEqualTo(Severity.ERROR);
    assertThat(none.cases().getFirst().part("1-S1").features()).isEmpty();
  }

  @Test
  void should_find_what_does_not_fit_between_pins_and_holes() {
    Support thick = new Support.Pins(in("1/4"), in("1/2"), in("3/8"), in("1/8"));
    assertThat(kind(bore(bookcase(bay(thick, 2))), "pin-stem")).hasSize(1);
    CaseOrder order = bookcase(bay(pins(), 2));
    assertThat(kind(bore(set(order, set("hole-allowance", "-0.1"))), "pin-fit")).hasSize(1);
    assertThat(kind(bore(set(order, set("hole-allowance", "0.35"))), "pin-fit")).hasSize(1);
    assertThat(kind(bore(set(order, set("hole-allowance", "0.1"))), "pin-fit")).isEmpty();
    assertThat(
            kind(
                bore(set(order, set("front-row", "5 9/16"), set("back-row", "5 9/16"))),
                "rows-close"))
        .extracting(Finding::severity)
        .containsExactly(Severity.ERROR);
    assertThat(kind(bore(set(order, set("front-row", "6"))), "rows-close"))
        .extracting(Finding::severity)
        .containsExactly(Severity.ERROR);
  }

  /** In sides of 23/32: 1/16 in is to be left behind a groove. Surface standards have none. */
  @ParameterizedTest
  @CsvSource({
    "LET_IN, 3/16, , ''",
    "LET_IN, 21/32, , ''",
    "LET_IN, 43/64, DOUBT, leave too little of left side (L)",
    "LET_IN, 23/32, ERROR, go through left side (L)",
    "LET_IN, 3/4, ERROR, go through left side (L)",
    "SURFACE, 3/4, , ''",
  })
  void should_keep_wood_behind_the_grooves(
      Support.Mounting mounting, String thickness, Severity severity, String says) {
    Support standards =
        new Support.Standards(
            mounting,
            in("5/8"),
            in(thickness),
            in("1/2"),
            in("1/4"),
            in("1/16"),
            in("1/8"),
            in("96"));
    List<Finding> found = kind(bore(bookcase(bay(standards, 2))), "groove-floor");
    assertThat(found.stream().map(Finding::severity).toList())
        .isEqualTo(severity == null ? List.of() : List.of(severity, severity));
    assertThat(found.stream().map(Finding::what).findFirst().orElse("")).contains(says);
    assertThat(found).allSatisfy(f -> assertThat(f.remedies()).hasSize(2));
  }

  @Test
  void should_let_standards_in_over_the_clear_height() {
    Support standards =
        new Support.Standards(
            Support.Mounting.LET_IN,
            in("5/8"),
            in("3/16"),
            in("1/2"),
            in("1/4"),
            in("1/16"),
            in("1/8"),
            in("72"));
    Boring boring = bore(bookcase(bay(standards, 3), bay(standards, 3)));
    Feature.Channel groove =
        (Feature.Channel) boring.cases().getFirst().part("L").features().getLast();
    // 5/8 + 1/64 wide, 3/16 deep, from 4 7/32 to 83 9/32.
    assertThat(groove.volume().low().x()).isEqualTo(in("17/32"));
    assertThat(groove.volume().high().y().minus(groove.volume().low().y())).isEqualTo(in("41/64"));
    assertThat(groove.volume().low().z()).isEqualTo(in("4 7/32"));
    assertThat(groove.volume().high().z()).isEqualTo(in("83 9/32"));
    // Both faces grooved: 23/32 - 2 x 3/16 = 11/32 is enough.
    assertThat(kind(boring, "grooves-meet")).isEmpty();
    assertThat(kind(boring, "hole-joint")).isEmpty();
    assertThat(kind(boring, "standard-length")).hasSize(2);
    assertThat(boring.grids().getFirst().levels().getFirst().height()).isEqualTo(in("4 15/32"));
    assertThat(boring.findings()).noneMatch(f -> f.kind().equals("balance"));
  }

  @Test
  void should_make_strips_and_cleats_and_notch_the_shelves() {
    Support cleats =
        new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("1 1/4"), in("1 1/8"), in("3/4"));
    Boring boring = bore(set(bookcase(bay(cleats, 2)), set("pitch", "2")));
    BuiltCase built = boring.cases().getFirst();
    assertThat(built.parts().stream().map(Part::mark))
        .contains("1-LF", "1-LB", "1-RF", "1-RB", "1-C1L", "1-C1R", "1-C2L", "1-C2R");
    Part strip = built.part("1-LF");
    assertThat(strip.length().total()).isEqualTo(in("79 1/16"));
    assertThat(strip.box().low().y()).isEqualTo(in("3/4"));
    Feature.Hole notch = (Feature.Hole) strip.features().getFirst();
    // Bored on the middle line of a blank: half a kerf of 1/8 beyond the strip's edge at 2 1/4.
    assertThat(notch.centre().y()).isEqualTo(in("2 5/16"));
    Feature.Hole behind = (Feature.Hole) built.part("1-LB").features().getFirst();
    assertThat(built.part("1-LB").box().low().y().minus(behind.centre().y())).isEqualTo(in("1/16"));
    // The cleat lies on the notch's lowest point, 5/8 below its centre, and carries the shelf
    // 1 1/8 above that.
    Part cleat = built.part("1-C1L");
    Part shelf = built.part("1-S1");
    assertThat(cleat.box().high().z()).isEqualTo(shelf.box().low().z());
    BayGrid.Level level =
        boring
            .grids()
            .getFirst()
            .levels()
            .get(boring.grids().getFirst().seats().getFirst().level() - 1);
    assertThat(level.height().minus(cleat.box().low().z())).isEqualTo(in("5/8"));
    // From strip to strip, 9 27/32 - 3/4 less 2 1/4, less a kerf, and two rounded ends of 9/16.
    assertThat(cleat.length().total()).isEqualTo(in("7 27/32"));
    assertThat(shelf.features()).hasSize(4);
    Feature.Channel cut = (Feature.Channel) shelf.features().getFirst();
    assertThat(cut.volume().overlaps(strip.box())).isTrue();
    assertThat(cut.volume().high().x().minus(strip.box().high().x())).isEqualTo(in("1/16"));
  }
}
