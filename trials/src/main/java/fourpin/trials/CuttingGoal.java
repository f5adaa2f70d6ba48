package fourpin.trials;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How much more than the best known a family may come to, in so many seconds a layout. */
enum CuttingGoal {
  AT_A_GLANCE("", 1, 1),
  IMAHORI("sheets-imahori", 10, 0.5),
  CLASS("sheets-class", 10, 0.5),
  BEST_KNOWN("", 10, 0);

  private final String family;
  private final int seconds;
  private final double percent;

  CuttingGoal(String family, int seconds, double percent) {
    this.family = family;
    this.seconds = seconds;
    this.percent = percent;
  }

  /** The goal of a family, whose name is the beginning of the group's; none for other seconds. */
  static Optional<CuttingGoal> of(String group, int seconds) {
    return Arrays.stream(values())
        .filter(goal -> goal.seconds == seconds && group.startsWith(goal.family))
        .findFirst();
  }

  /** The goal, and whether it is missed. */
  String against(double more) {
    return String.format(Locale.ROOT, "%.1f", percent) + (more > percent ? " SHORT" : "");
  }
}
