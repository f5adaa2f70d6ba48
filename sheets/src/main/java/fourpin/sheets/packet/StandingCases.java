package fourpin.sheets.packet;

import fourpin.measure.Figure;
import fourpin.plan.Plan;
import fourpin.reference.Reference;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Table;
import fourpin.strength.CaseAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How the cases stand, bow and move over the year, and which rules cover them. */
final class StandingCases {

  private static final String RULES =
      "Worked out for a case that stands free, and does not hang on a wall, for which these figures are wrong, on a floor that falls forward as its rows say, doors shut and as heavy as if they were of the "
          + "case's material, things in the middle of their shelves, unless a row says otherwise; nothing is taken to stand beside it, whatever alcove or row of cases it is planned for, until it is fastened there; a child that climbs the shelves and earthquakes are not counted. What stands on tops no job states: what is taken "
          + "to stand there can tip a case too where it turns it forward. Drawers count where the job states them, full and pulled out in front; Fourpin does not plan how they are made. In the United States, 16 CFR 1261 and ASTM "
          + "F2057 cover clothing storage and leave bookcases and built-in units out; ASTM F3096 covers restraints alone. "
          + "In Europe, EN 14749 and EN 16121 with the tests of EN 16122 cover storage furniture, and units above 1 m are tested; their "
          + "forces are not printed here. No standard that was found asks for a strength of a bookcase's anchors. What holds a "
          + "case to a wall, what a floor carries, and what stands in earthquake country, is for local codes and for "
          + "people licensed to judge it. Fasten it, whatever these figures say.";

  private static final String ANCHORS =
      "Anchors go through a rail or cleat right under the top, glued and screwed to top and sides, into the middle of studs, the outermost "
          + "ones that can be reached; a thin back alone holds none. Find the studs first. Where fewer lie behind the case than screws need, "
          + "screw a board across two studs, and the case to the board; masonry, and walls without studs, take anchors of their own.";

  private static final String SWAY =
      "How far the top goes sideways when someone leans on it, the case loaded as stated, with what top-load says on a top that no case stands on, and not fastened to anything. Joints "
          + "turn a little, and a back turns them least; a back that lies loose in grooves holds only once its corners have "
          + "come to the grooves' floors. A case out of square shows in its diagonals, at inset doors, and at shelves that bind. "
          + "Where the bottom stands off the floor, the sides below it are legs: held by going on above, by the bottom's joints, and by "
          + "the kick as far as its screws through the sides hold. "
          + "Stiffness of joints and the push are cautious settings, not tests; face frame and doors are not counted on, nor "
          + "is a thin back that buckles.";

  private static final String TOP =
      "No job states what comes to stand on a top. This one is judged as a shelf in joints over the widest bay, its going on "
          + "over partitions and the back not counted on, under the load that top-load says (common practice, not a standard), spread "
          + "evenly, in a row along the front edge or against the back, and on one half of its length alone, and under a hand on its front edge. Nobody may sit or stand on it.";

  private static final String NO_TOP =
      "Nothing is taken to stand on its top: another case does, which is judged with what it brings, or it is higher than top-reach.";

  private static final String STACKED =
      "Middle over middle, backs in line. A case on another one needs a fixing of its own: screws from inside through its "
          + "bottom into the top below, and the lower case fastened to the wall as well. Both together are judged as one body that "
          + "turns about the front foot of the lower one, or about the foot of one of its sides.";

  private final Plan plan;
  private final Words words;

  StandingCases(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    for (CaseAnswer answer : plan.standing()) {
      blocks.add(new Block.Heading(answer.caseName() + ": standing and wall"));
      blocks.add(table(Stream.concat(answer.standing().stream(), answer.feet().stream()).toList()));
      blocks.add(Block.Paragraph.of(ANCHORS));
      blocks.add(new Block.Heading(answer.caseName() + ": top"));
      blocks.addAll(top(answer));
      if (!answer.stacked().isEmpty()) {
        blocks.add(new Block.Heading(answer.caseName() + ": on the case below"));
        blocks.add(Block.Paragraph.of(STACKED));
        blocks.add(table(answer.stacked()));
      }
      blocks.add(new Block.Heading(answer.caseName() + ": pushed sideways"));
      blocks.add(Block.Paragraph.of(SWAY));
      blocks.add(table(answer.racking()));
      List<Figure> moving =
          Stream.concat(answer.sides().stream(), answer.climate().stream()).toList();
      if (!moving.isEmpty()) {
        blocks.add(new Block.Heading(answer.caseName() + ": sides and seasons"));
        blocks.add(table(moving));
      }
    }
    blocks.add(Block.Paragraph.of(RULES));
    return blocks;
  }

  /** What was taken to stand there is said, since no job states it. */
  private List<Block> top(CaseAnswer answer) {
    return answer.top().isEmpty()
        ? List.of(Block.Paragraph.of(NO_TOP))
        : List.of(Block.Paragraph.of(TOP), table(answer.top()));
  }

  private Table table(List<Figure> figures) {
    return table(words, "Figure", figures);
  }

  static Table table(Words words, String title, List<Figure> figures) {
    return new Table(
        List.of(Table.left(title), Table.right("Value")),
        figures.stream().map(f -> Table.row(f.title(), words.value(f))).toList());
  }

  /** Working stresses of glass, which disagree; nothing where no shelf is of glass. */
  List<Block> glass() {
    boolean some = plan.findings().stream().anyMatch(f -> f.kind().startsWith("glass"));
    return some
        ? List.of(
            new Block.Heading("What others allow in glass"),
            Block.Paragraph.of(
                "Sources disagree. Ask the glazier for thickness, kind and edges, and for safety glass where someone may "
                    + "fall against it."),
            new Table(
                List.of(
                    Table.left("From"),
                    Table.right("Bending stress"),
                    Table.left("For"),
                    Table.left("Source")),
                Reference.glassStresses().rows().stream()
                    .map(
                        g ->
                            Table.row(
                                g.name(),
                                g.stress().text(plan.job().unit()),
                                g.condition(),
                                g.source().text()))
                    .toList()))
        : List.of();
  }

  /** What others allow, to hold the plan's own limits against. */
  static List<Block> limits() {
    return List.of(
        new Block.Heading("What others allow"),
        new Table(
            List.of(
                Table.left("Limit of sag"),
                Table.right("Span over"),
                Table.left("When"),
                Table.left("From")),
            Reference.sagLimits().rows().stream()
                .map(
                    limit ->
                        Table.row(
                            limit.name(),
                            Long.toString(Math.round(limit.spanOver())),
                            limit.when(),
                            limit.source().text()))
                .toList()));
  }
}
