package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.DoorLeaf;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Kick;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a case stands least: things where they turn it forward, doors shut or open. */
@ExtendWith(CommaDecimals.class)
class StandingLeastTest {

  /** Of a reference table of things: paperbacks are 4 1/4 in deep. */
  private static final double DEEP = 4.25 * 25.4;

  private static Job job(String recess, int perBay) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in("84"), in("12"));
    draft.bays = List.of(SampleJobs.bay(4));
    draft.load = Optional.of(new Load.Holds("books, paperback"));
    draft.kick = Optional.of(new Kick(in("3 1/2"), in(recess), "ply"));
    draft.settings =
        draft
            .settings
            .with(Setting.FLOOR_SLOPE, new SettingValue.OfNumber(5))
            .with(Setting.TOP_REACH, new SettingValue.OfLength(Length.ZERO));
    draft.overlayDoors(perBay);
    return SampleJobs.job(draft.order());
  }

  private static Optional<Figure> find(Job job, String last) {
    return Shelving.check(job).cases().getFirst().standing().stream()
        .filter(f -> f.id().equals("north/" + last))
        .findFirst();
  }

  private static Figure figure(Job job, String last) {
    return find(job, last).orElseThrow();
  }

  private static BuiltCase built(Job job) {
    return CaseworkBuilder.build(job).cases().getFirst();
  }

  /** What keeps it standing by a figure's inputs, N·mm. */
  private static double moment(Figure tips) {
    return input(tips, "F") * (input(tips, "y") - input(tips, "n") * input(tips, "z") / 1000);
  }

  /**
   * By hand: with a foot 4 in back every row, its middle 54 mm behind a shelf's front edge, is in
   * front of it. All that differs from the load spread evenly is how far its middle comes forward.
   */
  @Test
  void rowsAtTheFrontEdgeTurnItForward() {
    Job job = job("4", 0);
    Figure evenly = figure(job, "tips-at-loaded");
    Figure forward = figure(job, "tips-at-forward");
    double forth =
        floors(built(job))
            .mapToDouble(floor -> (floor.box().size(Axis.Y).mm() - DEEP) / 2)
            .average()
            .orElseThrow();
    double contents = input(evenly, "F") - input(figure(job, "tips-at-empty"), "F");
    assertThat(input(forward, "F")).isCloseTo(input(evenly, "F"), within(1e-6));
    assertThat(moment(forward)).isCloseTo(moment(evenly) - contents * forth, within(1e-3));
    assertThat(forward.title()).contains("at the front edges");
  }

  private static Stream<Part> floors(BuiltCase built) {
    return built.parts().stream()
        .filter(p -> p.role() == Part.Role.SHELF || p.role() == Part.Role.BOTTOM);
  }

  /** Over a foot in front of all rows nothing turns it forward: no figure says so twice. */
  @Test
  void rowsBehindTheFootHoldItDown() {
    assertThat(find(job("0", 0), "tips-at-forward")).isEmpty();
    assertThat(meaning(job("0", 0))).contains("which is empty;");
  }

  private static String meaning(Job job) {
    return figure(job, "anchor-pull").inputs().stream()
        .filter(i -> i.symbol().equals("M"))
        .map(Input::meaning)
        .findFirst()
        .orElseThrow();
  }

  /** Anchors are worked out for the least of all that is printed, and say which that is. */
  @ParameterizedTest
  @CsvSource({"0, 0", "2, 0", "4, 0", "4, 1", "4, 2", "0, 2"})
  void anchorsTakeTheLeast(String recess, int perBay) {
    Job job = job(recess, perBay);
    double shut =
        Stream.of("empty", "top-heavy", "loaded", "forward")
            .flatMap(when -> find(job, "tips-at-" + when).stream())
            .mapToDouble(StandingLeastTest::moment)
            .min()
            .orElseThrow();
    double least = find(job, "tips-at-open").map(StandingLeastTest::opened).orElse(shut);
    assertThat(input(figure(job, "anchor-pull"), "M"))
        .isCloseTo(Math.min(shut, least), within(1e-3));
    assertThat(meaning(job).contains("at the front edges"))
        .isEqualTo(find(job, "tips-at-forward").isPresent());
  }

  private static double opened(Figure open) {
    return moment(open)
        - input(open, "G") * (input(open, "m") + input(open, "n") * input(open, "w") / 1000);
  }

  /** By hand, from their sizes and 600 kg/m³ of this plywood or what else the figure names. */
  @Test
  void shutDoorsWeighAndHangInFront() {
    Job shut = job("2", 2);
    Figure without = figure(job("2", 0), "tips-at-empty");
    Figure with = figure(shut, "tips-at-empty");
    double density = input(figure(shut, "door-weight"), "ρ");
    double weight = 0;
    double moment = moment(without);
    for (DoorLeaf leaf : DoorLeaf.of(built(shut))) {
      double one = leaf.shut().volume() * density * 1e-9 * 9.80665;
      double middle = (leaf.shut().low().y().mm() + leaf.shut().high().y().mm()) / 2;
      double up = (leaf.shut().low().z().mm() + leaf.shut().high().z().mm()) / 2;
      weight += one;
      moment += one * (middle - 2 * 25.4 - 0.005 * up);
    }
    assertThat(weight).isPositive();
    assertThat(input(with, "F")).isCloseTo(input(without, "F") + weight, within(1e-6));
    assertThat(moment(with)).isCloseTo(moment, within(1e-3));
    assertThat(input(figure(shut, "floor-load"), "F"))
        .isCloseTo(input(figure(job("2", 0), "floor-load"), "F") + weight, within(1e-6));
  }

  /** Doors that swing out weigh once: where they hang then, not where they hung. */
  @Test
  void openDoorsDoNotHangShutAsWell() {
    assertThat(input(figure(job("0", 2), "tips-at-open"), "F"))
        .isCloseTo(input(figure(job("0", 0), "tips-at-empty"), "F"), within(1e-6));
  }

  /** Studs 16 in apart, from middle to middle: 17 in outside are 15 9/16 in between the sides. */
  @ParameterizedTest
  @CsvSource({"17, 0", "17.5, 1", "33, 1", "33.5, 2"})
  void studsLieBetweenTheSides(String width, int studs) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in("72"), in("12"));
    draft.bays = List.of(SampleJobs.bay(4));
    Figure behind = figure(SampleJobs.job(draft.order()), "anchor-studs");
    assertThat(behind.value().value()).isEqualTo(studs);
    assertThat(behind.title().contains("another anchor")).isEqualTo(studs == 0);
  }

  /** A foot that stands back under rows at the front edges: it falls though it stands when even. */
  @Test
  void aCaseThatRowsTipIsAnError() {
    Job job = job("5", 0);
    assertThat(figure(job, "tips-at-forward").value().value()).isZero();
    Finding falls = ofKind(Shelving.check(job), "case-tips").getFirst();
    assertThat(falls.severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(falls.what()).contains("at the front edges").endsWith("it falls forward by itself");
  }
}
