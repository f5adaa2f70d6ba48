package fourpin.shop.web;

import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.fields.Field;
import fourpin.shop.fields.FileFields;
import fourpin.shop.fields.Known;
import fourpin.shop.fields.Part;
import fourpin.shop.file.Forms;
import fourpin.shop.store.Racked;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the shop keeps for all its jobs: the rack, the tools, and its habits. */
public final class ShopPage implements FieldPage {

  /** What is laid together; one is open at a time. */
  public enum Shelf {
    RACK("Rack", List.of()),
    TOOLS("Tools", List.of("tools")),
    HABITS("Settings of the shop", List.of("shop", "unit", "settings"));

    private final String title;
    private final List<String> keys;

    Shelf(String title, List<String> keys) {
      this.title = title;
      this.keys = keys;
    }

    public String title() {
      return title;
    }

    List<String> keys() {
      return keys;
    }

    static Shelf named(String name) {
      return List.of(values()).stream().filter(s -> s.name().equals(name)).findFirst().orElse(RACK);
    }
  }

  /**
   * A piece of the rack as it is shown.
   *
   * @param counted how many, or what was typed for that and not taken
   * @param trouble why it was not taken
   */
  public record Line(
      String id,
      long version,
      String what,
      String size,
      String counted,
      Optional<String> trouble,
      String price,
      String note) {

    static Line of(Racked racked, Typing typing) {
      var piece = racked.piece();
      Optional<Typing.Typed> typed = typing.find(id(racked.id()));
      return new Line(
          racked.id(),
          racked.version(),
          piece.material() + ", " + RackFields.plain(piece.form()),
          String.join(
              " x ",
              RackFields.shown(piece.thickness()),
              RackFields.shown(piece.length()),
              RackFields.shown(piece.width())),
          typed.map(Typing.Typed::words).orElse(Integer.toString(piece.count())),
          typed.flatMap(Typing.Typed::trouble),
          piece.price().map(java.math.BigDecimal::toPlainString).orElse(""),
          piece.note());
    }

    /** Of what is typed for a piece. */
    static String id(String piece) {
      return "piece-" + piece;
    }
  }

  private final Optional<ShopDesk.Kept> kept;
  private final List<Racked> rack;
  private final Shelf open;
  private final String token;
  private final String notice;
  private final Typing typing;

  ShopPage(
      Optional<ShopDesk.Kept> kept,
      List<Racked> rack,
      Shelf open,
      String token,
      String notice,
      Typing typing) {
    this.kept = kept;
    this.rack = List.copyOf(rack);
    this.open = open;
    this.token = token;
    this.notice = notice;
    this.typing = typing;
  }

  /** What one shelf of the file holds. */
  static Part part(JobText text, Shelf shelf) {
    return new FileFields(text, Forms.SHOP, new ShopKnown(unit(text)))
        .part("", shelf.title(), Route.TOP, Forms.SHOP, shelf.keys());
  }

  private static Unit unit(JobText text) {
    return text.word(Route.of("unit")).orElse("mm").equals("inch") ? Unit.INCH : Unit.MILLIMETRE;
  }

  /** Bare numbers on the page are in this unit. */
  static Unit unit(Optional<ShopDesk.Kept> kept) {
    return kept.map(k -> unit(k.text())).orElse(Unit.INCH);
  }

  /** What a shop knows for the fields of its file. */
  private record ShopKnown(Unit unit) implements Known {

    @Override
    public List<Field.Choice> materials(List<Material.Kind> kinds) {
      return List.of();
    }

    @Override
    public List<String> cases() {
      return List.of();
    }

    @Override
    public String standing(Setting setting) {
      String usual = unit.customary() ? setting.inchDefault() : setting.metricDefault();
      return usual.isEmpty() ? "none" : usual;
    }

    @Override
    public String limit(String written) {
      return JobKnown.limit(written, unit);
    }

    @Override
    public String start(String group, String key) {
      return Starts.of(unit.customary()).find(group + "." + key).orElse("");
    }
  }

  public List<Shelf> shelves() {
    return List.of(Shelf.values());
  }

  public Shelf open() {
    return open;
  }

  /** The change that the page shows; of a shop that is begun. */
  public String revision() {
    return kept.map(k -> HistoryPage.line(k.revision())).orElse("");
  }

  public Optional<Part> part() {
    return kept.map(k -> part(k.text(), open)).filter(_ -> !open.keys().isEmpty());
  }

  public List<Line> rack() {
    return rack.stream().map(r -> Line.of(r, typing)).toList();
  }

  /** For a piece more. */
  public List<Box> rackBlanks() {
    return RackFields.blanks(unit(kept)).stream().map(this::box).toList();
  }

  public String notice() {
    return notice;
  }

  /** The parts in which lengths are printed. */
  static LengthStyle style(Unit unit) {
    return unit.customary() ? LengthStyle.FRACTIONS : LengthStyle.MILLIMETRES;
  }

  @Override
  public String base() {
    return "/shop";
  }

  @Override
  public String token() {
    return token;
  }

  @Override
  public String seen() {
    return kept.map(k -> k.revision().id().value()).orElse("");
  }

  @Override
  public Map<String, String> along() {
    Map<String, String> along = new LinkedHashMap<>();
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

  @Override
  public boolean isBegun(Part.Begin begin) {
    return typing.isBegun(begin);
  }

  @Override
  public List<Box> allBoxes() {
    return part().stream().flatMap(Part::allFields).map(f -> box(f.shown())).toList();
  }

  @Override
  public List<String> outline() {
    return Parts.outline(this, part().stream().toList());
  }
}
