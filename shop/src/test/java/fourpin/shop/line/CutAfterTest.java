package fourpin.shop.line;

import static fourpin.shop.line.Cuttings.parts;
import static fourpin.shop.line.Cuttings.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What is cut again after something went wrong at the saw. */
class CutAfterTest {

  private static final Path EXAMPLES = Path.of("..", "examples");

  @TempDir private Path shop;

  private NotedCutting few() {
    return new NotedCutting(shop);
  }

  @Test
  void whatIsCutStaysAndTheRestIsLaidOutAgain() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,1", "spoilt,1", ",");
    Path second = shop.resolve("second");
    assertThat(few().again(first, second)).startsWith("0");
    assertThat(parts(second, "1 side")).isEqualTo(8 - 3 - 1);
    assertThat(parts(second, "2 shelf")).isEqualTo(10);
    assertThat(
            run(
                shop.resolve("parts.csv"),
                shop.resolve("rack.csv"),
                "--after",
                first,
                "--after",
                second))
        .contains("parts.cutting-3");
  }

  /** Two cuttings later no two sheets in the shop bear the same name, nor do their pieces. */
  @Test
  void laterSheetsAreNumberedOn() throws IOException {
    Path first = few().laidOut();
    assertThat(names(first, "layouts.csv", 2)).containsExactly("S1", "S2");
    NotedCutting.note(first, "cut,1", "spoilt,1", ",");
    Path second = shop.resolve("second");
    assertThat(few().again(first, second)).startsWith("0");
    assertThat(names(second, "layouts.csv", 2)).startsWith("S3").doesNotContain("S1", "S2");
    assertThat(names(second, "progress.csv", 3))
        .containsExactlyElementsOf(names(second, "layouts.csv", 2));
    assertThat(names(second, "cutting-order.csv", 2))
        .containsExactlyElementsOf(names(second, "layouts.csv", 2));
    assertThat(Files.readString(second.resolve("cutting-order.csv"))).doesNotContain("S1", "S2");
    assertThat(second.resolve("drawings").toFile().list()).noneMatch(d -> d.endsWith("-1.svg"));
    NotedCutting.note(second, "spoilt,", "cut,");
    Path third = shop.resolve("third");
    assertThat(
            run(
                shop.resolve("parts.csv"),
                shop.resolve("rack.csv"),
                "--out",
                third,
                "--after",
                first,
                "--after",
                second))
        .startsWith("0");
    List<String> before = names(second, "layouts.csv", 2);
    assertThat(names(third, "layouts.csv", 2))
        .isNotEmpty()
        .doesNotContain("S1", "S2")
        .doesNotContainAnyElementsOf(before);
  }

  /** What stands in a column, each once, in order. */
  private static List<String> names(Path folder, String table, int column) throws IOException {
    return Files.readAllLines(folder.resolve(table)).stream()
        .skip(1)
        .map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")[column])
        .distinct()
        .toList();
  }

  @Test
  void partsOfANewSizeAreCutAgainAndThoseOfTheOldOneStay() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,", "cut,", "cut,");
    Files.writeString(shop.resolve("parts.csv"), NotedCutting.FEW.replace("30 in", "30 1/32 in"));
    Path second = shop.resolve("second");
    assertThat(few().again(first, second))
        .contains("'2 shelf' was cut in another size than it has now");
    assertThat(parts(second, "1 side")).isZero();
    assertThat(parts(second, "2 shelf")).isEqualTo(10);
  }

  /** One of three sheets is spoilt: two stand in the shop, and one more is bought. */
  @Test
  void sheetsWithoutANoteCountAsBought() throws IOException {
    Path first = few().laidOut();
    String priced = "material,length,width,count,price\nply,8 ft,4 ft,9,80.00\n";
    Files.writeString(shop.resolve("rack.csv"), priced);
    NotedCutting.note(first, "spoilt,", ",", ",");
    Path second = shop.resolve("second");
    assertThat(few().again(first, second))
        .startsWith("0")
        .contains(
            "ply: 2 of '1: 96 x 48 in' from the earlier layouts are whole, and count as bought.")
        .contains("To be bought, where it has a price: 80.00");
    NotedCutting.note(second, "cut,", ",", ",");
    assertThat(few().third(first, second))
        .startsWith("0")
        .contains(
            "ply: 2 of '1: 96 x 48 in' from the earlier layouts are whole, and count as bought.")
        .contains("To be bought, where it has a price: 0.00");
  }

  /** Two sheets of plywood and two boards of ash, for which a third stands in the rack. */
  private Path twoMaterials() throws IOException {
    Files.writeString(
        shop.resolve("parts.csv"),
        NotedCutting.FEW + "rail,ash,70 in,5 1/2 in,2\nlath,ash,40 in,5 1/2 in,1\n");
    Files.writeString(
        shop.resolve("rack.csv"),
        """
        material,kind,length,width,supply,count,price
        ply,sheet,8 ft,4 ft,,9,80.00
        ash,board,8 ft,5 1/2 in,,9,30.00
        ash,board,4 ft,5 1/2 in,on-hand,1,
        """);
    Path first = shop.resolve("first");
    assertThat(run(shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", first))
        .startsWith("0");
    assertThat(Files.readString(first.resolve("progress.csv")))
        .contains("1,ash,")
        .contains("1,ply,");
    return first;
  }

  private void note(Path folder, String of, String... notes) throws IOException {
    Path file = folder.resolve("progress.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    int next = 0;
    for (int i = 1; i < lines.size() && next < notes.length; i++) {
      if (lines.get(i).contains(of)) {
        lines.set(i, lines.get(i).replaceFirst(",,$", "," + notes[next] + ","));
        next++;
      }
    }
    Files.write(file, lines);
  }

  /** Nobody says whether the boards are there: they are paid for again, and that is told. */
  @Test
  void aMaterialWithoutANoteIsToldToBeBoughtStill() throws IOException {
    Path first = twoMaterials();
    note(first, "1,ply,", "cut", "cut");
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("0")
        .contains(
            "ash: 2 of '1: 96 x 5 1/2 in' count as still to be bought, as no sheet or board of it has a"
                + " note in "
                + first.resolve("progress.csv")
                + ": write bought under state of each that you have.")
        .doesNotContain("on hand' count")
        .contains("To be bought, where it has a price: 60.00");
  }

  /** Of a layout after it, only the board that the earlier folder does not have is bought anew. */
  @Test
  void whatAnEarlierFolderHasIsNotToldToBeBoughtStill() throws IOException {
    Path first = twoMaterials();
    note(first, "1,ply,", "cut");
    note(first, "1: 96 x 5 1/2 in", "spoilt");
    Path second = shop.resolve("second");
    assertThat(few().again(first, second)).startsWith("0");
    note(second, "2,ply,", "cut");
    assertThat(few().third(first, second))
        .startsWith("0")
        .contains(
            "ash: 1 of '1: 96 x 5 1/2 in' from the earlier layouts is whole, and counts as bought.",
            "ash: 1 of '1: 96 x 5 1/2 in' counts as still to be bought,")
        .contains("To be bought, where it has a price: 30.00");
  }

  @Test
  void whatIsNotedAsBoughtIsNotBoughtAgain() throws IOException {
    Path first = twoMaterials();
    note(first, "1,ply,", "cut", "cut");
    note(first, "1: 96 x 5 1/2 in", "bought");
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("0")
        .contains(
            "ash: 1 of '1: 96 x 5 1/2 in' from the earlier layouts is whole, and counts as bought.")
        .doesNotContain("still to be bought")
        .contains("To be bought, where it has a price: 30.00");
  }

  /** Parts of a case that is refused are not known: they are neither gone nor cut. */
  @Test
  void aJobThatIsRefusedIsNotLaidOut() throws IOException {
    Path job = Files.copy(EXAMPLES.resolve("reading-room.yaml"), shop.resolve("reading-room.yaml"));
    Path packet = shop.resolve("packet");
    plan(job, packet);
    NotedCutting.note(packet, "cut,");
    String text = Files.readString(job);
    Files.writeString(job, text.replace("width: 80\n", "width: 4\n"));
    assertThat(run(job, "--after", packet))
        .startsWith("1")
        .contains("refused: ", "Nothing is laid out: the parts of what is refused are not known.")
        .doesNotContain("no such line any more", "Nothing is left");
    assertThat(shop.resolve("reading-room.cutting-2")).doesNotExist();
  }

  /** The music library sags where it is planned: the parts are known, and so is the error. */
  @Test
  void whatIsWrongWithAJobIsToldWithItsLayouts() {
    Path out = shop.resolve("out");
    assertThat(run(EXAMPLES.resolve("music-library.yaml"), "--out", out))
        .startsWith("1")
        .contains("error: ");
    assertThat(out.resolve("layouts.csv")).exists();
  }

  @Test
  void aTableOfPartsAloneIsNoJob() throws IOException {
    Files.writeString(shop.resolve("parts.csv"), NotedCutting.FEW);
    assertThat(run(shop.resolve("parts.csv")))
        .startsWith("2")
        .contains("a table of parts needs one of stock", "Name the table of stock after it");
  }

  @Test
  void nothingIsWrittenWhereNothingIsLeft() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,", "cut,", "cut,");
    Path second = shop.resolve("second");
    assertThat(few().again(first, second)).isEqualTo("0\nNothing is left to be cut.\n");
    assertThat(second).doesNotExist();
  }

  @Test
  void aPartWithItsGrainAcrossIsCutAgain() throws IOException {
    String parts = "part,material,length,width,grain\nlid,ply,20 in,10 in,length\n";
    Files.writeString(shop.resolve("parts.csv"), parts);
    Files.writeString(shop.resolve("rack.csv"), "material,length,width\nply,8 ft,4 ft\n");
    Path first = shop.resolve("first");
    run(shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", first);
    NotedCutting.note(first, "cut,");
    String turned = parts.replace("20 in,10 in", "10 in,20 in");
    Files.writeString(shop.resolve("parts.csv"), turned);
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("0")
        .contains("'1 lid' was cut with its grain across, and is cut again");
    Files.writeString(shop.resolve("parts.csv"), turned.replace(",length\n", ",any\n"));
    assertThat(few().again(first, shop.resolve("third"))).contains("Nothing is left to be cut.");
  }

  @Test
  void stockThatIsUsedAndNoLongerThereIsTold() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,", "spoilt,", ",");
    Files.writeString(
        shop.resolve("rack.csv"), "material,length,width,count\nply,8 ft,48 1/32 in,3\n");
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("0")
        .containsOnlyOnce("nothing is taken off its counts");
  }

  /** Two boards hold two strips each; one board is spoilt, but for one strip. */
  @Test
  void stripsThatAreSpoiltAreCutAgain() throws IOException {
    Files.writeString(
        shop.resolve("parts.csv"),
        "part,material,length,width,glue-up\ntop,ash,800 mm,400 mm,60 mm..120 mm\n");
    Files.writeString(
        shop.resolve("rack.csv"),
        "material,kind,length,width,rough-length,rough-width,jointing\n"
            + "ash,board,2 m,150 mm,25 mm,6 mm,3 mm\n");
    Path first = shop.resolve("first");
    assertThat(run(shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", first))
        .startsWith("0");
    NotedCutting.note(first, "cut,", "spoilt,1");
    Path second = shop.resolve("second");
    assertThat(few().again(first, second)).startsWith("0");
    assertThat(parts(second, "1 top")).isEqualTo(1);
  }

  @Test
  void aJobThatIsBeingCutIsLaidOutAgainWithWhatIsGood() throws IOException {
    Path job = Files.copy(EXAMPLES.resolve("reading-room.yaml"), shop.resolve("reading-room.yaml"));
    Path packet = shop.resolve("packet");
    assertThat(plan(job, packet)).startsWith("0");
    List<String> first = Files.readAllLines(packet.resolve("progress.csv"));
    assertThat(first.get(1)).contains("oak-ply");
    NotedCutting.note(packet, "cut,", "spoilt,");
    String told = run(job, "--after", packet);
    assertThat(told).startsWith("0");
    Path again = shop.resolve("reading-room.cutting-2");
    assertThat(all(again)).isEqualTo(all(packet) - onSheet(packet, "S1"));
    assertThat(Files.readAllLines(packet.resolve("progress.csv")).get(1)).contains(",cut,");
  }

  private static String plan(Path job, Path packet) {
    StringWriter told = new StringWriter();
    PrintWriter out = new PrintWriter(told);
    CommandLine line = new CommandLine(new PlanCommand()).setOut(out).setErr(out);
    return line.execute(job.toString(), "--out", packet.toString()) + "\n" + told;
  }

  private static long all(Path folder) throws IOException {
    return count(folder, line -> true, line -> Long.parseLong(line[3]));
  }

  /** Parts of one sheet of plywood for the case. */
  private static long onSheet(Path folder, String sheet) throws IOException {
    return count(folder, line -> line[0].equals("oak-ply") && line[2].equals(sheet), line -> 1);
  }

  private static long count(
      Path folder, Predicate<String[]> counted, ToLongFunction<String[]> pieces)
      throws IOException {
    return Files.readAllLines(folder.resolve("layouts.csv")).stream()
        .map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"))
        .filter(line -> line[5].equals("part"))
        .filter(counted)
        .mapToLong(pieces)
        .sum();
  }
}
