package fourpin.shop.web;

import fourpin.shop.edit.Change;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One thing of a job that can be written in or chosen.
 *
 * @param shown how it looks
 * @param target what to change for what was typed; nothing where that changes nothing
 */
public record Field(Shown shown, Function<String, Optional<Target>> target) {

  /**
   * How a field looks.
   *
   * @param id unique on the page
   * @param choices to choose from; none where it is written in
   * @param written as the file has it; empty where it does not state it
   * @param standing what holds where the file does not state it
   * @param note beside it: the unit, or what it is measured from
   */
  public record Shown(
      String id, String label, List<Choice> choices, String written, String standing, String note) {
    public Shown {
      choices = List.copyOf(choices);
    }
  }

  /** One of several. @param value as the file has it */
  public record Choice(String value, String words) {

    static Choice of(String value) {
      return new Choice(value, value);
    }
  }

  /** What is typed goes to one place as one word; nothing typed takes it away. */
  static Optional<Target> word(JobText text, Route route, String typed) {
    boolean there = text.value(route).isPresent();
    return typed.isBlank()
        ? there ? Optional.of(new Target(route, new Change.Remove())) : Optional.empty()
        : Optional.of(new Target(route, new Change.Put(Value.of(typed.strip()))));
  }

  /** The same for what may be several words with commas between them. */
  static Optional<Target> words(JobText text, Route route, String typed) {
    return typed.isBlank()
        ? word(text, route, typed)
        : Optional.of(new Target(route, new Change.Put(listed(typed))));
  }

  static Value listed(String typed) {
    List<Value> items =
        Arrays.stream(typed.split("[,;]"))
            .map(String::strip)
            .filter(s -> !s.isEmpty())
            .map(Value::of)
            .toList();
    return items.size() == 1 ? items.getFirst() : Value.list(items);
  }
}
