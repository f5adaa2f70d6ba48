package fourpin.plan;

import fourpin.bench.Spacing;
import fourpin.bench.Step;
import fourpin.bench.Step.Against;
import fourpin.bench.Surface;
import fourpin.bench.WorkedPiece;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The steps of a case as they are done when something goes wrong with one panel.
 *
 * @param piece mark of the panel, {@code length} and {@code width} its size
 * @param turned where a place on the panel comes when what it is marked from lies end for end
 * @param rows purposes of its rows
 * @param steps as they should be
 */
record Blunder(
    String piece, Length length, Length width, Turned turned, Set<String> rows, List<Step> steps) {

  /** For an upright. @param wanted as it should be */
  static Blunder of(RowNames names, WorkedPiece wanted, Set<String> rows, List<Step> steps) {
    return new Blunder(
        wanted.mark(),
        wanted.length(),
        wanted.width(),
        (purpose, up) -> names.turned(purpose, up, wanted.length()),
        rows,
        steps);
  }

  /** What lies end for end. */
  interface Turned {

    /**
     * @param purpose of a row, {@code up} how far a hole of it belongs from the panel's index end
     * @return how far it comes
     */
    Length place(String purpose, Length up);
  }

  /** The guide's far end where its block belongs, or the stick's zero at the far end. */
  List<Step> endForEnd() {
    return each(
        step ->
            switch (step) {
              case Step.ClampGuide c when mine(c.piece()) ->
                  clamp(c, c.surface(), otherOfGuide(c.ends()), c.edges());
              case Step.ShiftGuide s when mine(s.piece()) ->
                  new Step.ShiftGuide(s.guide(), s.piece(), s.into(), s.pin());
              case Step.SquareAcross s when mine(s.panels().getFirst().piece()) -> fromFarEnds(s);
              case Step.BoreRow r when isRow(r.piece(), r.purpose()) ->
                  row(r, r.surface(), r.offset(), fromFarEnd(r.purpose(), r.spacing()));
              case Step.BoreAtFence r when isRow(r.piece(), r.purpose()) ->
                  row(r, r.surface(), r.edge(), fromFarEnd(r.purpose(), r.spacing()));
              default -> step;
            });
  }

  /** Everything from the other end of the panel. */
  List<Step> panelTurned() {
    return each(
        step ->
            switch (step) {
              case Step.ClampGuide c when mine(c.piece()) ->
                  clamp(c, c.surface(), otherOfPiece(c.ends()), c.edges());
              case Step.SquareAcross s ->
                  laid(s, l -> laid(l, l.up(), other(l.end()), other(l.edge())));
              case Step.BoreRow r when isRow(r.piece(), r.purpose()) ->
                  row(r, r.surface(), r.offset(), fromFarEnd(r.purpose(), r.spacing()));
              case Step.BoreAtFence r when isRow(r.piece(), r.purpose()) ->
                  row(r, r.surface(), r.edge(), fromFarEnd(r.purpose(), r.spacing()));
              default -> step;
            });
  }

  /**
   * The stick along the joint of a pair with its zero at the far end, which is as if it lay right
   * and both panels were turned. A pair counts as that of its first panel, so that it is spoilt
   * once.
   */
  private Step fromFarEnds(Step.SquareAcross across) {
    Length end =
        across.panels().stream()
            .map(l -> l.gap().plus(longOf(l.piece())))
            .max(Length::compareTo)
            .orElseThrow();
    return new Step.SquareAcross(
        across.panels().stream().map(l -> fromFarEnd(l, end)).toList(), across.marks());
  }

  /**
   * @param end from the stop to where it lies then
   */
  private Step.Laid fromFarEnd(Step.Laid laid, Length end) {
    Length gap = end.minus(laid.gap()).minus(longOf(laid.piece()));
    return new Step.Laid(laid.piece(), laid.up(), other(laid.end()), gap, laid.edge());
  }

  /** As it was cut. */
  private Length longOf(String mark) {
    return steps.stream()
        .filter(s -> s instanceof Step.CutToSize c && c.piece().equals(mark))
        .map(s -> ((Step.CutToSize) s).length())
        .findFirst()
        .orElseThrow();
  }

  private Step laid(Step.SquareAcross across, UnaryOperator<Step.Laid> change) {
    List<Step.Laid> panels =
        across.panels().stream().map(l -> mine(l.piece()) ? change.apply(l) : l).toList();
    return new Step.SquareAcross(panels, across.marks());
  }

  private static Step.Laid laid(Step.Laid laid, Surface up, Surface end, Surface edge) {
    return new Step.Laid(laid.piece(), up, end, laid.gap(), edge);
  }

  /** The first row of the panel from the other edge. */
  List<Step> wrongEdge() {
    return first(
        step ->
            switch (step) {
              case Step.ClampGuide c when mine(c.piece()) && rows.contains(boredFrom(c)) ->
                  Optional.of(clamp(c, c.surface(), c.ends(), otherOfPiece(c.edges())));
              case Step.BoreRow r when isRow(r.piece(), r.purpose()) ->
                  Optional.of(row(r, r.surface(), width.minus(r.offset()), r.spacing()));
              case Step.BoreAtFence r when isRow(r.piece(), r.purpose()) ->
                  Optional.of(row(r, r.surface(), other(r.edge()), r.spacing()));
              default -> Optional.empty();
            });
  }

  /** Purpose of the row that is bored from a clamping. */
  private String boredFrom(Step.ClampGuide clamp) {
    return steps.stream()
        .skip(steps.indexOf(clamp))
        .filter(s -> s instanceof Step.BoreThrough)
        .map(s -> ((Step.BoreThrough) s).purpose())
        .findFirst()
        .orElse("");
  }

  /** The same where only these rows go wrong. */
  Blunder in(Set<String> others) {
    return new Blunder(piece, length, width, turned, others, steps);
  }

  /** On the face that looks out of the case. */
  List<Step> otherFace() {
    return each(
        step ->
            switch (step) {
              case Step.ClampGuide c when mine(c.piece()) ->
                  clamp(c, other(c.surface()), c.ends(), c.edges());
              case Step.SquareAcross s ->
                  laid(s, l -> laid(l, other(l.up()), l.end(), other(l.edge())));
              case Step.BoreRow r when isRow(r.piece(), r.purpose()) ->
                  row(r, other(r.surface()), r.offset(), r.spacing());
              case Step.BoreAtFence r when isRow(r.piece(), r.purpose()) ->
                  row(r, other(r.surface()), r.edge(), r.spacing());
              default -> step;
            });
  }

  /**
   * One hole of a row is left out; where holes are bored on lines across a pair, its line, and with
   * it all holes of both panels that lie on it.
   *
   * @param purpose of the row
   * @param at which of its holes in the order of work, from 0
   */
  List<Step> holeSkipped(String purpose, int at) {
    int before = at;
    for (int i = 0; i < steps.size(); i++) {
      if (!bores(steps.get(i), purpose)) {
        continue;
      }
      int count = steps.get(i).bored();
      if (before < count) {
        return without(i, before);
      }
      before -= count;
    }
    throw new IllegalStateException("the " + purpose + " has no hole to skip");
  }

  private boolean bores(Step step, String purpose) {
    return switch (step) {
      case Step.BoreThrough b -> mine(b.piece()) && b.purpose().equals(purpose);
      case Step.BoreRow r -> mine(r.piece()) && r.purpose().equals(purpose);
      case Step.BoreAtFence r -> mine(r.piece()) && r.purpose().equals(purpose);
      default -> false;
    };
  }

  private List<Step> without(int step, int at) {
    List<Step> all = new ArrayList<>(steps);
    all.set(step, without(all.get(step), at));
    return lineOf(steps.get(step), at).map(l -> new SkippedLine(l).in(steps)).orElse(all);
  }

  private Optional<SkippedLine.Line> lineOf(Step step, int at) {
    return switch (step) {
      case Step.BoreRow(_, Surface up, _, _, Spacing.OnLines on, _, _, _) ->
          Optional.of(new SkippedLine.Line(piece, up, on.numbers().get(at)));
      case Step.BoreAtFence(_, Surface up, _, _, Spacing.OnLines on, _, _, _) ->
          Optional.of(new SkippedLine.Line(piece, up, on.numbers().get(at)));
      default -> Optional.empty();
    };
  }

  private static Step without(Step step, int at) {
    return switch (step) {
      case Step.BoreThrough b ->
          new Step.BoreThrough(b.guide(), b.piece(), without(b.numbers(), at), b.purpose());
      case Step.BoreRow r -> row(r, r.surface(), r.offset(), without(r.spacing(), at));
      case Step.BoreAtFence r -> row(r, r.surface(), r.edge(), without(r.spacing(), at));
      default -> step;
    };
  }

  private static Spacing without(Spacing spacing, int at) {
    return switch (spacing) {
      case Spacing.Each each -> new Spacing.Each(without(each.distances(), at));
      case Spacing.FromStick s ->
          new Spacing.FromStick(s.stick(), without(s.numbers(), at), s.datum());
      case Spacing.OnLines l -> new Spacing.OnLines(without(l.numbers(), at));
    };
  }

  private static <T> List<T> without(List<T> all, int at) {
    List<T> rest = new ArrayList<>(all);
    rest.remove(at);
    return rest;
  }

  /**
   * The first time that the guide is moved along, its pin goes into the hole below the right one;
   * nothing where guides stay or no hole lies below.
   */
  Optional<List<Step>> pinInWrongHole() {
    List<Integer> bored = new ArrayList<>();
    List<Step> done =
        first(
            step ->
                switch (step) {
                  case Step.BoreThrough b when mine(b.piece()) -> {
                    bored.clear();
                    bored.addAll(b.numbers());
                    yield Optional.empty();
                  }
                  case Step.ShiftGuide s when mine(s.piece()) -> below(s, bored);
                  default -> Optional.empty();
                });
    return Optional.of(done).filter(s -> !s.equals(steps));
  }

  private static Optional<Step> below(Step.ShiftGuide shift, List<Integer> bored) {
    return bored.stream()
        .filter(n -> n < shift.into())
        .max(Integer::compare)
        .map(n -> new Step.ShiftGuide(shift.guide(), shift.piece(), shift.pin(), n));
  }

  List<Step> deeper(Length by) {
    return each(
        step ->
            switch (step) {
              case Step.SetBit b ->
                  new Step.SetBit(b.tool(), b.diameter(), b.runs(), b.stop().plus(by));
              case Step.BoreRow r when isRow(r.piece(), r.purpose()) ->
                  sized(r, r.diameter(), r.depth().plus(by));
              case Step.BoreAtFence r when isRow(r.piece(), r.purpose()) ->
                  sized(r, r.diameter(), r.depth().plus(by));
              default -> step;
            });
  }

  /** A bit that itself runs in the guide's holes is as thick as it bores. */
  List<Step> bored(Length diameter) {
    return each(
        step ->
            switch (step) {
              case Step.SetBit b ->
                  new Step.SetBit(
                      b.tool(),
                      diameter,
                      b.runs().equals(b.diameter()) ? diameter : b.runs(),
                      b.stop());
              case Step.BoreRow r when isRow(r.piece(), r.purpose()) ->
                  sized(r, diameter, r.depth());
              case Step.BoreAtFence r when isRow(r.piece(), r.purpose()) ->
                  sized(r, diameter, r.depth());
              default -> step;
            });
  }

  private List<Step> each(UnaryOperator<Step> change) {
    return steps.stream().map(change).toList();
  }

  /** With the first step changed that can be. */
  private List<Step> first(Function<Step, Optional<Step>> change) {
    List<Step> all = new ArrayList<>(steps);
    for (int i = 0; i < all.size(); i++) {
      Optional<Step> changed = change.apply(all.get(i));
      if (changed.isPresent()) {
        all.set(i, changed.get());
        return all;
      }
    }
    return all;
  }

  private boolean mine(String other) {
    return other.equals(piece);
  }

  private boolean isRow(String other, String purpose) {
    return other.equals(piece) && rows.contains(purpose);
  }

  /** One turn of the guide, so that its other side shows. */
  private static Step clamp(Step.ClampGuide c, Surface surface, Against ends, Against edges) {
    return new Step.ClampGuide(
        c.guide(), c.piece(), surface, ends, edges, c.showing().other(), c.on());
  }

  private static Against otherOfGuide(Against against) {
    return new Against(
        other(against.ofGuide()), against.ofPiece(), against.gap(), against.spacer());
  }

  private static Against otherOfPiece(Against against) {
    return new Against(
        against.ofGuide(), other(against.ofPiece()), against.gap(), against.spacer());
  }

  private static Surface other(Surface surface) {
    return switch (surface) {
      case FACE -> Surface.REVERSE;
      case REVERSE -> Surface.FACE;
      case INDEX_EDGE -> Surface.FAR_EDGE;
      case FAR_EDGE -> Surface.INDEX_EDGE;
      case INDEX_END -> Surface.FAR_END;
      case FAR_END -> Surface.INDEX_END;
    };
  }

  /** Lines across the panel are wrong or right by themselves. */
  private Spacing fromFarEnd(String purpose, Spacing spacing) {
    return switch (spacing) {
      case Spacing.Each each -> fromFarEnd(purpose, each.distances().stream());
      case Spacing.FromStick from ->
          fromFarEnd(purpose, from.numbers().stream().map(n -> mark(from, n).minus(from.datum())));
      case Spacing.OnLines on -> on;
    };
  }

  private Spacing fromFarEnd(String purpose, Stream<Length> distances) {
    return new Spacing.Each(distances.map(up -> turned.place(purpose, up)).sorted().toList());
  }

  private Length mark(Spacing.FromStick from, int number) {
    return steps.stream()
        .filter(s -> s instanceof Step.MarkStick m && m.stick().equals(from.stick()))
        .map(s -> ((Step.MarkStick) s).marks().get(number - 1))
        .findFirst()
        .orElseThrow();
  }

  static Step row(Step.BoreRow r, Surface surface, Length offset, Spacing spacing) {
    return new Step.BoreRow(
        r.piece(), surface, r.line(), offset, spacing, r.diameter(), r.depth(), r.purpose());
  }

  static Step row(Step.BoreAtFence r, Surface surface, Surface edge, Spacing spacing) {
    return new Step.BoreAtFence(
        r.piece(), surface, edge, r.offset(), spacing, r.diameter(), r.depth(), r.purpose());
  }

  private static Step sized(Step.BoreRow r, Length diameter, Length depth) {
    return new Step.BoreRow(
        r.piece(), r.surface(), r.line(), r.offset(), r.spacing(), diameter, depth, r.purpose());
  }

  private static Step sized(Step.BoreAtFence r, Length diameter, Length depth) {
    return new Step.BoreAtFence(
        r.piece(), r.surface(), r.edge(), r.offset(), r.spacing(), diameter, depth, r.purpose());
  }
}
