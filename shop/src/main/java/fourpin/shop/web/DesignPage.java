package fourpin.shop.web;

import fourpin.casework.Finding.Severity;
import fourpin.job.CaseOrder;
import fourpin.measure.Figure;
import fourpin.sheets.packet.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The page on which a case is designed. */
public final class DesignPage {

  /** A field as it stands on the page. */
  public record Box(Field.Shown shown, Optional<Trouble> trouble) {

    /** What stands in it: what was typed, where that was not taken. */
    public String value() {
      return trouble.map(Trouble::typed).orElse(shown.written());
    }
  }

  /** Why something that was typed was not taken. */
  public record Trouble(String typed, String rule, String remedy) {

    /** In sentences. */
    public String words() {
      String end = remedy.endsWith("?") ? "" : ".";
      return capital(rule) + ". " + capital(remedy) + end;
    }
  }

  /** Fields under a heading. */
  public record Group(String title, List<Box> boxes) {}

  /** What stands under a bay. */
  public record Column(int bay, List<Box> boxes) {}

  /** The figure of the whole job that makers look at first. */
  public record Sum(String title, Cell cell) {}

  private static final List<String> FIRST_SUMS =
      List.of("job/holes", "job/boring-time", "job/stock-to-buy", "job/price");

  private final State state;
  private final CaseOrder order;
  private final String token;
  private final String notice;
  private final Map<String, Trouble> troubles;
  private final Optional<Board> board;
  private final List<Group> groups;
  private final List<Column> columns;

  /**
   * @param token that its forms show
   * @param notice what happened last; empty when the page is opened
   * @param troubles with what was typed, by the id of the field
   */
  DesignPage(
      State state, String token, String caseName, String notice, Map<String, Trouble> troubles) {
    this.token = token;
    this.state = state;
    this.order = state.order(caseName);
    this.notice = notice;
    this.troubles = Map.copyOf(troubles);
    this.board = Board.of(state, order);
    CaseFields fields = new CaseFields(state, order);
    this.groups = groups(fields);
    this.columns = columns(new BayFields(state, order));
  }

  public String base() {
    return "/jobs/" + state.revision().document().value();
  }

  public String seen() {
    return state.revision().id().value();
  }

  public String token() {
    return token;
  }

  public String title() {
    return state.job().title();
  }

  public String revision() {
    return "change " + state.revision().number() + ": " + state.revision().why();
  }

  public String caseName() {
    return order.name();
  }

  public List<String> caseNames() {
    return state.job().cases().stream().map(CaseOrder::name).toList();
  }

  /** What happened last; empty when the page is opened. */
  public String notice() {
    return notice;
  }

  public Optional<Board> board() {
    return board;
  }

  public List<Remark> remarks() {
    return Remark.all(state);
  }

  public List<Sheet> sheets() {
    return new Sheets(state, order).all();
  }

  public List<Group> groups() {
    return groups;
  }

  private List<Group> groups(CaseFields fields) {
    return fields.groups().stream()
        .filter(g -> !g.fields().isEmpty())
        .map(g -> new Group(g.title(), boxes(g.fields())))
        .toList();
  }

  public List<Column> columns() {
    return columns;
  }

  private List<Column> columns(BayFields fields) {
    List<Column> all = new ArrayList<>();
    for (List<Field> column : fields.columns()) {
      all.add(new Column(all.size() + 1, boxes(column)));
    }
    return all;
  }

  private List<Box> boxes(List<Field> all) {
    return all.stream()
        .map(f -> new Box(f.shown(), Optional.ofNullable(troubles.get(f.shown().id()))))
        .toList();
  }

  /** Every field of the page. */
  List<Box> allBoxes() {
    List<Box> all = new ArrayList<>();
    groups().forEach(g -> all.addAll(g.boxes()));
    columns().forEach(c -> all.addAll(c.boxes()));
    return all;
  }

  public List<Sum> sums() {
    Words words = new Words(state.job());
    return state.plan().totals().stream()
        .filter(f -> FIRST_SUMS.contains(f.id()))
        .map(f -> new Sum(f.title(), Cell.of(f, words)))
        .toList();
  }

  /** Whether the plan may go to the bench. */
  public String verdict() {
    long bad = count(Severity.REFUSED) + count(Severity.ERROR);
    long doubts = count(Severity.DOUBT);
    return bad > 0
        ? "Do not cut yet: " + counted(bad, "finding") + " to settle"
        : doubts > 0
            ? counted(doubts, "thing") + " to look at before cutting"
            : "Nothing found that forbids cutting";
  }

  /** For the style sheet. */
  public String verdictClass() {
    return count(Severity.REFUSED) + count(Severity.ERROR) > 0
        ? "bad"
        : count(Severity.DOUBT) > 0 ? "doubt" : "good";
  }

  private long count(Severity severity) {
    return state.plan().findings().stream().filter(f -> f.severity() == severity).count();
  }

  private static String counted(long count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }

  /** A figure with its working. */
  public record Working(
      String title, String value, String formula, List<Input> inputs, String source, String id) {}

  /** One symbol of a formula. */
  public record Input(String symbol, String value, String meaning, String source) {}

  static Optional<Working> working(State state, String id) {
    Words words = new Words(state.job());
    return state.plan().figures().stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .map(f -> working(f, words));
  }

  private static Working working(Figure figure, Words words) {
    return new Working(
        capital(figure.title()),
        words.value(figure),
        figure.formula(),
        figure.inputs().stream()
            .map(i -> new Input(i.symbol(), both(i, words), i.meaning(), i.source().text()))
            .toList(),
        figure.source().text(),
        figure.id());
  }

  /** As the maker reads it and, where that differs, in the unit that the formula is worked in. */
  private static String both(Figure.Input input, Words words) {
    String shown = words.quantity(input.value());
    String computed = input.value().computedText();
    return shown.equals(computed) ? shown : shown + " (" + computed + ")";
  }

  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
