package fourpin.boring.way;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static fourpin.job.SampleJobs.shelves;

import fourpin.boring.BayFigures;
import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.SampleJobs;
import fourpin.job.Shop;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.job.Tool;
import fourpin.job.Tool.StripKind;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Tools for holes of 1/4 in, and a case of one bay to bore. All sizes in inches. */
final class ToolKit {

  private static final int SPACES = 24;

  private static final Optional<BigDecimal> AT_HAND = Optional.empty();

  private ToolKit() {}

  /** One bay of four shelves on pins of 1/4 in, between sides of 84 x 12 in. */
  static CaseDraft draft() {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in("84"), in("12"));
    draft.bays = List.of(SampleJobs.bay(4));
    return draft;
  }

  static Bay on(Support support) {
    return new Bay(
        Optional.empty(),
        List.of(),
        Optional.of(shelves(2)),
        Optional.of(support),
        Optional.empty());
  }

  static CaseBoring boring(CaseOrder order, List<Tool> tools) {
    return WaysTest.ways(job(order).with(new Shop("shop", tools))).borings().getFirst();
  }

  /** What is said of the patterns of a job's bays. */
  static Stream<Figure> patterns(Job job) {
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    return boring.grids().stream()
        .flatMap(grid -> BayFigures.of(boring.cases().getFirst(), grid).stream());
  }

  static WayAnswer answer(Way way, CaseOrder order, List<Tool> tools) {
    return boring(order, tools).answer(way);
  }

  static Tool drill() {
    return new Tool.HandDrill("drill", in("9 1/2"), AT_HAND);
  }

  static Tool bit() {
    return bit("1/4", "3");
  }

  static Tool bit(String diameter, String reach) {
    return new Tool.PlainBit("bit", in(diameter), in("1/8"), in(reach), AT_HAND);
  }

  static Tool centring(String nose, String tip, String reach) {
    return centring(nose, tip, Optional.empty(), reach);
  }

  static Tool centring(String nose, String tip, Optional<Length> noseLength, String reach) {
    return new Tool.CentringBit(
        "centring bit", in("1/4"), in(nose), in(tip), noseLength, in("1/16"), in(reach), AT_HAND);
  }

  /** With a base of 6 in, 10 in high. */
  static Tool router(String travel) {
    return new Tool.Router("router", in(travel), in("6"), in("10"), AT_HAND);
  }

  static Tool bushing(String outside, String bore, String barrel) {
    return new Tool.Bushing("bushing", in(outside), in(bore), in(barrel), AT_HAND);
  }

  static Tool routerBit(String reach) {
    return new Tool.RouterBit("router bit", in("1/4"), in(reach), AT_HAND);
  }

  static Tool sheet() {
    return sheet("1/4", "96", "4");
  }

  static Tool sheet(String thickness, String length, String width) {
    return new Tool.GuideStock("sheet", "MDF", in(thickness), in(length), in(width), AT_HAND);
  }

  /** A router that is fit for its work but perhaps for the bushing. */
  static List<Tool> routing(Tool bushing) {
    return List.of(router("2"), bushing, routerBit("1"), sheet());
  }

  /** A strip of hardboard 1/4 in thick and 96 in long. */
  static Tool strip(String hole, String pitch) {
    return strip(StripKind.HARDBOARD, hole, pitch, "96");
  }

  /** A strap with holes of 5/16 in, 1/16 in thick and 96 in long. */
  static Tool strap(String pitch) {
    return strip(StripKind.STEEL, "5/16", pitch, "96");
  }

  /** Holes 1/2 in from the end, in the middle of 1 1/2 in. */
  static Tool strip(StripKind kind, String hole, String pitch, String length) {
    return over(kind, hole, in(pitch).times(SPACES), length);
  }

  /** Of hardboard, its pitch measured over 24 spaces. */
  static Tool measured(String hole, String over) {
    return over(StripKind.HARDBOARD, hole, in(over), "96");
  }

  private static Tool over(StripKind kind, String hole, Length over, String length) {
    Length thickness = in(kind == StripKind.STEEL ? "1/16" : "1/4");
    return new Tool.PerforatedStrip(
        "strip",
        kind,
        in(hole),
        over,
        SPACES,
        in("1/2"),
        in("3/4"),
        thickness,
        in(length),
        in("1 1/2"),
        AT_HAND);
  }

  static Tool press(String throat, String opening, String stroke) {
    return new Tool.DrillPress("press", in(throat), in("10"), in(stroke), in(opening), AT_HAND);
  }

  /**
   * @param spacing of its spindles, if they are fixed
   */
  static Tool borer(String length, String width, String bit, String... spacing) {
    return new Tool.Machine(
        "borer",
        in(length),
        in(width),
        List.of(in(bit)),
        Stream.of(spacing).findFirst().map(SampleJobs::in),
        AT_HAND);
  }
}
