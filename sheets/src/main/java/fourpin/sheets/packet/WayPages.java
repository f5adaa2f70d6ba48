package fourpin.sheets.packet;

import fourpin.boring.BayGrid;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.boring.way.Purchase;
import fourpin.boring.way.Spacers;
import fourpin.boring.way.WayAnswer;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Column;
import fourpin.sheets.pages.Table.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every way of boring for each group of bays, side by side, and which the plan takes. */
final class WayPages {

  /** A figure of a way by the last word of its id, and how a narrow column calls it. */
  private record Shown(String what, String title) {}

  private static final List<Shown> SHOWN =
      List.of(
          new Shown("set-ups", "Set-ups"),
          new Shown("clampings", "Clampings"),
          new Shown("holes", "Holes"),
          new Shown("minutes", "Time"),
          new Shown("cost", "Cost"),
          new Shown("gap", "Gap"),
          new Shown("odds", "Odds"),
          new Shown("guide-life", "Holes a\u00a0guide bears"));

  private static final String OFFCUTS =
      "Spacers that keep a guide off ends and edges are cut from what the guide is cut from and from"
          + " offcuts of the case; no material is counted for them.";

  private final List<CaseBoring> borings;
  private final Words words;

  WayPages(List<CaseBoring> borings, Words words) {
    this.borings = List.copyOf(borings);
    this.words = words;
  }

  Optional<Section> section() {
    if (borings.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.Paragraph.of(
            "Every way, with the tools of "
                + words.job().shop().name()
                + ". Figures are for all copies; “explain” shows their working."));
    borings.forEach(boring -> blocks.addAll(group(boring)));
    return Optional.of(
        new Section("Ways to bore", List.of(new Block.Columns(1, Block.Print.SMALL, blocks))));
  }

  private List<Block> group(CaseBoring boring) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(title(boring)));
    blocks.add(table(boring));
    blocks.add(
        new Block.Paragraph(
            Prose.bold("Taken: " + boring.chosen().title() + ". ")
                .then(Prose.plain(boring.because()))));
    List<Prose> reasons = reasons(boring);
    if (!reasons.isEmpty()) {
      blocks.add(new Block.Paragraph(Prose.bold("What speaks against a way, and what would help")));
      blocks.add(new Block.Bullets(reasons));
    }
    if (boring.answers().stream().anyMatch(WayPages::hasSpacers)) {
      blocks.add(Block.Paragraph.of(OFFCUTS));
    }
    List<Prose> tools = tools(boring);
    if (!tools.isEmpty()) {
      blocks.add(new Block.Paragraph(Prose.bold("Tools to buy, counted in the cost of a way")));
      blocks.add(new Block.Bullets(tools));
    }
    List<Prose> together = together(boring);
    if (!together.isEmpty()) {
      blocks.add(new Block.Paragraph(Prose.bold("Several panels worked on together")));
      blocks.add(new Block.Bullets(together));
    }
    return blocks;
  }

  private static boolean hasSpacers(WayAnswer answer) {
    return answer
        .method()
        .filter(m -> m instanceof Method.Guided g && !Spacers.of(g).list().isEmpty())
        .isPresent();
  }

  /** Ways that the same speaks against stand in one line, with what would help each. */
  private static List<Prose> reasons(CaseBoring boring) {
    Map<String, List<String>> ways = new LinkedHashMap<>();
    Map<String, List<String>> remedies = new LinkedHashMap<>();
    for (WayAnswer answer : boring.answers()) {
      for (Reason reason : answer.reasons()) {
        add(ways, reason.what(), answer.way().key());
        add(remedies, reason.what(), reason.remedy());
      }
    }
    return ways.entrySet().stream()
        .map(
            e ->
                reason(
                    String.join(", ", e.getValue()),
                    new Reason(
                        e.getKey(),
                        String.join(", or ", remedies.getOrDefault(e.getKey(), List.of())))))
        .toList();
  }

  private static void add(Map<String, List<String>> lists, String key, String value) {
    List<String> list = lists.computeIfAbsent(key, _ -> new ArrayList<>());
    if (!value.isEmpty() && !list.contains(value)) {
      list.add(value);
    }
  }

  /** Ways that need the same tools stand in one line. */
  private List<Prose> tools(CaseBoring boring) {
    Map<String, List<String>> ways = new LinkedHashMap<>();
    for (WayAnswer answer : boring.answers()) {
      String tools = String.join("; ", answer.purchases().stream().map(this::tool).toList());
      add(ways, tools, tools.isEmpty() ? "" : answer.way().key());
    }
    return ways.entrySet().stream()
        .filter(e -> !e.getKey().isEmpty())
        .map(e -> Prose.bold(String.join(", ", e.getValue()) + ": ").then(Prose.plain(e.getKey())))
        .toList();
  }

  private String tool(Purchase tool) {
    return tool.name()
        + tool.price()
            .map(p -> ", " + words.money(p.amount()) + ": " + p.source().text())
            .orElse(", price not stated and not counted");
  }

  /** Ways of which the same holds stand in one line. */
  private static List<Prose> together(CaseBoring boring) {
    Map<Reason, List<String>> ways = new LinkedHashMap<>();
    for (WayAnswer answer : boring.answers()) {
      answer
          .together()
          .forEach(r -> ways.computeIfAbsent(r, _ -> new ArrayList<>()).add(answer.way().key()));
    }
    return ways.entrySet().stream()
        .map(e -> reason(String.join(", ", e.getValue()), e.getKey()))
        .toList();
  }

  /** The case with its bays: "bookcase, bays 1, 2". */
  static String title(CaseBoring boring) {
    List<String> bays =
        boring.grids().stream().map(BayGrid::bay).map(bay -> Integer.toString(bay)).toList();
    return boring.caseName() + (bays.size() == 1 ? ", bay " : ", bays ") + Words.list(bays);
  }

  private Table table(CaseBoring boring) {
    List<Shown> shown = SHOWN.stream().filter(s -> isKnown(boring, s)).toList();
    List<Column> columns = new ArrayList<>(List.of(Table.left("Way"), Table.left("Can be done")));
    shown.forEach(s -> columns.add(Table.right(head(boring, s))));
    return new Table(
        columns, boring.answers().stream().map(a -> row(a, boring.chosen(), shown)).toList());
  }

  /** With the unit of the figures below, so that columns are narrow. */
  private String head(CaseBoring boring, Shown shown) {
    return boring.answers().stream()
        .flatMap(a -> figure(a, shown.what).stream())
        .findFirst()
        .map(f -> words.symbol(f.value().unit()))
        .filter(symbol -> !symbol.isEmpty())
        .map(symbol -> shown.title + ", " + symbol)
        .orElse(shown.title);
  }

  private static boolean isKnown(CaseBoring boring, Shown shown) {
    return boring.answers().stream().anyMatch(a -> figure(a, shown.what).isPresent());
  }

  private Row row(WayAnswer answer, Way chosen, List<Shown> shown) {
    boolean taken = answer.way() == chosen;
    List<String> cells = new ArrayList<>();
    cells.add((taken ? "→ " : "") + answer.way().title());
    cells.add(words(answer) + (taken ? ", taken" : ""));
    shown.forEach(s -> cells.add(figure(answer, s.what).map(f -> bare(answer, f)).orElse("")));
    return new Row(
        Table.Kind.ITEM,
        cells.stream().map(cell -> taken ? Prose.bold(cell) : Prose.plain(cell)).toList());
  }

  /** Odds that were drawn have their standard error beside them. */
  private String bare(WayAnswer answer, Figure figure) {
    return words.bare(figure)
        + Words.error(figure, answer.figures()).map(e -> " ± " + words.bare(e)).orElse("");
  }

  /** The way's own: its panels and clampings may have figures that end in the same word. */
  private static Optional<Figure> figure(WayAnswer answer, String what) {
    String own = "/" + answer.way().key() + "/" + what;
    return answer.figures().stream().filter(f -> f.id().endsWith(own)).findFirst();
  }

  private static String words(WayAnswer answer) {
    return switch (answer.verdict()) {
      case POSSIBLE -> "yes" + (answer.purchases().isEmpty() ? "" : ", with a tool to buy");
      case TO_BUY -> "with tools to buy";
      case IF_CHANGED -> "if the case changes";
      case NOT_POSSIBLE -> "no";
    };
  }

  private static Prose reason(String ways, Reason reason) {
    String remedy = reason.remedy().isEmpty() ? "" : " Help: " + reason.remedy() + ".";
    return Prose.bold(ways + ": ").then(Prose.plain(reason.what() + "." + remedy));
  }
}
