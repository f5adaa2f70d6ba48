package fourpin.sheets.packet;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Joint;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page "Will it hold", shelf by shelf. */
class ShelfPagesTest {

  private static final String FAILS = "Not within the limits";

  /** Shelves of one finding that stand apart on the page, since they hang on their pins unlike. */
  private static List<String> shelves(Consumer<CaseDraft> change) {
    CaseDraft draft = new CaseDraft();
    draft.name = "Books";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("79"), in("12"));
    Bay bay = SampleJobs.bay(4);
    Bay fixed =
        new Bay(bay.width(), List.of(in("36")), bay.shelves(), bay.supports(), Optional.empty());
    draft.bays = List.of(fixed, fixed);
    draft.load = Optional.of(new Load.PerLength(Quantity.of(0.5, QuantityUnit.LINE_LOAD)));
    change.accept(draft);
    Plan plan = Planner.plan(SampleJobs.job(draft.order()));
    return new ShelfPages(plan, new Words(plan.job()))
        .section().orElseThrow().blocks().stream()
            .filter(Block.Together.class::isInstance)
            .map(block -> text(((Block.Together) block).blocks()))
            .toList();
  }

  private static String text(List<Block> blocks) {
    return String.join(" ", blocks.stream().flatMap(ShelfPagesTest::words).toList());
  }

  private static Stream<String> words(Block block) {
    return switch (block) {
      case Block.Heading(String text) -> Stream.of(text);
      case Block.Paragraph(Prose prose) -> Stream.of(prose.text());
      case Block.Bullets(List<Prose> items) -> items.stream().map(Prose::text);
      default -> Stream.empty();
    };
  }

  @Test
  void eachShelfThatFailsHasCuresOrTellsWhereTheyStand() {
    List<String> failing = shelves(_ -> {}).stream().filter(t -> t.contains(FAILS)).toList();
    assertThat(failing).hasSizeGreaterThan(2);
    assertThat(failing).allMatch(text -> text.contains("Cure: ") || text.contains("cures stand"));
    List<String> pointing = failing.stream().filter(t -> t.contains("cures stand")).toList();
    assertThat(pointing)
        .isNotEmpty()
        .allMatch(t -> t.contains("Its cures stand under Books, shelf 1-S1, which bends alike."))
        .noneMatch(t -> t.contains("Cure: "));
    assertThat(failing).anyMatch(t -> t.contains("1-S1") && t.contains("Cure: "));
  }

  /** Bent little, and still not within the limits: its screws carry too much. */
  @Test
  void aFixedShelfWhoseJointsCarryTooMuchIsNotWithinItsLimits() {
    List<String> shelves =
        shelves(
            draft -> {
              draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in("79"), in("12"));
              draft.load =
                  Optional.of(new Load.PerLength(Quantity.of(1.5, QuantityUnit.LINE_LOAD)));
              draft.fixedShelfJoint = new Joint(Joint.Kind.BUTT, Optional.empty());
            });
    String fixed = shelves.stream().filter(t -> t.contains("1-F1")).findFirst().orElseThrow();
    assertThat(fixed)
        .contains(FAILS, "loads its joints more than is allowed")
        .contains("Cure of its joints: let the ends into dadoes");
  }
}
