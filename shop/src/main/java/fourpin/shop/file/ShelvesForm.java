package fourpin.shop.file;

import fourpin.job.Material;
import fourpin.job.Shelves;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/** Adjustable shelves, stated for a case, a bay, or partly for both. */
final class ShelvesForm {

  private static final int MOST = 40;

  private static final Word<Integer> NUMBER = Words.whole(0, MOST);

  private static final Key<Integer> COUNT =
      Key.optional(
          "count",
          NUMBER,
          "",
          "so many in a bay, with openings as equal as the holes allow; 0 for none");
  private static final Key<List<Length>> AT =
      Key.optional(
          "at",
          new ListOf<>(Words.length("10 mm", "5 m"), MOST),
          "",
          "each at the hole nearest to a height: its upper face above the foot of the case, rising");
  private static final Key<String> MATERIAL =
      Key.optional(
          "material",
          Words.material(Material.Kind.values()),
          "the case's material",
          "of the shelves");
  private static final Key<List<EdgingForm.Stated>> EDGING =
      Key.optional(
          "edging", EdgingForm.KIND, "none", "on the shelves, part of their finished size");
  private static final Key<Length> SETBACK =
      Key.optional(
          "setback",
          Words.length("0 mm", "300 mm"),
          "0",
          "from the front of the case's sides to the front of the shelf, edging included");

  static final Kind<Stated> KIND =
      new Short<>(
          NUMBER,
          COUNT.name(),
          ShelvesForm::number,
          new Form<>(
              "shelves",
              List.of(COUNT, AT, MATERIAL, EDGING, SETBACK),
              List.of(Form.Pick.oneAtMost(COUNT, AT)),
              ShelvesForm::make));

  private ShelvesForm() {}

  /** What was stated of the shelves; what is not stated may stand elsewhere. */
  record Stated(
      Optional<Shelves.Placing> placing,
      Optional<String> material,
      Optional<List<EdgingForm.Stated>> edging,
      Optional<Length> setback) {

    static final Stated NOTHING =
        new Stated(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** These, and where they say nothing, the others. */
    Stated over(Stated others) {
      return new Stated(
          placing.or(others::placing),
          material.or(others::material),
          edging.or(others::edging),
          setback.or(others::setback));
    }

    /** In a case of that material; nothing where there are none. */
    Optional<Shelves> in(String caseMaterial, Context context) {
      String of = material.orElse(caseMaterial);
      return placing
          .filter(p -> !p.equals(new Shelves.Placing.Evenly(0)))
          .map(
              p ->
                  new Shelves(
                      p,
                      of,
                      EdgingForm.on(edging.orElse(List.of()), context.material(of)),
                      setback.orElse(Length.ZERO)));
    }
  }

  private static Stated number(int count) {
    return new Stated(
        Optional.of(new Shelves.Placing.Evenly(count)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Optional<Stated> make(Values v) {
    Optional<Shelves.Placing> placing =
        v.find(COUNT)
            .<Shelves.Placing>map(Shelves.Placing.Evenly::new)
            .or(() -> v.find(AT).map(Shelves.Placing.AtHeights::new));
    boolean rising = Heights.areRising(v.find(AT).orElse(List.of()), v.spot(AT));
    return rising
        ? Optional.of(new Stated(placing, v.find(MATERIAL), v.find(EDGING), v.find(SETBACK)))
        : Optional.empty();
  }
}
