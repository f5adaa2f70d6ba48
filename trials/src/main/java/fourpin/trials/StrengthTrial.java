package fourpin.trials;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Bay;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Load;
import fourpin.job.Shelves;
import fourpin.job.Sizes;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.plan.Planner;
import fourpin.strength.Strength;
import fourpin.strength.StrengthChecker;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Support;
import fourpin.strength.plate.PlateSolver;
import fourpin.strength.plate.Rigidity;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;

/** How long shelves take to be bent and judged. */
@Command(
    name = "strength",
    mixinStandardHelpOptions = true,
    description =
        "Times plates, and the strength of cases with twelve shelves; writes docs/strength-trials.md.")
final class StrengthTrial implements Callable<Integer> {

  private static final String EXAMPLE = "reading-room.yaml";
  private static final int SHELVES = 12;
  private static final int BAYS = 4;

  /** Clear width of the narrowest of unlike bays, and by how much each next one is wider. */
  private static final Length NARROWEST = Length.inches(22, 1);

  private static final Length STEP = Length.inches(1, 4);

  /** Oak 800 x 280 x 19 mm on four pins, as in {@code docs/plate-convergence.md}. */
  private static final Rigidity OAK = Rigidity.of(12_300, 886, 0.43, 1058, 19);

  /** Far too much, so that every shelf is given its cures. */
  private static final Load TOO_MUCH = new Load.PerLength(Quantity.of(2, QuantityUnit.LINE_LOAD));

  private static final String HEAD =
      """
      # Strength, in time

      Written by `trials/run strength`: one plate, and all that is worked out of the strength of a case with twelve shelves. Where
      they sag, each finding is given its cures, every one of them bent anew. Warm; medians in milliseconds, by the clock and
      of the processor for the one thread that works; on a busy machine the second tells.

      """;

  private static final String COLUMNS =
      """
      | | clock, ms | processor, ms | aim, ms |
      |---|---|---|---|
      """;

  private final PrintStream out = System.out;
  private final Warm warm = new Warm();
  private final StringBuilder rows = new StringBuilder();

  @Override
  public Integer call() throws IOException {
    String machine = Machine.inWords();
    out.print(machine + "\n\n" + COLUMNS);
    row("one plate on four pins, one load", "5", StrengthTrial::plate);
    CaseOrder example = Examples.job(EXAMPLE).cases().getFirst();
    strength("12 shelves alike", "100", alike(example));
    strength("12 shelves, no two alike", "100", unlike(example));
    strength(
        "12 shelves alike, sagging, with cures",
        "100",
        alike(example).stream().map(StrengthTrial::overloaded).toList());
    strength(
        "12 shelves, no two alike, sagging, with cures",
        "100",
        unlike(example).stream().map(StrengthTrial::overloaded).toList());
    Job job = of(alike(example));
    row("whole plan of the 12 shelves alike", "", () -> Planner.plan(job));
    Files.writeString(
        Trials.root().resolve("docs/strength-trials.md"),
        HEAD + "On " + machine + ":\n\n" + COLUMNS + rows);
    return 0;
  }

  private static Object plate() {
    List<Support> pins =
        List.of(
            new Support(5, 37), new Support(795, 37), new Support(5, 243), new Support(795, 243));
    Plate plate = Plate.even(800, 280, OAK, Edges.FREE, pins);
    return new PlateSolver(plate).under(List.of(plate.evenly(0.001)));
  }

  private void strength(String name, String aim, List<Bay> bays) throws IOException {
    Job job = of(bays);
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    int shelves = StrengthChecker.check(job, boring.cases()).shelves().size();
    if (shelves != SHELVES) {
      throw new IllegalStateException(name + " are " + shelves);
    }
    row(name, aim, () -> looked(StrengthChecker.check(job, boring.cases())));
  }

  /** Cures are worked out when they are looked into, as the pages do. */
  private static Object looked(Strength strength) {
    return strength.findings().stream().mapToInt(finding -> finding.remedies().size()).sum();
  }

  private void row(String name, String aim, Supplier<Object> work) {
    Warm.Milliseconds taken = warm.milliseconds(work);
    String text =
        String.format(
            Locale.ROOT,
            "| %s | %.2f | %.2f | %s |\n",
            name,
            taken.clock().median(),
            taken.processor().median(),
            aim);
    out.print(text);
    rows.append(text);
  }

  private static List<Bay> alike(CaseOrder example) {
    return IntStream.range(0, BAYS)
        .mapToObj(_ -> bay(example, Optional.empty(), SHELVES / BAYS))
        .toList();
  }

  private static List<Bay> unlike(CaseOrder example) {
    return IntStream.range(0, SHELVES)
        .mapToObj(
            n ->
                bay(
                    example,
                    n == 0 ? Optional.empty() : Optional.of(NARROWEST.plus(STEP.times(n))),
                    1))
        .toList();
  }

  private static Bay bay(CaseOrder example, Optional<Length> width, int count) {
    Bay first = example.bays().getFirst();
    Shelves shelves = first.shelves().orElseThrow();
    Shelves some =
        new Shelves(
            new Shelves.Placing.Evenly(count),
            shelves.material(),
            shelves.edging(),
            shelves.frontSetback());
    return new Bay(width, List.of(), Optional.of(some), first.supports(), first.load());
  }

  private static Bay overloaded(Bay bay) {
    return new Bay(
        bay.width(), bay.fixedShelves(), bay.shelves(), bay.supports(), Optional.of(TOO_MUCH));
  }

  /** The example's case, as wide as its bays ask. */
  private static Job of(List<Bay> bays) throws IOException {
    Job job = Examples.job(EXAMPLE);
    CaseOrder order = job.cases().getFirst();
    Length width = NARROWEST.plus(Length.inches(4, 1)).times(bays.size());
    Sizes sizes =
        new Sizes(order.sizes().measured(), width, order.sizes().height(), order.sizes().depth());
    return job.with(List.of(order.with(sizes).with(bays)));
  }
}
