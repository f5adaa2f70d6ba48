package fourpin.shop.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/** Values written over several lines where that reads better. */
final class BlockText {

  /** A group of single values up to this length is read at a glance. */
  private static final int SHORT = 60;

  private static final String INDENT = "  ";

  private BlockText() {}

  /** A key with its value, the first line without its indent. */
  static List<String> entry(String key, Value value) {
    String head = FlowText.key(key) + ":";
    List<String> lines = new ArrayList<>();
    if (isInline(value)) {
      lines.add(head + " " + FlowText.of(value, FlowText.Within.LINES));
    } else {
      lines.add(head);
      below(value).forEach(line -> lines.add(INDENT + line));
    }
    return lines;
  }

  /** An item with its dash. */
  static List<String> item(Value value) {
    List<String> lines = new ArrayList<>();
    if (isInline(value)) {
      lines.add("- " + FlowText.of(value, FlowText.Within.LINES));
    } else {
      below(value).forEach(line -> lines.add((lines.isEmpty() ? "- " : INDENT) + line));
    }
    return lines;
  }

  /** Whether it goes on the line of its key. */
  static boolean isInline(Value value) {
    return switch (value) {
      case Value.Text(_), Value.Nothing() -> true;
      case Value.Items(var items) -> isShort(value, items);
      case Value.Group(var entries) -> isShort(value, entries.values());
    };
  }

  private static boolean isShort(Value value, Collection<Value> parts) {
    boolean single = parts.stream().noneMatch(p -> p instanceof Value.Items || isGroup(p));
    return parts.isEmpty()
        || (single && FlowText.of(value, FlowText.Within.LINES).length() <= SHORT);
  }

  private static boolean isGroup(Value value) {
    return value instanceof Value.Group;
  }

  /** The lines of a value below its key. */
  static List<String> below(Value value) {
    List<String> lines = new ArrayList<>();
    switch (value) {
      case Value.Group(var entries) -> {
        for (Map.Entry<String, Value> entry : entries.entrySet()) {
          lines.addAll(entry(entry.getKey(), entry.getValue()));
        }
      }
      case Value.Items(var items) -> items.forEach(item -> lines.addAll(item(item)));
      default -> lines.add(FlowText.of(value, FlowText.Within.LINES));
    }
    return lines;
  }
}
