package fourpin.shop.fields;

import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * One thing of a file that can be written in or chosen.
 *
 * @param shown how it looks
 * @param at where it stands in the file
 * @param targets what to change for what was typed; none where that changes nothing
 */
public record Field(Shown shown, Route at, Function<String, List<Target>> targets) {

  /**
   * How a field looks.
   *
   * @param id unique on the page
   * @param choices to choose from; none where it is written in
   * @param written as the file has it; empty where it does not state it
   * @param standing what holds where the file does not state it
   * @param note beside it: what it is, its range, where its usual value comes from
   */
  public record Shown(
      String id, String label, List<Choice> choices, String written, String standing, String note) {
    public Shown {
      choices = List.copyOf(choices);
    }
  }

  /** One of several. @param value as the file has it */
  public record Choice(String value, String words) {

    public static Choice of(String value) {
      return new Choice(value, value);
    }
  }

  /** What is typed with commas between is a list; one thing stands alone. */
  public static Value listed(String typed) {
    List<Value> items =
        Arrays.stream(typed.split("[,;]"))
            .map(String::strip)
            .filter(s -> !s.isEmpty())
            .map(Value::of)
            .toList();
    return items.size() == 1 ? items.getFirst() : Value.list(items);
  }
}
