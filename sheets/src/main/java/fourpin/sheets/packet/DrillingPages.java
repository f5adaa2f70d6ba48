package fourpin.sheets.packet;

import fourpin.plan.Plan;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Sheets to take to the bench for each face that is bored: its picture, as large as the page
 * allows, beside its steps. Before them stands what is set and made once, unless it stands with the
 * guide.
 */
final class DrillingPages {

  /** Clampings whose pictures find room side by side, if they do. */
  private static final int BESIDE = 2;

  /** The section's title with the room round it, in mm. */
  private static final double TITLE = 14;

  private final Plan plan;
  private final Words words;
  private final Codes codes;

  DrillingPages(Plan plan, Words words, Codes codes) {
    this.plan = plan;
    this.words = words;
    this.codes = codes;
  }

  /**
   * @param signs what was told before of the cautions at boring
   */
  Optional<Section> section(CautionSigns signs) {
    List<DrillingSheet> sheets = DrillingSheet.of(plan);
    List<Block> blocks = new ArrayList<>();
    if (!GuidePages.hasGuides(plan)) {
      blocks.addAll(new DrillingSetUp(plan, words, codes).blocks(signs));
    }
    for (DrillingSheet sheet : sheets) {
      for (List<Block> page : pages(sheet, signs, blocks.isEmpty() ? TITLE : 0)) {
        if (!blocks.isEmpty()) {
          blocks.add(new Block.NewPage());
        }
        blocks.addAll(page);
      }
    }
    return sheets.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("Drilling sheets", blocks));
  }

  /**
   * Clampings side by side where that leaves room for all their steps, else one by one.
   *
   * @param above what stands on the first page before it, in mm
   */
  private List<List<Block>> pages(DrillingSheet sheet, CautionSigns signs, double above) {
    return SheetPage.whole(pages(sheet, BESIDE, above), signs)
        .orElseGet(() -> pages(sheet, 1, above).stream().map(page -> page.blocks(signs)).toList());
  }

  private List<SheetPage> pages(DrillingSheet sheet, int most, double above) {
    List<DrillingPicture> pictures = DrillingPicture.of(plan, words, sheet, most);
    return IntStream.range(0, pictures.size())
        .mapToObj(i -> new SheetPage(words, codes, sheet, pictures, i, i == 0 ? above : 0))
        .toList();
  }
}
