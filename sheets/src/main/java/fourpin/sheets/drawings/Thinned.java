package fourpin.sheets.drawings;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Which of many things in a row are numbered, so that the numbers find room: every so many of them,
 * the first and the last always.
 *
 * @param count of the things
 * @param every of so many one is numbered
 */
record Thinned(int count, int every) {

  /** Millimetres on paper from number to number. */
  private static final double PITCH = 3.3;

  /**
   * @param places on paper in rising or falling order
   */
  static Thinned of(List<Double> places) {
    return new Thinned(places.size(), every(places, PITCH));
  }

  /** The same where numbers stand by turns on one side of the row and on the other. */
  static Thinned onTwoSides(List<Double> places) {
    return new Thinned(places.size(), every(places, PITCH / 2));
  }

  private static int every(List<Double> places, double room) {
    if (places.size() < 2) {
      return 1;
    }
    double pitch = Math.abs(places.getLast() - places.getFirst()) / (places.size() - 1);
    return Math.max(1, (int) Math.ceil(room / pitch));
  }

  boolean shows(int index) {
    int last = count - 1;
    return index == last || (index % every == 0 && last - index >= every);
  }

  <T> List<T> among(List<T> things) {
    return IntStream.range(0, things.size()).filter(this::shows).mapToObj(things::get).toList();
  }
}
