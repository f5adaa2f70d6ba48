package fourpin.bench;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FenceSettingsTest {

  private static List<Length> printed(LengthStyle style, List<Length> fences) {
    return new FenceSettings(style).printed(fences);
  }

  /** By hand: 1 23/128 is rounded to 1 3/16, and what lies 9/64 and 25/64 beyond goes along. */
  @Test
  void should_move_all_settings_by_what_the_nearest_is_rounded() {
    Length near = Length.inches(151, 128);
    List<Length> fences =
        List.of(near.plus(Length.inches(25, 64)), near.plus(Length.inches(9, 64)), near);
    assertThat(printed(LengthStyle.FRACTIONS, fences))
        .containsExactly(Length.inches(101, 64), Length.inches(85, 64), Length.inches(76, 64));
  }

  @Test
  void should_round_one_pass_to_the_nearest_part() {
    assertThat(printed(LengthStyle.MILLIMETRES, List.of(Length.nearestMm(30.04))))
        .containsExactly(Length.mm(30));
  }

  @Test
  void should_never_lose_width_nor_leave_a_ridge_between_passes() {
    Random random = new Random(7);
    for (LengthStyle style : List.of(LengthStyle.FRACTIONS, LengthStyle.MILLIMETRES)) {
      for (int i = 0; i < 2000; i++) {
        Length cut = Length.nearestMm(3 + 10 * random.nextDouble());
        List<Length> fences = new ArrayList<>();
        fences.add(Length.nearestMm(80 + 10 * random.nextDouble()));
        for (int pass = 1; pass < 3; pass++) {
          fences.add(fences.getLast().minus(cut));
        }
        fences.add(fences.getLast().minus(cut.over(2 + random.nextInt(3))));
        List<Length> printed = printed(style, fences);
        Length planned = fences.getFirst().minus(fences.getLast());
        Length wider = printed.getFirst().minus(printed.getLast()).minus(planned);
        Length part = new Length(style.unit().picometres() / style.parts(), style.unit());
        assertThat(wider.isNegative()).isFalse();
        assertThat(wider.isLessThan(part)).isTrue();
        assertThat(printed.get(0).minus(printed.get(1)).isMoreThan(cut)).isFalse();
        assertThat(printed.get(1).minus(printed.get(2)).isMoreThan(cut)).isFalse();
        printed.forEach(p -> assertThat(style.text(p)).doesNotContain("≈"));
      }
    }
  }
}
