package fourpin.trials;

import fourpin.boring.tolerance.CauseKind;
import fourpin.boring.tolerance.ErrorModel;
import fourpin.boring.tolerance.ErrorModel.Cause;
import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.ErrorModel.Shape;
import fourpin.boring.tolerance.ErrorModel.Term;
import java.util.ArrayList;
import java.util.List;

/**
 * The errors of a bookcase bored by router through one guide, a clamping for each row: the guide's
 * holes, clampings, wander and slip in each hole, and pins that are a little loose.
 */
final class Bookcase {

  static final int BAYS = 3;
  static final int CORNERS = 4;

  // Millimetres; like the defaults of the settings.
  private static final double GUIDE_HOLE = 0.2;
  private static final double SEAT = 0.1;
  private static final double WANDER = 0.05;
  private static final double SLIP = 0.1;
  private static final double PIN = 0.03;

  private final List<Cause> causes = new ArrayList<>();

  private Bookcase() {}

  static ErrorModel of(int levels) {
    return new Bookcase().model(levels);
  }

  private ErrorModel model(int levels) {
    List<Term> guideHoles = new ArrayList<>();
    for (int level = 0; level < levels; level++) {
      guideHoles.add(term(CauseKind.GUIDE_HOLE, Shape.NORMAL, GUIDE_HOLE));
    }
    List<Position> positions = new ArrayList<>();
    for (int bay = 1; bay <= BAYS; bay++) {
      List<Term> seats = new ArrayList<>();
      for (int corner = 0; corner < CORNERS; corner++) {
        seats.add(term(CauseKind.SEAT, Shape.NORMAL, SEAT));
      }
      for (int level = 0; level < levels; level++) {
        positions.add(position(bay, level + 1, guideHoles.get(level), seats));
      }
    }
    return new ErrorModel(causes, positions);
  }

  private Position position(int bay, int level, Term guideHole, List<Term> seats) {
    List<List<Term>> holes = seats.stream().map(seat -> hole(guideHole, seat)).toList();
    return Position.of(bay, level, holes.get(0), holes.get(1), holes.get(2), holes.get(3));
  }

  private List<Term> hole(Term guideHole, Term seat) {
    return List.of(
        guideHole,
        seat,
        term(CauseKind.ROUTER, Shape.NORMAL, WANDER),
        term(CauseKind.PLAY, Shape.UNIFORM, SLIP),
        term(CauseKind.PIN, Shape.UNIFORM, PIN));
  }

  private Term term(CauseKind kind, Shape shape, double deviation) {
    causes.add(new Cause(kind, Integer.toString(causes.size()), shape, deviation));
    return new Term(causes.size() - 1, 1);
  }
}
