package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Place;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.measure.Figure;
import fourpin.measure.Lazy;
import fourpin.measure.LazyList;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Reading;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.Use.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The top of a case on which nothing of the job stands: a maker's things come to stand there all
 * the same. Judged as a shelf in joints, over the widest bay, under the load that a setting says,
 * however that lies; its going on over partitions and the back are not counted on.
 */
final class OpenTop {

  private final Job job;
  private final BuiltCase built;
  private final ShelfReader reader;
  private final ShelfOnSupports read;
  private final Verdict verdict;
  private final ShelfAnswer answer;

  private OpenTop(
      Job job, BuiltCase built, ShelfReader reader, BaySpace bay, PlateBending.Memory plates) {
    this.job = job;
    this.built = built;
    this.reader = reader;
    this.read = reader.top(bay);
    this.verdict = new Verdict(Candidate.of(read, List.of()), plates);
    ShelfFigures figures = new ShelfFigures(read, verdict);
    this.answer =
        figures.answer(Beyond.of(verdict, job.unit()), Lazy.of(() -> figures.rest(List.of())));
  }

  /** Nothing where a case stands on it, or where nobody reaches it. */
  static Optional<OpenTop> of(
      Job job, BuiltCase built, ShelfReader reader, PlateBending.Memory plates) {
    return isOpen(job, built.order())
        ? Optional.of(new OpenTop(job, built, reader, widest(built), plates))
        : Optional.empty();
  }

  /** Whether things may come to stand on the top of a case. */
  static boolean isOpen(Job job, CaseOrder order) {
    boolean carries =
        job.cases().stream().anyMatch(c -> c.standsOn().filter(order.name()::equals).isPresent());
    return !carries && !up(job, order).isMoreThan(order.settings().length(Setting.TOP_REACH));
  }

  /** What is taken to stand on the top of a case, N; nothing where nothing is. */
  static double newton(Job job, BuiltCase built) {
    return perMm(job, built) * built.outside().size(Axis.X).mm();
  }

  /** The same for each mm along it. */
  static double perMm(Job job, BuiltCase built) {
    return isOpen(job, built.order())
        ? ShelfLoad.ofTop(built.order()).perMm(built.part("T").box().size(Axis.Y))
        : 0;
  }

  /** Of its top above the floor, what it stands on as high as stated. */
  private static Length up(Job job, CaseOrder order) {
    return order.standsOn().stream()
        .flatMap(under -> job.cases().stream().filter(c -> c.name().equals(under)))
        .map(under -> up(job, under))
        .reduce(order.sizes().height(), Length::plus);
  }

  private static BaySpace widest(BuiltCase built) {
    return built.bays().stream()
        .reduce((one, other) -> width(other).isMoreThan(width(one)) ? other : one)
        .orElseThrow();
  }

  private static Length width(BaySpace bay) {
    return bay.clear().size(Axis.X);
  }

  /** Load, sag and limits, and how its joints carry it. */
  List<Figure> all() {
    List<Figure> all = new ArrayList<>(List.of(answer.span(), answer.load()));
    all.addAll(List.of(answer.sagNow(), answer.sagYears()));
    all.addAll(uneven());
    all.addAll(List.of(answer.limitNow(), answer.limitYears(), stress()));
    all.addAll(allowed().all());
    all.addAll(joint().all());
    return all.stream().map(OpenTop::named).toList();
  }

  private Figure stress() {
    return new ShelfFigures(read, verdict).stressNow();
  }

  /** In a row, and under a hand on its front edge. */
  private List<Figure> uneven() {
    return PlateFigures.of(read, verdict).stream()
        .flatMap(
            plate ->
                verdict.shelf().cases().uneven().stream()
                    .flatMap(of -> bent(of, plate.unevenly(of))))
        .flatMap(Optional::stream)
        .toList();
  }

  /** A hand pushes for a moment, and nothing creeps under it. */
  private static Stream<Optional<Figure>> bent(LoadCase of, UnevenLoad load) {
    return of instanceof LoadCase.Hand
        ? Stream.of(load.sag(), load.stress())
        : Stream.of(load.sag(), load.years(), load.stress());
  }

  private static Figure named(Figure of) {
    return new Figure(
        of.id(), "top: " + of.title(), of.value(), of.formula(), of.inputs(), of.source());
  }

  private JointFigures joint() {
    return new JointFigures(
        job,
        reader.settings(),
        built.part("T"),
        built.part(built.bays().getFirst().left()),
        JointLoad.of(built.part("T"), read),
        built.order().topJoint());
  }

  /** Where it bends too far, and where its joints carry too much. */
  List<Finding> findings() {
    return Stream.concat(
            bent(),
            new JointFindings(job, built.order().name(), List.of(built.part("T")), joint())
                .all().stream())
        .toList();
  }

  private Stream<Finding> bent() {
    return Stream.of(
            worst(Limit.SAG).map(this::sags).stream(),
            worst(Limit.STRESS).map(this::breaks).stream())
        .flatMap(s -> s);
  }

  /** Of a limit that it passes. */
  private Optional<Use> worst(Limit by) {
    return verdict.uses().stream()
        .filter(use -> use.isBy(by))
        .reduce((one, other) -> Verdict.worst(Stream.of(one, other)))
        .filter(use -> !use.holds());
  }

  private StressAllowed allowed() {
    return StressAllowed.of(read);
  }

  private Finding breaks(Use worst) {
    Stress stress = read.limits().worst(verdict.stresses(worst.of()), worst.of());
    return new Finding(
        Severity.ERROR,
        "top-breaks",
        "the top, with %s, is stressed to %s over the widest bay; %s are allowed, by its strength %s: it may break. No job states what stands on a top; %s is taken, by top-load"
            .formatted(
                worst.of().words(job.unit()),
                Quantity.of(stress.all(), QuantityUnit.STRESS).text(job.unit()),
                allowed().text(List.of(stress), worst.of(), job.unit()),
                allowed().by(List.of(stress), worst.of()),
                answer.load().value().text(job.unit())),
        all(),
        Place.of(built.order().name(), "T", built.part("T").box()),
        LazyList.of(this::cures));
  }

  private Finding sags(Use worst) {
    Quantity now = mm(verdict.under(worst.of()).map(Bends::sag).orElseGet(read.loaded()::sag));
    Quantity years = mm(now.value() * read.limits().creep().number());
    Quantity first = answer.limitNow().value();
    Quantity last = answer.limitYears().value();
    return new Finding(
        Severity.DOUBT,
        "top-sags",
        "the top, with %s, sags by %s now and %s after years over the widest bay; %s and %s are allowed. No job states what stands on a top; %s is taken, by top-load"
            .formatted(
                worst.of().words(job.unit()),
                now.textBeside(first, job.unit()),
                years.textBeside(last, job.unit()),
                first.textBeside(now, job.unit()),
                last.textBeside(years, job.unit()),
                answer.load().value().text(job.unit())),
        all(),
        Place.of(built.order().name(), "T", built.part("T").box()),
        LazyList.of(this::cures));
  }

  private List<Remedy> cures() {
    List<Remedy> all = new ArrayList<>();
    less().ifPresent(all::add);
    Thicknesses.first(job, job.material(built.part("T").material()), this::holds)
        .map(thick -> new Remedy(Thicknesses.words(job, "the top", thick), "wood and weight"))
        .ifPresent(all::add);
    new DividedTop(job, built, reader, verdict).partitions().ifPresent(all::add);
    return all;
  }

  /** Nothing where so little is allowed that no setting says it. */
  private Optional<Remedy> less() {
    String most =
        Quantity.of(verdict.largestLoad().number(), QuantityUnit.LARGEST_LOAD).text(job.unit());
    return SettingReader.read(Setting.TOP_LOAD, most, job.unit()) instanceof Reading.Good<?>
        ? Optional.of(
            new Remedy(
                "keep what stands on it to %s, and set top-load to that".formatted(most),
                "room for less",
                Optional.of(new Stated.OfSetting(Setting.TOP_LOAD, most))))
        : Optional.empty();
  }

  private boolean holds(double thickness) {
    Section section = read.section().withPanel(thickness);
    Candidate thicker = verdict.shelf().made(section, read.limits());
    return new Verdict(thicker, new PlateBending.Memory()).holds();
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }
}
