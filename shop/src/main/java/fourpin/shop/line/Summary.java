package fourpin.shop.line;

import fourpin.boring.way.CaseBoring;
import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.measure.Counted;
import fourpin.measure.Figure;
import fourpin.measure.LengthStyle;
import fourpin.plan.MaterialPlan;
import fourpin.plan.MaterialPlan.StockUse;
import fourpin.plan.Plan;
import fourpin.shop.line.Ink.Terminal;
import fourpin.strength.ShelfAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a maker wants to know of a plan at a glance. Computes nothing; every figure is the plan's.
 */
final class Summary {

  private static final int LABEL = 12;

  private final Plan plan;
  private final LengthStyle style;
  private final Terminal terminal;
  private final List<String> lines = new ArrayList<>();

  private Summary(Plan plan, Terminal terminal) {
    this.plan = plan;
    this.style = plan.job().style();
    this.terminal = terminal;
  }

  static List<String> of(Plan plan, Terminal terminal) {
    Summary summary = new Summary(plan, terminal);
    summary.write();
    return List.copyOf(summary.lines);
  }

  private void write() {
    Job job = plan.job();
    lines.add(Ink.STRONG.on(terminal, job.title() + ", revision " + job.revision()));
    if (count(Severity.REFUSED) == 0) {
      figures();
    }
    lines.add("");
    findings();
  }

  /** Only of a plan that holds together: half a case has no holes or price worth knowing. */
  private void figures() {
    plan.cases().forEach(this::write);
    write(
        "stock",
        plan.materials().stream().flatMap(Summary::stock).collect(Collectors.joining("; ")));
    total("job/holes")
        .ifPresent(
            holes ->
                write(
                    "holes",
                    holes + total("job/boring-time").map(t -> ", " + t + " to bore").orElse("")));
    plan.borings().forEach(this::write);
    worst().ifPresent(this::write);
    weights();
    total("job/stock-to-buy").ifPresent(sum -> write("to buy", money(sum) + " of stock"));
    tools();
    total("job/price").ifPresent(sum -> write("price", money(sum) + ", " + priced() + " only"));
  }

  private void tools() {
    String names =
        plan.tools().stream().map(t -> t.tool().name()).collect(Collectors.joining("; "));
    String sum = total("job/tools-to-buy").map(t -> money(t) + " of tools: ").orElse("");
    write("tools", names.isEmpty() ? "" : (sum.isEmpty() ? "to buy: " : sum) + names);
  }

  private String priced() {
    return total("job/tools-borne").isPresent()
        ? "stock, tools to buy and boring"
        : "stock and boring";
  }

  private void write(String label, String text) {
    if (!text.isEmpty()) {
      lines.add(
          "  " + Ink.FAINT.on(terminal, (label + " ".repeat(LABEL)).substring(0, LABEL)) + text);
    }
  }

  private void write(BuiltCase built) {
    CaseOrder order = built.order();
    String size =
        Stream.of(Axis.X, Axis.Z, Axis.Y)
            .map(axis -> style.number(built.outside().size(axis)))
            .collect(Collectors.joining(" x "));
    write(
        "case",
        order.quantity()
            + " x "
            + order.name()
            + ", "
            + size
            + " "
            + style.unit().symbol()
            + " outside, "
            + Counted.of(built.bays().size(), "bay")
            + ", "
            + shelves(built));
  }

  private void write(CaseBoring boring) {
    write("way", boring.caseName() + ": " + boring.chosen().title());
  }

  private static String shelves(BuiltCase built) {
    long loose = roles(built, Part.Role.SHELF);
    long fixed = roles(built, Part.Role.FIXED_SHELF);
    return Counted.of(loose, "adjustable shelf", "adjustable shelves")
        + (fixed > 0 ? " and " + fixed + " fixed" : "");
  }

  private static long roles(BuiltCase built, Part.Role role) {
    return built.parts().stream().filter(p -> p.role() == role).count();
  }

  private static Stream<String> stock(MaterialPlan material) {
    return material.stock().stream()
        .filter(s -> s.count() > 0)
        .map(s -> s.count() + " x " + material.material().name() + " " + size(s) + bought(s));
  }

  /** The plan numbers the sizes of a stock; here the size alone says it. */
  private static String size(StockUse use) {
    return use.size().replaceFirst("^\\d+: ", "").replace(", on hand", "");
  }

  private static String bought(StockUse use) {
    return use.buy() == use.count()
        ? " (buy)"
        : use.buy() == 0 ? " (on hand)" : " (buy " + use.buy() + ")";
  }

  private Optional<ShelfAnswer> worst() {
    return plan.shelves().stream()
        .max(
            Comparator.comparingDouble(
                s ->
                    Math.max(
                        ratio(s.most().now(), s.limitNow()),
                        ratio(s.most().years(), s.limitYears()))));
  }

  private static double ratio(Figure one, Figure other) {
    return one.value().value() / other.value().value();
  }

  private void write(ShelfAnswer shelf) {
    write(
        "worst sag",
        text(shelf.most().now())
            + " now, "
            + text(shelf.most().years())
            + " after years, of "
            + text(shelf.limitNow())
            + " and "
            + text(shelf.limitYears())
            + " allowed: "
            + shelf.caseName()
            + ", "
            + shelf.mark()
            + ", the load "
            + shelf.most().load());
  }

  private void weights() {
    write(
        "weight",
        plan.cases().stream()
            .map(c -> c.order().name())
            .flatMap(name -> weight(name).stream())
            .collect(Collectors.joining("; ")));
  }

  private Optional<String> weight(String name) {
    Optional<String> loaded = total(Figure.id(name) + "/weight-loaded");
    return total(Figure.id(name) + "/weight")
        .map(w -> name + " " + w + " empty" + loaded.map(l -> ", " + l + " loaded").orElse(""));
  }

  private Optional<String> total(String id) {
    return plan.totals().stream().filter(f -> f.id().equals(id)).findFirst().map(this::text);
  }

  private String text(Figure figure) {
    return figure.value().text(style.unit());
  }

  private String money(String amount) {
    String currency = plan.job().currency();
    boolean word =
        !currency.isEmpty() && Character.isLetter(currency.codePointBefore(currency.length()));
    return currency + (word ? " " : "") + amount;
  }

  private void findings() {
    lines.add(Ink.STRONG.on(terminal, counts()));
    plan.findings().forEach(this::write);
  }

  private String counts() {
    String all =
        Stream.of(Severity.values())
            .filter(s -> count(s) > 0)
            .map(s -> Counted.of(count(s), word(s)))
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? "Nothing found that is wrong or doubtful." : all;
  }

  private long count(Severity severity) {
    return plan.findings().stream().filter(f -> f.severity() == severity).count();
  }

  private static String word(Severity severity) {
    return switch (severity) {
      case REFUSED -> "refusal";
      case ERROR -> "error";
      case DOUBT -> "doubt";
      case NOTE -> "note";
    };
  }

  private void write(Finding finding) {
    Ink ink =
        switch (finding.severity()) {
          case REFUSED, ERROR -> Ink.ERROR;
          case DOUBT -> Ink.DOUBT;
          case NOTE -> Ink.PLAIN;
        };
    lines.add(
        "  "
            + ink.on(terminal, word(finding.severity()))
            + " "
            + finding.kind()
            + place(finding)
            + ": "
            + finding.what());
    finding.remedies().forEach(r -> lines.add("      " + cure(r)));
  }

  static String cure(Finding.Remedy remedy) {
    String cost = remedy.cost().isEmpty() ? "" : "; cost: " + remedy.cost();
    return "- cure: " + remedy.what() + cost;
  }

  private static String place(Finding finding) {
    String name = finding.place().caseName();
    String part = finding.place().part().map(p -> ", " + p).orElse("");
    return name.isEmpty() ? "" : ", " + name + part;
  }
}
