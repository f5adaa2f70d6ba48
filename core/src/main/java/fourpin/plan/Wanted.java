package fourpin.plan;

import fourpin.cutting.Part;
import fourpin.cutting.SawLimits.FirstCut;
import fourpin.cutting.SoFar;
import fourpin.cutting.Ties;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is wanted of one material, and what it is cut from.
 *
 * @param material its name
 * @param parts each mark once
 * @param stock each name once
 * @param ties what the parts have to do with each other
 * @param spares how many of a part are spare, by its mark; they are among its count
 * @param thickness of the boards as they are sold, where it is stated
 * @param first which way the first cut runs, where it is stated for this material
 * @param before the number of the last sheet of earlier cuttings, on from which sheets are numbered
 * @param finished of parts that are worked to size after cutting or glued from strips, by mark;
 *     their parts and spares count the pieces to be cut
 */
public record Wanted(
    String material,
    Kind kind,
    List<Part> parts,
    List<Stock> stock,
    Ties ties,
    Map<String, Integer> spares,
    Optional<Length> thickness,
    Optional<FirstCut> first,
    int before,
    Map<String, Finished> finished) {

  private static final Length SIXTEENTH = Length.inches(1, 16);
  private static final Length MILLIMETRE = Length.mm(1);

  /** Whether all four edges of the stock are trimmed, or its ends. */
  public enum Kind {
    SHEETS,
    BOARDS
  }

  public Wanted {
    parts = List.copyOf(parts);
    stock = List.copyOf(stock);
    spares = Map.copyOf(spares);
    finished = Map.copyOf(finished);
  }

  /** What strips for glue-ups are rounded up to, so that a fence can be set to their width. */
  public static Length stripStep(Unit unit) {
    return unit.customary() ? SIXTEENTH : MILLIMETRE;
  }

  /**
   * What of it is still to be cut.
   *
   * @param last number of a sheet of the earlier cuttings
   */
  public Wanted after(SoFar soFar, int last) {
    List<Part> left = soFar.parts(parts, ties);
    List<Stock> lessStock = stock.stream().flatMap(s -> s.after(soFar).stream()).toList();
    return new Wanted(
        material,
        kind,
        left,
        lessStock,
        soFar.ties(ties, left),
        spares,
        thickness,
        first,
        last,
        finished);
  }

  /** Parts that have nothing to do with each other, none of them spare. */
  public Wanted(String material, Kind kind, List<Part> parts, List<Stock> stock) {
    this(
        material,
        kind,
        parts,
        stock,
        Ties.NONE,
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        0,
        Map.of());
  }
}
