package fourpin.sheets.packet;

import fourpin.measure.Figure;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.drawings.SquareCode;
import fourpin.sheets.pages.Block;
import fourpin.sheets.paint.Drawing;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Square codes on the sheets, which open a step or a part on the bench page of a phone that looks
 * at them, and tell it which steps were printed: where the job has others since, the page says so.
 *
 * @param bench address of the job's bench page; none where no phone can reach it
 * @param print the beginning of the digest of the steps that are printed; empty if it is not known
 */
public record Codes(Optional<String> bench, String print) {

  public static final Codes NONE = new Codes(Optional.empty(), "");

  private static final double GAP = 5;
  private static final int DIGEST_BYTES = 16;

  /**
   * Enough that two states of a job are not taken for each other: one time in four thousand
   * million.
   */
  private static final int PRINT_DIGITS = 8;

  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  /** Codes that lead to a bench page. */
  public static Codes to(String bench) {
    return new Codes(Optional.of(bench), "");
  }

  /** The same for sheets of a plan. */
  Codes of(Plan plan) {
    return new Codes(bench, digest(plan.steps()).substring(0, PRINT_DIGITS));
  }

  /** Differs for any other steps, whatever else of a job stays or changes. */
  public static String digest(List<PlannedStep> steps) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      steps.forEach(step -> sha.update(step.toString().getBytes(StandardCharsets.UTF_8)));
      return HexFormat.of().formatHex(sha.digest(), 0, DIGEST_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** What the bench page calls a part: "bookcase.1-s2". */
  public static String key(String caseName, String mark) {
    return word(caseName) + "." + word(mark);
  }

  private static String word(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
  }

  /**
   * What stands at a step, or at several, with its code beside it if there are codes. That of
   * several opens the first that is not done.
   */
  List<Block> beside(List<Block> blocks, List<PlannedStep> steps, double width) {
    return bench.map(address -> beside(blocks, code(address, steps), width)).orElse(blocks);
  }

  /** The code of a part, which opens the first of its steps that is not done. */
  Optional<Drawing> of(String caseName, String mark) {
    String key = key(caseName, mark);
    return bench.map(
        address ->
            SquareCode.of(
                "code-part-" + Figure.id(key),
                "Opens " + caseName + " " + mark + " at the bench",
                address + "#part-" + escaped(key) + printed()));
  }

  /** No key of a part and no number has a colon. */
  private String printed() {
    return print.isEmpty() ? "" : ":" + print;
  }

  /**
   * A key as RFC 3986, section 2.1, lets it stand in an address: what is not plain ASCII, by its
   * bytes.
   */
  private static String escaped(String key) {
    StringBuilder address = new StringBuilder();
    for (byte each : key.getBytes(StandardCharsets.UTF_8)) {
      address.append(each > 0 ? String.valueOf((char) each) : "%" + HEX.toHexDigits(each));
    }
    return address.toString();
  }

  private static List<Block> beside(List<Block> blocks, Drawing code, double width) {
    double room = width - GAP;
    double share = 1 - code.extent().width() / room;
    return List.of(new Block.Beside(blocks, share, List.of(new Block.Figure(code, ""))));
  }

  private Drawing code(String address, List<PlannedStep> steps) {
    String numbers = numbers(steps);
    return SquareCode.of(
        "code-step-" + numbers,
        "Opens step " + numbers + " at the bench",
        address + "#step-" + numbers + printed());
  }

  /** Short, since a code of fewer squares is read from farther away: "9-14.20". */
  private static String numbers(List<PlannedStep> steps) {
    List<Integer> rising = steps.stream().map(PlannedStep::number).distinct().sorted().toList();
    StringBuilder numbers = new StringBuilder();
    for (int i = 0; i < rising.size(); i++) {
      int from = rising.get(i);
      while (i + 1 < rising.size() && rising.get(i + 1) == rising.get(i) + 1) {
        i++;
      }
      int to = rising.get(i);
      numbers.append(numbers.isEmpty() ? "" : ".").append(from).append(to > from ? "-" + to : "");
    }
    return numbers.toString();
  }
}
