package fourpin.boring.way;

import fourpin.boring.BayGrid;
import fourpin.casework.BuiltCase;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import java.util.List;
import java.util.Optional;

/** Tells how well a way holds heights, where that can be told. */
@FunctionalInterface
public interface Precision {

  /** Where nothing is known. */
  Precision UNKNOWN = (_, _, _, _) -> Optional.empty();

  Optional<Rocking> of(BuiltCase built, List<BayGrid> grids, Way way, Method method);

  /**
   * How readily a shelf rocks.
   *
   * @param odds that the worst placed shelf rocks so that it is felt, per cent
   * @param figures that say so
   */
  record Rocking(double odds, List<Figure> figures) {
    public Rocking {
      figures = LazyList.copyOf(figures);
    }
  }
}
