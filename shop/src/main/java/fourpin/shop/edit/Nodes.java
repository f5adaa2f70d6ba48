package fourpin.shop.edit;

import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.SequencedMap;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** The parser's nodes: what they mean, and what is near to hand in them. */
final class Nodes {

  private static final int MOST_CHARACTERS = 1 << 21;
  private static final LoadSettings SETTINGS =
      LoadSettings.builder().setCodePointLimit(MOST_CHARACTERS).build();

  private Nodes() {}

  /** The top of a text; nothing if it is not one document. */
  static Optional<Node> parse(String text) {
    try {
      return new Compose(SETTINGS).composeString(text);
    } catch (YamlEngineException e) {
      return Optional.empty();
    }
  }

  static Value value(Node node) {
    return switch (node) {
      case MappingNode mapping -> group(mapping);
      case SequenceNode list ->
          new Value.Items(list.getValue().stream().map(Nodes::value).toList());
      case ScalarNode scalar when isNothing(scalar) -> new Value.Nothing();
      case ScalarNode scalar -> new Value.Text(scalar.getValue());
      default -> throw new IllegalArgumentException("a job has no " + node.getNodeType());
    };
  }

  private static Value group(MappingNode mapping) {
    SequencedMap<String, Value> entries = new LinkedHashMap<>();
    mapping.getValue().forEach(t -> entries.put(key(t), value(t.getValueNode())));
    return new Value.Group(entries);
  }

  private static boolean isNothing(ScalarNode scalar) {
    return scalar.getScalarStyle() == ScalarStyle.PLAIN
        && switch (scalar.getValue()) {
          case "", "~", "null", "Null", "NULL" -> true;
          default -> false;
        };
  }

  static String key(NodeTuple tuple) {
    return tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
  }

  static Optional<NodeTuple> entry(MappingNode mapping, String key) {
    return mapping.getValue().stream().filter(t -> key(t).equals(key)).findFirst();
  }

  /** Whether a list or group stands between brackets or braces. */
  static boolean isFlow(Node node) {
    return node instanceof CollectionNode<?> collection
        && collection.getFlowStyle() == FlowStyle.FLOW;
  }
}
