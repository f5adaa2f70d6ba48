package fourpin.sheets.packet;

import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Method.Guided;
import fourpin.boring.way.Spacers;
import fourpin.boring.way.Spacers.Kind;
import fourpin.boring.way.Spacers.Spacer;
import fourpin.casework.Face;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How one guide serves every row: where it lies on each panel, and with which spacers. */
final class GuideUse {

  private final Words words;
  private final Guided guided;
  private final Spacers spacers;

  GuideUse(Words words, Guided guided) {
    this.words = words;
    this.guided = guided;
    this.spacers = Spacers.of(guided);
  }

  /** Cells of a row of the table, without the panels. */
  private record Lies(String row, String side, String edge, String end) {}

  List<Block> blocks() {
    return List.of(
        new Block.Paragraph(
            Prose.bold("Where guide “" + guided.guide().mark() + "” lies. ")
                .then(
                    Prose.plain(
                        "Its front edge always lies towards the front of the panel"
                            + block()
                            + ". Serve every"
                            + " panel with "
                            + these()
                            + " is wrong alike in all four holes of a shelf, and the shelf still lies"
                            + " level."))),
        table());
  }

  private String block() {
    return guided.guide().block().isPositive()
        ? ", and its block at the lower end, so that it fits one way only: the block stands proud of"
            + " both sides, and "
            + (guided.isMovedAlong()
                ? "comes off only where the guide is moved along"
                : "stays on when the guide is turned over")
        : ", and the end that DOWN is written on below";
  }

  private String these() {
    return spacers.list().isEmpty()
        ? "this one guide, from the same end: then what is wrong in it"
        : "this one guide and these spacers, from the same end: then what is wrong in them";
  }

  private Table table() {
    Map<Lies, List<String>> alike = new LinkedHashMap<>();
    for (Clamping clamping : guided.clampings()) {
      List<String> panels = alike.computeIfAbsent(lies(clamping), _ -> new ArrayList<>());
      String panel = clamping.part() + " bay " + clamping.bay();
      if (!panels.contains(panel)) {
        panels.add(panel);
      }
    }
    return new Table(
        List.of(
            Table.left("Panels"),
            Table.left("Row"),
            Table.left("Side showing"),
            Table.left("At the edge"),
            Table.left("At the lower end")),
        alike.entrySet().stream()
            .map(
                e ->
                    Table.row(
                        Words.list(e.getValue()),
                        e.getKey().row,
                        e.getKey().side,
                        e.getKey().edge,
                        e.getKey().end))
            .toList());
  }

  private Lies lies(Clamping clamping) {
    return new Lies(
        Words.lower(clamping.row()),
        clamping.showing().name(),
        edge(clamping),
        spacers
            .at(Kind.END, clamping)
            .map(spacer -> "spacer " + shown(spacer) + ", on " + bearing(clamping))
            .orElse("on " + bearing(clamping)));
  }

  private String edge(Clamping clamping) {
    String edge = clamping.edge() == Face.FRONT ? "front edge" : "back edge";
    Optional<Spacer> spacer = spacers.at(Kind.EDGE, clamping);
    return spacer
        .map(s -> "spacer " + shown(s) + ", flush with the " + edge)
        .orElseGet(
            () ->
                clamping
                    .over()
                    .map(over -> words.length(over) + " over the " + edge)
                    .orElse(edge + "s flush"));
  }

  private String bearing(Clamping clamping) {
    return switch (clamping.bearing()) {
      case Bearing.End _ -> "the lower end";
      case Bearing.PanelBelow(String mark, _) -> mark;
    };
  }

  private String shown(Spacer spacer) {
    return spacer.mark() + " (" + words.length(spacer.size()) + ")";
  }
}
