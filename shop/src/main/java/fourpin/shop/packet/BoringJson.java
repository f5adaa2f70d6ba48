package fourpin.shop.packet;

import static fourpin.shop.packet.PlanJson.all;
import static fourpin.shop.packet.PlanJson.mm;
import static fourpin.shop.packet.PlanJson.object;
import static fourpin.shop.packet.PlanJson.plain;

import fourpin.boring.BayGrid;
import fourpin.boring.tolerance.Change;
import fourpin.boring.tolerance.Levelness;
import fourpin.boring.tolerance.Sampled;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Gang;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Method;
import fourpin.boring.way.Purchase;
import fourpin.boring.way.WayAnswer;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport;
import fourpin.plan.MistakeReport.Check;
import fourpin.plan.MistakeReport.Outcome;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How the bays are bored, as part of the plan for other programs. */
final class BoringJson {

  private BoringJson() {}

  static Map<String, Object> boring(CaseBoring boring) {
    return object(
        "case", boring.caseName(),
        "bays", all(boring.grids(), BayGrid::bay),
        "chosen", boring.chosen().key(),
        "because", boring.because(),
        "ways", all(boring.answers(), BoringJson::answer),
        "figures", all(boring.figures(), Figure::id));
  }

  private static Map<String, Object> answer(WayAnswer answer) {
    return object(
        "way", answer.way().key(),
        "verdict", plain(answer.verdict()),
        "reasons", all(answer.reasons(), BoringJson::reason),
        "together", all(answer.together(), BoringJson::reason),
        "method", answer.method().map(BoringJson::method),
        "toBuy", all(answer.purchases(), Purchase::name),
        "figures", all(answer.figures(), Figure::id));
  }

  private static Map<String, Object> reason(WayAnswer.Reason reason) {
    return object("what", reason.what(), "remedy", reason.remedy());
  }

  private static Map<String, Object> pair(Gang gang) {
    return object(
        "bay", gang.bay(),
        "stop", gang.stop().mm(),
        "panels",
            all(
                gang.panels(),
                l -> object("part", l.part(), "face", plain(l.face()), "gap", l.gap().mm())));
  }

  private static Map<String, Object> method(Method method) {
    return switch (method) {
      case Method.Guided guided ->
          object(
              "kind", "guided",
              "how", plain(guided.how()),
              "bit", bit(guided.bit()),
              "guide", guide(guided.guide()),
              "clampings", all(guided.clampings(), BoringJson::clamping));
      case Method.Marked marked ->
          object(
              "kind", "marked",
              "how", plain(marked.how()),
              "bit", bit(marked.bit()),
              "pairs", all(marked.gangs(), BoringJson::pair));
      case Method.Programmed programmed ->
          object(
              "kind", "programmed", "machine", programmed.machine(), "bit", bit(programmed.bit()));
      case Method.Grooved grooved ->
          object(
              "kind", "grooved",
              "cutter", plain(grooved.cutter()),
              "tool", grooved.tool(),
              "cut", mm(grooved.cut()),
              "passes", grooved.passes(),
              "depths", all(grooved.depths(), PlanJson::mm));
      case Method.ScrewedOn _ -> object("kind", "screwed-on");
      case Method.Blanks blanks ->
          object(
              "kind", "blanks",
              "how", plain(blanks.how()),
              "bit", bit(blanks.bit()),
              "stack", blanks.stack());
    };
  }

  private static Map<String, Object> bit(BitSetting bit) {
    return object(
        "tool", bit.tool(),
        "diameter", mm(bit.diameter()),
        "runs", mm(bit.runs()),
        "over", mm(bit.over()),
        "depth", mm(bit.depth()),
        "point", mm(bit.point()),
        "reserve", mm(bit.reserve()),
        "stop", mm(bit.stop()));
  }

  private static Map<String, Object> guide(Guide guide) {
    return object(
        "mark", guide.mark(),
        "make", make(guide.make()),
        "material", guide.material(),
        "length", mm(guide.length()),
        "width", mm(guide.width()),
        "thickness", mm(guide.thickness()),
        "block", mm(guide.block()),
        "holes",
            all(
                guide.holes(),
                h ->
                    object(
                        "number", h.number(),
                        "along", mm(h.along()),
                        "across", mm(h.across()),
                        "diameter", mm(h.diameter()),
                        "use", plain(h.use()))));
  }

  private static Map<String, Object> make(Guide.Make make) {
    return switch (make) {
      case Guide.Make.Bored(String stock) -> object("kind", "bored", "stock", stock);
      case Guide.Make.Sold(String strip, _, int first, Length off, Length behind) ->
          object(
              "kind", "sold", "strip", strip, "first", first, "off", mm(off), "behind", mm(behind));
    };
  }

  private static Map<String, Object> clamping(Clamping clamping) {
    return object(
        "bay", clamping.bay(),
        "part", clamping.part(),
        "face", plain(clamping.face()),
        "row", plain(clamping.row()),
        "edge", plain(clamping.edge()),
        "across", mm(clamping.across()),
        "along", mm(clamping.along()),
        "bearing", bearing(clamping.bearing()),
        "reaches", all(clamping.reaches(), BoringJson::reach));
  }

  private static Map<String, Object> bearing(Bearing bearing) {
    return switch (bearing) {
      case Bearing.End _ -> object("on", "end");
      case Bearing.PanelBelow below ->
          object("on", "panel-below", "panel", below.mark(), "spacer", mm(below.spacer()));
    };
  }

  private static Map<String, Object> reach(Reach reach) {
    return object(
        "pin", reach.step().map(Clamping.Step::pin),
        "into", reach.step().map(Clamping.Step::into),
        "holes", reach.holes());
  }

  static Map<String, Object> levelness(Levelness level) {
    return object(
        "case", level.caseName(),
        "way", level.way().key(),
        "limit", level.limit(),
        "resolution", level.resolution(),
        "leastOdds", level.leastOdds(),
        "worst", object("bay", level.worst().bay(), "level", level.worst().level()),
        "expected", level.expected(),
        "anyPlace", level.anyPlace().share(),
        "anyPlaceError", level.anyPlace().error(),
        "anyShelf", level.anyShelf().share(),
        "anyShelfError", level.anyShelf().error(),
        "places",
            all(
                level.places(),
                p ->
                    object(
                        "bay", p.bay(),
                        "level", p.level(),
                        "gap", p.usual(),
                        "odds", p.odds(),
                        "oddsError", p.gap().sampledBeyond(level.limit()).map(Sampled::error))),
        "gains", all(level.gains(), BoringJson::change),
        "mixed", all(level.mixed(), BoringJson::mixed),
        "harms", all(level.harms(), BoringJson::change),
        "figures", all(level.figures(), Figure::id));
  }

  private static Map<String, Object> change(Change change) {
    return object(
        "what", change.what(),
        "before", outcome(change.before()),
        "after", outcome(change.after()),
        "cost", change.cost());
  }

  private static Map<String, Object> mixed(Change change) {
    return object(
        "what", change.what(),
        "before", outcome(change.before()),
        "after", outcome(change.after()),
        "which", change.mixed(),
        "cost", change.cost());
  }

  private static Map<String, Object> outcome(Change.Outcome outcome) {
    return object("odds", outcome.odds(), "gap", outcome.gap(), "slope", outcome.slope());
  }

  static Map<String, Object> mistake(MistakeReport report) {
    return object(
        "mistake", report.mistake().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        "case", report.caseName(),
        "part", report.part(),
        "outcome", outcome(report.outcome()),
        "what", report.what(),
        "shows", report.shows(),
        "test", report.test(),
        "rescue", plain(report.rescue()),
        "how", report.how(),
        "figures", all(report.figures(), Figure::id));
  }

  private static Map<String, Object> outcome(Outcome outcome) {
    return switch (outcome) {
      case Outcome.Spoilt(_, _, Check check, List<String> alike) ->
          object(
              "kind", "spoilt",
              "check", check.what(),
              "right", mm(check.right()),
              "wrong", check.wrong().map(PlanJson::mm),
              "alike", alike);
      case Outcome.Harmless(String why) -> object("kind", "harmless", "why", why);
      case Outcome.Impossible(String why) -> object("kind", "impossible", "why", why);
    };
  }
}
