package fourpin.sheets.packet;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Money;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sum;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.pages.Paper;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How the job's lengths, quantities and names are printed on its paper. */
public record Words(Job job) {

  /** What headings, captions and the like need beside a drawing that fills a page. */
  private static final double ROUND_A_DRAWING = 36;

  public String length(Length length) {
    return job.style().text(length);
  }

  /** A diameter as it stands on the bit. */
  public String diameter(Length diameter) {
    return job.style().diameter(diameter);
  }

  /** The same without its unit, where that is the job's. */
  public String diameterNumber(Length diameter) {
    return job.style().diameterNumber(diameter);
  }

  public String number(Length length) {
    return job.style().number(length);
  }

  String sum(Sum sum) {
    return sum.text(job.style());
  }

  public String quantity(Quantity quantity) {
    return switch (quantity.unit()) {
      case MONEY -> job.currency() + " " + quantity.text(job.unit());
      case DIAMETER -> diameter(quantity.length());
      default -> quantity.text(job.unit());
    };
  }

  /** What a setting is in force as. */
  public String value(Settings settings, Setting setting) {
    return switch (setting.kind()) {
      case LENGTH -> settings.optionalLength(setting).map(this::length).orElse("none");
      case NUMBER -> settings.optionalNumber(setting).map(Words::plain).orElse("none");
      case COUNT -> Integer.toString(settings.count(setting));
      case LINE_LOAD -> quantity(settings.load(setting));
      case CHOICE -> settings.choice(setting);
    };
  }

  private static String plain(double number) {
    return Double.toString(number).replaceFirst("\\.0$", "");
  }

  public String value(Figure figure) {
    return quantity(figure.value());
  }

  /** So that it is told from what it is held against. */
  String value(Figure figure, Figure against) {
    return figure.value().textBeside(against.value(), job.unit());
  }

  /** What follows the id of odds in that of their standard error. */
  static final String ERROR = "-error";

  /** The standard error of odds that were counted among drawn cases. */
  static Optional<Figure> error(Figure odds, List<Figure> figures) {
    return figures.stream().filter(f -> f.id().equals(odds.id() + ERROR)).findFirst();
  }

  /** Without its unit. */
  String bare(Figure figure) {
    return figure.value().numberText(job.unit());
  }

  /** As the unit of a column is printed; empty for counts. */
  String symbol(QuantityUnit unit) {
    return unit == QuantityUnit.MONEY ? job.currency() : unit.symbol(job.unit());
  }

  public String money(BigDecimal amount) {
    return job.currency() + " " + Money.text(amount);
  }

  /** Width by height by depth. */
  public String outside(BuiltCase built) {
    return Stream.of(Axis.X, Axis.Z, Axis.Y)
        .map(axis -> number(built.outside().size(axis)))
        .collect(Collectors.joining(" x "));
  }

  /** The unit of bare numbers, for the heads of tables. */
  public String unit() {
    return job.style().unit().symbol();
  }

  /** The same in full. */
  String units() {
    return job.style().unit().customary() ? "inches" : "millimetres";
  }

  String cases(Plan plan) {
    return plan.cases().stream().map(Words::counted).collect(Collectors.joining(", "));
  }

  static String counted(BuiltCase built) {
    return built.order().quantity() + " x " + built.order().name();
  }

  static String lower(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** With a capital letter first. */
  static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** The same with a full stop, where it has none. */
  static String whole(String words) {
    return sentence(words) + (words.endsWith(".") ? "" : ".");
  }

  static String list(List<String> items) {
    return String.join(", ", items);
  }

  Paper paper() {
    return switch (job.paper()) {
      case A4 -> Paper.A4;
      case LETTER -> Paper.LETTER;
    };
  }

  /** Drawings that fill a page under its heading. */
  Drafter fullPage() {
    return Drafter.of(job, paper().body().width(), paper().body().height() - ROUND_A_DRAWING);
  }
}
