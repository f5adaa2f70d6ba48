package fourpin.sheets.packet;

import fourpin.bench.Numbers;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Make;
import fourpin.boring.way.Guide.Use;
import fourpin.boring.way.Method.Guided;
import fourpin.casework.Face;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.drawings.GuideEndView;
import fourpin.sheets.drawings.GuideView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Each guide to scale, with its holes in a table and how it serves every row. */
final class GuidePages {

  /** Holes stand side by side in so many columns beside the drawing, and on a page of their own. */
  private static final int BESIDE = 3;

  private static final int ALONE = 5;

  /** So many lines of holes find room beside the drawing. */
  private static final int MOST_LINES = 20;

  /** With so many there is room for the use of the guide too. */
  private static final int FEW_LINES = 11;

  private static final double SHARE = 0.45;
  private static final double GAP = 5;
  private static final double END_HEIGHT = 52;

  /** For what stands above the drawing. */
  private static final double ABOVE = 28;

  private final List<CaseBoring> borings;
  private final Words words;

  GuidePages(List<CaseBoring> borings, Words words) {
    this.borings = List.copyOf(borings);
    this.words = words;
  }

  Optional<Section> section() {
    List<Block> blocks = new ArrayList<>();
    for (CaseBoring boring : borings) {
      if (boring.method() instanceof Guided guided) {
        blocks.addAll(page(boring, guided));
      }
    }
    return blocks.isEmpty() ? Optional.empty() : Optional.of(new Section("The guide", blocks));
  }

  private List<Block> page(CaseBoring boring, Guided guided) {
    Guide guide = guided.guide();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.NewPage());
    blocks.add(
        new Block.Heading("Guide for " + WayPages.title(boring) + ", marked " + guide.mark()));
    blocks.add(Block.Paragraph.of(make(guide)));
    blocks.addAll(drawn(guide, use(guided)));
    return blocks;
  }

  private List<Block> use(Guided guided) {
    return List.of(
        new Block.Paragraph(Prose.bold("How the guide is used")),
        new Block.Bullets(uses(guided).map(Prose::plain).toList()));
  }

  private String make(Guide guide) {
    String size =
        words.number(guide.length())
            + " x "
            + words.number(guide.width())
            + " x "
            + words.length(guide.thickness())
            + ", "
            + guide.material();
    String block =
        guide.block().isZero()
            ? " Cut the lower end square: it stands on the panel below."
            : " Screw on the stop block, without glue, "
                + words.length(guide.block())
                + " thick, square across the end; it stands proud of both sides so that the guide can"
                + " be turned over, and only at this end so that it cannot be turned end for end.";
    return switch (guide.make()) {
          case Make.Bored(String stock) ->
              "Cut " + size + ", from " + stock + ". Bore every hole on one line." + block;
          case Make.Sold(String strip, int first) ->
              strip + ", cut to " + size + ". Hole 1 is hole " + first + " of the strip." + block;
        }
        + " Write the mark, side A, side B, FRONT EDGE and every number on it.";
  }

  private List<Block> drawn(Guide guide, List<Block> use) {
    Drafter whole = words.fullPage();
    double left = SHARE * (whole.width() - GAP);
    double right = whole.width() - GAP - left;
    Drafter tall = whole.wide(left).high(whole.height() - ABOVE);
    Block end =
        new Block.Figure(
            new GuideEndView(whole.wide(right).high(END_HEIGHT), guide).draw(),
            "The end with the stop block, seen on its front edge and on side A.");
    Block figure =
        new Block.Figure(new GuideView(tall, guide).draw(), "Side A up." + masked(guide));
    int lines = Math.ceilDiv(listed(guide).size(), BESIDE);
    List<Block> beside = new ArrayList<>(List.of(end));
    List<Block> below = new ArrayList<>();
    if (lines <= MOST_LINES) {
      beside.add(holes(guide, BESIDE));
    } else {
      below.addAll(List.of(new Block.NewPage(), holes(guide, ALONE)));
    }
    (lines <= FEW_LINES ? beside : below).addAll(use);
    below.addFirst(new Block.Beside(List.of(figure), SHARE, beside));
    return below;
  }

  private static String masked(Guide guide) {
    boolean any = guide.holes().stream().anyMatch(h -> h.use() == Use.MASKED);
    return any ? " Holes with a cross are masked." : "";
  }

  /** Of strips that are sold, only what is used: the rest come as they are. */
  private static List<GuideHole> listed(Guide guide) {
    return switch (guide.make()) {
      case Make.Bored _ -> guide.holes();
      case Make.Sold _ -> guide.holes().stream().filter(h -> h.use() != Use.MASKED).toList();
    };
  }

  private Table holes(Guide guide, int columns) {
    List<GuideHole> holes = listed(guide);
    int lines = Math.ceilDiv(holes.size(), columns);
    return new Table(
        IntStream.range(0, columns)
            .boxed()
            .flatMap(_ -> Stream.of(Table.right("Hole"), Table.right("From block")))
            .toList(),
        IntStream.range(0, lines).mapToObj(line -> line(holes, line, lines, columns)).toList());
  }

  private Row line(List<GuideHole> holes, int line, int lines, int columns) {
    List<Prose> cells = new ArrayList<>();
    for (int column = 0; column < columns; column++) {
      int index = column * lines + line;
      boolean there = index < holes.size();
      cells.add(Prose.plain(there ? number(holes.get(index)) : ""));
      cells.add(Prose.plain(there ? words.number(holes.get(index).along()) : ""));
    }
    return new Row(Table.Kind.ITEM, cells);
  }

  private static String number(GuideHole hole) {
    return hole.number() + (hole.use() == Use.MASKED ? " ×" : "");
  }

  private Stream<String> uses(Guided guided) {
    List<Integer> masked =
        guided.guide().holes().stream()
            .filter(h -> h.use() == Use.MASKED)
            .map(GuideHole::number)
            .toList();
    Stream<String> mask =
        masked.isEmpty()
            ? Stream.of()
            : Stream.of("Tape over holes " + Numbers.words(masked, "hole") + " on both sides.");
    return Stream.of(
            mask,
            Stream.of("The front edge of the guide always lies towards the front of the panel."),
            block(guided),
            guided.clampings().stream().map(c -> side(c)).distinct(),
            guided.clampings().stream().map(this::row).distinct(),
            Stream.of(
                "Serve every panel with this one guide, from the same end: then what is wrong in"
                    + " it is wrong alike in all four holes of a shelf, and the shelf still lies"
                    + " level."))
        .flatMap(s -> s);
  }

  private static Stream<String> block(Guided guided) {
    return guided.clampings().stream().anyMatch(c -> c.reaches().size() > 1)
            && guided.guide().block().isPositive()
        ? Stream.of("Take the block off before the guide is moved on, and put it back after.")
        : Stream.of();
  }

  private static String side(Clamping clamping) {
    return clamping.face() == Face.LEFT
        ? "Panels with their left face up (right sides): side A up."
        : "Panels with their right face up (left sides): side B up, the guide turned over.";
  }

  private String row(Clamping clamping) {
    return Words.sentence(
        Words.lower(clamping.row()) + " row: " + new ClampingWords(words).edge(clamping) + ".");
  }
}
