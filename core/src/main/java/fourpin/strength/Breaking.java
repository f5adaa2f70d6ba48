package fourpin.strength;

import fourpin.job.Material;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.reference.BendingStrength;
import fourpin.reference.Reference;
import fourpin.reference.Substance;
import fourpin.reference.Substance.Family;
import java.util.List;
import java.util.Optional;

/**
 * At what stress a material breaks in bending, and what Eurocode 5 takes off that for what stands
 * on it for years. Glass has stresses of its own.
 *
 * @param strength that nearly all of it passes in a test of minutes, f_m,k, MPa
 * @param margin by which it is divided, γ_M
 * @param condition what the strength holds for
 * @param by who says so, in words
 */
public record Breaking(
    Family family, Sourced strength, Sourced margin, String condition, String by) {

  /** What it is worked out by. */
  static final String FORMULA = "f k_mod / (γ_M γ_Q)";

  /** Of a job's material, as it is laid; nothing of glass. */
  public static Optional<Breaking> of(Material material) {
    return Matters.of(material).breaking();
  }

  /** As the tables have it; nothing of glass. */
  public static Optional<Breaking> of(Substance substance) {
    return Reference.bendingStrength(substance).map(row -> of(substance.family(), row));
  }

  private static Breaking of(Family family, BendingStrength row) {
    return new Breaking(
        family,
        new Sourced(row.strength(), row.source()),
        new Sourced(Quantity.of(row.margin(), QuantityUnit.RATIO), row.source()),
        row.condition(),
        "as the tables have it");
  }

  /** What a job states goes over the tables; the margin of its family stays. */
  Breaking stated(Quantity other) {
    return new Breaking(
        family,
        Sourced.stated(other),
        margin,
        "what nearly all of it passes in a test of minutes, as the job states it",
        "as the job states it");
  }

  /** Of a part whose strength counts only for so much of it. */
  Breaking times(double share, Source source) {
    Quantity less = Quantity.of(share * strength.number(), QuantityUnit.STRESS);
    return new Breaking(family, new Sourced(less, source), margin, condition, by);
  }

  /** Of a part that may lie either way: as much weaker across as it is less stiff. */
  Breaking eitherWay(double share) {
    return times(share, Flat.eitherWay(strength.source()));
  }

  /** For years in dry air. */
  public Sourced allowed() {
    return allowed(ServiceClass.FIRST, LoadCase.EVEN);
  }

  /** For years, or for the minute of a hand; of boards a minute adds more than is counted. */
  Sourced allowed(ServiceClass air, LoadCase of) {
    double times = of instanceof LoadCase.Hand ? EurocodeMargins.brief(air) : 1;
    double lasting =
        strength.number()
            * duration(air).number()
            / (margin.number() * EurocodeMargins.load().number());
    return new Sourced(Quantity.of(times * lasting, QuantityUnit.STRESS), strength.source());
  }

  /** Boards that are not for air so damp have the factor of the dampest air they are for. */
  private Sourced duration(ServiceClass air) {
    return EurocodeMargins.duration(family, dampest(air)).orElseThrow();
  }

  private ServiceClass dampest(ServiceClass air) {
    return List.of(ServiceClass.values()).reversed().stream()
        .filter(upTo -> upTo.compareTo(air) <= 0)
        .filter(upTo -> EurocodeMargins.duration(family, upTo).isPresent())
        .findFirst()
        .orElseThrow();
  }

  List<Input> inputs(ServiceClass air) {
    ServiceClass counted = dampest(air);
    return List.of(
        strength.input("f", "characteristic bending strength: " + condition),
        duration(air)
            .input(
                "k_mod",
                counted.words()
                    + (counted == air
                        ? ""
                        : ", for want of a factor for class "
                            + air.number()
                            + ": it is no board for that")),
        margin.input("γ_M", "margin for the material"),
        EurocodeMargins.load().input("γ_Q", EurocodeMargins.LARGER));
  }
}
