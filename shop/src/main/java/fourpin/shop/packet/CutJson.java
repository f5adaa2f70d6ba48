package fourpin.shop.packet;

import static fourpin.shop.packet.PlanJson.all;
import static fourpin.shop.packet.PlanJson.mm;
import static fourpin.shop.packet.PlanJson.object;
import static fourpin.shop.packet.PlanJson.plain;

import fourpin.cutting.Node;
import fourpin.cutting.Placed;
import fourpin.cutting.SheetPattern;
import fourpin.measure.Sum;
import fourpin.plan.CutItem;
import fourpin.plan.MaterialPlan;
import java.util.Map;
import java.util.Optional;

/** The cut list and how it comes out of the stock, as part of the plan for other programs. */
final class CutJson {

  private CutJson() {}

  static Map<String, Object> item(CutItem item) {
    return object(
        "line", item.line(),
        "case", item.caseName(),
        "marks", item.marks(),
        "name", item.name(),
        "role", plain(item.role()),
        "material", item.material(),
        "quantity", item.quantity(),
        "length", sum(item.length()),
        "width", sum(item.width()),
        "thickness", mm(item.thickness()),
        "cutLength", sum(item.cutLength()),
        "cutWidth", sum(item.cutWidth()),
        "grain", plain(item.grain()),
        "when", plain(item.when()),
        "edges",
            all(
                item.banded(),
                b ->
                    object(
                        "edge", b.edge(),
                        "what", b.what(),
                        "length", mm(b.length()),
                        "thickness", mm(b.thickness()))));
  }

  static Map<String, Object> sum(Sum sum) {
    return object(
        "total", mm(sum.total()),
        "terms",
            all(
                sum.terms(),
                t -> object("count", t.count(), "what", t.what(), "each", mm(t.each()))));
  }

  static Map<String, Object> material(MaterialPlan plan) {
    return object(
        "name", plan.material().name(),
        "kind", plain(plan.material().kind()),
        "of", plan.material().of(),
        "thickness", mm(plan.material().thickness()),
        "layouts",
            all(
                plan.layouts(),
                l ->
                    object(
                        "title", l.title(),
                        "origin", l.origin(),
                        "sheets", l.near().sheets().id(),
                        "fewest", l.near().fewest().id(),
                        "comesTo", l.near().cost().id(),
                        "least", l.near().least().id(),
                        "gap", l.near().gap().id(),
                        "proof", plain(l.near().proof()),
                        "smallPieces", l.small(),
                        "kept", all(l.kept(), CutJson::kept),
                        "patterns", all(l.layout().patterns(), CutJson::pattern),
                        "leftOut",
                            all(
                                l.layout().unplaced(),
                                u ->
                                    object(
                                        "part", u.mark(),
                                        "count", u.count(),
                                        "reason", plain(u.reason()))))),
        "stock",
            all(
                plan.stock(),
                s ->
                    object(
                        "size", s.size(),
                        "count", s.count(),
                        "buy", s.buy(),
                        "priceOfOne", s.each())));
  }

  private static Map<String, Object> pattern(SheetPattern pattern) {
    return object(
        "stock", pattern.sheet().name(),
        "length", mm(pattern.sheet().length()),
        "width", mm(pattern.sheet().width()),
        "quantity", pattern.quantity(),
        "parts", all(pattern.parts(), CutJson::placed),
        "offcuts", all(pattern.offcuts(), CutJson::placed));
  }

  private static Map<String, Object> kept(MaterialPlan.Kept kept) {
    return object(
        "name", kept.name(),
        "length", mm(kept.length()),
        "width", mm(kept.width()),
        "count", kept.count());
  }

  private static Map<String, Object> placed(Placed placed) {
    Optional<String> part =
        placed.node() instanceof Node.Finished finished
            ? Optional.of(finished.mark())
            : Optional.empty();
    return object(
        "part", part,
        "x", mm(placed.x()),
        "y", mm(placed.y()),
        "length", mm(placed.length()),
        "width", mm(placed.width()));
  }
}
