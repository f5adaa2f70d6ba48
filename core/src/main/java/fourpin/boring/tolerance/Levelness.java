package fourpin.boring.tolerance;

import fourpin.job.Way;
import fourpin.measure.Figure;
import java.util.List;

/**
 * How level shelves lie in bays that are bored one way.
 *
 * @param limit gap that is felt, mm
 * @param resolution differences of gaps and slopes up to this are none, mm
 * @param leastOdds differences of odds up to this are none, 0 to 1
 * @param places every place that a shelf can lie at, bay by bay from the bottom up
 * @param worst the one with the widest gap
 * @param expected mean number of places in a case that rock so that it is felt
 * @param anyPlace odds that at least one of all places does; from simulated cases
 * @param anyShelf odds that at least one shelf does where the plan lays it; from simulated cases
 * @param gains what to do otherwise, and what each brings; only what brings something
 * @param mixed what makes shelves rock less and lie less level from left to right, or the other way
 * @param harms what not to do otherwise, and what each would cost
 * @param figures with their working
 */
public record Levelness(
    String caseName,
    Way way,
    double limit,
    double resolution,
    double leastOdds,
    List<PositionGap> places,
    PositionGap worst,
    double expected,
    Sampled anyPlace,
    Sampled anyShelf,
    List<Change> gains,
    List<Change> mixed,
    List<Change> harms,
    List<Figure> figures) {

  public Levelness {
    places = List.copyOf(places);
    gains = List.copyOf(gains);
    mixed = List.copyOf(mixed);
    harms = List.copyOf(harms);
    figures = List.copyOf(figures);
  }

  /** Whether shelves lie as well at one place as at any other. */
  public boolean isEven() {
    double least = places.stream().mapToDouble(PositionGap::usual).min().orElse(0);
    return worst.usual() - least <= resolution;
  }
}
