package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Back;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Doors;
import fourpin.job.Joint;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.job.Support;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is bought by the piece, counted by hand. */
class HardwareTest {

  private static Support standards(String soldIn) {
    return new Support.Standards(
        Support.Mounting.LET_IN,
        in("5/8"),
        in("3/16"),
        in("1/2"),
        in("1/4"),
        in("1/16"),
        in("1/8"),
        in(soldIn));
  }

  private static Plan plan(Support support) {
    CaseDraft draft = new CaseDraft();
    draft.bays =
        List.of(
            new Bay(
                Optional.empty(),
                List.of(in("40")),
                Optional.of(SampleJobs.shelves(2)),
                Optional.of(support),
                Optional.empty()));
    return Planner.plan(job(draft.order()));
  }

  private static long needed(Plan plan, String name) {
    return plan.hardware().stream()
        .filter(h -> h.name().equals(name))
        .mapToLong(h -> ((HardwareItem.Amount.Pieces) h.amount()).needed())
        .sum();
  }

  /**
   * Openings of 35 1/16 in and 43 9/32 in, four standards in each, cut 1/16 in shorter: 35 in and
   * 43 7/32 in. With another after it a piece takes 35 1/2 in and 43 1/2 in of a standard, so that
   * both come out of 78 1/2 in and not of less.
   */
  @ParameterizedTest
  @CsvSource({"78 1/2, 4", "78 31/64, 6", "80, 4", "72, 6", "70 1/2, 6", "70 31/64, 8", "48, 8"})
  void should_buy_no_more_standards_than_the_pieces_take(String soldIn, long count) {
    assertThat(needed(plan(standards(soldIn)), "standard, let in as sold")).isEqualTo(count);
  }

  /** Six inches apart at most: 35 1/16 takes 7 screws, 43 9/32 takes 9; four of each. */
  @Test
  void should_count_the_screws_of_standards_and_strips() {
    assertThat(needed(plan(standards("72")), "screw for standards and strips"))
        .isEqualTo(4 * (7 + 9));
    Support cleats =
        new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("3/4"), in("3/4"), in("3/4"));
    assertThat(needed(plan(cleats), "screw for standards and strips")).isEqualTo(4 * (7 + 9));
    assertThat(needed(plan(SampleJobs.pins()), "screw for standards and strips")).isZero();
  }

  private static CaseDraft plain() {
    CaseDraft draft = new CaseDraft();
    draft.back = Optional.empty();
    draft.kick = Optional.empty();
    draft.topJoint = new Joint(Joint.Kind.BUTT, Optional.empty());
    draft.bottomJoint = new Joint(Joint.Kind.BUTT, Optional.empty());
    draft.quantity = 2;
    draft.bays =
        List.of(
            new Bay(
                Optional.empty(), List.of(), Optional.empty(), Optional.empty(), Optional.empty()));
    return draft;
  }

  private static double covers(Plan plan, String name) {
    return plan.hardware().stream()
        .filter(h -> h.name().equals(name))
        .map(h -> ((HardwareItem.Amount.ToSuit) h.amount()).covers().value())
        .reduce(Double::sum)
        .orElseThrow();
  }

  /** Two boxes: sides of 84 x 12 in, top and bottom of 72 in less two sides, with two ends each. */
  @Test
  void should_tell_glue_and_finish_by_what_they_are_for() {
    Plan plan = Planner.plan(job(plain().order()));
    assertThat(covers(plan, "wood glue")).isCloseTo(2 * 4 * 12 * 25.4, within(1e-6));
    double faces = 2 * (2 * 84 * 12 + 2 * (72 - 2 * 23 / 32.0) * 12);
    assertThat(covers(plan, "finish")).isCloseTo(2 * faces * 0.0254 * 0.0254, within(1e-9));
  }

  @Test
  void should_anchor_each_copy_as_its_pull_takes() {
    Plan plan = Planner.plan(job(plain().order()));
    double each =
        plan.figures().stream()
            .filter(f -> f.id().equals("north/anchor-count"))
            .mapToDouble(f -> f.value().value())
            .sum();
    assertThat(each).isGreaterThanOrEqualTo(2);
    assertThat(needed(plan, "lag screw to the wall")).isEqualTo(2 * (long) each);
  }

  /** Two doors in each of two cases, on two plates each. */
  @Test
  void should_count_hinges() {
    CaseDraft draft = plain();
    assertThat(needed(Planner.plan(job(draft.order())), "hinge with its plate and screws"))
        .isZero();
    draft.doors =
        Optional.of(
            new Doors(
                Doors.Kind.OVERLAY,
                2,
                in("3/4"),
                in("1/8"),
                List.of(in("6"), in("78")),
                in("1 1/2"),
                in("2"),
                in("1")));
    assertThat(needed(Planner.plan(job(draft.order())), "hinge with its plate and screws"))
        .isEqualTo(2 * 2 * 2);
  }

  /** A block of two battens is screwed through; a rod only where the guide is moved along. */
  @ParameterizedTest
  @CsvSource({"96, 0", "24, 1"})
  void should_have_what_a_guide_is_put_together_with(String stock, long rods) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(SampleJobs.bay(2));
    draft.settings =
        draft.settings.with(Setting.WAY, new SettingValue.OfChoice(Way.CENTRING_GUIDE.key()));
    Optional<BigDecimal> owned = Optional.empty();
    Shop shop =
        new Shop(
            "shop",
            List.of(
                new Tool.HandDrill("drill", in("10"), owned),
                new Tool.CentringBit(
                    "centring",
                    in("1/4"),
                    in("3/8"),
                    in("9/32"),
                    Optional.of(in("3/16")),
                    in("1/16"),
                    in("1 1/4"),
                    owned),
                new Tool.GuideStock("ply", "plywood", in("1/4"), in(stock), in("12"), owned)));
    Plan plan = Planner.plan(job(draft.order()).with(shop));
    assertThat(needed(plan, "screw for the block of a guide")).isEqualTo(2);
    assertThat(needed(plan, "rod for the pin that a guide is moved along by")).isEqualTo(rods);
  }

  private static Plan backed(Back.Kind kind, Back.Pieces pieces) {
    CaseDraft draft = new CaseDraft();
    draft.back = Optional.of(new Back(kind, "back", Optional.of(in("1/4")), pieces));
    draft.bays = List.of(SampleJobs.bay(2), SampleJobs.bay(2), SampleJobs.bay(2));
    draft.quantity = 2;
    return Planner.plan(job(draft.order()));
  }

  /** The clear height of 79 1/16 in and grooves of 1/4 in: 14 spaces of 6 in at most, 15 screws. */
  @Test
  void should_screw_backs_in_grooves_to_the_partitions_that_they_meet_on() {
    Plan plan = backed(Back.Kind.GROOVE, Back.Pieces.BY_BAY);
    int edges = 1 + 2 + 1;
    assertThat(needed(plan, "screw for the back")).isEqualTo(2L * edges * 15);
    assertThat(plan.steps())
        .filteredOn(s -> s.words().contains("to the partitions that they meet on"))
        .singleElement()
        .satisfies(s -> assertThat(s.parts()).containsExactly("BK1", "BK2", "BK3"))
        .satisfies(s -> assertThat(s.words()).contains(": " + edges * 15 + " screws"));
  }

  @Test
  void should_not_screw_a_back_that_stands_in_grooves_all_round() {
    Plan plan = backed(Back.Kind.GROOVE, Back.Pieces.ONE);
    assertThat(needed(plan, "screw for the back")).isZero();
    assertThat(plan.steps()).noneMatch(s -> s.words().contains("they meet on"));
  }

  /** Behind each edge of each piece there is wood to screw it to, half of it where two meet. */
  @ParameterizedTest
  @EnumSource(
      value = Back.Kind.class,
      names = {"RABBET", "APPLIED"})
  void should_screw_pieces_of_other_backs_all_round(Back.Kind kind) {
    Plan plan = backed(kind, Back.Pieces.BY_BAY);
    BuiltCase built = plan.cases().getFirst();
    List<Part> pieces = built.parts().stream().filter(p -> p.role() == Part.Role.BACK).toList();
    assertThat(pieces).hasSize(3);
    long screws = 0;
    for (Part piece : pieces) {
      Box box = piece.box();
      Length round = box.size(Axis.X).plus(box.size(Axis.Z)).times(2);
      screws += Math.ceilDiv(round.picometres(), in("6").picometres());
      for (Face edge : List.of(Face.LEFT, Face.RIGHT, Face.BOTTOM, Face.TOP)) {
        assertThat(lies(built, piece, edge)).as("%s %s", piece.mark(), edge).isTrue();
      }
    }
    assertThat(needed(plan, "screw for the back")).isEqualTo(2 * screws);
  }

  /** Whether a part ends at the front of a piece of the back, along its edge. */
  private static boolean lies(BuiltCase built, Part piece, Face edge) {
    Length at = piece.box().at(edge).minus(in("1/4").times(edge.direction()));
    return built.parts().stream()
        .filter(p -> p.role() != Part.Role.BACK)
        .map(Part::box)
        .anyMatch(
            b ->
                b.at(Face.BACK).isAtLeast(piece.box().at(Face.FRONT))
                    && !at.isLessThan(b.at(low(edge)))
                    && !b.at(low(edge).opposite()).isLessThan(at));
  }

  private static Face low(Face edge) {
    return edge == Face.LEFT || edge == Face.RIGHT ? Face.LEFT : Face.BOTTOM;
  }
}
