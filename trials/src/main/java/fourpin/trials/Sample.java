package fourpin.trials;

import java.util.List;

/** Measured values of one thing, in one unit; at least one. */
record Sample(List<Double> sorted) {

  Sample {
    sorted = sorted.stream().sorted().toList();
  }

  double least() {
    return sorted.getFirst();
  }

  double most() {
    return sorted.getLast();
  }

  /** The middle value, or the mean of the two in the middle. */
  double median() {
    int upper = sorted.size() / 2;
    int lower = (sorted.size() - 1) / 2;
    return (sorted.get(lower) + sorted.get(upper)) / 2;
  }

  /**
   * The value that a share of all stays within, by the nearest rank.
   *
   * @param share more than 0, at most 1
   */
  double within(double share) {
    return sorted.get((int) Math.ceil(share * sorted.size()) - 1);
  }
}
