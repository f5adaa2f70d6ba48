package fourpin.boring.way;

import fourpin.boring.BayGrid;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which uprights are marked in pairs, side by side. A mark is all that a pair can share: its holes
 * stop in the wood, so that panels can't be bored in a stack, and a guide's column of holes lies on
 * one panel at a time.
 *
 * @param list a gang for each bay that is marked so
 * @param against why other bays, or all, are marked panel by panel
 */
record Gangs(List<Gang> list, Optional<Reason> against) {

  Gangs {
    list = List.copyOf(list);
  }

  static final String REMEDY = "set gang to pairs";

  static boolean arePaired(Group group) {
    return group.settings().choice(Setting.GANG).equals("pairs");
  }

  static Gangs of(Group group) {
    if (group.isBoredAfterAssembly()) {
      return single("the case stands when it is bored", "bore before assembly");
    }
    if (!arePaired(group)) {
      return single("the settings ask for it", REMEDY);
    }
    List<BayGrid> bored = group.grids().stream().filter(g -> !g.levels().isEmpty()).toList();
    return new Gangs(
        bored.stream().filter(g -> fits(group, g)).map(g -> gang(group, g)).toList(),
        bored.stream().filter(g -> !fits(group, g)).findFirst().map(g -> tooWide(group, g)));
  }

  private static Gangs single(String what, String remedy) {
    return new Gangs(List.of(), Optional.of(new Reason(what, remedy)));
  }

  private static boolean fits(Group group, BayGrid grid) {
    return !width(group, grid).isMoreThan(group.settings().length(Setting.GANG_WIDTH));
  }

  private static Length width(Group group, BayGrid grid) {
    BaySpace bay = group.space(grid);
    return across(group, bay.left()).plus(across(group, bay.right()));
  }

  private static Length across(Group group, String mark) {
    return group.built().part(mark).box().size(Axis.Y);
  }

  private static Reason tooWide(Group group, BayGrid grid) {
    Telling tell = new Telling(group, "pair-over-bench", "two uprights wider than the bench, by");
    Length width = width(group, grid);
    return tell.reason(
        "the uprights of bay "
            + grid.bay()
            + " take "
            + tell.derived("w", "width of both side by side", width)
            + " side by side, and the bench has "
            + tell.set("b", Setting.GANG_WIDTH),
        "set gang-width to what the bench holds",
        "w - b",
        width.minus(group.settings().length(Setting.GANG_WIDTH)));
  }

  private static Gang gang(Group group, BayGrid grid) {
    BaySpace bay = group.space(grid);
    Part left = group.built().part(bay.left());
    Part right = group.built().part(bay.right());
    Length stop = Length.min(end(left), end(right));
    return new Gang(
        grid.bay(), stop, List.of(laid(left, Face.RIGHT, stop), laid(right, Face.LEFT, stop)));
  }

  private static Gang.Laid laid(Part part, Face face, Length stop) {
    return new Gang.Laid(part.mark(), face, end(part).minus(stop));
  }

  private static Length end(Part part) {
    return part.box().at(Face.BOTTOM);
  }

  /** Boring from marks, the marks made in pairs where that can be. */
  Proposal marked(Group group, Method.How how, BitSetting bit, Work work, List<Reason> notes) {
    Proposal.Can single =
        new Proposal.Can(
            new Method.Marked(how, bit, List.of()),
            work,
            notes,
            new Proposal.Together(apart().stream().toList(), Optional.empty()));
    return list.isEmpty()
        ? single
        : new Proposal.Can(
            new Method.Marked(how, bit, list),
            work.inPairs(list.size(), new Work.Lines(lines(group), holes(group))),
            notes,
            new Proposal.Together(
                Stream.concat(Stream.of(paired()), apart().stream()).toList(),
                Optional.of(single)));
  }

  private Optional<Reason> apart() {
    return against.map(
        r -> new Reason("marked panel by panel: " + r.what(), r.remedy(), r.figures()));
  }

  private Reason paired() {
    return new Reason(
        "the uprights of "
            + bays()
            + " are marked in pairs, side by side with front edges together and lower ends at one"
            + " stop: a line squared across both from each mark of the stick serves all holes of its"
            + " level. They are bored one by one, since holes that stop in the wood can't be bored in"
            + " a stack",
        "");
  }

  /** One line for each level of each bay. */
  long lines(Group group) {
    return levels(group).mapToLong(g -> g.levels().size()).sum();
  }

  /** Holes that take their height from such lines. */
  long holes(Group group) {
    return group.columns().stream()
        .filter(c -> has(c.grid()))
        .mapToLong(c -> c.grid().levels().size())
        .sum();
  }

  private Stream<BayGrid> levels(Group group) {
    return group.grids().stream().filter(this::has);
  }

  private boolean has(BayGrid grid) {
    return list.stream().anyMatch(g -> g.bay() == grid.bay());
  }

  private String bays() {
    List<String> bays = list.stream().map(g -> Integer.toString(g.bay())).toList();
    return (bays.size() == 1 ? "bay " : "bays ") + String.join(", ", bays);
  }
}
