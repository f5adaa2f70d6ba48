package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Kick;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.reference.Reference;
import fourpin.strength.Balance.Load;
import fourpin.strength.Section.Matter;
import fourpin.strength.frame.Legs;
import fourpin.strength.frame.Member;
import fourpin.strength.wood.Slip;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a case that is pushed sideways has below its bottom: its sides as legs, which go on above,
 * and the kick between them, screwed through both. The kick lies under the bottom and is not taken
 * to be fastened to it.
 */
final class RackedLegs {

  private static final int ENDS = 2;

  /**
   * How the kick holds its legs square.
   *
   * @param offsets of the screws of one end from their middle, mm
   * @param slip stiffness of one screw, N/mm
   * @param kick on edge, between the sides
   * @param boards how many there are of it, in front and at the back
   */
  record Brace(List<Double> offsets, double slip, Member kick, long boards) {

    Brace {
      offsets = List.copyOf(offsets);
    }

    /** Of both ends, N·mm for each radian. */
    double stiffness() {
      double end = slip * offsets.stream().mapToDouble(r -> r * r).sum();
      return end == 0 ? 0 : boards * ENDS / (1 / end + kick.inS());
    }
  }

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final double above;

  /**
   * @param above what stands on the case, N
   */
  RackedLegs(Job job, BuiltCase built, double above) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
    this.above = above;
  }

  /** Whether the bottom stands off what the case stands on. */
  static boolean carry(BuiltCase built) {
    return built.part("B").box().low().z().isPositive();
  }

  /**
   * @param joints of the bottom at both sides, N·mm for each radian
   * @param head from the middle of the bottom to that of the top, mm
   * @param brace stiffness of what holds them square, N·mm for each radian
   */
  Legs legs(double joints, double head, double brace) {
    return new Legs(
        height(),
        joints,
        ENDS / sideAbove(head).fromOneEnd(),
        ENDS / sideBelow().fromOneEnd(),
        brace,
        burden());
  }

  /** From the floor to the middle of the bottom, mm. */
  double height() {
    Part bottom = built.part("B");
    return (bottom.box().low().z().mm() + bottom.box().high().z().mm()) / 2;
  }

  /**
   * @param head from the middle of the bottom to that of the top, mm
   */
  Member sideAbove(double head) {
    return side(side().box().size(Axis.Y).mm(), head);
  }

  /** Notched for a kick that stands back. */
  Member sideBelow() {
    double recess = built.order().kick().map(Kick::recess).map(Length::mm).orElse(0.0);
    return side(side().box().size(Axis.Y).mm() - recess, height());
  }

  private Part side() {
    return built.part("L");
  }

  private Member side(double depth, double length) {
    Section section = Matters.section(job, side(), depth);
    return new Member(length, section.bendingStiffness(), section.shearStiffness());
  }

  /** Σ weight times height over the floor, no higher than the bottom, N·mm. */
  private double burden() {
    return above * height()
        + Balance.of(job, built, Load.ALL).weights().stream()
            .mapToDouble(w -> w.newton() * Math.min(w.up(), height()))
            .sum();
  }

  Optional<Part> kick() {
    return kicks().findFirst();
  }

  /** It, and a second one behind it. */
  Stream<Part> kicks() {
    return built.parts().stream().filter(part -> part.role() == Part.Role.KICK);
  }

  /** Nothing where the kick is too thin for its screws. */
  Optional<Brace> brace() {
    return kick().flatMap(kick -> brace(kick, job.material(kick.material())));
  }

  /** With a kick of another material. */
  Optional<Brace> brace(Material other) {
    return kick().flatMap(kick -> brace(kick, other));
  }

  private Optional<Brace> brace(Part kick, Material material) {
    return material.thickness().mm() < Reference.constant("wood for a screw").value() * screw()
        ? Optional.empty()
        : Optional.of(braced(kick, material));
  }

  private Brace braced(Part kick, Material material) {
    Member edge = onEdge(kick, Matters.of(material), material);
    return new Brace(offsets(kick), slip(material), edge, kicks().count());
  }

  /** Layers then stretch more or less, and shear in their planes. */
  private static Member onEdge(Part kick, Matter matter, Material material) {
    double high = kick.box().size(Axis.Z).mm();
    double area = matter.stretch() * material.thickness().mm() * high;
    return new Member(
        kick.box().size(Axis.X).mm(),
        matter.modulus().number() * area * high * high / 12,
        Section.SHEAR_AREA * matter.flat().shear().number() * area);
  }

  private List<Double> offsets(Part kick) {
    List<Double> up =
        side().features().stream()
            .flatMap(f -> f instanceof Hole hole ? Stream.of(hole) : Stream.empty())
            .filter(hole -> hole.use() == Hole.Use.SCREW && hole.purpose().equals(kick.name()))
            .map(hole -> hole.centre().z().mm())
            .toList();
    double middle = EndLoad.mean(up);
    return up.stream().map(z -> z - middle).toList();
  }

  /** Of one screw, the lower of both codes, N/mm. */
  double slip(Material kick) {
    double side = density(job.material(side().material()));
    return Math.min(Slip.ec5(side, density(kick), screw()), Slip.nds(screw()));
  }

  private static double density(Material material) {
    return Matters.of(material).density().number();
  }

  double screw() {
    return settings.length(Setting.SCREW_DIAMETER).mm();
  }
}
