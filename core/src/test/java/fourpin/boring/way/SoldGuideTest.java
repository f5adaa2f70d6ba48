package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.answer;
import static fourpin.boring.way.ToolKit.bit;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.drill;
import static fourpin.boring.way.ToolKit.strip;
import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Make;
import fourpin.boring.way.Guide.Use;
import fourpin.job.CaseDraft;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Tool;
import fourpin.job.Tool.StripKind;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a strip that is sold is cut. */
class SoldGuideTest {

  private static WayAnswer bored(CaseDraft draft, String stripLength) {
    Tool strip = strip(StripKind.HARDBOARD, "1/4", "1", stripLength);
    return answer(Way.HARDBOARD_STRIP, draft.order(), List.of(drill(), bit(), strip));
  }

  private static Guide guide(WayAnswer answer) {
    return ((Method.Guided) answer.method().orElseThrow()).guide();
  }

  private static Guide guide(String stripLength) {
    return guide(bored(draft(), stripLength));
  }

  private static Length lastBored(Guide guide) {
    return guide.holes().stream()
        .filter(h -> h.use() == Use.BORED)
        .map(GuideHole::along)
        .max(Length::compareTo)
        .orElseThrow();
  }

  /** Room for a clamp beyond the last hole (the setting guide-margin), and no more. */
  @Test
  void should_cut_a_long_strip_a_margin_above_the_last_hole() {
    Guide guide = guide("96");
    Length margin = draft().order().settings().length(Setting.GUIDE_MARGIN);
    assertThat(margin).isEqualTo(in("2"));
    assertThat(guide.length()).isEqualTo(lastBored(guide).plus(margin));
    assertThat(guide.holes()).allMatch(h -> h.along().isLessThan(guide.length()));
  }

  /**
   * Holes of 1/4 in 1 in apart, the first 1/2 in from the end, and 3/4 in of the strip under the
   * block. A lowest level 9 15/16 in up puts hole 1 15/16 in beyond zero, the hole before it 1/16
   * in behind: of its 1/8 in half is seen. The third hole of the strip, 2 1/2 in from its end, is
   * the first for which 15/16 + 3/4 in are there.
   */
  @ParameterizedTest
  @CsvSource({
    "9 15/16, 3, 13/16, 1/16",
    "10, 3, 3/4, 1/8",
    "9 1/32, 2, 23/32, 0",
    "9 3/4, 2, 0, 0",
  })
  void should_tell_where_to_saw_and_what_shows_behind_zero(
      String lowest, int first, String off, String behind) {
    CaseDraft draft = draft();
    draft.settings = draft.settings.with(Setting.FIRST_HOLE, new SettingValue.OfLength(in(lowest)));
    WayAnswer answer = bored(draft, "96");
    Guide guide = guide(answer);
    assertThat(guide.make())
        .isEqualTo(new Make.Sold("strip", StripKind.HARDBOARD, first, in(off), in(behind)));
    Length ofStrip = in("1/2").plus(in("1").times(first - 1));
    assertThat(ofStrip)
        .isEqualTo(in(off).plus(guide.block()).plus(guide.holes().getFirst().along()));
    assertThat(figure(answer, "guide/make/off")).isEqualTo(Quantity.of(in(off)));
    assertThat(figure(answer, "guide/make/behind")).isEqualTo(Quantity.of(in(behind)));
  }

  private static Quantity figure(WayAnswer answer, String id) {
    return answer.figures().stream()
        .filter(f -> f.id().endsWith("/hardboard-strip/" + id))
        .findFirst()
        .orElseThrow()
        .value();
  }

  /** The block's seat is cut from the strip too. */
  @Test
  void should_not_be_longer_than_the_strip_with_the_seat_of_its_block() {
    Guide guide = guide("24");
    assertThat(in("24")).isGreaterThanOrEqualTo(guide.length().plus(guide.block()));
    assertThat(guide.length()).isGreaterThanOrEqualTo(lastBored(guide).plus(in("1/8")));
  }
}
