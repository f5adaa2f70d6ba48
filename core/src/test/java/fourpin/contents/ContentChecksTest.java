package fourpin.contents;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Things that stand out over the shelves they are for. */
@ExtendWith(CommaDecimals.class)
class ContentChecksTest {

  /** Records are 12 3/8 in deep. */
  private static List<Finding> deep(String depth, Bay bay) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bay);
    draft.load = Optional.of(new Load.Holds("records, 12 in"));
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("30"), in("84"), in(depth));
    Job job = SampleJobs.job(draft.order());
    return ContentChecks.of(CaseworkBuilder.build(job).cases().getFirst(), job.style()).stream()
        .filter(f -> f.kind().equals("thing-too-deep") || f.kind().equals("things-fall"))
        .toList();
  }

  private static Bay fixed() {
    return new Bay(
        Optional.empty(), List.of(in("40")), Optional.empty(), Optional.empty(), Optional.empty());
  }

  @Test
  void thingsThatStandOutAreNotedWithTheirMiddle() {
    for (Bay bay : List.of(SampleJobs.bay(1), fixed())) {
      assertThat(deep("10", bay)).extracting(Finding::severity).containsExactly(Severity.NOTE);
      assertThat(deep("10", bay).getFirst().what()).contains("against the back their middle lies");
      assertThat(deep("16", bay)).isEmpty();
    }
  }

  /** Their middle lies before the front edge of loose and of fixed shelves alike. */
  @Test
  void thingsMoreThanTwiceAsDeepFall() {
    for (Bay bay : List.of(SampleJobs.bay(1), fixed())) {
      assertThat(deep("5", bay))
          .extracting(Finding::kind, Finding::severity)
          .containsExactly(tuple("things-fall", Severity.ERROR));
    }
  }
}
