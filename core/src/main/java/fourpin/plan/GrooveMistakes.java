package fourpin.plan;

import fourpin.bench.Removal.Block;
import fourpin.bench.Span;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.bench.WorkedPiece;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Check;
import fourpin.plan.MistakeReport.Outcome.Spoilt;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * What goes wrong with how a panel lies while grooves for standards are cut, tried on the virtual
 * bench: the first panel with grooves, and for a second left side the right one.
 */
final class GrooveMistakes {

  private final GrooveBench bench;

  GrooveMistakes(GrooveBench bench) {
    this.bench = bench;
  }

  List<MistakeReport> reports() {
    List<Step.Passes> all = bench.passes();
    if (all.isEmpty()) {
      return List.of();
    }
    Step.Passes first = all.getFirst();
    List<MistakeReport> reports = new ArrayList<>();
    reports.add(wrongEdge(first));
    reports.add(panelTurned(first));
    String last = bench.built().bays().getLast().right();
    all.stream()
        .filter(p -> p.piece().equals(last))
        .findFirst()
        .map(this::secondLeft)
        .ifPresent(reports::add);
    reports.addAll(new CutterMistakes(bench).reports(first));
    return reports;
  }

  private static Step fromFarEdge(Step.Passes p, Length width) {
    return GrooveBench.with(
        p,
        p.surface(),
        p.passes().stream()
            .map(f -> new Step.Pass(width.minus(f.fence()).minus(p.cut()), f.depth()))
            .toList());
  }

  private MistakeReport wrongEdge(Step.Passes first) {
    WorkedPiece wanted = bench.wanted(first);
    WorkedPiece made = fromFarEdge(first);
    Span should = bench.wantedGroove(first).width();
    Span is = GrooveBench.groove(made, first.purpose(), first.surface()).orElseThrow().width();
    MistakeFigures figures = bench.figures(GrooveMistake.WRONG_EDGE);
    String what =
        say(
            "The groove for %s in %s is cut with the fence along the far edge.",
            first.purpose(), first.piece());
    if (is.equals(should)) {
      return figures.harmless(
          first.piece(), what, "the row lies as far from either edge", "The panel is as wanted.");
    }
    Check check = fromEdge(first, made);
    String test =
        figures.test(check)
            + beside(
                first, row -> figures.likewise(check, fromEdge(row, fromFarEdge(row)), row(row)));
    boolean other =
        GrooveBench.grooves(wanted).stream()
            .anyMatch(b -> b.surface() == first.surface() && b.width().equals(is));
    return figures.report(
        first.piece(),
        new Spoilt(wanted, made, check),
        what,
        say(
            "Its near wall lies %s out of line with the other panels. At every shelf alike, lowest %s:"
                + " its clips do not stand where it has its end.",
            figures.measured(
                "off", "how far the wall is off", is.from().minus(should.from()).abs()),
            bench.lowestShelf(first, figures)),
        test,
        other ? Rescue.NOT_NEEDED : patched(first, is),
        other
            ? "It lies where the groove of another row belongs: cut the one that is missing."
            : patch(figures, first, is));
  }

  /** The groove of one row alone. */
  private WorkedPiece fromFarEdge(Step.Passes one) {
    Length width = bench.wanted(one).width();
    return bench.made(one.piece(), GrooveBench.only(one, p -> fromFarEdge(p, width)));
  }

  private Check fromEdge(Step.Passes one, WorkedPiece made) {
    return new Check(
        say(
            "from %s to the near wall of the groove for %s",
            bench.names(one).indexEdge(), one.purpose()),
        bench.wantedGroove(one).width().from(),
        GrooveBench.groove(made, one.purpose(), one.surface()).map(b -> b.width().from()));
  }

  /** What is said of the other rows of a bay in the same face, each once. */
  private String beside(Step.Passes first, Function<Step.Passes, String> words) {
    List<String> seen = new ArrayList<>(List.of(first.purpose()));
    StringBuilder all = new StringBuilder();
    for (Step.Passes other : bench.passes()) {
      boolean isBeside =
          other.piece().equals(first.piece())
              && other.surface() == first.surface()
              && bench.isOneBay(first, other);
      if (isBeside && !seen.contains(other.purpose())) {
        seen.add(other.purpose());
        all.append(words.apply(other));
      }
    }
    return all.toString();
  }

  /** "back row". */
  private static String row(Step.Passes passes) {
    return passes.purpose().split(", ", 3)[1];
  }

  /**
   * The wood between a groove and the nearest cut that the panel is to have; below zero if none.
   */
  private Length wood(Step.Passes first, Span is) {
    Block groove = bench.wantedGroove(first);
    return GrooveBench.grooves(bench.wanted(first)).stream()
        .filter(b -> b.length().meets(groove.length()) && b.thickness().meets(groove.thickness()))
        .map(b -> Length.max(b.width().from().minus(is.to()), is.from().minus(b.width().to())))
        .min(Length::compareTo)
        .orElseThrow();
  }

  private Rescue patched(Step.Passes first, Span is) {
    return wood(first, is).isLessThan(bench.setting(Setting.LEAST_EDGE))
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

  /** Every stretch is measured from the far end. */
  private MistakeReport panelTurned(Step.Passes first) {
    WorkedPiece wanted = bench.wanted(first);
    WorkedPiece made = bench.made(first.piece(), p -> p.with(turned(p.along(), wanted.length())));
    List<Span> should = stretches(wanted, first);
    List<Span> is = stretches(made, first);
    MistakeFigures figures = bench.figures(GrooveMistake.PANEL_TURNED);
    String what =
        say(
            "%s lies turned end for end: where grooves start and stop is measured from its far end.",
            first.piece());
    if (should.equals(is)) {
      return figures.harmless(
          first.piece(),
          what,
          "the grooves are the same from both ends",
          "The panel is as wanted.");
    }
    Check check = ends(first, should, is);
    return figures.report(
        first.piece(),
        new Spoilt(wanted, made, check),
        what,
        say(
            "The grooves start and stop elsewhere, and no standard goes to its height. At every shelf"
                + " alike, lowest %s: its clips lie off on this side.",
            bench.lowestShelf(first, figures)),
        figures.test(check),
        Rescue.PLUG,
        "Cut what is missing; glue a strip of the same wood into what is too long and trim it to the"
            + " joint that it runs into.");
  }

  private static Span turned(Span along, Length length) {
    return new Span(length.minus(along.to()), length.minus(along.from()));
  }

  private static List<Span> stretches(WorkedPiece piece, Step.Passes first) {
    return GrooveBench.grooves(piece).stream()
        .filter(b -> b.purpose().equals(first.purpose()) && b.surface() == first.surface())
        .map(Block::length)
        .sorted(Comparator.comparing(Span::from))
        .toList();
  }

  /** The lower end of the lowest stretch, or the upper end of the highest where that is right. */
  private Check ends(Step.Passes first, List<Span> should, List<Span> is) {
    boolean low = !should.getFirst().from().equals(is.getFirst().from());
    return new Check(
        say(
            "from %s to the %s end of the groove for %s",
            bench.names(first).indexEnd(), low ? "lowest" : "highest", first.purpose()),
        low ? should.getFirst().from() : should.getLast().to(),
        Optional.of(low ? is.getFirst().from() : is.getLast().to()));
  }

  private MistakeReport secondLeft(Step.Passes first) {
    String piece = first.piece();
    WorkedPiece wanted = bench.wanted(first);
    WorkedPiece made = bench.made(piece, p -> GrooveBench.with(p, other(p.surface()), p.passes()));
    Block should = bench.wantedGroove(first);
    Block is = GrooveBench.groove(made, first.purpose(), other(first.surface())).orElseThrow();
    RowNames names = bench.names(first);
    PieceLayout layout = PieceLayout.of(names.part());
    String hand = Lying.hand(names.part(), layout.looking(first.surface())).word();
    MistakeFigures figures = bench.figures(GrooveMistake.SECOND_LEFT);
    Check check = fromHand(first, made, hand);
    return figures.report(
        piece,
        new Spoilt(wanted, made, check),
        say("%s is grooved as a second left side, on the face that looks out of the case.", piece),
        say(
            "All %d grooves are cut into %s, none into %s. At every shelf alike, lowest"
                + " %s: it finds no standard on this side.",
            figures.count("grooves", "grooves of the panel", bench.rows(made).size(), "counted"),
            is.surface().words(),
            should.surface().words(),
            bench.lowestShelf(first, figures)),
        say(
                "Before %s is grooved: “%s” is written on the face that lies up, and with %s towards you"
                    + " %s lies on your %s. ",
                piece,
                RowNames.written(layout.looking(first.surface())).toUpperCase(Locale.ROOT),
                names.indexEnd(),
                names.indexEdge(),
                hand)
            + figures.test(check)
            + beside(first, row -> figures.likewise(check, fromHand(row, made, hand), row(row))),
        stays(first) ? Rescue.BORE_AGAIN : Rescue.PLUG,
        otherFace(figures, first));
  }

  private Check fromHand(Step.Passes one, WorkedPiece made, String hand) {
    return new Check(
        say("from the edge on your %s to the near wall of the groove for %s", hand, one.purpose()),
        bench.wantedGroove(one).width().from(),
        GrooveBench.groove(made, one.purpose(), other(one.surface()))
            .map(b -> made.width().minus(b.width().to())));
  }

  private static Surface other(Surface surface) {
    return surface == Surface.FACE ? Surface.REVERSE : Surface.FACE;
  }

  private Length web(Step.Passes first) {
    Length depth = bench.wantedGroove(first).thickness().size();
    return bench.wanted(first).thickness().minus(depth.times(2));
  }

  private boolean stays(Step.Passes first) {
    return web(first).isAtLeast(bench.setting(Setting.LEAST_WEB));
  }

  private String otherFace(MistakeFigures figures, Step.Passes first) {
    return stays(first)
        ? say(
            "Cut the right face as well: %s of wood stays between the grooves. Glue strips into"
                + " those on the outside if they are seen.",
            figures.length(
                "web",
                "wood between grooves in both faces",
                web(first),
                "t - 2 d",
                MistakeFigures.input(
                    "t", "thickness of the panel", bench.wanted(first).thickness()),
                MistakeFigures.input(
                    "d", "depth of the grooves", bench.wantedGroove(first).thickness().size()),
                figures.input("m", Setting.LEAST_WEB)))
        : "Glue strips into all wrong grooves, let them dry, and cut the right face: between"
            + " empty grooves too little wood would be left. The strips show on the outside.";
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
