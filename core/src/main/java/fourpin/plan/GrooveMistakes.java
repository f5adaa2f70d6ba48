package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.Removal.Block;
import fourpin.bench.Span;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.casework.BuiltCase;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What goes wrong while grooves for standards are cut, tried on the virtual bench: the first panel
 * with grooves, and for a second left side the right one.
 */
final class GrooveMistakes {

  private final BuiltCase built;
  private final LengthStyle style;
  private final List<Step> steps;
  private final BenchRun right;

  GrooveMistakes(BuiltCase built, LengthStyle style, List<Step> steps) {
    this.built = built;
    this.style = style;
    this.steps = steps;
    this.right = VirtualBench.run(steps);
  }

  List<MistakeReport> reports() {
    List<Step.Passes> all =
        steps.stream().filter(s -> s instanceof Step.Passes).map(s -> (Step.Passes) s).toList();
    if (all.isEmpty()) {
      return List.of();
    }
    Step.Passes first = all.getFirst();
    List<MistakeReport> reports = new ArrayList<>();
    reports.add(wrongEdge(first));
    String last = built.bays().getLast().right();
    all.stream()
        .filter(p -> p.piece().equals(last))
        .findFirst()
        .map(this::secondLeft)
        .ifPresent(reports::add);
    reports.add(tooDeep(first));
    passLeftOut(first).ifPresent(reports::add);
    return reports;
  }

  /** The steps with all passes of a piece, or one groove of it, cut otherwise. */
  private WorkedPiece made(String piece, Function<Step.Passes, Step> change) {
    List<Step> done =
        steps.stream()
            .map(s -> s instanceof Step.Passes p && p.piece().equals(piece) ? change.apply(p) : s)
            .toList();
    return Objects.requireNonNull(VirtualBench.run(done).pieces().get(piece));
  }

  private static Function<Step.Passes, Step> only(
      Step.Passes one, Function<Step.Passes, Step> change) {
    return p -> p.equals(one) ? change.apply(p) : p;
  }

  private static Step.Passes with(Step.Passes p, Surface surface, List<Step.Pass> passes) {
    return new Step.Passes(p.piece(), p.shape(), surface, p.along(), p.cut(), passes, p.purpose());
  }

  /** The groove of a row on one surface. */
  private static Optional<Block> groove(WorkedPiece piece, String purpose, Surface surface) {
    return grooves(piece).stream()
        .filter(b -> b.purpose().equals(purpose) && b.surface() == surface)
        .findFirst();
  }

  private static List<Block> grooves(WorkedPiece piece) {
    return piece.removals().stream().filter(r -> r instanceof Block).map(r -> (Block) r).toList();
  }

  private WorkedPiece wanted(Step.Passes passes) {
    return Objects.requireNonNull(right.pieces().get(passes.piece()));
  }

  private Block wantedGroove(Step.Passes passes) {
    return groove(wanted(passes), passes.purpose(), passes.surface()).orElseThrow();
  }

  private MistakeFigures figures(GrooveMistake mistake) {
    return new MistakeFigures(built.order().name(), mistake, style, built.order().settings());
  }

  private MistakeReport wrongEdge(Step.Passes first) {
    Length width = wanted(first).width();
    WorkedPiece made =
        made(
            first.piece(),
            only(
                first,
                p ->
                    with(
                        p,
                        p.surface(),
                        p.passes().stream()
                            .map(
                                f ->
                                    new Step.Pass(width.minus(f.fence()).minus(p.cut()), f.depth()))
                            .toList())));
    Span should = wantedGroove(first).width();
    Span is = groove(made, first.purpose(), first.surface()).orElseThrow().width();
    boolean other =
        grooves(wanted(first)).stream()
            .anyMatch(b -> b.surface() == first.surface() && b.width().equals(is));
    MistakeFigures figures = figures(GrooveMistake.WRONG_EDGE);
    String right =
        figures.measured("test-right", "near wall from the index edge, as wanted", should.from());
    String wrong = figures.measured("test-wrong", "the same with the mistake", is.from());
    return figures.report(
        first.piece(),
        say(
            "The groove for %s in %s is cut with the fence along the far edge.",
            first.purpose(), first.piece()),
        is.equals(should)
            ? "Nothing: the row lies as far from either edge."
            : say(
                "Its near wall lies %s from the index edge instead of %s: at every level the clips"
                    + " of that row are as far out of line with the other panels.",
                wrong, right),
        say(
            "Measure from the index edge to the near wall of the groove: %s; %s would be this"
                + " mistake.",
            right, wrong),
        is.equals(should) || other ? Rescue.NOT_NEEDED : patched(first, is),
        is.equals(should)
            ? "The panel is as wanted."
            : other
                ? "It lies where the groove of another row belongs: cut the one that is missing."
                : patch(figures, first, is));
  }

  private static boolean meet(Span a, Span b) {
    return a.from().isLessThan(b.to()) && b.from().isLessThan(a.to());
  }

  /**
   * The wood between a groove and the nearest cut that the panel is to have; below zero if none.
   */
  private Length wood(Step.Passes first, Span is) {
    Block groove = wantedGroove(first);
    return grooves(wanted(first)).stream()
        .filter(b -> meet(b.length(), groove.length()) && meet(b.thickness(), groove.thickness()))
        .map(b -> Length.max(b.width().from().minus(is.to()), is.from().minus(b.width().to())))
        .min(Length::compareTo)
        .orElseThrow();
  }

  private Rescue patched(Step.Passes first, Span is) {
    return wood(first, is).isLessThan(setting(Setting.LEAST_EDGE))
        ? Rescue.PLUG
        : Rescue.BORE_AGAIN;
  }

  private String patch(MistakeFigures figures, Step.Passes first, Span is) {
    Length wood = wood(first, is);
    String left =
        figures.length(
            "wood-between",
            "wood between the wrong groove and the nearest cut",
            wood,
            "measured on the virtual panel, not less than m for a groove beside it",
            figures.input("m", Setting.LEAST_EDGE));
    return patched(first, is) == Rescue.BORE_AGAIN
        ? say(
            "Cut the right groove as well: %s of wood stays between all. Glue a strip into the wrong"
                + " one if it offends.",
            left)
        : say(
            "Glue a strip of the same wood into the wrong groove, plane it flush and let it dry before"
                + " more is cut: %s.",
            wood.isPositive()
                ? say("only %s of wood lies between it and the next cut", left)
                : "it runs into another cut");
  }

  private MistakeReport secondLeft(Step.Passes first) {
    String piece = first.piece();
    WorkedPiece made =
        made(
            piece,
            p -> with(p, p.surface() == Surface.FACE ? Surface.REVERSE : Surface.FACE, p.passes()));
    Block should = wantedGroove(first);
    Length web = wanted(first).thickness().minus(should.thickness().size().times(2));
    boolean stays = web.isAtLeast(setting(Setting.LEAST_WEB));
    MistakeFigures figures = figures(GrooveMistake.SECOND_LEFT);
    return figures.report(
        first.piece(),
        say("%s is grooved as a second left side, on the face that looks out of the case.", piece),
        say(
            "All %d grooves are cut into %s, none into %s: no shelf finds a standard on this side at"
                + " any level.",
            figures.count(
                "grooves",
                "grooves of the panel",
                (int) grooves(made).stream().filter(this::isRow).count(),
                "counted"),
            grooves(made).stream().filter(this::isRow).findFirst().orElseThrow().surface().words(),
            should.surface().words()),
        "Lay both sides down with their grooves up, index ends on one line and index edges together:"
            + " they are mirror images, and the joints are cut on the faces with the grooves.",
        stays ? Rescue.BORE_AGAIN : Rescue.PLUG,
        stays
            ? say(
                "Cut the right face as well: %s of wood stays between the grooves. Glue strips into"
                    + " those on the outside if they are seen.",
                figures.length(
                    "web",
                    "wood between grooves in both faces",
                    web,
                    "t - 2 d",
                    MistakeFigures.input("t", "thickness of the panel", wanted(first).thickness()),
                    MistakeFigures.input("d", "depth of the grooves", should.thickness().size()),
                    figures.input("m", Setting.LEAST_WEB)))
            : "Glue strips into all wrong grooves, let them dry, and cut the right face: between"
                + " empty grooves too little wood would be left. The strips show on the outside.");
  }

  private boolean isRow(Block block) {
    return steps.stream()
        .anyMatch(s -> s instanceof Step.Passes p && p.purpose().equals(block.purpose()));
  }

  private MistakeReport tooDeep(Step.Passes first) {
    Length slip = setting(Setting.STOP_SLIP);
    WorkedPiece made = made(first.piece(), p -> with(p, p.surface(), deeper(p, slip)));
    Optional<Block> groove = groove(made, first.purpose(), first.surface());
    Length depth = wantedGroove(first).thickness().size().plus(slip);
    Length left = wanted(first).thickness().minus(depth);
    boolean lost = groove.isEmpty() || !left.isPositive() || meetsTheOtherFace(made);
    MistakeFigures figures = figures(GrooveMistake.TOO_DEEP);
    String slipped = figures.set("slip", Setting.STOP_SLIP);
    String wanted = figures.measured("depth", "depth of the grooves as wanted", depth.minus(slip));
    return figures.report(
        first.piece(),
        say("The depth slips and lets the cutter %s deeper.", slipped),
        groove.isEmpty()
            ? "The cutter goes right through the panel."
            : say(
                "Every groove is %s deep instead of %s: all along, at every level, the standard lies"
                    + " %s below the face, and shelves have as much more play between their clips.",
                figures.measured(
                    "made-depth",
                    "depth of the grooves with the mistake",
                    groove.get().thickness().size()),
                wanted,
                slipped),
        say(
            "Lay an offcut of the standard into the first and the last of the groove: it is flush."
                + " The groove is %s deep.",
            wanted),
        lost ? Rescue.LOST : Rescue.USE,
        lost
            ? "The grooves come out on the other face or meet those of the other bay: make the panel"
                + " anew."
            : say(
                "Glue a strip of veneer or card %s thick into the groove before the standard; %s of"
                    + " wood is left behind it.",
                slipped,
                figures.length(
                    "reserve",
                    "wood left behind the groove",
                    left,
                    "t - d - s",
                    MistakeFigures.input("t", "thickness of the panel", wanted(first).thickness()),
                    MistakeFigures.input("d", "depth of the grooves as wanted", depth.minus(slip)),
                    figures.input("s", Setting.STOP_SLIP))));
  }

  private static List<Step.Pass> deeper(Step.Passes passes, Length slip) {
    Length deepest =
        passes.passes().stream().map(Step.Pass::depth).reduce(Length::max).orElseThrow();
    return passes.passes().stream()
        .map(f -> f.depth().equals(deepest) ? new Step.Pass(f.fence(), deepest.plus(slip)) : f)
        .toList();
  }

  /** Grooves from both faces of a partition. */
  private boolean meetsTheOtherFace(WorkedPiece made) {
    List<Block> rows = grooves(made).stream().filter(this::isRow).toList();
    return rows.stream()
        .anyMatch(
            a ->
                rows.stream()
                    .anyMatch(
                        b ->
                            a.surface() != b.surface()
                                && meet(a.width(), b.width())
                                && meet(a.length(), b.length())
                                && meet(a.thickness(), b.thickness())));
  }

  /** The last setting of the fence, or the last depth where there is one setting. */
  private Optional<MistakeReport> passLeftOut(Step.Passes first) {
    Step.Pass last = first.passes().getLast();
    boolean beside = first.passes().stream().map(Step.Pass::fence).distinct().count() > 1;
    List<Step.Pass> rest =
        first.passes().stream()
            .filter(f -> beside ? !f.fence().equals(last.fence()) : !f.depth().equals(last.depth()))
            .toList();
    if (rest.isEmpty()) {
      return Optional.empty();
    }
    WorkedPiece made = made(first.piece(), only(first, p -> with(p, p.surface(), rest)));
    Block should = wantedGroove(first);
    Optional<Block> is = groove(made, first.purpose(), first.surface());
    MistakeFigures figures = figures(GrooveMistake.PASS_LEFT_OUT);
    String pass =
        beside
            ? figures.measured("pass", "fence of the pass that is left out", last.fence())
            : figures.measured("pass", "depth of the pass that is left out", last.depth());
    return Optional.of(
        figures.report(
            first.piece(),
            beside
                ? say("The pass with the fence at %s is left out.", pass)
                : say("The pass %s deep is left out.", pass),
            is.map(b -> narrower(figures, should, b)).orElse("A ridge stays in the groove.")
                + " The standard does not go home anywhere along the row.",
            say(
                "An offcut of the standard goes in by hand, flush, at both ends and in the middle: the"
                    + " groove is %s wide and %s deep.",
                figures.measured("width", "width of the groove", should.width().size()),
                figures.measured("depth", "depth of the groove", should.thickness().size())),
            Rescue.BORE_AGAIN,
            beside
                ? say("Nothing is spoilt: make the pass with the fence at %s.", pass)
                : say("Nothing is spoilt: make the pass %s deep.", pass)));
  }

  private static String narrower(MistakeFigures figures, Block should, Block is) {
    Length width = should.width().size().minus(is.width().size());
    Length depth = should.thickness().size().minus(is.thickness().size());
    return width.isPositive()
        ? say(
            "The groove is %s narrower than wanted.",
            figures.measured("off", "how much narrower the groove is", width))
        : say(
            "The groove is %s shallower than wanted.",
            figures.measured("off", "how much shallower the groove is", depth));
  }

  private Length setting(Setting setting) {
    return built.order().settings().length(setting);
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
