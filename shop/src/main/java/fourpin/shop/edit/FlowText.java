package fourpin.shop.edit;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.common.ScalarStyle;

/** Values written on one line. */
final class FlowText {

  /** Where a value stands: between braces more signs need quotes. */
  enum Within {
    LINES(""),
    BRACES("{k: %s}");

    private final String sample;

    Within(String sample) {
      this.sample = sample;
    }

    private String sample(String text) {
      return this == LINES ? "k: " + text : sample.replace("%s", text);
    }
  }

  private FlowText() {}

  static String of(Value value, Within within) {
    return switch (value) {
      case Value.Text(String text) -> text(text, ScalarStyle.PLAIN, within);
      case Value.Nothing() -> "null";
      case Value.Items(var items) ->
          items.stream()
              .map(item -> of(item, Within.BRACES))
              .collect(Collectors.joining(", ", "[", "]"));
      case Value.Group(var entries) ->
          entries.entrySet().stream()
              .map(FlowText::entry)
              .collect(Collectors.joining(", ", "{", "}"));
    };
  }

  private static String entry(Map.Entry<String, Value> entry) {
    return key(entry.getKey()) + ": " + of(entry.getValue(), Within.BRACES);
  }

  static String key(String name) {
    return text(name, ScalarStyle.PLAIN, Within.BRACES);
  }

  /** In the quotes that stood there, if they will do; else in single ones, where any are needed. */
  static String text(String text, ScalarStyle former, Within within) {
    String doubled = "\"" + text + "\"";
    return switch (former) {
      case SINGLE_QUOTED -> single(text);
      case DOUBLE_QUOTED -> means(doubled, text, within) ? doubled : single(text);
      default -> means(text, text, within) ? text : single(text);
    };
  }

  private static String single(String text) {
    return "'" + text.replace("'", "''") + "'";
  }

  private static boolean means(String written, String text, Within within) {
    Optional<Value> read = Nodes.parse(within.sample(written)).map(Nodes::value);
    return read.flatMap(v -> v.at(Route.of("k"))).equals(Optional.of(Value.of(text)));
  }
}
