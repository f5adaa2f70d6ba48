package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Lazy;
import fourpin.strength.Use.Limit;
import java.util.ArrayList;
import java.util.List;

/** Shelves that hold their load spread evenly, and not where it may lie as well. */
final class UnevenFindings {

  private final Job job;
  private final ShelfOnSupports read;
  private final AlikeShelves alike;
  private final Verdict verdict;
  private final LoadCase of;
  private final List<Remedy> cures;

  /**
   * @param shelves alike; at least one
   * @param of how the load lies: in a row, or on one half
   * @param cures looked into only where something is wrong
   */
  UnevenFindings(
      Job job,
      List<Part> shelves,
      ShelfOnSupports read,
      Verdict verdict,
      LoadCase of,
      List<Remedy> cures) {
    this.job = job;
    this.read = read;
    this.alike = new AlikeShelves(job, shelves, read.caseName());
    this.verdict = verdict;
    this.of = of;
    this.cures = cures;
  }

  /** What is wrong with its load spread evenly is told as such. */
  List<Finding> all() {
    List<Finding> all = new ArrayList<>();
    PlateFigures.of(read, verdict)
        .map(figures -> figures.unevenly(of))
        .ifPresent(
            load -> {
              if (isNew(Limit.SAG)) {
                load.sag().flatMap(now -> load.years().map(y -> sags(now, y))).ifPresent(all::add);
              }
              if (isNew(Limit.STRESS)) {
                load.stress().map(this::breaks).ifPresent(all::add);
              }
            });
    return all;
  }

  /** Of rows in front and against the back the one that uses more of the limit is told. */
  private boolean isNew(Limit limit) {
    return verdict.holds(LoadCase.EVEN, limit)
        && !verdict.holds(of, limit)
        && (!isRow() || worstRow(limit).equals(of));
  }

  private boolean isRow() {
    return verdict.shelf().cases().rows().contains(of);
  }

  private LoadCase worstRow(Limit limit) {
    List<LoadCase> rows = verdict.shelf().cases().rows();
    return Verdict.worst(
            verdict.uses().stream().filter(use -> use.isBy(limit) && rows.contains(use.of())))
        .of();
  }

  private String kind(String what) {
    return switch (of) {
      case LoadCase.OneHalf() -> "half-" + what;
      case LoadCase.Hand(_) -> "hand-" + what;
      case LoadCase.FrontRow(_), LoadCase.BackRow(_), LoadCase.OverEdge(_, _), LoadCase.Even() ->
          "row-" + what;
    };
  }

  private Finding sags(Figure now, Figure years) {
    ShelfFigures figures = new ShelfFigures(read, verdict);
    ShelfAnswer answer =
        figures.answer(Beyond.of(verdict, job.unit()), Lazy.of(() -> figures.rest(List.of())));
    String what =
        "%s: with %s it sags by %s now and %s after years; %s and %s are allowed. Spread evenly that"
            + " load sags it by %s and %s, within both";
    return alike.finding(
        Severity.DOUBT,
        kind("sags"),
        what.formatted(
            alike.names(),
            of.words(job.unit()),
            alike.text(now, answer.limitNow()),
            alike.text(years, answer.limitYears()),
            alike.text(answer.limitNow(), now),
            alike.text(answer.limitYears(), years),
            alike.text(answer.sagNow()),
            alike.text(answer.sagYears())),
        List.of(
            now, years, answer.limitNow(), answer.limitYears(), answer.sagNow(), answer.sagYears()),
        cures);
  }

  /** By its strength, or of glass by the stress that is set. */
  private Finding breaks(Figure most) {
    ShelfFigures figures = new ShelfFigures(read, verdict);
    Figure even = figures.stressNow();
    StressAllowed allowed = StressAllowed.of(read);
    List<Figure> shown = new ArrayList<>(List.of(most, even));
    shown.addAll(allowed.all());
    String lasting = of instanceof LoadCase.Hand ? "a minute" : "years";
    return alike.finding(
        Severity.ERROR,
        kind("breaks"),
        "%s%s: with %s it is stressed to %s%s; %s are taken as allowed for %s. Spread evenly its load stresses it to %s"
            .formatted(
                alike.names(),
                read.limits().stress().isPresent() ? " of glass" : "",
                of.words(job.unit()),
                alike.text(most),
                allowed.where(verdict.stresses(of), of),
                allowed.text(verdict.stresses(of), of, job.unit()),
                lasting,
                alike.text(even)),
        shown,
        cures);
  }
}
