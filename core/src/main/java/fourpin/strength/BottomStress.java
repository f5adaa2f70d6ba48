package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How hard a bottom is bent, beside what its strength allows.
 *
 * @param prefix of the ids of its figures
 * @param of which bottom, in words
 * @param plate what bends
 * @param air in which it stands
 */
record BottomStress(String prefix, String of, BottomPlate plate, ServiceClass air) {

  /** How the load lies when it stresses it most, and how hard, MPa. */
  record Most(BottomLoad of, double mpa) {}

  /** Whether it is within what its strength allows, or none is known. */
  boolean holds(Most most) {
    return allowed().filter(figure -> most.mpa() > figure.value().value()).isEmpty();
  }

  /**
   * @param inputs what its bending follows from
   */
  List<Figure> figures(Most most, List<Input> inputs) {
    List<Figure> all = new ArrayList<>(List.of(stress(most, inputs)));
    allowed().ifPresent(all::add);
    return all;
  }

  private Figure stress(Most most, List<Input> inputs) {
    return new Figure(
        prefix + "-stress",
        "largest bending stress in " + of + ", the load " + most.of().place(),
        Quantity.of(most.mpa(), QuantityUnit.STRESS),
        plate.stressFormula(),
        inputs,
        PlateFigures.PLATE);
  }

  private Optional<Figure> allowed() {
    return plate.panel().matter().breaking().map(this::allowed);
  }

  private Figure allowed(Breaking breaking) {
    return new Figure(
        prefix + "-stress-allowed",
        "bending stress allowed in it for years",
        breaking.allowed(air, LoadCase.EVEN).value(),
        Breaking.FORMULA,
        breaking.inputs(air),
        breaking.strength().source());
  }

  /** That it may break; asked only where it does not hold. */
  Finding finding(Most most, List<Input> inputs, Place place, Unit unit, List<Remedy> remedies) {
    List<Figure> shown = figures(most, inputs);
    Quantity stress = shown.getFirst().value();
    Quantity limit = shown.getLast().value();
    return new Finding(
        Severity.ERROR,
        "bottom-breaks",
        "%s, the back not counted on: with %s it is stressed to %s; %s are allowed for years, by its strength %s: it may break"
            .formatted(
                of,
                most.of().words(unit),
                stress.textBeside(limit, unit),
                limit.textBeside(stress, unit),
                plate.panel().matter().breaking().orElseThrow().by()),
        shown,
        place,
        remedies);
  }
}
