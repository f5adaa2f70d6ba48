package fourpin.shop.web;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Job files of small cases that hold in one way and fail in another: thin or long shelves on pins,
 * in sleeves, on standards or cleats, tops, bottoms on kicks, butt joints, backs left out or loose.
 */
final class FailingJobs {

  private static final List<String> WOODS =
      List.of("thin", "thin", "side", "side", "mdf", "particle", "solid", "glass");
  private static final String STRIP = ", edging: {strip: oak, thickness: 20, height: 30}";
  private static final List<String> SUPPORTS =
      List.of(
          "pins: {diameter: 5, stem: 10, reach: 8}",
          "pins: {diameter: 5, stem: 16, reach: 6}",
          "pins: {diameter: 6, stem: 12, reach: 10}",
          "sleeves: {outside: 7, length: 10, flange: 0.5, pins: {diameter: 5, stem: 9, reach: 9}}",
          "standards: {mounting: surface, width: 16, thickness: 5, slot-pitch: 12, first-slot: 20,"
              + " clip-thickness: 1.5, clip-rise: 3, sold-in: 1800}",
          "cleats: {material: oak, width: 40, thickness: 20, bore: 25, cleat-height: 25,"
              + " cleat-thickness: 15}");
  private static final List<String> HELD =
      List.of("books, average", "books, heavy", "records, 12 in", "dishes", "printer paper");
  private static final List<String> BACKS =
      List.of(
          "",
          "    back: {kind: groove, material: back}\n",
          "    back: {kind: applied, material: back}\n",
          "    back: {kind: rabbet, material: hardboard}\n");
  private static final List<String> BOTTOMS =
      List.of(
          "rabbet}",
          "butt}\n    kick: {height: 80, recess: 40, material: side}",
          "dado}\n    kick: {height: 80, recess: 40, material: side}");
  private static final List<String> JOINTS = List.of("rabbet", "rabbet", "butt");
  private static final List<String> SETTINGS =
      List.of(
          "end-play: 6",
          "top-load: 80 kg/m",
          "support-rating: 120",
          "front-row: 70",
          "hand-push: 120",
          "creep-rule: eurocode",
          "sway-push: 300",
          "behind-kick: board",
          "low-support: 2",
          "hole-depth: 8");

  private final Random random;

  private FailingJobs(long seed) {
    this.random = new Random(seed);
  }

  /** The same for the same seed. */
  static String text(long seed) {
    return new FailingJobs(seed).text();
  }

  private String text() {
    int width = 600 + 50 * random.nextInt(20);
    int height = 700 + 100 * random.nextInt(14);
    String wood = one(WOODS);
    return String.format(
            Locale.ROOT,
            """
        title: A case that fails
        unit: mm
        materials:
          thin: {kind: sheet, of: "plywood, veneer core", thickness: 12}
          side: {kind: sheet, of: "plywood, birch throughout", thickness: 18}
          thick: {kind: sheet, of: "plywood, birch throughout", thickness: 25}
          mdf: {kind: sheet, of: MDF, thickness: 16}
          particle: {kind: sheet, of: particleboard, thickness: 16}
          back: {kind: sheet, of: "plywood, birch throughout", thickness: 6}
          hardboard: {kind: sheet, of: hardboard, thickness: 4}
          oak: {kind: board, of: "oak, white", thickness: 20}
          solid: {kind: board, of: "pine, eastern white", thickness: 18}
          glass: {kind: glass, of: "glass, tempered", thickness: 6}
          thick-glass: {kind: glass, of: "glass, tempered", thickness: 10}
        stock:
          sheets:
            - {material: thin, length: 2500, width: 1250, price: 40}
            - {material: side, length: 2500, width: 1250, price: 80}
            - {material: thick, length: 2500, width: 1250, price: 110}
            - {material: mdf, length: 2800, width: 2070, price: 35}
            - {material: particle, length: 2800, width: 2070, price: 25}
            - {material: back, length: 2500, width: 1250, price: 30}
            - {material: hardboard, length: 2500, width: 1250, price: 12}
          boards:
            - {material: oak, length: 2400, width: 150, price: 35}
            - {material: solid, length: 2400, width: 450, price: 30}
        cases:
          case:
            outside: {width: %d, height: %d, depth: %d}
            material: %s
            bays: %d
            shelves: {count: %d, material: %s%s}
            supports:
              %s
            holds: %s
            joints: {top: %s, fixed-shelves: %s, bottom: %s
        """,
            width,
            height,
            200 + 25 * random.nextInt(9),
            random.nextInt(4) == 0 ? "mdf" : "side",
            1 + random.nextInt(3),
            1 + random.nextInt(2),
            wood,
            wood.equals("glass") ? "" : one(List.of("", "", STRIP)),
            one(SUPPORTS),
            "\"" + one(HELD) + "\"",
            one(JOINTS),
            one(List.of("dado", "butt")),
            one(BOTTOMS))
        + one(BACKS)
        + fixed(height)
        + "    settings: {"
        + one(SETTINGS)
        + "}\n";
  }

  private String fixed(int height) {
    return random.nextInt(4) == 0 ? "    fixed-shelves: " + height / 2 + "\n" : "";
  }

  private String one(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }
}
