package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Joint;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Bottoms that a kick carries in front and nothing at the back. */
@ExtendWith(CommaDecimals.class)
class KickBottomsTest {

  private static CaseDraft low() {
    CaseDraft draft = new CaseDraft();
    draft.name = "Low";
    draft.material = "panel";
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("48"), in("40"), in("12"));
    draft.bays = List.of(SampleJobs.bay(1));
    draft.load = Optional.of(new Load.Holds("records, 12 in"));
    return draft;
  }

  private static Strength check(CaseDraft draft, String thickness) {
    Job job = SampleJobs.job(draft.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(SampleJobs.board("panel", "plywood, veneer core", thickness));
    return Shelving.check(JobDraft.changed(job, d -> d.materials = materials));
  }

  private static double mm(Strength strength, String end) {
    return strength.cases().getFirst().figures().stream()
        .filter(f -> f.id().endsWith(end))
        .map(Figure::value)
        .findFirst()
        .orElseThrow()
        .value();
  }

  /**
   * By a series of Ritz, worked out beside the program: 0.291 in at the middle of the back edge.
   */
  @Test
  void theBackEdgeSagsAsASeriesSays() {
    Strength strength = check(low(), "3/4");
    assertThat(mm(strength, "bottom-1-sag") / 25.4).isCloseTo(0.291, withPercentage(2));
    assertThat(mm(strength, "bottom-1-sag-years"))
        .isCloseTo(2 * mm(strength, "bottom-1-sag"), within(1e-9));
    Finding found = ofKind(strength, "bottom-sags").getFirst();
    assertThat(found.severity()).isEqualTo(Severity.DOUBT);
    assertThat(found.remedies())
        .extracting(Remedy::what)
        .anyMatch(cure -> cure.startsWith("stand a second kick") && cure.endsWith("is allowed"))
        .anyMatch(cure -> cure.startsWith("make the bottom at least 1.37 in thick"));
  }

  /** The cure, made: 1 3/8 in; less is too thin. */
  @Test
  void aBottomAsThickAsTheCureSaysHolds() {
    assertThat(ofKind(check(low(), "1 3/8"), "bottom-sags")).isEmpty();
    assertThat(ofKind(check(low(), "1 1/8"), "bottom-sags")).hasSize(1);
  }

  @Test
  void aBottomOnTheFloorIsNotJudged() {
    CaseDraft flat = low();
    flat.kick = Optional.empty();
    flat.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    Strength strength = check(flat, "3/4");
    assertThat(ofKind(strength, "bottom-sags")).isEmpty();
    assertThat(strength.cases().getFirst().feet()).isEmpty();
  }
}
