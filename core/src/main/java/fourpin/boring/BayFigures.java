package fourpin.boring;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.BayGrid.Run;
import fourpin.casework.BaySpace;
import fourpin.casework.BaySpace.Opening;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The pattern of a bay with its working: every level, row and run, and where they lie on the
 * uprights. Below {@code CASE/bay-N} ids follow the names of the plan's own fields: {@code
 * levels/3/height}.
 */
public final class BayFigures {

  private final BuiltCase built;
  private final BayGrid grid;
  private final BaySpace bay;
  private final List<Figure> figures = new ArrayList<>();

  private BayFigures(BuiltCase built, BayGrid grid) {
    this.built = built;
    this.grid = grid;
    this.bay = built.bays().get(grid.bay() - 1);
  }

  /**
   * @param built the case that the grid belongs to
   */
  public static List<Figure> of(BuiltCase built, BayGrid grid) {
    BayFigures all = new BayFigures(built, grid);
    all.bored();
    for (int i = 0; i < grid.rows().size(); i++) {
      all.row("rows/" + (i + 1), grid.rows().get(i));
    }
    grid.levels().forEach(all::level);
    for (int i = 0; i < grid.runs().size(); i++) {
      all.run("runs/" + (i + 1), grid.runs().get(i));
    }
    all.upright(bay(built, grid).left());
    all.upright(bay(built, grid).right());
    return List.copyOf(all.figures);
  }

  private static BaySpace bay(BuiltCase built, BayGrid grid) {
    return built.bays().get(grid.bay() - 1);
  }

  private Settings settings() {
    return built.order().settings();
  }

  private void bored() {
    switch (grid.support()) {
      case Support.Pins pins -> {
        add("pitch", "height from level to level", grid.pitch(), "p", set("p", Setting.PITCH));
        across(
            "diameter of the holes",
            "d + a",
            diameter("d", "diameter of the pins", pins.diameter()),
            allowance());
        add("depth", "depth of the holes", grid.depth(), "d", set("d", Setting.HOLE_DEPTH));
      }
      case Support.Sleeved sleeved -> {
        add("pitch", "height from level to level", grid.pitch(), "p", set("p", Setting.PITCH));
        across(
            "diameter of the holes",
            "d",
            diameter("d", "diameter of the sleeves", sleeved.outside()));
        Input length = stated("l", "length of the sleeves", sleeved.length());
        add("depth", "depth of the holes", grid.depth(), "l", length);
      }
      case Support.Standards standards -> {
        Input slots = stated("p", "pitch of the slots", standards.slotPitch());
        add("pitch", "height from level to level", grid.pitch(), "p", slots);
        add(
            "diameter",
            "width of the grooves",
            grid.diameter(),
            "w + g",
            stated("w", "width of the standards", standards.width()),
            set("g", Setting.GROOVE_PLAY));
        let(standards);
      }
      case Support.Cleats cleats -> {
        add("pitch", "height from level to level", grid.pitch(), "p", set("p", Setting.PITCH));
        across("diameter that is bored", "b", diameter("b", "bore of the notches", cleats.bore()));
        add("depth", "depth in the uprights: strips are screwed on", grid.depth(), "none");
        strips(cleats);
      }
    }
  }

  /** Strips are bored as blanks for two, with the saw's cut between them. */
  private void strips(Support.Cleats cleats) {
    Input width = stated("w", "width of a strip", cleats.width());
    Input kerf = set("k", Setting.KERF);
    Length blank = cleats.width().times(2).plus(settings().length(Setting.KERF));
    add("strips/width", "width of a strip", cleats.width(), "w", width);
    Input thick = stated("t", "thickness of a strip", cleats.thickness());
    add("strips/thickness", "thickness of a strip", cleats.thickness(), "t", thick);
    add("strips/blank-width", "width of a blank for two strips", blank, "2 w + k", width, kerf);
    String middle = "edge of a blank to the middle of its holes";
    add("strips/blank-middle", middle, blank.over(2), "w + k / 2", width, kerf);
  }

  private void let(Support.Standards standards) {
    if (standards.mounting() == Support.Mounting.LET_IN) {
      Input thick = stated("t", "thickness of the standards", standards.thickness());
      add("depth", "depth of the grooves", grid.depth(), "t", thick);
    } else {
      add("depth", "depth in the uprights: standards lie on them", grid.depth(), "none");
    }
  }

  private Input allowance() {
    return new Input(
        "a",
        Setting.HOLE_ALLOWANCE.meaning(),
        Quantity.of(settings().number(Setting.HOLE_ALLOWANCE), QuantityUnit.LENGTH),
        settings().source(Setting.HOLE_ALLOWANCE));
  }

  /** In case coordinates, from the front inwards. */
  private void row(String id, Row row) {
    Setting setback =
        row.name() == Row.Name.BACK
            ? ShelfRows.backSetback(grid.support())
            : ShelfRows.frontSetback(grid.support());
    Length set = settings().length(setback);
    String title = lower(row) + " row behind the front of the case";
    switch (row.name()) {
      case FRONT ->
          add(
              id + "/y",
              title,
              row.y(),
              "s + r",
              derived("s", "front edge of the shelves, set back as the row is", row.y().minus(set)),
              set("r", setback));
      case BACK ->
          add(
              id + "/y",
              title,
              row.y(),
              "s - r",
              derived("s", "back edge of the shelves", row.y().plus(set)),
              set("r", setback));
      case MIDDLE ->
          add(
              id + "/y",
              title,
              row.y(),
              "(f + b) / 2",
              derived("f", "front row", grid.rows().getFirst().y()),
              derived("b", "back row", grid.rows().getLast().y()));
    }
  }

  private void level(Level level) {
    String id = "levels/" + level.number();
    Level first = first(level);
    String title = "level " + level.number() + " above the foot of the case";
    if (first.equals(level)) {
      Length below = opening(level).clear().low().z();
      Length above = level.height().minus(below);
      add(
          id + "/height",
          title,
          level.height(),
          "b + c",
          derived("b", "top of the panel below", below),
          new Input(
              "c",
              "from it to the lowest level of the pattern there",
              Quantity.of(above),
              Source.GEOMETRY));
    } else {
      Length up = level.height().minus(first.height());
      add(
          id + "/height",
          title,
          level.height(),
          "f + k p",
          derived("f", "level " + first.number(), first.height()),
          new Input(
              "k",
              "levels of the pattern above it",
              Quantity.count(up.wholeTimes(grid.pitch())),
              Source.GEOMETRY),
          derived("p", "from level to level", grid.pitch()));
    }
    add(
        id + "/underside",
        "underside of a shelf on level " + level.number() + " above the foot of the case",
        level.underside(),
        "h + r",
        derived("h", "height of the level", level.height()),
        derived(
            "r",
            "from the level to what a shelf lies on",
            level.underside().minus(level.height())));
  }

  /** The lowest level that another is a whole number of pitches above. */
  private Level first(Level level) {
    return grid.levels().stream()
        .filter(l -> level.height().minus(l.height()).remainder(grid.pitch()).isZero())
        .findFirst()
        .orElse(level);
  }

  private Opening opening(Level level) {
    return bay.openings().stream()
        .filter(o -> o.clear().high().z().isAtLeast(level.height()))
        .findFirst()
        .orElse(bay.openings().getLast());
  }

  private void run(String id, Run run) {
    add(id + "/bottom", "lower end of strip or standard", run.bottom(), "top of the panel below");
    add(id + "/top", "upper end of strip or standard", run.top(), "bottom of the panel above");
  }

  private void upright(String mark) {
    Part part = built.part(mark);
    PanelRows rows = new PanelRows(grid, part);
    Length end = rows.lowerEnd();
    Length edge = part.box().at(Face.FRONT);
    Length back = part.box().at(Face.BACK);
    String id = "on-" + Figure.id(mark) + "/";
    add(id + "lower-end", "lower end of " + mark + " above the foot of the case", end, "its place");
    for (Row row : grid.rows()) {
      add(
          id + lower(row) + "-row",
          lower(row) + " row of bay " + grid.bay() + " from the front edge of " + mark,
          rows.fromFront(row),
          "y - e",
          derived("y", "the row, behind the front of the case", row.y()),
          derived("e", "front edge of " + mark + ", likewise", edge));
      add(
          id + lower(row) + "-row-from-back",
          lower(row) + " row of bay " + grid.bay() + " from the back edge of " + mark,
          rows.fromBack(row),
          "e - y",
          derived("e", "back edge of " + mark + ", behind the front of the case", back),
          derived("y", "the row, likewise", row.y()));
    }
    for (Level level : grid.levels()) {
      add(
          id + "level-" + level.number(),
          "lower end of " + mark + " to level " + level.number() + " of bay " + grid.bay(),
          rows.up(level),
          "h - e",
          derived("h", "height of the level above the foot of the case", level.height()),
          derived("e", "lower end of " + mark + ", likewise", end));
    }
  }

  private static String lower(Row row) {
    return row.name().name().toLowerCase(Locale.ROOT);
  }

  private Input set(String symbol, Setting setting) {
    return new Input(
        symbol,
        setting.meaning(),
        Quantity.of(settings().length(setting)),
        settings().source(setting));
  }

  private static Input stated(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.of(value), Source.STATED);
  }

  private static Input derived(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.of(value), Source.GEOMETRY);
  }

  private static Input diameter(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.across(value), Source.STATED);
  }

  /** Of what is bored in this bay. */
  private void across(String title, String formula, Input... inputs) {
    add("diameter", title, Quantity.across(grid.diameter()), formula, inputs);
  }

  private void add(String what, String title, Length value, String formula, Input... inputs) {
    add(what, title, Quantity.of(value), formula, inputs);
  }

  private void add(String what, String title, Quantity value, String formula, Input... inputs) {
    figures.add(
        new Figure(
            Figure.id(built.order().name(), "bay-" + grid.bay()) + "/" + what,
            title,
            value,
            formula,
            Stream.of(inputs).toList(),
            Source.GEOMETRY));
  }
}
