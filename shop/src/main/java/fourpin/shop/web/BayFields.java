package fourpin.shop.web;

import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.job.CaseOrder;
import fourpin.job.Setting;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.fields.Field;
import fourpin.shop.fields.FileFields;
import fourpin.shop.fields.Target;
import fourpin.shop.file.Forms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What stands under each bay of the drawing. */
final class BayFields {

  /** What makers seldom state of one bay alone. */
  private static final List<String> SELDOM =
      List.of("fixed-shelves", "load", "rows-back", "levels-up");

  /** The fields of a bay. @param seldom those that few look for */
  record Column(List<Field> first, List<Field> seldom) {

    Stream<Field> all() {
      return Stream.concat(first.stream(), seldom.stream());
    }
  }

  private final AtCase at;

  BayFields(AtCase at) {
    this.at = at;
  }

  /** How many there are. */
  Field count() {
    return new Field(
        new Field.Shown(
            "bays", "Bays", List.of(), Integer.toString(at.bays().count()), "", "side by side"),
        at.route().to("bays"),
        this::resized);
  }

  /** What is no number goes into the file's words, so that its reader says what is wrong. */
  private List<Target> resized(String typed) {
    String words = typed.strip();
    boolean number = words.matches("[1-9]\\d?") && Integer.parseInt(words) <= CaseOrder.MOST_BAYS;
    return List.of(
        number
            ? at.bays().resized(Integer.parseInt(words))
            : Target.put(at.route().to("bays"), Value.of(words)));
  }

  /** All of them. */
  Stream<Field> all() {
    return Stream.concat(Stream.of(count()), columns().stream().flatMap(Column::all));
  }

  /** From the left. */
  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    for (int bay = 1; bay <= at.order().bays().size(); bay++) {
      int number = bay;
      columns.add(new Column(first(bay), SELDOM.stream().map(key -> seldom(number, key)).toList()));
    }
    return columns;
  }

  private List<Field> first(int bay) {
    String id = "bay-" + bay + "-";
    return List.of(
        new Field(
            new Field.Shown(
                id + "width", "Clear width", List.of(), bayWord(bay, "width"), clear(bay), ""),
            route(bay, "width"),
            typed -> at.bays().with(bay, "width", value(typed))),
        new Field(
            new Field.Shown(
                id + "count",
                "Shelves",
                List.of(),
                count(bay),
                Integer.toString(heights(bay).size()),
                ""),
            route(bay, "shelves"),
            typed -> at.bays().shelves(bay, "count", value(typed))),
        new Field(
            new Field.Shown(
                id + "at",
                "At heights",
                List.of(),
                shelvesAt(bay),
                String.join(", ", heights(bay)),
                "upper faces, from the foot"),
            route(bay, "shelves"),
            typed ->
                at.bays()
                    .shelves(
                        bay,
                        "at",
                        typed.isBlank() ? Optional.empty() : Optional.of(Field.listed(typed)))),
        new Field(
            new Field.Shown(id + "holds", "Holds", things(), bayWord(bay, "holds"), "", ""),
            route(bay, "holds"),
            typed -> at.bays().with(bay, "holds", value(typed))));
  }

  private Field seldom(int bay, String key) {
    return new FileFields(at.text(), Forms.JOB, new JobKnown(at.state()))
        .field(
            "bay-" + bay + "-" + key,
            Forms.BAY,
            key,
            bayWord(bay, key),
            route(bay, key),
            now -> at.bays().with(bay, key, now));
  }

  /** Problems tell bays by their numbers. */
  private Route route(int bay, String key) {
    return at.route().to("bays").item(bay, at.bays().count()).to(key);
  }

  private static Optional<Value> value(String typed) {
    return typed.isBlank() ? Optional.empty() : Optional.of(Value.of(typed.strip()));
  }

  private String bayWord(int bay, String key) {
    return at.bays().value(bay, key).map(Value::words).orElse("");
  }

  private String count(int bay) {
    return at.bays()
        .value(bay, "shelves")
        .flatMap(v -> v instanceof Value.Text ? Optional.of(v) : v.at(Route.of("count")))
        .map(Value::words)
        .orElse("");
  }

  private String shelvesAt(int bay) {
    return at.bays()
        .value(bay, "shelves")
        .flatMap(v -> v.at(Route.of("at")))
        .map(Value::words)
        .orElse("");
  }

  private List<Field.Choice> things() {
    String all =
        at.text()
            .word(at.route().to("holds"))
            .or(() -> at.text().word(at.route().to("load")))
            .orElseGet(() -> at.words().value(at.state().job().settings(), Setting.SHELF_LOAD));
    List<Field.Choice> choices = new ArrayList<>();
    choices.add(new Field.Choice("", "as the case: " + all));
    Reference.things().rows().stream()
        .map(HeldThing::name)
        .forEach(name -> choices.add(Field.Choice.of(name)));
    return choices;
  }

  /** As it comes out, whatever was stated. */
  private String clear(int bay) {
    return at.state()
        .built(at.order())
        .flatMap(built -> space(built, bay))
        .map(space -> plain(at.words().number(space.clear().size(Axis.X))))
        .orElse("");
  }

  private static Optional<BaySpace> space(BuiltCase built, int bay) {
    return built.bays().stream().filter(b -> b.number() == bay).findFirst();
  }

  /** The upper faces of the adjustable shelves of a bay, from the bottom up. */
  List<String> heights(int bay) {
    return at.state()
        .built(at.order())
        .map(
            built ->
                grid(bay).stream()
                    .flatMap(g -> g.seats().stream())
                    .map(seat -> built.part(seat.shelf()).box().high().z())
                    .sorted()
                    .map(h -> plain(at.words().number(h)))
                    .toList())
        .orElse(List.of());
  }

  Optional<BayGrid> grid(int bay) {
    return at.state().plan().grids().stream()
        .filter(g -> g.caseName().equals(at.order().name()) && g.bay() == bay)
        .findFirst();
  }

  /** A printed length as it may be typed: the nearest hole is taken, so that is near enough. */
  static String plain(String printed) {
    return printed.replace("≈ ", "");
  }
}
