package fourpin.boring;

import fourpin.casework.Finding.Moved;
import fourpin.casework.Finding.Stated;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Cures that move the holes of every second bay: that clears all partitions at once, while moving
 * bay by bay goes in a circle.
 *
 * @param bays of the case
 */
record SecondBays(int bays, Reporter reporter) {

  /** All rows further back. */
  void back(Cures cures, Length stagger) {
    cures.stated(
        Reporter.say("state rows-back: %s for %s", reporter.text(stagger), words()),
        "the rows of neighbouring bays no longer stand in line; levels stay the same",
        new Stated.EverySecondBay(Moved.ROWS_BACK, stagger),
        Cures.bays(b -> true, b -> b.moved(Length.ZERO, b.levelsUp()))
                .andThen(Cures.bays(SecondBays::isSecond, b -> b.moved(stagger, b.levelsUp())))
            ::apply);
  }

  /** All levels half a pitch up. */
  void up(Cures cures, Length pitch) {
    Length half = reporter.style().rounded(pitch.over(2));
    cures.stated(
        Reporter.say("state levels-up: %s, half a pitch, for %s", reporter.text(half), words()),
        "shelves of neighbouring bays no longer line up",
        new Stated.EverySecondBay(Moved.LEVELS_UP, half),
        Cures.bays(b -> true, b -> b.moved(b.rowsBack(), Length.ZERO))
                .andThen(Cures.bays(SecondBays::isSecond, b -> b.moved(b.rowsBack(), half)))
            ::apply);
  }

  private static boolean isSecond(int bay) {
    return bay % 2 == 0;
  }

  private String words() {
    List<String> numbers = new ArrayList<>();
    for (int bay = 2; bay <= bays; bay += 2) {
      numbers.add(Integer.toString(bay));
    }
    return numbers.size() == 1
        ? "bay " + numbers.getFirst()
        : "bays " + String.join(", ", numbers) + " together, and leave it out for the others";
  }
}
