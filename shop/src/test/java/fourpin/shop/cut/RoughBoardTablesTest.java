package fourpin.shop.cut;

import static fourpin.shop.cut.CutReaderTest.SIDE;
import static fourpin.shop.cut.CutReaderTest.good;
import static fourpin.shop.cut.CutReaderTest.problems;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Grain;
import fourpin.cutting.Part;
import fourpin.cutting.SawLimits.FirstCut;
import fourpin.measure.Length;
import fourpin.plan.Finished;
import fourpin.plan.Wanted;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of rough boards: thicknesses, allowances, panels glued from strips. */
class RoughBoardTablesTest {

  @ParameterizedTest
  @CsvSource({"4/4, 25.4", "5/4, 31.75", "10/4, 63.5", "1 in, 25.4", "27 mm, 27"})
  void readsThicknessesOfBoardsInQuartersToo(String text, double mm) {
    CutReader.Outcome.Good read =
        good(
            SIDE.replace("ply", "ash"),
            "material,length,width,kind,thickness\nash,8 ft,12 in,board," + text + "\n",
            Optional.empty());
    assertThat(read.wanted().getFirst().thickness().orElseThrow().mm()).isEqualTo(mm);
  }

  @Test
  void refusesThicknessesThatSayNothingOfTheVolume() {
    String columns = "material,length,width,kind,thickness\n";
    assertThat(problems(SIDE, columns + "ply,8 ft,4 ft,sheet,18 mm\n"))
        .isEqualTo(
            "s:2:21: error: thickness '18 mm': only boards have it."
                + " Write board under kind, or leave it empty.");
    assertThat(
            problems(
                SIDE.replace("ply", "ash"),
                columns + "ash,8 ft,12 in,board,4/4\nash,8 ft,12 in,board,5/4\n"))
        .contains("s:3:", "an earlier line of 'ash' says otherwise");
    assertThat(problems(SIDE.replace("ply", "ash"), columns + "ash,8 ft,12 in,board,4\n"))
        .contains("s:2:", "a length without a unit");
  }

  private static final String ROUGH =
      "material,length,width,kind,thickness,rough-length,rough-width,rough-thickness,jointing\n";

  /** Top: 16 and 1/4 in from four of 4 1/16 and twice 1/8. Leg: 1 in longer, 1/4 in wider. */
  @Test
  void partsFromRoughBoardsAreCutOverSizeAndPanelsInStrips() {
    CutReader.Outcome.Good read =
        good(
            "part,material,length,width,count,spares,thickness,glue-up\n"
                + "top,ash,40 in,16 in,2,1,3/4 in,2 in..5 in\nleg,ash,28 in,2 in,4,,,\n",
            ROUGH
                + "ash,8 ft,6 in,board,4/4,1 in,1/4 in,3/16 in,1/8 in\nash,8 ft,9 in,board,,,,,\n",
            Optional.empty());
    Wanted wanted = read.wanted().getFirst();
    assertThat(wanted.parts())
        .containsExactly(
            new Part("1 top", Length.inches(41), Length.inches(69, 16), 12, Grain.FIXED),
            new Part("2 leg", Length.inches(29), Length.inches(9, 4), 4, Grain.FIXED));
    assertThat(wanted.spares()).isEqualTo(Map.of("1 top", 4));
    assertThat(finished(wanted, "1 top").thickness()).contains(Length.inches(3, 4));
    assertThat(finished(wanted, "2 leg").thickness()).contains(Length.inches(13, 16));
    assertThat(finished(wanted, "2 leg").blank().width()).isEqualTo(Length.inches(2));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1 in | ''             | the stock is not known to be so thick once it is planed
          ''   | 2 in           | it is the least and the greatest width of the strips
          ''   | 5 in..2 in     | it ends before it begins
          ''   | 4 7/8 in..5 in | no number of strips of one width comes to the width
          """)
  void refusesWhatCannotBeWorkedFromTheBoards(String thickness, String glueUp, String rule) {
    assertThat(
            problems(
                "part,material,length,width,thickness,glue-up\ntop,ash,40 in,16 in,"
                    + thickness
                    + ","
                    + glueUp
                    + "\n",
                ROUGH + "ash,8 ft,6 in,board,4/4,1 in,1/4 in,3/16 in,1/8 in\n"))
        .startsWith("p:2:")
        .contains(rule)
        .doesNotContain("\n");
  }

  @Test
  void aPartAsWideAsTheBoardsIsFinishedNarrower() {
    String parts = "part,material,length,width\nrail,ash,40 in,\n";
    String stock = ROUGH + "ash,8 ft,6 in,board,,,1/4 in,,\n";
    Wanted wanted = good(parts, stock, Optional.empty()).wanted().getFirst();
    assertThat(wanted.parts().getFirst().width()).isEqualTo(Length.inches(6));
    assertThat(finished(wanted, "1 rail").blank().width()).isEqualTo(Length.inches(23, 4));
    assertThat(problems(parts, stock.replace("1/4 in", "6 in")))
        .startsWith("p:2:")
        .contains("rough-width leaves nothing");
  }

  /** Of a sheet, across the grain, or matched. */
  @ParameterizedTest
  @CsvSource({"ply, '', ''", "ash, any, ''", "ash, '', top"})
  void gluesOnlyBoardsAlongTheGrain(String material, String grain, String match) {
    String cells = String.join(",", material, grain, match);
    assertThat(
            problems(
                "part,length,width,count,glue-up,material,grain,match\ntop,40 in,16 in,2,2 in..5 in,"
                    + cells
                    + "\n",
                ROUGH + "ash,8 ft,6 in,board,,,,,\nply,8 ft,4 ft,sheet,,,,,\n"))
        .isEqualTo(
            "p:2:19: error: glue-up '2 in..5 in': only parts from boards are glued from strips, with"
                + " the grain along their length, and none of a matched strip. Leave it empty; or"
                + " write length under grain, and nothing under match.");
  }

  @Test
  void refusesAllowancesThatDoNotHoldForTheStock() {
    assertThat(problems(SIDE, ROUGH + "ply,8 ft,4 ft,sheet,,1 in,,,\n"))
        .contains("s:2:22: error: rough-length '1 in': only boards have it");
    assertThat(
            problems(
                SIDE.replace("ply", "ash"),
                ROUGH + "ash,8 ft,1 ft,board,,,1 in,,\nash,8 ft,2 ft,board,,,2 in,,\n"))
        .contains("s:3:", "an earlier line of 'ash' says otherwise");
    assertThat(problems(SIDE.replace("ply", "ash"), ROUGH + "ash,8 ft,1 ft,board,,,,1 in,\n"))
        .contains("less than the thickness of the boards");
  }

  /** In one line of a material or in several alike, for sheets and boards. */
  @Test
  void theFirstCutIsStatedForAMaterial() {
    String columns = "material,length,width,kind,first-cut\n";
    String ash = SIDE.replace("ply", "ash");
    String two = columns + "ash,8 ft,1 ft,board,Across\nash,6 ft,1 ft,board,\n";
    assertThat(good(ash, two, Optional.empty()).wanted().getFirst().first())
        .contains(FirstCut.ACROSS);
    assertThat(good(SIDE, columns + "ply,8 ft,4 ft,,along\n", Optional.empty()).wanted())
        .allMatch(wanted -> wanted.first().equals(Optional.of(FirstCut.ALONG)));
    assertThat(good(SIDE, columns + "ply,8 ft,4 ft,,\n", Optional.empty()).wanted())
        .allMatch(wanted -> wanted.first().isEmpty());
    assertThat(problems(ash, two.replace("board,\n", "board,either\n")))
        .contains("s:3:21: error: first-cut 'either': an earlier line of 'ash' says otherwise");
    assertThat(problems(ash, two.replace("Across", "rip")))
        .contains("s:2:", "first-cut 'rip': it is one of across, along, either");
  }

  private static Finished finished(Wanted wanted, String mark) {
    return Objects.requireNonNull(wanted.finished().get(mark), mark);
  }
}
