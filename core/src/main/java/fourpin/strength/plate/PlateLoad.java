package fourpin.strength.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What lies on a plate, in N; a load that pushes down is positive. */
public sealed interface PlateLoad {

  /** All of it, N. */
  double total();

  /** Where its middle lies. */
  double middleX();

  double middleY();

  /** So many times as much of it. */
  PlateLoad times(double many);

  /** How many times as much it is as its {@link #unit}. */
  double amount();

  /** A load of 1 N or 1 MPa at the same place. */
  PlateLoad unit();

  /** What of it lies on the left of a line; of a force on the line, one half. */
  Optional<PlateLoad> leftOf(double line);

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

    @Override
    public PlateLoad times(double many) {
      return new Point(many * force, x, y);
    }

    @Override
    public double amount() {
      return force;
    }

    @Override
    public PlateLoad unit() {
      return new Point(1, x, y);
    }

    @Override
    public Optional<PlateLoad> leftOf(double line) {
      double share = x < line ? 1 : x > line ? 0 : 0.5;
      return share > 0 ? Optional.of(new Point(share * force, x, y)) : Optional.empty();
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

    @Override
    public PlateLoad times(double many) {
      return new Patch(many * pressure, fromX, toX, fromY, toY);
    }

    @Override
    public double amount() {
      return pressure;
    }

    @Override
    public PlateLoad unit() {
      return new Patch(1, fromX, toX, fromY, toY);
    }

    @Override
    public Optional<PlateLoad> leftOf(double line) {
      return fromX < line
          ? Optional.of(new Patch(pressure, fromX, Math.min(toX, line), fromY, toY))
          : Optional.empty();
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
