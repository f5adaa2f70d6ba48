package fourpin.shop.web;

import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.job.CaseOrder;
import fourpin.job.Setting;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import fourpin.sheets.packet.Words;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands under each bay of the drawing. */
final class BayFields {

  private final State state;
  private final JobText text;
  private final CaseOrder order;
  private final Route aCase;
  private final Words words;
  private final StatedBays bays;

  BayFields(State state, CaseOrder order) {
    this.state = state;
    this.text = state.text();
    this.order = order;
    this.aCase = Route.of("cases", order.name());
    this.words = new Words(state.job());
    this.bays = StatedBays.of(state, order);
  }

  /** From the left. */
  List<List<Field>> columns() {
    List<List<Field>> columns = new ArrayList<>();
    for (int bay = 1; bay <= order.bays().size(); bay++) {
      columns.add(column(bay));
    }
    return columns;
  }

  private List<Field> column(int bay) {
    String id = "bay-" + bay + "-";
    return List.of(
        new Field(
            new Field.Shown(
                id + "width", "Clear width", List.of(), bayWord(bay, "width"), clear(bay), ""),
            typed -> bays.with(bay, "width", value(typed))),
        new Field(
            new Field.Shown(
                id + "count",
                "Shelves",
                List.of(),
                count(bay),
                Integer.toString(heights(bay).size()),
                ""),
            typed -> bays.shelves(bay, "count", value(typed))),
        new Field(
            new Field.Shown(
                id + "at",
                "At heights",
                List.of(),
                shelvesAt(bay),
                String.join(", ", heights(bay)),
                "upper faces, from the foot"),
            typed ->
                bays.shelves(
                    bay,
                    "at",
                    typed.isBlank() ? Optional.empty() : Optional.of(Field.listed(typed)))),
        new Field(
            new Field.Shown(id + "holds", "Holds", things(), bayWord(bay, "holds"), "", ""),
            typed -> bays.with(bay, "holds", value(typed))));
  }

  private static Optional<Value> value(String typed) {
    return typed.isBlank() ? Optional.empty() : Optional.of(Value.of(typed.strip()));
  }

  private String bayWord(int bay, String key) {
    return bays.value(bay, key).map(Desk::words).orElse("");
  }

  private String count(int bay) {
    return bays.value(bay, "shelves")
        .flatMap(v -> v instanceof Value.Text ? Optional.of(v) : v.at(Route.of("count")))
        .map(Desk::words)
        .orElse("");
  }

  private String shelvesAt(int bay) {
    return bays.value(bay, "shelves")
        .flatMap(v -> v.at(Route.of("at")))
        .map(Desk::words)
        .orElse("");
  }

  private List<Field.Choice> things() {
    String all =
        text.word(aCase.to("holds"))
            .or(() -> text.word(aCase.to("load")))
            .orElseGet(() -> words.value(state.job().settings(), Setting.SHELF_LOAD));
    List<Field.Choice> choices = new ArrayList<>();
    choices.add(new Field.Choice("", "as the case: " + all));
    Reference.things().rows().stream()
        .map(HeldThing::name)
        .forEach(name -> choices.add(Field.Choice.of(name)));
    return choices;
  }

  /** As it comes out, whatever was stated. */
  private String clear(int bay) {
    return state
        .built(order)
        .flatMap(built -> space(built, bay))
        .map(space -> CaseFields.plain(words.number(space.clear().size(Axis.X))))
        .orElse("");
  }

  private static Optional<BaySpace> space(BuiltCase built, int bay) {
    return built.bays().stream().filter(b -> b.number() == bay).findFirst();
  }

  /** The upper faces of the adjustable shelves of a bay, from the bottom up. */
  List<String> heights(int bay) {
    return state
        .built(order)
        .map(
            built ->
                grid(bay).stream()
                    .flatMap(g -> g.seats().stream())
                    .map(seat -> built.part(seat.shelf()).box().high().z())
                    .sorted()
                    .map(h -> CaseFields.plain(words.number(h)))
                    .toList())
        .orElse(List.of());
  }

  Optional<BayGrid> grid(int bay) {
    return state.plan().grids().stream()
        .filter(g -> g.caseName().equals(order.name()) && g.bay() == bay)
        .findFirst();
  }
}
