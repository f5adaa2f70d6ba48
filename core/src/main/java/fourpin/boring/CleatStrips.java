package fourpin.boring;

import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.BayGrid.Run;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.casework.Point;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Strips with half-round notches in the edges that look at each other, loose cleats that lie in
 * them, and the shelves notched to pass the strips.
 *
 * <p>The front and the back strip of a run are bored as one blank on its middle line and ripped
 * apart there, so the centre of a notch lies half a kerf outside the strip's edge. The straight
 * part of a cleat reaches from centre to centre and its rounded ends, half its height in radius,
 * lie in the notches.
 *
 * <p>At the strip's edge a notch of radius r then ends r - sqrt(r² - (k/2)²) above the lowest point
 * of a whole hole, for a kerf k: 0.003 in for holes of 1 1/2 in and a kerf of 1/8 in. The round of
 * a cleat rises there likewise, with half the cleat's height for r, so that a cleat lies as in a
 * whole hole to within that; and alike in all notches, so that shelves lie level. Levels leave it
 * out.
 */
final class CleatStrips {

  private final BuiltCase built;
  private final BaySpace bay;
  private final BayGrid grid;
  private final Support.Cleats cleats;
  private final List<Part> parts = new ArrayList<>();
  private final Map<String, List<Feature>> features = new LinkedHashMap<>();

  CleatStrips(BuiltCase built, BaySpace bay, BayGrid grid, Support.Cleats cleats) {
    this.built = built;
    this.bay = bay;
    this.grid = grid;
    this.cleats = cleats;
  }

  Fitting fitting() {
    for (Face inside : List.of(Face.RIGHT, Face.LEFT)) {
      grid.rows().forEach(row -> grid.runs().forEach(run -> parts.add(strip(inside, row, run))));
      grid.seats().forEach(seat -> seat(inside, seat));
    }
    return new Fitting(features, List.copyOf(parts));
  }

  /**
   * The face of the upright that strips stand on; the strip's own inner face looks the same way.
   */
  private Length surface(Face inside) {
    Part upright = built.part(inside == Face.RIGHT ? bay.left() : bay.right());
    return upright.box().at(inside);
  }

  private Part strip(Face inside, Row row, Run run) {
    Box box = across(inside, cleats.thickness(), edge(row, Face.FRONT), edge(row, Face.BACK), run);
    return new Part(
        stripMark(inside, row, run),
        "cleat strip",
        Part.Role.STRIP,
        cleats.material(),
        box,
        Axis.Z,
        Axis.X,
        Sum.of("clear height", run.length()),
        Sum.of("strip", cleats.width()),
        List.of(),
        notches(inside, row, run),
        Part.CutWhen.NOW);
  }

  private List<Feature> notches(Face inside, Row row, Run run) {
    Length surface = surface(inside).plus(cleats.thickness().times(inside.direction()));
    Length line = line(row);
    List<Feature> notches = new ArrayList<>();
    for (Level level : grid.levels()) {
      if (level.height().isMoreThan(run.bottom()) && level.height().isLessThan(run.top())) {
        Point centre = new Point(surface, line, level.height());
        notches.add(
            new Feature.Hole(
                Feature.Hole.Use.SUPPORT,
                inside,
                centre,
                cleats.bore(),
                cleats.thickness(),
                grid.notch()));
      }
    }
    return notches;
  }

  private String stripMark(Face inside, Row row, Run run) {
    String mark = bay.number() + "-" + side(inside) + (row.name() == Row.Name.FRONT ? "F" : "B");
    return grid.runs().size() == 1 ? mark : mark + (grid.runs().indexOf(run) + 1);
  }

  private static String side(Face inside) {
    return inside == Face.RIGHT ? "L" : "R";
  }

  private Length edge(Row row, Face side) {
    Length front = row.y().minus(cleats.width().over(2));
    return side == Face.FRONT ? front : front.plus(cleats.width());
  }

  /** The middle line of the blank: half a kerf beyond the edge that looks at the other strip. */
  private Length line(Row row) {
    Length kerf = built.order().settings().length(Setting.KERF);
    return row.name() == Row.Name.FRONT
        ? edge(row, Face.BACK).plus(kerf.over(2))
        : edge(row, Face.FRONT).minus(kerf.minus(kerf.over(2)));
  }

  private void seat(Face inside, BayGrid.Seat seat) {
    Part shelf = built.part(seat.shelf());
    if (haveRoomForCleats()) {
      parts.add(cleat(inside, seat));
    }
    List<Feature> notches = features.computeIfAbsent(shelf.mark(), _ -> new ArrayList<>());
    grid.rows().forEach(row -> notches.add(shelfNotch(inside, row, shelf)));
  }

  /** Rows that cross are found as too close; no cleat lies between them. */
  private boolean haveRoomForCleats() {
    Length front = line(grid.rows().getFirst());
    return line(grid.rows().getLast()).isMoreThan(front.minus(cleats.cleatHeight()));
  }

  private Part cleat(Face inside, BayGrid.Seat seat) {
    Length front = line(grid.rows().getFirst());
    Length back = line(grid.rows().getLast());
    Length half = cleats.cleatHeight().over(2);
    Length underside = grid.levels().get(seat.level() - 1).underside();
    Run height = new Run(underside.minus(cleats.cleatHeight()), underside);
    Sum length = Sum.of("between notches", back.minus(front)).plus(2, "rounded end", half);
    return new Part(
        seat.shelf().replace("-S", "-C") + side(inside),
        "loose cleat",
        Part.Role.CLEAT,
        cleats.material(),
        across(inside, cleats.cleatThickness(), front.minus(half), back.plus(half), height),
        Axis.Y,
        Axis.X,
        length,
        Sum.of("cleat", cleats.cleatHeight()),
        List.of(),
        List.of(),
        Part.CutWhen.NOW);
  }

  private Box across(Face inside, Length thick, Length front, Length back, Run height) {
    Length surface = surface(inside);
    Length far = surface.plus(thick.times(inside.direction()));
    return Box.of(
        Length.min(surface, far),
        Length.max(surface, far),
        front,
        back,
        height.bottom(),
        height.top());
  }

  /** As deep as the strip stands out beyond the shelf's end, with the end's own play all round. */
  private Feature shelfNotch(Face inside, Row row, Part shelf) {
    Length play = built.order().settings().length(Setting.END_PLAY).over(2);
    Face end = inside.opposite();
    Length at = shelf.box().at(end);
    Length past = cleats.thickness().plus(play);
    Length floor = surface(inside).plus(past.times(inside.direction()));
    Box volume =
        Box.of(
            Length.min(at, floor),
            Length.max(at, floor),
            edge(row, Face.FRONT).minus(play),
            edge(row, Face.BACK).plus(play),
            shelf.box().low().z(),
            shelf.box().high().z());
    return new Feature.Channel(
        Feature.Channel.Kind.NOTCH, end, volume, "cleat strip, " + grid.purpose(row));
  }
}
