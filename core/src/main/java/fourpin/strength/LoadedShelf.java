package fourpin.strength;

import fourpin.measure.Sourced;
import fourpin.strength.Beam.Bent;
import fourpin.strength.Beam.Load;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.ShelfOnSupports.Bearing.Count;
import java.util.List;

/**
 * A shelf as a beam on two lines of supports, under its own weight and an even load. Free to turn
 * on its supports, as on pins; a shelf whose ends are held is stiffer than this says. Front and
 * back edge are taken to sag alike, which they do not with a strip on one edge alone; the plate
 * tells.
 *
 * @param span between the supports, mm
 * @param overhang how far the shelf stands over each support, mm
 * @param load along the shelf besides its own weight, N/mm
 */
public record LoadedShelf(Section section, double span, double overhang, double load) {

  /** Its load and its own weight, N/mm. */
  public double total() {
    return load + section.weight();
  }

  public double length() {
    return span + 2 * overhang;
  }

  /** How far the middle lies below the supports at once, mm. */
  public double sag() {
    return bent().deflection(length() / 2);
  }

  /** Bending moment in the middle, N·mm. */
  public double moment() {
    return bent().moment(length() / 2);
  }

  /** The largest bending stress, MPa. */
  public double stress() {
    return section.stress(section.mostStressed(), moment());
  }

  /** Of each of its layers under a moment. @param moment N·mm */
  List<Stress> stresses(double moment) {
    return section.layers().stream()
        .map(layer -> new Stress(layer, section.stress(layer, moment), 0))
        .toList();
  }

  /** Empty, held down on its supports, with a push in the middle of its span, N·mm. */
  double momentUnder(double push) {
    return push * span / 4 + section.weight() * span * span / 8;
  }

  /** What the supports of one end carry together, N. */
  public double reaction() {
    return bent().reactions()[0];
  }

  public LoadedShelf under(double otherLoad) {
    return new LoadedShelf(section, span, overhang, otherLoad);
  }

  public LoadedShelf over(double otherSpan) {
    return new LoadedShelf(section, otherSpan, overhang, load);
  }

  /** Cut longer by so much, both ends together, on the same supports. */
  LoadedShelf longer(double by) {
    return new LoadedShelf(section, span, overhang + by / 2, load);
  }

  /** As long, on supports whose middles stand nearer by so much, both together. */
  LoadedShelf inward(double by) {
    return new LoadedShelf(section, span - by, overhang + by / 2, load);
  }

  public LoadedShelf of(Section other) {
    return new LoadedShelf(other, span, overhang, load);
  }

  /** What a plate that only bends is made of. */
  Section asPlate(Bearing bearing) {
    return section.asPlate(span, between(bearing));
  }

  /** From one row of supports to the next, or over its whole depth, mm. */
  double between(Bearing bearing) {
    return switch (bearing) {
      case Bearing.WholeEnd() -> section.depth();
      case Bearing.Rows(Sourced front, Sourced back, Count count) -> {
        double rows = section.depth() - front.number() - back.number();
        yield count == Count.THREE ? rows / 2 : rows;
      }
    };
  }

  private Bent bent() {
    return Beam.overhanging(span, overhang, section.bendingStiffness(), section.shearStiffness())
        .under(List.of(new Load.Even(total(), 0, length())));
  }
}
