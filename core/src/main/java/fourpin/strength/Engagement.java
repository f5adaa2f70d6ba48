package fourpin.strength;

/**
 * What of a pin lies under the end of a shelf after years, the shelf pushed to the other side.
 *
 * @param pin with its reach, and the gap at the end at once
 * @param bow of either side after years, mm
 * @param breath by how much the bay grows wider over the year, and the shelf does not, mm
 * @param drawn by how much the ends of a shelf that sags draw in, mm
 */
record Engagement(PinInSide pin, double bow, double breath, double drawn) {

  /** Nothing is left of it below 0, mm. */
  double left() {
    return pin.reach().number() - pin.gap().number() - 2 * bow - breath - drawn;
  }

  /**
   * How many times as much a shelf on another pin turns the side: by its push times the pin's lever
   * to the side's middle.
   */
  double times(PinInSide other) {
    return turning(other) / turning(pin);
  }

  private static double turning(PinInSide pin) {
    return pin.lever() + pin.side().thickness().mm() / 2;
  }
}
