package fourpin.strength.plate;

import java.util.ArrayList;
import java.util.List;

/** What lies on a plate, in N; a load that pushes down is positive. */
public sealed interface PlateLoad {

  /** All of it, N. */
  double total();

  /** Where its middle lies. */
  double middleX();

  double middleY();

  /** A force at one place. */
  record Point(double force, double x, double y) implements PlateLoad {
    @Override
    public double total() {
      return force;
    }

    @Override
    public double middleX() {
      return x;
    }

    @Override
    public double middleY() {
      return y;
    }
  }

  /**
   * An even load on a rectangle.
   *
   * @param pressure MPa
   */
  record Patch(double pressure, double fromX, double toX, double fromY, double toY)
      implements PlateLoad {

    public Patch {
      if (!(fromX < toX && fromY < toY)) {
        throw new IllegalArgumentException(
            "no rectangle: %s to %s, %s to %s".formatted(fromX, toX, fromY, toY));
      }
    }

    @Override
    public double total() {
      return pressure * (toX - fromX) * (toY - fromY);
    }

    @Override
    public double middleX() {
      return (fromX + toX) / 2;
    }

    @Override
    public double middleY() {
      return (fromY + toY) / 2;
    }
  }

  /**
   * One thing in a row.
   *
   * @param width along the plate
   * @param depth from the front of the row backwards
   * @param weight N
   */
  record Item(double width, double depth, double weight) {}

  /** Things side by side, from a place on, their fronts in one line. */
  static List<PlateLoad> row(double fromX, double fromY, List<Item> items) {
    List<PlateLoad> loads = new ArrayList<>();
    double x = fromX;
    for (Item item : items) {
      double pressure = item.weight() / (item.width() * item.depth());
      loads.add(new Patch(pressure, x, x + item.width(), fromY, fromY + item.depth()));
      x += item.width();
    }
    return List.copyOf(loads);
  }
}
