package fourpin.plan;

import fourpin.measure.Figure;
import fourpin.measure.QuantityUnit;
import java.util.List;
import java.util.Optional;

/**
 * How much a layout takes and comes to, and how near that is known to be to the least.
 *
 * @param sheets how many sheets or boards
 * @param fewest that any layout of these parts needs
 * @param cost what they come to, in money or area
 * @param least that any layout of these parts comes to
 * @param gap of the parts that have a place: by how much the cost may be above the least possible,
 *     in per cent; as an amount where the least known is nothing; by number where the layout is
 *     free
 */
public record HowNear(
    Figure sheets, Figure fewest, Figure cost, Figure least, Figure gap, Proof proof) {

  /** Whether nothing cheaper exists. */
  public enum Proof {
    PROVEN("proven"),
    NOT_PROVEN("not proven"),
    /** The figures are those of the other parts, so that nothing is said of all. */
    PARTS_LEFT_OUT("parts without a place");

    private final String words;

    Proof(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** The gap, where that is one of all parts. */
  public Optional<Figure> gapOfAll() {
    return Optional.of(gap).filter(_ -> proof != Proof.PARTS_LEFT_OUT);
  }

  /** "cost" or "area". */
  public String counted() {
    return cost.value().unit() == QuantityUnit.MONEY ? "cost" : "area";
  }

  List<Figure> figures() {
    return List.of(sheets, fewest, cost, least, gap);
  }
}
