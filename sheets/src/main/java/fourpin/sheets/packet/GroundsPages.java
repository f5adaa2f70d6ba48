package fourpin.sheets.packet;

import fourpin.job.CaseOrder;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.plan.CutPlanner;
import fourpin.plan.Plan;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import fourpin.strength.Breaking;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the plan rests on: materials, settings with their origin, and the working of its totals. */
final class GroundsPages {

  /** Stock is cut and priced for all cases together, so by the settings of the job alone. */
  private static final Set<Setting> OF_THE_JOB =
      Stream.concat(
              CutPlanner.SETTINGS.stream(),
              Stream.of(
                  Setting.HOLE_SECONDS,
                  Setting.WASTE,
                  Setting.MARK_UP,
                  Setting.RATE,
                  Setting.CONTINGENCY))
          .collect(Collectors.toCollection(() -> EnumSet.noneOf(Setting.class)));

  private static final Block SETTINGS = new Block.Heading("Settings in force");

  private final Plan plan;
  private final Words words;

  GroundsPages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  Section section() {
    return new Section(
        "What this rests on",
        List.of(
            new Block.Columns(1, Block.Print.SMALL, opening()),
            new Block.Columns(2, Block.Print.SMALL, List.of(SETTINGS, settings()))));
  }

  private List<Block> opening() {
    return List.of(
        Block.Paragraph.of(
            "Structure and fastening follow local codes and whoever is licensed to judge them."
                + " What was checked was checked under the following."),
        new Block.Heading("Materials"),
        materials(),
        new Block.Heading("Bending strengths"),
        Block.Paragraph.of(
            "What nearly all of a material passes, along its parts. What is allowed for years is less by the factors of"
                + " Eurocode 5, which stand in the working of each stress-allowed. Glass is held"
                + " against the setting glass-stress."),
        strengths(),
        new Block.Heading("Working of the totals"),
        Block.Paragraph.of(
            "The command explain shows each figure with its sources, by the id beside it:"
                + " explain JOB ID. Without an id it lists all figures of the plan, those of"
                + " shelves among them."),
        workings());
  }

  private Table materials() {
    return new Table(
        List.of(
            Table.left("Material"),
            Table.left("Is"),
            Table.right("Nominal"),
            Table.right("Taken as"),
            Table.left("By")),
        plan.job().materials().stream().map(this::material).toList());
  }

  private Row material(Material material) {
    return Table.row(
        material.name(),
        material.of(),
        words.length(material.nominal()),
        words.length(material.thickness()),
        material.measured().isPresent() ? "calliper" : "nominal size: measure it");
  }

  private Table strengths() {
    return new Table(
        List.of(
            Table.left("Material"),
            Table.right("Strength"),
            Table.left("Holds for"),
            Table.left("From")),
        plan.job().materials().stream()
            .flatMap(m -> Breaking.of(m).map(breaking -> strength(m, breaking)).stream())
            .toList());
  }

  private Row strength(Material material, Breaking breaking) {
    return Table.row(
        material.name(),
        words.quantity(breaking.strength().value()),
        breaking.condition(),
        breaking.strength().source().text());
  }

  private Table settings() {
    return new Table(
        List.of(Table.left("Setting and value"), Table.left("What it is, and from where")),
        Stream.of(Setting.values()).flatMap(setting -> rows(setting).stream()).toList());
  }

  /** One line; where the cases differ, one for each value, with the cases that it holds for. */
  private List<Row> rows(Setting setting) {
    if (OF_THE_JOB.contains(setting)) {
      return List.of(row(setting, plan.job().settings(), ""));
    }
    Map<String, List<CaseOrder>> cases = new LinkedHashMap<>();
    for (CaseOrder order : plan.job().cases()) {
      cases
          .computeIfAbsent(words.value(order.settings(), setting), _ -> new ArrayList<>())
          .add(order);
    }
    return cases.values().stream()
        .map(
            orders ->
                row(
                    setting,
                    orders.getFirst().settings(),
                    cases.size() > 1 ? " in " + names(orders) : ""))
        .toList();
  }

  private static String names(List<CaseOrder> orders) {
    return Words.list(orders.stream().map(CaseOrder::name).toList());
  }

  private Row row(Setting setting, Settings settings, String where) {
    String value = words.value(settings, setting);
    Prose from = Prose.plain(Words.sentence(settings.source(setting).text()) + ".");
    return new Row(
        Table.Kind.ITEM,
        List.of(
            Prose.plain(setting.key() + where + "  ").then(Prose.bold(value)),
            Prose.plain(Words.sentence(setting.meaning()) + ". ").then(from)));
  }

  private Table workings() {
    List<Row> rows = new ArrayList<>();
    for (Figure figure : plan.totals()) {
      rows.add(
          Table.row(
              figure.title(), figure.id(), words.value(figure), figure.formula(), inputs(figure)));
    }
    return new Table(
        List.of(
            Table.left("Figure"),
            Table.left("Id for explain"),
            Table.right("Value"),
            Table.left("Formula"),
            Table.left("With")),
        rows);
  }

  private String inputs(Figure figure) {
    return figure.inputs().stream()
        .map(i -> i.symbol() + " = " + words.quantity(i.value()) + " " + i.meaning())
        .collect(Collectors.joining("; "));
  }
}
