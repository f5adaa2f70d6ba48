package fourpin.boring;

import fourpin.casework.Box;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether cleats go into their notches, and whether the notches leave wood in their strips. */
final class CleatChecks {

  private final Support.Cleats cleats;
  private final int bay;
  private final Box clear;
  private final Reporter reporter;
  private final List<Finding> findings = new ArrayList<>();

  CleatChecks(Support.Cleats cleats, int bay, Box clear, Reporter reporter) {
    this.cleats = cleats;
    this.bay = bay;
    this.clear = clear;
    this.reporter = reporter;
  }

  List<Finding> findings(Settings settings) {
    height();
    wood(settings.length(Setting.KERF), settings.length(Setting.LEAST_EDGE));
    return findings;
  }

  /** The ends of a cleat are round, half its height in radius, and lie in half-round notches. */
  private void height() {
    if (!cleats.cleatHeight().isMoreThan(cleats.bore())) {
      return;
    }
    add(
        Severity.ERROR,
        "cleat-too-high",
        Reporter.say(
            "The cleats of bay %d are %s high and do not go into notches of %s.",
            bay, reporter.text(cleats.cleatHeight()), reporter.text(cleats.bore())),
        List.of(
            Reporter.remedy(
                "set cleat-height to " + reporter.text(cleats.bore()) + " or less",
                "lighter cleats"),
            Reporter.remedy(
                "set bore to " + reporter.text(cleats.cleatHeight()) + " or more",
                "another bit, and a pitch that leaves wood between the notches")));
  }

  /** A notch reaches half its bore from the middle line of the blank, half a kerf outside. */
  private void wood(Length kerf, Length least) {
    Length reach = cleats.bore().minus(kerf).over(2);
    Length wood = cleats.width().minus(reach);
    if (!reach.isPositive()) {
      add(
          Severity.ERROR,
          "no-notch",
          Reporter.say(
              "Holes of %s for the cleats of bay %d are lost in the saw cut of %s.",
              reporter.text(cleats.bore()), bay, reporter.text(kerf)),
          List.of(Reporter.remedy("set bore to more, by far", "higher notches")));
    } else if (wood.isLessThan(least)) {
      add(
          wood.isPositive() ? Severity.DOUBT : Severity.ERROR,
          "notch-deep",
          Reporter.say(
              "The notches of bay %d reach %s into strips %s wide: %s.",
              bay,
              reporter.text(reach),
              reporter.text(cleats.width()),
              wood.isPositive() ? "they leave " + reporter.text(wood) : "they part them"),
          List.of(
              Reporter.remedy(
                  "set the strips' width to "
                      + reporter.text(reporter.roundedUp(reach.plus(least))),
                  "deeper notches in the shelves"),
              Reporter.remedy("set bore to less", "lighter cleats")));
    }
  }

  private void add(Severity severity, String kind, String what, List<Remedy> remedies) {
    findings.add(
        reporter.finding(severity, kind, what, List.of(), Optional.empty(), clear, remedies));
  }
}
