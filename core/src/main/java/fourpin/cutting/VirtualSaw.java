package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Saws a layout on virtual sheets, cut by cut, and says what is wrong with it. An independent
 * check: it uses the problem, the trees and whole picometres, and nothing of the search or of the
 * drawing.
 *
 * <p>The rules. A sheet is trimmed first, each edge by exactly what the saw asks for; a rough edge
 * at the latest before anything is ripped along it. Every cut runs from edge to edge of its piece;
 * the fence setting is above zero and leaves something for the blade; the blade takes its kerf, and
 * where no more than the kerf is left beyond the setting, it takes exactly what is left and nothing
 * remains. A finished part has exactly its size and grain. No cut is longer than the saw reaches,
 * the first one runs the way it must, and no part goes through more stages of cuts than allowed;
 * trimming does not count. What was asked for is cut or left out with a true reason, and on no
 * board that is not taken is there a place for it clear of defects (of parts that must share a
 * sheet, which one sheet is said not to hold, only this is checked: that one part alone does not
 * fit, and that sheets large enough are used up where that is the reason; not that no other layout
 * has room for them, which the reasons do not claim). No more sheets are used than there are.
 * Parts, offcuts, kerf and trim add up to the sheet. The parts of a matched set lie one after the
 * other with only the kerf between, and parts that must share a sheet do.
 */
public final class VirtualSaw {
  private final SheetProblem problem;
  private final Layout layout;
  private final List<Fault> faults = new ArrayList<>();
  private final Map<String, Long> cut = new LinkedHashMap<>();
  private final Map<String, Long> used = new LinkedHashMap<>();

  private VirtualSaw(SheetProblem problem, Layout layout) {
    this.problem = problem;
    this.layout = layout;
  }

  /** All faults, in the order found; empty when the layout is sound. */
  public static List<Fault> check(SheetProblem problem, Layout layout) {
    VirtualSaw saw = new VirtualSaw(problem, layout);
    saw.sawAll();
    saw.countStock();
    saw.countParts();
    saw.checkTogether();
    return List.copyOf(saw.faults);
  }

  private void sawAll() {
    Map<String, Part> asked = new LinkedHashMap<>();
    problem.parts().forEach(part -> asked.put(part.mark(), part));
    for (int i = 0; i < layout.patterns().size(); i++) {
      SheetPattern pattern = layout.patterns().get(i);
      SawnSheet sawn = new SawnSheet(problem, asked, pattern, i + 1);
      faults.addAll(sawn.faults());
      sawn.parts().forEach(mark -> cut.merge(mark, (long) pattern.quantity(), Long::sum));
      used.merge(pattern.sheet().name(), (long) pattern.quantity(), Long::sum);
    }
  }

  private void countStock() {
    for (StockSheet sheet : problem.stock()) {
      long count = used.getOrDefault(sheet.name(), 0L);
      if (sheet.supply() instanceof Supply.Limited(int available) && count > available) {
        faults.add(new Fault.StockExceeded(sheet.name(), count, available));
      }
    }
  }

  private void countParts() {
    Map<String, Long> leftOut = new LinkedHashMap<>();
    layout.unplaced().forEach(u -> leftOut.merge(u.mark(), (long) u.count(), Long::sum));
    for (Part part : problem.parts()) {
      long sawn = cut.getOrDefault(part.mark(), 0L);
      long out = leftOut.getOrDefault(part.mark(), 0L);
      if (sawn + out != part.count()) {
        faults.add(new Fault.WrongCount(part.mark(), part.count(), sawn, out));
      }
    }
    layout.unplaced().forEach(this::checkReason);
  }

  private void checkReason(Unplaced out) {
    Optional<Part> asked =
        problem.parts().stream().filter(p -> p.mark().equals(out.mark())).findFirst();
    switch (out.reason()) {
      case Unplaced.Reason r when asked.isEmpty() ->
          faults.add(new Fault.WrongCount(out.mark(), 0, 0, out.count()));
      case TOO_MUCH_FOR_ONE_SHEET, NOT_ON_ONE_SHEET -> checkGroup(out);
      default -> checkReason(out, withItsSet(asked.get()));
    }
  }

  private void checkReason(Unplaced out, Part part) {
    List<StockSheet> large = problem.stock().stream().filter(s -> fits(part, s)).toList();
    List<StockSheet> within = large.stream().filter(s -> canBeCut(part, s)).toList();
    List<StockSheet> giving = within.stream().filter(s -> hasClearPlace(part, s)).toList();
    boolean unfounded =
        switch (out.reason()) {
          case NO_SHEETS_LEFT -> giving.isEmpty() && !problem.stock().isEmpty();
          case DEFECTS -> within.isEmpty();
          case SAW_LIMITS -> large.isEmpty();
          default -> false;
        };
    if (unfounded) {
      faults.add(new Fault.WrongReason(out.mark(), out.reason()));
    }
    List<StockSheet> against =
        switch (out.reason()) {
          case NO_SHEETS_LEFT -> giving.stream().filter(this::spare).toList();
          case DEFECTS -> giving;
          case SAW_LIMITS -> within;
          default -> large;
        };
    against.forEach(sheet -> needless(out, sheet));
  }

  /** On one of the lays in which the saw can cut it. */
  private boolean hasClearPlace(Part part, StockSheet sheet) {
    ClearOfDefects board = new ClearOfDefects(sheet, problem.saw());
    return lays(part, sheet)
        .anyMatch(
            lay ->
                board.hold(
                    along(part, lay), across(part, lay), width(sheet) - width(part, lay, sheet)));
  }

  private void needless(Unplaced out, StockSheet sheet) {
    faults.add(new Fault.NeedlesslyLeftOut(out.mark(), out.reason(), sheet.name()));
  }

  /**
   * A group that is one part fits where the part does. Of a larger one only the area tells, and
   * whether stock that it may fit on is used up.
   */
  private void checkGroup(Unplaced out) {
    List<Part> its =
        problem.parts().stream()
            .filter(
                p -> problem.ties().together(out.mark()).filter(g -> in(g, p.mark())).isPresent())
            .toList();
    List<StockSheet> large = problem.stock().stream().filter(s -> mayHold(its, s)).toList();
    boolean usedUp = large.stream().anyMatch(sheet -> !spare(sheet));
    boolean wantOfSheets = out.reason() == Unplaced.Reason.NOT_ON_ONE_SHEET;
    if (its.isEmpty() || (wantOfSheets && !usedUp)) {
      faults.add(new Fault.WrongReason(out.mark(), out.reason()));
    }
    if (its.size() == 1 && its.getFirst().count() == 1) {
      large.stream()
          .filter(sheet -> hasClearPlace(withItsSet(its.getFirst()), sheet))
          .filter(sheet -> !wantOfSheets || spare(sheet))
          .forEach(sheet -> needless(out, sheet));
    }
  }

  private static boolean in(Together group, String mark) {
    return group.marks().contains(mark);
  }

  /** By area, and each of the parts alone. */
  private boolean mayHold(List<Part> parts, StockSheet sheet) {
    double area =
        parts.stream().mapToDouble(p -> p.count() * p.length().mm() * p.width().mm()).sum();
    return area <= sheet.length().mm() * sheet.width().mm()
        && parts.stream()
            .map(this::withItsSet)
            .allMatch(part -> fits(part, sheet) && canBeCut(part, sheet));
  }

  /** A part of a matched set is as large as the set. */
  private Part withItsSet(Part part) {
    return problem.ties().matched(part.mark()).map(set -> whole(set, part)).orElse(part);
  }

  private Part whole(Matched set, Part part) {
    boolean endToEnd = set.run() == Matched.Run.END_TO_END;
    Length sum = problem.saw().kerf().times(set.marks().size() - 1);
    for (String mark : set.marks()) {
      Part next =
          problem.parts().stream().filter(p -> p.mark().equals(mark)).findFirst().orElseThrow();
      sum = sum.plus(endToEnd ? next.length() : next.width());
    }
    return new Part(
        part.mark(),
        endToEnd ? sum : part.length(),
        endToEnd ? part.width() : sum,
        part.count(),
        part.grain());
  }

  /** A matched set as large as the sheet still has to be parted. */
  private boolean canBeParted(Part part, Lay lay, StockSheet sheet) {
    Optional<Direction> cuts = problem.ties().matched(part.mark()).map(set -> set.cuts(lay));
    SawLimits limits = problem.saw().limits();
    boolean whole =
        along(part, lay) == length(sheet) && across(part, lay) == width(part, lay, sheet);
    return cuts.map(
            way ->
                (way == Direction.RIP ? limits.longestRip() : limits.widestCrosscut())
                            .map(Length::picometres)
                            .orElse(Long.MAX_VALUE)
                        >= (way == Direction.RIP ? along(part, lay) : across(part, lay))
                    && !(whole && limits.barsAlone(way)))
        .orElse(true);
  }

  private void checkTogether() {
    for (Together group : problem.ties().together()) {
      List<SheetPattern> holding =
          layout.patterns().stream().filter(pattern -> holds(pattern, group)).toList();
      long leftOut =
          layout.unplaced().stream().filter(u -> group.marks().contains(u.mark())).count();
      boolean onOne = holding.size() == 1 && holding.getFirst().quantity() == 1 && leftOut == 0;
      if (!onOne && !holding.isEmpty()) {
        faults.add(new Fault.NotTogether(group.name()));
      }
    }
  }

  private static boolean holds(SheetPattern pattern, Together group) {
    return pattern.parts().stream()
        .anyMatch(
            part ->
                part.node() instanceof Node.Finished(String mark, Lay lay)
                    && group.marks().contains(mark));
  }

  private boolean spare(StockSheet sheet) {
    return switch (sheet.supply()) {
      case Supply.Unlimited u -> true;
      case Supply.Limited(int count) -> used.getOrDefault(sheet.name(), 0L) < count;
    };
  }

  private boolean fits(Part part, StockSheet sheet) {
    return Stream.of(Lay.values())
        .filter(lay -> SawnSheet.grainAllows(part, sheet, lay))
        .anyMatch(
            lay ->
                along(part, lay) <= length(sheet) && across(part, lay) <= width(part, lay, sheet));
  }

  /** What there is for a part across the sheet: all of it only where nothing has to be ripped. */
  private long width(Part part, Lay lay, StockSheet sheet) {
    boolean ripped =
        across(part, lay) != width(sheet)
            || problem
                .ties()
                .matched(part.mark())
                .filter(s -> s.cuts(lay) == Direction.RIP)
                .isPresent();
    return width(sheet) - (ripped ? sheet.roughEdge().picometres() : 0);
  }

  private static long along(Part part, Lay lay) {
    return (lay == Lay.STRAIGHT ? part.length() : part.width()).picometres();
  }

  private static long across(Part part, Lay lay) {
    return (lay == Lay.STRAIGHT ? part.width() : part.length()).picometres();
  }

  private long length(StockSheet sheet) {
    Trim trim = problem.saw().trim();
    return sheet.length().picometres() - trim.nearEnd().picometres() - trim.farEnd().picometres();
  }

  private long width(StockSheet sheet) {
    Trim trim = problem.saw().trim();
    return sheet.width().picometres() - trim.nearEdge().picometres() - trim.farEdge().picometres();
  }

  /**
   * Whether the saw can get one part out of a sheet that it fits on. Cuts can only be made where
   * the piece is short enough, and it is shortest after the other cut: so it is ripped and then
   * crosscut, or the other way round, or no order helps.
   */
  private boolean canBeCut(Part part, StockSheet sheet) {
    return lays(part, sheet).findAny().isPresent();
  }

  private Stream<Lay> lays(Part part, StockSheet sheet) {
    return Stream.of(Lay.values())
        .filter(lay -> SawnSheet.grainAllows(part, sheet, lay))
        .filter(
            lay ->
                along(part, lay) <= length(sheet) && across(part, lay) <= width(part, lay, sheet))
        .filter(lay -> canBeParted(part, lay, sheet))
        .filter(
            lay ->
                canBeCut(
                    along(part, lay), across(part, lay), length(sheet), width(part, lay, sheet)));
  }

  private boolean canBeCut(long along, long across, long length, long width) {
    SawLimits limits = problem.saw().limits();
    long rip = limits.longestRip().map(Length::picometres).orElse(Long.MAX_VALUE);
    long crosscut = limits.widestCrosscut().map(Length::picometres).orElse(Long.MAX_VALUE);
    boolean ripped = across < width;
    boolean crosscutted = along < length;
    if (ripped && crosscutted) {
      boolean ripFirst = !limits.barsFirst(Direction.RIP) && length <= rip && across <= crosscut;
      boolean crosscutFirst =
          !limits.barsFirst(Direction.CROSSCUT) && width <= crosscut && along <= rip;
      return limits.stages() > 1 && (ripFirst || crosscutFirst);
    }
    boolean rips = !limits.barsAlone(Direction.RIP) && length <= rip;
    boolean crosscuts = !limits.barsAlone(Direction.CROSSCUT) && width <= crosscut;
    return (!ripped || rips) && (!crosscutted || crosscuts);
  }
}
