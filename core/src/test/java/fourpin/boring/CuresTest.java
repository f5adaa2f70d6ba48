package fourpin.boring;

import static fourpin.job.SampleJobs.bookcase;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static fourpin.job.SampleJobs.pins;
import static fourpin.job.SampleJobs.shelves;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.RandomJobs;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** That every cure named for the job file is one. */
class CuresTest {

  private static final Pattern SETTING = Pattern.compile("set ([a-z-]+) to ([^:,]+)(?:[:,].*)?");
  private static final int JOBS = 150;

  private static Boring bore(CaseOrder order) {
    var job = job(order);
    var casework = CaseworkBuilder.build(job);
    assertThat(casework.cases()).as("%s", casework.findings()).hasSize(1);
    return Borer.bore(job, casework);
  }

  private static List<Finding> kind(Boring boring, String kind) {
    return boring.findings().stream().filter(f -> f.kind().equals(kind)).toList();
  }

  private static CaseOrder set(CaseOrder order, String key, String value) {
    Setting setting = Setting.named(key).orElseThrow();
    SettingValue read = SettingReader.read(setting, value, Unit.INCH).orThrow();
    return order.with(order.settings().with(setting, read));
  }

  private static CaseOrder bays(int count) {
    Bay bay =
        new Bay(
            Optional.empty(),
            List.of(),
            Optional.of(shelves(2)),
            Optional.of(pins()),
            Optional.empty());
    CaseDraft draft = CaseDraft.of(bookcase(Collections.nCopies(count, bay).toArray(Bay[]::new)));
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("16").times(count), in("84"), in("12"));
    return draft.order();
  }

  private static CaseOrder moved(CaseOrder order, Length back, Length up) {
    List<Bay> bays = new ArrayList<>();
    for (Bay bay : order.bays()) {
      bays.add(bays.size() % 2 == 1 ? bay.moved(back, up) : bay);
    }
    return order.with(bays);
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 12})
  void should_cure_all_partitions_by_moving_every_second_bay(int count) {
    CaseOrder order = bays(count);
    List<Finding> found = kind(bore(order), "rows-meet");
    assertThat(found).hasSize(count - 1);
    String second = count == 3 ? "bay 2" : count == 4 ? "bays 2, 4" : "bays 2, 4, 6, 8, 10, 12";
    assertThat(found)
        .allSatisfy(
            f ->
                assertThat(f.remedies())
                    .extracting(Remedy::what)
                    .anyMatch(w -> w.startsWith("state rows-back: 1/2 in for " + second))
                    .anyMatch(
                        w -> w.startsWith("state levels-up: 1/2 in, half a pitch, for " + second)));
    assertThat(kind(bore(moved(order, in("1/2"), in("0"))), "rows-meet")).isEmpty();
    assertThat(kind(bore(moved(order, in("0"), in("1/2"))), "rows-meet")).isEmpty();
  }

  @Test
  void should_name_the_start_that_clears_a_dado() {
    CaseOrder order = set(bays(1), "first-hole", "4 9/32");
    Finding found = kind(bore(order), "hole-joint").getFirst();
    // Rim 1/4 above the bottom's face at 4 7/32, the hole's centre 1/8 higher.
    assertThat(found.remedies())
        .extracting(Remedy::what)
        .containsExactly(
            "set first-hole to 4 19/32 in", "by hand: leave this hole out when the row is bored");
    assertThat(kind(bore(set(bays(1), "first-hole", "4 19/32")), "hole-joint")).isEmpty();
  }

  @Test
  void should_not_offer_holes_that_go_through() {
    Support deep = new Support.Pins(in("1/4"), in("7/8"), in("3/8"), in("1/8"));
    Bay bay =
        new Bay(
            Optional.empty(),
            List.of(),
            Optional.of(shelves(2)),
            Optional.of(deep),
            Optional.empty());
    assertThat(kind(bore(bookcase(bay)), "pin-stem").getFirst().remedies())
        .extracting(Remedy::what)
        .containsExactly(
            "buy pins with stems of 3/8 in or less and state their stem",
            "by hand: shorten the stems by 1/2 in");
  }

  static LongStream seeds() {
    return LongStream.range(0, JOBS);
  }

  /** Every cure that names one setting is stated and worked again. */
  @ParameterizedTest
  @MethodSource("seeds")
  void should_offer_only_settings_that_cure(long seed) {
    var job = RandomJobs.of(seed);
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    for (Finding finding : boring.findings()) {
      for (Remedy remedy : finding.remedies()) {
        Matcher said = SETTING.matcher(remedy.what());
        if (finding.severity() != Severity.NOTE && said.matches()) {
          String key = said.group(1);
          Setting setting = Setting.named(key).orElseThrow();
          SettingValue value = SettingReader.read(setting, said.group(2), job.unit()).orThrow();
          CaseOrder cured =
              job.cases().getFirst().with(job.cases().getFirst().settings().with(setting, value));
          assertThat(like(again(job, cured), finding))
              .as("%s: %s", finding.what(), remedy.what())
              .isLessThan(like(boring, finding));
        }
      }
    }
  }

  private static Boring again(fourpin.job.Job job, CaseOrder order) {
    var changed = job.with(List.of(order));
    return Borer.bore(changed, CaseworkBuilder.build(changed));
  }

  private static long like(Boring boring, Finding finding) {
    return boring.findings().stream()
        .filter(f -> f.kind().equals(finding.kind()))
        .filter(f -> f.place().part().equals(finding.place().part()))
        .count();
  }
}
