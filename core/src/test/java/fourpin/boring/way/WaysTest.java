package fourpin.boring.way;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.bookcase;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Face;
import fourpin.casework.Finding;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.RandomJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Way;
import fourpin.measure.Figure;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is chosen, and what is said about it. */
class WaysTest {

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  static Ways ways(Job job) {
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    return Ways.of(job, boring);
  }

  private static Job forced(Way way) {
    CaseOrder order = bookcase(bay(4), bay(4));
    SettingValue choice = new SettingValue.OfChoice(way.key());
    return job(order.with(order.settings().with(Setting.WAY, choice)));
  }

  @Test
  void should_know_every_way_by_its_key() {
    List<String> keys = Stream.of(Way.values()).map(Way::key).toList();
    assertThat(Setting.WAY.choices())
        .containsExactlyElementsOf(Stream.concat(Stream.of("best"), keys.stream()).toList());
  }

  /** 3/8 in holes and a point of 1/8 in leave 7/32 in of 23/32 in plywood. */
  @Test
  void should_take_the_story_stick_where_no_shop_is_stated() {
    Ways ways = ways(job(bookcase(bay(4), bay(4))));
    assertThat(ways.findings()).isEmpty();
    CaseBoring boring = ways.borings().getFirst();
    assertThat(boring.chosen()).isEqualTo(Way.STORY_STICK);
    assertThat(boring.method())
        .isEqualTo(
            new Method.Marked(
                Method.How.BY_HAND,
                new BitSetting(
                    "plain bit of 1/4 in (assumed)",
                    in("1/4"),
                    in("0"),
                    in("0"),
                    in("3/8"),
                    in("1/8"),
                    in("7/32"),
                    Setting.BIT_POINT.origin()),
                List.of(pair(1, "L", "P1"), pair(2, "P1", "R"))));
  }

  /** The partition stands on the bottom, 3 31/32 in above the feet of the sides. */
  private static Gang pair(int bay, String left, String right) {
    return new Gang(
        bay,
        in("0"),
        List.of(
            new Gang.Laid(left, Face.RIGHT, in(left.equals("P1") ? "3 31/32" : "0")),
            new Gang.Laid(right, Face.LEFT, in(right.equals("P1") ? "3 31/32" : "0"))));
  }

  @Test
  void should_say_why_a_way_that_the_job_asks_for_is_not_possible() {
    Finding finding = ways(forced(Way.CLEAT_BLANK)).findings().getFirst();
    assertThat(finding.kind()).isEqualTo("way-not-possible");
    assertThat(finding.what())
        .isEqualTo(
            "The job asks for cleats, which can't be done: the bays stand on pins. The plan takes"
                + " story-stick.");
    assertThat(finding.remedies()).extracting(Finding.Remedy::what).containsExactly("state cleats");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_answer_all_ways_of_every_bay_and_choose_one_with_a_method(long seed) {
    Job job = RandomJobs.of(seed);
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    Ways ways = Ways.of(job, boring);
    assertThat(ways.borings().stream().flatMap(b -> b.grids().stream()))
        .containsExactlyInAnyOrderElementsOf(boring.grids());
    for (CaseBoring each : ways.borings()) {
      assertThat(each.answers()).extracting(WayAnswer::way).containsExactly(Way.values());
      assertThat(each.method()).isNotNull();
      for (WayAnswer answer : each.answers()) {
        boolean can = answer.verdict() == Verdict.POSSIBLE || answer.verdict() == Verdict.TO_BUY;
        assertThat(answer.method().isPresent()).isEqualTo(can);
        assertThat(answer.figures().size() > said(answer).size()).isEqualTo(can);
        assertThat(answer.figures())
            .extracting(Figure::value)
            .containsAll(said(answer).stream().map(Figure::value).toList());
        assertThat(can || !answer.reasons().isEmpty()).isTrue();
      }
    }
  }

  /** The figures of the reasons, which stand in an answer whether the way is possible or not. */
  private static List<Figure> said(WayAnswer answer) {
    return answer.reasons().stream().flatMap(r -> r.figures().stream()).toList();
  }
}
