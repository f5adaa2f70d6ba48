package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes one reason: each length that is put into its words is kept as an input of its figure, so
 * that nothing is said that can't be asked for.
 */
final class Telling {

  private final Group group;
  private final String name;
  private final String title;
  private final List<Input> inputs = new ArrayList<>();

  /**
   * @param name of the figure below the way
   * @param title of the figure
   */
  Telling(Group group, String name, String title) {
    this.group = group;
    this.name = name;
    this.title = title;
  }

  /** A length that the job or the shop states, as it is printed. */
  String stated(String symbol, String meaning, Length length) {
    return input(symbol, meaning, length, Source.STATED);
  }

  /** A length that follows from the case or from the tools. */
  String derived(String symbol, String meaning, Length length) {
    return input(symbol, meaning, length, Source.GEOMETRY);
  }

  /** A diameter that the job or the shop states, as it stands on the bit. */
  String across(String symbol, String meaning, Length diameter) {
    return across(symbol, meaning, diameter, Source.STATED);
  }

  String across(String symbol, String meaning, Length diameter, Source source) {
    inputs.add(new Input(symbol, meaning, Quantity.across(diameter), source));
    return group.across(diameter);
  }

  String set(String symbol, Setting setting) {
    return input(
        symbol,
        setting.meaning(),
        group.settings().length(setting),
        group.settings().source(setting));
  }

  String depth(String symbol) {
    return input(
        symbol, "depth of the hole", group.depth(), group.settings().source(Setting.HOLE_DEPTH));
  }

  private String input(String symbol, String meaning, Length length, Source source) {
    inputs.add(new Input(symbol, meaning, Quantity.of(length), source));
    return group.text(length);
  }

  /**
   * @param formula of the value, in the symbols of what was put into the words
   */
  Reason reason(String what, String remedy, String formula, Length value) {
    return reason(what, remedy, formula, Quantity.of(value));
  }

  Reason reason(String what, String remedy, String formula, Quantity value) {
    Figure figure = new Figure(name, title, value, formula, inputs, Source.GEOMETRY);
    return new Reason(what, remedy, List.of(figure));
  }
}
