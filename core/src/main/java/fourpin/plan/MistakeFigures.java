package fourpin.plan;

import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.List;

/**
 * Prints what the words on one mistake state, and keeps it with its working, so that nothing is
 * said that can't be asked for.
 */
final class MistakeFigures {

  private static final Source BENCH =
      new Source("tried on the virtual bench", "", Standing.DERIVED);

  private final String caseName;
  private final BenchMistake mistake;
  private final String prefix;
  private final LengthStyle style;
  private final Settings settings;
  private final List<Figure> figures = new ArrayList<>();

  MistakeFigures(String caseName, BenchMistake mistake, LengthStyle style, Settings settings) {
    this.caseName = caseName;
    this.mistake = mistake;
    this.prefix = Figure.id(caseName, "mistakes", mistake.title()) + "/";
    this.style = style;
    this.settings = settings;
  }

  /** As the virtual bench measures it. */
  String measured(String what, String title, Length value) {
    return length(what, title, value, "measured on the virtual panel");
  }

  String length(String what, String title, Length value, String formula, Input... inputs) {
    add(what, title, Quantity.of(value), formula, inputs);
    return style.text(value);
  }

  /** What a setting says. */
  String set(String what, Setting setting) {
    return length(what, setting.meaning(), settings.length(setting), "s", input("s", setting));
  }

  int count(String what, String title, int value, String formula, Input... inputs) {
    add(what, title, Quantity.count(value), formula, inputs);
    return value;
  }

  Input input(String symbol, Setting setting) {
    return new Input(
        symbol, setting.meaning(), Quantity.of(settings.length(setting)), settings.source(setting));
  }

  static Input input(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.of(value), Source.GEOMETRY);
  }

  static Input input(String symbol, String meaning, int count) {
    return new Input(symbol, meaning, Quantity.count(count), Source.GEOMETRY);
  }

  private void add(String what, String title, Quantity value, String formula, Input... inputs) {
    add(new Figure(prefix + what, title, value, formula, List.of(inputs), BENCH), 1);
  }

  /** What is said twice is kept once; another of the same name gets a number. */
  private void add(Figure figure, int time) {
    Figure called = time == 1 ? figure : figure.called(figure.id() + "-" + time);
    boolean taken = figures.stream().anyMatch(f -> f.id().equals(called.id()));
    if (!taken) {
      figures.add(called);
    } else if (!figures.contains(called)) {
      add(figure, time + 1);
    }
  }

  /** With all that its words state. */
  MistakeReport report(
      String part, String what, String shows, String test, Rescue rescue, String how) {
    return new MistakeReport(
        mistake, caseName, part, what, shows, test, rescue, how, List.copyOf(figures));
  }
}
