package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Shelves that tip or rock on their supports. */
final class PlateFindings {

  private final Job job;
  private final List<Part> shelves;
  private final ShelfOnSupports read;
  private final AlikeShelves alike;
  private final Optional<Figure> tipping;
  private final Verdict verdict;
  private final Optional<PlateFigures> figures;
  private final Function<Over, List<Remedy>> ofTipping;

  /**
   * @param shelves alike; at least one
   * @param ofTipping what keeps them from tipping over a row; looked into only where they tip
   */
  PlateFindings(
      Job job,
      List<Part> shelves,
      ShelfOnSupports read,
      Verdict verdict,
      Function<Over, List<Remedy>> ofTipping) {
    this.job = job;
    this.shelves = shelves;
    this.read = read;
    this.alike = new AlikeShelves(job, shelves, read.caseName());
    this.tipping = new RowLoads(read).tipping();
    this.verdict = verdict;
    this.figures = PlateFigures.of(read, verdict);
    this.ofTipping = ofTipping;
  }

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    for (Over row : Over.values()) {
      verdict.tipping(row).stream().findFirst().map(of -> tips(row, of)).ifPresent(findings::add);
    }
    figures
        .flatMap(f -> f.rocking().filter(RockingFigures::rocks).map(r -> rocks(f, r)))
        .ifPresent(findings::add);
    return findings;
  }

  private Finding tips(Over row, LoadCase under) {
    String empty = under.equals(verdict.shelf().cases().empty()) ? ", empty," : "";
    return alike.finding(
        Severity.ERROR,
        "shelf-tips",
        alike.names()
            + empty
            + (shelves.size() == 1 ? " tips" : " tip")
            + " off the %s supports under ".formatted(row.off())
            + under.words(job.unit()),
        tipping.stream().filter(_ -> row == Over.FRONT).toList(),
        ofTipping.apply(row));
  }

  /** One that rocks only while little stands on it is no fault. */
  private Finding rocks(PlateFigures figures, RockingFigures rocking) {
    Figure closed = rocking.closed();
    Figure load = rocking.most().orElseGet(rocking::closedBy);
    String until =
        rocking.most().isPresent()
            ? "it rocks under any load within its limits, up to %s spread evenly; %s are stated"
            : "it rocks until %s stand on it, spread evenly; %s are stated";
    Quantity stated = Quantity.of(figures.load() / Gravity.STANDARD, QuantityUnit.MASS);
    String what =
        "%s: with one support %s low, ".formatted(alike.names(), text(read.doubt().low()))
            + until.formatted(load.value().text(job.unit()), stated.text(job.unit()));
    return alike.finding(
        Severity.DOUBT,
        "shelf-rocks",
        what,
        List.of(load, closed),
        List.of(
            new Remedy(
                "bore so that all its supports lie within "
                    + closed.value().textAtMost(job.unit())
                    + " of one plane, and try with a flat board before finishing",
                "care"),
            new Remedy("put a slip of card or veneer on the low support", "nothing")));
  }

  private String text(Sourced value) {
    return value.value().text(job.unit());
  }
}
