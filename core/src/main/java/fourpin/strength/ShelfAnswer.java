package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Lazy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a shelf does under its load.
 *
 * @param caseName and {@code mark} of the shelf
 * @param alike mark of the first of the shelves that it is found fault with together, at which
 *     findings and their cures stand
 * @param span between the supports, with the rest of its figures in the order they are read
 * @param sagNow at the stated load, spread evenly
 * @param sagYears at the same load after years
 * @param most however its load lies
 * @param beyond which limits it passes, and how its load then lies, in words; nothing where it is
 *     within all of them however its load lies
 * @param checked in which ways it was loaded for that, and in which it could not be, in words
 * @param rest of its figures
 */
public record ShelfAnswer(
    String caseName,
    String mark,
    String alike,
    Figure span,
    Figure load,
    Figure sagNow,
    Figure sagYears,
    Figure limitNow,
    Figure limitYears,
    WorstSag most,
    List<String> beyond,
    String checked,
    Lazy<Rest> rest) {

  public ShelfAnswer {
    beyond = List.copyOf(beyond);
  }

  /** Found fault with together with others. @param first mark of the first of them */
  ShelfAnswer with(String first) {
    return new ShelfAnswer(
        caseName,
        mark,
        first,
        span,
        load,
        sagNow,
        sagYears,
        limitNow,
        limitYears,
        most,
        beyond,
        checked,
        rest);
  }

  /**
   * How far it sags under the load that sags it most.
   *
   * @param load how that lies, in words
   * @param now the most anywhere
   * @param years the same after years
   */
  public record WorstSag(String load, Figure now, Figure years) {}

  /**
   * What only some pages show, worked out for the first of them.
   *
   * @param atReferenceLoads sag now, then after years, for each reference load in turn
   * @param supports load on each support, front and back
   * @param others the rest: tipping load of the front edge, largest load within the limit, stress
   * @param plate what it does as a plate: sag of front edge, middle and back edge, loads on
   *     supports, lifting off, low supports, a hand on the front edge
   * @param inSides what its supports do to the sides: load on the most loaded one, what is allowed
   *     of wood and pin, distance to the edge, how far the shelf may slide
   * @param shape how it lies with its load as that sags it most, to be drawn; nothing where it is
   *     no plate, or tips however
   */
  public record Rest(
      List<ReferenceSag> atReferenceLoads,
      List<Figure> supports,
      List<Figure> others,
      List<Figure> plate,
      List<Figure> inSides,
      Optional<ShelfShape> shape) {

    public Rest {
      atReferenceLoads = List.copyOf(atReferenceLoads);
      supports = List.copyOf(supports);
      others = List.copyOf(others);
      plate = List.copyOf(plate);
      inSides = List.copyOf(inSides);
    }
  }

  public List<ReferenceSag> atReferenceLoads() {
    return rest.get().atReferenceLoads();
  }

  public List<Figure> supports() {
    return rest.get().supports();
  }

  public List<Figure> others() {
    return rest.get().others();
  }

  public List<Figure> plate() {
    return rest.get().plate();
  }

  public List<Figure> inSides() {
    return rest.get().inSides();
  }

  public Optional<ShelfShape> shape() {
    return rest.get().shape();
  }

  /** All of them, in the order they are read. */
  public List<Figure> figures() {
    List<Figure> all = new ArrayList<>(List.of(span, load, sagNow, limitNow, sagYears, limitYears));
    for (ReferenceSag sag : atReferenceLoads()) {
      all.addAll(List.of(sag.load(), sag.now(), sag.years()));
    }
    all.addAll(supports());
    all.addAll(others());
    all.addAll(plate());
    all.addAll(inSides());
    return all;
  }

  /** Sag at one reference load. @param load with its source */
  public record ReferenceSag(Figure load, Figure now, Figure years) {}
}
