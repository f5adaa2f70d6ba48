package fourpin.bench;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A piece as it lies on the bench.
 *
 * @param bands what was glued on, in order
 * @param removals what was taken out, in order
 */
public record WorkedPiece(
    String mark,
    String stock,
    Length length,
    Length width,
    Length thickness,
    Map<Surface, String> labels,
    List<Step.Band> bands,
    List<Removal> removals) {

  public WorkedPiece {
    labels = Map.copyOf(labels);
    bands = List.copyOf(bands);
    removals = List.copyOf(removals);
  }

  static WorkedPiece cut(Step.CutToSize cut) {
    return new WorkedPiece(
        cut.piece(),
        cut.stock(),
        cut.length(),
        cut.width(),
        cut.thickness(),
        Map.of(),
        List.of(),
        List.of());
  }

  WorkedPiece labelled(Map<Surface, String> more) {
    Map<Surface, String> all = new EnumMap<>(Surface.class);
    all.putAll(labels);
    all.putAll(more);
    return new WorkedPiece(mark, stock, length, width, thickness, all, bands, removals);
  }

  /** What is glued onto an index edge or end moves everything away from it. */
  WorkedPiece banded(Step.Band band) {
    Length grown = band.thickness();
    Length still = Length.ZERO;
    List<Step.Band> all = new ArrayList<>(bands);
    all.add(band);
    return switch (band.surface()) {
      case INDEX_EDGE -> grown(length, width.plus(grown), all, still, grown);
      case FAR_EDGE -> grown(length, width.plus(grown), all, still, still);
      case INDEX_END -> grown(length.plus(grown), width, all, grown, still);
      case FAR_END -> grown(length.plus(grown), width, all, still, still);
      case FACE, REVERSE ->
          throw new IllegalArgumentException(
              "bands go on edges and ends, not on " + band.surface());
    };
  }

  private WorkedPiece grown(
      Length newLength, Length newWidth, List<Step.Band> all, Length alongBy, Length acrossBy) {
    List<Removal> moved = removals.stream().map(r -> shifted(r, alongBy, acrossBy)).toList();
    return new WorkedPiece(mark, stock, newLength, newWidth, thickness, labels, all, moved);
  }

  private static Removal shifted(Removal removal, Length along, Length across) {
    return switch (removal) {
      case Removal.Block b ->
          new Removal.Block(
              b.shape(),
              b.surface(),
              b.length().shifted(along),
              b.width().shifted(across),
              b.thickness(),
              b.purpose());
      case Removal.Bore b ->
          new Removal.Bore(
              b.surface(),
              b.length().plus(along),
              b.width().plus(across),
              b.diameter(),
              b.depth(),
              b.purpose());
    };
  }

  /**
   * What is left of this piece between two lines along it.
   *
   * @param kept measured from the index edge
   */
  WorkedPiece ripped(String newMark, Span kept) {
    Length by = kept.from().negated();
    List<Removal> still =
        removals.stream()
            .filter(r -> reaches(r, kept))
            .map(r -> shifted(within(r, kept), Length.ZERO, by))
            .toList();
    Map<Surface, String> written = new EnumMap<>(Surface.class);
    written.putAll(labels);
    written.keySet().removeIf(s -> isSawnOff(s, kept));
    List<Step.Band> glued = bands.stream().filter(b -> !isSawnOff(b.surface(), kept)).toList();
    return new WorkedPiece(newMark, stock, length, kept.size(), thickness, written, glued, still);
  }

  /**
   * What is left of this piece between two lines across it, with the cuts and holes whose middles
   * lie there.
   *
   * @param kept measured from the index end
   */
  WorkedPiece cutOff(Span kept) {
    List<Removal> still =
        removals.stream()
            .filter(r -> isBetween(middle(r), kept))
            .map(r -> shifted(r, kept.from().negated(), Length.ZERO))
            .toList();
    Map<Surface, String> written = new EnumMap<>(Surface.class);
    written.putAll(labels);
    written
        .keySet()
        .removeIf(
            s ->
                (s == Surface.INDEX_END && !kept.from().isZero())
                    || (s == Surface.FAR_END && !kept.to().equals(length)));
    return new WorkedPiece(mark, stock, kept.size(), width, thickness, written, bands, still);
  }

  private static boolean isBetween(Length at, Span kept) {
    return at.isAtLeast(kept.from()) && kept.to().isAtLeast(at);
  }

  private static Length middle(Removal removal) {
    return switch (removal) {
      case Removal.Block b -> b.length().from().plus(b.length().size().over(2));
      case Removal.Bore b -> b.length();
    };
  }

  private boolean isSawnOff(Surface surface, Span kept) {
    return (surface == Surface.INDEX_EDGE && !kept.from().isZero())
        || (surface == Surface.FAR_EDGE && !kept.to().equals(width));
  }

  private static boolean reaches(Removal removal, Span kept) {
    Span across =
        switch (removal) {
          case Removal.Block b -> b.width();
          case Removal.Bore b -> {
            Length edge = b.width().minus(b.diameter().over(2));
            yield new Span(edge, edge.plus(b.diameter()));
          }
        };
    return across.from().isLessThan(kept.to()) && kept.from().isLessThan(across.to());
  }

  private static Removal within(Removal removal, Span kept) {
    return switch (removal) {
      case Removal.Block b ->
          new Removal.Block(
              b.shape(),
              b.surface(),
              b.length(),
              new Span(
                  Length.max(b.width().from(), kept.from()), Length.min(b.width().to(), kept.to())),
              b.thickness(),
              b.purpose());
      case Removal.Bore b -> b;
    };
  }

  WorkedPiece without(List<? extends Removal> more) {
    List<Removal> all = new ArrayList<>(removals);
    all.addAll(more);
    return new WorkedPiece(mark, stock, length, width, thickness, labels, bands, all);
  }
}
