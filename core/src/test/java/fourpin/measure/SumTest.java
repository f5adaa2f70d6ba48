package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

@ExtendWith(CommaDecimals.class)
class SumTest {

  private static final Sum SHELF =
      Sum.of("bay width", Length.inches(141, 4))
          .minus(2, "end play", Length.inches(1, 16))
          .plus("nothing", Length.ZERO)
          .plus(2, "dado", Length.inches(3, 8));

  @Test
  void addsItsTerms() {
    assertThat(SHELF.total()).isEqualTo(Length.inches(287, 8));
    assertThat(SHELF.terms()).hasSize(3);
  }

  @Test
  void printsAsOneLine() {
    assertThat(SHELF.text(LengthStyle.FRACTIONS))
        .isEqualTo("35 1/4 bay width - 2 x 1/16 end play + 2 x 3/8 dado = 35 7/8");
    assertThat(SHELF.text(LengthStyle.MILLIMETRES))
        .isEqualTo("≈ 895.4 bay width - 2 x ≈ 1.6 end play + 2 x ≈ 9.5 dado = ≈ 911.2");
  }

  @Test
  void oneLengthAloneNeedsNoTotal() {
    assertThat(Sum.of("bay width", Length.mm(900)).text(LengthStyle.MILLIMETRES))
        .isEqualTo("900 bay width");
  }

  @Test
  void oneTermThatCountsTwiceShowsItsTotal() {
    Sum twice = new Sum(List.of(new Sum.Term(-2, "side", Length.inches(3, 4))));
    assertThat(twice.text(LengthStyle.FRACTIONS)).isEqualTo("-2 x 3/4 side = -1 1/2");
  }

  @Test
  void hasTermsThatCount() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Sum(List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Sum.Term(0, "side", Length.mm(1)))
        .withMessage("a term that counts nothing: side");
  }
}
