package fourpin.shop.packet;

import fourpin.boring.BayGrid;
import fourpin.boring.way.Purchase;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import fourpin.casework.Point;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import fourpin.plan.HardwareItem;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.ToolItem;
import fourpin.strength.ShelfAnswer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The whole plan for other programs, as docs/plan.schema.json describes it: lengths in millimetres
 * as exact decimals, quantities in the metric unit that stands beside them, fields in a fixed
 * order. Absent values are left out.
 */
final class PlanJson {

  /** Raised when a reader of the former format would go wrong. */
  static final int FORMAT = 1;

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();

  private PlanJson() {}

  static String text(Plan plan) {
    return JSON.writerWithDefaultPrettyPrinter()
            .writeValueAsString(
                object(
                    "format", FORMAT,
                    "job", job(plan.job()),
                    "ready", plan.readyForTheBench(),
                    "cases", all(plan.cases(), PlanJson::built),
                    "grids", all(plan.grids(), PlanJson::grid),
                    "borings", all(plan.borings(), BoringJson::boring),
                    "levelness", all(plan.levelness(), BoringJson::levelness),
                    "mistakes", all(plan.mistakes(), BoringJson::mistake),
                    "shelves", all(plan.shelves(), PlanJson::shelf),
                    "cutList", all(plan.cutList(), CutJson::item),
                    "materials", all(plan.materials(), CutJson::material),
                    "hardware", all(plan.hardware(), PlanJson::hardware),
                    "tools", all(plan.tools(), PlanJson::tool),
                    "steps", all(plan.steps(), PlanJson::step),
                    "totals", all(plan.totals(), Figure::id),
                    "findings", all(plan.findings(), PlanJson::finding),
                    "figures", all(plan.figures(), PlanJson::figure)))
        + "\n";
  }

  /** Names and values in turn; an empty optional leaves its name out. */
  static Map<String, Object> object(Object... namesAndValues) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      String name = (String) namesAndValues[i];
      switch (namesAndValues[i + 1]) {
        case Optional<?> optional -> optional.ifPresent(v -> object.put(name, v));
        case Object value -> object.put(name, value);
      }
    }
    return object;
  }

  static <T> List<Object> all(List<T> list, Function<? super T, ?> each) {
    List<Object> out = new ArrayList<>();
    list.forEach(t -> out.add(each.apply(t)));
    return out;
  }

  static BigDecimal mm(Length length) {
    return length.exactMm();
  }

  static String plain(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static Map<String, Object> job(Job job) {
    return object(
        "title", job.title(),
        "revision", job.revision(),
        "unit", job.unit() == Unit.INCH ? "inch" : "mm",
        "paper", plain(job.paper()),
        "currency", job.currency(),
        "shop", job.shop().name());
  }

  private static Map<String, Object> built(BuiltCase built) {
    return object(
        "name", built.order().name(),
        "quantity", built.order().quantity(),
        "outside", box(built.outside()),
        "parts", all(built.parts(), PlanJson::part),
        "bays", all(built.bays(), PlanJson::bay));
  }

  private static Map<String, Object> bay(BaySpace bay) {
    return object(
        "number", bay.number(),
        "clear", box(bay.clear()),
        "left", bay.left(),
        "right", bay.right(),
        "openings",
            all(
                bay.openings(),
                o -> object("clear", box(o.clear()), "below", o.below(), "above", o.above())));
  }

  private static Map<String, Object> part(Part part) {
    return object(
        "mark", part.mark(),
        "name", part.name(),
        "role", plain(part.role()),
        "material", part.material(),
        "box", box(part.box()),
        "lengthAxis", plain(part.lengthAxis()),
        "thicknessAxis", plain(part.thicknessAxis()),
        "when", plain(part.when()),
        "edging",
            all(
                part.edging(),
                e ->
                    object(
                        "face", plain(e.face()),
                        "kind", plain(e.edging().kind()),
                        "material", e.edging().material(),
                        "thickness", mm(e.edging().thickness()),
                        "height", mm(e.edging().height()),
                        "length", mm(e.length()))),
        "features", all(part.features(), PlanJson::feature));
  }

  private static Map<String, Object> feature(Feature feature) {
    return switch (feature) {
      case Feature.Channel channel ->
          object(
              "kind", plain(channel.kind()),
              "face", plain(channel.face()),
              "purpose", channel.purpose(),
              "volume", box(channel.volume()));
      case Feature.Hole hole ->
          object(
              "kind", "hole",
              "face", plain(hole.face()),
              "purpose", hole.purpose(),
              "use", plain(hole.use()),
              "centre", point(hole.centre()),
              "diameter", mm(hole.diameter()),
              "depth", mm(hole.depth()));
    };
  }

  private static Map<String, Object> box(Box box) {
    return object("low", point(box.low()), "high", point(box.high()));
  }

  private static List<BigDecimal> point(Point point) {
    return List.of(mm(point.x()), mm(point.y()), mm(point.z()));
  }

  private static Map<String, Object> grid(BayGrid grid) {
    return object(
        "case", grid.caseName(),
        "bay", grid.bay(),
        "rows", all(grid.rows(), r -> object("name", plain(r.name()), "y", mm(r.y()))),
        "levels",
            all(
                grid.levels(),
                l ->
                    object(
                        "number", l.number(),
                        "height", mm(l.height()),
                        "underside", mm(l.underside()))),
        "pitch", mm(grid.pitch()),
        "diameter", mm(grid.diameter()),
        "depth", mm(grid.depth()),
        "runs", all(grid.runs(), r -> object("bottom", mm(r.bottom()), "top", mm(r.top()))),
        "seats", all(grid.seats(), s -> object("shelf", s.shelf(), "level", s.level())));
  }

  private static Map<String, Object> shelf(ShelfAnswer shelf) {
    return object(
        "case", shelf.caseName(),
        "mark", shelf.mark(),
        "sagNow", shelf.sagNow().id(),
        "sagYears", shelf.sagYears().id(),
        "limitNow", shelf.limitNow().id(),
        "limitYears", shelf.limitYears().id(),
        "sagMost", shelf.most().now().id(),
        "sagMostYears", shelf.most().years().id(),
        "figures", all(shelf.figures(), Figure::id));
  }

  private static Map<String, Object> hardware(HardwareItem item) {
    return object(
        "name", item.name(),
        "size", item.size(),
        "amount", amount(item.amount()),
        "where", item.where());
  }

  private static Map<String, Object> tool(ToolItem item) {
    Purchase tool = item.tool();
    return object(
        "name", tool.name(),
        "size", tool.size(),
        "need", plain(tool.need()),
        "price", tool.price().map(Purchase.Price::amount),
        "priceFrom", tool.price().map(p -> source(p.source())),
        "where", item.where());
  }

  private static Map<String, Object> amount(HardwareItem.Amount amount) {
    return switch (amount) {
      case HardwareItem.Amount.Pieces(long needed, long buy) ->
          object("sold", "by the piece", "needed", needed, "buy", buy);
      case HardwareItem.Amount.CutLengths(long needed) ->
          object("sold", "cut from another item", "needed", needed);
      case HardwareItem.Amount.Running(Length needed, Length buy) ->
          object("sold", "by length", "neededLength", mm(needed), "buyLength", mm(buy));
      case HardwareItem.Amount.ToSuit(Quantity covers) ->
          object("sold", "to suit", "covers", covers.value(), "unit", covers.unit().computed());
    };
  }

  private static Map<String, Object> step(PlannedStep step) {
    return object(
        "number", step.number(),
        "stage", plain(step.stage()),
        "case", step.caseName(),
        "parts", step.parts(),
        "sheet", all(step.sheet(), up -> object("part", up.part(), "face", plain(up.face()))),
        "words", step.words(),
        "items", step.items(),
        "check", step.check(),
        "cautions", all(step.cautions(), c -> object("hazard", c.hazard(), "text", c.text())));
  }

  private static Map<String, Object> finding(Finding finding) {
    return object(
        "severity", plain(finding.severity()),
        "kind", finding.kind(),
        "what", finding.what(),
        "case", finding.place().caseName(),
        "part", finding.place().part(),
        "spot", finding.place().spot().map(PlanJson::box),
        "figures", all(finding.figures(), Figure::id),
        "remedies", all(finding.remedies(), r -> object("what", r.what(), "cost", r.cost())));
  }

  private static Map<String, Object> figure(Figure figure) {
    return object(
        "id", figure.id(),
        "title", figure.title(),
        "value", figure.value().value(),
        "unit", figure.value().unit().computed(),
        "formula", figure.formula(),
        "inputs",
            all(
                figure.inputs(),
                i ->
                    object(
                        "symbol", i.symbol(),
                        "meaning", i.meaning(),
                        "value", i.value().value(),
                        "unit", i.value().unit().computed(),
                        "source", source(i.source()))),
        "source", source(figure.source()));
  }

  private static Map<String, Object> source(Source source) {
    return object(
        "title", source.title(), "place", source.place(), "standing", plain(source.standing()));
  }
}
