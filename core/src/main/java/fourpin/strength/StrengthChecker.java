package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** From casework to what it carries. */
public final class StrengthChecker {

  private final Job job;
  private final PlateBending.Memory plates = new PlateBending.Memory();
  private final List<ShelfAnswer> answers = new ArrayList<>();
  private final List<CaseAnswer> cases = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private StrengthChecker(Job job) {
    this.job = job;
  }

  /** Checks every shelf as a beam and as a plate, and every side for its free height. */
  public static Strength check(Job job, List<BuiltCase> cases) {
    StrengthChecker checker = new StrengthChecker(job);
    cases.forEach(built -> checker.check(built, new StackedCase(job, built, cases)));
    checker.findings.addAll(new LayeredPanels(job).findings());
    return new Strength(checker.answers, checker.cases, checker.findings);
  }

  private void check(BuiltCase built, StackedCase stack) {
    ShelfReader reader = new ShelfReader(job, built);
    SupportReader supports = new SupportReader(job, built);
    SideBow bow = new SideBow(job, built, reader, supports);
    Climate climate = new Climate(job, built);
    Function<Part, Apart> apart = shelf -> apart(bow, climate, reader, shelf);
    List<Part> shelves = reader.shelves();
    for (Part shelf : shelves) {
      ShelfOnSupports read = reader.read(shelf);
      Verdict verdict = Verdict.of(read, plates);
      Optional<PinInSide> pin = supports.pin(shelf, reader);
      SupportFigures carried = new SupportFigures(read, verdict, pin, apart.apply(shelf));
      List<Figure> inSides =
          shelf.role() == Part.Role.FIXED_SHELF
              ? joints(built, reader, shelf).all()
              : carried.all();
      FrontRow row = new FrontRow(job, read, verdict, carried, pin, supports.rating());
      answers.add(new ShelfFigures(read, verdict).answer(inSides).beyondWith(row.beyond()));
    }
    for (List<Part> alike : grouped(shelves, shelf -> likeness(reader, shelf, supports))) {
      findings(reader, supports, apart, alike);
      if (alike.getFirst().role() == Part.Role.FIXED_SHELF) {
        JointFigures joints = joints(built, reader, alike.getFirst());
        findings.addAll(new JointFindings(job, built.order().name(), alike, joints).all());
      }
    }
    PartitionFeet feet = new PartitionFeet(job, built, reader);
    findings.addAll(feet.findings());
    findings.addAll(TallSides.of(job, built, bow.all()));
    findings.addAll(climate.findings());
    StandingFigures standing = new StandingFigures(job, built, stack.above());
    findings.addAll(standing.findings());
    List<Figure> racking = new RackingFigures(job, built, stack.above()).all();
    findings.addAll(new RackingFindings(job, built, stack.above()).all(racking));
    cases.add(
        new CaseAnswer(
            built.order().name(),
            climate.figures(),
            bow.all(),
            feet.all(),
            racking,
            standing.all(),
            stack.figures(),
            spans(built)));
    findings.addAll(stack.findings());
  }

  /** Whoever looks into them first bends plates of their own, since threads must share none. */
  private List<SpanTable> spans(BuiltCase built) {
    return LazyList.of(
        () -> new SpanTables(job, new ShelfReader(job, built), new PlateBending.Memory()).all());
  }

  private JointFigures joints(BuiltCase built, ShelfReader reader, Part shelf) {
    return new JointFigures(job, built, shelf, reader.space(shelf), reader.read(shelf));
  }

  private static Apart apart(SideBow bow, Climate climate, ShelfReader reader, Part shelf) {
    double span = reader.read(shelf).span().value().value();
    return new Apart(bow.at(shelf), climate.apart(shelf, span));
  }

  private void findings(
      ShelfReader reader, SupportReader supports, Function<Part, Apart> apart, List<Part> alike) {
    ShelfOnSupports read = reader.read(alike.getFirst());
    Verdict verdict = Verdict.of(read, plates);
    Optional<PinInSide> pin = supports.pin(alike.getFirst(), reader);
    SupportFigures figures = new SupportFigures(read, verdict, pin, apart.apply(alike.getFirst()));
    findings.addAll(new ShelfFindings(job, reader, alike, verdict, plates).all());
    verdict
        .plate()
        .ifPresent(
            plate -> findings.addAll(new PlateFindings(job, alike, read, verdict, plate).all()));
    FrontRow row = new FrontRow(job, read, verdict, figures, pin, supports.rating());
    findings.addAll(new FrontRowFindings(job, alike, read, verdict, row).all());
    findings.addAll(new SupportFindings(job, alike, read, figures, supports, pin).all());
  }

  private static Object likeness(ShelfReader reader, Part shelf, SupportReader supports) {
    ShelfOnSupports read = reader.read(shelf);
    return List.of(
        read.loaded(),
        read.bearing(),
        read.limits(),
        read.doubt(),
        read.standing(),
        shelf.material(),
        shelf.role(),
        supports.pin(shelf, reader));
  }

  /** Shelves that are alike in all that matters are found fault with together. */
  private static List<List<Part>> grouped(List<Part> shelves, Function<Part, Object> likeness) {
    Map<Object, List<Part>> groups = new LinkedHashMap<>();
    for (Part shelf : shelves) {
      groups.computeIfAbsent(likeness.apply(shelf), _ -> new ArrayList<>()).add(shelf);
    }
    return List.copyOf(groups.values());
  }
}
