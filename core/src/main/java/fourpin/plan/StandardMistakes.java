package fourpin.plan;

import fourpin.bench.Removal;
import fourpin.bench.Spacing;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Run;
import fourpin.casework.BuiltCase;
import fourpin.job.Support.Standards;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.MistakeReport.Check;
import fourpin.plan.MistakeReport.Outcome.Spoilt;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What goes wrong with the standards of a bay themselves: the lowest one of its first row is cut
 * and stood up on the virtual bench.
 */
final class StandardMistakes {

  private static final String STANDARD = "standard";

  private final BuiltCase built;
  private final LengthStyle style;
  private final BayGrid grid;
  private final Standards standards;
  private final Run run;
  private final Length length;

  private StandardMistakes(
      BuiltCase built, LengthStyle style, BayGrid grid, Standards standards, Run run) {
    this.built = built;
    this.style = style;
    this.grid = grid;
    this.standards = standards;
    this.run = run;
    this.length =
        new StandardCut(built.order().settings(), style).pieces(run, standards).getFirst();
  }

  /** For the first bay of a case that has levels on standards. */
  static List<MistakeReport> of(BuiltCase built, LengthStyle style, List<BayGrid> grids) {
    for (BayGrid grid : grids) {
      if (grid.support() instanceof Standards standards && !grid.levels().isEmpty()) {
        return new StandardMistakes(built, style, grid, standards, grid.runs().getFirst())
            .reports();
      }
    }
    return List.of();
  }

  private List<MistakeReport> reports() {
    Made wanted = made(Surface.INDEX_END, Surface.INDEX_END);
    List<MistakeReport> reports = new ArrayList<>();
    if (wanted.slots().isEmpty()) {
      return reports;
    }
    reports.add(turned(wanted, made(Surface.INDEX_END, Surface.FAR_END)));
    if (standards.soldIn().isMoreThan(length)) {
      reports.add(cut(wanted, made(Surface.FAR_END, Surface.INDEX_END)));
    }
    return reports;
  }

  /**
   * A standard as it was cut and stands.
   *
   * @param slots above the foot of the case, rising
   */
  private record Made(WorkedPiece piece, List<Length> slots) {}

  /**
   * @param kept end that the length is measured from: the numbered one is the index end
   * @param down end that stands on the panel below
   */
  private Made made(Surface kept, Surface down) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step.CutToSize(
            STANDARD, STANDARD, standards.soldIn(), standards.width(), standards.thickness()));
    steps.add(slots());
    if (standards.soldIn().isMoreThan(length)) {
      steps.add(new Step.Crosscut(STANDARD, kept, length));
    }
    steps.add(
        new Step.MarkSurfaces(
            STANDARD,
            Map.of(
                Surface.INDEX_END, down == Surface.INDEX_END ? "bottom" : "top",
                Surface.INDEX_EDGE, "front",
                Surface.FACE, "right")));
    WorkedPiece piece = Objects.requireNonNull(VirtualBench.run(steps).pieces().get(STANDARD));
    return new Made(piece, heights(piece));
  }

  private List<Length> heights(WorkedPiece piece) {
    PiecePlacer placer =
        new PiecePlacer(piece, corner(run.bottom(), false), corner(run.bottom(), true));
    return piece.removals().stream()
        .map(r -> placer.centre((Removal.Bore) r).low().get(2))
        .map(pm -> new Length(pm, run.bottom().unit()))
        .sorted()
        .toList();
  }

  /** The standard stands with its lower front corner at no place but a height. */
  private long[] corner(Length bottom, boolean high) {
    return high
        ? new long[] {
          standards.thickness().picometres(),
          standards.width().picometres(),
          bottom.plus(length).picometres()
        }
        : new long[] {0, 0, bottom.picometres()};
  }

  /** As it is sold. */
  private Step slots() {
    List<Length> slots = new ArrayList<>();
    for (Length at = standards.firstSlot();
        at.isLessThan(standards.soldIn());
        at = at.plus(standards.slotPitch())) {
      slots.add(at);
    }
    return new Step.BoreRow(
        STANDARD,
        Surface.FACE,
        Step.BoreRow.Line.ALONG,
        standards.width().over(2),
        new Spacing.Each(slots),
        standards.clipThickness(),
        standards.thickness(),
        "slots");
  }

  private MistakeReport turned(Made wanted, Made made) {
    MistakeFigures figures = figures(GrooveMistake.STANDARD_TURNED);
    Check check =
        off(wanted, made).isPresent()
            ? lowest(wanted, made)
            : new Check(
                "from the panel below to the standard's numbered end",
                Length.ZERO.in(length.unit()),
                Optional.of(length));
    return figures.report(
        upright(),
        new Spoilt(wanted.piece(), made.piece(), check),
        say("A standard of bay %d is screwed on with its numbered end up.", grid.bay()),
        shows(figures, wanted, made),
        test(figures, check),
        Rescue.NOT_NEEDED,
        "Nothing is spoilt: unscrew it and turn it over.");
  }

  private MistakeReport cut(Made wanted, Made made) {
    MistakeFigures figures = figures(GrooveMistake.CUT_AT_NUMBERED_END);
    String what = say("A standard of bay %d is cut to length at its numbered end.", grid.bay());
    if (off(wanted, made).isEmpty()) {
      return figures.harmless(
          upright(),
          what,
          "its slots lie right; only their numbers do not",
          "Count its slots from below.");
    }
    Check check = lowest(wanted, made);
    return figures.report(
        upright(),
        new Spoilt(wanted.piece(), made.piece(), check),
        what,
        shows(figures, wanted, made),
        test(figures, check),
        Rescue.USE,
        sawnOff(figures, wanted, made));
  }

  private String sawnOff(MistakeFigures figures, Made wanted, Made made) {
    Length more = above(made).minus(standards.firstSlot()).remainder(standards.slotPitch());
    Length positive = more.isNegative() ? more.plus(standards.slotPitch()) : more;
    boolean reaches =
        !run.bottom().plus(length).minus(positive).isLessThan(wanted.slots().getLast());
    return say(
        "Saw %s more off its lower end: its slots then lie right, counted from below. It ends"
            + " as much lower above%s.",
        figures.length(
            "saw-off",
            "what is sawn off its lower end",
            positive,
            "remainder of (m - f) / p",
            MistakeFigures.input("m", "its lowest slot above the panel", above(made)),
            MistakeFigures.input("f", "numbered end to first slot", standards.firstSlot()),
            MistakeFigures.input("p", "pitch of the slots", standards.slotPitch())),
        reaches ? "" : ", and its highest slot is gone");
  }

  private MistakeFigures figures(GrooveMistake mistake) {
    return new MistakeFigures(built.order().name(), mistake, style, built.order().settings());
  }

  private Length above(Made made) {
    return made.slots().isEmpty()
        ? standards.firstSlot()
        : made.slots().getFirst().minus(run.bottom());
  }

  private Check lowest(Made wanted, Made made) {
    return new Check(
        "from the panel below to the lowest slot of one standard",
        above(wanted),
        Optional.of(above(made)));
  }

  /** The upright at the left of the bay. */
  private String upright() {
    return built.bays().get(grid.bay() - 1).left();
  }

  private String shows(MistakeFigures figures, Made wanted, Made made) {
    String at = ShelfPlace.lowest(grid).words(figures);
    return off(wanted, made)
        .map(
            off ->
                say(
                    "All its slots are %s off those of the others. At every shelf alike, lowest %s:"
                        + " it rocks on this corner.",
                    figures.measured("off", "from its slots to those of the others", off), at))
        .orElseGet(
            () ->
                say(
                    "Its slots lie right; only their numbers do not: whoever puts clips in by number"
                        + " has the corner of every shelf wrong, the lowest %s.",
                    at));
  }

  /** How far the nearest made slot lies from a wanted one; none where they fall together. */
  private static Optional<Length> off(Made wanted, Made made) {
    return made.slots().stream()
        .map(m -> m.minus(wanted.slots().getFirst()).abs())
        .min(Length::compareTo)
        .filter(Length::isPositive);
  }

  private static String test(MistakeFigures figures, Check check) {
    return figures.test(check)
        + " Later the same number stands upright at the bottom of all standards of the bay, and a"
        + " square across two of them touches the same slots.";
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
