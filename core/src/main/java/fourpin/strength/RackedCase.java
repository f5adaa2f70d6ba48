package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Back;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.strength.Balance.Load;
import fourpin.strength.RackedLegs.Brace;
import fourpin.strength.frame.Corner;
import fourpin.strength.frame.Frame;
import fourpin.strength.frame.FrameOnLegs;
import fourpin.strength.frame.Member;
import fourpin.strength.frame.ShearPanel;
import fourpin.strength.frame.SwayFrame;
import fourpin.strength.wood.Slip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A case as a frame that is pushed sideways: its uprights and the panels between them, from the
 * middle of the bottom to the middle of the top, and the back; where the bottom stands off the
 * floor, on legs. Face frame and doors are not counted on.
 */
final class RackedCase {

  /** N·m for 100 mm of a joint are so many N·mm for each mm. */
  private static final double PER_MM = 10;

  /** How the back is held. */
  enum Hold {
    NO_BACK,
    LOOSE,
    SCREWED,
    GLUED
  }

  /**
   * A joint that turns.
   *
   * @param kind what says how stiff a joint of its kind is
   * @param depth of the joint, front to back, mm
   */
  record Turning(Setting kind, double depth, Corner corner) {
    double stiffness() {
      return corner.stiffness();
    }
  }

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;

  private final double above;
  private final RackedLegs legs;

  /**
   * @param above what stands on the case, N
   */
  RackedCase(Job job, BuiltCase built, double above) {
    this.job = job;
    this.built = built;
    this.above = above;
    this.legs = new RackedLegs(job, built, above);
    this.settings = built.order().settings();
  }

  Hold hold() {
    boolean glued = settings.choice(Setting.BACK_FIXING).equals("glued");
    return built
        .order()
        .back()
        .map(b -> glued ? Hold.GLUED : b.kind() == Back.Kind.GROOVE ? Hold.LOOSE : Hold.SCREWED)
        .orElse(Hold.NO_BACK);
  }

  /** As it is planned. */
  Frame frame() {
    return held(hold(), spacing());
  }

  /** With its back held otherwise. @param spacing of screws, mm */
  Frame held(Hold hold, double spacing) {
    return onLegs(frame(corners(), backs(), hold, spacing));
  }

  /** With its legs held square otherwise. @param brace N·mm for each radian */
  Frame braced(double brace) {
    return onLegs(above(), bottomJoints(), brace);
  }

  /** With its bottom in dadoes or rabbets. */
  Frame withHousedBottom() {
    double joints = turning(bottomCorners(Setting.DADO_STIFFNESS));
    return onLegs(above(), joints, brace());
  }

  private SwayFrame above() {
    return frame(corners(), backs(), hold(), spacing());
  }

  /** Nothing where the bottom lies on what the case stands on. */
  Optional<RackedLegs> legs() {
    return Optional.of(legs).filter(_ -> RackedLegs.carry(built));
  }

  private Frame onLegs(SwayFrame frame) {
    return onLegs(frame, bottomJoints(), brace());
  }

  private double brace() {
    return legs.brace().map(Brace::stiffness).orElse(0.0);
  }

  private Frame onLegs(SwayFrame frame, double joints, double brace) {
    return legs()
        .<Frame>map(under -> new FrameOnLegs(frame, under.legs(joints, headroom(), brace)))
        .orElse(frame);
  }

  /** With a fixed shelf more in each bay. */
  Frame withFixedShelves() {
    List<Turning> more = new ArrayList<>(corners());
    Part like = built.part("B");
    built.bays().forEach(bay -> more.addAll(ends(like, built.order().fixedShelfJoint(), bay)));
    return onLegs(frame(more, backs(), hold(), spacing()));
  }

  /**
   * With a back of a material, screwed on.
   *
   * @param widths of its pieces, mm
   */
  Frame withBack(Material material, List<Double> widths) {
    List<ShearPanel> pieces =
        widths.stream().map(width -> panel(material, width, headroom())).toList();
    return onLegs(frame(corners(), pieces, Hold.SCREWED, spacing()));
  }

  private SwayFrame frame(
      List<Turning> corners, List<ShearPanel> backs, Hold hold, double spacing) {
    double joints = turning(corners);
    double panel = backs.stream().mapToDouble(b -> stiffness(b, hold, spacing)).sum();
    return new SwayFrame(headroom(), joints, panel, free(backs, hold), burden());
  }

  private double stiffness(ShearPanel back, Hold hold, double spacing) {
    return switch (hold) {
      case NO_BACK -> 0;
      case LOOSE -> back.jammed();
      case SCREWED -> back.fastened(spacing, slip());
      case GLUED -> back.glued();
    };
  }

  /** Until the last piece jams. */
  private double free(List<ShearPanel> backs, Hold hold) {
    double play = settings.length(Setting.PANEL_PLAY).mm();
    return hold == Hold.LOOSE
        ? backs.stream().mapToDouble(b -> b.freeLean(play)).max().orElse(0)
        : 0;
  }

  /** Of one screw, the lower of both codes, N/mm. */
  double slip() {
    double diameter = screw();
    return Math.min(Slip.ec5(backDensity(), caseDensity(), diameter), Slip.nds(diameter));
  }

  double screw() {
    return settings.length(Setting.BACK_SCREW).mm();
  }

  double caseDensity() {
    return density(job.material(built.order().material()));
  }

  /** Of the back; of the case where it has none. */
  double backDensity() {
    return built
        .order()
        .back()
        .map(back -> density(job.material(back.material())))
        .orElseGet(this::caseDensity);
  }

  private static double density(Material material) {
    return Matters.of(material).density().number();
  }

  double spacing() {
    return settings.length(Setting.SCREW_SPACING).mm();
  }

  /** From the middle of the bottom to the middle of the top, mm. */
  double headroom() {
    return middle(built.part("T")) - foot();
  }

  /** To the middle of the top, from the middle of the bottom where that lies on the floor, mm. */
  double height() {
    return headroom() + legs().map(RackedLegs::height).orElse(0.0);
  }

  /** Over the sides, mm. */
  double width() {
    return built.part("R").box().high().x().mm() - built.part("L").box().low().x().mm();
  }

  private double foot() {
    return middle(built.part("B"));
  }

  private static double middle(Part part) {
    return (part.box().low().z().mm() + part.box().high().z().mm()) / 2;
  }

  /** Σ weight times height above the bottom, loaded as stated, with what stands on it, N·mm. */
  double burden() {
    return above * headroom()
        + Balance.of(job, built, Load.ALL).weights().stream()
            .mapToDouble(w -> w.newton() * Math.max(0, w.up() - foot()))
            .sum();
  }

  List<ShearPanel> backs() {
    return built.parts().stream().filter(p -> p.role() == Part.Role.BACK).map(this::back).toList();
  }

  private ShearPanel back(Part part) {
    return panel(
        job.material(part.material()), part.box().size(Axis.X).mm(), part.box().size(Axis.Z).mm());
  }

  private static ShearPanel panel(Material material, double width, double height) {
    Flat flat = Matters.of(material).flat();
    return new ShearPanel(
        width,
        height,
        material.thickness().mm(),
        flat.shear().number(),
        Math.min(flat.along().number(), flat.across().number()));
  }

  /**
   * Top and bottom at the sides, partitions at top and bottom, fixed shelves at both ends; on legs
   * without those of the bottom at the sides, which hold the legs.
   */
  List<Turning> corners() {
    List<Turning> corners = new ArrayList<>();
    for (String end : List.of("T", "B")) {
      Part level = built.part(end);
      if (end.equals("T") || legs().isEmpty()) {
        corners.addAll(atSides(level));
      }
      for (BaySpace bay : built.bays().subList(1, built.bays().size())) {
        corners.add(corner(level, built.order().partitionJoint(), bay, bay.left()));
      }
    }
    for (BaySpace bay : built.bays()) {
      fixedIn(bay)
          .forEach(shelf -> corners.addAll(ends(shelf, built.order().fixedShelfJoint(), bay)));
    }
    return corners;
  }

  private List<Turning> atSides(Part level) {
    Joint joint = level.mark().equals("T") ? order().topJoint() : order().bottomJoint();
    BaySpace first = built.bays().getFirst();
    BaySpace last = built.bays().getLast();
    return List.of(
        corner(level, joint, first, first.left()), corner(level, joint, last, last.right()));
  }

  private CaseOrder order() {
    return built.order();
  }

  /** Of legs: their own bending counts apart. */
  List<Turning> bottomCorners() {
    return bottomCorners(stiffness(order().bottomJoint()));
  }

  private List<Turning> bottomCorners(Setting kind) {
    return atSides(built.part("B")).stream().map(at -> stiff(at, kind)).toList();
  }

  /** Its upright does not bend. */
  private Turning stiff(Turning at, Setting kind) {
    double joint = PER_MM * settings.number(kind) * at.depth();
    return new Turning(kind, at.depth(), new Corner(joint, at.corner().level(), Member.STIFF));
  }

  private double bottomJoints() {
    return turning(bottomCorners());
  }

  private static double turning(List<Turning> corners) {
    return corners.stream().mapToDouble(Turning::stiffness).sum();
  }

  private List<Part> fixedIn(BaySpace bay) {
    return built.parts().stream()
        .filter(p -> p.role() == Part.Role.FIXED_SHELF && p.box().overlaps(bay.clear()))
        .toList();
  }

  private List<Turning> ends(Part level, Joint joint, BaySpace bay) {
    return List.of(corner(level, joint, bay, bay.left()), corner(level, joint, bay, bay.right()));
  }

  private Turning corner(Part level, Joint joint, BaySpace bay, String upright) {
    Part standing = built.part(upright);
    double depth = Math.min(level.box().size(Axis.Y).mm(), standing.box().size(Axis.Y).mm());
    Setting kind = stiffness(joint);
    return new Turning(
        kind,
        depth,
        new Corner(
            PER_MM * settings.number(kind) * depth,
            member(level, bay.clear().size(Axis.X).mm()),
            member(standing, headroom())));
  }

  private static Setting stiffness(Joint joint) {
    return switch (joint.kind()) {
      case DADO, RABBET -> Setting.DADO_STIFFNESS;
      case BUTT -> Setting.BUTT_STIFFNESS;
    };
  }

  private Member member(Part part, double length) {
    Section section = Matters.section(job, part);
    return new Member(length, section.bendingStiffness(), section.shearStiffness());
  }

  /** Under the push of the settings; nothing where it falls over. */
  Optional<Double> sway() {
    return frame().sway(push());
  }

  double push() {
    return settings.number(Setting.SWAY_PUSH);
  }

  double allowed() {
    return height() / settings.number(Setting.SWAY_LIMIT);
  }

  /** Sway after years of leaning over that at first: joints and panels creep. */
  double creep() {
    return Matters.creep(job.material(built.order().material()), settings).number();
  }

  /** Whether the push breaks its joints, or what stands in it leans it over after years. */
  boolean falls() {
    return sway().isEmpty() || leansOverInTime();
  }

  /** Whether what stands in it leans it over once joints and back have crept. */
  boolean leansOverInTime() {
    return frame().reserve() < creep();
  }

  boolean sways() {
    return sway().map(sway -> sway > allowed()).orElse(true);
  }
}
