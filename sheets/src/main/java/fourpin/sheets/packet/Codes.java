package fourpin.sheets.packet;

import fourpin.sheets.drawings.SquareCode;
import fourpin.sheets.pages.Block;
import fourpin.sheets.paint.Drawing;
import java.util.List;
import java.util.Optional;

/**
 * Square codes on the sheets, which open a step of the bench page on a phone that looks at them.
 *
 * @param bench address of the job's bench page; none where no phone can reach it
 */
public record Codes(Optional<String> bench) {

  public static final Codes NONE = new Codes(Optional.empty());

  private static final double GAP = 5;

  /** What stands at a step, with its code beside it if there are codes. */
  List<Block> beside(List<Block> blocks, int step, double width) {
    return bench.map(address -> beside(blocks, code(address, step), width)).orElse(blocks);
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
