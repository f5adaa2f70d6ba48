package fourpin.boring.tolerance;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.tolerance.ErrorModel.Term;
import fourpin.boring.tolerance.Miss.Point;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Clamping.Step;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Method;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The errors of holes that are bored through a guide, clamping by clamping in the order of work.
 *
 * <p>A hole misses by what the guide's zero misses, by the place of the guide's hole, by the play
 * of what runs in it and by what the bit wanders. The zero misses by how the block lies on the
 * guide and against the end and by the spacer; once the guide is moved along, by all that the hole
 * missed which the locating pin goes into, by the slip of the pin in both holes, by what its
 * thicknesses are out of line, and by the guide's hole that the pin goes through, with its sign
 * turned. Rows are stepped apart, each by fits of the pin of its own.
 *
 * <p>The block is two battens, one on either side of the guide, each with an error of its own. The
 * one on the side that lies on the panel bears on its end: so both rows of a side share it, and the
 * left and the right side of a bay, for which the guide is turned over, do not. It stays the same
 * until the block comes off, where the guide is moved along; screwed on again, both battens miss
 * anew.
 */
final class GuidedErrors {

  private static final double PER_WEAR = 100;

  private final BuiltCase built;
  private final Method.Guided guided;
  private final Way way;
  private final Alteration alteration;
  private final CauseBook book;
  private final Settings settings;
  private final Map<Integer, Map<Length, Integer>> levels = new HashMap<>();
  private final Map<Integer, Integer> uses = new HashMap<>();
  private final Map<String, List<Term>> moves = new HashMap<>();
  private final Map<String, Integer> blockFits = new HashMap<>();
  private final Set<String> blockCameOff = new HashSet<>();
  private final Map<Hole, List<Term>> errors = new LinkedHashMap<>();

  GuidedErrors(
      BuiltCase built,
      List<BayGrid> grids,
      Way way,
      Method.Guided guided,
      Alteration alteration,
      CauseBook book) {
    this.built = built;
    this.guided = guided;
    this.way = way;
    this.alteration = alteration;
    this.book = book;
    this.settings = built.order().settings();
    for (BayGrid grid : grids) {
      Map<Length, Integer> heights = new HashMap<>();
      grid.levels().forEach((Level level) -> heights.put(level.height(), level.number()));
      levels.put(grid.bay(), heights);
    }
  }

  /** By hole, without the fit of the pin that the shelf lies on. */
  Map<Hole, List<Term>> errors() {
    for (int copy = 1; copy < built.order().quantity(); copy++) {
      guided.clampings().forEach(this::wearOnly);
    }
    for (int i = 0; i < guided.clampings().size(); i++) {
      bore(guided.clampings().get(i), Integer.toString(i + 1));
    }
    return errors;
  }

  private void wearOnly(Clamping clamping) {
    clamping.reaches().forEach(reach -> reach.holes().forEach(this::use));
  }

  private int use(int number) {
    return uses.merge(number, 1, Integer::sum) - 1;
  }

  private void bore(Clamping clamping, String name) {
    String lay = laying(clamping, name);
    List<Term> zero = seat(clamping, lay);
    Length up = built.part(clamping.part()).box().at(Face.BOTTOM).plus(clamping.along());
    Map<Integer, List<Term>> before = new HashMap<>();
    for (int place = 0; place < clamping.reaches().size(); place++) {
      Reach reach = clamping.reaches().get(place);
      if (reach.step().isPresent()) {
        Step step = reach.step().get();
        up = up.plus(along(step.into())).minus(along(step.pin()));
        zero = moved(zero, before, step, clamping, lay + "." + place);
        blockCameOff.add(lay);
      }
      before = bored(reach, zero, up, clamping, name + "." + place);
    }
  }

  /** What is laid on once: a row, or all rows of a bay's side where one guide bores them. */
  private String laying(Clamping clamping, String name) {
    return alteration == Alteration.ROWS_TOGETHER
        ? clamping.part() + " " + clamping.face() + " " + clamping.bay()
        : name;
  }

  private Length along(int number) {
    return guided.guide().hole(number).along();
  }

  private List<Term> seat(Clamping clamping, String lay) {
    List<Term> zero = new ArrayList<>();
    zero.add(book.normal(CauseKind.SEAT, lay));
    if (guided.guide().block().isPositive()) {
      zero.add(batten(clamping, lay));
    }
    Length spacer = spacer(clamping);
    if (spacer.isPositive()) {
      String end = isFromTop(clamping) ? " at the upper end" : "";
      zero.add(book.normal(CauseKind.SPACER, spacer + end));
    }
    if (isFromTop(clamping)) {
      zero.add(book.normal(CauseKind.CUT, clamping.part()));
    }
    return zero;
  }

  /** The one that bears on the end; from the top it pushes holes down, and the guide is turned. */
  private Term batten(Clamping clamping, String lay) {
    String fit = guide(clamping) + fit(lay) + " ";
    return isFromTop(clamping)
        ? CauseBook.turned(book.normal(CauseKind.BLOCK, fit + clamping.showing().other()))
        : book.normal(CauseKind.BLOCK, fit + clamping.showing());
  }

  /** How often the block was screwed on again before a guide was laid on. */
  private int fit(String lay) {
    return staysOn() ? 0 : blockFits.computeIfAbsent(lay, _ -> blockCameOff.size());
  }

  private boolean staysOn() {
    return alteration == Alteration.BLOCK_STAYS_ON || alteration == Alteration.WHOLE_LENGTH;
  }

  private static Length spacer(Clamping clamping) {
    return switch (clamping.bearing()) {
      case Bearing.End() -> clamping.along().abs();
      case Bearing.PanelBelow(_, Length spacer) -> spacer;
    };
  }

  /** Rows that are laid on together are moved together, by the pin in the first of them. */
  private List<Term> moved(
      List<Term> zero, Map<Integer, List<Term>> before, Step step, Clamping clamping, String move) {
    if (alteration == Alteration.WHOLE_LENGTH) {
      return zero;
    }
    List<Term> into = before.get(step.into());
    if (into == null) {
      throw new IllegalArgumentException(
          guided.guide().mark() + " is pinned into hole " + step.into() + ", which isn't bored");
    }
    return moves.computeIfAbsent(move, _ -> moved(into, step, clamping, move));
  }

  private List<Term> moved(List<Term> into, Step step, Clamping clamping, String move) {
    List<Term> moved = new ArrayList<>(into);
    moved.add(CauseBook.turned(guideHole(clamping, guided.guide().hole(step.pin()), "")));
    double slip = settings.length(Setting.STEP_PIN_SLIP).mm();
    double worn = worn(uses.getOrDefault(step.pin(), 0));
    moved.add(book.uniform(CauseKind.STEP_IN_GUIDE, move, (slip + worn) / 2));
    moved.add(book.uniform(CauseKind.STEP_IN_HOLE, move, slip / 2));
    if (guided.needsSteppedPin()) {
      moved.add(book.normal(CauseKind.STEP, move));
    }
    return moved;
  }

  /** Bores from one place of the guide. @return errors by the guide's hole */
  private Map<Integer, List<Term>> bored(
      Reach reach, List<Term> zero, Length up, Clamping clamping, String name) {
    Map<Integer, List<Term>> bored = new HashMap<>();
    for (int number : reach.holes()) {
      GuideHole hole = guided.guide().hole(number);
      List<Term> terms = new ArrayList<>(zero);
      terms.add(guideHole(clamping, hole, name));
      terms.add(book.uniform(CauseKind.PLAY, name + "." + number, play(hole, use(number)) / 2));
      terms.add(book.normal(wander(), name + "." + number));
      bored.put(number, terms);
      enter(clamping, up.plus(hole.along()), terms);
    }
    return bored;
  }

  /** Turned end for end, a guide's errors change their signs, and other holes come to a level. */
  private Term guideHole(Clamping clamping, GuideHole hole, String place) {
    String other =
        switch (alteration) {
          case ROWS_TOGETHER -> clamping.row() + " ";
          case WHOLE_LENGTH -> placeOf(place);
          default -> guide(clamping);
        };
    if (isFromTop(clamping)) {
      int mirrored = guided.guide().holes().size() + 1 - hole.number();
      return CauseBook.turned(guideHole(Integer.toString(mirrored)));
    }
    return guideHole(other + hole.number());
  }

  /** Which guide it is: another has holes and a block of its own. */
  private String guide(Clamping clamping) {
    return switch (alteration) {
      case SECOND_GUIDE_RIGHT -> isRight(clamping) ? "second guide " : "";
      case ONE_ROW_NEW_GUIDE -> isLastRow(clamping) ? "second guide " : "";
      default -> "";
    };
  }

  /** A longer guide has holes of its own where the shorter one was moved to. */
  private static String placeOf(String name) {
    return name.substring(name.indexOf('.') + 1) + " ";
  }

  private Term guideHole(String which) {
    return book.normal(CauseKind.GUIDE_HOLE, which);
  }

  private boolean isFromTop(Clamping clamping) {
    return switch (alteration) {
      case RIGHT_FROM_TOP -> isRight(clamping);
      case ONE_ROW_FROM_TOP -> isLastRow(clamping);
      default -> false;
    };
  }

  /** Whether the row stands at the right of its bay. */
  private static boolean isRight(Clamping clamping) {
    return clamping.face() == Face.LEFT;
  }

  private static boolean isLastRow(Clamping clamping) {
    return isRight(clamping) && clamping.row() == Row.Name.BACK;
  }

  /** Clearance of what runs in the guide's hole, mm. */
  private double play(GuideHole hole, int usesBefore) {
    return hole.diameter().minus(guided.bit().runs()).mm() + worn(usesBefore);
  }

  /** How much wider a hole of the guide is after some uses, mm. */
  private double worn(int uses) {
    double worn = alteration == Alteration.SLEEVED ? 0 : uses * settings.number(wear()) / PER_WEAR;
    return Math.min(worn, settings.number(Setting.WEAR_LIMIT));
  }

  private Setting wear() {
    return switch (way) {
      case HARDBOARD_STRIP -> Setting.WEAR_BIT;
      case STEEL_STRAP -> Setting.WEAR_STEEL;
      default -> Setting.WEAR_NOSE;
    };
  }

  private CauseKind wander() {
    return way == Way.ROUTER_GUIDE ? CauseKind.ROUTER : CauseKind.WANDER;
  }

  private void enter(Clamping clamping, Length height, List<Term> terms) {
    Integer level = levels.getOrDefault(clamping.bay(), Map.of()).get(height);
    if (level != null) {
      Point point = Hole.point(clamping.face(), clamping.row());
      errors.put(new Hole(clamping.bay(), level, point), terms);
    }
  }
}
