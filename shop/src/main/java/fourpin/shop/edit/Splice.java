package fourpin.shop.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Puts values into a text, or takes them out, and leaves all else as it is. Whether the outcome
 * means what was wanted is checked by who uses it.
 */
final class Splice {

  private final Offsets in;
  private final String text;

  Splice(String text) {
    this.in = new Offsets(text);
    this.text = text;
  }

  /** The text with the change; nothing where it is laid out in a way that cannot be changed so. */
  Optional<String> with(Node root, Route route, Change change) {
    Seat seat = Seat.top(root).along(route.steps());
    boolean there = seat.depth() == route.steps().size();
    return switch (change) {
      case Change.Put(Value now) ->
          there ? Optional.of(replaced(seat, now)) : added(seat, route, now);
      case Change.Remove() -> there && seat.holder().isPresent() ? removed(seat) : Optional.empty();
      case Change.Insert(Value now) -> inserted(root, route, now);
      case Change.Rename(String to) ->
          there ? seat.tuple().map(t -> renamed(t, to)) : Optional.empty();
    };
  }

  private String cut(int from, int to, String with) {
    return text.substring(0, from) + with + text.substring(to);
  }

  // In place of another

  private String replaced(Seat seat, Value now) {
    boolean inline = seat.within() == FlowText.Within.BRACES || BlockText.isInline(now);
    boolean wasBlock = isBlock(seat.node());
    if (inline) {
      return wasBlock ? blockByInline(seat, now) : inlineByInline(seat, now);
    }
    return wasBlock ? blockByBlock(seat, now) : inlineByBlock(seat, now);
  }

  private static boolean isBlock(Node node) {
    return !(node instanceof ScalarNode) && !Nodes.isFlow(node);
  }

  private String inlineByInline(Seat seat, Value now) {
    int start = in.start(seat.node());
    int end = in.end(seat.node());
    String written =
        now instanceof Value.Text(String words) && seat.node() instanceof ScalarNode former
            ? FlowText.text(words, former.getScalarStyle(), seat.within())
            : FlowText.of(now, seat.within());
    return cut(start, end, (start == end ? " " : "") + written);
  }

  private String blockByInline(Seat seat, Value now) {
    int start = in.start(seat.node());
    int end = in.end(seat.node());
    String written = FlowText.of(now, seat.within());
    int head = seat.tuple().map(in::colon).orElse(start);
    if (in.onOneLine(head, start)) {
      return cut(start, end, written);
    }
    String restOfLine = text.substring(head, in.lineEnd(head));
    return cut(head, in.lineEnd(end), " " + written + restOfLine);
  }

  private String blockByBlock(Seat seat, Value now) {
    int start = in.start(seat.node());
    return cut(start, in.end(seat.node()), in.joined(BlockText.below(now), in.column(start)));
  }

  private String inlineByBlock(Seat seat, Value now) {
    int start = in.start(seat.node());
    int end = in.end(seat.node());
    Optional<NodeTuple> tuple = seat.tuple();
    if (tuple.isEmpty()) {
      return cut(start, end, in.joined(BlockText.below(now), in.column(start)));
    }
    int indent = in.column(in.start(tuple.get().getKeyNode())) + 2;
    String restOfLine = text.substring(end, in.lineEnd(end)).stripTrailing();
    String below = in.newline() + " ".repeat(indent) + in.joined(BlockText.below(now), indent);
    return cut(in.colon(tuple.get()), in.lineEnd(end), restOfLine + below);
  }

  private String renamed(NodeTuple tuple, String to) {
    return cut(in.start(tuple.getKeyNode()), in.end(tuple.getKeyNode()), FlowText.key(to));
  }

  // A key that was not there

  private Optional<String> added(Seat seat, Route route, Value now) {
    List<Route.Step> missing = route.steps().subList(seat.depth(), route.steps().size());
    boolean keys = missing.stream().allMatch(s -> s instanceof Route.Key);
    if (!keys || !(seat.node() instanceof MappingNode group)) {
      return Optional.empty();
    }
    Value value = now;
    for (Route.Step step : missing.subList(1, missing.size()).reversed()) {
      LinkedHashMap<String, Value> around = new LinkedHashMap<>();
      around.put(step.text(), value);
      value = Value.group(around);
    }
    String key = missing.getFirst().text();
    return Optional.of(
        Nodes.isFlow(group) ? addedFlow(group, key, value) : addedLine(group, key, value));
  }

  private String addedLine(MappingNode group, String key, Value value) {
    int indent = in.column(in.start(group.getValue().getFirst().getKeyNode()));
    int at = in.lineEnd(in.end(group));
    String lines = in.joined(BlockText.entry(key, value), indent);
    return cut(at, at, in.newline() + " ".repeat(indent) + lines);
  }

  private String addedFlow(MappingNode group, String key, Value value) {
    String entry = FlowText.key(key) + ": " + FlowText.of(value, FlowText.Within.BRACES);
    if (group.getValue().isEmpty()) {
      return cut(in.start(group), in.end(group), "{" + entry + "}");
    }
    int at = in.end(group.getValue().getLast());
    return cut(at, at, ", " + entry);
  }

  // An item more

  private Optional<String> inserted(Node root, Route route, Value now) {
    Seat seat = Seat.top(root).along(route.parent().steps());
    return seat.node() instanceof SequenceNode list && route.last() instanceof Route.Item(int n, _)
        ? Nodes.isFlow(list) ? insertedFlow(list, n, now) : insertedLine(list, n, now)
        : Optional.empty();
  }

  private Optional<String> insertedFlow(SequenceNode list, int number, Value now) {
    String item = FlowText.of(now, FlowText.Within.BRACES);
    List<Node> items = list.getValue();
    if (items.isEmpty()) {
      return Optional.of(cut(in.start(list), in.end(list), "[" + item + "]"));
    }
    boolean last = number > items.size();
    int at = last ? in.end(items.getLast()) : in.start(items.get(number - 1));
    return Optional.of(cut(at, at, last ? ", " + item : item + ", "));
  }

  /** Behind the item before it, so that comments stay with what they stand above. */
  private Optional<String> insertedLine(SequenceNode list, int number, Value now) {
    Optional<Integer> dash = dash(list.getValue().getFirst());
    return dash.map(
        first -> {
          int indent = in.column(first);
          String lines = in.joined(BlockText.item(now), indent);
          String margin = in.newline() + " ".repeat(indent);
          if (number == 1) {
            return cut(first, first, lines + margin);
          }
          int at = in.lineEnd(in.end(list.getValue().get(number - 2)));
          return cut(at, at, margin + lines);
        });
  }

  // Taken away

  private Optional<String> removed(Seat seat) {
    Node holder = seat.holder().orElseThrow();
    if (size(holder) == 1) {
      return Optional.of(emptied(holder));
    }
    return Nodes.isFlow(holder) || seat.within() == FlowText.Within.BRACES
        ? Optional.of(removedFlow(holder, seat.index()))
        : removedLines(holder, seat);
  }

  private static int size(Node holder) {
    return switch (holder) {
      case MappingNode group -> group.getValue().size();
      case SequenceNode list -> list.getValue().size();
      default -> 0;
    };
  }

  /** The last one gone leaves empty braces; they stand where the first line was. */
  private String emptied(Node holder) {
    String empty = holder instanceof MappingNode ? "{}" : "[]";
    return cut(in.start(holder), in.end(holder), empty);
  }

  private String removedFlow(Node holder, int index) {
    boolean last = index == size(holder) - 1;
    return last
        ? cut(partEnd(holder, index - 1), partEnd(holder, index), "")
        : cut(partStart(holder, index), partStart(holder, index + 1), "");
  }

  private int partStart(Node holder, int index) {
    return switch (holder) {
      case MappingNode group -> in.start(group.getValue().get(index).getKeyNode());
      case SequenceNode list -> in.start(list.getValue().get(index));
      default -> in.start(holder);
    };
  }

  private int partEnd(Node holder, int index) {
    return switch (holder) {
      case MappingNode group -> in.end(group.getValue().get(index));
      case SequenceNode list -> in.end(list.getValue().get(index));
      default -> in.end(holder);
    };
  }

  private Optional<String> removedLines(Node holder, Seat seat) {
    int end = partEnd(holder, seat.index());
    return lineOf(holder, seat.index())
        .map(from -> ownLine(from) ? withoutLines(from, end) : joinedOn(holder, seat, from));
  }

  /** Where an entry or an item begins, its dash included. */
  private Optional<Integer> lineOf(Node holder, int index) {
    return holder instanceof SequenceNode list
        ? dash(list.getValue().get(index))
        : Optional.of(partStart(holder, index));
  }

  private boolean ownLine(int from) {
    return text.substring(in.lineStart(from), from).isBlank();
  }

  private String withoutLines(int from, int end) {
    boolean lastLine = in.nextLine(end) == text.length() && !text.endsWith("\n");
    int start = in.lineStart(from);
    return lastLine ? text.substring(0, start).stripTrailing() : cut(start, in.nextLine(end), "");
  }

  /** What stands first in an item stands beside its dash, and so does then what came second. */
  private String joinedOn(Node holder, Seat seat, int from) {
    return cut(from, lineOf(holder, seat.index() + 1).orElse(from), "");
  }

  /** The dash of an item. */
  private Optional<Integer> dash(Node item) {
    int before = text.substring(0, in.start(item)).stripTrailing().length() - 1;
    return before >= 0 && text.charAt(before) == '-' ? Optional.of(before) : Optional.empty();
  }
}
