package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Lazy;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.strength.Use.Limit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What is wrong or worth knowing about shelves that are alike. */
final class ShelfFindings {

  private final Job job;
  private final ShelfReader reader;
  private final List<Part> shelves;
  private final Part first;
  private final ShelfOnSupports read;
  private final AlikeShelves alike;
  private final Verdict verdict;
  private final ShelfFigures figures;

  /** Asked for only where something is wrong. */
  private final Lazy<ShelfAnswer> answer;

  private final List<Remedy> cures;

  /**
   * @param shelves alike; at least one
   * @param cures looked into only where something is wrong
   */
  ShelfFindings(
      Job job, ShelfReader reader, List<Part> shelves, Verdict verdict, List<Remedy> cures) {
    this.job = job;
    this.reader = reader;
    this.shelves = shelves;
    this.first = shelves.getFirst();
    this.read = reader.read(first);
    this.alike = new AlikeShelves(job, shelves, read.caseName());
    this.verdict = verdict;
    this.cures = cures;
    this.figures = new ShelfFigures(read, verdict);
    this.answer =
        Lazy.of(
            () ->
                figures.answer(
                    Beyond.of(verdict, job.unit()), Lazy.of(() -> figures.rest(List.of()))));
  }

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    if (!verdict.holds(LoadCase.EVEN, Limit.SAG)) {
      findings.add(sags());
    }
    if (reader.supportsReachFar(first)) {
      findings.add(supportsReachFar());
    }
    read.limits().stress().map(this::glass).or(this::breaks).ifPresent(findings::add);
    if (length().isMoreThan(settings().length(Setting.SPAN_RULE))) {
      findings.add(isLong());
    }
    return findings;
  }

  private Finding sags() {
    String what =
        "%s %s %s by %s now and %s after years; %s and %s are allowed"
                .formatted(
                    alike.names(),
                    shelves.size() == 1 ? "sags" : "sag",
                    verdict.loaded().there(),
                    alike.text(answer.get().sagNow(), answer.get().limitNow()),
                    alike.text(answer.get().sagYears(), answer.get().limitYears()),
                    alike.text(answer.get().limitNow(), answer.get().sagNow()),
                    alike.text(answer.get().limitYears(), answer.get().sagYears()))
            + ownWeight();
    List<Figure> figures =
        List.of(
            answer.get().sagNow(),
            answer.get().sagYears(),
            answer.get().limitNow(),
            answer.get().limitYears());
    return alike.finding(Severity.ERROR, "sag", what, figures, cures);
  }

  private String ownWeight() {
    return verdict.holdsEmpty()
        ? ""
        : "; it does not carry its own weight within the limits, whatever its load";
  }

  /** What is no glass. */
  private Optional<Finding> breaks() {
    return verdict.holds(LoadCase.EVEN, Limit.STRESS) ? Optional.empty() : Optional.of(broken());
  }

  private Finding broken() {
    StressAllowed allowed = StressAllowed.of(read);
    List<Figure> shown = new ArrayList<>(List.of(figures.stressNow()));
    shown.addAll(allowed.all());
    return alike.finding(
        Severity.ERROR,
        "shelf-breaks",
        "%s: bending stress %s%s; %s are allowed for years, by its strength %s: it may break"
            .formatted(
                alike.names(),
                alike.text(figures.stressNow()),
                allowed.where(verdict.stresses(LoadCase.EVEN), LoadCase.EVEN),
                allowed.text(verdict.stresses(LoadCase.EVEN), LoadCase.EVEN, job.unit()),
                allowed.by(verdict.stresses(LoadCase.EVEN), LoadCase.EVEN)),
        shown,
        cures);
  }

  private Finding glass(Sourced allowed) {
    Figure stress = figures.stressNow();
    boolean holds = verdict.holds(LoadCase.EVEN, Limit.STRESS);
    String what =
        "%s of glass: bending stress %s, %s taken as allowed for years; sources disagree, from %s to %s,"
            + " so ask the glazier for thickness, kind of glass and ground edges, and for safety glass"
            + " where someone may fall against it; nothing is taken off for glass that is thinner than"
            + " stated: measure it; let it bear at least 4 mm on every support, never on"
            + " bare metal or wood";
    return alike.finding(
        holds ? Severity.NOTE : Severity.ERROR,
        holds ? "glass" : "glass-stress",
        what.formatted(
            alike.names(),
            alike.text(stress),
            allowed.value().text(job.unit()),
            printed(Collections::min),
            printed(Collections::max)),
        List.of(stress),
        holds ? List.of() : cures);
  }

  /** The lowest or highest of the working stresses that are printed. */
  private String printed(Function<List<Double>, Double> which) {
    List<Double> all =
        Reference.glassStresses().rows().stream().map(g -> g.stress().value()).toList();
    return Quantity.of(which.apply(all), QuantityUnit.STRESS).text(job.unit());
  }

  private Finding supportsReachFar() {
    return alike.finding(
        Severity.ERROR,
        "supports-reach-far",
        alike.names()
            + ": the supports reach over a quarter of the bay or more; the shelf is checked without counting on it",
        List.of(answer.get().span()),
        List.of(
            new Remedy("check how far the supports reach, and the width of the bay", "nothing")));
  }

  private Finding isLong() {
    String what =
        "%s: %s long, over %s, the length to keep below by the rule of the trade"
            .formatted(
                alike.names(),
                job.style().text(length()),
                job.style().text(settings().length(Setting.SPAN_RULE)));
    return alike.finding(
        Severity.NOTE,
        "long-shelf",
        what,
        List.of(answer.get().span()),
        List.of(new Remedy("let the figures for sag decide", "nothing")));
  }

  private Length length() {
    return first.box().size(Axis.X);
  }

  private Settings settings() {
    return reader.settings();
  }
}
