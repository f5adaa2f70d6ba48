package fourpin.strength;

import fourpin.strength.Section.Layer;
import java.util.List;
import java.util.Optional;

/**
 * What a shelf does as a plate besides sagging under its load, in bare numbers: mm, N, MPa.
 *
 * @param row with the load in a row along the front edge; nothing where there is no such row
 * @param half with the load on its left half alone; nothing if it tips
 * @param low what one low support does; nothing without such supports
 * @param hand empty, under a hand on the front edge; nothing if it tips
 */
record PlateAnswer(
    Optional<Row> row, Optional<Half> half, Optional<LowSupport> low, Optional<Hand> hand) {

  /**
   * With the load in a row along the front edge.
   *
   * @param sag how far the front edge goes down in the middle of the span
   * @param push of the support that pushes hardest; none where it has none
   */
  record Row(double sag, double push) {}

  /**
   * With the load on one half of its length alone.
   *
   * @param sag how far it goes down at the most
   * @param push of the support that pushes hardest
   * @param lifted how many supports it does not touch
   * @param twist how far a corner lies out of the plane of the other three
   */
  record Half(double sag, double push, int lifted, double twist) {}

  /**
   * How it lies under its load: how far each line goes down at the most, and the largest stress.
   *
   * @param pushes of the supports, in their order
   * @param lifted how many supports it does not touch
   */
  record Bends(
      double front, double middle, double back, Stress stress, List<Double> pushes, int lifted) {}

  /**
   * The largest bending stress: of any direction in what is alike all ways, else along the span.
   *
   * @param bending the part from bending
   * @param pull the part from strips and panel pulling at each other
   */
  record Stress(Layer layer, double bending, double pull) {
    double all() {
      return bending + pull;
    }
  }

  /**
   * A support that a low one relieves: itself, or the one across.
   *
   * @param relief how much less it pushes for the low one, N
   * @param own how hard it pushes under the empty shelf on level supports, N
   * @param share of an even load that it carries
   */
  record Relieved(double relief, double own, double share) {

    /** The even load at which it pushes again, N. */
    double closedBy() {
      return Math.max(0, (relief - own) / share);
    }

    /** How many times as low the other could lie under a load in N. */
    double times(double load) {
      return (own + share * load) / relief;
    }
  }

  /**
   * What one low support does where that is worst.
   *
   * @param empty takes the most load until all supports push
   * @param loaded is closed least by the load
   */
  record LowSupport(Relieved empty, Relieved loaded) {}

  /** Under a hand. @param front how far the front edge goes down in the middle of the span */
  record Hand(double front, int lifted) {}
}
