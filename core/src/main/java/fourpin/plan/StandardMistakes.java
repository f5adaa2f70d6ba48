package fourpin.plan;

import fourpin.bench.Removal;
import fourpin.bench.Spacing;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Run;
import fourpin.casework.BuiltCase;
import fourpin.job.Support.Standards;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.Comparator;
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
    List<Length> wanted = heights(Surface.INDEX_END, Surface.INDEX_END);
    List<MistakeReport> reports = new ArrayList<>();
    if (wanted.isEmpty()) {
      return reports;
    }
    reports.add(turned(wanted, heights(Surface.INDEX_END, Surface.FAR_END)));
    if (standards.soldIn().isMoreThan(length)) {
      reports.add(cut(wanted, heights(Surface.FAR_END, Surface.INDEX_END)));
    }
    return reports;
  }

  /**
   * Heights of the slots above the foot of the case, rising.
   *
   * @param kept end that the length is measured from: the numbered one is the index end
   * @param down end that stands on the panel below
   */
  private List<Length> heights(Surface kept, Surface down) {
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

  private MistakeReport turned(List<Length> wanted, List<Length> made) {
    MistakeFigures figures = figures(GrooveMistake.STANDARD_TURNED);
    String shows = shows(figures, wanted, made);
    String test = test(figures, wanted, made);
    return figures.report(
        upright(),
        say("A standard of bay %d is screwed on with its numbered end up.", grid.bay()),
        shows,
        test,
        Rescue.NOT_NEEDED,
        "Nothing is spoilt: unscrew it and turn it over.");
  }

  private MistakeReport cut(List<Length> wanted, List<Length> made) {
    Length more = above(made).minus(standards.firstSlot()).remainder(standards.slotPitch());
    Length positive = more.isNegative() ? more.plus(standards.slotPitch()) : more;
    boolean whole = positive.isZero();
    boolean reaches = !run.bottom().plus(length).minus(positive).isLessThan(wanted.getLast());
    MistakeFigures figures = figures(GrooveMistake.CUT_AT_NUMBERED_END);
    String shows = shows(figures, wanted, made);
    String test = test(figures, wanted, made);
    String how =
        whole
            ? "Count its slots from below: only its numbers differ."
            : say(
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
    return figures.report(
        upright(),
        say("A standard of bay %d is cut to length at its numbered end.", grid.bay()),
        shows,
        test,
        Rescue.USE,
        how);
  }

  private MistakeFigures figures(GrooveMistake mistake) {
    return new MistakeFigures(built.order().name(), mistake, style, built.order().settings());
  }

  private Length above(List<Length> made) {
    return made.isEmpty() ? standards.firstSlot() : made.getFirst().minus(run.bottom());
  }

  /** The upright at the left of the bay. */
  private String upright() {
    return built.bays().get(grid.bay() - 1).left();
  }

  private String shows(MistakeFigures figures, List<Length> wanted, List<Length> made) {
    Optional<Length> off = off(wanted, made);
    if (off.isEmpty()) {
      return "Its slots lie right; only their numbers do not.";
    }
    Level first = grid.levels().stream().min(Comparator.comparing(Level::number)).orElseThrow();
    return say(
        "Its lowest slot lies %s above the panel below instead of %s, so that all its slots are %s"
            + " off those of the others. It shows first at level %d of bay %d, for a shelf whose"
            + " underside lies %s above the foot: it rocks on this corner.",
        figures.measured("test-wrong", "lowest slot above the panel below, as made", above(made)),
        figures.measured("test-right", "the same as wanted", above(wanted)),
        figures.measured("off", "from its slots to those of the others", off.get()),
        first.number(),
        grid.bay(),
        figures.measured(
            "shows-at",
            "underside of the shelf that it shows at first, above the foot",
            first.underside()));
  }

  /** How far the nearest made slot lies from a wanted one; none where they fall together. */
  private static Optional<Length> off(List<Length> wanted, List<Length> made) {
    return made.stream()
        .map(m -> m.minus(wanted.getFirst()).abs())
        .min(Length::compareTo)
        .filter(Length::isPositive);
  }

  private String test(MistakeFigures figures, List<Length> wanted, List<Length> made) {
    return say(
        "The same number stands upright at the bottom of all standards of the bay, and a square laid"
            + " across two of them touches the same slots. The lowest slot lies %s above the panel"
            + " below%s.",
        figures.measured("test-right", "the same as wanted", above(wanted)),
        off(wanted, made).isEmpty()
            ? ""
            : say(
                "; %s would be this mistake",
                figures.measured(
                    "test-wrong", "lowest slot above the panel below, as made", above(made))));
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
