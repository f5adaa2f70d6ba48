package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.job.Drawers;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import java.util.ArrayList;
import java.util.List;

/**
 * What drawers tip that are pulled out, full, in a case that is empty otherwise, or loaded where
 * that turns it forward: those that are shut count nothing. Their middles lie half their length
 * behind their fronts.
 *
 * @param rest all but the drawers, all doors swung open
 * @param floor in words, on which it stands
 */
record DrawerFigures(BuiltCase built, Drawers drawers, Rest rest, String floor) {

  private static final Source STATICS =
      new Source(
          "statics: a case that turns about its front foot, full drawers a load that moves out in front",
          "",
          Standing.DERIVED);

  /**
   * What keeps the case standing besides its drawers.
   *
   * @param moment about the front foot, N·mm
   * @param formula of it
   * @param loaded in words
   * @param foot from the front of the sides to the front foot, mm
   * @param height of the case, mm
   * @param under how high it stands over that foot, mm
   */
  record Rest(
      double moment,
      String formula,
      String loaded,
      List<Input> inputs,
      double foot,
      double height,
      double under) {}

  List<Figure> all() {
    List<Figure> all = new ArrayList<>(List.of(tips(1), leant()));
    if (drawers.count() > 1) {
      all.add(tips(drawers.count()));
    }
    return all;
  }

  /** In words, after how the case is loaded otherwise. */
  String allOut() {
    return "all drawers full and pulled out";
  }

  /** About the front foot, so many out, N·mm. */
  double held(int out) {
    return rest.moment() + out * weight() * behind();
  }

  /** The same with one out and someone who leans on it. */
  double leantOn() {
    return held(1) - lean().number() * (drawers.out().mm() + rest.foot() + fall());
  }

  private double weight() {
    return drawers.mass().value() * Gravity.STANDARD;
  }

  /** From the front foot back to the middle of a drawer that is out. */
  private double behind() {
    return drawers.length().mm() / 2 - drawers.out().mm() - rest.foot() - fall();
  }

  /** How far the slope brings a drawer forward. */
  private double fall() {
    return slope().at(drawers.height().mm() + rest.under());
  }

  private FloorSlope slope() {
    return FloorSlope.of(FloorSlope.To.FRONT, built.order().settings());
  }

  private Sourced lean() {
    return new Sourced(
        Quantity.of(built.order().settings().number(Setting.DOOR_PULL), QuantityUnit.FORCE),
        built.order().settings().source(Setting.DOOR_PULL));
  }

  Figure tips(int out) {
    List<Input> inputs = inputs();
    inputs.add(new Input("k", "drawers out", Quantity.count(out), Source.STATED));
    return figure(
        out == 1 ? "tips-at-drawer" : "tips-at-drawers",
        "push forward at the top that tips it, %s, %s, %s"
            .formatted(rest.loaded(), out == 1 ? "one full drawer pulled out" : allOut(), floor),
        held(out),
        "max(0, " + rest.formula() + " + k W (l / 2 - e - f - n h / 1000)) / H",
        inputs);
  }

  Figure leant() {
    List<Input> inputs = inputs();
    inputs.add(lean().input("Q", Setting.DOOR_PULL.meaning()));
    return figure(
        "tips-at-leant",
        "the same with one drawer out and someone leaning on its front",
        leantOn(),
        "max(0, "
            + rest.formula()
            + " + W (l / 2 - e - f - n h / 1000) - Q (e + f + n h / 1000)) / H",
        inputs);
  }

  private List<Input> inputs() {
    List<Input> inputs = new ArrayList<>(rest.inputs());
    inputs.add(
        new Input(
            "W",
            "weight of a drawer with what is in it",
            Quantity.of(weight(), QuantityUnit.FORCE),
            Source.STATED));
    inputs.add(new Input("l", "its length", Quantity.of(drawers.length()), Source.STATED));
    inputs.add(new Input("e", "how far it comes out", Quantity.of(drawers.out()), Source.STATED));
    inputs.add(
        new Input("h", "its middle above the floor", Quantity.of(drawers.height()), Source.STATED));
    return inputs;
  }

  private Figure figure(
      String name, String title, double moment, String formula, List<Input> inputs) {
    return new Figure(
        Figure.id(built.order().name()) + "/" + name,
        title,
        Quantity.of(Math.max(0, moment / rest.height()), QuantityUnit.FORCE),
        formula,
        inputs,
        STATICS);
  }
}
