package fourpin.plan;

import fourpin.cutting.Node;
import fourpin.cutting.Part;
import fourpin.cutting.SheetPattern;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.MaterialPlan.StockUse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How much of the wood of one material ends up in parts. Board feet are length in feet by width in
 * inches by thickness in inches, divided by 12: 144 cubic inches each.
 *
 * @param material its name
 * @param taken volume of the boards taken, as they are before trimming
 * @param inParts volume of the parts that come of them, finished
 * @param share of the one in the other, in per cent: 0 to 100
 */
public record Yield(String material, Figure taken, Figure inParts, Figure share) {

  private static final double PER_CENT = 100;
  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

  private static final Source COUNTED =
      new Source("the layouts, sawn on trial", "", Standing.DERIVED);
  private static final Source TABLES =
      new Source("the tables of parts and stock", "", Standing.STATED);
  private static final Source VOLUMES =
      new Source("length by width by thickness", "", Standing.DERIVED);

  /** So many of one size. */
  private record Lot(String name, long count, Length length, Length width, Length thickness) {
    double volume() {
      return count * length.mm() * width.mm() * thickness.mm() / CUBIC_MM_PER_CUBIC_M;
    }
  }

  /** Empty where the boards state no thickness, or none is taken. */
  static Optional<Yield> of(Wanted wanted, CutMaterial cut) {
    return wanted
        .thickness()
        .filter(_ -> !cut.stock().isEmpty())
        .map(thickness -> of(wanted, cut, thickness));
  }

  private static Yield of(Wanted wanted, CutMaterial cut, Length thickness) {
    String id = Figure.id("job", cut.material().replace('/', '-'), "yield");
    Figure taken =
        volume(id + "-taken", cut.material() + ": wood taken", boards(wanted, cut, thickness));
    Figure inParts =
        volume(id + "-parts", cut.material() + ": wood in parts", parts(wanted, cut, thickness));
    return new Yield(cut.material(), taken, inParts, share(id, cut.material(), taken, inParts));
  }

  private static List<Lot> boards(Wanted wanted, CutMaterial cut, Length thickness) {
    Map<String, Long> counts = new LinkedHashMap<>();
    cut.stock().forEach((StockUse use) -> counts.put(use.size(), use.count()));
    return wanted.stock().stream()
        .filter(s -> counts.containsKey(s.name()))
        .map(
            s ->
                new Lot(
                    s.name(), counts.getOrDefault(s.name(), 0L), s.length(), s.width(), thickness))
        .toList();
  }

  private static List<Lot> parts(Wanted wanted, CutMaterial cut, Length thickness) {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (StockLayout layout : cut.layouts()) {
      layout.layout().patterns().forEach(pattern -> count(pattern, counts));
    }
    List<Lot> lots = new ArrayList<>();
    for (Part part : wanted.parts()) {
      long count = counts.getOrDefault(part.mark(), 0L);
      lots.add(lot(wanted, part, count, thickness));
    }
    return lots.stream().filter(lot -> lot.count > 0).toList();
  }

  /** Of a glue-up that lacks a strip nothing counts. */
  private static Lot lot(Wanted wanted, Part part, long pieces, Length thickness) {
    return Optional.ofNullable(wanted.finished().get(part.mark()))
        .map(
            each ->
                new Lot(
                    part.mark(),
                    pieces / each.blank().strips(),
                    each.blank().length(),
                    each.blank().width(),
                    each.thickness().orElse(thickness)))
        .orElse(new Lot(part.mark(), pieces, part.length(), part.width(), thickness));
  }

  private static void count(SheetPattern pattern, Map<String, Long> counts) {
    pattern.parts().stream()
        .map(placed -> (Node.Finished) placed.node())
        .forEach(part -> counts.merge(part.mark(), (long) pattern.quantity(), Long::sum));
  }

  private static Figure volume(String id, String title, List<Lot> lots) {
    List<Input> inputs = new ArrayList<>();
    for (int i = 0; i < lots.size(); i++) {
      inputs.addAll(inputs(lots.get(i), Integer.toString(i + 1)));
    }
    return new Figure(
        id,
        title,
        Quantity.of(lots.stream().mapToDouble(Lot::volume).sum(), QuantityUnit.LUMBER),
        "n1 l1 w1 t1 + n2 l2 w2 t2 + ...",
        inputs,
        VOLUMES);
  }

  private static List<Input> inputs(Lot lot, String number) {
    return List.of(
        new Input("n" + number, "of " + lot.name, Quantity.count(lot.count), COUNTED),
        new Input("l" + number, "length", Quantity.of(lot.length), TABLES),
        new Input("w" + number, "width", Quantity.of(lot.width), TABLES),
        new Input("t" + number, "thickness", Quantity.of(lot.thickness), TABLES));
  }

  private static Figure share(String id, String material, Figure taken, Figure inParts) {
    return new Figure(
        id,
        material + ": yield",
        Quantity.of(
            PER_CENT * inParts.value().value() / taken.value().value(), QuantityUnit.PER_CENT),
        "100 P / B",
        List.of(
            new Input("P", "wood in parts", inParts.value(), inParts.source()),
            new Input("B", "wood taken", taken.value(), taken.source())),
        VOLUMES);
  }

  List<Figure> figures() {
    return List.of(taken, inParts, share);
  }
}
