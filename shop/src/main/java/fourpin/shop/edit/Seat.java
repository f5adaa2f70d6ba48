package fourpin.shop.edit;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A value in the text with what holds it.
 *
 * @param holder the group or list that it is in; nothing for the whole
 * @param index of the entry or item in it, from 0
 * @param depth how many steps of the way lead here
 * @param within whether it stands between braces or brackets
 */
record Seat(Node node, Optional<Node> holder, int index, int depth, FlowText.Within within) {

  static Seat top(Node root) {
    return new Seat(root, Optional.empty(), 0, 0, FlowText.Within.LINES);
  }

  /** As far along a way as the text goes. */
  Seat along(List<Route.Step> steps) {
    return depth == steps.size()
        ? this
        : next(steps.get(depth)).map(s -> s.along(steps)).orElse(this);
  }

  private Optional<Seat> next(Route.Step step) {
    return switch (step) {
      case Route.Key(String name) when node instanceof MappingNode mapping ->
          Nodes.entry(mapping, name)
              .map(t -> child(t.getValueNode(), mapping.getValue().indexOf(t)));
      case Route.Item(int number, _) when node instanceof SequenceNode list ->
          number <= list.getValue().size()
              ? Optional.of(child(list.getValue().get(number - 1), number - 1))
              : Optional.empty();
      default -> Optional.empty();
    };
  }

  private Seat child(Node child, int childIndex) {
    FlowText.Within inside = Nodes.isFlow(node) ? FlowText.Within.BRACES : within;
    return new Seat(child, Optional.of(node), childIndex, depth + 1, inside);
  }

  /** The key and value, of a value in a group. */
  Optional<NodeTuple> tuple() {
    return holder
        .filter(h -> h instanceof MappingNode)
        .map(h -> ((MappingNode) h).getValue().get(index));
  }
}
