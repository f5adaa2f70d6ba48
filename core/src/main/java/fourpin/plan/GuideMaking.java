package fourpin.plan;

import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.Make;
import fourpin.job.Job;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.plan.CaseProgram.Log;
import fourpin.plan.CaseWays.GuidedBoring;
import fourpin.plan.PlannedStep.Stage;
import java.util.List;
import java.util.Set;

/** What is done once for all panels before any is bored through a guide, typed and in words. */
final class GuideMaking {

  private static final String PROUD = "standing proud of both sides, so that it can be taken off";

  private static final String PROUD_BELOW =
      "standing proud only of the side that lies on the panel, flush with the other, because the"
          + " router's base passes over it; when the guide is turned, screw it on the other way up";

  private final Job job;
  private final Set<String> plugs;
  private final Log log;

  /**
   * @param plugs what goes into the holes: "pin", "sleeve"
   */
  GuideMaking(Job job, Set<String> plugs, Log log) {
    this.job = job;
    this.plugs = plugs;
    this.log = log;
  }

  void make(GuidedBoring boring, GuideSteps steps) {
    Guide guide = boring.method().guide();
    log.add(
        Stage.BORE,
        List.of(),
        List.of(),
        "Make guide “"
            + guide.mark()
            + "”, one for all panels and copies. "
            + strip(guide)
            + block(boring)
            + pin(boring)
            + " Seen with its zero on the left and its index edge towards you, write A on the side"
            + " that shows and B on the other; write the numbers of the holes on both, and"
            + " FRONT EDGE along its index edge.",
        steps.make(),
        "Measure first, middle and last hole from zero again, and the distance of each from the"
            + " index edge. What runs in the holes goes into every one that is not masked.",
        List.of(Cautions.SAW, Cautions.SMALL, Cautions.DRILL, Cautions.DUST));
  }

  private String strip(Guide guide) {
    return switch (guide.make()) {
      case Make.Bored(String stock) ->
          "Cut a strip of "
              + stock
              + " ("
              + guide.material()
              + ") with straight edges, "
              + text(guide.length().plus(guide.block()))
              + " long, "
              + text(guide.width())
              + " wide; set every hole out from zero, never from hole to hole, and bore it square,"
              + " on a drill press if there is one.";
      case Make.Sold(String strip, int first) ->
          "Take “"
              + strip
              + "” ("
              + guide.material()
              + "): its hole "
              + first
              + ", counted from its end, becomes hole 1, "
              + text(guide.holes().getFirst().along())
              + " from zero.";
    };
  }

  private String block(GuidedBoring boring) {
    Guide guide = boring.method().guide();
    return guide.block().isZero()
        ? " Its index end, cut square, is zero."
        : " Screw a block "
            + text(guide.block())
            + " thick on behind zero, square to the index edge and "
            + (boring.way() == Way.ROUTER_GUIDE ? PROUD_BELOW : PROUD)
            + ": its stop face is zero.";
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

  void setBit(GuidedBoring boring, GuideSteps steps) {
    BitSetting bit = boring.method().bit();
    log.add(
        Stage.BORE,
        List.of(),
        List.of(),
        "Set the stop: hole "
            + text(bit.depth())
            + " + guide "
            + text(bit.over())
            + " = "
            + text(bit.stop())
            + ", to the full diameter. "
            + point(bit),
        List.of(steps.bit()),
        "Bore through the guide into scrap of the same stock: the hole is "
            + text(bit.depth())
            + " deep to the full diameter and takes a "
            + String.join(" or a ", plugs)
            + ". Look at the stop again after every row.",
        List.of(GuidedRows.tool(boring)));
  }

  private String point(BitSetting bit) {
    String reserve = text(bit.reserve()) + " of wood stays behind ";
    return bit.point().isZero()
        ? reserve + "the hole in the thinnest panel."
        : "The bit's point goes "
            + text(bit.point())
            + " deeper; "
            + reserve
            + "it in the thinnest panel.";
  }

  private String text(Length length) {
    return job.style().text(length);
  }
}
