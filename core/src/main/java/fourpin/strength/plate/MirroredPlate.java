package fourpin.strength.plate;

import fourpin.measure.Lazy;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Bends a plate that is alike on both sides of its middle, and loaded alike on both. Half of it
 * tells all, in a good third of the work: the other half bends as its mirror image. Supports that
 * do not lie alike are taken as the sum of what is alike and of what is upside down.
 */
public final class MirroredPlate {

  private final Plate plate;
  private final PlateSolver even;

  /** Asked for by supports that do not lie alike only. */
  private final Lazy<PlateSolver> odd;

  /** Asked for by what lifts off on one side only. */
  private final Lazy<PlateSolver> whole;

  /**
   * @param parts spaces along the whole plate; those of a half are the same as of the whole
   * @throws IllegalArgumentException if nothing holds it, or if its ends or supports are not alike
   */
  public MirroredPlate(Plate plate, int parts) {
    if (plate.edges().left() != plate.edges().right()) {
      throw new IllegalArgumentException("ends held unlike: " + plate);
    }
    this.plate = plate;
    this.even = new PlateSolver(plate, parts, Fold.EVEN);
    this.odd = Lazy.of(() -> new PlateSolver(plate, parts, Fold.ODD));
    this.whole = Lazy.of(() -> new PlateSolver(plate, parts));
  }

  /**
   * The plate on level supports.
   *
   * @param loads alike on both sides, together
   * @return nothing if it tips off them
   */
  public Optional<BentPlate> under(List<PlateLoad> loads) {
    return even.under(loads);
  }

  /**
   * The plate on level supports, with a load of which only the left half is there. Where all
   * supports push, that is half of it on both sides, and half of it turned upside down on the
   * right.
   *
   * @param both alike on both sides, together
   * @param left alike on both sides, to be halved
   * @return nothing if it tips off them
   */
  public Optional<OneSided> underLeftOf(List<PlateLoad> both, PlateLoad left) {
    PlateLoad half = left.times(0.5);
    OneSided sum =
        new OneSided(
            even.heldDown(with(both, half)), Optional.of(odd.get().heldDown(List.of(half))));
    return sum.lifted() == 0 ? Optional.of(sum) : whole(both, left);
  }

  private Optional<OneSided> whole(List<PlateLoad> both, PlateLoad left) {
    PlateLoad there = left.leftOf(plate.length() / 2).orElseThrow();
    return whole.get().under(with(both, there)).map(bent -> new OneSided(bent, Optional.empty()));
  }

  private static List<PlateLoad> with(List<PlateLoad> loads, PlateLoad more) {
    return Stream.concat(loads.stream(), Stream.of(more)).toList();
  }

  /**
   * As {@link PlateSolver#pushesIfAllTouch}.
   *
   * @param loads alike on both sides, together
   * @param low may be unlike
   */
  public double[] pushesIfAllTouch(List<PlateLoad> loads, List<Double> low) {
    double[] pushes = even.pushesIfAllTouch(loads, half(low, 1));
    List<Double> unlike = half(low, -1);
    if (unlike.stream().anyMatch(l -> l != 0)) {
      double[] more = odd.get().pushesIfAllTouch(List.of(), unlike);
      for (int i = 0; i < pushes.length; i++) {
        pushes[i] += more[i];
      }
    }
    return pushes;
  }

  private List<Double> half(List<Double> low, int sign) {
    Footing footing = Footing.of(plate, Fold.WHOLE);
    return IntStream.range(0, low.size())
        .mapToObj(i -> (low.get(i) + sign * low.get(footing.twin(i))) / 2)
        .toList();
  }
}
