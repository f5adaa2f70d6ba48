package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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

  /** Checks every shelf however its load lies, and every side for its free height. */
  public static Strength check(Job job, List<BuiltCase> cases) {
    StrengthChecker checker = new StrengthChecker(job);
    cases.forEach(built -> checker.check(built, new StackedCase(job, built, cases)));
    checker.findings.addAll(new LayeredPanels(job).findings());
    checker.findings.addAll(new EitherWay(job, cases).findings());
    return new Strength(checker.answers, checker.cases, checker.findings);
  }

  private void check(BuiltCase built, StackedCase stack) {
    ShelfReader reader = new ShelfReader(job, built);
    SupportReader supports = new SupportReader(job, built);
    SideBow bow = new SideBow(job, built, reader, supports);
    Climate climate = new Climate(job, built);
    ShelvesOfCase shelves = new ShelvesOfCase(job, built, reader, supports, bow, climate, plates);
    answers.addAll(shelves.answers());
    findings.addAll(shelves.findings());
    PartitionFeet feet = new PartitionFeet(job, built, reader, stack.standing());
    PartitionedBottom parted = new PartitionedBottom(job, built, feet);
    findings.addAll(parted.findings());
    KickBottoms bottoms = new KickBottoms(job, built);
    findings.addAll(bottoms.findings());
    BottomJoints joints = new BottomJoints(job, built, reader);
    findings.addAll(joints.findings());
    Optional<OpenTop> top = OpenTop.of(job, built, reader, plates);
    top.map(OpenTop::findings).ifPresent(findings::addAll);
    findings.addAll(TallSides.of(job, built, bow.all()));
    findings.addAll(climate.findings());
    StandingFigures standing = new StandingFigures(job, built, stack);
    findings.addAll(standing.findings());
    List<Figure> racking = new RackingFigures(job, built, stack.onTop()).all();
    findings.addAll(new RackingFindings(job, built, stack.onTop()).all(racking));
    cases.add(
        new CaseAnswer(
            built.order().name(),
            climate.figures(),
            bow.all(),
            Stream.of(feet.all(), parted.all(), bottoms.all(), joints.all())
                .flatMap(List::stream)
                .toList(),
            top.map(OpenTop::all).orElse(List.of()),
            racking,
            standing.all(),
            stack.figures(),
            spans(built)));
    findings.addAll(stack.findings());
  }

  private List<SpanTable> spans(BuiltCase built) {
    return LazyList.of(
        () ->
            new SpanTables(job, new ShelfReader(job, built), new SupportReader(job, built)).all());
  }
}
