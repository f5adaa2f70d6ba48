package fourpin.boring.tolerance;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.ErrorModel.Term;
import fourpin.boring.tolerance.Miss.Point;
import fourpin.boring.way.Method;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.job.Support;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * From a way of boring to the errors of its holes.
 *
 * <p>What is taken for granted: heights count from the end that the case stands on, shelves are
 * flat and rigid, panels are; holes of a guide are square to it, so that it may be turned over. A
 * pin that is loose in its hole may sit anywhere in it, held by friction, which is the cautious
 * view: under load pins go down alike. Of several copies of a case, the last is modelled, since the
 * guide is worn most by then.
 */
public final class ErrorModels {

  private final BuiltCase built;
  private final List<BayGrid> grids;
  private final CauseBook book;

  private ErrorModels(BuiltCase built, List<BayGrid> grids) {
    this.built = built;
    this.grids = grids;
    this.book = new CauseBook(built.order().settings());
  }

  /**
   * The errors of one way.
   *
   * @param grids the bays bored that way, of the case {@code built}
   * @param alteration what is done otherwise; means nothing where no guide is used
   * @return positions whose holes the way makes; none where it makes no such
   */
  public static ErrorModel of(
      BuiltCase built, List<BayGrid> grids, Way way, Method method, Alteration alteration) {
    return new ErrorModels(built, grids).model(way, method, alteration);
  }

  private ErrorModel model(Way way, Method method, Alteration alteration) {
    Map<Hole, List<Term>> errors =
        method instanceof Method.Guided guided
            ? new GuidedErrors(built, grids, way, guided, alteration, book).errors()
            : unguided(method);
    List<Position> positions = new ArrayList<>();
    for (BayGrid grid : grids) {
      for (Level level : grid.levels()) {
        position(grid, level, errors).ifPresent(positions::add);
      }
    }
    return new ErrorModel(book.causes(), positions);
  }

  /** None where the way doesn't make all holes; the bench run tells of those. */
  private Optional<Position> position(BayGrid grid, Level level, Map<Hole, List<Term>> errors) {
    Map<Point, List<Term>> points = new EnumMap<>(Point.class);
    for (Point point : points(grid)) {
      Hole hole = new Hole(grid.bay(), level.number(), point);
      if (!errors.containsKey(hole)) {
        return Optional.empty();
      }
      List<Term> terms = new ArrayList<>(errors.get(hole));
      terms.add(book.uniform(CauseKind.PIN, hole.text(), looseness(grid) / 2));
      points.put(point, terms);
    }
    return Optional.of(new Position(grid.bay(), level.number(), points));
  }

  private static Set<Point> points(BayGrid grid) {
    return grid.rows().stream().anyMatch(r -> r.name() == Row.Name.MIDDLE)
        ? Point.SIX
        : Point.CORNERS;
  }

  /** Clearance of a pin in its hole, mm. */
  private static double looseness(BayGrid grid) {
    return switch (grid.support()) {
      case Support.Pins pins -> grid.diameter().minus(pins.diameter()).mm();
      case Support.Sleeved sleeved -> grid.diameter().minus(sleeved.outside()).mm();
      case Support.Standards _, Support.Cleats _ -> 0;
    };
  }

  private Map<Hole, List<Term>> unguided(Method method) {
    Map<Hole, List<Term>> errors = new LinkedHashMap<>();
    for (BayGrid grid : grids) {
      for (Level level : grid.levels()) {
        for (Point point : points(grid)) {
          Hole hole = new Hole(grid.bay(), level.number(), point);
          errors.put(hole, unguided(method, hole, run(grid, level)));
        }
      }
    }
    return errors;
  }

  private List<Term> unguided(Method method, Hole hole, int run) {
    String row = "bay " + hole.bay() + " " + hole.point() + " " + run;
    String side = "bay " + hole.bay() + " " + Hole.sideOf(hole.point());
    String level = Integer.toString(hole.level());
    return switch (method) {
      case Method.Guided _ -> throw new IllegalArgumentException("holes of a guide are not marked");
      case Method.Marked marked ->
          marked
              .gang(hole.bay())
              .map(gang -> onLine(marked.how(), hole, side))
              .orElseGet(() -> marked(marked.how(), hole, row));
      case Method.Programmed _ ->
          List.of(book.normal(CauseKind.SEAT, side), book.normal(CauseKind.MACHINE, hole.text()));
      case Method.Grooved _, Method.ScrewedOn _ ->
          List.of(book.normal(CauseKind.CUT, row), book.normal(CauseKind.SLOT, hole.text()));
      case Method.Blanks blanks -> {
        List<Term> terms = new ArrayList<>(bored(blanks.how(), side + " " + level));
        terms.add(book.normal(CauseKind.SEAT, row));
        yield terms;
      }
    };
  }

  /** The stick is laid on anew for each row; its marks are the same for all. */
  private List<Term> marked(Method.How how, Hole hole, String row) {
    List<Term> terms = new ArrayList<>();
    terms.add(book.normal(CauseKind.SEAT, row));
    String mark = "bay " + hole.bay() + " level " + hole.level();
    terms.add(book.normal(CauseKind.STICK, mark));
    terms.addAll(bored(how, hole.text()));
    return terms;
  }

  /**
   * On a line squared across both uprights of the bay. How a panel lies at the stop is common to
   * all its holes, the mark and the line to the level; the line rises from one outer edge to the
   * other.
   */
  private List<Term> onLine(Method.How how, Hole hole, String side) {
    List<Term> terms = new ArrayList<>();
    terms.add(book.normal(CauseKind.SEAT, side));
    String mark = "bay " + hole.bay() + " level " + hole.level();
    terms.add(book.normal(CauseKind.STICK, mark));
    Term slope = book.normal(CauseKind.SQUARE, "bay " + hole.bay());
    terms.add(new Term(slope.cause(), fromJoint(hole)));
    switch (how) {
      case BY_HAND -> {
        terms.add(book.normal(CauseKind.MARK, mark));
        terms.add(book.normal(CauseKind.PUNCH, hole.text()));
        terms.add(book.normal(CauseKind.WANDER, hole.text()));
      }
      case DRILL_PRESS -> terms.add(book.normal(CauseKind.PRESS, hole.text()));
    }
    return terms;
  }

  /**
   * How far a row lies from the joint of two panels side by side, front edges together, to the
   * right: as a share of both their widths.
   */
  private double fromJoint(Hole hole) {
    BaySpace bay = built.bays().get(hole.bay() - 1);
    Box left = built.part(bay.left()).box();
    Box right = built.part(bay.right()).box();
    boolean onLeft = Hole.sideOf(hole.point()).equals("left");
    Length fromFront =
        row(hole, onLeft ? Face.RIGHT : Face.LEFT).minus((onLeft ? left : right).at(Face.FRONT));
    double share = fromFront.mm() / left.size(Axis.Y).plus(right.size(Axis.Y)).mm();
    return onLeft ? -share : share;
  }

  private Length row(Hole hole, Face inside) {
    return grids.stream()
        .filter(g -> g.bay() == hole.bay())
        .flatMap(g -> g.rows().stream())
        .filter(r -> Hole.point(inside, r.name()) == hole.point())
        .map(Row::y)
        .findFirst()
        .orElseThrow();
  }

  /** Of what is bored at one mark: a hole, or the notches of both strips of a blank. */
  private List<Term> bored(Method.How how, String which) {
    return switch (how) {
      case BY_HAND ->
          List.of(book.normal(CauseKind.MARK, which), book.normal(CauseKind.WANDER, which));
      case DRILL_PRESS -> List.of(book.normal(CauseKind.PRESS, which));
    };
  }

  /** The stretch of standard or strip that a level lies in; 0 for the first, and for pins. */
  private static int run(BayGrid grid, Level level) {
    int run = 0;
    for (int i = 0; i < grid.runs().size(); i++) {
      run = grid.runs().get(i).bottom().isLessThan(level.height()) ? i : run;
    }
    return run;
  }
}
