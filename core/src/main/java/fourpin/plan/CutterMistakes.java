package fourpin.plan;

import fourpin.bench.Removal.Block;
import fourpin.bench.Step;
import fourpin.bench.WorkedPiece;
import fourpin.job.Setting;
import fourpin.job.Tool;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Check;
import fourpin.plan.MistakeReport.Outcome.Spoilt;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What goes wrong with the cutter of grooves for standards: a pass, the depth, the size. */
final class CutterMistakes {

  private final GrooveBench bench;

  CutterMistakes(GrooveBench bench) {
    this.bench = bench;
  }

  List<MistakeReport> reports(Step.Passes first) {
    List<MistakeReport> reports = new ArrayList<>();
    passLeftOut(first).ifPresent(reports::add);
    reports.add(tooDeep(first));
    otherCutter(first).ifPresent(reports::add);
    return reports;
  }

  private MistakeReport tooDeep(Step.Passes first) {
    Length slip = bench.setting(Setting.STOP_SLIP);
    WorkedPiece wanted = bench.wanted(first);
    WorkedPiece made =
        bench.made(first.piece(), p -> GrooveBench.with(p, p.surface(), deeper(p, slip)));
    Optional<Block> groove = GrooveBench.groove(made, first.purpose(), first.surface());
    Length right = bench.wantedGroove(first).thickness().size();
    Length left = wanted.thickness().minus(right).minus(slip);
    boolean lost = groove.isEmpty() || !left.isPositive() || meetsTheOtherFace(made);
    MistakeFigures figures = bench.figures(GrooveMistake.TOO_DEEP);
    String slipped = figures.set("slip", Setting.STOP_SLIP);
    Check check =
        new Check(
            "from the panel's surface to the floor of the groove, at both ends",
            right,
            groove.map(b -> b.thickness().size()));
    return figures.report(
        first.piece(),
        new Spoilt(wanted, made, check),
        say("The depth slips and lets the cutter %s deeper.", slipped),
        groove.isEmpty()
            ? "The cutter goes right through the panel."
            : say(
                "The standard lies %s below the face. At every shelf alike, lowest %s: it"
                    + " has as much more play between its clips.",
                slipped, bench.lowestShelf(first, figures)),
        figures.test(check) + " An offcut of the standard lies flush.",
        lost ? Rescue.LOST : Rescue.USE,
        lost
            ? "The grooves come out on the other face or meet those of the other bay: make the panel"
                + " anew."
            : say(
                "Glue a strip of veneer or card %s thick into the groove before the standard; %s of"
                    + " wood is left behind it.",
                slipped, reserve(figures, wanted, right, left)));
  }

  private static String reserve(
      MistakeFigures figures, WorkedPiece wanted, Length depth, Length left) {
    return figures.length(
        "reserve",
        "wood left behind the groove",
        left,
        "t - d - s",
        MistakeFigures.input("t", "thickness of the panel", wanted.thickness()),
        MistakeFigures.input("d", "depth of the grooves as wanted", depth),
        figures.input("s", Setting.STOP_SLIP));
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
    List<Block> rows = bench.rows(made);
    return rows.stream()
        .anyMatch(
            a ->
                rows.stream()
                    .anyMatch(
                        b ->
                            a.surface() != b.surface()
                                && a.width().meets(b.width())
                                && a.length().meets(b.length())
                                && a.thickness().meets(b.thickness())));
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
    MistakeFigures figures = bench.figures(GrooveMistake.PASS_LEFT_OUT);
    String pass =
        beside
            ? say(
                "with the fence at %s",
                figures.measured("pass", "fence of the pass that is left out", last.fence()))
            : say(
                "%s deep",
                figures.measured("pass", "depth of the pass that is left out", last.depth()));
    WorkedPiece made =
        bench.made(
            first.piece(), GrooveBench.only(first, p -> GrooveBench.with(p, p.surface(), rest)));
    Check check = beside ? across(first, made) : deep(first, made);
    return Optional.of(
        figures.report(
            first.piece(),
            new Spoilt(bench.wanted(first), made, check),
            say("The pass %s is left out.", pass),
            say(
                "The standard does not go home anywhere along the row. At every shelf alike, lowest"
                    + " %s: it does not go in between its clips.",
                bench.lowestShelf(first, figures)),
            figures.test(check) + " An offcut of the standard goes in by hand, flush.",
            Rescue.BORE_AGAIN,
            say("Nothing is spoilt: make the pass %s.", pass)));
  }

  /** Where a ridge stands, there is no groove to measure. */
  private Check across(Step.Passes first, WorkedPiece made) {
    return new Check(
        "across the groove for " + first.purpose(),
        bench.wantedGroove(first).width().size(),
        GrooveBench.groove(made, first.purpose(), first.surface()).map(b -> b.width().size()));
  }

  private Check deep(Step.Passes first, WorkedPiece made) {
    return new Check(
        "from the panel's surface to the floor of the groove",
        bench.wantedGroove(first).thickness().size(),
        GrooveBench.groove(made, first.purpose(), first.surface()).map(b -> b.thickness().size()));
  }

  /** With another cutter at the same settings: of the shop, or else of the next size sold. */
  private Optional<MistakeReport> otherCutter(Step.Passes first) {
    MistakeFigures figures = bench.figures(GrooveMistake.OTHER_CUTTER);
    String right = figures.measured("right-bit", "cut of the right cutter", first.cut());
    return own(first.cut())
        .map(cut -> otherCutter(first, figures, own(figures, right, cut), "", cut))
        .or(
            () ->
                new SoldSizes(bench.built().order().settings())
                    .cutterBeside(first.cut())
                    .map(cut -> borrowed(first, figures, right, cut)));
  }

  private static String own(MistakeFigures figures, String right, Length cut) {
    return say(
        "A cutter of %s is in, instead of %s, at the same settings.",
        figures.measured("wrong-bit", "cut of the cutter that is in", cut), right);
  }

  private MistakeReport borrowed(
      Step.Passes first, MistakeFigures figures, String right, Length cut) {
    String wrong =
        figures.length(
            "wrong-bit",
            "cut of the cutter that is in",
            cut,
            "the next whole number of k",
            figures.input("k", Setting.CUTTER_STEP));
    String what =
        say(
            bench.job().shop().tools().isEmpty()
                ? "A cutter of %s, the next size that is sold, is in, instead of %s."
                : "A borrowed cutter of %s is in: the shop file states no other for grooves near"
                    + " %s.",
            wrong,
            right);
    return otherCutter(first, figures, what, " Measure a borrowed cutter before it goes in.", cut);
  }

  /** The nearest of the same kind; of two as near the wider. */
  private Optional<Length> own(Length right) {
    return Stream.of(routerBits(), saws())
        .filter(cuts -> cuts.contains(right))
        .flatMap(List::stream)
        .filter(cut -> !cut.equals(right) && SoldSizes.areNear(cut, right))
        .min(
            Comparator.comparing((Length cut) -> cut.minus(right).abs())
                .thenComparing(Comparator.reverseOrder()));
  }

  private List<Length> routerBits() {
    return bench.job().shop().all(Tool.RouterBit.class).stream()
        .filter(b -> b.toBuy().isEmpty())
        .map(Tool.RouterBit::diameter)
        .toList();
  }

  private List<Length> saws() {
    return bench.job().shop().all(Tool.TableSaw.class).stream()
        .filter(s -> s.toBuy().isEmpty())
        .map(Tool.TableSaw::cut)
        .toList();
  }

  private MistakeReport otherCutter(
      Step.Passes first, MistakeFigures figures, String what, String before, Length cut) {
    WorkedPiece made = bench.made(first.piece(), p -> p.with(cut));
    Check check = across(first, made);
    boolean wide = cut.isMoreThan(first.cut());
    return figures.report(
        first.piece(),
        new Spoilt(bench.wanted(first), made, check),
        what,
        say(
            "%s At every shelf alike, lowest %s.",
            wide
                ? "The standard has play from side to side, so that the clips of panels do not line up."
                : "The standard does not go home: wood stands between passes or at the wall.",
            bench.lowestShelf(first, figures)),
        figures.test(check) + before,
        wide ? Rescue.USE : Rescue.BORE_AGAIN,
        wide
            ? "Glue a strip along the wall that is too far out, so that the standard goes in by hand."
            : "Nothing is spoilt: cut again with the right cutter.");
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
