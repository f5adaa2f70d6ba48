package fourpin.strength;

import static fourpin.job.SampleJobs.in;

import fourpin.casework.CaseworkBuilder;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shelves;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Bookcases of one shelf in each bay, and their figures as plates. */
final class PlateShelving {

  private PlateShelving() {}

  static Strength check(CaseDraft draft, Material... more) {
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.addAll(List.of(more));
    Job all = JobDraft.changed(job, d -> d.materials = materials);
    return StrengthChecker.check(all, CaseworkBuilder.build(all).cases());
  }

  /** Two bays with one shelf each. */
  static CaseDraft shelves(String material, Edging... edging) {
    CaseDraft draft = new CaseDraft();
    Shelves one = new Shelves(new Shelves.Placing.Evenly(1), material, List.of(edging), in("0"));
    Bay bay =
        new Bay(
            Optional.empty(),
            List.of(),
            Optional.of(one),
            Optional.of(SampleJobs.pins()),
            Optional.empty());
    draft.bays = List.of(bay, bay);
    return draft;
  }

  static void load(CaseDraft draft, double newtonPerMm) {
    draft.load = Optional.of(new Load.PerLength(Quantity.of(newtonPerMm, QuantityUnit.LINE_LOAD)));
  }

  static void set(CaseDraft draft, Setting setting, SettingValue value) {
    draft.settings = draft.settings.with(setting, value);
  }

  static Optional<Figure> find(ShelfAnswer shelf, String end) {
    return shelf.figures().stream().filter(f -> f.id().endsWith("/" + end)).findFirst();
  }

  static double value(ShelfAnswer shelf, String end) {
    return find(shelf, end).orElseThrow().value().value();
  }

  static double input(Figure figure, String symbol) {
    return figure.inputs().stream()
        .filter(input -> input.symbol().equals(symbol))
        .mapToDouble(input -> input.value().value())
        .findFirst()
        .orElseThrow();
  }
}
