package fourpin.plan;

import fourpin.bench.Step;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.CaseWays.Manner;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Boring and ripping blanks for cleat strips, and rounding the cleats. */
final class CleatSteps {

  private final List<CleatBlank> blanks;
  private final Function<Part, StepWriter> writer;
  private final LengthStyle style;
  private final List<Method.Blanks> methods;

  CleatSteps(
      List<CleatBlank> blanks,
      Function<Part, StepWriter> writer,
      List<CaseBoring> borings,
      LengthStyle style) {
    this.blanks = blanks;
    this.writer = writer;
    this.style = style;
    this.methods =
        borings.stream()
            .map(CaseBoring::method)
            .flatMap(m -> m instanceof Method.Blanks b ? Stream.of(b) : Stream.empty())
            .distinct()
            .toList();
  }

  /** How the blanks of all bays on cleats are bored. */
  String boring() {
    return "Bore the blanks before they are ripped: draw the middle line with a gauge from the index"
        + " edge, mark its heights from the stick and prick every centre with a punch. "
        + (methods.isEmpty()
            ? "Clamp the blank on waste and bore right through into it."
            : methods.stream().map(this::boring).collect(Collectors.joining(" ")));
  }

  private String boring(Method.Blanks method) {
    return switch (method.how()) {
      case DRILL_PRESS ->
          "On the drill press with "
              + method.bit().tool()
              + ", the fence as far from the bit's centre as the middle line from the index edge, "
              + (method.stack() == 1
                  ? "one blank"
                  : "the two blanks of a bay, edges and ends flush,")
              + " clamped on waste: bore right through into the waste.";
      case BY_HAND ->
          "Clamp one blank at a time on waste and bore with "
              + method.bit().tool()
              + " by hand, square to the face against a square stood beside it, right through into"
              + " the waste.";
    };
  }

  List<Step> bores() {
    return blanks.stream()
        .flatMap(b -> writer.apply(b.wood()).supports(Manner.BY_HAND).stream())
        .toList();
  }

  /** Each blank is ripped, and its strips marked at once: only one has the blank's front edge. */
  List<Step> rips() {
    return blanks.stream()
        .flatMap(b -> Stream.of(b.rip(), marks(b.front()), marks(b.back())))
        .toList();
  }

  private Step marks(Part strip) {
    return writer.apply(strip).marks();
  }

  List<Part> wood() {
    return blanks.stream().map(CleatBlank::wood).toList();
  }

  List<Part> strips() {
    return blanks.stream().flatMap(b -> Stream.of(b.front(), b.back())).toList();
  }

  /** A round end has half the cleat's height for its radius. */
  String rounding(Part cleat) {
    Length radius = cleat.width().total().over(2);
    return "Round both ends of the loose cleats to a radius of "
        + style.text(radius)
        + ": draw the round with a compass set in the middle line "
        + style.text(radius)
        + " from the end, clamp some cleats together, saw the corners off outside the line and sand"
        + " to it. The length of the cut list holds over the rounds.";
  }
}
