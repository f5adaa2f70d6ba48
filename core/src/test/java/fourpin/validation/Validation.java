package fourpin.validation;

import fourpin.measure.Source.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** All checks by topic, and the page of them. */
final class Validation {

  /** Topics with more checks than this show only the worst and a few between. */
  private static final int MOST_SHOWN = 80;

  private static final int SAMPLES = 8;

  private Validation() {}

  /** Checks of one kind. @param about what is held against what */
  record Topic(String title, String about, List<Check> checks) {}

  static List<Topic> topics() {
    return List.of(
        new Topic(
            "Beams",
            "`Beam`, the fast first look at a shelf. The handbook prints its factors as fractions.",
            BeamChecks.all()),
        new Topic(
            "Sections of several materials",
            "`Section`: shelves with strips on edge.",
            SectionChecks.composite()),
        new Topic(
            "Panels of layers",
            "`Laminate`: doubled panels and torsion boxes.",
            SectionChecks.layers()),
        new Topic(
            "Bending strength",
            "`Breaking`: characteristic strengths, less what Eurocode 5 takes off for loads that stay for years in dry air.",
            SectionChecks.breaking()),
        new Topic(
            "Plates",
            "`PlateSolver` at the mesh that the program uses, within 1 % everywhere; [how fine a mesh a shelf"
                + " needs](plate-convergence.md). Of clamped plates the sag alone: the program clamps no shelf.",
            PlateChecks.all()),
        new Topic(
            "Plates, by other methods",
            "The same solver beside series, polynomials and the balance of forces, each worked out anew by the test: shelves on"
                + " pins, whose stress no table was found for, among them. Left out for missing by more than 1 % at this mesh: a"
                + " single force on a plate five times as long as deep (2 % too small a sag).",
            PlateSecondChecks.all()),
        new Topic(
            "Supports that push and never pull",
            "`PlateSolver` where a shelf lifts off: tables of beams whose supports would have to pull, and closed forms.",
            ContactChecks.all()),
        new Topic(
            "Shelf spans",
            "The longest shelf that sags by span/144; printed lengths are cut to whole inches.",
            SectionChecks.spans()),
        new Topic(
            "Woods",
            "The program's metric moduli against the inch-pound table, which is printed and rounded apart.",
            WoodChecks.moduli()),
        new Topic("Density", "", WoodChecks.density()),
        new Topic(
            "Equilibrium moisture",
            "`Moisture.equilibrium`; the table is printed to 0.1 %.",
            MoistureChecks.equilibrium()),
        new Topic(
            "Movement",
            "`Moisture.change`, and the coefficients of the program's table.",
            MoistureChecks.movement()),
        new Topic(
            "Shrinkage",
            "The program's table beside a later edition of the same: this finds misprints, and proves no value.",
            MoistureChecks.shrinkage()),
        new Topic(
            "Dowel bearing",
            "`DowelBearing`; the NDS table rounds to 50 psi.",
            WoodChecks.bearing()),
        new Topic(
            "Pins of shelves",
            "`DowelInWood`: a pin presses on one side of its hole near the mouth, and on the other near the bottom.",
            FrameChecks.pins()),
        new Topic(
            "Nails and screws pushed across",
            "`YieldedDowel` over the reduction of the NDS.",
            FrameChecks.yielding()),
        new Topic(
            "Withdrawal of lag screws",
            "`Withdrawal.lagScrew`; the table is rounded to 1 lb.",
            WoodChecks.lagScrews()),
        new Topic("Withdrawal, worked examples", "", WoodChecks.screws()),
        new Topic(
            "Frames pushed sideways",
            "`ShearPanel`, `Corner`, `SwayFrame`, `FrameOnLegs`: backs, joints, legs, and what stands in a case.",
            FrameChecks.racking()),
        new Topic(
            "Creep",
            "The program's table of sag after years over sag at first, beside the same table as others quote it: this finds"
                + " misprints, and proves no value. The last row is a worked example.",
            WoodChecks.creep()),
        new Topic(
            "Loads that stay",
            "The program's table beside the same table as others print it: this finds misprints, and proves no value.",
            WoodChecks.duration()));
  }

  static List<Check> all() {
    return topics().stream().flatMap(topic -> topic.checks().stream()).toList();
  }

  static String page() {
    List<Check> all = all();
    String head =
        String.format(
            Locale.ROOT,
            """
        # What Fourpin works out, beside what others have published

        Written by a test (`ValidationTest`), which fails where ours is off by more than the printed digits and the named
        roundings leave open. %d values; %d of them are known from the work named but were not looked up there again, and are
        marked *from memory*; %d follow from plain mechanics or come from a second method that the test itself works out, and
        are marked *derived*. The others were read in the work or in a copy of it. Nothing here says that a case is safe.

        """,
            all.size(),
            count(all, Standing.FROM_MEMORY),
            count(all, Standing.DERIVED));
    return head + topics().stream().map(Validation::section).collect(Collectors.joining("\n"));
  }

  private static long count(List<Check> all, Standing standing) {
    return all.stream().filter(c -> c.source().standing() == standing).count();
  }

  private static String section(Topic topic) {
    StringBuilder text = new StringBuilder("## " + topic.title() + "\n\n");
    if (!topic.about().isEmpty()) {
      text.append(topic.about()).append("\n\n");
    }
    if (topic.checks().size() > MOST_SHOWN) {
      text.append(summary(topic.checks()));
    }
    text.append(
        "| what | known | ours | difference | source |\n| --- | ---: | ---: | ---: | --- |\n");
    shown(topic.checks()).forEach(check -> text.append(row(check)));
    return text.toString();
  }

  private static String summary(List<Check> checks) {
    Check worst = worst(checks);
    return String.format(
        Locale.ROOT,
        "%d values; the farthest off is %s, by %s. Some of them:\n\n",
        checks.size(),
        worst.what(),
        difference(worst));
  }

  private static Check worst(List<Check> checks) {
    return checks.stream()
        .max(Comparator.comparingDouble(c -> Math.abs(c.ours().getAsDouble() - c.expected())))
        .orElseThrow();
  }

  private static List<Check> shown(List<Check> checks) {
    if (checks.size() <= MOST_SHOWN) {
      return checks;
    }
    List<Check> some = new ArrayList<>();
    for (int i = 0; i < SAMPLES; i++) {
      some.add(checks.get(i * (checks.size() - 1) / (SAMPLES - 1)));
    }
    return some;
  }

  private static String row(Check check) {
    String unit = check.unit().isEmpty() ? "" : " " + check.unit();
    return "| %s | %s%s | %s%s | %s | %s, %s%s |\n"
        .formatted(
            check.what(),
            check.printed(),
            unit,
            ours(check),
            unit,
            difference(check),
            check.source().title(),
            check.source().place(),
            standing(check));
  }

  private static String standing(Check check) {
    return switch (check.source().standing()) {
      case FROM_MEMORY -> ", *from memory*";
      case DERIVED -> ", *derived*";
      case PUBLISHED, COMMON_PRACTICE, STATED -> "";
    };
  }

  /** With one digit more than is printed. */
  private static String ours(Check check) {
    int point = check.printed().indexOf('.');
    int decimals = point < 0 ? 1 : check.printed().length() - point;
    return String.format(Locale.ROOT, "%." + decimals + "f", check.ours().getAsDouble());
  }

  private static String difference(Check check) {
    String text = String.format(Locale.ROOT, "%+.2f %%", 100 * check.difference());
    return text.equals("-0.00 %") || text.equals("+0.00 %") ? "0.00 %" : text;
  }
}
