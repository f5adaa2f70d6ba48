package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.bench.Step;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Make;
import fourpin.casework.BuiltCase;
import fourpin.job.Job;
import fourpin.job.Tool;
import fourpin.measure.Length;
import fourpin.plan.CaseProgram.Log;
import fourpin.plan.CaseWays.GuidedBoring;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.List;

/** What is done once for all panels before any is bored through a guide, typed and in words. */
final class GuideMaking {

  private final Job job;
  private final Log log;

  GuideMaking(Job job, Log log) {
    this.job = job;
    this.log = log;
  }

  /**
   * The guide, one for all copies of the case, and what keeps it off ends and edges.
   *
   * @param built the case
   */
  void make(BuiltCase built, GuidedBoring boring, GuideSteps steps) {
    Guide guide = boring.method().guide();
    log.add(
        Stage.BORE,
        List.of(),
        List.of(),
        "Make guide “"
            + guide.mark()
            + "”, one for all panels and copies. "
            + strip(guide)
            + lines(guide)
            + block(boring)
            + pin(boring)
            + " Seen with its zero on the left and its index edge towards you, write A on the side"
            + " that shows and B on the other; write the numbers of the holes on both, and"
            + " FRONT EDGE along its index edge.",
        steps.make(),
        "Measure first, middle and last hole from zero again, and the distance of each from the"
            + " index edge. What runs in the holes goes into every one that is not masked."
            + battens(guide),
        cautions(guide));
    spacers(steps.spacers(built), guide);
  }

  /** Strips that are sold may be of metal; their battens are of wood. */
  private static List<Caution> cautions(Guide guide) {
    List<Caution> all = new ArrayList<>();
    boolean steel = guide.make() instanceof Make.Sold sold && sold.kind() == Tool.StripKind.STEEL;
    if (steel) {
      all.add(Cautions.METAL);
    }
    if (!steel || guide.block().isPositive()) {
      all.addAll(List.of(Cautions.SAW, Cautions.SMALL, Cautions.DRILL, Cautions.DUST));
    }
    return all;
  }

  /** Each batten has a stop face of its own, and bears on the panel when its side lies there. */
  private static String battens(Guide guide) {
    return guide.block().isZero()
        ? ""
        : " Bore through hole "
            + open(guide)
            + " into scrap, once with side A showing and once with side B: both"
            + " holes must lie equally far from the end, or one batten is off zero.";
  }

  /** The first that is not masked: the nearer to zero, the shorter the scrap. */
  private static int open(Guide guide) {
    return guide.holes().stream()
        .filter(hole -> hole.use() != Guide.Use.MASKED)
        .mapToInt(GuideHole::number)
        .findFirst()
        .orElseThrow();
  }

  private void spacers(List<Step> spacers, Guide guide) {
    if (spacers.isEmpty()) {
      return;
    }
    log.add(
        Stage.BORE,
        List.of(),
        List.of(),
        "Make what keeps guide “"
            + guide.mark()
            + "” off ends and edges, both long sides straight and parallel, and write its mark and"
            + " its size on each. E stands for end, S for side edge.",
        spacers,
        "Measure each at both ends: what is wrong in it is wrong in every row that it serves.",
        List.of(Cautions.SAW, Cautions.SMALL, Cautions.DUST));
  }

  private String strip(Guide guide) {
    return switch (guide.make()) {
      case Make.Bored(String stock) ->
          "Cut a strip of "
              + stock
              + " ("
              + guide.material()
              + ") with straight edges, "
              + size(guide)
              + ", "
              + text(guide.width())
              + " wide; set every hole out from zero, never from hole to hole, and bore it square,"
              + " on a drill press if there is one.";
      case Make.Sold sold ->
          "Cut “"
              + sold.strip()
              + "” ("
              + guide.material()
              + ") to "
              + size(guide)
              + ": "
              + end(guide, sold)
              + ". Its hole "
              + sold.first()
              + ", counted from that end as it was sold, becomes hole 1, "
              + text(guide.holes().getFirst().along())
              + " from zero: holes are counted from the first whose centre lies beyond "
              + (guide.block().isZero() ? "zero." : "the block.")
              + behind(guide, sold);
    };
  }

  /** Where it is sawn off. */
  private String end(Guide guide, Make.Sold sold) {
    Length before = guide.holes().getFirst().along().plus(guide.block());
    return sold.off().isZero()
        ? "one end stays as it was sold"
        : "saw "
            + text(sold.off())
            + " off one end, which is "
            + text(before)
            + " before the centre of hole "
            + sold.first();
  }

  /** The hole that would put the count off by one. */
  private String behind(Guide guide, Make.Sold sold) {
    return sold.behind().isZero()
        ? ""
        : " Hole "
            + (sold.first() - 1)
            + " of the strip, which shows "
            + text(sold.behind())
            + (guide.block().isZero() ? " at zero" : " beyond the block")
            + ", is not counted: tape over it on both sides and cross it out.";
  }

  /** The seat of the block is part of the strip. */
  private String size(Guide guide) {
    String whole = text(guide.length().plus(guide.block())) + " long";
    return guide.block().isZero()
        ? whole
        : whole
            + " in all ("
            + text(guide.length())
            + " from zero to the far end, and "
            + text(guide.block())
            + " behind zero, where the block sits)";
  }

  /** On strips that are sold the holes show for themselves where the middle is. */
  private static String lines(Guide guide) {
    return guide.make() instanceof Make.Sold
        ? ""
        : " On both sides draw the centre line of the holes from end to end, and a square line"
            + " across it through every hole, out to the edges.";
  }

  /** Common practice. */
  private String block(GuidedBoring boring) {
    Guide guide = boring.method().guide();
    if (guide.block().isZero()) {
      return " Its index end, cut square, is zero: write DOWN on both sides of it.";
    }
    return " For the block screw two battens, each "
        + text(guide.block())
        + " wide, "
        + text(guide.block())
        + " high and "
        + text(guide.width())
        + " long, one on either side of the strip at its index end, stop faces on zero and square"
        + " to the index edge, through both of them with two screws No. 6 (3.5 mm), bored for, their"
        + " points inside the wood, "
        + (boring.method().isMovedAlong()
            ? "and without glue: the block comes off where the guide is moved along, and goes on"
                + " again by the same holes."
            : "and leave them on, also when the guide is turned over.");
  }

  /** What holds the guide where it is moved along. */
  private String pin(GuidedBoring boring) {
    if (!boring.method().isMovedAlong()) {
      return "";
    }
    Length bored = boring.method().bit().diameter();
    Length inGuide = boring.method().guide().holes().getFirst().diameter();
    return inGuide.equals(bored)
        ? " For moving it along have a plain pin of " + text(bored) + " at hand."
        : " For moving it along make a stepped pin of metal or hard wood, by turning or by filing a"
            + " rod down in the chuck of a drill: "
            + text(inGuide)
            + " thick as far as the guide is thick, "
            + text(bored)
            + " thick below for the bored hole. A plain pin of "
            + text(bored)
            + " has "
            + text(inGuide.minus(bored))
            + " of play in the guide.";
  }

  void setBit(GuidedBoring boring, GuideSteps steps, StopSetting stop) {
    BitSetting bit = boring.method().bit();
    log.add(
        Stage.BORE,
        List.of(),
        List.of(),
        stop.words(bit, boring.grids()),
        List.of(steps.bit()),
        stop.check(bit, " through the guide"),
        List.of(GuidedRows.tool(boring), Cautions.DUST));
  }

  private String text(Length length) {
    return job.style().text(length);
  }
}
