package fourpin.shop.store;

import java.time.Instant;
import java.util.Collection;
import java.util.List;

/**
 * Which bench steps are done. Ticks may arrive late, twice and in any order: of each device the
 * last that it said counts, by its own clock; of several devices the last by the server's clock,
 * and at the same millisecond that of the device whose name sorts last.
 */
public interface Ticks {

  /**
   * What holds of the steps of a plan that were ever ticked, by step.
   *
   * @param plan the digest of the plan: another plan of the same job has its own ticks
   */
  List<HeldTick> of(DocumentId job, String plan);

  /**
   * Takes what a device says; saying it again changes nothing.
   *
   * @param device its name, one for each device
   * @param sent when, by the device's own clock; what a wrong clock said is shifted by as much as
   *     it goes wrong, and nothing is held for later than now
   * @return what holds now of the steps of the plan
   * @throws java.util.NoSuchElementException if there is no such job
   * @throws IllegalArgumentException if a text holds what is no character
   */
  List<HeldTick> merge(
      DocumentId job, String plan, String device, Instant sent, Collection<Tick> ticks);

  /** The plans of a job of which steps were ticked, the last ticked first. */
  List<String> plans(DocumentId job);
}
