package fourpin.job;

import java.util.List;
import java.util.stream.Stream;

/**
 * What the shop works with.
 *
 * @param name of the shop, or of the file that states it
 * @param tools each name once
 */
public record Shop(String name, List<Tool> tools) {

  /** Nothing is stated: what always works is a hand drill, a punch and a stick. */
  public static final Shop NONE = new Shop("no shop file", List.of());

  public Shop {
    tools = List.copyOf(tools);
  }

  /** The tools of one kind, in the order of the file. */
  public <T extends Tool> List<T> all(Class<T> kind) {
    return tools.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** Perforated strips of one kind. */
  public Stream<Tool.PerforatedStrip> strips(Tool.StripKind kind) {
    return all(Tool.PerforatedStrip.class).stream().filter(s -> s.kind() == kind);
  }
}
