package fourpin.boring.way;

import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Back;
import fourpin.job.Bay;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Shop;
import fourpin.job.Support;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Bays of one case with one kind of support, one diameter and one depth: they are bored alike.
 *
 * @param name for figures: empty where the case has no other group
 * @param grids of these bays, from the left; at least one
 */
record Group(Job job, BuiltCase built, String name, List<BayGrid> grids) {

  Group {
    grids = List.copyOf(grids);
  }

  /** What bays must share to be bored alike. */
  private record Kind(Class<? extends Support> support, Length diameter, Length depth) {
    static Kind of(BayGrid grid) {
      return new Kind(grid.support().getClass(), grid.diameter(), grid.depth());
    }
  }

  /**
   * The groups of one case, in the order of their first bays.
   *
   * @param grids those of this case
   */
  static List<Group> of(Job job, BuiltCase built, List<BayGrid> grids) {
    Map<Kind, List<BayGrid>> kinds = new LinkedHashMap<>();
    grids.forEach(g -> kinds.computeIfAbsent(Kind.of(g), _ -> new ArrayList<>()).add(g));
    return kinds.values().stream()
        .map(g -> new Group(job, built, kinds.size() == 1 ? "" : bays("bay", g), g))
        .toList();
  }

  private static String bays(String word, List<BayGrid> grids) {
    StringBuilder text = new StringBuilder(word);
    grids.forEach(g -> text.append('-').append(g.bay()));
    return text.toString();
  }

  Settings settings() {
    return built.order().settings();
  }

  Shop shop() {
    return job.shop();
  }

  /** One of the bays' supports; all are of one kind. */
  Support support() {
    return grids.getFirst().support();
  }

  /** Whether shelves lie on pins in holes, with or without sleeves. */
  boolean hasPins() {
    return support() instanceof Support.Pins || support() instanceof Support.Sleeved;
  }

  /** Whether a way is one for the supports that these bays have. */
  boolean isFor(Way way) {
    return switch (way) {
      case GROOVED_STANDARDS -> support() instanceof Support.Standards;
      case CLEAT_BLANK -> support() instanceof Support.Cleats;
      default -> hasPins();
    };
  }

  Length diameter() {
    return grids.getFirst().diameter();
  }

  Length depth() {
    return grids.getFirst().depth();
  }

  /** From level to level; all bays of a case have one. */
  Length pitch() {
    return grids.getFirst().pitch();
  }

  boolean isBoredAfterAssembly() {
    return settings().choice(Setting.DRILL).equals("after-assembly");
  }

  /**
   * Whether a back stands behind the rows while they are bored: one in a groove slides in before
   * the case is closed, all others are fastened after the boring.
   */
  boolean hasBackOn() {
    return isBoredAfterAssembly()
        && built.order().back().filter(b -> b.kind() == Back.Kind.GROOVE).isPresent();
  }

  BaySpace space(BayGrid grid) {
    return built.bays().get(grid.bay() - 1);
  }

  Bay stated(BayGrid grid) {
    return built.order().bays().get(grid.bay() - 1);
  }

  /** Every row that is bored, panel by panel, a face at a time, from front to back. */
  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    for (Part part : built.parts()) {
      for (Face face : List.of(Face.LEFT, Face.RIGHT)) {
        grids.forEach(grid -> columns.addAll(columns(grid, part, face)));
      }
    }
    return columns;
  }

  private List<Column> columns(BayGrid grid, Part part, Face face) {
    BaySpace bay = space(grid);
    String mark = face == Face.RIGHT ? bay.left() : bay.right();
    return mark.equals(part.mark()) && !grid.levels().isEmpty()
        ? grid.rows().stream().map(row -> new Column(grid, bay, part, face, row)).toList()
        : List.of();
  }

  /** Panels that are bored, each once. */
  List<Part> panels() {
    return columns().stream().map(Column::part).distinct().toList();
  }

  /** Thickness of the thinnest panel that is bored; of any upright if none is. */
  Length thinnest() {
    return grids.stream()
        .map(this::space)
        .flatMap(b -> List.of(b.left(), b.right()).stream())
        .map(mark -> built.part(mark).thickness())
        .min(Length::compareTo)
        .orElseThrow();
  }

  /** The bay with the least room between its uprights. */
  BaySpace narrowest() {
    return grids.stream()
        .map(this::space)
        .min((a, b) -> a.clear().size(Axis.X).compareTo(b.clear().size(Axis.X)))
        .orElseThrow();
  }

  /** Holes in one copy of the case. */
  long holes() {
    return columns().stream().mapToLong(c -> c.grid().levels().size()).sum();
  }

  /** What is written on a guide for these bays. */
  String mark() {
    return built.order().name() + (name.isEmpty() ? "" : " " + name);
  }

  /** Of a figure of one way for these bays. */
  String figureId(Way way, String what) {
    return figureId(way.key() + "/" + what);
  }

  /** Of a figure for these bays, whatever the way. */
  String figureId(String what) {
    String at = name.isEmpty() ? "boring" : "boring/" + name;
    return Figure.id(built.order().name(), at, what);
  }

  /** How the job prints lengths. */
  LengthStyle style() {
    return job.style();
  }

  /** The least that the job's unit writes exactly and that is not less. */
  Length roundedUp(Length length) {
    return style().roundedUp(length);
  }

  String text(Length length) {
    return style().text(length);
  }

  /** A diameter as it stands on the bit. */
  String across(Length diameter) {
    return style().diameter(diameter);
  }
}
