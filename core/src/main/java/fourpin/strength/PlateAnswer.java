package fourpin.strength;

import fourpin.measure.Lazy;
import fourpin.strength.Section.Layer;
import java.util.List;

/** What a shelf does as a plate, in bare numbers: mm, N, MPa. */
final class PlateAnswer {

  private PlateAnswer() {}

  /**
   * How it lies under a load.
   *
   * @param front how far its front edge goes down at the most; likewise the others
   * @param sag the most of any place
   * @param across the largest stress in each of its layers in the middle of its length, on both
   *     edges and half way between them
   * @param strips the largest in each of its strips
   * @param stresses the largest in each of its layers
   * @param pushes of the supports, in their order
   * @param lifted how many supports it does not touch
   * @param twist how far a corner lies out of the plane of the other three
   */
  record Bends(
      double front,
      double middle,
      double back,
      double sag,
      Lazy<List<Stress>> across,
      Lazy<List<Stress>> strips,
      Lazy<List<Stress>> stresses,
      List<Double> pushes,
      int lifted,
      double twist) {

    /** Of the support that pushes hardest; none where it has none. */
    double push() {
      return pushes.stream().max(Double::compare).orElse(0.0);
    }
  }

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
}
