package fourpin.boring;

import fourpin.boring.BayGrid.Row;
import fourpin.boring.BayGrid.Run;
import fourpin.boring.Cut.Owner.Obstacle;
import fourpin.boring.Cut.Owner.OfRow;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds where rows meet each other or anything else, on both faces of every upright of a case. */
final class Clashes {

  private final BuiltCase built;
  private final List<BayGrid> grids;
  private final Length start;
  private final Reporter reporter;
  private final Settings settings;

  /**
   * @param start height of the case's lowest hole
   */
  Clashes(BuiltCase built, List<BayGrid> grids, Length start, Reporter reporter) {
    this.start = start;
    this.built = built;
    this.grids = grids;
    this.reporter = reporter;
    this.settings = built.order().settings();
  }

  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Part part : built.parts()) {
      if (part.role() == Part.Role.SIDE || part.role() == Part.Role.PARTITION) {
        findings.addAll(on(part));
      }
    }
    return findings;
  }

  private List<Finding> on(Part upright) {
    List<Cut> right = cuts(upright, Face.RIGHT);
    List<Cut> left = cuts(upright, Face.LEFT);
    Map<String, List<Clash>> groups = new LinkedHashMap<>();
    opposite(left, right).forEach(c -> group(groups, "rows", c));
    List<Cut> obstacles = Obstacles.on(built, upright);
    for (List<Cut> side : List.of(left, right)) {
      for (Cut cut : side) {
        for (Cut obstacle : obstacles) {
          Clash.of(cut, obstacle, settings)
              .ifPresent(c -> group(groups, name(cut) + name(obstacle), c));
        }
      }
    }
    return groups.values().stream()
        .map(g -> new ClashReport(built, upright, g, start, reporter).finding())
        .toList();
  }

  /** One finding for all cuts of a bay that meet the same thing. */
  private static void group(Map<String, List<Clash>> groups, String name, Clash clash) {
    groups.computeIfAbsent(name, _ -> new ArrayList<>()).add(clash);
  }

  private static String name(Cut cut) {
    return switch (cut.owner()) {
      case OfRow row -> row.name();
      case Obstacle obstacle -> obstacle.kind() + obstacle.name();
    };
  }

  /** The cuts of the bay that a face of the upright looks into, rising. */
  private List<Cut> cuts(Part upright, Face face) {
    List<Cut> cuts = new ArrayList<>();
    for (BayGrid grid : grids) {
      BaySpace bay = built.bays().get(grid.bay() - 1);
      String mark = face == Face.RIGHT ? bay.left() : bay.right();
      if (mark.equals(upright.mark())) {
        grid.rows().forEach(row -> cuts.addAll(cuts(upright, face, grid, row)));
      }
    }
    cuts.sort(Comparator.comparing(c -> c.outline().bottom()));
    return cuts;
  }

  private static List<Cut> cuts(Part upright, Face face, BayGrid grid, Row row) {
    Length surface = upright.box().at(face);
    Length floor = surface.minus(grid.depth().times(face.direction()));
    Length from = Length.min(surface, floor);
    Length to = Length.max(surface, floor);
    OfRow owner = new OfRow(grid, row);
    return outlines(grid, row).stream().map(o -> new Cut(o, from, to, owner)).toList();
  }

  /** Standards and strips by their length, holes one by one. */
  private static List<Outline> outlines(BayGrid grid, Row row) {
    List<Outline> outlines = new ArrayList<>();
    for (Run run : grid.runs()) {
      outlines.add(new Outline.Rectangle(row.front(grid), row.back(grid), run.bottom(), run.top()));
    }
    if (outlines.isEmpty()) {
      grid.levels()
          .forEach(l -> outlines.add(new Outline.Disc(row.y(), l.height(), grid.diameter())));
    }
    return outlines;
  }

  /** Walks up both faces at once, so that only neighbours in height are compared. */
  private List<Clash> opposite(List<Cut> left, List<Cut> right) {
    List<Clash> clashes = new ArrayList<>();
    int first = 0;
    for (Cut cut : left) {
      while (first < right.size() && isBelow(right.get(first), cut)) {
        first++;
      }
      for (int i = first; i < right.size() && !isAbove(right.get(i), cut); i++) {
        Clash.of(cut, right.get(i), settings).filter(this::isTold).ifPresent(clashes::add);
      }
    }
    return clashes;
  }

  /**
   * Rows of both faces that a strip's odd pitch brings nearer by less than half of the finest part
   * that a rule shows lie as far apart as was asked for.
   */
  private boolean isTold(Clash clash) {
    LengthStyle style = reporter.style();
    Length part = new Length(style.unit().picometres() / style.parts(), style.unit());
    Length missing = settings.length(Setting.LEAST_EDGE).minus(clash.gap());
    return missing.times(2).isAtLeast(part);
  }

  private boolean isBelow(Cut other, Cut cut) {
    Length reach = settings.length(Setting.LEAST_EDGE);
    return other.outline().top().plus(reach).isLessThan(cut.outline().bottom());
  }

  private boolean isAbove(Cut other, Cut cut) {
    Length reach = settings.length(Setting.LEAST_EDGE);
    return cut.outline().top().plus(reach).isLessThan(other.outline().bottom());
  }
}
