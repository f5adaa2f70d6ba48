package fourpin.strength.plate;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A plate that carries more on its left half than on its right.
 *
 * @param alike all of it, or what is alike on both sides
 * @param turned what is upside down on the right side, to be added; nothing where the first is all
 */
public record OneSided(BentPlate alike, Optional<BentPlate> turned) implements Bent {

  @Override
  public Plate plate() {
    return alike.plate();
  }

  @Override
  public double deflection(double x, double y) {
    return sum(bent -> bent.deflection(x, y));
  }

  @Override
  public double curvature(double x, double y) {
    return sum(bent -> bent.curvature(x, y));
  }

  @Override
  public double panelStrain(double x, double y) {
    return sum(bent -> bent.panelStrain(x, y));
  }

  private double sum(ToDoubleFunction<BentPlate> of) {
    return of.applyAsDouble(alike) + turned.map(of::applyAsDouble).orElse(0.0);
  }

  /** At each crossing, and at its image, which the turned part lifts by what it sinks here. */
  @Override
  public double deepest() {
    return turned.map(t -> deepest(alike.crossings(), t.crossings())).orElseGet(alike::deepest);
  }

  private static double deepest(double[] alike, double[] turned) {
    return IntStream.range(0, alike.length)
        .mapToDouble(i -> alike[i] + Math.abs(turned[i]))
        .max()
        .orElseThrow();
  }

  @Override
  public List<Double> reactions() {
    return turned.map(t -> sum(alike.reactions(), t.reactions())).orElseGet(alike::reactions);
  }

  @Override
  public List<Double> stripForces(double x) {
    List<Double> forces = alike.stripForces(x);
    return turned.map(t -> sum(forces, t.stripForces(x))).orElse(forces);
  }

  private static List<Double> sum(List<Double> some, List<Double> more) {
    return IntStream.range(0, some.size()).mapToObj(i -> some.get(i) + more.get(i)).toList();
  }

  @Override
  public Moments moments(double x, double y) {
    Moments moments = alike.moments(x, y);
    return turned.map(t -> moments.plus(t.moments(x, y))).orElse(moments);
  }

  /** All of it: what is upside down makes both halves unlike. */
  @Override
  public List<Double> alongX() {
    double length = plate().length();
    return turned.isEmpty()
        ? alike.alongX()
        : Stream.concat(
                alike.alongX().stream(),
                alike.alongX().reversed().stream().skip(1).map(x -> length - x))
            .toList();
  }

  @Override
  public List<Double> alongY() {
    return alike.alongY();
  }
}
