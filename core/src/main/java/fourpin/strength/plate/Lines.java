package fourpin.strength.plate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The lines of the mesh in one direction, rising from 0. */
final class Lines {

  /** Lines nearer than this share of the whole are one. */
  private static final double SAME = 1e-9;

  private final double[] at;

  private Lines(double[] at) {
    this.at = at;
  }

  /**
   * Lines at given places and as many between as it takes.
   *
   * @param parts about how many spaces in all; no space is wider than its share
   */
  static Lines of(double whole, List<Double> places, int parts) {
    List<Double> fixed = fixed(whole, places);
    List<Double> lines = new ArrayList<>(List.of(fixed.getFirst()));
    for (int i = 1; i < fixed.size(); i++) {
      double start = fixed.get(i - 1);
      double space = fixed.get(i) - start;
      int pieces = Math.max(1, (int) Math.ceil(space / whole * parts - SAME));
      for (int piece = 1; piece <= pieces; piece++) {
        lines.add(start + space * piece / pieces);
      }
    }
    return new Lines(lines.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static List<Double> fixed(double whole, List<Double> places) {
    List<Double> all = new ArrayList<>(places);
    all.add(whole);
    all.sort(null);
    List<Double> fixed = new ArrayList<>(List.of(0.0));
    for (double place : all) {
      if (place - fixed.getLast() > SAME * whole && place <= whole) {
        fixed.add(place);
      }
    }
    return fixed;
  }

  /** Those up to a place, which is one of them. */
  Lines upTo(double place) {
    return new Lines(Arrays.copyOf(at, line(place) + 1));
  }

  int count() {
    return at.length;
  }

  double at(int line) {
    return at[line];
  }

  /** The line nearest to a place. */
  int line(double place) {
    int space = space(place);
    return place - at[space] < at[space + 1] - place ? space : space + 1;
  }

  /** All of them, and halfway between. */
  List<Double> stations() {
    List<Double> stations = new ArrayList<>();
    for (int space = 0; space < spaces(); space++) {
      stations.add(start(space));
      stations.add((start(space) + end(space)) / 2);
    }
    stations.add(at[spaces()]);
    return stations;
  }

  int spaces() {
    return at.length - 1;
  }

  double start(int space) {
    return at[space];
  }

  double end(int space) {
    return at[space + 1];
  }

  double side(int space) {
    return at[space + 1] - at[space];
  }

  /** The space that holds a place; the nearest one for places off the plate. */
  int space(double place) {
    int found = Arrays.binarySearch(at, place);
    int space = found >= 0 ? found : -found - 2;
    return Math.clamp(space, 0, spaces() - 1);
  }
}
