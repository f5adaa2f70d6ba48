package fourpin.boring;

import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where holes may be in one case: the lattice, the zones without holes, and whether rows must be
 * the same from both ends. Zones are measured to the centres of holes.
 *
 * @param ends sum of the heights of both ends of the case's sides: a hole at h lies at {@code ends}
 *     - h when a side is turned end for end
 */
record CasePattern(Lattice lattice, Settings settings, Length ends, List<Finding> findings) {

  /**
   * For a case that has at least one bay with adjustable shelves.
   *
   * @param shelved those bays
   */
  static CasePattern of(BuiltCase built, List<BaySpace> shelved, Reporter reporter) {
    Settings settings = built.order().settings();
    Length ends = ends(built.part(built.bays().getFirst().left()).box());
    Lattice wished = wished(shelved, settings);
    Lattice balanced =
        firstHole(settings).isPresent()
            ? wished.balancedNearest(ends)
            : wished.balancedUpwards(ends);
    Lattice lattice = isBalanced(settings) ? balanced : wished;
    List<Finding> findings = new ArrayList<>();
    if (shelved.stream().anyMatch(b -> followsLattice(built, b))) {
      List<Finding> unlike = unlikeUprights(built, shelved, ends, reporter);
      findings.addAll(
          isBalanced(settings)
              ? unlike
              : new TurningNote(built, shelved, ends, unlike, reporter).of(wished, balanced));
      findings.addAll(startsTooLow(lattice, floor(shelved), reporter));
    }
    return new CasePattern(lattice, settings, ends, findings);
  }

  /** The slots of standards lie where they were punched. */
  private static boolean followsLattice(BuiltCase built, BaySpace bay) {
    return built.order().bays().get(bay.number() - 1).supports().stream()
        .noneMatch(s -> s instanceof Support.Standards);
  }

  private static List<Finding> startsTooLow(Lattice lattice, Length floor, Reporter reporter) {
    if (!lattice.start().isLessThan(floor)) {
      return List.of();
    }
    Length lowest = lattice.within(floor, floor.plus(lattice.pitch())).getFirst();
    return List.of(
        reporter.caseFinding(
            Severity.DOUBT,
            "first-hole-low",
            Reporter.say(
                "A first hole at %s lies below the bottom's upper face at %s. Holes below it are"
                    + " left out: the lowest is at %s.",
                reporter.text(lattice.start()), reporter.text(floor), reporter.text(lowest)),
            List.of(
                Reporter.remedy("set first-hole to " + reporter.text(lowest), "nothing"),
                Reporter.remedy(
                    "leave first-hole out: the lowest hole then lies as clear-below says",
                    "every level of the case moves"))));
  }

  /**
   * The heights that an opening of a bay may have holes at, from the bottom up.
   *
   * @param up how far the bay's holes stand above those of the case
   */
  List<Length> heights(BaySpace bay, BaySpace.Opening opening, Length up) {
    Length floor = opening.clear().low().z();
    boolean stated = firstHole(settings).isPresent() && floor.equals(bay.clear().low().z());
    Length low = stated ? floor : floor.plus(settings.length(Setting.CLEAR_BELOW));
    Length high = opening.clear().high().z().minus(settings.length(Setting.CLEAR_ABOVE));
    return lattice.raised(up).within(low, high);
  }

  /** Only those heights that are there when the panel is turned, if rows are to be balanced. */
  List<Length> balanced(List<Length> heights, List<Length> all) {
    return isBalanced(settings)
        ? heights.stream().filter(h -> all.contains(turned(h))).toList()
        : heights;
  }

  /** Where a hole lies on a side that is turned end for end. */
  Length turned(Length height) {
    return ends.minus(height);
  }

  static boolean isBalanced(Settings settings) {
    return settings.choice(Setting.BALANCE).equals("balanced");
  }

  /** Whether the maker's own first hole lies above a height. */
  boolean startsAbove(Length height) {
    return firstHole(settings).isPresent() && lattice.start().isMoreThan(height);
  }

  private static Optional<Length> firstHole(Settings settings) {
    return settings.optionalLength(Setting.FIRST_HOLE);
  }

  private static Lattice wished(List<BaySpace> shelved, Settings settings) {
    Length lowest = floor(shelved).plus(settings.length(Setting.CLEAR_BELOW));
    return new Lattice(firstHole(settings).orElse(lowest), settings.length(Setting.PITCH));
  }

  private static Length floor(List<BaySpace> shelved) {
    return shelved.stream().map(b -> b.clear().low().z()).min(Length::compareTo).orElseThrow();
  }

  private static Length ends(Box upright) {
    return upright.low().z().plus(upright.high().z());
  }

  /** Partitions of another height can't be balanced together with the sides. */
  private static List<Finding> unlikeUprights(
      BuiltCase built, List<BaySpace> shelved, Length ends, Reporter reporter) {
    List<Finding> findings = new ArrayList<>();
    for (Part part : built.parts()) {
      boolean used =
          shelved.stream()
              .anyMatch(b -> b.left().equals(part.mark()) || b.right().equals(part.mark()));
      Length off = ends(part.box()).minus(ends).abs();
      if (used && !off.isZero()) {
        String words =
            "The rows are balanced for the sides. %s (%s) stands between other heights, so its"
                + " rows would be off by %s if it were turned end for end.";
        findings.add(
            reporter.finding(
                Severity.NOTE,
                "balance",
                Reporter.say(words, part.name(), part.mark(), reporter.text(off)),
                List.of(),
                Optional.of(part.mark()),
                part.box(),
                List.of(
                    Reporter.remedy(
                        "mark TOP on " + part.mark() + " before it is bored", "a minute"))));
      }
    }
    return findings;
  }
}
