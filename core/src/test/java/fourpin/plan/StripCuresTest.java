package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding.Stated;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Edging;
import fourpin.job.Edging.Edge;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shelves;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.SpanTable;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips that are offered or tabled leave the supports their place under the shelf. */
@ExtendWith(CommaDecimals.class)
class StripCuresTest {

  /** So little that one strip may do, N. */
  private static final double EACH_MM = 0.13;

  /** Shelves 34 13/16 in long on pins of 1/4 in, without strips but those given. */
  private static Plan plan(String frontRow, String backRow, List<Edging> edging) {
    Bay bay =
        new Bay(
            Optional.empty(),
            List.of(),
            Optional.of(new Shelves(new Shelves.Placing.Evenly(1), "ply", edging, in("0"))),
            Optional.of(SampleJobs.pins()),
            Optional.empty());
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bay, bay);
    draft.load = Optional.of(new Load.PerLength(Quantity.of(EACH_MM, QuantityUnit.LINE_LOAD)));
    draft.settings =
        draft
            .settings
            .with(Setting.FRONT_ROW, new SettingValue.OfLength(in(frontRow)))
            .with(Setting.BACK_ROW, new SettingValue.OfLength(in(backRow)));
    return Planner.plan(SampleJobs.job(draft.order()));
  }

  private static List<Edging> offered(Plan plan) {
    return plan.findings().stream()
        .filter(f -> f.kind().equals("sag") || f.kind().equals("row-sags"))
        .flatMap(f -> f.remedies().stream())
        .flatMap(remedy -> remedy.stated().stream())
        .flatMap(stated -> stated.each().stream())
        .filter(Stated.ShelvesOf.class::isInstance)
        .flatMap(stated -> ((Stated.ShelvesOf) stated).strip().stream())
        .toList();
  }

  private static List<String> tabled(Plan plan) {
    return plan.standing().getFirst().spans().getFirst().rows().stream()
        .map(SpanTable.Row::made)
        .toList();
  }

  /**
   * Boards of 3/4 in before pins of 1/4 in, half of which lies before the middle of their row: from
   * 7/8 in on there is room.
   */
  @ParameterizedTest
  @CsvSource({
    "1 1/2, 1 1/2, true, true",
    "7/8, 7/8, true, true",
    "55/64, 7/8, false, false",
    "7/8, 55/64, true, false"
  })
  void should_offer_no_strip_that_lies_on_the_supports(
      String frontRow, String backRow, boolean front, boolean both) {
    Plan plan = plan(frontRow, backRow, List.of());
    assertThat(offered(plan).stream().anyMatch(s -> s.edges().equals(List.of(Edge.FRONT))))
        .isEqualTo(front);
    assertThat(offered(plan).stream().anyMatch(s -> s.edges().contains(Edge.BACK))).isEqualTo(both);
    assertThat(tabled(plan).contains("a strip of oak 1 1/2 in high in front")).isEqualTo(front);
    assertThat(tabled(plan).contains("one in front and one at the back")).isEqualTo(both);
    offered(plan)
        .forEach(
            strip ->
                assertThat(plan(frontRow, backRow, List.of(strip)).findings())
                    .noneMatch(f -> f.kind().equals("strip-on-supports"))
                    .noneMatch(f -> f.kind().equals("sag") || f.kind().equals("row-sags")));
  }
}
