package fourpin.shop.line;

import static fourpin.shop.line.Cuttings.parts;
import static fourpin.shop.line.Cuttings.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which notes of earlier cuttings are refused, and what is told of them. */
class EarlierNotesTest {

  @TempDir private Path shop;

  private NotedCutting few() {
    return new NotedCutting(shop);
  }

  /** Nothing is laid out again as if it were not, without a word. */
  @Test
  void anEarlierCuttingWithoutANoteIsRefused() throws IOException {
    Path first = few().laidOut();
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("2")
        .contains("progress.csv: error: no sheet has a note", "leave --after out");
    NotedCutting.note(first, "cut,", ",", ",");
    Path second = shop.resolve("second");
    assertThat(few().again(first, second)).startsWith("0").doesNotContain("has no note:");
    assertThat(few().third(first, second))
        .startsWith("0")
        .contains(second.resolve("progress.csv") + " has no note: none of its sheets");
  }

  @Test
  void earlierCuttingsThatAreLeftOutOrChangedAboutAreRefused() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,", ",", ",");
    Path second = shop.resolve("second");
    few().again(first, second);
    NotedCutting.note(second, "cut,");
    assertThat(few().again(second, shop.resolve("third")))
        .startsWith("2")
        .contains(
            "second/progress.csv:2:1: error: cutting '2': it is named in place 1 of the earlier"
                + " cuttings",
            "the first one first");
    assertThat(few().third(second, first)).startsWith("2").contains("cutting '2'", "cutting '1'");
    assertThat(few().third(first, second)).startsWith("0");
  }

  @Test
  void aFolderThatDoesNotSayWhichCuttingItIsIsTold() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,", ",", ",");
    Path progress = first.resolve("progress.csv");
    Files.write(
        progress,
        Files.readAllLines(progress).stream().map(l -> l.replaceFirst("^[^,]*,", "")).toList());
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("0")
        .contains("Nothing says which cutting the earlier one in place 1 is.");
  }

  /** A sheet without a line would neither be cut nor bought. */
  @Test
  void linesThatAreGoneAndStockThatIsAnotherAreRefused() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,", ",", ",");
    Path progress = first.resolve("progress.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(progress));
    lines.remove(2);
    lines.set(2, lines.get(2).replace("1: 96 x 48 in", "1: 96 x 49 in"));
    Files.write(progress, lines);
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("2")
        .contains(
            "progress.csv:1:1: error: layout S1 of ply: 1 of its 2 sheets have no line here, the"
                + " first is sheet 2. Put the lines back",
            "progress.csv:3:",
            "stock '1: 96 x 49 in': that layout is cut from '1: 96 x 48 in'");
  }

  /** What is whole is cut for nothing: all of its parts are still to come. */
  @Test
  void nothingIsExceptedFromASheetThatIsOnlyBought() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,", "bought,1", ",");
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("2")
        .contains(
            "progress.csv:3:",
            "except '1': a sheet that is only bought is whole, with no part cut");
  }

  /** Our own tables have a line for each sheet; what makers write is held to fewer lines. */
  @Test
  void aLargeCuttingIsGoneOnWith() throws IOException {
    Files.writeString(
        shop.resolve("parts.csv"), "part,material,length,width,count\ntop,ply,70 in,40 in,6000\n");
    Files.writeString(shop.resolve("rack.csv"), "material,length,width\nply,8 ft,4 ft\n");
    Path first = shop.resolve("first");
    run(shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", first);
    NotedCutting.note(first, "cut,", "spoilt,");
    Path second = shop.resolve("second");
    assertThat(few().again(first, second)).startsWith("0");
    assertThat(parts(second, "1 top")).isEqualTo(6000 - 1);
  }

  @Test
  void whatIsWrongIsToldOfItsOwnFile() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,2", ",", ",");
    Path layouts = first.resolve("layouts.csv");
    Files.writeString(layouts, Files.readString(layouts).replaceFirst(",S1,2,", ",S1,two,"));
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("2")
        .contains("layouts.csv:2:", "size 'two'", "Leave layouts.csv as it was")
        .contains("progress.csv:2:");
    Files.delete(layouts);
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("2")
        .contains("Name the folder of an earlier cutting, or the packet of the job");
  }

  @Test
  void wrongNotesAreToldAndTheEarlierFolderIsNotWrittenOver() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,2", "sawn,", ",");
    assertThat(few().again(first, first))
        .startsWith("2")
        .contains("progress.csv:2:", "line 2 is not on that sheet so often")
        .contains("progress.csv:3:", "it is one of bought, cut, spoilt")
        .contains("the earlier cutting is there, with your notes");
  }

  /** Four sides lie on the first sheet, and seven are noted; what is wrong with one line is one. */
  @Test
  void aNumberThatIsNotedTooOftenIsToldOnce() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,1 1 1 1 1 1 1 2 2", ",", ",");
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("2")
        .containsOnlyOnce("line 1 is not on that sheet so often")
        .containsOnlyOnce("line 2 is not on that sheet so often");
  }

  /** Nothing is counted twice, and nothing is taken from notes that say two things. */
  @Test
  void notesThatFitNoSheetAreTold() throws IOException {
    Path first = few().laidOut();
    NotedCutting.note(first, "cut,", ",1", ",");
    Path progress = first.resolve("progress.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(progress));
    lines.add(lines.get(1));
    lines.add(lines.get(1).replace(",S1,", ",S9,"));
    lines.add(lines.get(1).replaceFirst(",S1,1,", ",S1,7,"));
    Files.write(progress, lines);
    assertThat(few().again(first, shop.resolve("second")))
        .startsWith("2")
        .contains("progress.csv:3:", "nothing is said of that sheet under state")
        .contains("progress.csv:5:", "that sheet has a line already")
        .contains("progress.csv:6:", "layouts.csv beside it has no such layout")
        .contains("progress.csv:7:", "by that layout 2 are cut");
  }

  @Test
  void anEarlierCuttingGivenTwiceIsRefused() throws IOException {
    Path first = few().laidOut();
    assertThat(few().third(first, shop.resolve("x").resolve("..").resolve("first")))
        .startsWith("2")
        .contains("--after", "it is given twice");
  }
}
