package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Stated;
import fourpin.job.CaseDraft;
import fourpin.job.Edging;
import fourpin.job.Edging.Edge;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips glued over the ends of shelves, between 30 and 60 % of humidity. */
class EndStripsTest {

  private static Edging edging(Edging.Kind kind, Edge... edges) {
    return new Edging(kind, "oak", in("1/4"), in("3/4"), List.of(edges));
  }

  private static List<Finding> told(String material, double driest, Edging edging) {
    CaseDraft draft = new CaseDraft();
    draft.bays =
        List.of(Shelving.bay(Shelving.shelves(material, List.of(edging)), SampleJobs.pins()));
    draft.settings =
        draft
            .settings
            .with(Setting.BENCH_HUMIDITY, new SettingValue.OfNumber(60))
            .with(Setting.HUMIDITY_LOW, new SettingValue.OfNumber(driest))
            .with(Setting.HUMIDITY_HIGH, new SettingValue.OfNumber(60));
    return ofKind(Shelving.check(SampleJobs.job(draft.order())), "end-strips");
  }

  /** A strip moves along its grain by a fortieth of what the shelf moves; plywood stays. */
  @ParameterizedTest
  @CsvSource({
    "oak, STRIP, LEFT, 30, 1",
    "oak, STRIP, RIGHT, 30, 1",
    "oak, STRIP, FRONT, 30, 0",
    "oak, BANDING, LEFT, 30, 0",
    "oak, STRIP, LEFT, 60, 0",
    "ply, STRIP, LEFT, 30, 0"
  })
  void should_tell_of_strips_across_wood_that_moves(
      String material, Edging.Kind kind, Edge edge, double driest, int count) {
    assertThat(told(material, driest, edging(kind, edge))).hasSize(count);
  }

  /**
   * Wood Handbook FPL-GTR-190 (2010): Table 4-2, 70 °F, 6.2 % at 30 % and 11.0 % at 60 %; Table
   * 13-5, white oak 0.00365 for each per cent, flat sawn.
   */
  @Test
  void should_tell_how_far_the_wood_moves() {
    Finding finding = told("oak", 30, edging(Edging.Kind.STRIP, Edge.LEFT)).getFirst();
    double width = input(finding.figures().getFirst(), "W");
    double sum = finding.figures().stream().mapToDouble(f -> f.value().value()).sum();
    assertThat(sum).isCloseTo(width * 0.00365 * (11.0 - 6.2), within(0.01 * width * 0.0175));
  }

  @Test
  void should_offer_the_strips_that_lie_along_the_grain() {
    Finding finding =
        told("oak", 30, edging(Edging.Kind.STRIP, Edge.FRONT, Edge.LEFT, Edge.RIGHT)).getFirst();
    Edging front = edging(Edging.Kind.STRIP, Edge.FRONT);
    assertThat(finding.remedies().getFirst().stated())
        .contains(new Stated.ShelvesOf(Optional.empty(), Optional.of(front)));
    assertThat(told("oak", 30, front)).isEmpty();
  }

  /** No job file says by one key that shelves have no edging. */
  @Test
  void should_leave_ends_alone_to_the_maker() {
    Finding finding = told("oak", 30, edging(Edging.Kind.STRIP, Edge.LEFT)).getFirst();
    assertThat(finding.remedies()).allMatch(remedy -> remedy.stated().isEmpty());
  }
}
