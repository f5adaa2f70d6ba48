package fourpin.sheets.packet;

import fourpin.boring.BayGrid;
import fourpin.boring.tolerance.Change;
import fourpin.boring.tolerance.Levelness;
import fourpin.boring.tolerance.PositionGap;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.GapChart;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** How level shelves will lie at each place, and what would make them lie better. */
final class LevelPages {

  private static final double CHART_HEIGHT = 105;

  /** Where bars can't be told apart, so that nothing is lost in a small chart. */
  private static final double COMPACT_HEIGHT = 45;

  /** Of the longest bar, by which bars that can't be told apart differ at most. */
  private static final double HAIR = 0.02;

  /** Bays side by side on one chart. */
  private static final int MOST_BESIDE = 4;

  private static final String ON_SIX =
      "On six pins a shelf also rocks over a middle pin that stands above the line from the front to"
          + " the back pin of its side. A bar is then the widest gap under a corner pin when the shelf is"
          + " pushed down at its front and at its back edge in turn.";

  private static final String DRAWN =
      "Odds with a ± were counted among cases drawn at random, always the same ones; what follows the"
          + " sign is their standard error, which two in three such counts stay within.";

  private static final double PER_CENT = 100;

  private final Plan plan;
  private final List<Levelness> levels;
  private final Words words;

  LevelPages(Plan plan, List<Levelness> levels, Words words) {
    this.plan = plan;
    this.levels = List.copyOf(levels);
    this.words = words;
  }

  Optional<Section> section() {
    if (levels.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.Paragraph.of(
            "A shelf on four pins rocks when one of them stands lower than the plane of the other"
                + " three. A bar is the gap under that pin that 95 of 100 shelves stay within at"
                + " its level; the dashed line is the gap that is felt, and what reaches beyond it"
                + " is black."));
    if (levels.stream().anyMatch(level -> level.worst().proud().isPresent())) {
      blocks.add(Block.Paragraph.of(ON_SIX));
    }
    blocks.add(Block.Paragraph.of(DRAWN));
    levels.forEach(level -> blocks.addAll(blocks(level)));
    return Optional.of(
        new Section(
            "How level shelves will lie",
            List.of(new Block.Columns(1, Block.Print.SMALL, blocks))));
  }

  private List<Block> blocks(Levelness level) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(level.caseName() + ": " + level.way().title()));
    List<GapChart.Bay> bays = bays(level);
    int charts = Math.ceilDiv(bays.size(), MOST_BESIDE);
    int beside = Math.ceilDiv(bays.size(), charts);
    for (int from = 0; from < bays.size(); from += beside) {
      int to = Math.min(bays.size(), from + beside);
      blocks.add(chart(level, bays.subList(from, to)));
    }
    blocks.add(Block.Paragraph.of(worst(level)));
    blocks.add(figures(level));
    blocks.addAll(changes(level));
    return blocks;
  }

  private List<Block> changes(Levelness level) {
    List<Block> blocks = new ArrayList<>();
    if (!level.gains().isEmpty()) {
      blocks.add(new Block.Heading("What each change would bring" + there(level)));
      blocks.add(table(level.gains(), Change::what));
    }
    blocks.add(
        Block.Paragraph.of(
            (level.gains().isEmpty() ? "No change" : "No other change")
                + " gains more than "
                + length(level.resolution())
                + " or "
                + percent(level.leastOdds())
                + " without losing elsewhere."));
    if (!level.mixed().isEmpty()) {
      blocks.add(new Block.Heading("Better in one way, worse in another" + there(level)));
      blocks.add(table(level.mixed(), change -> change.what() + ": " + change.mixed()));
    }
    if (!level.harms().isEmpty()) {
      blocks.add(new Block.Heading("What would make it worse" + there(level)));
      blocks.add(table(level.harms(), Change::what));
    }
    return blocks;
  }

  private static String there(Levelness level) {
    return level.isEven() ? "" : ", at the worst place";
  }

  private Block chart(Levelness level, List<GapChart.Bay> bays) {
    GapChart.Limit limit = new GapChart.Limit(level.limit(), length(level.limit()));
    return new Block.Figure(
        new GapChart(words.fullPage().high(height(bays)), level.caseName(), bays, limit).draw(),
        "Bays as from the front, a bar at each level, where they lie close at those with a number; felt from "
            + length(level.limit())
            + ".");
  }

  private static double height(List<GapChart.Bay> bays) {
    return bays.stream().allMatch(LevelPages::isEven) ? COMPACT_HEIGHT : CHART_HEIGHT;
  }

  private static boolean isEven(GapChart.Bay bay) {
    DoubleSummaryStatistics gaps =
        bay.bars().stream().mapToDouble(GapChart.Bar::gap).summaryStatistics();
    return gaps.getMax() - gaps.getMin() <= HAIR * gaps.getMax();
  }

  private List<GapChart.Bay> bays(Levelness level) {
    return level.places().stream()
        .map(PositionGap::bay)
        .distinct()
        .map(bay -> new GapChart.Bay(bay, bars(level, bay)))
        .toList();
  }

  private List<GapChart.Bar> bars(Levelness level, int bay) {
    BayGrid grid =
        plan.grids().stream()
            .filter(g -> g.caseName().equals(level.caseName()) && g.bay() == bay)
            .findFirst()
            .orElseThrow();
    return level.places().stream()
        .filter(place -> place.bay() == bay)
        .map(
            place ->
                new GapChart.Bar(
                    place.level(),
                    grid.levels().get(place.level() - 1).height().mm(),
                    place.usual()))
        .toList();
  }

  private String worst(Levelness level) {
    PositionGap worst = level.worst();
    return (level.isEven()
            ? "No place is worse than another. Everywhere"
            : "Worst place: level " + worst.level() + " of bay " + worst.bay() + ". There")
        + " 95 of 100 shelves stay within "
        + length(worst.usual())
        + ", and "
        + percent(worst.odds())
        + worst
            .gap()
            .sampledBeyond(level.limit())
            .map(odds -> " ± " + percent(odds.error()))
            .orElse("")
        + " rock so that it is felt.";
  }

  private Table figures(Levelness level) {
    return new Table(
        List.of(Table.left("Figure"), Table.right("Value"), Table.left("From")),
        level.figures().stream()
            .filter(f -> !isOfChange(f) && !(level.isEven() && isOfOnePlace(f)))
            .filter(f -> !f.id().endsWith(Words.ERROR))
            .map(f -> Table.row(f.title(), value(level, f), f.source().text()))
            .toList());
  }

  private String value(Levelness level, Figure figure) {
    return words.value(figure)
        + Words.error(figure, level.figures()).map(e -> " ± " + words.value(e)).orElse("");
  }

  /** Those stand in the tables of changes. */
  private static boolean isOfChange(Figure figure) {
    return Stream.of("/gain-", "/mixed-", "/harm-").anyMatch(figure.id()::contains);
  }

  /** Where places differ by less than can be told, one of them stands for all. */
  private static boolean isOfOnePlace(Figure figure) {
    return figure.id().matches(".*/bay-\\d+-level-\\d+/[a-z-]+");
  }

  private Table table(List<Change> changes, Function<Change, String> what) {
    return new Table(
        List.of(
            Table.left("Change"),
            Table.right("Gap now"),
            Table.right("then"),
            Table.right("Rock now"),
            Table.right("then"),
            Table.right("Left to right now"),
            Table.right("then"),
            Table.left("Cost")),
        changes.stream().map(change -> row(change, what.apply(change))).toList());
  }

  private Row row(Change change, String what) {
    return Table.row(
        what,
        length(change.before().gap()),
        length(change.after().gap()),
        percent(change.before().odds()),
        percent(change.after().odds()),
        length(change.before().slope()),
        length(change.after().slope()),
        change.cost());
  }

  private String length(double mm) {
    return words.quantity(Quantity.of(mm, QuantityUnit.LENGTH));
  }

  private String percent(double share) {
    return words.quantity(Quantity.of(PER_CENT * share, QuantityUnit.PER_CENT));
  }
}
