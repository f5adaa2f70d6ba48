package fourpin.sheets.packet;

import fourpin.measure.Figure;
import fourpin.sheets.drawings.SquareCode;
import fourpin.sheets.pages.Block;
import fourpin.sheets.paint.Drawing;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Square codes on the sheets, which open a step or a part on the bench page of a phone that looks
 * at them.
 *
 * @param bench address of the job's bench page; none where no phone can reach it
 */
public record Codes(Optional<String> bench) {

  public static final Codes NONE = new Codes(Optional.empty());

  private static final double GAP = 5;

  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  /** What the bench page calls a part: "bookcase.1-s2". */
  public static String key(String caseName, String mark) {
    return word(caseName) + "." + word(mark);
  }

  private static String word(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
  }

  /** What stands at a step, with its code beside it if there are codes. */
  List<Block> beside(List<Block> blocks, int step, double width) {
    return bench.map(address -> beside(blocks, code(address, step), width)).orElse(blocks);
  }

  /** The code of a part, which opens the first of its steps that is not done. */
  Optional<Drawing> of(String caseName, String mark) {
    String key = key(caseName, mark);
    return bench.map(
        address ->
            SquareCode.of(
                "code-part-" + Figure.id(key),
                "Opens " + caseName + " " + mark + " at the bench",
                address + "#part-" + escaped(key)));
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

  private static Drawing code(String address, int step) {
    return SquareCode.of(
        "code-step-" + step, "Opens step " + step + " at the bench", address + "#step-" + step);
  }
}
