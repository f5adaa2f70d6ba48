package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Casework;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.job.Bay;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Shelves;
import fourpin.job.Support;
import fourpin.measure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Bookcases to check the shelves of, and what comes of it. */
final class Shelving {

  private Shelving() {}

  static Strength check(Job job) {
    Casework casework = CaseworkBuilder.build(job);
    assertThat(casework.cases()).hasSameSizeAs(job.cases());
    return StrengthChecker.check(job, casework.cases());
  }

  static Strength check(Bay... bays) {
    return check(SampleJobs.job(SampleJobs.bookcase(bays)));
  }

  static Bay bay(int shelves, Load load) {
    Bay bay = SampleJobs.bay(shelves);
    return new Bay(
        bay.width(), bay.fixedShelves(), bay.shelves(), bay.supports(), Optional.of(load));
  }

  static Bay bay(Shelves shelves, Support support) {
    return new Bay(
        Optional.empty(), List.of(), Optional.of(shelves), Optional.of(support), Optional.empty());
  }

  static Shelves shelves(String material, List<Edging> edging) {
    return new Shelves(new Shelves.Placing.Evenly(1), material, edging, in("0"));
  }

  static List<Finding> ofKind(Strength strength, String kind) {
    return strength.findings().stream().filter(f -> f.kind().equals(kind)).toList();
  }

  /** A figure of any of the cases. */
  static Optional<Figure> find(Strength strength, String id) {
    return strength.cases().stream()
        .flatMap(answer -> answer.figures().stream())
        .filter(figure -> figure.id().equals(id))
        .findFirst();
  }

  static List<Figure> figures(ShelfAnswer shelf) {
    List<Figure> all =
        new ArrayList<>(
            List.of(
                shelf.span(),
                shelf.load(),
                shelf.sagNow(),
                shelf.sagYears(),
                shelf.limitNow(),
                shelf.limitYears()));
    shelf.atReferenceLoads().forEach(r -> all.addAll(List.of(r.load(), r.now(), r.years())));
    all.addAll(shelf.supports());
    all.addAll(shelf.others());
    return all;
  }

  static Figure named(ShelfAnswer shelf, String end) {
    return figures(shelf).stream()
        .filter(figure -> figure.id().endsWith("/" + end))
        .findFirst()
        .orElseThrow();
  }

  static Material glass(String thickness) {
    return new Material(
        "glass",
        Material.Kind.GLASS,
        "glass, tempered",
        in(thickness),
        Optional.empty(),
        Material.Grain.NONE,
        Optional.empty(),
        Optional.empty());
  }

  static Job withMaterial(Material material, Bay... bays) {
    Job job = SampleJobs.job(SampleJobs.bookcase(bays));
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(material);
    return JobDraft.changed(job, d -> d.materials = materials);
  }
}
