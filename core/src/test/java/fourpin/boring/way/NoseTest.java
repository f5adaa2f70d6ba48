package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.answer;
import static fourpin.boring.way.ToolKit.centring;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.drill;
import static fourpin.boring.way.ToolKit.sheet;
import static fourpin.boring.way.ToolKit.strap;
import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Quantity;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Noses of 3/8 in, 9/32 in at the tip, for holes of 1/4 in that are 3/8 in deep. */
class NoseTest {

  private static WayAnswer bored(Way way, String length, String reach, Tool guide) {
    Tool bit = centring("3/8", "9/32", Optional.of(in(length)), reach);
    return answer(way, draft().order(), List.of(drill(), bit, guide));
  }

  private static void says(WayAnswer answer, @Nullable String expected) {
    if (expected == null) {
      assertThat(answer.verdict()).isEqualTo(Verdict.POSSIBLE);
    } else {
      assertThat(answer.verdict()).isEqualTo(Verdict.NOT_POSSIBLE);
      assertThat(answer.reasons())
          .singleElement()
          .extracting(Reason::what, Reason::remedy)
          .containsExactly((Object[]) expected.split("[|]"));
    }
  }

  /**
   * In a guide 1/4 in thick: a nose of 1/16 in is not led; one of 1/8 in leaves 3/8 + 1/4 - 1/8 =
   * 1/2 in to the bit, one of 1/4 in and more 3/8 in.
   */
  @ParameterizedTest
  @CsvSource({
    "1/16, 1, 'the nose of centring bit reaches only 1/16 in into the guide, which leads it from 1/8 in on|take a bit with a longer nose, or set nose-grip to 1/16 in'",
    "1/8, 1/2,",
    "1/8, 7/16, 'hole and guide take 5/8 in, of which the nose takes up 1/8 in, and centring bit reaches 7/16 in beyond it|take a longer bit, or use a thinner guide'",
    "1/4, 3/8,",
    "1/4, 5/16, 'hole and guide take 5/8 in, of which the nose takes up 1/4 in, and centring bit reaches 5/16 in beyond it|take a longer bit'"
  })
  void aNoseInAGuide(String length, String reach, @Nullable String expected) {
    says(bored(Way.CENTRING_GUIDE, length, reach, sheet()), expected);
  }

  /**
   * A guide 1/4 in thick takes the lower 1/4 in of the taper: of one of 1/2 in that is half, where
   * the nose measures 9/32 + 3/64 = 21/64 in in a hole of 25/64 in; of one of 3/8 in two thirds,
   * 11/32 in.
   */
  @ParameterizedTest
  @CsvSource({
    "1/4, 1/4,",
    "1/2, 1/4, 'the taper of centring bit is 1/2 in long and the guide 1/4 in thick: its tip stands on the wood while the nose is 21/64 in at the guide''s face, 1/16 in less than the hole of 25/64 in|take a guide at least 1/2 in thick, or a bit with a shorter taper'",
    "3/8, 1/4, 'the taper of centring bit is 3/8 in long and the guide 1/4 in thick: its tip stands on the wood while the nose is 11/32 in at the guide''s face, 3/64 in less than the hole of 25/64 in|take a guide at least 3/8 in thick, or a bit with a shorter taper'",
    "1/2, 1/2,"
  })
  void aTaperFillsTheGuidesHole(String length, String thickness, @Nullable String expected) {
    says(bored(Way.CENTRING_GUIDE, length, "1", sheet(thickness, "96", "4")), expected);
  }

  /** A straight nose fills the hole, however much of it stands out of the guide. */
  @Test
  void aLongStraightNoseFillsTheGuidesHole() {
    Tool bit = centring("3/8", "3/8", Optional.of(in("1/2")), "1");
    says(answer(Way.CENTRING_GUIDE, draft().order(), List.of(drill(), bit, sheet())), null);
  }

  @ParameterizedTest
  @CsvSource({"9/32, 1", "3/8, 0"})
  void aTaperThatIsNotMeasuredIsToBeTried(String tip, int notes) {
    List<Tool> tools = List.of(drill(), centring("3/8", tip, "1"), sheet());
    WayAnswer answer = answer(Way.CENTRING_GUIDE, draft().order(), tools);
    assertThat(answer.verdict()).isEqualTo(Verdict.POSSIBLE);
    assertThat(answer.reasons())
        .filteredOn(r -> r.what().contains("no longer than the guide is thick"))
        .hasSize(notes);
  }

  /** What is said of the play can be asked for. */
  @Test
  void thePlayOfATaperIsAFigure() {
    WayAnswer answer = bored(Way.CENTRING_GUIDE, "1/2", "1", sheet());
    assertThat(answer.reasons().getFirst().figures())
        .singleElement()
        .satisfies(f -> assertThat(f.value()).isEqualTo(Quantity.of(in("1/16"))))
        .satisfies(f -> assertThat(f.formula()).isEqualTo("h - a - (b - a) t / l"));
  }

  /**
   * A hole of 5/16 in stops the taper a third of its way up, (5/16 - 9/32) / (3/8 - 9/32). The
   * strap is 1/16 in thick: a taper of 3/16 in just seats, one of 3/8 in comes down 1/8 in.
   */
  @ParameterizedTest
  @CsvSource({
    "3/16, 3/8,",
    "3/32, 13/32,",
    "3/8, 1, 'the taper of centring bit seats when its tip is 1/8 in down, and strip is 1/16 in thick: the tip stands on the wood first, and finds no middle|take a strap at least 1/8 in thick, or a bit with a shorter taper'",
    "3/16, 5/16, 'hole and guide take 7/16 in, of which the nose takes up 1/16 in, and centring bit reaches 5/16 in beyond it|take a longer bit'"
  })
  void aTaperInAStrap(String length, String reach, @Nullable String expected) {
    says(bored(Way.STEEL_STRAP, length, reach, strap("1")), expected);
  }
}
