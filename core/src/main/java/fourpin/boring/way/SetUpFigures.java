package fourpin.boring.way;

import fourpin.boring.BayGrid.Row;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Make;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What guide pages and drilling sheets print of a way, with its working. Ids below the way follow
 * the names of the method's own fields, places in a list counted from 1: {@code
 * guide/holes/3/along}.
 */
final class SetUpFigures {

  private final Group group;
  private final Way way;
  private final List<Figure> figures = new ArrayList<>();

  private SetUpFigures(Group group, Way way) {
    this.group = group;
    this.way = way;
  }

  static List<Figure> of(Group group, Way way, Method method) {
    SetUpFigures all = new SetUpFigures(group, way);
    switch (method) {
      case Method.Guided guided -> {
        all.bit(guided.bit());
        all.guide(guided);
        all.clampings(guided);
        all.spacers(guided);
      }
      case Method.Marked marked -> {
        all.bit(marked.bit());
        all.pairs(marked.gangs());
      }
      case Method.Programmed programmed -> all.bit(programmed.bit());
      case Method.Grooved grooved -> all.grooves(grooved);
      case Method.Blanks blanks -> {
        all.bit(blanks.bit());
        all.count("stack", "blanks bored together", blanks.stack(), "as bit and quill reach");
      }
      case Method.ScrewedOn _ -> {}
    }
    return List.copyOf(all.figures);
  }

  private void bit(BitSetting bit) {
    across("bit/diameter", "diameter of the bit", bit.diameter(), "diameter of the holes");
    across(
        "bit/runs", "diameter of what runs in the guide", bit.runs(), "as stated; 0 without one");
    add("bit/over", "guide between stop and panel", bit.over(), "as stated; 0 without one");
    add("bit/depth", "depth of the hole", bit.depth(), "d", depth(bit));
    add("bit/point", "point of the bit beyond the full diameter", bit.point(), "p", point(bit));
    add(
        "bit/stop",
        "stop of the bit",
        bit.stop(),
        "d + g",
        depth(bit),
        stated("g", "thickness of the guide", bit.over()));
    boolean through = bit.reserve().isZero();
    if (through) {
      add("bit/reserve", "wood behind the point of the bit", bit.reserve(), "bored right through");
    } else {
      add(
          "bit/reserve",
          "wood behind the point of the bit in the thinnest panel",
          bit.reserve(),
          "t - d - p",
          stated("t", "thickness of the thinnest panel", group.thinnest()),
          depth(bit),
          point(bit));
    }
  }

  private static Input point(BitSetting bit) {
    Quantity point = Quantity.of(bit.point());
    return new Input("p", "point of the bit beyond the full diameter", point, bit.pointFrom());
  }

  /** Sleeves take their own length, and blanks are bored right through. */
  private Input depth(BitSetting bit) {
    Source source =
        group.support() instanceof Support.Pins
            ? group.settings().source(Setting.HOLE_DEPTH)
            : Source.STATED;
    return new Input("d", "depth of the hole", Quantity.of(bit.depth()), source);
  }

  private void guide(Method.Guided method) {
    Guide guide = method.guide();
    GuideHole first = guide.holes().getFirst();
    GuideHole last = guide.holes().getLast();
    add(
        "guide/length",
        "guide from its stop face to its far end",
        guide.length(),
        "l + m",
        derived("l", "stop face to the last hole", last.along()),
        derived("m", "what stays beyond it", guide.length().minus(last.along())));
    add(
        "guide/cut-to",
        "length that a guide is cut to",
        guide.length().plus(guide.block()),
        "l + b",
        derived("l", "from the stop face to the far end", guide.length()),
        stated("b", "thickness of the stop block on it", guide.block()));
    add(
        "guide/width",
        "width of a guide",
        guide.width(),
        "f + r",
        derived("f", "from its front edge to its holes", first.across()),
        derived("r", "from its holes to its back edge", guide.width().minus(first.across())));
    add("guide/thickness", "thickness of a guide", guide.thickness(), "as its stock is stated");
    block(guide);
    if (guide.make() instanceof Make.Sold sold) {
      count(
          "guide/make/first",
          "hole of " + sold.strip() + " that becomes hole 1",
          sold.first(),
          FIRST);
      Input[] off = StripInputs.off(guide, sold);
      add("guide/make/off", "end of strip to where it is sawn off", sold.off(), "h - a - b", off);
      Input[] behind = StripInputs.behind(guide, space(guide));
      add("guide/make/behind", BEHIND, sold.behind(), "a - p + d / 2, if above 0", behind);
    }
    holes(method);
  }

  private static final String FIRST =
      "the first beyond zero, where one comes over the lowest level";
  private static final String BEHIND = "hole of strip before hole 1, how far it is beyond zero";

  private void block(Guide guide) {
    if (guide.block().isZero()) {
      add("guide/block", "stop block of a guide", guide.block(), "none where the case stands");
    } else {
      add(
          "guide/block",
          "thickness of its stop block",
          guide.block(),
          "b",
          set(Setting.GUIDE_BLOCK));
    }
  }

  private Input set(Setting setting) {
    return new Input(
        "b",
        setting.meaning(),
        Quantity.of(group.settings().length(setting)),
        group.settings().source(setting));
  }

  private void holes(Method.Guided method) {
    Guide guide = method.guide();
    BitSetting bit = method.bit();
    GuideHole first = guide.holes().getFirst();
    add(
        "guide/holes/across",
        "from the front edge of a guide to the middle of its holes",
        first.across(),
        "set by the rows that it serves, or by the strip");
    across(
        "guide/holes/diameter",
        "diameter of the holes of a guide",
        first.diameter(),
        "c + s",
        new Input("c", "diameter of what runs in them", Quantity.across(bit.runs()), Source.STATED),
        derived(
            "s",
            "play; below zero where a taper finds the middle",
            first.diameter().minus(bit.runs())));
    Length space = space(guide);
    for (GuideHole hole : guide.holes()) {
      String id = "guide/holes/" + hole.number() + "/along";
      String title = "stop face of a guide to the middle of its hole " + hole.number();
      if (hole.equals(first)) {
        first(id, title, guide, method.clampings().getFirst());
      } else {
        Length up = hole.along().minus(first.along());
        add(
            id,
            title,
            hole.along(),
            "f + k p",
            derived("f", "to its hole 1", first.along()),
            counted("k", "spaces above it", up.wholeTimes(space)),
            stated("p", "from space to space", space));
      }
    }
  }

  /** From where it lies: the lowest hole that is bored stands over its level. */
  private void first(String id, String title, Guide guide, Clamping clamping) {
    GuideHole bored = ClampingInputs.lowest(guide, clamping);
    Length first = guide.holes().getFirst().along();
    Length space = space(guide);
    add(
        id,
        title,
        first,
        "u - z - k p",
        derived(
            "u",
            "lower end of " + clamping.part() + " to its lowest hole",
            clamping.along().plus(bored.along())),
        derived("z", "lower end to the zero of the guide", clamping.along()),
        counted(
            "k",
            "spaces from hole 1 up to the hole over it",
            bored.along().minus(first).wholeTimes(space)),
        stated("p", "from space to space", space));
  }

  /** From hole to hole where none is left out. */
  private Length space(Guide guide) {
    return switch (guide.make()) {
      case Make.Bored _ -> group.pitch();
      case Make.Sold(String strip, _, _, _, _) ->
          group.shop().all(PerforatedStrip.class).stream()
              .filter(s -> s.name().equals(strip))
              .map(PerforatedStrip::pitch)
              .findFirst()
              .orElseGet(group::pitch);
    };
  }

  private void clampings(Method.Guided method) {
    Guide guide = method.guide();
    if (guide.make() instanceof Make.Sold) {
      count(
          "every",
          "of the strip's holes, one in so many is bored through",
          group.pitch().wholeTimes(space(guide)),
          "p / s",
          derived("p", "from level to level", group.pitch()),
          stated("s", "from hole to hole of the strip", space(guide)));
    }
    for (int i = 0; i < method.clampings().size(); i++) {
      clamping("clampings/" + (i + 1), guide, method.clampings().get(i));
    }
  }

  private void clamping(String id, Guide guide, Clamping clamping) {
    String on = clamping.part() + ", " + lower(clamping.row()) + " row, bay " + clamping.bay();
    add(
        id + "/along",
        "zero of the guide above the lower end of " + on + "; below zero: a spacer",
        clamping.along(),
        "u - g",
        ClampingInputs.along(guide, clamping));
    add(
        id + "/across",
        "edge of " + on + " to the guide's edge; below zero: the guide stands over",
        clamping.across(),
        "r - c",
        ClampingInputs.across(guide, clamping));
    if (clamping.bearing() instanceof Bearing.PanelBelow(String mark, Length spacer)) {
      add(
          id + "/bearing/spacer",
          "spacer between " + mark + " and the guide, on " + on,
          spacer,
          "z - m",
          ClampingInputs.standing(clamping, mark, spacer));
    }
  }

  private void spacers(Method.Guided method) {
    Spacers spacers = Spacers.of(method);
    for (Spacers.Spacer spacer : spacers.list()) {
      String id = "spacers/" + spacer.number();
      boolean end = spacer.kind() == Spacers.Kind.END;
      Clamping first =
          method.clampings().stream()
              .filter(c -> spacers.at(spacer.kind(), c).equals(Optional.of(spacer)))
              .findFirst()
              .orElseThrow();
      spacer(id + "/size", spacer, method.guide(), first);
      add(
          id + "/length",
          "spacer “" + spacer.mark() + "”, its length",
          spacer.length(),
          end ? "as wide as the guide" : "as long as the guide");
    }
  }

  private void spacer(String id, Spacers.Spacer spacer, Guide guide, Clamping clamping) {
    String title = "spacer “" + spacer.mark() + "”, how far it keeps the guide off";
    switch (spacer.kind()) {
      case EDGE -> add(id, title, spacer.size(), "r - c", ClampingInputs.across(guide, clamping));
      case END -> {
        if (clamping.bearing() instanceof Bearing.PanelBelow(String mark, Length size)) {
          add(id, title, size, "z - m", ClampingInputs.standing(clamping, mark, size));
        } else {
          add(id, title, spacer.size(), "g - u", ClampingInputs.along(guide, clamping));
        }
      }
    }
  }

  private void pairs(List<Gang> gangs) {
    for (int i = 0; i < gangs.size(); i++) {
      Gang gang = gangs.get(i);
      String id = "pairs/" + (i + 1);
      add(
          id + "/stop",
          "height of the stop for the pair of bay " + gang.bay(),
          gang.stop(),
          "the lower of the two lower ends above the foot of the case");
      for (int j = 0; j < gang.panels().size(); j++) {
        Gang.Laid laid = gang.panels().get(j);
        add(
            id + "/panels/" + (j + 1) + "/gap",
            "stop to the lower end of " + laid.part() + ": thickness of a spacer",
            laid.gap(),
            "e - s",
            derived("e", "its lower end above the foot of the case", laid.gap().plus(gang.stop())),
            derived("s", "height of the stop", gang.stop()));
      }
    }
  }

  private void grooves(Method.Grooved method) {
    add("cut", "width of one pass of " + method.tool(), method.cut(), "as stated or taken");
    count(
        "passes",
        "passes side by side for the width of a groove",
        method.passes(),
        "w / c, rounded up",
        derived("w", "width of the groove", group.diameter()),
        derived("c", "width of one pass", method.cut()));
    for (int i = 0; i < method.depths().size(); i++) {
      add(
          "depths/" + (i + 1),
          "depth of pass " + (i + 1) + ", one below the other",
          method.depths().get(i),
          method.cutter() == Method.Cutter.ROUTER ? "the less of n m and d" : "d",
          counted("n", "which pass", i + 1),
          new Input(
              "m",
              Setting.ROUTER_PASS.meaning(),
              Quantity.of(group.settings().length(Setting.ROUTER_PASS)),
              group.settings().source(Setting.ROUTER_PASS)),
          stated("d", "depth of the groove", group.depth()));
    }
  }

  private static String lower(Row.Name name) {
    return name.name().toLowerCase(Locale.ROOT);
  }

  private void count(String what, String title, long value, String formula, Input... inputs) {
    add(what, title, Quantity.count(value), formula, inputs);
  }

  private void across(String what, String title, Length diameter, String formula, Input... inputs) {
    add(what, title, Quantity.across(diameter), formula, inputs);
  }

  private void add(String what, String title, Length value, String formula, Input... inputs) {
    add(what, title, Quantity.of(value), formula, inputs);
  }

  private void add(String what, String title, Quantity value, String formula, Input... inputs) {
    figures.add(
        new Figure(
            group.figureId(way, what), title, value, formula, List.of(inputs), Source.GEOMETRY));
  }

  private static Input stated(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.of(value), Source.STATED);
  }

  private static Input derived(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.of(value), Source.GEOMETRY);
  }

  private static Input counted(String symbol, String meaning, long value) {
    return new Input(symbol, meaning, Quantity.count(value), Source.GEOMETRY);
  }
}
