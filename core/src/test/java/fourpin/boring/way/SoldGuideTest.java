package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.answer;
import static fourpin.boring.way.ToolKit.bit;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.drill;
import static fourpin.boring.way.ToolKit.strip;
import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Use;
import fourpin.job.Setting;
import fourpin.job.Tool.StripKind;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How long a strip that is sold is cut. */
class SoldGuideTest {

  private static Guide guide(String stripLength) {
    return ((Method.Guided)
            answer(
                    Way.HARDBOARD_STRIP,
                    draft().order(),
                    List.of(drill(), bit(), strip(StripKind.HARDBOARD, "1/4", "1", stripLength)))
                .method()
                .orElseThrow())
        .guide();
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

  /** The block's seat is cut from the strip too. */
  @Test
  void should_not_be_longer_than_the_strip_with_the_seat_of_its_block() {
    Guide guide = guide("24");
    assertThat(in("24")).isGreaterThanOrEqualTo(guide.length().plus(guide.block()));
    assertThat(guide.length()).isGreaterThanOrEqualTo(lastBored(guide).plus(in("1/8")));
  }
}
