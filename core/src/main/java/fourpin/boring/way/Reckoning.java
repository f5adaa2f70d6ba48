package fourpin.boring.way;

import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * Set-ups, clampings, holes, minutes and costs of one way, for all copies of a case, with their
 * working.
 */
final class Reckoning {

  /** What ids of figures of time end with. */
  static final String MINUTES = "minutes";

  private static final double SECONDS_PER_MINUTE = 60;
  private static final double MINUTES_PER_HOUR = 60;
  private static final double PER_WEAR = 100;
  private static final double PER_CENT = 100;

  private final Group group;
  private final Way way;
  private final Work work;
  private final Settings settings;
  private final List<Figure> figures = new ArrayList<>();
  private final Figure minutes;
  private final Figure purchases;
  private final Figure total;

  Reckoning(Group group, Way way, Proposal.Can can) {
    this.group = group;
    this.way = way;
    this.work = can.work();
    this.settings = group.settings();
    Figure setUps = count("set-ups", "set-ups of bit, stop or fence", work.setUps());
    Figure clampings = copies("clampings", "clampings of guide, panel or blank", work.clampings());
    Figure holes =
        can.method() instanceof Method.Grooved
            ? copies("cuts", "passes of the cutter, all together", work.holes())
            : copies("holes", "holes to bore", work.holes());
    Figure making = making();
    this.minutes = time(setUps, clampings, holes, making);
    this.purchases = prices();
    this.total = cost();
    work.wear().ifPresent(this::life);
  }

  List<Figure> figures() {
    return List.copyOf(figures);
  }

  Figure minutes() {
    return minutes;
  }

  Figure purchases() {
    return purchases;
  }

  Figure total() {
    return total;
  }

  private long copies() {
    return group.built().order().quantity();
  }

  private Figure add(
      String what, String title, Quantity value, String formula, List<Input> inputs) {
    return add(what, title, value, formula, inputs, Source.GEOMETRY);
  }

  private Figure add(
      String what,
      String title,
      Quantity value,
      String formula,
      List<Input> inputs,
      Source source) {
    Figure figure = new Figure(group.figureId(way, what), title, value, formula, inputs, source);
    figures.add(figure);
    return figure;
  }

  private Figure count(String what, String title, long count) {
    return add(what, title, Quantity.count(count), "counted, one for all copies", List.of());
  }

  private Figure copies(String what, String title, long each) {
    return add(
        what,
        title,
        Quantity.count(each * copies()),
        "n q",
        List.of(
            new Input("n", "in one case", Quantity.count(each), Source.GEOMETRY),
            new Input("q", "copies of the case", Quantity.count(copies()), Source.STATED)));
  }

  private Figure making() {
    Work.Making making = work.making();
    double value =
        settings.number(making.minutes())
            + making.holes() * settings.number(Setting.GUIDE_HOLE_SECONDS) / SECONDS_PER_MINUTE
            + making.pins() * settings.number(Setting.PIN_MINUTES);
    return add(
        "making",
        "time to make what is bored by",
        Quantity.of(value, QuantityUnit.TIME),
        "b + h s / 60 + i v",
        List.of(
            number("b", making.minutes()),
            new Input("h", "holes in it", Quantity.count(making.holes()), Source.GEOMETRY),
            number("s", Setting.GUIDE_HOLE_SECONDS),
            new Input("i", "stepped pins", Quantity.count(making.pins()), Source.GEOMETRY),
            number("v", Setting.PIN_MINUTES)));
  }

  private Input number(String symbol, Setting setting) {
    return number(symbol, setting, settings.number(setting));
  }

  private Input number(String symbol, Setting setting, double taken) {
    Quantity value = Quantity.of(taken, QuantityUnit.RATIO);
    return new Input(symbol, setting.meaning(), value, settings.source(setting));
  }

  private static Input of(String symbol, Figure figure) {
    return new Input(symbol, figure.title(), figure.value(), figure.source());
  }

  private Figure time(Figure setUps, Figure clampings, Figure holes, Figure making) {
    double value =
        making.value().value()
            + setUps.value().value() * settings.number(Setting.SET_UP_MINUTES)
            + clampings.value().value() * settings.number(Setting.CLAMP_MINUTES)
            + holes.value().value() * settings.number(work.seconds()) / SECONDS_PER_MINUTE;
    List<Input> inputs =
        List.of(
            of("m", making),
            of("u", setUps),
            number("t", Setting.SET_UP_MINUTES),
            of("c", clampings),
            number("k", Setting.CLAMP_MINUTES),
            of("n", holes),
            number("s", work.seconds()));
    if (work.refits() > 0) {
      return withRefits(value, inputs);
    }
    return work.lines()
        .map(lines -> withLines(lines, value, inputs))
        .orElseGet(() -> minutes(value, "m + u t + c k + n s / 60", inputs));
  }

  /** Guides, whose panels are not marked by lines. */
  private Figure withRefits(double value, List<Input> inputs) {
    Figure refits = copies("refits", "times that the guide's block comes off", work.refits());
    List<Input> all = new ArrayList<>(inputs);
    all.addAll(List.of(of("f", refits), number("b", Setting.BLOCK_MINUTES)));
    return minutes(
        value + refits.value().value() * settings.number(Setting.BLOCK_MINUTES),
        "m + u t + c k + n s / 60 + f b",
        all);
  }

  /** Lines across panels save the marks of single holes, which take no more than all of a hole. */
  private Figure withLines(Work.Lines lines, double value, List<Input> inputs) {
    Figure drawn = copies("lines", "lines squared across panels side by side", lines.count());
    Figure saved = copies("holes-on-lines", "holes that need no mark of their own", lines.holes());
    double drawing = drawn.value().value() * settings.number(Setting.LINE_SECONDS);
    double mark = Math.min(settings.number(Setting.MARK_SECONDS), settings.number(work.seconds()));
    double marking = saved.value().value() * mark;
    List<Input> all = new ArrayList<>(inputs);
    all.addAll(
        List.of(
            of("l", drawn),
            number("d", Setting.LINE_SECONDS),
            of("z", saved),
            number("a", Setting.MARK_SECONDS, mark)));
    return minutes(
        value + (drawing - marking) / SECONDS_PER_MINUTE,
        "m + u t + c k + (n s + l d - z a) / 60",
        all);
  }

  private Figure minutes(double value, String formula, List<Input> inputs) {
    return add(
        MINUTES, "time to bore this way", Quantity.of(value, QuantityUnit.TIME), formula, inputs);
  }

  private Figure prices() {
    List<Input> inputs = new ArrayList<>();
    for (Purchase purchase : work.bought()) {
      for (Purchase.Price price : purchase.price().stream().toList()) {
        String symbol = "p" + (inputs.size() + 1);
        Quantity amount = money(price.amount().doubleValue());
        inputs.add(new Input(symbol, purchase.name(), amount, price.source()));
      }
    }
    Quantity sum = money(Purchase.sum(work.bought()).doubleValue());
    Source source = Purchase.source(work.bought()).orElse(Source.GEOMETRY);
    return add("to-buy", "tools to buy" + unpriced(), sum, "p1 + p2 + ...", inputs, source);
  }

  /** ", router not counted": what stands in no sum for want of a price; else empty. */
  String unpriced() {
    List<String> without =
        work.bought().stream().filter(p -> p.price().isEmpty()).map(Purchase::name).toList();
    return without.isEmpty() ? "" : ", " + String.join(" and ", without) + " not counted";
  }

  private Figure cost() {
    double labour = minutes.value().value() / MINUTES_PER_HOUR * settings.number(Setting.RATE);
    double borne = settings.number(Setting.TOOLS_BORNE) / PER_CENT;
    return add(
        "cost",
        "cost of boring this way" + unpriced(),
        money(labour + purchases.value().value() * borne),
        "t r / 60 + p b / 100",
        List.of(
            of("t", minutes),
            number("r", Setting.RATE),
            of("p", purchases),
            number("b", Setting.TOOLS_BORNE)));
  }

  private static Quantity money(double amount) {
    return Quantity.of(amount, QuantityUnit.MONEY);
  }

  /** How many holes each hole of the guide bears; nothing is said where nothing wears. */
  private void life(Work.Wear wear) {
    double per100 = settings.number(wear.per100());
    if (per100 == 0) {
      return;
    }
    double limit = settings.number(Setting.WEAR_LIMIT);
    add(
        "guide-life",
        "holes that each hole of the guide bears",
        Quantity.count((long) Math.floor(limit * PER_WEAR / per100)),
        "100 l / w",
        List.of(number("l", Setting.WEAR_LIMIT), number("w", wear.per100())));
    copies("guide-uses", "holes bored through the guide's most used hole", wear.uses());
  }
}
