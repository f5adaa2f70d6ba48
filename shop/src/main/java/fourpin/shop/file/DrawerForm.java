package fourpin.shop.file;

import fourpin.job.Drawers;
import fourpin.job.QuantityReader;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import java.util.List;
import java.util.Optional;

/** Drawers, for how they tip a case. */
final class DrawerForm {

  private static final int MOST = 40;
  private static final double LEAST_KG = 0.1;
  private static final double MOST_KG = 200;

  private static final Key<Integer> COUNT =
      Key.optional("count", Words.whole(1, MOST), "1", "how many, alike");
  private static final Key<Length> HEIGHT =
      Key.required(
          "height",
          Words.length("10 mm", "5 m"),
          "of the middle of the highest one, above the foot of the case");
  private static final Key<Length> LENGTH =
      Key.required(
          "length",
          Words.length("50 mm", "2 m"),
          "of one, from the front of the case's sides backwards");
  private static final Key<Length> OUT =
      Key.required("out", Words.length("10 mm", "2 m"), "how far it comes out, at most its length");
  private static final Key<Quantity> WEIGHT =
      Key.required(
          "weight",
          Words.quantity(QuantityReader.MASS, "12 kg or 26 lb", LEAST_KG, MOST_KG),
          "of one with what is in it");

  static final Form<Drawers> FORM =
      new Form<>(
          "drawers", List.of(COUNT, HEIGHT, LENGTH, OUT, WEIGHT), List.of(), DrawerForm::make);

  private DrawerForm() {}

  private static Optional<Drawers> make(Values v) {
    return v.get(OUT).isMoreThan(v.get(LENGTH))
        ? v.spot(OUT)
            .refuse(
                "a drawer comes out by no more than its length",
                "write how far its slides let it out")
        : Optional.of(
            new Drawers(
                v.find(COUNT).orElse(1), v.get(HEIGHT), v.get(LENGTH), v.get(OUT), v.get(WEIGHT)));
  }
}
