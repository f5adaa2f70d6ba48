package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LengthReaderTest {

  private static final LengthReader INCH_JOB = new LengthReader(Unit.INCH);
  private static final LengthReader METRIC_JOB = new LengthReader(Unit.MILLIMETRE);

  /** Text, then the length in picometres worked out by hand from 1 in = 25,400,000,000 pm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          31 1/2          | 800100000000
          31-1/2          | 800100000000
          31-1/2"         | 800100000000
          31 1/2 in       | 800100000000
          31 1/2 in.      | 800100000000
          31 1/2 inches   | 800100000000
          31.5            | 800100000000
          31.5 inch       | 800100000000
          63/2            | 800100000000
          63 / 2          | 800100000000
          31½             | 800100000000
          31 ½"           | 800100000000
          31-½"           | 800100000000
          31 1⁄2″         | 800100000000
          31 1∕2 in       | 800100000000
          31–1/2”         | 800100000000
          31‑1/2"         | 800100000000
          31 IN           | 787400000000
          31''            | 787400000000
          .5              | 12700000000
          0.5 in          | 12700000000
          1/2             | 12700000000
          5/8 in          | 15875000000
          5⁄8 in          | 15875000000
          ⅝               | 15875000000
          5⅞"             | 149225000000
          ¾               | 19050000000
          23/32"          | 18256250000
          1/256           | 99218750
          0.0001"         | 2540000
          7'              | 2133600000000
          7 ft            | 2133600000000
          7 ft.           | 2133600000000
          7 feet          | 2133600000000
          1 foot          | 304800000000
          7.5 ft          | 2286000000000
          7' 2 1/4"       | 2190750000000
          7'2 1/4"        | 2190750000000
          7'-2 1/4"       | 2190750000000
          7' - 2-1/4"     | 2190750000000
          7′ 2¼″          | 2190750000000
          7’ 2 1/4 in     | 2190750000000
          7 ft. 2 1/4 in. | 2190750000000
          7'½"            | 2146300000000
          7' 1/2"         | 2146300000000
          7' 2.25''       | 2190750000000
          7' 0"           | 2133600000000
          800 mm          | 800000000000
          800mm           | 800000000000
          800 MM          | 800000000000
          18.3 millimetres | 18300000000
          18.3 millimeter | 18300000000
          0.001 mm        | 1000000
          80 cm           | 800000000000
          80 centimeters  | 800000000000
          1.2 m           | 1200000000000
          1.2 metres      | 1200000000000
          0               | 0
          0 mm            | 0
          00012           | 304800000000
          9000 m          | 9000000000000000
          """)
  void readsWhatMakersWrite(String text, long picometres) {
    assertThat(INCH_JOB.read(text))
        .isEqualTo(Reading.good(new Length(picometres, Unit.MILLIMETRE)));
  }

  @ParameterizedTest
  @CsvSource({"31\u00a01/2", "31\u20091/2", "31\t1/2", "'  31 1/2  '", "31\u202f1/2\u202fin"})
  void readsEverySpace(String text) {
    assertThat(INCH_JOB.read(text)).isEqualTo(Reading.good(Length.inches(63, 2)));
  }

  @Test
  void bareNumberTakesTheUnitOfTheJob() {
    assertThat(INCH_JOB.read("19.5")).isEqualTo(Reading.good(Length.inches(39, 2)));
    assertThat(METRIC_JOB.read("19.5").orThrow()).isEqualTo(Length.nearestMm(19.5));
    assertThat(new LengthReader(Unit.FOOT).read("2").orThrow()).isEqualTo(Length.inches(24));
    assertThat(new LengthReader(Unit.METRE).read("2").orThrow()).isEqualTo(Length.mm(2000));
  }

  @ParameterizedTest
  @CsvSource({"800 mm,MILLIMETRE", "8 cm,CENTIMETRE", "2 m,METRE", "3 in,INCH", "7',FOOT"})
  void lengthKeepsTheUnitItWasWrittenIn(String text, Unit unit) {
    assertThat(INCH_JOB.read(text).orThrow().unit()).isEqualTo(unit);
  }

  /** Text, rule, remedy, word for word. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          ~~             | no length was given | write it like 31 1/2 in or 800 mm
          ~   ~          | no length was given | write it like 31 1/2 in or 800 mm
          31,5           | a comma in a length | write decimals with a point, and no thousands marks
          1,200 mm       | a comma in a length | write decimals with a point, and no thousands marks
          -3             | a length is not negative | leave the minus sign out
          −3 mm          | a length is not negative | leave the minus sign out
          -1/2           | a length is not negative | leave the minus sign out
          abc            | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          in             | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          12 13          | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          1 2 1/2        | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          31 - 1/2       | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          31 -1/2        | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          31--1/2        | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          7'--1/2"       | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          1½4            | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          ½4             | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          ½½             | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          1/2/3          | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          1.2.3          | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          31.            | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          1e3 mm         | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          31 x 12        | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          +3             | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          ٣ mm           | this is not a length | write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m
          3 yd           | 'yd' is not a unit of length | use mm, cm, m, in, ft, " or '
          3 kg           | 'kg' is not a unit of length | use mm, cm, m, in, ft, " or '
          7' 12"         | inches after feet stay below 12 | carry the foot: 8' 2" for 7' 14"
          7' 13 1/2"     | inches after feet stay below 12 | carry the foot: 8' 2" for 7' 14"
          7' 2           | what follows the feet must say inches | write it like 7' 2 1/4"
          7' 20 mm       | what follows the feet must say inches | write it like 7' 2 1/4"
          7.5' 2"        | feet with decimals and inches together | write either 7.5 ft or 7' 6"
          7' mm          | a unit stands after the feet | write 7' or 7 ft
          5/0            | a fraction over zero | correct the number under the stroke
          3 4/2          | a whole number goes with a fraction below one | write it like 31 1/2
          3 2/2          | a whole number goes with a fraction below one | write it like 31 1/2
          3.5 1/2        | a whole number goes with a fraction below one | write it like 31 1/2
          3.5½           | a whole number goes with a fraction below one | write it like 31 1/2
          1/3            | finer than Fourpin keeps (whole picometres: 256ths and ten-thousandths of an inch, micrometres) | write a decimal with fewer digits, or a fraction in halves, quarters, eighths ...
          ⅓              | finer than Fourpin keeps (whole picometres: 256ths and ten-thousandths of an inch, micrometres) | write a decimal with fewer digits, or a fraction in halves, quarters, eighths ...
          0.0000000001 mm | finer than Fourpin keeps (whole picometres: 256ths and ten-thousandths of an inch, micrometres) | write a decimal with fewer digits, or a fraction in halves, quarters, eighths ...
          9999999999 m   | longer than Fourpin can keep | check the number and its unit
          999999999999999999999999999 ft | longer than Fourpin can keep | check the number and its unit
          """)
  void refusesWithRuleAndRemedy(String text, String rule, String remedy) {
    assertThat(INCH_JOB.read(text)).isEqualTo(Reading.bad(rule, remedy));
  }

  @Test
  void refusesBareFractionInMetricJob() {
    assertThat(METRIC_JOB.read("5/8"))
        .isEqualTo(
            Reading.bad(
                "a fraction without a unit, in a job that is in mm",
                "write the unit, as in 5/8 in"));
  }

  @Test
  void refusesVeryLongTextUnread() {
    assertThat(INCH_JOB.read("1".repeat(61)))
        .isEqualTo(
            Reading.bad("a length has at most 60 characters", "write it like 31 1/2 in or 800 mm"));
  }

  /** Whatever is thrown at it, the reader answers, and what it accepts is not negative. */
  @ParameterizedTest
  @MethodSource("seeds")
  void answersEveryTextWithoutException(long seed) {
    String alphabet = "0123456789 .,/-'\"½¾⅓⁄′″mcinft\u00a0−x";
    Random random = new Random(seed);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      random
          .ints(random.nextInt(14), 0, alphabet.length())
          .forEach(at -> text.append(alphabet.charAt(at)));
      if (INCH_JOB.read(text.toString()) instanceof Reading.Good<Length>(Length length)) {
        assertThat(length.isNegative()).as(text.toString()).isFalse();
      }
    }
  }

  /** What is printed exactly is read back as the same length. */
  @ParameterizedTest
  @MethodSource("seeds")
  void readsBackWhatIsPrinted(long seed) {
    Random random = new Random(seed);
    LengthStyle fine = new LengthStyle(Unit.INCH, 256);
    LengthStyle micrometres = new LengthStyle(Unit.MILLIMETRE, 1000);
    for (int i = 0; i < 2_000; i++) {
      Length inches = Length.inches(random.nextInt(0, 100_000), 256);
      assertThat(METRIC_JOB.read(fine.text(inches))).isEqualTo(Reading.good(inches));
      assertThat(INCH_JOB.read(fine.number(inches))).isEqualTo(Reading.good(inches));
      Length metric = new Length(random.nextInt(0, 10_000_000) * 1_000_000L, Unit.MILLIMETRE);
      assertThat(INCH_JOB.read(micrometres.text(metric))).isEqualTo(Reading.good(metric));
    }
  }

  static Stream<Long> seeds() {
    return Stream.of(1L, 20L, 300L);
  }

  @ExtendWith(CommaDecimals.class)
  @ParameterizedTest
  @CsvSource({"31.5 in,800.1", "18.25 mm,18.25", "7' 2.25\",2190.75"})
  void readsPointsWhereDecimalsHaveCommas(String text, double mm) {
    assertThat(INCH_JOB.read(text).orThrow().mm()).isEqualTo(mm);
  }
}
