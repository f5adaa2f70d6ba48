package fourpin.shop.file;

import fourpin.job.Edging;
import fourpin.job.Edging.Edge;
import fourpin.job.Material;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/** Edging, which is known in full only when the part is known that it goes on. */
final class EdgingForm {

  private static final int MOST = 4;
  private static final int LONGEST_NAME = 60;

  private static final Key<String> STRIP =
      Key.optional(
          "strip",
          Words.material(Material.Kind.BOARD),
          "",
          "solid wood, by the name of a material of kind board; it stiffens the part");
  private static final Key<String> BANDING =
      Key.optional(
          "banding",
          Words.free("a description", "oak veneer", LONGEST_NAME),
          "",
          "thin banding sold by length, in your words");
  private static final Key<Length> THICKNESS =
      Key.required(
          "thickness",
          Words.length("0.1 mm", "100 mm"),
          "how far it stands out from the edge; taken off the part's cut size");
  private static final Key<Length> HEIGHT =
      Key.optional(
          "height",
          Words.length("3 mm", "200 mm"),
          "the part's thickness",
          "of a strip, tops flush; a strip that hangs below the part stiffens it more");
  private static final Key<List<Edge>> EDGES =
      Key.optional(
          "edges",
          new ListOf<>(Words.choice(Edge.class), Edge.values().length),
          "front",
          "edges of the part as it stands in the case");

  static final Kind<List<Stated>> KIND =
      new ListOf<>(
          new Form<>(
              "edging",
              List.of(STRIP, BANDING, THICKNESS, HEIGHT, EDGES),
              List.of(Form.Pick.one(STRIP, BANDING), Form.Pick.oneAtMost(BANDING, HEIGHT)),
              v -> Optional.of(make(v))),
          MOST);

  private EdgingForm() {}

  /** Edging as it was stated. @param height of its own */
  record Stated(
      Edging.Kind kind,
      String material,
      Length thickness,
      Optional<Length> height,
      List<Edge> edges,
      Spot heightSpot) {

    /** On a part of that thickness. */
    Optional<Edging> on(Length part) {
      Length full = height.orElse(part);
      return full.isAtLeast(part)
          ? Optional.of(new Edging(kind, material, thickness, full, edges))
          : heightSpot.refuse(
              "it is lower than the part is thick", "make it the part's thickness or more");
    }
  }

  private static Stated make(Values v) {
    Edging.Kind kind = v.find(STRIP).isPresent() ? Edging.Kind.STRIP : Edging.Kind.BANDING;
    return new Stated(
        kind,
        v.find(STRIP).or(() -> v.find(BANDING)).orElseThrow(),
        v.get(THICKNESS),
        v.find(HEIGHT),
        v.find(EDGES).orElse(List.of(Edge.FRONT)),
        v.spot(HEIGHT));
  }

  /** All of it on a part of a material; what does not fit has left a complaint. */
  static List<Edging> on(List<Stated> edging, Optional<Material> material) {
    return material.stream()
        .flatMap(m -> edging.stream().flatMap(e -> e.on(m.thickness()).stream()))
        .toList();
  }
}
