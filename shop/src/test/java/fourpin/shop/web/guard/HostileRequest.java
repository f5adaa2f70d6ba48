package fourpin.shop.web.guard;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A request of the table in hostile-requests.txt.
 *
 * @param chapter that it stands in
 * @param lines of its head
 * @param status of the answer
 * @param said the words of the answer, or where it leads; empty if the server itself refuses
 */
record HostileRequest(
    String chapter,
    String what,
    String who,
    List<String> lines,
    String body,
    int status,
    String said) {

  private static final String TABLE = "hostile-requests.txt";

  /** All of the table, in its order. */
  static List<HostileRequest> all() {
    List<HostileRequest> all = new ArrayList<>();
    String chapter = "";
    for (String block : table().split("\n\n+")) {
      if (block.startsWith("= ")) {
        chapter = block.substring(2).strip();
      } else if (!block.startsWith("# ")) {
        all.add(read(chapter, block.strip().lines().toList()));
      }
    }
    return all;
  }

  private static String table() {
    try (InputStream in = HostileRequest.class.getResourceAsStream(TABLE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static HostileRequest read(String chapter, List<String> block) {
    String answer = marked(block, "< ").findFirst().orElseThrow();
    return new HostileRequest(
        chapter,
        block.get(0),
        block.get(1),
        marked(block, "> ").toList(),
        marked(block, "+ ").collect(Collectors.joining("\r\n")),
        Integer.parseInt(answer.substring(0, 3)),
        answer.substring(3).strip());
  }

  private static Stream<String> marked(List<String> block, String mark) {
    return block.stream().filter(l -> l.startsWith(mark)).map(l -> l.substring(mark.length()));
  }

  @Override
  public String toString() {
    return what;
  }
}
