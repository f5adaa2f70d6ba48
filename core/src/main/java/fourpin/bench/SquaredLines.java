package fourpin.bench;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Lines that were squared across faces of panels laid side by side. */
final class SquaredLines {

  private static final int PAIR = 2;

  private final BiConsumer<Step, String> mishap;
  private final Map<Across, Length> lines = new HashMap<>();

  /** A line on a face. */
  private record Across(String piece, Surface face, int number) {}

  SquaredLines(BiConsumer<Step, String> mishap) {
    this.mishap = mishap;
  }

  /**
   * @param pieces that are laid, in their order
   * @param fromStop distances of the lines from the stop, one for each of the numbers
   */
  void square(Step.SquareAcross across, List<WorkedPiece> pieces, List<Length> fromStop) {
    Optional<String> wrong = wrong(across, pieces);
    if (wrong.isPresent()) {
      mishap.accept(across, wrong.get());
    } else if (fromStop.size() == across.marks().numbers().size()) {
      for (int i = 0; i < pieces.size(); i++) {
        draw(across, across.panels().get(i), pieces.get(i), fromStop);
      }
    }
  }

  private static Optional<String> wrong(Step.SquareAcross across, List<WorkedPiece> pieces) {
    if (pieces.size() != PAIR || pieces.getFirst().equals(pieces.getLast())) {
      return Optional.of("lines are squared across two panels");
    }
    int meet = 1;
    for (int i = 0; i < pieces.size(); i++) {
      Step.Laid laid = across.panels().get(i);
      if (!laid.up().isBroad() || !laid.end().isEnd() || !laid.edge().isEdge()) {
        return Optional.of("panels lie on a face with an end at the stop, edge to edge");
      }
      if (laid.gap().isNegative()) {
        return Optional.of("the stop is in the way of " + laid.piece());
      }
      meet *= Looks.meetingHand(pieces.get(i), laid);
    }
    return meet < 0 ? Optional.empty() : Optional.of(apart(across.panels(), meet));
  }

  private static String apart(List<Step.Laid> panels, int meet) {
    String first = panels.getFirst().piece();
    String second = panels.getLast().piece();
    return meet == 0
        ? "nothing on " + first + " or " + second + " says which way its surfaces look"
        : "the edges of "
            + first
            + " and "
            + second
            + " that should meet lie on the same hand of both";
  }

  private void draw(
      Step.SquareAcross across, Step.Laid laid, WorkedPiece piece, List<Length> fromStop) {
    for (int i = 0; i < fromStop.size(); i++) {
      int number = across.marks().numbers().get(i);
      Length fromEnd = fromStop.get(i).minus(laid.gap());
      Length at = laid.end() == Surface.INDEX_END ? fromEnd : piece.length().minus(fromEnd);
      if (new Span(at, at).within(piece.length())) {
        lines.put(new Across(laid.piece(), laid.up(), number), at);
      } else {
        mishap.accept(across, "line " + number + " misses " + laid.piece());
      }
    }
  }

  /** Distances of lines from the piece's index end; without those that were never drawn. */
  List<Length> on(Step step, String piece, Surface face, List<Integer> numbers) {
    List<Length> distances = new ArrayList<>();
    for (int number : numbers) {
      Length at = lines.get(new Across(piece, face, number));
      if (at == null) {
        mishap.accept(step, "there is no line " + number + " on " + face.words() + " of " + piece);
      } else {
        distances.add(at);
      }
    }
    return distances;
  }
}
