package fourpin.boring;

import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.job.Bay;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * What happens when a panel of a case with free rows is turned end for end, said only as far as it
 * is true of all its bays.
 *
 * @param ends sum of the heights of both ends of the case's sides
 * @param unlike what would be noted of partitions if the rows were balanced for the sides
 */
record TurningNote(
    BuiltCase built, List<BaySpace> shelved, Length ends, List<Finding> unlike, Reporter reporter) {

  List<Finding> of(Lattice wished, Lattice balanced) {
    List<Length> misses =
        shelved.stream()
            .map(this::stated)
            .map(bay -> wished.raised(bay.levelsUp()).missWhenTurned(ends))
            .distinct()
            .toList();
    if (misses.size() > 1) {
      return List.of(note(unlikeBays(), List.of(markTop())));
    }
    Length miss = misses.getFirst();
    return miss.isZero()
        ? List.of()
        : List.of(note(alikeBays(miss, wished, balanced), alikeRemedies(wished, balanced)));
  }

  private Bay stated(BaySpace space) {
    return built.order().bays().get(space.number() - 1);
  }

  private Finding note(String what, List<Remedy> remedies) {
    return reporter.caseFinding(Severity.NOTE, "balance", what, remedies);
  }

  private static String unlikeBays() {
    return "Bays with levels-up have their holes at other heights than the rest, so that no start"
        + " of the rows is the same from both ends for all of them.";
  }

  private String alikeBays(Length miss, Lattice wished, Lattice balanced) {
    Length shift = balanced.start().minus(wished.start());
    return Reporter.say(
        "A side turned end for end would have its holes off by %s. The nearest balanced start is"
            + " a first hole at %s, %s %s than now at %s.",
        reporter.text(miss),
        reporter.text(balanced.start()),
        reporter.text(shift.abs()),
        shift.isNegative() ? "lower" : "higher",
        reporter.text(wished.start()));
  }

  private List<Remedy> alikeRemedies(Lattice wished, Lattice balanced) {
    Length shift = balanced.start().minus(wished.start());
    return List.of(
        new Remedy(
            "set balance: balanced",
            "every hole moves by "
                + reporter.text(shift.abs())
                + ", and holes without a partner at the other end are left out",
            Optional.<Stated>of(new Stated.OfSetting(Setting.BALANCE, "balanced"))
                .filter(_ -> unlike.isEmpty())),
        markTop());
  }

  private Remedy markTop() {
    return Reporter.remedy(
        haveSidesLikeHoles()
            ? "mark TOP on every panel and stand both sides together before assembly: the holes"
                + " must meet"
            : "mark TOP on every panel and stand both uprights of each bay together before"
                + " assembly, upper ends as in the case: the holes of the bay must meet",
        "a minute a panel");
  }

  /** Whether the outer bays put the same rows into both sides. */
  private boolean haveSidesLikeHoles() {
    BaySpace first = built.bays().getFirst();
    BaySpace last = built.bays().getLast();
    return shelved.contains(first)
        && shelved.contains(last)
        && haveLikeHoles(stated(first), stated(last));
  }

  private static boolean haveLikeHoles(Bay one, Bay other) {
    return one.levelsUp().equals(other.levelsUp())
        && one.rowsBack().equals(other.rowsBack())
        && one.fixedShelves().equals(other.fixedShelves())
        && one.supports().equals(other.supports())
        && one.supports().filter(s -> s instanceof Support.Standards).isEmpty();
  }
}
