package fourpin.shop.edit;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Where in a text the parser's nodes are, in the text's own counting. */
record Offsets(String text) {

  int start(Node node) {
    return at(node.getStartMark());
  }

  /** Behind the last sign of a node; the parser takes blank lines and comments along. */
  int end(Node node) {
    return switch (node) {
      case MappingNode m when !Nodes.isFlow(m) && !m.getValue().isEmpty() ->
          end(m.getValue().getLast());
      case SequenceNode s when !Nodes.isFlow(s) && !s.getValue().isEmpty() ->
          end(s.getValue().getLast());
      case ScalarNode scalar when isOfLines(scalar) -> trimmed(at(node.getEndMark()));
      default -> at(node.getEndMark());
    };
  }

  int end(NodeTuple tuple) {
    return Math.max(colon(tuple), end(tuple.getValueNode()));
  }

  /** Behind the colon of a key. */
  int colon(NodeTuple tuple) {
    int keyEnd = at(tuple.getKeyNode().getEndMark());
    int colon = text.indexOf(':', keyEnd);
    return colon < 0 ? keyEnd : colon + 1;
  }

  private static boolean isOfLines(ScalarNode scalar) {
    return List.of(ScalarStyle.LITERAL, ScalarStyle.FOLDED).contains(scalar.getScalarStyle());
  }

  private int trimmed(int end) {
    return text.substring(0, end).stripTrailing().length();
  }

  /** The parser counts whole characters, and none for a byte order mark. */
  private int at(Optional<Mark> mark) {
    int start = text.startsWith("\uFEFF") ? 1 : 0;
    return text.offsetByCodePoints(start, mark.map(Mark::getIndex).orElse(0));
  }

  int lineStart(int offset) {
    return text.lastIndexOf('\n', offset - 1) + 1;
  }

  /** Before the line's end. */
  int lineEnd(int offset) {
    int end = text.indexOf('\n', offset);
    int stop = end < 0 ? text.length() : end;
    return stop > offset && text.charAt(stop - 1) == '\r' ? stop - 1 : stop;
  }

  /** Behind the line's end. */
  int nextLine(int offset) {
    int end = text.indexOf('\n', offset);
    return end < 0 ? text.length() : end + 1;
  }

  int column(int offset) {
    return offset - lineStart(offset);
  }

  boolean onOneLine(int one, int other) {
    return lineStart(one) == lineStart(other);
  }

  String newline() {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  /** Lines, the second and later ones indented. */
  String joined(List<String> lines, int indent) {
    return String.join(newline() + " ".repeat(indent), lines);
  }
}
