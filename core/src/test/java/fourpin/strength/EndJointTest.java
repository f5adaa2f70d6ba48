package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.FixedShelving.find;
import static fourpin.strength.FixedShelving.loaded;
import static fourpin.strength.FixedShelving.of;
import static fourpin.strength.FixedShelving.value;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Finding;
import fourpin.job.CaseDraft;
import fourpin.job.Joint;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What joints of fixed shelves leave of loads and spans, and how deep they are to be cut. */
@ExtendWith(CommaDecimals.class)
class EndJointTest {

  private static void shallow(CaseDraft draft) {
    draft.fixedShelfJoint = CaseDraft.joint(Joint.Kind.DADO, "1/32");
    loaded(draft, 1.5);
  }

  private static void ofOneBay(CaseDraft draft) {
    draft.bays = List.of(draft.bays.getFirst());
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in("84"), in("12"));
    shallow(draft);
  }

  /** What is told can be cut, and holds. */
  @Test
  void deeperDadoesAreToldInLengthsThatCanBeCut() {
    Matcher told = DEEPER.matcher(deeper(of(EndJointTest::ofOneBay)).getFirst());
    assertThat(told.matches()).isTrue();
    assertThat(told.group(1)).isEqualTo(told.group(2));
    Strength cured =
        of(
            d -> {
              ofOneBay(d);
              d.fixedShelfJoint = CaseDraft.joint(Joint.Kind.DADO, told.group(1));
            });
    assertThat(ofKind(cured, "joint-carries")).isEmpty();
  }

  /** Half a panel is to be left, of a partition between both its faces. Common practice. */
  @Test
  void dadoesAreNotToldDeeperThanAPanelBears() {
    assertThat(ofKind(of(EndJointTest::shallow), "joint-carries")).isNotEmpty();
    assertThat(deeper(of(EndJointTest::shallow))).isEmpty();
    assertThat(
            deeper(
                of(
                    d -> {
                      ofOneBay(d);
                      loaded(d, 3);
                    })))
        .isEmpty();
  }

  private static final Pattern DEEPER =
      Pattern.compile(
          "cut them (.*) in deep: joints: fixed-shelves: \\{kind: dado, depth: (.*) in}");

  /** Told of what presses too hard. */
  private static List<String> deeper(Strength strength) {
    return ofKind(strength, "joint-carries").stream()
        .filter(f -> f.place().part().equals(Optional.of("1-F1")))
        .flatMap(f -> f.remedies().stream())
        .map(Finding.Remedy::what)
        .filter(what -> what.contains("deep"))
        .toList();
  }

  /** Loaded so, they just carry; by a hundredth more, too much. */
  @ParameterizedTest
  @EnumSource(
      value = Joint.Kind.class,
      names = {"DADO", "BUTT"})
  void noMoreLoadIsToldThanJointsCarry(Joint.Kind kind) {
    Consumer<CaseDraft> narrow =
        d -> {
          ofOneBay(d);
          d.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("14"), in("84"), in("12"));
          d.fixedShelfJoint = CaseDraft.joint(kind, "1/32");
        };
    Figure largest = largest(of(narrow));
    double most = largest.value().value();
    assertThat(largest.title()).contains("(load on a joint, load in a row along the front edge)");
    assertThat(ofShelf(of(narrow.andThen(d -> loaded(d, 0.999 * most))))).isEmpty();
    assertThat(ofShelf(of(narrow.andThen(d -> loaded(d, 1.01 * most))))).hasSize(1);
  }

  private static Figure largest(Strength strength) {
    return Shelving.figures(strength.shelves().getFirst()).stream()
        .filter(f -> f.id().endsWith("/largest-load"))
        .findFirst()
        .orElseThrow();
  }

  private static List<Finding> ofShelf(Strength strength) {
    return ofKind(strength, "joint-carries").stream()
        .filter(f -> f.what().startsWith("fixed shelf"))
        .toList();
  }

  /** Over as long a span as is told they carry its load; over one that is longer, too much. */
  @Test
  void noLongerSpanIsToldThanJointsCarry() {
    Strength strength =
        of(
            d -> {
              ofOneBay(d);
              d.fixedShelfJoint = CaseDraft.joint(Joint.Kind.BUTT, "1/4");
              loaded(d, 1.8);
            });
    Figure longest =
        Shelving.figures(strength.shelves().getFirst()).stream()
            .filter(f -> f.id().endsWith("/longest-span"))
            .findFirst()
            .orElseThrow();
    Figure screw = find(strength, "joint-screw");
    double allowed =
        Math.min(value(strength, "joint-screw-nds"), value(strength, "joint-screw-ec5"));
    assertThat(longest.title()).contains("load on a joint");
    assertThat(longest.value().value())
        .isCloseTo(
            input(find(strength, "joint-load"), "l") * allowed / screw.value().value(),
            within(0.02 * longest.value().value()));
  }

  /** Other materials would be joined otherwise, and the tables say what they leave out. */
  @Test
  void spanTablesSayThatJointsAreNotCounted() {
    assertThat(spans(of(EndJointTest::ofOneBay)))
        .isNotEmpty()
        .allMatch(t -> t.contains("joints not counted"));
    assertThat(spans(check(SampleJobs.bay(1)))).isNotEmpty().noneMatch(t -> t.contains("joints"));
  }

  private static List<String> spans(Strength strength) {
    return strength.cases().getFirst().spans().stream()
        .flatMap(table -> table.rows().stream())
        .flatMap(row -> row.spans().stream())
        .map(span -> span.longest().title())
        .filter(title -> title.startsWith("longest span"))
        .toList();
  }
}
