package fourpin.shop.file;

import fourpin.job.Material;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/** What adjustable shelves lie on. */
final class SupportForm {

  private static final Key<Length> DIAMETER =
      Key.required("diameter", Words.length("2 mm", "20 mm"), "of the stem, by calliper");
  private static final Key<Length> STEM =
      Key.required("stem", Words.length("3 mm", "50 mm"), "length of the stem in the hole");
  private static final Key<Length> REACH =
      Key.required(
          "reach",
          Words.length("2 mm", "60 mm"),
          "how far the pin stands out of the side to carry the shelf");
  private static final Key<Length> RISE =
      Key.optional(
          "rise",
          Words.length("0 mm", "30 mm"),
          "half the diameter, as of a plain round pin",
          "from the hole's centre up to the shelf's underside");
  private static final Form<Support.Pins> PINS_FORM =
      Form.of(
          "pins",
          List.of(DIAMETER, STEM, REACH, RISE),
          v ->
              new Support.Pins(
                  v.get(DIAMETER),
                  v.get(STEM),
                  v.get(REACH),
                  v.find(RISE).orElseGet(() -> v.get(DIAMETER).over(2))));

  private static final Key<Support.Pins> SLEEVED_PINS =
      Key.required("pins", PINS_FORM, "the pins that go in the sleeves");
  private static final Key<Length> OUTSIDE =
      Key.required(
          "outside", Words.length("3 mm", "25 mm"), "diameter of the sleeve, and so of the hole");
  private static final Key<Length> LENGTH =
      Key.required("length", Words.length("3 mm", "50 mm"), "of the sleeve in the hole");
  private static final Key<Length> FLANGE =
      Key.required(
          "flange", Words.length("0 mm", "5 mm"), "how far its flange stands proud of the side");
  private static final Form<Support> SLEEVES_FORM =
      new Form<>(
          "sleeves",
          List.of(SLEEVED_PINS, OUTSIDE, LENGTH, FLANGE),
          List.of(),
          SupportForm::sleeved);

  private static final Key<Support.Mounting> MOUNTING =
      Key.required(
          "mounting",
          Words.choice(Support.Mounting.class),
          "let-in for a groove, flush with the side; or surface");
  private static final Key<Length> WIDTH =
      Key.required("width", Words.length("5 mm", "60 mm"), "of the standard");
  private static final Key<Length> THICKNESS =
      Key.required(
          "thickness", Words.length("1 mm", "25 mm"), "of the standard; the groove is as deep");
  private static final Key<Length> SLOT_PITCH =
      Key.required("slot-pitch", Words.length("5 mm", "100 mm"), "from slot to slot");
  private static final Key<Length> FIRST_SLOT =
      Key.required(
          "first-slot",
          Words.length("0 mm", "200 mm"),
          "from the numbered end to the first slot's resting edge");
  private static final Key<Length> CLIP_THICKNESS =
      Key.required(
          "clip-thickness",
          Words.length("0 mm", "10 mm"),
          "what a clip takes from the shelf's length at each end");
  private static final Key<Length> CLIP_RISE =
      Key.required(
          "clip-rise",
          Words.length("0 mm", "50 mm"),
          "from the slot's resting edge up to the shelf's underside");
  private static final Key<Length> SOLD_IN =
      Key.required("sold-in", Words.length("100 mm", "5 m"), "length that standards are sold in");
  private static final Form<Support> STANDARDS_FORM =
      Form.of(
          "standards",
          List.of(
              MOUNTING,
              WIDTH,
              THICKNESS,
              SLOT_PITCH,
              FIRST_SLOT,
              CLIP_THICKNESS,
              CLIP_RISE,
              SOLD_IN),
          v ->
              new Support.Standards(
                  v.get(MOUNTING),
                  v.get(WIDTH),
                  v.get(THICKNESS),
                  v.get(SLOT_PITCH),
                  v.get(FIRST_SLOT),
                  v.get(CLIP_THICKNESS),
                  v.get(CLIP_RISE),
                  v.get(SOLD_IN)));

  private static final Key<String> MATERIAL =
      Key.required(
          "material", Words.material(Material.Kind.BOARD), "of strips and cleats, of kind board");
  private static final Key<Length> STRIP_WIDTH =
      Key.required(
          "width", Words.length("10 mm", "150 mm"), "of a strip, across the depth of the case");
  private static final Key<Length> STRIP_THICKNESS =
      Key.required(
          "thickness", Words.length("5 mm", "60 mm"), "how far a strip stands out from the side");
  private static final Key<Length> BORE =
      Key.required(
          "bore", Words.length("8 mm", "60 mm"), "diameter of the hole that makes the notch");
  private static final Key<Length> CLEAT_HEIGHT =
      Key.required(
          "cleat-height",
          Words.length("8 mm", "60 mm"),
          "height of the loose cleat; its lower half lies in the notch");
  private static final Key<Length> CLEAT_THICKNESS =
      Key.required(
          "cleat-thickness",
          Words.length("4 mm", "60 mm"),
          "how far the cleat stands out from the side; not over the strip's");
  private static final Form<Support> CLEATS_FORM =
      new Form<>(
          "cleats",
          List.of(MATERIAL, STRIP_WIDTH, STRIP_THICKNESS, BORE, CLEAT_HEIGHT, CLEAT_THICKNESS),
          List.of(),
          SupportForm::cleats);

  private static final Key<Support.Pins> PINS =
      Key.optional("pins", PINS_FORM, "", "pins in holes");
  private static final Key<Support> SLEEVES =
      Key.optional("sleeves", SLEEVES_FORM, "", "pins in sleeves");
  private static final Key<Support> STANDARDS =
      Key.optional("standards", STANDARDS_FORM, "", "metal standards with clips");
  private static final Key<Support> CLEATS =
      Key.optional(
          "cleats", CLEATS_FORM, "", "wooden strips with half-round notches, and loose cleats");

  static final Form<Support> FORM =
      new Form<>(
          "supports",
          List.of(PINS, SLEEVES, STANDARDS, CLEATS),
          List.of(Form.Pick.one(PINS, SLEEVES, STANDARDS, CLEATS)),
          v ->
              v.find(PINS)
                  .map(Support.class::cast)
                  .or(() -> v.find(SLEEVES))
                  .or(() -> v.find(STANDARDS))
                  .or(() -> v.find(CLEATS)));

  private SupportForm() {}

  private static Optional<Support> sleeved(Values v) {
    Support.Pins pins = v.get(SLEEVED_PINS);
    return v.get(OUTSIDE).isMoreThan(pins.diameter())
        ? Optional.of(new Support.Sleeved(pins, v.get(OUTSIDE), v.get(LENGTH), v.get(FLANGE)))
        : v.spot(OUTSIDE).refuse("a sleeve is wider than its pin", "check both diameters");
  }

  private static Optional<Support> cleats(Values v) {
    if (v.get(CLEAT_THICKNESS).isMoreThan(v.get(STRIP_THICKNESS))) {
      return v.spot(CLEAT_THICKNESS)
          .refuse(
              "the cleat stands out further than its strip",
              "make it the strip's thickness or less");
    }
    return Optional.of(
        new Support.Cleats(
            v.get(MATERIAL),
            v.get(STRIP_WIDTH),
            v.get(STRIP_THICKNESS),
            v.get(BORE),
            v.get(CLEAT_HEIGHT),
            v.get(CLEAT_THICKNESS)));
  }
}
