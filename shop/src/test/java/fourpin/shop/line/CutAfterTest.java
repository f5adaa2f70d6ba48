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

/** What is cut again after something went wrong at the saw, and which notes are refused. */
class CutAfterTest {

  private static final Path EXAMPLES = Path.of("..", "examples");

  @TempDir private Path shop;

  private static final String FEW =
      """
      part,material,length,width,count
      side,ply,70 in,11 in,8
      shelf,ply,30 in,11 in,10
      """;

  /** Lays a few parts out: two sheets of four sides each, and one of ten shelves. */
  private Path laidOut() throws IOException {
    Files.writeString(shop.resolve("parts.csv"), FEW);
    Files.writeString(shop.resolve("rack.csv"), "material,length,width\nply,8 ft,4 ft\n");
    Path first = shop.resolve("first");
    assertThat(run(shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", first))
        .startsWith("0");
    assertThat(parts(first, "1 side")).isEqualTo(8);
    assertThat(parts(first, "2 shelf")).isEqualTo(10);
    return first;
  }

  private static void note(Path folder, String... notes) throws IOException {
    Path file = folder.resolve("progress.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    for (int sheet = 1; sheet <= notes.length; sheet++) {
      lines.set(sheet, lines.get(sheet).replaceFirst(",,$", "," + notes[sheet - 1]));
    }
    Files.write(file, lines);
  }

  private String again(Path first, Path second) {
    return run(
        shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", second, "--after", first);
  }

  @Test
  void whatIsCutStaysAndTheRestIsLaidOutAgain() throws IOException {
    Path first = laidOut();
    note(first, "cut,1", "spoilt,1", ",");
    Path second = shop.resolve("second");
    assertThat(again(first, second)).startsWith("0");
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
    Path first = laidOut();
    assertThat(names(first, "layouts.csv", 2)).containsExactly("S1", "S2");
    note(first, "cut,1", "spoilt,1", ",");
    Path second = shop.resolve("second");
    assertThat(again(first, second)).startsWith("0");
    assertThat(names(second, "layouts.csv", 2)).startsWith("S3").doesNotContain("S1", "S2");
    assertThat(names(second, "progress.csv", 3))
        .containsExactlyElementsOf(names(second, "layouts.csv", 2));
    assertThat(names(second, "cutting-order.csv", 2))
        .containsExactlyElementsOf(names(second, "layouts.csv", 2));
    assertThat(Files.readString(second.resolve("cutting-order.csv"))).doesNotContain("S1", "S2");
    assertThat(second.resolve("drawings").toFile().list()).noneMatch(d -> d.endsWith("-1.svg"));
    note(second, "spoilt,", "cut,");
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
    Path first = laidOut();
    note(first, "cut,", "cut,", "cut,");
    Files.writeString(shop.resolve("parts.csv"), FEW.replace("30 in", "30 1/32 in"));
    Path second = shop.resolve("second");
    assertThat(again(first, second)).contains("'2 shelf' was cut in another size than it has now");
    assertThat(parts(second, "1 side")).isZero();
    assertThat(parts(second, "2 shelf")).isEqualTo(10);
  }

  /** One of three sheets is spoilt: two stand in the shop, and one more is bought. */
  @Test
  void sheetsWithoutANoteCountAsBought() throws IOException {
    Path first = laidOut();
    String priced = "material,length,width,count,price\nply,8 ft,4 ft,9,80.00\n";
    Files.writeString(shop.resolve("rack.csv"), priced);
    note(first, "spoilt,", ",", ",");
    Path second = shop.resolve("second");
    assertThat(again(first, second))
        .startsWith("0")
        .contains("ply: 2 of '1: 96 x 48 in' from the earlier layouts have no note")
        .contains("To be bought, where it has a price: 80.00");
    note(second, "cut,", ",", ",");
    assertThat(
            run(
                shop.resolve("parts.csv"),
                shop.resolve("rack.csv"),
                "--after",
                first,
                "--after",
                second,
                "--out",
                shop.resolve("third")))
        .startsWith("0")
        .contains("ply: 2 of '1: 96 x 48 in' from the earlier layouts have no note")
        .contains("To be bought, where it has a price: 0.00");
  }

  /** Parts of a case that is refused are not known: they are neither gone nor cut. */
  @Test
  void aJobThatIsRefusedIsNotLaidOut() throws IOException {
    Path job = Files.copy(EXAMPLES.resolve("reading-room.yaml"), shop.resolve("reading-room.yaml"));
    Path packet = shop.resolve("packet");
    plan(job, packet);
    note(packet, "cut,");
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
    Files.writeString(shop.resolve("parts.csv"), FEW);
    assertThat(run(shop.resolve("parts.csv")))
        .startsWith("2")
        .contains("a table of parts needs one of stock", "Name the table of stock after it");
  }

  @Test
  void nothingIsWrittenWhereNothingIsLeft() throws IOException {
    Path first = laidOut();
    note(first, "cut,", "cut,", "cut,");
    Path second = shop.resolve("second");
    assertThat(again(first, second)).isEqualTo("0\nNothing is left to be cut.\n");
    assertThat(second).doesNotExist();
  }

  /** Nothing is laid out again as if it were not, without a word. */
  @Test
  void anEarlierCuttingWithoutANoteIsRefused() throws IOException {
    Path first = laidOut();
    assertThat(again(first, shop.resolve("second")))
        .startsWith("2")
        .contains("progress.csv: error: no sheet has a note", "leave --after out");
    note(first, "cut,", ",", ",");
    Path second = shop.resolve("second");
    assertThat(again(first, second)).startsWith("0").doesNotContain("has no note:");
    assertThat(third(first, second))
        .startsWith("0")
        .contains(second.resolve("progress.csv") + " has no note: none of its sheets");
  }

  private String third(Path one, Path other) {
    return run(
        shop.resolve("parts.csv"),
        shop.resolve("rack.csv"),
        "--after",
        one,
        "--after",
        other,
        "--out",
        shop.resolve("third"));
  }

  @Test
  void earlierCuttingsThatAreLeftOutOrChangedAboutAreRefused() throws IOException {
    Path first = laidOut();
    note(first, "cut,", ",", ",");
    Path second = shop.resolve("second");
    again(first, second);
    note(second, "cut,");
    assertThat(again(second, shop.resolve("third")))
        .startsWith("2")
        .contains(
            "second/progress.csv:2:1: error: cutting '2': it is named in place 1 of the earlier"
                + " cuttings",
            "the first one first");
    assertThat(third(second, first)).startsWith("2").contains("cutting '2'", "cutting '1'");
    assertThat(third(first, second)).startsWith("0");
  }

  @Test
  void aFolderThatDoesNotSayWhichCuttingItIsIsTold() throws IOException {
    Path first = laidOut();
    note(first, "cut,", ",", ",");
    Path progress = first.resolve("progress.csv");
    Files.write(
        progress,
        Files.readAllLines(progress).stream().map(l -> l.replaceFirst("^[^,]*,", "")).toList());
    assertThat(again(first, shop.resolve("second")))
        .startsWith("0")
        .contains("Nothing says which cutting the earlier one in place 1 is.");
  }

  /** A sheet without a line would neither be cut nor bought. */
  @Test
  void linesThatAreGoneAndStockThatIsAnotherAreRefused() throws IOException {
    Path first = laidOut();
    note(first, "cut,", ",", ",");
    Path progress = first.resolve("progress.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(progress));
    lines.remove(2);
    lines.set(2, lines.get(2).replace("1: 96 x 48 in", "1: 96 x 49 in"));
    Files.write(progress, lines);
    assertThat(again(first, shop.resolve("second")))
        .startsWith("2")
        .contains(
            "progress.csv:1:1: error: layout S1 of ply: 1 of its 2 sheets have no line here, the"
                + " first is sheet 2. Put the lines back",
            "progress.csv:3:",
            "stock '1: 96 x 49 in': that layout is cut from '1: 96 x 48 in'");
  }

  /** Our own tables have a line for each sheet; what makers write is held to fewer lines. */
  @Test
  void aLargeCuttingIsGoneOnWith() throws IOException {
    Files.writeString(
        shop.resolve("parts.csv"), "part,material,length,width,count\ntop,ply,70 in,40 in,6000\n");
    Files.writeString(shop.resolve("rack.csv"), "material,length,width\nply,8 ft,4 ft\n");
    Path first = shop.resolve("first");
    run(shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", first);
    note(first, "cut,", "spoilt,");
    Path second = shop.resolve("second");
    assertThat(again(first, second)).startsWith("0");
    assertThat(parts(second, "1 top")).isEqualTo(6000 - 1);
  }

  @Test
  void whatIsWrongIsToldOfItsOwnFile() throws IOException {
    Path first = laidOut();
    note(first, "cut,2", ",", ",");
    Path layouts = first.resolve("layouts.csv");
    Files.writeString(layouts, Files.readString(layouts).replaceFirst(",S1,2,", ",S1,two,"));
    assertThat(again(first, shop.resolve("second")))
        .startsWith("2")
        .contains("layouts.csv:2:", "size 'two'", "Leave layouts.csv as it was")
        .contains("progress.csv:2:");
    Files.delete(layouts);
    assertThat(again(first, shop.resolve("second")))
        .startsWith("2")
        .contains("Name the folder of an earlier cutting, or the packet of the job");
  }

  @Test
  void wrongNotesAreToldAndTheEarlierFolderIsNotWrittenOver() throws IOException {
    Path first = laidOut();
    note(first, "cut,2", "sawn,", ",");
    assertThat(again(first, first))
        .startsWith("2")
        .contains("progress.csv:2:", "line 2 is not on that sheet so often")
        .contains("progress.csv:3:", "it is one of cut, spoilt")
        .contains("the earlier cutting is there, with your notes");
  }

  /** Four sides lie on the first sheet, and seven are noted; what is wrong with one line is one. */
  @Test
  void aNumberThatIsNotedTooOftenIsToldOnce() throws IOException {
    Path first = laidOut();
    note(first, "cut,1 1 1 1 1 1 1 2 2", ",", ",");
    assertThat(again(first, shop.resolve("second")))
        .startsWith("2")
        .containsOnlyOnce("line 1 is not on that sheet so often")
        .containsOnlyOnce("line 2 is not on that sheet so often");
  }

  /** Nothing is counted twice, and nothing is taken from notes that say two things. */
  @Test
  void notesThatFitNoSheetAreTold() throws IOException {
    Path first = laidOut();
    note(first, "cut,", ",1", ",");
    Path progress = first.resolve("progress.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(progress));
    lines.add(lines.get(1));
    lines.add(lines.get(1).replace(",S1,", ",S9,"));
    lines.add(lines.get(1).replaceFirst(",S1,1,", ",S1,7,"));
    Files.write(progress, lines);
    assertThat(again(first, shop.resolve("second")))
        .startsWith("2")
        .contains("progress.csv:3:", "nothing is said of that sheet under state")
        .contains("progress.csv:5:", "that sheet has a line already")
        .contains("progress.csv:6:", "layouts.csv beside it has no such layout")
        .contains("progress.csv:7:", "by that layout 2 are cut");
  }

  @Test
  void anEarlierCuttingGivenTwiceIsRefused() throws IOException {
    Path first = laidOut();
    assertThat(
            run(
                shop.resolve("parts.csv"),
                shop.resolve("rack.csv"),
                "--after",
                first,
                "--after",
                shop.resolve("x").resolve("..").resolve("first")))
        .startsWith("2")
        .contains("--after", "it is given twice");
  }

  @Test
  void aPartWithItsGrainAcrossIsCutAgain() throws IOException {
    String parts = "part,material,length,width,grain\nlid,ply,20 in,10 in,length\n";
    Files.writeString(shop.resolve("parts.csv"), parts);
    Files.writeString(shop.resolve("rack.csv"), "material,length,width\nply,8 ft,4 ft\n");
    Path first = shop.resolve("first");
    run(shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", first);
    note(first, "cut,");
    String turned = parts.replace("20 in,10 in", "10 in,20 in");
    Files.writeString(shop.resolve("parts.csv"), turned);
    assertThat(again(first, shop.resolve("second")))
        .startsWith("0")
        .contains("'1 lid' was cut with its grain across, and is cut again");
    Files.writeString(shop.resolve("parts.csv"), turned.replace(",length\n", ",any\n"));
    assertThat(again(first, shop.resolve("third"))).contains("Nothing is left to be cut.");
  }

  @Test
  void stockThatIsUsedAndNoLongerThereIsTold() throws IOException {
    Path first = laidOut();
    note(first, "cut,", "spoilt,", ",");
    Files.writeString(
        shop.resolve("rack.csv"), "material,length,width,count\nply,8 ft,48 1/32 in,3\n");
    assertThat(again(first, shop.resolve("second")))
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
    note(first, "cut,", "spoilt,1");
    Path second = shop.resolve("second");
    assertThat(again(first, second)).startsWith("0");
    assertThat(parts(second, "1 top")).isEqualTo(1);
  }

  @Test
  void aJobThatIsBeingCutIsLaidOutAgainWithWhatIsGood() throws IOException {
    Path job = Files.copy(EXAMPLES.resolve("reading-room.yaml"), shop.resolve("reading-room.yaml"));
    Path packet = shop.resolve("packet");
    assertThat(plan(job, packet)).startsWith("0");
    List<String> first = Files.readAllLines(packet.resolve("progress.csv"));
    assertThat(first.get(1)).contains("oak-ply");
    note(packet, "cut,", "spoilt,");
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
