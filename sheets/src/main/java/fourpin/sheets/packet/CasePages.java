package fourpin.sheets.packet;

import fourpin.casework.BuiltCase;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.CaseViews;
import fourpin.sheets.drawings.Picture;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Each case from the front, from the side, from above, and in three dimensions. */
final class CasePages {

  private static final double PICTURE_HEIGHT = 130;

  private final Plan plan;
  private final Words words;

  CasePages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  Optional<Section> section() {
    List<Block> blocks = new ArrayList<>();
    for (BuiltCase built : plan.cases()) {
      blocks.addAll(views(built));
    }
    return blocks.isEmpty() ? Optional.empty() : Optional.of(new Section("Views", blocks));
  }

  private List<Block> views(BuiltCase built) {
    CaseViews views = new CaseViews(words.fullPage(), built);
    String name = built.order().name();
    return List.of(
        new Block.NewPage(),
        new Block.Heading(name + ": front"),
        new Block.Figure(
            views.front(),
            "Heights at the left run from the floor to the upper face of each shelf; clear openings of the last bay at the right."),
        new Block.NewPage(),
        new Block.Heading(name + ": side and top"),
        new Block.Figure(
            views.side(),
            "From the right side; depth of the adjustable shelves above the depth over all."),
        new Block.Figure(views.top(), "From above."),
        new Block.Figure(
            Picture.of(words.fullPage().high(PICTURE_HEIGHT), name, List.of(built)),
            "The case with its shelves where they lie first."));
  }
}
