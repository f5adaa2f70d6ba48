package fourpin.shop.file;

import fourpin.job.Bay;
import fourpin.job.CaseOrder;
import fourpin.job.Load;
import fourpin.job.QuantityReader;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Reading;
import fourpin.reference.Reference;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Bays, and what a case states for all of them. */
final class BayForm {

  private static final int MOST_FIXED = 20;

  private static final Key<Length> WIDTH =
      Key.optional(
          "width",
          Words.length("50 mm", "3 m"),
          "an equal share of what is left",
          "clear between the uprights");
  private static final Key<List<Length>> FIXED_SHELVES =
      Key.optional(
          "fixed-shelves",
          new ListOf<>(Words.length("10 mm", "5 m"), MOST_FIXED),
          "none",
          "height of each fixed shelf's upper face above the foot of the case, rising");
  private static final Key<ShelvesForm.Stated> SHELVES =
      Key.optional("shelves", ShelvesForm.KIND, "none", "adjustable shelves");
  private static final Key<Support> SUPPORTS =
      Key.optional("supports", SupportForm.FORM, "none", "what the adjustable shelves lie on");
  private static final Key<String> HOLDS =
      Key.optional(
          "holds",
          Words.row("a kind of thing", "books, average", Reference.things()),
          "",
          "what stands on the shelves, from the reference tables");
  private static final Key<Quantity> LOAD =
      Key.optional(
          "load",
          load(),
          "the setting shelf-load",
          "weight along the shelf or on its surface, in place of holds");

  private static final Key<Length> ROWS_BACK =
      Key.optional(
          "rows-back",
          Words.length("0 mm", "200 mm"),
          "0",
          "how far its rows stand behind those of the other bays, so that they do not meet");
  private static final Key<Length> LEVELS_UP =
      Key.optional(
          "levels-up",
          Words.length("0 mm", "200 mm"),
          "0",
          "how far its holes stand above those of the other bays, so that they do not meet");

  /** Keys that a case states for all bays and a bay for itself. */
  static final List<Key<?>> COMMON = List.of(FIXED_SHELVES, SHELVES, SUPPORTS, HOLDS, LOAD);

  static final Form.Pick ONE_LOAD = Form.Pick.oneAtMost(HOLDS, LOAD);

  static final Form<Stated> FORM =
      new Form<>(
          "a bay",
          List.of(WIDTH, FIXED_SHELVES, SHELVES, SUPPORTS, HOLDS, LOAD, ROWS_BACK, LEVELS_UP),
          List.of(ONE_LOAD),
          BayForm::make);

  private static final Word<Integer> NUMBER = Words.whole(1, CaseOrder.MOST_BAYS);

  static final Kind<List<Stated>> KIND =
      new Short<>(
          NUMBER,
          "",
          n -> Collections.nCopies(n, Stated.NOTHING),
          new ListOf<>(FORM, CaseOrder.MOST_BAYS));

  private BayForm() {}

  /** Loads from next to nothing to what no shelf bears. */
  private static Word<Quantity> load() {
    QuantityReader reader = QuantityReader.LOAD;
    return new Word<>(
        reader.what(),
        "25 lb/ft, 40 lb/sq ft, 37 kg/m, 50 kg/m2 or 2.4 kPa",
        Word.Shape.Measure.ANY,
        (text, c) -> reader.read(text).then(BayForm::plausible));
  }

  private static Reading<Quantity> plausible(Quantity load) {
    boolean line = load.unit() == QuantityUnit.LINE_LOAD;
    Setting s = Setting.SHELF_LOAD;
    String least = line ? s.least() : "0.1 kg/m2";
    String most = line ? s.most() : "1500 kg/m2";
    boolean fits =
        load.value() >= QuantityReader.LOAD.read(least).orThrow().value()
            && load.value() <= QuantityReader.LOAD.read(most).orThrow().value();
    return fits
        ? Reading.good(load)
        : Reading.bad(
            "it is from " + least + " to " + most + " here", "check the number and its unit");
  }

  /** What a case or a bay states. */
  record Stated(
      Optional<Length> width,
      Optional<List<Length>> fixedShelves,
      ShelvesForm.Stated shelves,
      Optional<Support> supports,
      Optional<Load> load,
      Length rowsBack,
      Length levelsUp,
      Optional<Spot> shelvesSpot) {

    static final Stated NOTHING =
        new Stated(
            Optional.empty(),
            Optional.empty(),
            ShelvesForm.Stated.NOTHING,
            Optional.empty(),
            Optional.empty(),
            Length.ZERO,
            Length.ZERO,
            Optional.empty());

    /** This bay in a case that states the rest for all its bays. */
    Optional<Bay> in(Stated all, String material, Context context) {
      Stated both = over(all);
      Bay bay =
          new Bay(
              width,
              both.fixedShelves.orElse(List.of()),
              both.shelves.in(material, context),
              both.supports,
              load,
              rowsBack,
              levelsUp);
      Optional<Spot> spot = both.shelvesSpot;
      if (spot.isPresent() && both.shelves.placing().isEmpty()) {
        return spot.get()
            .refuse(
                "neither count nor at is stated",
                "state how many shelves there are, or at which heights");
      }
      return bay.shelves().isPresent() && bay.supports().isEmpty() && spot.isPresent()
          ? spot.get()
              .refuse(
                  "adjustable shelves lie on something", "state supports for the case or the bay")
          : Optional.of(bay);
    }

    private Stated over(Stated all) {
      return new Stated(
          width,
          fixedShelves.or(all::fixedShelves),
          shelves.over(all.shelves),
          supports.or(all::supports),
          load.or(all::load),
          rowsBack,
          levelsUp,
          shelvesSpot.or(all::shelvesSpot));
    }
  }

  /** What a group states of its bay or bays; nothing with a complaint if it cannot be. */
  static Optional<Stated> make(Values v) {
    boolean rising =
        Heights.areRising(v.find(FIXED_SHELVES).orElse(List.of()), v.spot(FIXED_SHELVES));
    return rising
        ? Optional.of(
            new Stated(
                v.find(WIDTH),
                v.find(FIXED_SHELVES),
                v.find(SHELVES).orElse(ShelvesForm.Stated.NOTHING),
                v.find(SUPPORTS),
                loadOf(v),
                v.find(ROWS_BACK).orElse(Length.ZERO),
                v.find(LEVELS_UP).orElse(Length.ZERO),
                v.find(SHELVES).map(s -> v.spot(SHELVES))))
        : Optional.empty();
  }

  private static Optional<Load> loadOf(Values v) {
    return v.find(HOLDS)
        .<Load>map(Load.Holds::new)
        .or(
            () ->
                v.find(LOAD)
                    .map(
                        q ->
                            q.unit() == QuantityUnit.LINE_LOAD
                                ? new Load.PerLength(q)
                                : new Load.PerArea(q)));
  }
}
