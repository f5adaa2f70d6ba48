package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.SheetStock;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.List;
import java.util.Optional;

/** Cautions for what one person should not lift alone. */
final class Lifting {

  private final Job job;
  private final Settings settings;
  private final Weights weights;

  Lifting(Job job, BuiltCase built) {
    this.job = job;
    this.settings = built.order().settings();
    this.weights = new Weights(job);
  }

  List<Caution> whole(BuiltCase built) {
    double kg = built.parts().stream().mapToDouble(weights::of).sum();
    return caution("The case", kg).stream().toList();
  }

  List<Caution> parts(List<Part> parts) {
    return parts.stream().flatMap(p -> caution(p.mark(), weights.of(p)).stream()).toList();
  }

  /** Whole sheets of a material, as they come from the rack. */
  List<Caution> sheets(String material) {
    return job.sheets().stream()
        .filter(s -> s.material().equals(material))
        .map(this::sheet)
        .flatMap(Optional::stream)
        .distinct()
        .toList();
  }

  private Optional<Caution> sheet(SheetStock sheet) {
    String size = job.style().number(sheet.length()) + " x " + job.style().text(sheet.width());
    return caution("A whole sheet of " + sheet.material() + ", " + size, weights.of(sheet));
  }

  private Optional<Caution> caution(String what, double kg) {
    double limit = settings.number(Setting.LIFT_LIMIT);
    return kg > limit
        ? Optional.of(
            Cautions.lifting(
                what + ", " + mass(kg),
                kg,
                limit,
                mass(limit) + ", " + settings.source(Setting.LIFT_LIMIT).title()))
        : Optional.empty();
  }

  private String mass(double kg) {
    return Quantity.of(kg, QuantityUnit.MASS).text(job.unit());
  }
}
