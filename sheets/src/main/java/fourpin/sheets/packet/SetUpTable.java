package fourpin.sheets.packet;

import fourpin.cutting.Direction;
import fourpin.cutting.Piece;
import fourpin.cutting.SawStep;
import fourpin.cutting.SetUp;
import fourpin.measure.Length;
import fourpin.plan.SawCare;
import fourpin.plan.SawCare.Held;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The set-ups of one sheet, for the saw: what is set, which piece goes through, and at the row what
 * asks for care.
 *
 * @param small names of pieces that are too small to be held
 */
record SetUpTable(SawCare care, LayoutPages.Told told, Words words, Set<String> small) {

  private static final String STRAIGHTEDGE = "with a hand-held saw along a straightedge";

  Table of(List<SetUp> setUps) {
    List<Table.Row> rows = new ArrayList<>();
    int next = 0;
    while (next < setUps.size()) {
      List<SetUp> alike = alike(setUps.subList(next, setUps.size()));
      rows.add(
          Table.row(numbers(next + 1, alike.size()), setting(alike), passes(alike.getFirst())));
      next += alike.size();
    }
    return new Table(
        List.of(Table.right("Set-up"), Table.left("Saw, " + words.unit()), Table.left("Passes")),
        rows,
        Table.Lettering.SMALL);
  }

  /** The first, with those after it that trim the same by as much, held in the same way. */
  private List<SetUp> alike(List<SetUp> setUps) {
    SetUp first = setUps.getFirst();
    return first instanceof SetUp.TrimEdge trim
        ? setUps.stream().takeWhile(s -> s instanceof SetUp.TrimEdge t && isAlike(t, trim)).toList()
        : List.of(first);
  }

  private boolean isAlike(SetUp.TrimEdge one, SetUp.TrimEdge other) {
    return one.off().equals(other.off())
        && passes(one).equals(passes(other))
        && care(one).equals(care(other))
        && held(one).equals(held(other));
  }

  private static String numbers(int first, int count) {
    return count == 1 ? Integer.toString(first) : first + " to " + (first + count - 1);
  }

  private String setting(List<SetUp> alike) {
    SetUp first = alike.getFirst();
    String set =
        switch (first) {
          case SetUp.TrimEdge trim ->
              "trim "
                  + Words.list(alike.stream().map(SetUpTable::edge).toList())
                  + " by "
                  + words.number(trim.off())
                  + ", kerf included"
                  + (isByHand(trim) ? ", " + STRAIGHTEDGE : "");
          case SetUp.CutTo cut -> setting(cut);
        };
    return set + care(first);
  }

  private static String edge(SetUp setUp) {
    return setUp instanceof SetUp.TrimEdge trim ? Words.lower(trim.edge()) : "";
  }

  /** What its passes have in common, or that each says it. */
  private String setting(SetUp.CutTo cut) {
    List<Held> held = held(cut);
    String way = cut.direction() == Direction.RIP ? "rip" : "crosscut";
    String size = words.number(cut.fence());
    if (held.stream().allMatch(SawCare::isNarrow)) {
      return way + strips(size) + outside(held);
    }
    if (held.stream().distinct().count() > 1) {
      boolean strips = held.stream().anyMatch(SawCare::isNarrow);
      return way + (strips ? strips(size) : " at " + size) + ", each as it says";
    }
    return switch (held.getFirst()) {
      case Held.Gauge _ -> way + ", stop at " + size;
      case Held.Straightedge _ -> way + " at " + size + " " + STRAIGHTEDGE;
      case Held.Fence _, Held.FenceAtRest _, Held.BandSaw _ -> way + ", fence at " + size;
    };
  }

  private static String strips(String size) {
    return " strips of " + size;
  }

  private static String outside(List<Held> held) {
    return " outside the blade, fence set anew for each"
        + (held.contains(new Held.BandSaw())
            ? "; what is left too narrow for that by band saw or hand"
            : "");
  }

  private List<Held> held(SetUp setUp) {
    return setUp.steps().stream().map(step -> care.held(setUp, step)).toList();
  }

  private boolean isByHand(SetUp setUp) {
    return held(setUp).contains(new Held.Straightedge());
  }

  /** Which cautions are meant. */
  private String care(SetUp setUp) {
    List<String> hazards =
        Stream.of(
                isByHand(setUp) ? "large" : "",
                held(setUp).stream().anyMatch(held -> SawCare.turns(setUp, held))
                    ? "turns at the fence"
                    : "",
                setUp.steps().stream().anyMatch(this::isSmall) ? "small" : "")
            .filter(hazard -> !hazard.isEmpty())
            .toList();
    return hazards.isEmpty()
        ? ""
        : " (" + Words.list(hazards) + ": see the caution" + (hazards.size() > 1 ? "s" : "") + ")";
  }

  private boolean isSmall(SawStep step) {
    return small.contains(step.from().name());
  }

  private String passes(SetUp setUp) {
    StringBuilder passes = new StringBuilder();
    String before = "";
    for (SawStep step : setUp.steps()) {
      String held = held(setUp, step);
      passes.append(passes.isEmpty() ? "" : "; ").append(held.equals(before) ? "" : held);
      passes.append(pass(setUp, step));
      before = care.held(setUp, step) instanceof Held.FenceAtRest ? "" : held;
    }
    return passes.toString();
  }

  private String pass(SetUp setUp, SawStep step) {
    String from = step.from().name() + (isSmall(step) ? ", small" : "");
    return setUp instanceof SetUp.TrimEdge
        ? from
        : from + " → " + named(step.near()) + step.far().map(far -> " + " + named(far)).orElse("");
  }

  /** What leads the piece in this pass, and in those after it that say nothing else. */
  private String held(SetUp setUp, SawStep step) {
    boolean differ = held(setUp).stream().distinct().count() > 1;
    return switch (care.held(setUp, step)) {
      case Held.FenceAtRest(Length rest) -> "fence at " + words.number(rest) + ": ";
      case Held.BandSaw _ -> "by band saw or hand: ";
      case Held.Fence _ -> differ ? "at the fence: " : "";
      case Held.Gauge _ -> differ ? "at a stop: " : "";
      case Held.Straightedge _ -> differ ? "along a straightedge: " : "";
    };
  }

  private String named(Piece piece) {
    return switch (piece.content()) {
      case Piece.Content.ToCut _ -> piece.name();
      case Piece.Content.FinishedPart part -> "[" + told.name(part.mark()) + "]";
      case Piece.Content.LeftOver _ -> "left over " + piece.name();
      case Piece.Content.TrimWaste _ -> "waste";
    };
  }
}
