package fourpin.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Saws a layout on virtual sheets, cut by cut, and says what is wrong with it. An independent
 * check: it uses the problem, the trees and whole picometres, and nothing of the search or of the
 * drawing.
 *
 * <p>The rules. A sheet is trimmed first, each edge by exactly what the saw asks for. Every cut
 * runs from edge to edge of its piece; the fence setting is above zero and leaves something for the
 * blade; the blade takes its kerf, and where no more than the kerf is left beyond the setting, it
 * takes exactly what is left and nothing remains. A finished part has exactly its size and grain.
 * What was asked for is cut or left out with a true reason. No more sheets are used than there are.
 * Parts, offcuts, kerf and trim add up to the sheet.
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
    return List.copyOf(saw.faults);
  }

  private void sawAll() {
    for (int i = 0; i < layout.patterns().size(); i++) {
      SheetPattern pattern = layout.patterns().get(i);
      SawnSheet sawn = new SawnSheet(problem, pattern, i + 1);
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
    List<Part> asked = problem.parts().stream().filter(p -> p.mark().equals(out.mark())).toList();
    if (asked.isEmpty()) {
      faults.add(new Fault.WrongCount(out.mark(), 0, 0, out.count()));
      return;
    }
    List<StockSheet> large =
        problem.stock().stream().filter(sheet -> fits(asked.getFirst(), sheet)).toList();
    boolean wantOfSheets = out.reason() == Unplaced.Reason.NO_SHEETS_LEFT;
    if (wantOfSheets && large.isEmpty() && !problem.stock().isEmpty()) {
      faults.add(new Fault.WrongReason(out.mark(), out.reason()));
    }
    large.stream()
        .filter(sheet -> !wantOfSheets || spare(sheet))
        .forEach(
            sheet ->
                faults.add(new Fault.NeedlesslyLeftOut(out.mark(), out.reason(), sheet.name())));
  }

  private boolean spare(StockSheet sheet) {
    return switch (sheet.supply()) {
      case Supply.Unlimited u -> true;
      case Supply.Limited(int count) -> used.getOrDefault(sheet.name(), 0L) < count;
    };
  }

  private boolean fits(Part part, StockSheet sheet) {
    Trim trim = problem.saw().trim();
    long length =
        sheet.length().picometres() - trim.nearEnd().picometres() - trim.farEnd().picometres();
    long width =
        sheet.width().picometres() - trim.nearEdge().picometres() - trim.farEdge().picometres();
    long partLength = part.length().picometres();
    long partWidth = part.width().picometres();
    boolean straight =
        SawnSheet.grainAllows(part, sheet, Lay.STRAIGHT)
            && partLength <= length
            && partWidth <= width;
    boolean turned =
        SawnSheet.grainAllows(part, sheet, Lay.TURNED)
            && partWidth <= length
            && partLength <= width;
    return straight || turned;
  }
}
