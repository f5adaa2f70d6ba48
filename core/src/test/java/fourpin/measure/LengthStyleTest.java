package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(CommaDecimals.class)
class LengthStyleTest {

  private static final LengthReader READER = new LengthReader(Unit.INCH);

  /** Rounded first, then carried; what is not exact as printed stands behind ≈. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          31 1/2    | 64  | 31 1/2
          31 32/64  | 64  | 31 1/2
          2.9999    | 64  | ≈ 3
          2.9999    | 256 | ≈ 3
          2 63/64   | 64  | 2 63/64
          2 127/128 | 64  | ≈ 3
          2 127/128 | 128 | 2 127/128
          11.9999   | 1   | ≈ 12
          0.4999    | 1   | ≈ 0.5
          0.5       | 1   | 0.5
          3         | 1   | 3
          0         | 64  | 0
          1/128     | 64  | ≈ 0.008
          0.0078    | 64  | ≈ 0.008
          18 mm     | 64  | ≈ 0.709
          800 mm    | 64  | ≈ 31 1/2
          25.4 mm   | 64  | 1
          100'      | 64  | 1200
          5/8       | 8   | 5/8
          5/8       | 2   | 0.625
          0.71      | 32  | 0.71
          0.664     | 32  | 0.664
          0.9996    | 64  | ≈ 1
          1.71      | 32  | ≈ 1 23/32
          """)
  void printsInches(String written, int parts, String printed) {
    assertThat(new LengthStyle(Unit.INCH, parts).number(READER.read(written).orThrow()))
        .isEqualTo(printed);
  }

  /** As on the bit, however coarse or fine lengths are printed. */
  @ParameterizedTest
  @CsvSource({
    "INCH, 32, 13/64, 13/64 in, 13/64",
    "INCH, 1, 25/64, 25/64 in, 25/64",
    "INCH, 64, 1/4, 1/4 in, 1/4",
    "INCH, 32, 1 33/64, 1 33/64 in, 1 33/64",
    "INCH, 32, 0.19, 0.19 in, 0.19",
    "INCH, 32, 5 mm, 5 mm, 5 mm",
    "INCH, 32, 25.4 mm, 1 in, 1",
    "INCH, 32, 4.826 mm, 0.19 in, 0.19",
    "INCH, 32, 1/128, ≈ 0.008 in, ≈ 0.008",
    "MILLIMETRE, 1, 6.5 mm, 6.5 mm, 6.5",
    "MILLIMETRE, 10, 5 mm, 5 mm, 5",
    "MILLIMETRE, 10, 13/64, 13/64 in, 13/64 in",
    "MILLIMETRE, 10, 9.33 mm, ≈ 9.3 mm, ≈ 9.3"
  })
  void printsDiametersAsOnTheBit(Unit unit, int parts, String written, String text, String number) {
    LengthStyle style = new LengthStyle(unit, parts);
    Length diameter = READER.read(written).orThrow();
    assertThat(style.diameter(diameter)).isEqualTo(text);
    assertThat(style.diameterNumber(diameter)).isEqualTo(number);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          800 mm     | 10   | 800
          18.3 mm    | 10   | 18.3
          18.25 mm   | 10   | ≈ 18.3
          18.25 mm   | 100  | 18.25
          18.3 mm    | 2    | ≈ 18.5
          18.2 mm    | 2    | ≈ 18
          12.5 mm    | 2    | 12.5
          9.96 mm    | 10   | ≈ 10
          999.96 mm  | 10   | ≈ 1000
          0.04 mm    | 10   | ≈ 0
          12.050 mm  | 1000 | 12.05
          12.005 mm  | 1000 | 12.005
          31.5 in    | 10   | 800.1
          1/64 in    | 1000 | ≈ 0.397
          1.2 m      | 1    | 1200
          1234567 mm | 1    | 1234567
          """)
  void printsMillimetres(String written, int parts, String printed) {
    assertThat(new LengthStyle(Unit.MILLIMETRE, parts).number(READER.read(written).orThrow()))
        .isEqualTo(printed);
  }

  /** What is printed exactly stands as ever. */
  @ParameterizedTest
  @CsvSource({
    "INCH, 64, 24 1/16, 24, 24, ≈ 1.003 in",
    "INCH, 64, 24 1/256, 24, 24, ≈ 1.0002 in",
    "INCH, 64, 24 3/4, 24, 24, 1 1/32 in",
    "INCH, 64, 24, 24 1/256, 24, 1 in",
    "INCH, 64, 25 3/5, 1, 20, 1.28 in",
    "MILLIMETRE, 10, 601 mm, 600 mm, 24, ≈ 25.042 mm"
  })
  void printsWhatTellsOneFromAnother(
      Unit unit, int parts, String length, String other, int share, String printed) {
    LengthReader reader = new LengthReader(Unit.INCH);
    Length one = reader.read(length).orThrow().over(share);
    Length another = reader.read(other).orThrow().over(share);
    assertThat(new LengthStyle(unit, parts).textApart(one, another)).isEqualTo(printed);
  }

  @ParameterizedTest
  @CsvSource({"INCH,64,-3 1/4 in", "MILLIMETRE,100,-82.55 mm"})
  void printsNegativesWithUnit(Unit unit, int parts, String printed) {
    assertThat(new LengthStyle(unit, parts).text(Length.inches(-13, 4))).isEqualTo(printed);
  }

  @ParameterizedTest
  @CsvSource({"INCH,3", "INCH,512", "INCH,0", "INCH,-2", "MILLIMETRE,4", "MILLIMETRE,10000"})
  void refusesOtherParts(Unit unit, int parts) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LengthStyle(unit, parts))
        .withMessage("cannot print lengths in 1/" + parts + " " + unit.symbol());
  }

  @ParameterizedTest
  @CsvSource({"CENTIMETRE", "METRE", "FOOT"})
  void printsInNoOtherUnit(Unit unit) {
    assertThatIllegalArgumentException().isThrownBy(() -> new LengthStyle(unit, 1));
  }

  /** Printed within half a part, marked exactly when it moved, and rounding twice moves nothing. */
  @ParameterizedTest
  @ValueSource(longs = {5, 60, 700})
  void roundsToTheNearestPart(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 2_000; i++) {
      Length length = new Length(random.nextLong(0, 5_000_000_000_000L), Unit.MILLIMETRE);
      for (LengthStyle style : new LengthStyle[] {LengthStyle.FRACTIONS, LengthStyle.MILLIMETRES}) {
        Length rounded = style.rounded(length);
        long step = style.unit().picometres() / style.parts();
        assertThat(Math.abs(rounded.picometres() - length.picometres()))
            .isLessThanOrEqualTo(step / 2);
        assertThat(style.rounded(rounded)).isEqualTo(rounded);
        assertThat(style.number(length).startsWith("≈ ")).isEqualTo(!rounded.equals(length));
      }
    }
  }
}
