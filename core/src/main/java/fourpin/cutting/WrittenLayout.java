package fourpin.cutting;

import fourpin.measure.Length;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * Layouts as text, to be kept beside the problem that they answer. Parts and stock are written by
 * their numbers, since names change with the unit that a job is printed in; lengths are whole
 * picometres.
 *
 * <p>The first line is the bound, each other one a sheet: its number, how many, and its tree, each
 * cut before the near piece and that before the far one.
 */
public final class WrittenLayout {

  private static final String BETWEEN = " ";
  private static final String WITHIN = ",";

  private WrittenLayout() {}

  /** The same for problems that differ in the names of their stock at most. */
  public static String digest(SheetProblem problem) {
    List<StockSheet> numbered = new ArrayList<>();
    for (StockSheet s : problem.stock()) {
      String number = Integer.toString(numbered.size() + 1);
      numbered.add(
          new StockSheet(
              number,
              s.length(),
              s.width(),
              s.grain(),
              s.supply(),
              s.price(),
              s.origin(),
              s.defects(),
              s.roughEdge()));
    }
    return sum(
        new SheetProblem(problem.parts(), numbered, problem.saw(), problem.ties()).toString());
  }

  private static String sum(String text) {
    try {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /**
   * @throws IllegalArgumentException if parts are left out: only whole layouts are written
   */
  public static String of(SheetProblem problem, Layout layout) {
    if (!layout.unplaced().isEmpty()) {
      throw new IllegalArgumentException("a layout that leaves parts out is not written");
    }
    List<String> lines = new ArrayList<>();
    lines.add(layout.bound().price() + BETWEEN + layout.bound().sheets());
    layout.patterns().forEach(p -> lines.add(line(problem, p)));
    return String.join("\n", lines) + "\n";
  }

  private static String line(SheetProblem problem, SheetPattern pattern) {
    List<String> words = new ArrayList<>();
    words.add(Integer.toString(problem.stock().indexOf(pattern.sheet())));
    words.add(Integer.toString(pattern.quantity()));
    Deque<Node> open = new ArrayDeque<>(List.of(pattern.root()));
    while (!open.isEmpty()) {
      words.add(word(problem, open.pop(), open));
    }
    return String.join(BETWEEN, words);
  }

  private static String word(SheetProblem problem, Node node, Deque<Node> open) {
    return switch (node) {
      case Node.Cut(Direction way, Length fence, Length kerf, Node near, Node far) -> {
        open.push(far);
        open.push(near);
        yield joined("cut", way.name(), fence.picometres(), kerf.picometres());
      }
      case Node.TrimOff(Edge edge, Length off, Node rest) -> {
        open.push(rest);
        yield joined("trim", edge.name(), off.picometres());
      }
      case Node.Finished(String mark, Lay lay) ->
          joined(
              "part", problem.parts().stream().map(Part::mark).toList().indexOf(mark), lay.name());
      case Node.Offcut() -> "offcut";
      case Node.Dust() -> "dust";
    };
  }

  private static String joined(Object... parts) {
    return String.join(WITHIN, Arrays.stream(parts).map(Object::toString).toList());
  }

  /**
   * The layout of a problem of the same digest; whether it can be sawn is for {@link VirtualSaw}.
   *
   * @return nothing if the text is none that was written for such a problem
   */
  public static Optional<Layout> read(SheetProblem problem, String text) {
    try {
      List<String> lines = text.lines().toList();
      String[] bound = lines.getFirst().split(BETWEEN, -1);
      return Optional.of(
          new Layout(
              lines.stream().skip(1).map(line -> pattern(problem, line)).toList(),
              List.of(),
              new LowerBound(Long.parseLong(bound[0]), Long.parseLong(bound[1]))));
    } catch (IllegalArgumentException
        | IndexOutOfBoundsException
        | java.util.NoSuchElementException e) {
      return Optional.empty();
    }
  }

  private static SheetPattern pattern(SheetProblem problem, String line) {
    List<String> words = List.of(line.split(BETWEEN, -1));
    Deque<Node> made = new ArrayDeque<>();
    for (String word : words.subList(2, words.size()).reversed()) {
      made.push(node(problem, word.split(WITHIN, -1), made));
    }
    if (made.size() != 1) {
      throw new IllegalArgumentException("the tree of a sheet has one root");
    }
    StockSheet sheet = problem.stock().get(Integer.parseInt(words.getFirst()));
    return new SheetPattern(sheet, Integer.parseInt(words.get(1)), made.pop());
  }

  /** Read from the end, so that what comes of a cut is there before it. */
  private static Node node(SheetProblem problem, String[] word, Deque<Node> made) {
    return switch (word[0]) {
      case "cut" ->
          new Node.Cut(
              Direction.valueOf(word[1]), length(word[2]), length(word[3]), made.pop(), made.pop());
      case "trim" -> new Node.TrimOff(Edge.valueOf(word[1]), length(word[2]), made.pop());
      case "part" ->
          new Node.Finished(
              problem.parts().get(Integer.parseInt(word[1])).mark(), Lay.valueOf(word[2]));
      case "offcut" -> new Node.Offcut();
      case "dust" -> new Node.Dust();
      default -> throw new IllegalArgumentException("there is no " + word[0] + " in a layout");
    };
  }

  private static Length length(String picometres) {
    return new Length(Long.parseLong(picometres), Length.ZERO.unit());
  }
}
