package fourpin.shop.web;

import fourpin.job.CaseOrder;
import fourpin.measure.Figure;
import fourpin.measure.FigureText;
import fourpin.sheets.packet.Words;
import fourpin.sheets.solid.Solid;
import fourpin.shop.fields.Field;
import fourpin.shop.fields.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The page on which a case is designed. */
public final class DesignPage implements FieldPage {

  /** What stands under a bay. @param seldom what few look for */
  public record Column(int bay, List<Box> boxes, List<Box> seldom) {

    /** Whether anything of that is stated. */
    public boolean showsSeldom() {
      return seldom.stream().anyMatch(b -> !b.value().isEmpty());
    }
  }

  /** The figure of the whole job that makers look at first. */
  public record Sum(String title, Cell cell) {}

  private static final List<String> FIRST_SUMS =
      List.of("job/holes", "job/boring-time", "job/stock-to-buy", "job/tools-to-buy", "job/price");

  private final AtCase at;
  private final State state;
  private final CaseOrder order;
  private final Drawer open;
  private final String token;
  private final String notice;
  private final Typing typing;
  private final Optional<Board> board;
  private final List<Part> parts;
  private final List<Column> columns;

  /**
   * @param token that its forms show
   * @param notice what happened last; empty when the page is opened
   * @param typing what was typed and not taken
   */
  DesignPage(State state, String token, View view, String notice, Typing typing) {
    this.token = token;
    this.state = state;
    this.order = state.order(view.caseName());
    this.at = new AtCase(state, order);
    this.open = view.open();
    this.notice = notice;
    this.typing = typing;
    this.board = Board.of(state, order);
    this.parts = open.parts(at);
    this.columns = columns(new BayFields(at));
  }

  /** The field of that id among all that are shown. */
  static Optional<Field> field(AtCase at, Drawer open, String id) {
    return Stream.concat(open.parts(at).stream().flatMap(Part::allFields), new BayFields(at).all())
        .filter(f -> f.shown().id().equals(id))
        .findFirst();
  }

  @Override
  public String base() {
    return "/jobs/" + state.revision().document().value();
  }

  @Override
  public String seen() {
    return state.revision().id().value();
  }

  @Override
  public String token() {
    return token;
  }

  public String title() {
    return state.job().title();
  }

  public String revision() {
    return HistoryPage.line(state.revision());
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

  /** What the case is in three dimensions, in a sentence; nothing if it cannot be built. */
  public Optional<String> solid() {
    return state.built(order).map(Solid::about);
  }

  /** Where its file in three dimensions is. */
  public String solidFile() {
    return base() + "/solid.glb?case=" + Addresses.encoded(order.name());
  }

  public List<Remark> remarks() {
    return Remark.all(state);
  }

  public List<Sheet> sheets() {
    return new Sheets(state, order).all();
  }

  public List<Drawer> drawers() {
    return List.of(Drawer.values());
  }

  /** The drawer whose fields are shown. */
  public Drawer open() {
    return open;
  }

  public List<Part> parts() {
    return parts;
  }

  /** How many bays there are. */
  public Box bayCount() {
    return box(new BayFields(at).count().shown());
  }

  public List<Column> columns() {
    return columns;
  }

  private List<Column> columns(BayFields fields) {
    List<Column> all = new ArrayList<>();
    for (BayFields.Column column : fields.columns()) {
      all.add(new Column(all.size() + 1, boxes(column.first()), boxes(column.seldom())));
    }
    return all;
  }

  private List<Box> boxes(List<Field> all) {
    return all.stream().map(f -> box(f.shown())).toList();
  }

  @Override
  public Map<String, String> along() {
    Map<String, String> along = new LinkedHashMap<>();
    along.put("case", caseName());
    along.put("open", open.name());
    return along;
  }

  @Override
  public Box box(Field.Shown shown) {
    return typing.box(shown);
  }

  @Override
  public Optional<String> trouble(Part.Begin begin) {
    return typing.trouble(begin);
  }

  /** What was answered to a press on a cure and is to be decided. */
  public Optional<String> question(Remark.Cure cure) {
    return cure.press().flatMap(typing::question);
  }

  /** Whether the cures of a finding are in sight. */
  public boolean shows(Remark remark) {
    return remark.forbids() || remark.cures().stream().anyMatch(c -> question(c).isPresent());
  }

  /** The page as it is when it is opened there. */
  public String fresh() {
    return base() + "?case=" + Addresses.encoded(caseName()) + "&open=" + open.name();
  }

  @Override
  public boolean isBegun(Part.Begin begin) {
    return typing.isBegun(begin);
  }

  @Override
  public List<Box> allBoxes() {
    List<Box> all = new ArrayList<>();
    parts().forEach(p -> all.addAll(boxes(p.allFields().toList())));
    all.add(bayCount());
    columns().forEach(c -> Stream.of(c.boxes(), c.seldom()).forEach(all::addAll));
    return all;
  }

  @Override
  public List<String> outline() {
    return Parts.outline(this, parts);
  }

  public List<Sum> sums() {
    Words words = new Words(state.job());
    return state.plan().totals().stream()
        .filter(f -> FIRST_SUMS.contains(f.id()))
        .map(f -> new Sum(f.title(), Cell.of(f, words)))
        .toList();
  }

  /** Whether the plan may go to the bench. */
  public Judgement judgement() {
    return Judgement.of(state.plan());
  }

  /** A figure with its working. */
  public record Working(
      String title, String value, String formula, List<Input> inputs, String source, String id) {}

  /** One symbol of a formula. */
  public record Input(String symbol, String value, String meaning, String source) {}

  static Optional<Working> working(State state, String id) {
    FigureText text = new FigureText(state.job().style(), state.job().currency());
    return state.plan().figures().stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .map(f -> working(f, text));
  }

  private static Working working(Figure figure, FigureText text) {
    return new Working(
        capital(figure.title()),
        text.value(figure.value()),
        figure.formula(),
        figure.inputs().stream()
            .map(i -> new Input(i.symbol(), text.input(i.value()), i.meaning(), i.source().text()))
            .toList(),
        figure.source().text(),
        figure.id());
  }

  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
