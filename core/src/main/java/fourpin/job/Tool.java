package fourpin.job;

import fourpin.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** What a shop bores and grooves with. All sizes as measured by the maker. */
public sealed interface Tool {

  /** What the shop calls it; each name once. */
  String name();

  /** What it would cost, where the shop does not have it yet; empty for what it has. */
  Optional<BigDecimal> toBuy();

  /**
   * @param length from the bit's point to the back of the drill: the room it needs in front of a
   *     face
   */
  record HandDrill(String name, Length length, Optional<BigDecimal> toBuy) implements Tool {}

  /**
   * A plain bit for hand drill or drill press: brad point or twist.
   *
   * @param point how far the point reaches beyond the full diameter
   * @param reach of the full diameter out of the chuck
   */
  record PlainBit(
      String name, Length diameter, Length point, Length reach, Optional<BigDecimal> toBuy)
      implements Tool {}

  /**
   * A bit in a sprung sleeve whose nose centres itself in the hole of a guide.
   *
   * @param nose outside diameter of the nose, at its shoulder where it is tapered
   * @param tip diameter of the nose at its end; equal to {@code nose} where it is straight
   * @param noseLength from the nose's end to its shoulder: of the taper, where it is tapered; empty
   *     where nobody has measured it
   * @param point how far the point reaches beyond the full diameter
   * @param reach of the full diameter beyond the nose when pressed home
   */
  record CentringBit(
      String name,
      Length diameter,
      Length nose,
      Length tip,
      Optional<Length> noseLength,
      Length point,
      Length reach,
      Optional<BigDecimal> toBuy)
      implements Tool {}

  /**
   * A plunge router.
   *
   * @param travel of the plunge
   * @param base diameter or width of its base
   * @param height over the base: the room it needs in front of a face
   */
  record Router(String name, Length travel, Length base, Length height, Optional<BigDecimal> toBuy)
      implements Tool {}

  /**
   * A guide bushing for the router's base.
   *
   * @param outside diameter of the barrel
   * @param bore inside diameter of the barrel
   * @param barrel how far it stands out of the base
   */
  record Bushing(
      String name, Length outside, Length bore, Length barrel, Optional<BigDecimal> toBuy)
      implements Tool {}

  /**
   * A straight router bit that plunges.
   *
   * @param reach how far it can stand out of the router's base
   */
  record RouterBit(String name, Length diameter, Length reach, Optional<BigDecimal> toBuy)
      implements Tool {}

  /**
   * @param throat from the bit's centre to the column
   * @param table width of the table across the fence
   * @param stroke of the quill
   * @param opening most height from the table to the bit's point
   */
  record DrillPress(
      String name,
      Length throat,
      Length table,
      Length stroke,
      Length opening,
      Optional<BigDecimal> toBuy)
      implements Tool {}

  /** What a strip with holes is made of. */
  enum StripKind {
    HARDBOARD,
    STEEL
  }

  /**
   * A strip that is sold with one row of holes.
   *
   * @param hole diameter of its holes
   * @param over distance between the centres of two holes far apart, as measured
   * @param spaces how many spaces lie between those two holes
   * @param fromEnd from its end to the centre of the first hole
   * @param fromEdge from its index edge to the centres of the holes
   */
  record PerforatedStrip(
      String name,
      StripKind kind,
      Length hole,
      Length over,
      int spaces,
      Length fromEnd,
      Length fromEdge,
      Length thickness,
      Length length,
      Length width,
      Optional<BigDecimal> toBuy)
      implements Tool {

    /** From hole to hole. */
    public Length pitch() {
      return over.over(spaces);
    }

    /** How many holes there are from end to end. */
    public int holes() {
      Length last = length.minus(fromEnd.times(2));
      return last.isNegative() ? 1 : (int) (last.picometres() / pitch().picometres()) + 1;
    }
  }

  /**
   * A table saw.
   *
   * @param cut widest groove of one pass: the blade's kerf, or the width of a grooving set
   * @param depth deepest cut
   */
  record TableSaw(String name, Length cut, Length depth, Optional<BigDecimal> toBuy)
      implements Tool {}

  /**
   * A machine that bores at coordinates.
   *
   * @param bedLength longest and {@code bedWidth} widest panel that it takes
   * @param diameters of the bits that it has
   * @param spacing of its spindles, where they are fixed in a row
   */
  record Machine(
      String name,
      Length bedLength,
      Length bedWidth,
      List<Length> diameters,
      Optional<Length> spacing,
      Optional<BigDecimal> toBuy)
      implements Tool {
    public Machine {
      diameters = List.copyOf(diameters);
    }
  }

  /**
   * Sheet or board that guides are made from.
   *
   * @param material in words: "MDF", "hard maple"
   * @param length longest and {@code width} widest piece at hand
   */
  record GuideStock(
      String name,
      String material,
      Length thickness,
      Length length,
      Length width,
      Optional<BigDecimal> toBuy)
      implements Tool {}
}
