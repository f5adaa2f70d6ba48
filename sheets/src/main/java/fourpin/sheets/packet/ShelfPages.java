package fourpin.sheets.packet;

import fourpin.measure.Figure;
import fourpin.plan.Plan;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import fourpin.strength.ShelfAnswer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What each shelf does under its load; shelves of the same figures stand together. */
final class ShelfPages {

  private static final String ROCKS_UNTIL = "low-support-load";

  /** Stands in its place where no load within the limits ends the rocking. */
  private static final String ROCKS_BEYOND = "low-support-most";

  /** The figures of a shelf as a plate that stand in columns, by the last level of their ids. */
  private static final List<String> PLATE_COLUMNS =
      List.of(
          "plate-front",
          "plate-middle",
          "plate-back",
          "plate-front-row",
          "plate-back-row",
          "plate-half",
          ROCKS_UNTIL,
          "low-support-closed");

  /** Likewise the figures of its supports. */
  private static final List<String> SIDE_COLUMNS =
      List.of(
          "support-push",
          "support-allowed-nds",
          "support-allowed-ec5",
          "pin-stress",
          "edge-diameters",
          "slides-off",
          "tipping");

  private final Plan plan;
  private final Words words;

  ShelfPages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  Optional<Section> section() {
    if (plan.shelves().isEmpty()) {
      return Optional.empty();
    }
    Map<List<String>, List<ShelfAnswer>> alike = new LinkedHashMap<>();
    plan.shelves()
        .forEach(shelf -> alike.computeIfAbsent(values(shelf), _ -> new ArrayList<>()).add(shelf));
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.Paragraph.of(
            "Each shelf as a plate on its supports, with its edging, under the stated load. This tells how far it bends, not that "
                + "a case is safe: loads, woods and rules are those listed under \"What this rests on\"."));
    SaggingShelves drawn = new SaggingShelves(plan, words);
    alike.values().forEach(shelves -> blocks.add(drawn.of(shelves)));
    blocks.add(new Block.Columns(1, Block.Print.SMALL, tables(alike)));
    blocks.add(new Block.Columns(2, Block.Print.SMALL, others(alike)));
    StandingCases standing = new StandingCases(plan, words);
    List<Block> allowed =
        Stream.concat(StandingCases.limits().stream(), standing.glass().stream()).toList();
    blocks.add(new Block.Columns(1, Block.Print.SMALL, allowed));
    blocks.add(new Block.Columns(2, Block.Print.SMALL, standing.blocks()));
    return Optional.of(new Section("Will it hold", blocks));
  }

  private List<Block> tables(Map<List<String>, List<ShelfAnswer>> alike) {
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(
        List.of(
            new Block.Heading("Shelves under their load"),
            atStatedLoad(alike),
            new Block.Heading("The same shelves edge by edge"),
            Block.Paragraph.of(
                "Front and back edge apart, on supports that push and never pull, at the stated load. A shelf rocks on "
                    + "one low support until enough stands on it; what this takes, and how far a support may lie low "
                    + "under the stated load, stands in the last columns."),
            asPlates(alike)));
    blocks.addAll(onSupports(alike));
    blocks.addAll(inJoints(alike));
    blocks.addAll(
        List.of(new Block.Heading("The same shelves at other loads"), atReferenceLoads(alike)));
    return blocks;
  }

  /** Nothing where all shelves stand in joints. */
  private List<Block> onSupports(Map<List<String>, List<ShelfAnswer>> alike) {
    Table table = inSides(alike);
    return table.rows().isEmpty()
        ? List.of()
        : List.of(
            new Block.Heading("Their supports in the sides"),
            Block.Paragraph.of(
                "Load on the most loaded support, however the load lies, and what two codes allow on it for loads that stay: the National Design "
                    + "Specification and Eurocode 5, which rest on different tests and margins. No standard for shelf pins "
                    + "was found; supports other than pins are held to what their maker rates them for, where the job states it."),
            table);
  }

  private List<String> values(ShelfAnswer shelf) {
    List<String> values = new ArrayList<>(List.of(shelf.caseName()));
    shelf.figures().forEach(f -> values.add(f.title() + words.value(f)));
    return values;
  }

  private static String marks(List<ShelfAnswer> shelves) {
    return Words.list(shelves.stream().map(ShelfAnswer::mark).toList());
  }

  private Table atStatedLoad(Map<List<String>, List<ShelfAnswer>> alike) {
    return new Table(
        List.of(
            Table.left("Case"),
            Table.left("Shelves"),
            Table.right("Span"),
            Table.right("Load"),
            Table.right("Sag now"),
            Table.right("Limit now"),
            Table.right("Sag after years"),
            Table.right("Limit after years")),
        alike.values().stream().map(this::row).toList());
  }

  private Row row(List<ShelfAnswer> shelves) {
    ShelfAnswer s = shelves.getFirst();
    return Table.row(
        s.caseName(),
        marks(shelves),
        words.value(s.span()),
        words.value(s.load()),
        words.value(s.sagNow()),
        words.value(s.limitNow()),
        words.value(s.sagYears()),
        words.value(s.limitYears()));
  }

  private Table asPlates(Map<List<String>, List<ShelfAnswer>> alike) {
    return new Table(
        List.of(
            Table.left("Case"),
            Table.left("Shelves"),
            Table.right("Front edge"),
            Table.right("Middle"),
            Table.right("Back edge"),
            Table.right("Most, load in front"),
            Table.right("Most, load at the back"),
            Table.right("Most, load on one half"),
            Table.right("Rocks until"),
            Table.right("May lie low")),
        alike.values().stream().map(shelves -> row(shelves, PLATE_COLUMNS)).toList());
  }

  private Table inSides(Map<List<String>, List<ShelfAnswer>> alike) {
    return new Table(
        List.of(
            Table.left("Case"),
            Table.left("Shelves"),
            Table.right("Most on one"),
            Table.right("Allowed, NDS"),
            Table.right("Allowed, Eurocode 5"),
            Table.right("Bends the pin to"),
            Table.right("Diameters to the edge"),
            Table.right("Slides off after"),
            Table.right("Front edge tips at")),
        alike.values().stream()
            .filter(shelves -> shelves.getFirst().inSides().stream().noneMatch(ShelfPages::ofJoint))
            .map(shelves -> row(shelves, SIDE_COLUMNS))
            .toList());
  }

  /** Nothing without fixed shelves. */
  private List<Block> inJoints(Map<List<String>, List<ShelfAnswer>> alike) {
    List<Row> rows = new ArrayList<>();
    for (List<ShelfAnswer> shelves : alike.values()) {
      ShelfAnswer first = shelves.getFirst();
      first.inSides().stream()
          .filter(ShelfPages::ofJoint)
          .forEach(
              f ->
                  rows.add(Table.row(first.caseName(), marks(shelves), f.title(), words.value(f))));
    }
    Table table =
        new Table(
            List.of(
                Table.left("Case"),
                Table.left("Shelves"),
                Table.left("Figure"),
                Table.right("Value")),
            rows);
    return rows.isEmpty()
        ? List.of()
        : List.of(
            new Block.Heading("Fixed shelves in their joints"),
            Block.Paragraph.of(
                "A fixed shelf bears on the lower wall of its dado, or hangs on the screws of a butt joint, which hold badly "
                    + "in end grain. Glue is not counted on."),
            table);
  }

  private Row row(List<ShelfAnswer> shelves, List<String> columns) {
    ShelfAnswer s = shelves.getFirst();
    List<String> cells = new ArrayList<>(List.of(s.caseName(), marks(shelves)));
    columns.forEach(column -> cells.add(cell(s, column)));
    return Table.row(cells.toArray(String[]::new));
  }

  /** A figure by the last level of its id; a dash where the shelf has none. */
  private String cell(ShelfAnswer shelf, String last) {
    Optional<Figure> beyond =
        last.equals(ROCKS_UNTIL) ? find(shelf, ROCKS_BEYOND) : Optional.empty();
    return beyond
        .map(figure -> "over " + words.value(figure))
        .or(() -> find(shelf, last).map(words::value))
        .orElse("–");
  }

  private static Optional<Figure> find(ShelfAnswer shelf, String last) {
    return shelf.figures().stream().filter(figure -> last(figure).equals(last)).findFirst();
  }

  private static boolean ofJoint(Figure figure) {
    return last(figure).startsWith("joint-");
  }

  private static String last(Figure figure) {
    return figure.id().substring(figure.id().lastIndexOf('/') + 1);
  }

  private Table atReferenceLoads(Map<List<String>, List<ShelfAnswer>> alike) {
    List<Row> rows = new ArrayList<>();
    for (List<ShelfAnswer> shelves : alike.values()) {
      for (ShelfAnswer.ReferenceSag sag : shelves.getFirst().atReferenceLoads()) {
        rows.add(
            Table.row(
                shelves.getFirst().caseName(),
                marks(shelves),
                words.value(sag.load()),
                words.value(sag.now()),
                words.value(sag.years()),
                sag.load().source().text()));
      }
    }
    return new Table(
        List.of(
            Table.left("Case"),
            Table.left("Shelves"),
            Table.right("Load"),
            Table.right("Sag now"),
            Table.right("After years"),
            Table.left("Load after")),
        rows);
  }

  private List<Block> others(Map<List<String>, List<ShelfAnswer>> alike) {
    List<Block> blocks =
        new ArrayList<>(List.of(new Block.Heading("Loads on supports, and limits")));
    for (List<ShelfAnswer> shelves : alike.values()) {
      blocks.add(
          StandingCases.table(words, SaggingShelves.title(shelves), others(shelves.getFirst())));
    }
    return blocks;
  }

  private static List<Figure> others(ShelfAnswer shelf) {
    List<Figure> figures = new ArrayList<>(shelf.supports());
    figures.addAll(shelf.others());
    shelf.plate().stream()
        .filter(figure -> !PLATE_COLUMNS.contains(last(figure)))
        .filter(figure -> !last(figure).equals(ROCKS_BEYOND))
        .forEach(figures::add);
    return figures;
  }
}
