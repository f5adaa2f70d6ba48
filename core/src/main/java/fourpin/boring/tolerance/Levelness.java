package fourpin.boring.tolerance;

import fourpin.job.Way;
import fourpin.measure.Figure;
import java.util.List;

/**
 * How level shelves lie in bays that are bored one way.
 *
 * @param limit gap that is felt, mm
 * @param places every place that a shelf can lie at, bay by bay from the bottom up
 * @param worst the one with the widest gap
 * @param expected mean number of places in a case that rock so that it is felt
 * @param anyPlace odds that at least one of all places does, 0 to 1; from simulated cases
 * @param anyShelf odds that at least one shelf does where the plan lays it; from simulated cases
 * @param changes what to do otherwise, and what each brings
 * @param figures with their working
 */
public record Levelness(
    String caseName,
    Way way,
    double limit,
    List<PositionGap> places,
    PositionGap worst,
    double expected,
    double anyPlace,
    double anyShelf,
    List<Change> changes,
    List<Figure> figures) {

  public Levelness {
    places = List.copyOf(places);
    changes = List.copyOf(changes);
    figures = List.copyOf(figures);
  }
}
