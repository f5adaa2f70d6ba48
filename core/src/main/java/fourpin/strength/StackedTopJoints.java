package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.strength.Balance.Load;
import fourpin.strength.JointLoad.Counted;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What the ends of a top bring to its joints when a case stands on it, the top between two uprights
 * taken for a lever. What stands over a side goes down into that and not through the joint.
 *
 * @param feet what presses on the top, from the left
 * @param lying what lies on it besides
 */
record StackedTopJoints(
    Job job, BuiltCase upper, BuiltCase below, List<Foot> feet, List<Beam.Load.Even> lying) {

  private static final Source STATICS =
      new Source(
          "statics: the top between two uprights taken for a lever; backs in line",
          "glue not counted on; going on over partitions neither",
          Standing.DERIVED);

  StackedTopJoints {
    feet = List.copyOf(feet);
    lying = List.copyOf(lying);
  }

  /**
   * An upright of the case above.
   *
   * @param at its middle from the left of the case below, mm
   * @param thick its thickness, mm
   * @param newton how hard it presses
   */
  record Foot(double at, double thick, double newton) {

    /** Of what it presses with, what does not come down on a side. */
    double beside(double from, double to) {
      double over = Math.min(at + thick / 2, to) - Math.max(at - thick / 2, from);
      return newton * (1 - Math.max(0, over) / thick);
    }
  }

  /** Left and right. */
  List<JointFigures> ends() {
    return uprights().filter(p -> p.role() == Part.Role.SIDE).map(this::end).toList();
  }

  private Stream<Part> uprights() {
    return below.parts().stream()
        .filter(p -> p.role() == Part.Role.SIDE || p.role() == Part.Role.PARTITION);
  }

  private JointFigures end(Part side) {
    return new JointFigures(
        job, below.order().settings(), top(), side, load(side), below.order().topJoint());
  }

  private JointLoad load(Part side) {
    String prefix =
        Figure.id(upper.order().name(), "stack-top-" + side.mark().toLowerCase(Locale.ROOT));
    double brought = brought(side);
    double own = share(side).of(own());
    double all = brought + own;
    double middle = (brought * back() + own * depth() / 2) / all;
    return new JointLoad(
        prefix,
        load(prefix, brought, own),
        List.of(new EndLoad(LoadCase.EVEN, "as stated", all, middle)),
        Counted.CASE);
  }

  private Figure load(String prefix, double brought, double own) {
    return new Figure(
        prefix + "/joint-load",
        "load on one end of the top below",
        force(brought + own),
        "R + g",
        List.of(
            new Input(
                "R",
                "what stands on it, loaded as stated, by levers; not what stands over the side",
                force(brought),
                STATICS),
            new Input("g", "the top's own weight", force(own), STATICS)),
        STATICS);
  }

  private double brought(Part side) {
    Tributary share = share(side);
    double from = side.box().low().x().mm() - left();
    double to = side.box().high().x().mm() - left();
    return lying.stream().mapToDouble(share::of).sum()
        + feet.stream().mapToDouble(f -> share.of(f.beside(from, to), f.at())).sum();
  }

  private Tributary share(Part side) {
    return Tributary.of(middle(side), uprights().map(this::middle).toList());
  }

  private Beam.Load.Even own() {
    double newton = new Masses(job).of(top()) * Gravity.STANDARD;
    double from = top().box().low().x().mm() - left();
    double length = top().box().size(Axis.X).mm();
    return new Beam.Load.Even(newton / length, from, from + length);
  }

  /** From the front edge of the top to the middle of what stands on it, mm. */
  private double back() {
    double behind = upper.outside().high().y().mm() - Balance.of(job, upper, Load.ALL).back();
    double front = below.outside().high().y().mm() - behind - top().box().low().y().mm();
    return Math.clamp(front, 0, depth());
  }

  private double depth() {
    return top().box().size(Axis.Y).mm();
  }

  private double middle(Part upright) {
    return (upright.box().low().x().mm() + upright.box().high().x().mm()) / 2 - left();
  }

  private double left() {
    return below.outside().low().x().mm();
  }

  private Part top() {
    return below.part("T");
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }
}
