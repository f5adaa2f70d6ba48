package fourpin.sheets.drawings;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Grain;
import fourpin.cutting.Layout;
import fourpin.cutting.Node;
import fourpin.cutting.Origin;
import fourpin.cutting.Part;
import fourpin.cutting.Piece;
import fourpin.cutting.Saw;
import fourpin.cutting.SheetGrain;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StockSheet;
import fourpin.cutting.StripCutter;
import fourpin.cutting.Supply;
import fourpin.cutting.Trim;
import fourpin.measure.Length;
import fourpin.plan.Planner;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every part on a sheet has its name, in it where it has room. */
class LayoutViewTest {

  private static final StockSheet SHEET =
      new StockSheet(
          "plywood",
          Length.mm(2440),
          Length.mm(1220),
          SheetGrain.ALONG_LENGTH,
          Supply.of(1),
          1,
          Origin.TO_BUY);

  private final Drafter drafter =
      Drafter.of(Planner.plan(SampleJobs.readingRoom()).job(), 100, 100);

  private Drawing drawn(Part part) {
    Saw saw = new Saw(Length.mm(3), Trim.allRound(Length.mm(5)));
    Layout layout = new StripCutter().cut(new SheetProblem(List.of(part), List.of(SHEET), saw));
    assertThat(layout.unplaced()).isEmpty();
    return new LayoutView(drafter, layout.patterns().getFirst(), 1, "plywood, sheets", Map.of())
        .draw();
  }

  private static List<Lettering> names(Drawing drawing, String name) {
    return drawing.marks().stream()
        .flatMap(
            m -> m instanceof Mark.Text(Lettering words, var _) ? Stream.of(words) : Stream.of())
        .filter(words -> words.words().equals(name))
        .toList();
  }

  /** A leader would strike through the names of the parts beside it. */
  @Test
  void namesOfUprightStripsAreTurned() {
    List<Lettering> names =
        names(drawn(new Part("4 kick", Length.mm(90), Length.mm(764), 3, Grain.FIXED)), "4 kick");
    assertThat(names).hasSize(3).allMatch(name -> name.degrees() == 90);
  }

  @Test
  void namesOfLyingStripsAreUpright() {
    List<Lettering> names =
        names(drawn(new Part("4 kick", Length.mm(764), Length.mm(90), 3, Grain.FIXED)), "4 kick");
    assertThat(names).hasSize(3).allMatch(name -> name.degrees() == 0);
  }

  @Test
  void namesOfBlocksStandBesideTheSheet() {
    List<Lettering> names =
        names(drawn(new Part("4 peg", Length.mm(40), Length.mm(40), 3, Grain.FIXED)), "4 peg");
    assertThat(names).hasSize(3).allMatch(name -> name.align() == Lettering.Align.START);
  }

  private Drawing rests(int length, int width, LayoutView.Rest rest) {
    Piece.Content content = new Piece.Content.LeftOver(Length.mm(1000), Length.mm(100));
    Piece piece = new Piece("S1-H", content, Length.mm(length), Length.mm(width));
    SheetPattern whole = new SheetPattern(SHEET, 1, new Node.Offcut());
    return new LayoutView(drafter, whole, 1, "plywood, sheets", Map.of(piece, rest)).draw();
  }

  /** What is left over is found by its name, and whether it is to be kept. */
  @Test
  void restsHaveTheirNamesInTheHatching() {
    assertThat(names(rests(800, 600, LayoutView.Rest.KEPT), "S1-H, keep")).hasSize(1);
    assertThat(names(rests(800, 600, LayoutView.Rest.NOT_KEPT), "S1-H")).hasSize(1);
    assertThat(names(rests(120, 600, LayoutView.Rest.KEPT), "S1-H, keep"))
        .singleElement()
        .satisfies(name -> assertThat(name.degrees()).isEqualTo(90));
    assertThat(names(rests(270, 100, LayoutView.Rest.KEPT), "S1-H")).hasSize(1);
    assertThat(names(rests(60, 60, LayoutView.Rest.KEPT), "S1-H")).isEmpty();
  }
}
