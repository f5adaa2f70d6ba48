package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

  private static final Length LONGEST = new Length(Long.MAX_VALUE, Unit.MILLIMETRE);

  /** NIST Special Publication 811 (2008), Appendix B.8: inch and foot are exact. */
  @ParameterizedTest
  @CsvSource({"INCH,25.4", "FOOT,304.8", "MILLIMETRE,1", "CENTIMETRE,10", "METRE,1000"})
  void unitsHaveTheirPublishedSize(Unit unit, BigDecimal mm) {
    assertThat(Length.of(1, unit).exactMm()).isEqualByComparingTo(mm);
  }

  @Test
  void unitTakesNoPartInEquality() {
    Length inch = Length.inches(1);
    assertThat(inch).isEqualTo(inch.in(Unit.MILLIMETRE)).hasSameHashCodeAs(inch.in(Unit.FOOT));
    assertThat(inch).isNotEqualTo(Length.mm(25));
    assertThat(inch.in(Unit.MILLIMETRE).unit()).isEqualTo(Unit.MILLIMETRE);
  }

  @Test
  void thirdsOfAnInchAreRefused() {
    assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> Length.inches(1, 3));
  }

  @Test
  void overflowIsRefused() {
    Length one = Length.mm(1);
    assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> LONGEST.plus(one));
    assertThatExceptionOfType(ArithmeticException.class)
        .isThrownBy(() -> LONGEST.negated().minus(one));
    assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> LONGEST.times(2));
    assertThatExceptionOfType(ArithmeticException.class)
        .isThrownBy(() -> Length.mm(Long.MAX_VALUE));
    assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> Length.nearestMm(1e30));
    assertThatExceptionOfType(ArithmeticException.class)
        .isThrownBy(() -> Length.nearestMm(Double.NaN));
  }

  @Test
  void dividesIntoOnePartOrMore() {
    assertThat(Length.mm(10).over(4)).isEqualTo(Length.nearestMm(2.5));
    assertThat(new Length(10, Unit.INCH).over(3)).isEqualTo(new Length(3, Unit.INCH));
    assertThat(new Length(11, Unit.INCH).over(3)).isEqualTo(new Length(4, Unit.INCH));
    assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> Length.mm(1).over(0));
    assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> Length.mm(1).over(-3));
  }

  /** 53 holes at 1 1/4 in pitch leave 1 in over in 66 in: 52 pitches are 65 in. */
  @Test
  void countsWholeTimesAndWhatIsLeft() {
    Length pitch = Length.inches(5, 4);
    assertThat(Length.inches(66).wholeTimes(pitch)).isEqualTo(52);
    assertThat(Length.inches(66).remainder(pitch)).isEqualTo(Length.inches(1));
    assertThat(Length.inches(66).ratioTo(pitch)).isEqualTo(52.8);
  }

  @Test
  void comparesAndSigns() {
    Length small = Length.inches(1, 2);
    Length large = Length.mm(13);
    assertThat(small).isLessThan(large);
    assertThat(small.isLessThan(large)).isTrue();
    assertThat(small.isMoreThan(large)).isFalse();
    assertThat(large.isAtLeast(large)).isTrue();
    assertThat(Length.min(small, large)).isEqualTo(small);
    assertThat(Length.max(small, large)).isEqualTo(large);
    assertThat(small.minus(large).isNegative()).isTrue();
    assertThat(small.minus(large).abs()).isEqualTo(large.minus(small));
    assertThat(Length.ZERO.isZero()).isTrue();
    assertThat(Length.ZERO.isPositive()).isFalse();
    assertThat(small.isPositive()).isTrue();
    assertThat(small).hasToString("12.7 mm");
  }

  @ParameterizedTest
  @ValueSource(longs = {2, 33, 444})
  void arithmeticIsExact(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 5_000; i++) {
      Length a = Length.inches(random.nextInt(1, 100_000), 256);
      Length b = Length.mm(random.nextInt(1, 10_000));
      assertThat(a.plus(b).minus(b)).isEqualTo(a);
      assertThat(a.plus(b)).isEqualTo(b.plus(a));
      assertThat(a.times(7).over(7)).isEqualTo(a);
      assertThat(b.times(a.wholeTimes(b)).plus(a.remainder(b))).isEqualTo(a);
      assertThat(a.plus(b).unit()).isEqualTo(Unit.INCH);
    }
  }
}
