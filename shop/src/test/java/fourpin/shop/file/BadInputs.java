package fourpin.shop.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** The tables of bad inputs. */
final class BadInputs {

  private static final String NAME = "## ";
  private static final String CHANGE = "@ ";
  private static final String MESSAGES = "==";
  private static final String SHAPE = "shape: ";

  private BadInputs() {}

  /**
   * One row.
   *
   * @param text of the whole file
   * @param messages one to a line, as they are printed
   */
  record BadInput(String name, String text, String messages) {

    /** Whether the JSON Schema must refuse it too. */
    boolean isOfShape() {
      return name.startsWith(SHAPE);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  /** Of job files. */
  static List<BadInput> all() {
    return all("bad-inputs.txt", plain());
  }

  /** Of shop files. */
  static List<BadInput> shops() {
    return all("bad-shops.txt", plainShop());
  }

  private static List<BadInput> all(String table, String plain) {
    List<BadInput> all = new ArrayList<>();
    String[] blocks = resource(table).split("(?m)^" + NAME);
    for (int i = 1; i < blocks.length; i++) {
      all.add(read(blocks[i].stripTrailing().lines().toList(), plain));
    }
    return all;
  }

  static String plain() {
    return resource("plain.yaml");
  }

  static String plainShop() {
    return resource("plain-shop.yaml");
  }

  private static BadInput read(List<String> block, String plain) {
    List<String> lines = new ArrayList<>(plain.lines().toList());
    int end = block.indexOf(MESSAGES);
    int at = 1;
    while (at < end) {
      String where = block.get(at).substring(CHANGE.length());
      int from = ++at;
      while (at < end && !block.get(at).startsWith(CHANGE)) {
        at++;
      }
      change(lines, where, block.subList(from, at));
    }
    String text = lines.stream().map(l -> l + "\n").collect(Collectors.joining());
    return new BadInput(
        block.getFirst(), text, String.join("\n", block.subList(end + 1, block.size())));
  }

  private static void change(List<String> lines, String where, List<String> by) {
    if (where.equals("all")) {
      lines.clear();
      lines.addAll(by);
    } else if (where.startsWith("+")) {
      lines.addAll(Integer.parseInt(where.substring(1)), by);
    } else {
      String[] range = where.split("-");
      int first = Integer.parseInt(range[0]) - 1;
      lines.subList(first, Integer.parseInt(range[range.length - 1])).clear();
      lines.addAll(first, by);
    }
  }

  static String resource(String name) {
    try (InputStream in = BadInputs.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
