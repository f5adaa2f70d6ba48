package fourpin.sheets.paint;

import java.util.ArrayList;
import java.util.List;

/**
 * Places for labels along a line: each as near as can be to where it belongs, none nearer to the
 * next than a stated distance.
 *
 * <p>Least sum of squared moves under a least distance is an isotonic regression, found exactly by
 * pooling adjacent violators (Barlow, Bartholomew, Bremner and Brunk, Statistical Inference under
 * Order Restrictions, 1972, ch. 1).
 */
public final class Spread {

  private Spread() {}

  /** Some neighbouring labels that move as one: how many, and the mean place of the first. */
  private record Block(int count, double mean) {

    Block with(Block next) {
      double sum = mean * count + next.mean * next.count;
      return new Block(count + next.count, sum / (count + next.count));
    }
  }

  /**
   * @param wanted places in rising order
   * @param least distance from each to the next, at least 0
   * @return as many places in the same order
   */
  public static List<Double> apart(List<Double> wanted, double least) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      blocks.add(new Block(1, wanted.get(i) - i * least));
      pool(blocks);
    }
    return places(blocks, least);
  }

  private static void pool(List<Block> blocks) {
    while (blocks.size() > 1 && blocks.getLast().mean() <= blocks.get(blocks.size() - 2).mean()) {
      Block last = blocks.removeLast();
      blocks.add(blocks.removeLast().with(last));
    }
  }

  private static List<Double> places(List<Block> blocks, double least) {
    List<Double> places = new ArrayList<>();
    for (Block block : blocks) {
      for (int i = 0; i < block.count(); i++) {
        places.add(block.mean() + places.size() * least);
      }
    }
    return places;
  }
}
