package fourpin.sheets.packet;

import fourpin.cutting.Direction;
import fourpin.cutting.Edge;
import fourpin.cutting.Hold;
import fourpin.cutting.Piece;
import fourpin.cutting.SawStep;
import fourpin.cutting.SetUp;
import fourpin.plan.SawCare;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The set-ups of one sheet, for the saw: what is set, which piece goes through, and at the row what
 * asks for care.
 *
 * @param small names of pieces that are too small to be held
 */
record SetUpTable(LayoutPages.Told told, Words words, Set<String> small) {

  private static final String STRAIGHTEDGE = "with a hand-held saw along a straightedge";
  private static final String MITRE_SAW =
      "at a mitre saw or " + STRAIGHTEDGE + ", both ends supported";
  private static final String BAND_SAW = "by band saw or hand";
  private static final String CLAMPED = "clamped to the mitre gauge";
  private static final String JIG = "clamped on a sled or in a jig, or with a hand saw";

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
        && one.hold() == other.hold();
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
                  + ", kerf included, "
                  + trimmed(trim);
          case SetUp.CutTo cut -> setting(cut);
        };
    return set + care(first);
  }

  private static String trimmed(SetUp.TrimEdge trim) {
    return switch (trim.hold()) {
      case FIRST_EDGE -> STRAIGHTEDGE + ", on a sled or at a jointer";
      case FENCE_AT_REST -> opposite(trim.edge()) + " at the fence, trim outside the blade";
      case BAND_SAW -> BAND_SAW;
      case GAUGE -> "at a mitre gauge";
      case CLAMPED_GAUGE -> CLAMPED;
      case JIG -> JIG;
      case MITRE_SAW -> MITRE_SAW;
      case STRAIGHTEDGE -> STRAIGHTEDGE;
      case FENCE -> throw new IllegalArgumentException("nothing is trimmed at the fence");
    };
  }

  /** The one that was straightened before. */
  private static String opposite(Edge edge) {
    return edge.direction() == Direction.RIP ? "near edge" : "near end";
  }

  private static String edge(SetUp setUp) {
    return setUp instanceof SetUp.TrimEdge trim ? Words.lower(trim.edge()) : "";
  }

  private String setting(SetUp.CutTo cut) {
    String way = cut.direction() == Direction.RIP ? "rip" : "crosscut";
    String size = words.number(cut.fence());
    return way
        + switch (cut.hold()) {
          case FENCE -> ", fence at " + size;
          case FENCE_AT_REST ->
              " strips of " + size + " outside the blade, fence set anew for each";
          case BAND_SAW -> " strips of " + size + " " + BAND_SAW;
          case GAUGE -> ", stop at " + size;
          case CLAMPED_GAUGE -> ", stop at " + size + ", " + CLAMPED;
          case JIG -> " at " + size + ", " + JIG;
          case MITRE_SAW -> " at " + size + ", " + MITRE_SAW;
          case STRAIGHTEDGE -> " at " + size + " " + STRAIGHTEDGE;
          case FIRST_EDGE -> throw new IllegalArgumentException("only edges are straightened");
        };
  }

  /** Which cautions are meant. */
  private String care(SetUp setUp) {
    List<String> hazards =
        Stream.of(
                SawCare.isLarge(setUp) ? "large" : "",
                SawCare.isLong(setUp) ? "long" : "",
                SawCare.isFirstEdge(setUp) ? "first edge" : "",
                SawCare.turns(setUp) ? "turns at the fence" : "",
                SawCare.isNarrow(setUp) ? "narrow" : "",
                setUp.steps().stream().anyMatch(this::hasSmall) ? "small" : "")
            .filter(hazard -> !hazard.isEmpty())
            .toList();
    return hazards.isEmpty()
        ? ""
        : " (" + Words.list(hazards) + ": see the caution" + (hazards.size() > 1 ? "s" : "") + ")";
  }

  private boolean hasSmall(SawStep step) {
    return isSmall(step.from())
        || isSmallPart(step.near())
        || step.far().filter(this::isSmallPart).isPresent();
  }

  private boolean isSmall(Piece piece) {
    return small.contains(piece.name());
  }

  private boolean isSmallPart(Piece piece) {
    return piece.content() instanceof Piece.Content.FinishedPart && isSmall(piece);
  }

  private String passes(SetUp setUp) {
    return setUp.steps().stream()
        .map(step -> fence(setUp, step) + pass(setUp, step))
        .collect(Collectors.joining("; "));
  }

  /** Where the fence stands, if it is set anew for each pass. */
  private String fence(SetUp setUp, SawStep step) {
    return setUp.hold() == Hold.FENCE_AT_REST
        ? "fence at " + words.number(setUp.rest(step)) + ": "
        : "";
  }

  private String pass(SetUp setUp, SawStep step) {
    String from = step.from().name() + (isSmall(step.from()) ? ", small" : "");
    return setUp instanceof SetUp.TrimEdge
        ? from
        : from
            + " → "
            + off(step, step.near())
            + step.far().map(far -> " + " + off(step, far)).orElse("");
  }

  /** What comes off a small piece needs no mark: it is smaller still. */
  private String off(SawStep step, Piece piece) {
    return (isSmallPart(piece) && !isSmall(step.from()) ? "small " : "") + named(piece);
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
