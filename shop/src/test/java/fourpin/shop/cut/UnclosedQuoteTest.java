package fourpin.shop.cut;

import static fourpin.shop.cut.CutReaderTest.SHEET;
import static fourpin.shop.cut.CutReaderTest.SIDE;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A quote that is not closed takes in the rest of its table, of which nothing more is said. */
class UnclosedQuoteTest {
  private static final String RULE =
      ": error: the line: a quote is opened and not closed, or something stands after a closed one."
          + " Write a quote within quotes twice, or leave all quotes out: 31 1/2 in.";

  static Stream<Arguments> tables() {
    return Stream.of(
        Arguments.of(SIDE + "side,\"ply,72 in,11 in,2,\nrail,ply,30 in,11 in,2,\n", SHEET, "p:3:6"),
        Arguments.of(
            SIDE + "side,ply,\"72 in,11 in,2,\nrail,ply,30 in,11 in,2,\n", SHEET, "p:3:10"),
        Arguments.of(SIDE.replace("width", "\"width"), SHEET, "p:1:22"),
        Arguments.of(SIDE.replace("part,", "\"part\"s,"), SHEET, "p:1:1"),
        Arguments.of(
            SIDE + "rail,ash,30 in,4 in,2,\n",
            SHEET + "ply,\"4 ft,4 ft,,,,\nash,8 ft,4 ft,,,,\n",
            "s:3:5"));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void isToldAlone(String parts, String stock, String place) {
    assertThat(CutReaderTest.problems(parts, stock)).isEqualTo(place + RULE);
  }
}
