package fourpin.strength;

import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The cross section of a shelf: rectangles that bend as one, each with its own stiffness
 * (transformed section). It is taken for granted that they are glued over their whole length, and
 * that plane sections stay plane.
 *
 * @param layers at least one; in any order
 */
public record Section(List<Layer> layers) {

  private static final double ROUNDING = 1e-9;
  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

  /** Shear runs through 5/6 of a rectangle (Wood Handbook FPL-GTR-190, Table 9-1). */
  static final double SHEAR_AREA = 5.0 / 6;

  /** Of an evenly loaded beam: (L² / 8) / (5 L⁴ / 384), without L². */
  private static final double SHEAR_OVER_BENDING = 384.0 / 5 / 8;

  /**
   * One rectangle; sizes in mm.
   *
   * @param name for people: "shelf", "front strip"
   * @param width from front to back
   * @param thickness up and down
   * @param front from the front of the shelf to the front of the rectangle
   * @param top from the top of the shelf down to the top of the rectangle
   */
  public record Layer(
      String name, Matter matter, double width, double thickness, double front, double top) {

    public Layer {
      if (!(width > 0) || !(thickness > 0)) {
        throw new IllegalArgumentException(name + " has no size: " + width + " x " + thickness);
      }
    }

    /** The same of another width, elsewhere over the depth. */
    Layer at(double otherFront, double otherWidth) {
      return new Layer(name, matter, otherWidth, thickness, otherFront, top);
    }

    private Layer lessened(double times, double deep) {
      return of(matter.lessened(times, deep));
    }

    Layer of(Matter other) {
      return new Layer(name, other, width, thickness, front, top);
    }

    Layer thick(double other) {
      return new Layer(name, matter, width, other, front, top);
    }

    double area() {
      return width * thickness;
    }

    double middle() {
      return top + thickness / 2;
    }

    double modulus() {
      return matter.modulus().number();
    }

    /** How it stretches, MPa; not as it bends where it is glued up of layers. */
    double stretching() {
      return modulus() * matter.stretch();
    }

    /** Of its outermost layer, MPa. */
    double outer() {
      return modulus() * matter.outer();
    }
  }

  /** The same with a panel, its first layer, of another thickness, mm. */
  Section withPanel(double thickness) {
    return withPanel(layers.getFirst().matter(), thickness);
  }

  /** Of other matter too; strips that would be lower are as high as that, mm. */
  Section withPanel(Matter matter, double thickness) {
    Layer panel = layers.getFirst().of(matter).thick(thickness);
    Stream<Layer> strips =
        layers.stream().skip(1).map(strip -> strip.thick(Math.max(strip.thickness(), thickness)));
    return new Section(Stream.concat(Stream.of(panel), strips).toList());
  }

  /**
   * What a rectangle is made of.
   *
   * @param flat how it bends both ways
   * @param shearModulus through the thickness as it bends along, MPa
   * @param shearAcross likewise from front to back
   * @param density kg/m³
   * @param stretch modulus in stretching over that in bending: 1 but for panels of layers
   * @param outer modulus of its outermost layer over that in bending: 1 but for panels of layers
   * @param breaking of its outer layers in bending along; nothing where it is not known, and of
   *     glass
   */
  public record Matter(
      Flat flat,
      Sourced shearModulus,
      Sourced shearAcross,
      Sourced density,
      double stretch,
      double outer,
      Optional<Breaking> breaking) {

    /** Of one piece whose strength is not known. */
    public Matter(Flat flat, Sourced shearModulus, Sourced density) {
      this(flat, shearModulus, density, Optional.empty());
    }

    /** Of one piece. */
    Matter(Flat flat, Sourced shearModulus, Sourced density, Optional<Breaking> breaking) {
      this(flat, shearModulus, shearModulus, density, 1, 1, breaking);
    }

    /**
     * Whether its faces are stiffer than what lies between them, as those of a torsion box are: it
     * gives way to shear far more than one piece.
     */
    boolean isSandwich() {
      return stretch < 1 - ROUNDING;
    }

    private Matter lessened(double times, double deep) {
      return new Matter(
          flat.lessened(times, deep), shearModulus, shearAcross, density, stretch, outer, breaking);
    }

    /**
     * How much more it sags from front to back by shear than by bending alone, as a strip that is
     * evenly loaded.
     *
     * @param deep between what carries it, mm
     */
    double shearShareAcross(double thickness, double deep) {
      double bends = flat.across().number() * thickness * thickness * thickness / 12;
      double gives = SHEAR_AREA * shearAcross.number() * thickness;
      return SHEAR_OVER_BENDING * bends / (gives * deep * deep);
    }

    /**
     * Of a part that may lie either way: as stiff as the weaker one, in shear too. Stress counts
     * what the stiffer takes of it.
     */
    Matter eitherWay() {
      Flat weaker = flat.eitherWay();
      double less = weaker.along().number() / flat.along().number();
      double least = Math.min(less * shearModulus.number(), shearAcross.number());
      Sourced shear =
          new Sourced(
              Quantity.of(least, QuantityUnit.STRESS), Flat.eitherWay(shearModulus.source()));
      double stiffest = Math.max(flat.along().number(), flat.across().number());
      return new Matter(
          weaker,
          shear,
          shear,
          density,
          stretch,
          Math.max(outer, 1),
          breaking.map(b -> b.eitherWay(weaker.along().number() / stiffest)));
    }

    /** Modulus of elasticity along the span, MPa. */
    public Sourced modulus() {
      return flat.along();
    }
  }

  public Section {
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("a section has one rectangle or more");
    }
    layers = List.copyOf(layers);
  }

  /** Depth of the neutral axis below the top, in mm. */
  public double neutralAxis() {
    double stretched = 0;
    double moment = 0;
    for (Layer layer : layers) {
      stretched += layer.stretching() * layer.area();
      moment += layer.stretching() * layer.area() * layer.middle();
    }
    return moment / stretched;
  }

  /** E I about the neutral axis, in N·mm². */
  public double bendingStiffness() {
    double axis = neutralAxis();
    double sum = 0;
    for (Layer layer : layers) {
      double away = layer.middle() - axis;
      double own = layer.area() * layer.thickness() * layer.thickness() / 12;
      sum += layer.modulus() * own + layer.stretching() * layer.area() * away * away;
    }
    return sum;
  }

  /** G A', in N. */
  public double shearStiffness() {
    return layers.stream()
        .mapToDouble(layer -> SHEAR_AREA * layer.area() * layer.matter().shearModulus().number())
        .sum();
  }

  /**
   * How much it sags by shear for each part that it sags by bending, evenly loaded and resting on
   * its ends: {@code 9.6 E I / (G A' L²)}.
   */
  public double shearShare(double span) {
    return SHEAR_OVER_BENDING * bendingStiffness() / (shearStiffness() * span * span);
  }

  /**
   * As a plate that only bends takes it: where the panel is a sandwich, with moduli each way that
   * let it sag by bending as much as it does by bending and shear (apparent moduli, such as tables
   * give for wood in one piece). That leaves stresses as they are.
   *
   * @param deep between what carries it in front and at the back, mm
   */
  public Section asPlate(double span, double deep) {
    Layer panel = layers.getFirst();
    if (!panel.matter().isSandwich()) {
      return this;
    }
    double times = 1 + panel().shearShare(span);
    double across = 1 + panel.matter().shearShareAcross(panel.thickness(), deep);
    List<Layer> lessened = new ArrayList<>(layers);
    lessened.set(0, panel.lessened(times, across));
    return new Section(lessened);
  }

  /** Without its strips: these bear their own shear, and none of the panel's. */
  Section panel() {
    return new Section(layers.subList(0, 1));
  }

  /** The largest bending stress in a rectangle of this section under a moment in N·mm, in MPa. */
  public double stress(Layer layer, double moment) {
    return Math.abs(moment) * layer.outer() * farFace(layer) / bendingStiffness();
  }

  /** From the neutral axis to the face of a rectangle that is farther from it, mm. */
  double farFace(Layer layer) {
    double axis = neutralAxis();
    double above = Math.abs(axis - layer.top());
    double below = Math.abs(layer.top() + layer.thickness() - axis);
    return Math.max(above, below);
  }

  /** The rectangle with the largest bending stress. */
  public Layer mostStressed() {
    Layer most = layers.getFirst();
    for (Layer layer : layers) {
      most = stress(layer, 1) > stress(most, 1) ? layer : most;
    }
    return most;
  }

  /** Its own weight along the shelf, in N/mm. */
  public double weight() {
    return layers.stream().mapToDouble(Section::weight).sum();
  }

  private static double weight(Layer layer) {
    return layer.area()
        * layer.matter().density().number()
        * Gravity.STANDARD
        / CUBIC_MM_PER_CUBIC_M;
  }

  /** How far behind the shelf's front its weight hangs, in mm. */
  public double centreOfWeight() {
    double moment =
        layers.stream()
            .mapToDouble(layer -> weight(layer) * (layer.front() + layer.width() / 2))
            .sum();
    return moment / weight();
  }

  /** From front to back, in mm. */
  public double depth() {
    return layers.stream().mapToDouble(layer -> layer.front() + layer.width()).max().orElseThrow();
  }
}
