package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Load;
import fourpin.job.QuantityReader;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.Figure;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What strength says holds for the case as it is then stated. */
class MovedRowsTest {

  private static Strength check(Bay... bays) {
    Job job = SampleJobs.job(SampleJobs.bookcase(bays));
    return StrengthChecker.check(job, CaseworkBuilder.build(job).cases());
  }

  private static Bay moved(Bay bay, String back) {
    return new Bay(
        bay.width(),
        bay.fixedShelves(),
        bay.shelves(),
        bay.supports(),
        bay.load(),
        in(back),
        in("0"));
  }

  /**
   * Moments about the back row: with both rows a distance further back, the front row bears more by
   * the whole end's load times that distance over the distance of the rows, 11 11/32 - 3 in.
   */
  @Test
  void should_see_rows_where_the_bay_moves_them() {
    List<Figure> plain = check(SampleJobs.bay(1)).shelves().getFirst().supports();
    List<Figure> back = check(moved(SampleJobs.bay(1), "1")).shelves().getFirst().supports();
    double end = plain.get(0).value().value() + plain.get(1).value().value();
    assertThat(back.get(0).value().value())
        .isCloseTo(plain.get(0).value().value() + end / (11.34375 - 3), within(1e-6));
    assertThat(back.get(0).value().value() + back.get(1).value().value())
        .isCloseTo(end, within(1e-6));
  }

  /**
   * The load that a cure names is within the limits when it is stated; bays so wide that next to no
   * load is left name none.
   */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 5})
  void should_hold_with_the_load_that_is_named(int count) {
    for (String width : List.of("72", "73", "74", "75", "76", "77", "78", "96", "120")) {
      sags(check(count, width, SampleJobs.bay(1))).stream()
          .filter(sag -> named(sag).startsWith(KEEP) || !(count == 2 && width.equals("120")))
          .forEach(sag -> assertThat(sags(check(count, width, lightened(sag)))).isEmpty());
    }
  }

  private static Strength check(int count, String width, Bay bay) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in("84"), in("12"));
    draft.bays = Collections.nCopies(count, bay);
    Job job = SampleJobs.job(draft.order());
    return StrengthChecker.check(job, CaseworkBuilder.build(job).cases());
  }

  private static final String KEEP = "keep the load to ";

  private static String named(Finding sag) {
    return sag.remedies().getLast().what();
  }

  private static Bay lightened(Finding sag) {
    String named = named(sag).replace(KEEP, "");
    return new Bay(
        Optional.empty(),
        List.of(),
        Optional.of(SampleJobs.shelves(1)),
        Optional.of(SampleJobs.pins()),
        Optional.of(new Load.PerLength(QuantityReader.LOAD.read(named).orThrow())));
  }

  private static List<Finding> sags(Strength strength) {
    return strength.findings().stream().filter(f -> f.kind().equals("sag")).toList();
  }
}
