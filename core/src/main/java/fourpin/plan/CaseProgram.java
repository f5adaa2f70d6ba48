package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.bench.Step;
import fourpin.bench.Wording;
import fourpin.boring.BayGrid;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.casework.Part.CutWhen;
import fourpin.casework.Part.Role;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.plan.PlannedStep.FaceUp;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The steps of one case that shape its pieces, in the order of work. */
final class CaseProgram {

  private static final String ONE_SETTING =
      "Measure the first of each kind before the others are cut at the same setting of the fence;"
          + " both diagonals of a panel are equal.";

  private static final String ROWS_BORED =
      "Only now that its rows are bored: till then the block of the guide bears on the whole end. ";

  private final Job job;
  private final BuiltCase built;
  private final Wording wording;
  private final CaseWays ways;
  private final Sticks sticks;
  private final AssemblySteps assembly;
  private final Lifting lifting;
  private final GrooveSteps grooves;
  private final List<CaseBoring> borings;
  private final BoreSteps rows;
  private final EdgeStrips strips;
  private final List<PlannedStep> printed = new ArrayList<>();

  /**
   * @param borings how bays get their places for shelves, of this case and others
   * @param cases all of the job
   */
  CaseProgram(
      Job job,
      BuiltCase built,
      List<BayGrid> grids,
      List<CaseBoring> borings,
      List<BuiltCase> cases) {
    this.job = job;
    this.built = built;
    this.wording = new Wording(job.style());
    this.ways = new CaseWays(built, borings);
    this.sticks = new Sticks(built, ways);
    this.assembly = new AssemblySteps(job, built, grids, cases);
    this.lifting = new Lifting(job, built);
    this.borings = borings.stream().filter(b -> b.caseName().equals(built.order().name())).toList();
    this.grooves = new GrooveSteps(job, this.borings);
    this.rows = new BoreSteps(job, built, ways, sticks, grids, this::add);
    this.strips = new EdgeStrips(job, built);
    write();
  }

  /** The typed steps in the order of work. */
  List<Step> steps() {
    return printed.stream().flatMap(step -> step.typed().stream()).toList();
  }

  List<PlannedStep> printed() {
    return printed;
  }

  private void write() {
    List<Part> now = parts(CutWhen.NOW);
    List<Part> later = parts(CutWhen.AFTER_ASSEMBLY);
    boolean after = BenchProgram.boresAfterAssembly(built);
    List<Part> loose = now.stream().filter(p -> !after || p.role() == Role.STRIP).toList();
    List<Part> standing = now.stream().filter(p -> after && p.role() != Role.STRIP).toList();
    List<Part> pieces = CleatBlank.cut(built, now);
    cut(Stage.CUT, pieces);
    strips.step(Stage.CUT, now).ifPresent(printed::add);
    edge(Stage.EDGE, now);
    mark(Stage.MARK, pieces);
    joints(Stage.JOINT, now);
    rows.bore(loose);
    loose.forEach(p -> cuts(Stage.BORE, p, this::waits, ROWS_BORED));
    cleats(now);
    printed.addAll(assembly.upToAssembly());
    rows.bore(standing);
    toMeasure(parts(later, Role.BACK), assembly::measureBack, assembly::fastenBack);
    List<Part> shelves = later.stream().filter(p -> p.role() != Role.BACK).toList();
    toMeasure(shelves, assembly::measureOpenings, _ -> Optional.empty());
    printed.addAll(assembly.standing());
  }

  /** Parts that wait until the case stands: measured for, made, and put on where they are fixed. */
  private void toMeasure(
      List<Part> parts,
      Function<List<Part>, PlannedStep> measure,
      Function<List<Part>, Optional<PlannedStep>> fasten) {
    if (parts.isEmpty()) {
      return;
    }
    printed.add(measure.apply(parts));
    cut(Stage.SHELVES, parts);
    strips.step(Stage.SHELVES, parts).ifPresent(printed::add);
    edge(Stage.SHELVES, parts);
    mark(Stage.SHELVES, parts);
    joints(Stage.SHELVES, parts);
    fasten.apply(parts).ifPresent(printed::add);
  }

  private static List<Part> parts(List<Part> parts, Role role) {
    return parts.stream().filter(p -> p.role() == role).toList();
  }

  private List<Part> parts(CutWhen when) {
    return built.parts().stream().filter(p -> p.when() == when).toList();
  }

  private StepWriter writer(Part part) {
    return new StepWriter(part, sticks, ways);
  }

  /** One printed step for each material, longest parts first as they come off the sheet. */
  private void cut(Stage stage, List<Part> parts) {
    parts.stream()
        .collect(Collectors.groupingBy(Part::material, LinkedHashMap::new, Collectors.toList()))
        .forEach((material, list) -> cut(stage, job.material(material), list));
  }

  private void cut(Stage stage, Material material, List<Part> parts) {
    List<Part> longestFirst =
        parts.stream()
            .sorted(Comparator.comparing((Part p) -> p.cutLength().total()).reversed())
            .toList();
    printed.addAll(new LayerSteps(job, built).all(stage, material, longestFirst));
    boolean glass = material.kind() == Material.Kind.GLASS;
    String start =
        glass
            ? "Order from the glazier: "
            : material.isCutInLayers()
                ? "Straighten one long edge of each panel that was glued up, and cut it to size: "
                : byTheLayouts(stage, material);
    List<Caution> cautions = new ArrayList<>();
    cautions.addAll(glass ? List.of(Cautions.GLASS) : List.of(Cautions.SAW, Cautions.DUST));
    if (parts.stream().anyMatch(p -> p.role() == Role.STRIP || p.role() == Role.CLEAT)) {
      cautions.add(Cautions.SMALL);
    }
    cautions.addAll(lifting.sheets(material.name()));
    cautions.addAll(lifting.parts(parts));
    List<Step> cuts = longestFirst.stream().map(p -> writer(p).cut()).toList();
    add(stage, longestFirst, start, cuts, glass ? "" : ONE_SETTING, cautions);
  }

  private String byTheLayouts(Stage stage, Material material) {
    String start =
        "Cut by the layouts"
            + EdgeStrips.copies(built)
            + ", equal parts at one setting of the fence. ";
    List<Part> waiting =
        parts(CutWhen.AFTER_ASSEMBLY).stream()
            .filter(p -> p.material().equals(material.name()))
            .toList();
    if (waiting.isEmpty()) {
      return start;
    }
    return stage == Stage.SHELVES
        ? start
            + "Cut them out of the pieces kept for them, which the layouts mark “waits” and have"
            + overSize(waiting)
            + "."
        : start
            + "Mark and keep the pieces that the layouts mark “waits”, there"
            + overSize(waiting)
            + ": they are cut to measure when the case stands.";
  }

  private String overSize(List<Part> waiting) {
    Length over = built.order().settings().length(Setting.OVER_SIZE);
    boolean backs = waiting.stream().anyMatch(p -> p.role() == Role.BACK);
    return " "
        + job.style().text(over)
        + (backs ? " longer and wider" : " longer")
        + " than planned";
  }

  private void edge(Stage stage, List<Part> parts) {
    List<Part> edged = parts.stream().filter(p -> !p.edging().isEmpty()).toList();
    if (edged.isEmpty()) {
      return;
    }
    List<Step> bands = edged.stream().flatMap(p -> writer(p).bands().stream()).toList();
    add(
        stage,
        edged,
        strips.gluing(edged),
        bands,
        "Measure length and width again: they are now the finished sizes of the cut list.",
        List.of(Cautions.DUST));
  }

  private void mark(Stage stage, List<Part> parts) {
    add(
        stage,
        parts,
        "Choose which face of each part will be seen inside the case, write the part's mark on it,"
            + " and on each surface named below which way it looks in the case. ",
        parts.stream().map(p -> writer(p).marks()).toList(),
        stage == Stage.MARK
            ? "Stand all uprights side by side, index ends down and index edges forward: the faces"
                + " of the left and the right side look at each other."
            : "The index edges of all shelves lie to the front.",
        List.of());
  }

  private void joints(Stage stage, List<Part> parts) {
    for (Part part : parts) {
      StepWriter writer = writer(part);
      cuts(stage, part, c -> !waits(c), "");
      grooves(stage, part, writer.channels());
      List<Step> screws = writer.screws();
      if (!screws.isEmpty()) {
        add(
            stage,
            List.of(part),
            "Bore right through for the screws. ",
            screws,
            "Screws slide through without biting.",
            List.of(Cautions.DRILL));
      }
    }
  }

  private void cuts(Stage stage, Part part, Predicate<Step.Channel> which, String start) {
    List<Step.Channel> cuts =
        writer(part).channels().stream()
            .filter(c -> grooves.method(c).isEmpty())
            .filter(which)
            .toList();
    if (!cuts.isEmpty()) {
      add(
          stage,
          List.of(part),
          start
              + "Set fence and depth for each cut; index edge to the fence, index end to the stop."
              + EdgingCuts.words(part, cuts),
          cuts,
          "Try each cut in scrap of the same stock first: what goes in slides home by hand,"
              + " without rattling.",
          List.of(Cautions.ROUTER, Cautions.SAW, Cautions.DUST));
    }
  }

  /** A notch takes away the end that the block of a guide bears on, so the rows come first. */
  private boolean waits(Step.Channel cut) {
    return cut.shape() == Step.Channel.Shape.NOTCH && ways.bearsOnEndOf(cut.piece());
  }

  private void grooves(Stage stage, Part part, List<Step.Channel> channels) {
    Map<Face, Map<Method.Grooved, List<Step>>> passes = new EnumMap<>(Face.class);
    for (Step.Channel channel : channels) {
      Face up = PieceLayout.of(part).looking(channel.surface());
      grooves
          .method(channel)
          .ifPresent(
              m ->
                  passes
                      .computeIfAbsent(up, _ -> new LinkedHashMap<>())
                      .computeIfAbsent(m, _ -> new ArrayList<>())
                      .add(grooves.passes(channel, m)));
    }
    passes.forEach((up, ways) -> ways.forEach((m, steps) -> grooves(stage, part, up, m, steps)));
  }

  /** Grooves in one face lie on the sheet of that face. */
  private void grooves(Stage stage, Part part, Face up, Method.Grooved method, List<Step> passes) {
    add(
        stage,
        List.of(part),
        List.of(new FaceUp(part.mark(), up)),
        grooves.words(method),
        passes,
        grooves.check(),
        grooves.cautions(method));
  }

  /** Takes steps that are done together, typed and in words. */
  interface Log {

    /**
     * @param sheet as in {@link PlannedStep}
     */
    void add(
        Stage stage,
        List<Part> parts,
        List<FaceUp> sheet,
        String start,
        List<Step> typed,
        String check,
        List<Caution> cautions);
  }

  /** Strips are bored as blanks and ripped apart, at the bench however the case is bored. */
  private void cleats(List<Part> parts) {
    CleatSteps cleats =
        new CleatSteps(built, CleatBlank.of(built, parts), this::writer, borings, job.style());
    cleats.lots().stream().filter(lot -> !lot.bores().isEmpty()).forEach(this::bore);
    cleats.lots().forEach(this::rip);
    round(cleats, parts(parts, Role.CLEAT));
  }

  private void bore(CleatSteps.Lot lot) {
    add(
        Stage.BORE,
        lot.wood(),
        lot.sheet(),
        lot.boring(),
        lot.bores(),
        "A square laid across both blanks, lower ends level, meets the same centres.",
        List.of(Cautions.LARGE_BIT, Cautions.DRILL, Cautions.DUST));
  }

  private void rip(CleatSteps.Lot lot) {
    add(
        Stage.BORE,
        lot.strips(),
        lot.sheet(),
        "Rip each blank on its middle line, through the holes, and mark its strips at once. Leave"
            + " the sawn edges unplaned: planing would lower every notch.",
        lot.rips(),
        "Both strips of a blank are equally wide, and half the saw cut is missing from each half"
            + " of a hole.",
        List.of(Cautions.SAW, Cautions.NARROW_RIP, Cautions.DUST));
  }

  private void round(CleatSteps cleats, List<Part> loose) {
    loose.stream()
        .collect(
            Collectors.groupingBy(p -> p.width().total(), LinkedHashMap::new, Collectors.toList()))
        .forEach(
            (_, alike) ->
                add(
                    Stage.BORE,
                    alike,
                    cleats.rounding(alike.getFirst()),
                    List.of(),
                    "A cleat lies in the first, the middle and the last pair of notches down to the"
                        + " bottom, without pressing the strips apart.",
                    List.of(Cautions.SMALL, Cautions.DUST)));
  }

  private void add(
      Stage stage,
      List<Part> parts,
      String start,
      List<? extends Step> typed,
      String check,
      List<Caution> cautions) {
    add(stage, parts, List.of(), start, typed, check, cautions);
  }

  private void add(
      Stage stage,
      List<Part> parts,
      List<FaceUp> sheet,
      String start,
      List<? extends Step> typed,
      String check,
      List<Caution> cautions) {
    List<String> marks = parts.stream().map(Part::mark).toList();
    printed.add(
        new PlannedStep(
            0,
            stage,
            built.order().name(),
            marks,
            sheet,
            start.strip(),
            List.copyOf(typed),
            wording.texts(typed),
            check,
            cautions));
  }
}
