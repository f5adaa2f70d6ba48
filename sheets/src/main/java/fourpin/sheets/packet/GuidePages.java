package fourpin.sheets.packet;

import fourpin.bench.Step;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Make;
import fourpin.boring.way.Guide.Use;
import fourpin.boring.way.Method.Guided;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.drawings.GuideEndView;
import fourpin.sheets.drawings.GuideView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Measure;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Each guide to scale, with the steps that make it and its spacers, and its holes in a table. The
 * list of all steps refers to this page.
 */
final class GuidePages {

  /** Holes stand side by side in so many columns beside the drawing, and on a page of their own. */
  private static final int BESIDE = 3;

  private static final int ALONE = 5;

  private static final double SHARE = 0.45;
  private static final double GAP = 5;
  private static final double END_HEIGHT = 52;

  private final Plan plan;
  private final Words words;
  private final Codes codes;

  GuidePages(Plan plan, Words words, Codes codes) {
    this.plan = plan;
    this.words = words;
    this.codes = codes;
  }

  /** Whether there are such pages; then what is set before the first panel stands on them too. */
  static boolean hasGuides(Plan plan) {
    return plan.borings().stream().anyMatch(b -> b.method() instanceof Guided);
  }

  /**
   * @param signs that the drilling sheets go on with
   */
  Optional<Section> section(CautionSigns signs) {
    List<Block> blocks = new ArrayList<>();
    for (CaseBoring boring : plan.borings()) {
      if (boring.method() instanceof Guided guided) {
        blocks.addAll(pages(boring, guided));
      }
    }
    if (blocks.isEmpty()) {
      return Optional.empty();
    }
    blocks.add(compact(new DrillingSetUp(plan, words, codes).blocks(signs)));
    return Optional.of(new Section("The guide", blocks));
  }

  private List<Block> pages(CaseBoring boring, Guided guided) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.NewPage());
    blocks.add(new Block.Heading(title(boring, guided.guide())));
    blocks.addAll(drawn(guided));
    CautionSigns making = new CautionSigns();
    making(plan, guided.guide())
        .forEach(s -> blocks.add(compact(told(s, making.at(s.cautions())))));
    return blocks;
  }

  private List<Block> told(PlannedStep step, List<Block> cautions) {
    Block told = new Block.Steps(List.of(StepBlocks.of(step, Prose.plain(""), cautions)));
    return codes.beside(List.of(told), List.of(step), words.fullPage().width());
  }

  private static String title(CaseBoring boring, Guide guide) {
    return "Guide for " + WayPages.title(boring) + ", marked " + guide.mark();
  }

  /** Numbers of the steps that stand on pages of guides, with the title of the page. */
  static Map<Integer, String> titles(Plan plan) {
    Map<Integer, String> titles = new HashMap<>();
    for (CaseBoring boring : plan.borings()) {
      if (boring.method() instanceof Guided guided) {
        String title = title(boring, guided.guide());
        making(plan, guided.guide()).forEach(s -> titles.put(s.number(), title));
      }
    }
    return titles;
  }

  private static Stream<PlannedStep> making(Plan plan, Guide guide) {
    return plan.steps().stream()
        .filter(s -> s.typed().stream().anyMatch(t -> makes(t, guide.mark())));
  }

  /** Whether a step makes a guide or a spacer of it. */
  static boolean makes(Step step, String guide) {
    return switch (step) {
      case Step.MakeGuide make -> make.guide().equals(guide);
      case Step.MakeSpacer make -> make.guide().equals(guide);
      default -> false;
    };
  }

  /** Where it lies stands beside it, if there is room, or else below. */
  private List<Block> drawn(Guided guided) {
    Guide guide = guided.guide();
    List<Block> use = new GuideUse(words, guided).blocks();
    Drafter whole = words.fullPage();
    double left = SHARE * (whole.width() - GAP);
    double right = whole.width() - GAP - left;
    Block end =
        new Block.Figure(
            new GuideEndView(whole.wide(right).high(END_HEIGHT), guide).draw(),
            "The end with the stop block, seen on its front edge and on side A.");
    Block figure =
        new Block.Figure(
            new GuideView(whole.wide(left), guide).draw(),
            "Side A up." + masked(guide) + notCounted(guide));
    Block holes = small(List.of(holes(guide, BESIDE)));
    List<Block> few = List.of(end, holes);
    List<Block> all = List.of(end, holes, small(use));
    if (Measure.height(all, right) <= whole.height()) {
      return List.of(new Block.Beside(List.of(figure), SHARE, all));
    }
    if (Measure.height(few, right) <= whole.height()) {
      return List.of(new Block.Beside(List.of(figure), SHARE, few), new Block.Together(use));
    }
    List<Block> below = new ArrayList<>();
    below.add(new Block.Beside(List.of(figure), SHARE, List.of(end)));
    below.add(holes(guide, ALONE));
    below.add(new Block.Together(use));
    return below;
  }

  private static Block compact(List<Block> blocks) {
    return new Block.Together(List.of(new Block.Columns(1, Block.Print.COMPACT, blocks)));
  }

  private static Block small(List<Block> blocks) {
    return new Block.Columns(1, Block.Print.SMALL, blocks);
  }

  private static String masked(Guide guide) {
    boolean any = guide.holes().stream().anyMatch(h -> h.use() == Use.MASKED);
    return any ? " Holes with a cross are masked." : "";
  }

  /** What shows on the strip and not on the drawing. */
  private static String notCounted(Guide guide) {
    return guide.make() instanceof Make.Sold sold && sold.behind().isPositive()
        ? " A hole whose centre is not beyond "
            + (guide.block().isZero() ? "zero" : "the block")
            + " is not drawn and not counted."
        : "";
  }

  /** Of strips that are sold, only what is used: the rest come as they are. */
  private static List<GuideHole> listed(Guide guide) {
    return switch (guide.make()) {
      case Make.Bored _ -> guide.holes();
      case Make.Sold _ -> guide.holes().stream().filter(h -> h.use() != Use.MASKED).toList();
    };
  }

  private Table holes(Guide guide, int columns) {
    return new Numbered("Hole", "From block", words)
        .table(
            listed(guide).stream().map(h -> new Numbered.Line(number(h), h.along())).toList(),
            columns);
  }

  private static String number(GuideHole hole) {
    return hole.number() + (hole.use() == Use.MASKED ? " ×" : "");
  }
}
