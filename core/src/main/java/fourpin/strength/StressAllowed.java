package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Unit;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.Section.Layer;
import java.util.List;
import java.util.Optional;

/**
 * What bending may stress each part of a shelf, bottom or top to for years, by its strength; glass
 * has a setting.
 *
 * @param prefix of the ids of its figures
 */
record StressAllowed(String prefix, Section section, ShelfLimits limits) {

  static StressAllowed of(ShelfOnSupports shelf) {
    return new StressAllowed(shelf.prefix(), shelf.section(), shelf.limits());
  }

  /** One for the panel, one for its strips. */
  List<Figure> all() {
    return section.layers().stream().limit(2).flatMap(layer -> figure(layer).stream()).toList();
  }

  /** Of one of its parts. */
  Optional<Figure> figure(Layer layer) {
    return layer.matter().breaking().map(breaking -> figure(layer, breaking));
  }

  private Figure figure(Layer layer, Breaking breaking) {
    boolean panel = layer.equals(section.layers().getFirst());
    return new Figure(
        prefix + (panel ? "/stress-allowed" : "/strip-stress-allowed"),
        "bending stress allowed for years in the " + layer.name(),
        breaking.allowed(limits.air(), LoadCase.EVEN).value(),
        Breaking.FORMULA,
        breaking.inputs(limits.air()),
        breaking.strength().source());
  }

  /** Which part is nearest to breaking, after "stressed"; nothing where there is but one. */
  String where(List<Stress> stresses, LoadCase of) {
    return section.layers().size() == 1
        ? ""
        : " in the " + limits.worst(stresses, of).layer().name();
  }

  /** Who says how strong that is. */
  String by(List<Stress> stresses, LoadCase of) {
    return limits.worst(stresses, of).layer().matter().breaking().orElseThrow().by();
  }

  /** In words, as its load lies when it does most. */
  String text(List<Stress> stresses, LoadCase of, Unit unit) {
    Layer layer = limits.worst(stresses, of).layer();
    return limits.stressAllowed(layer, of).orElseThrow().value().text(unit);
  }
}
