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
import fourpin.plan.MistakeReport.Check;
import fourpin.plan.MistakeReport.Outcome;
import fourpin.plan.MistakeReport.Outcome.Harmless;
import fourpin.plan.MistakeReport.Outcome.Impossible;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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

  LengthStyle style() {
    return style;
  }

  /** As the virtual bench measures it. */
  String measured(String what, String title, Length value) {
    return length(what, title, value, "measured on the virtual panel");
  }

  String length(String what, String title, Length value, String formula, Input... inputs) {
    add(what, title, Quantity.of(value), formula, inputs);
    return style.text(value);
  }

  /** A diameter as the virtual bench measures it. */
  String across(String what, String title, Length diameter) {
    return across(what, title, diameter, "measured on the virtual panel");
  }

  String across(String what, String title, Length diameter, String formula, Input... inputs) {
    add(what, title, Quantity.across(diameter), formula, inputs);
    return style.diameter(diameter);
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

  /** What a rule should say and, after "not", what it says with the mistake. */
  String test(Check check) {
    return say("%s: %s.", sentence(check.what()), says(check));
  }

  private String says(Check check) {
    String right = measured("test-right", check.what(), check.right());
    return right + check.wrong().map(w -> wrong(check, right, w)).orElse("; now none is there");
  }

  /** The same of another row. @param first what was said of the first */
  String likewise(Check first, Check other, String row) {
    return first.right().equals(other.right()) && first.wrong().equals(other.wrong())
        ? say(" The %s alike.", row)
        : say(" To the %s: %s.", row, says(other));
  }

  /** What would be measured; where that prints alike, a rule does not tell it. */
  private String wrong(Check check, String right, Length wrong) {
    String text = measured("test-wrong", "the same with the mistake", wrong);
    Length more = wrong.minus(check.right());
    String off =
        length(
            "test-off",
            "how far it is off",
            more.abs(),
            "|m - w|",
            input("m", "as it is made", wrong),
            input("w", "as it is wanted", check.right()));
    return text.equals(right)
        ? "; now " + off + (more.isPositive() ? " more" : " less") + ", too little for a rule"
        : ", not " + text + " (" + off + (more.isPositive() ? " more)" : " less)");
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A mistake that the panel does not show. */
  MistakeReport harmless(String part, String what, String why, String how) {
    String shows = "Nothing: " + why + ".";
    return report(part, new Harmless(why), what, shows, "Nothing to find.", Rescue.NOT_NEEDED, how);
  }

  /** A mistake that can't be made. */
  MistakeReport impossible(String part, String why, String test, String how) {
    return report(
        part,
        new Impossible(why),
        "It cannot happen here: " + why + ".",
        "",
        test,
        Rescue.NOT_NEEDED,
        how);
  }

  /** With all that its words state. */
  MistakeReport report(
      String part,
      Outcome outcome,
      String what,
      String shows,
      String test,
      Rescue rescue,
      String how) {
    return new MistakeReport(
        mistake, caseName, part, outcome, what, shows, test, rescue, how, List.copyOf(figures));
  }
}
