package fourpin.boring.tolerance;

import java.util.Arrays;
import java.util.Optional;

/** Gaps of one place on six points, drawn at random with a fixed seed; equal for equal causes. */
public final class SimulatedGap implements Distribution {

  private final SixPoints causes;
  private final double[] rising;

  /**
   * @param gaps drawn from the causes, mm, not negative
   */
  SimulatedGap(SixPoints causes, double[] gaps) {
    this.causes = causes;
    this.rising = gaps.clone();
    Arrays.sort(rising);
  }

  @Override
  public double deviation() {
    return Math.sqrt(Arrays.stream(rising).map(g -> g * g).average().orElse(0));
  }

  @Override
  public double oddsBeyond(double limit) {
    return beyond(limit).share();
  }

  @Override
  public Optional<Sampled> sampledBeyond(double limit) {
    return Optional.of(beyond(limit));
  }

  private Sampled beyond(double limit) {
    int low = 0;
    int high = rising.length;
    while (low < high) {
      int middle = (low + high) / 2;
      boolean within = rising[middle] <= limit;
      low = within ? middle + 1 : low;
      high = within ? high : middle;
    }
    return new Sampled(rising.length - low, rising.length);
  }

  @Override
  public double mean() {
    return Arrays.stream(rising).average().orElse(0);
  }

  @Override
  public double within(double share) {
    return rising[(int) Math.ceil(share * rising.length) - 1];
  }

  /** How many were drawn. */
  public int count() {
    return rising.length;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SimulatedGap gap && gap.causes.equals(causes);
  }

  @Override
  public int hashCode() {
    return causes.hashCode();
  }
}
