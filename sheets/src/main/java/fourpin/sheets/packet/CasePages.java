package fourpin.sheets.packet;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.FrameMeasures;
import fourpin.casework.Part;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.CaseViews;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.drawings.FaceFrameView;
import fourpin.sheets.drawings.Picture;
import fourpin.sheets.drawings.StackView;
import fourpin.sheets.drawings.Stacks;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Each case from the front, from the side, from above, and in three dimensions. */
final class CasePages {

  private static final double VIEW_HEIGHT = 130;
  private static final double PICTURE_HEIGHT = 70;

  /** Of the page's width, for the front and for what is seen from above. */
  private static final double SHARE = 0.69;

  private static final double GAP = 5;
  private static final double FRAME_HEIGHT = 150;
  private static final double STACK_HEIGHT = 110;

  private final Plan plan;
  private final Words words;

  CasePages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  Optional<Section> section() {
    List<Block> blocks = new ArrayList<>();
    Stacks.high(plan.cases()).forEach(stack -> blocks.addAll(together(stack)));
    for (BuiltCase built : plan.cases()) {
      blocks.addAll(views(built));
      if (!new FrameMeasures(built).members().isEmpty()) {
        blocks.addAll(faceFrame(built));
      }
    }
    return blocks.isEmpty() ? Optional.empty() : Optional.of(new Section("Views", blocks));
  }

  private List<Block> together(Stacks.Stack stack) {
    StackView view = new StackView(words.fullPage().high(STACK_HEIGHT), stack);
    return List.of(
        new Block.NewPage(),
        new Block.Heading(stack.name()),
        new Block.Figure(
            view.front(),
            "Both as they stand, middle over middle. They are built apart and joined where they stand:"
                + " the steps say how."),
        new Block.Figure(view.side(), "From the right side: backs in line."));
  }

  private List<Block> views(BuiltCase built) {
    Drafter whole = words.fullPage();
    double wide = whole.width() - GAP;
    double left = SHARE * wide;
    String name = built.order().name();
    Block front =
        new Block.Figure(
            views(whole.wide(left), built).front(),
            "Heights at the left run from the floor to the upper face of each shelf; at the right"
                + " the clear heights of the last bay, between its shelves as they lie first."
                + (built.order().doors().isPresent()
                    ? " Dashed: doors, their room only; they are not planned."
                    : ""));
    Block side =
        new Block.Figure(
            views(whole.wide(wide - left), built).side(),
            "From the right side; depth of the adjustable shelves above the depth over all.");
    Block top = new Block.Figure(views(whole.wide(left), built).top(), "From above.");
    Block picture =
        new Block.Figure(
            Picture.of(whole.wide(wide - left).high(PICTURE_HEIGHT), name, List.of(built)),
            "The case with its shelves where they lie first.");
    return List.of(
        new Block.NewPage(),
        new Block.Together(
            List.of(
                new Block.Heading(name + ": front, side and top"),
                new Block.Beside(List.of(front), SHARE, List.of(side)),
                new Block.Beside(List.of(top), SHARE, List.of(picture)))));
  }

  private static CaseViews views(Drafter drafter, BuiltCase built) {
    return new CaseViews(drafter.high(VIEW_HEIGHT), built);
  }

  private List<Block> faceFrame(BuiltCase built) {
    List<Part> members = new FrameMeasures(built).members();
    return List.of(
        new Block.NewPage(),
        new Block.Heading(built.order().name() + ": face frame"),
        new Block.Figure(
            new FaceFrameView(words.fullPage().high(FRAME_HEIGHT), built).draw(),
            "The frame from the front; distances run from its lower left corner."),
        new Table(
            List.of(
                Table.left("Mark"),
                Table.left("Part"),
                Table.right("Length"),
                Table.right("Width"),
                Table.right("Thick"),
                Table.right("From the left"),
                Table.right("From the foot"),
                Table.left("Material")),
            members.stream().map(part -> row(built, part)).toList()));
  }

  private Table.Row row(BuiltCase built, Part part) {
    return Table.row(
        part.mark(),
        part.name(),
        words.number(part.length().total()),
        words.number(part.width().total()),
        words.number(part.thickness()),
        from(built, part, Axis.X),
        from(built, part, Axis.Z),
        part.material());
  }

  private String from(BuiltCase built, Part part, Axis axis) {
    return words.number(new FrameMeasures(built).from(part, axis));
  }
}
