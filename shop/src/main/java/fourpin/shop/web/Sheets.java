package fourpin.shop.web;

import fourpin.boring.BayGrid;
import fourpin.boring.way.Purchase;
import fourpin.job.CaseOrder;
import fourpin.measure.Figure;
import fourpin.plan.CutItem;
import fourpin.plan.MaterialPlan;
import fourpin.plan.Plan;
import fourpin.plan.ToolItem;
import fourpin.sheets.packet.Words;
import fourpin.strength.ShelfAnswer;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The plan of a case in tables. */
final class Sheets {

  private final Plan plan;
  private final CaseOrder order;
  private final Words words;

  Sheets(State state, CaseOrder order) {
    this.plan = state.plan();
    this.order = order;
    this.words = new Words(state.job());
  }

  List<Sheet> all() {
    return Stream.of(shelves(), rows(), cutList(), stock(), tools(), sums())
        .filter(s -> !s.rows().isEmpty())
        .toList();
  }

  private boolean isHere(String caseName) {
    return caseName.equals(order.name());
  }

  private Sheet shelves() {
    return new Sheet(
        "sag",
        "How far each shelf sags",
        "At the most anywhere, under the load stated as that sags it most; allowed in brackets.",
        List.of("Shelf", "Span", "Load", "It lies", "Now", "(allowed)", "After years", "(allowed)"),
        plan.shelves().stream().filter(s -> isHere(s.caseName())).map(this::row).toList());
  }

  private List<Cell> row(ShelfAnswer shelf) {
    return List.of(
        Cell.of(shelf.mark()),
        Cell.of(shelf.span(), words),
        Cell.of(shelf.load(), words),
        Cell.of(shelf.most().load()),
        Cell.of(shelf.most().now(), words),
        Cell.of(shelf.limitNow(), words),
        Cell.of(shelf.most().years(), words),
        Cell.of(shelf.limitYears(), words));
  }

  private Sheet rows() {
    return new Sheet(
        "rows",
        "Hole rows",
        "One pattern for each bay, the same on both uprights. Heights are those of the holes' middles above the foot.",
        List.of(
            "Bay",
            "Holes",
            "Lowest",
            "Highest",
            "From hole to hole",
            "Wide",
            "Deep",
            "Rows, from the front of the sides"),
        plan.grids().stream()
            .filter(g -> isHere(g.caseName()) && !g.levels().isEmpty())
            .map(this::row)
            .toList());
  }

  private List<Cell> row(BayGrid grid) {
    return Stream.of(
            Integer.toString(grid.bay()),
            grid.levels().size() + " x " + grid.rows().size(),
            words.number(grid.levels().getFirst().height()),
            words.number(grid.levels().getLast().height()),
            words.number(grid.pitch()),
            words.diameterNumber(grid.diameter()),
            words.number(grid.depth()),
            grid.rows().stream()
                .map(
                    r ->
                        r.name().name().toLowerCase(java.util.Locale.ROOT)
                            + " "
                            + words.number(r.y()))
                .collect(Collectors.joining(", ")))
        .map(Cell::of)
        .toList();
  }

  private Sheet cutList() {
    return new Sheet(
        "cut-list",
        "Cut list",
        "Sizes to cut, length along the grain, edging taken off already.",
        List.of("Line", "Part", "Marks", "Make", "Length", "Width", "Thick", "Material", "Edges"),
        plan.cutList().stream().filter(i -> isHere(i.caseName())).map(this::row).toList());
  }

  private List<Cell> row(CutItem item) {
    return Stream.of(
            Integer.toString(item.line()),
            item.name(),
            String.join(", ", item.marks()),
            Integer.toString(item.quantity()),
            words.number(item.cutLength().total()),
            words.number(item.cutWidth().total()),
            words.number(item.thickness()),
            item.material(),
            item.banded().stream()
                .map(n -> n.edge() + " " + n.what())
                .collect(Collectors.joining(", ")))
        .map(Cell::of)
        .toList();
  }

  private Sheet stock() {
    return new Sheet(
        "stock",
        "Stock for the whole job",
        "",
        List.of("Material", "Size", "Take", "Buy", "Each"),
        plan.materials().stream()
            .flatMap(m -> m.stock().stream().filter(u -> u.count() > 0).map(u -> row(m, u)))
            .toList());
  }

  private List<Cell> row(MaterialPlan material, MaterialPlan.StockUse use) {
    return Stream.of(
            material.material().name(),
            use.size(),
            Long.toString(use.count()),
            Long.toString(use.buy()),
            use.each().map(words::money).orElse("no price stated"))
        .map(Cell::of)
        .toList();
  }

  private Sheet tools() {
    return new Sheet(
        "tools",
        "Tools to buy for the whole job",
        "What the ways of boring need and the shop does not state as its own. They stay in the shop.",
        List.of("Tool", "What to ask for", "Price", "Price from", "Where"),
        plan.tools().stream().map(this::row).toList());
  }

  private List<Cell> row(ToolItem item) {
    Optional<Purchase.Price> price = item.tool().price();
    return Stream.of(
            item.tool().name(),
            item.tool().size(),
            price.map(p -> words.money(p.amount())).orElse("no price stated"),
            price.map(p -> p.source().text()).orElse(""),
            item.where())
        .map(Cell::of)
        .toList();
  }

  private Sheet sums() {
    return new Sheet(
        "sums",
        "The whole job in figures",
        "Press a figure to see how it comes about.",
        List.of("What", "How much"),
        plan.totals().stream().map(this::row).toList());
  }

  private List<Cell> row(Figure figure) {
    return List.of(Cell.of(figure.title()), Cell.of(figure, words));
  }
}
