package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.find;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.Unit;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Partitions that are named for a top that bends too far, made. */
class DividedTopTest {

  /** Of a case of 72 in, which can be reached over. */
  private static CaseDraft low(List<Bay> bays) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("40"), in("12"));
    draft.bays = bays;
    return draft;
  }

  private static Bay wide(String inches) {
    Bay bay = SampleJobs.bay(1);
    return new Bay(
        Optional.of(in(inches)),
        bay.fixedShelves(),
        bay.shelves(),
        bay.supports(),
        Optional.empty());
  }

  private static Strength strength(CaseDraft draft) {
    return check(SampleJobs.job(draft.order()));
  }

  private static Optional<Remedy> cure(Strength strength) {
    return ofKind(strength, "top-sags").stream()
        .map(Finding::remedies)
        .flatMap(List::stream)
        .filter(cure -> cure.what().contains("partition"))
        .findFirst();
  }

  private static String sag(Strength strength, String id) {
    return find(strength, "north/top/" + id).orElseThrow().value().text(Unit.INCH);
  }

  /** The fewest, and the top then sags as they say. */
  @Test
  void theFewestThatHoldAreNamedAndHold() {
    Remedy cure = cure(strength(low(List.of(SampleJobs.bay(1))))).orElseThrow();
    assertThat(cure.what()).startsWith("put 2 partitions, spread evenly, under it: ");
    Strength three = strength(low(Collections.nCopies(3, SampleJobs.bay(1))));
    assertThat(ofKind(three, "top-sags")).isEmpty();
    assertThat(cure.what())
        .contains(
            "it then sags by %s now and %s after years"
                .formatted(sag(three, "plate-front-row"), sag(three, "plate-front-row-years")));
    Strength two = strength(low(Collections.nCopies(2, SampleJobs.bay(1))));
    assertThat(ofKind(two, "top-sags")).hasSize(1);
  }

  /** Narrow bays hold as they are. */
  @Test
  void onlyBaysThatAreTooWideAreDivided() {
    CaseDraft draft = low(List.of(wide("20"), SampleJobs.bay(1)));
    Remedy cure = cure(strength(draft)).orElseThrow();
    assertThat(cure.what()).startsWith("put 2 partitions, spread evenly, in bay 2: ");
    assertThat(cure.stated().orElseThrow().each()).contains(new Stated.PartitionsIn(2, 2));
  }

  /** A case has twelve bays at the most, and seven that are too wide would become fourteen. */
  @Test
  void whatNoNumberOfPartitionsCuresNamesNone() {
    CaseDraft draft = low(Collections.nCopies(7, SampleJobs.bay(1)));
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("300"), in("40"), in("12"));
    Strength strength = strength(draft);
    assertThat(ofKind(strength, "top-sags")).hasSize(1);
    assertThat(cure(strength)).isEmpty();
  }
}
