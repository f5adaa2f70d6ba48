package fourpin.validation;

import static fourpin.validation.Check.derived;
import static fourpin.validation.Check.fromMemory;
import static fourpin.validation.Check.published;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.strength.Breaking;
import fourpin.strength.Flat;
import fourpin.strength.Laminate;
import fourpin.strength.LoadedShelf;
import fourpin.strength.Section;
import fourpin.strength.Section.Layer;
import fourpin.strength.Section.Matter;
import fourpin.strength.ShelfLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sections of several materials, and shelves of published length. */
final class SectionChecks {

  private static final double MM_PER_INCH = 25.4;
  private static final double MPA_PER_PSI = 6.894757e-3;
  private static final double KPA_PER_PSF = 4.788026e-2;

  /** So stiff in shear that only bending is left, as in the tables held against. */
  private static final double NO_SHEAR_MPA = 1e9;

  private SectionChecks() {}

  static List<Check> composite() {
    Layer wood = layer(1.5e6, 4, 6, 0);
    Layer steel = layer(30e6, 4, 0.5, 6);
    Section gere = new Section(List.of(wood, steel));
    Layer timber = layer(10_000, 150, 250, 0);
    Layer plate = layer(200_000, 150, 10, 250);
    Section popov = new Section(List.of(timber, plate));
    Layer oak = layer(12_500, 150, 300, 20);
    Section beer =
        new Section(List.of(layer(200_000, 200, 20, 0), layer(200_000, 20, 300, 20), oak));
    String gereTitle = "Gere, Mechanics of Materials";
    String gerePlace = "Examples 6.1 and 6.3 (pp. 400, 407)";
    String popovTitle = "Popov, Engineering Mechanics of Solids";
    String popovPlace = "Example 6.8 (p. 303)";
    return List.of(
        published(
            "wood 4 x 6 in over steel 4 x 0.5 in: neutral axis from the top",
            "5.031",
            "in",
            0.001,
            gereTitle,
            gerePlace,
            gere::neutralAxis),
        published(
            "the same, 60 kip-in: wood",
            "1305",
            "psi",
            1,
            gereTitle,
            gerePlace,
            () -> gere.stress(wood, 60_000)),
        published(
            "the same: steel",
            "7621",
            "psi",
            1,
            gereTitle,
            gerePlace,
            () -> gere.stress(steel, 60_000)),
        published(
            "wood 150 x 250 mm over steel 150 x 10 mm, 30 kN m: wood",
            "11.49",
            "MPa",
            0.01,
            popovTitle,
            popovPlace,
            () -> popov.stress(timber, 30e6)),
        published(
            "the same: steel",
            "97.09",
            "MPa",
            0.01,
            popovTitle,
            popovPlace,
            () -> popov.stress(plate, 30e6)),
        published(
            "steel tee between timbers, 50 kN m: wood",
            "4.57",
            "MPa",
            0.01,
            "Beer, Johnston, DeWolf, Mechanics of Materials",
            "Sample Problem 4.3 (p. 248)",
            () -> beer.stress(oak, 50e6)));
  }

  /** The printed lengths are cut to whole inches, one rounded up. */
  static List<Check> layers() {
    return List.of(
        fromMemory(
            "sandwich, faces 5 mm of 72 GPa, core 150 mm of 800 MPa, 200 mm wide, 3 kN m: faces",
            "19.0",
            "MPa",
            0.05,
            "Gere, Mechanics of Materials",
            "Example 6-2",
            SectionChecks::sandwich),
        derived(
            "three equal layers, the middle one across with 1/20: along over one layer's",
            "0.965",
            "",
            0.0005,
            "layers that bend together, as Bodig and Jayne, Mechanics of Wood and Wood Composites, sum them",
            "plywood of three layers, (26 + 1 / 20) / 27",
            () -> three().bendingAlong() / 12_000),
        derived(
            "the same across, over one layer's along",
            "0.0852",
            "",
            0.00005,
            "layers that bend together, as Bodig and Jayne, Mechanics of Wood and Wood Composites, sum them",
            "plywood of three layers, (1 + 26 / 20) / 27",
            () -> three().bendingAcross() / 12_000),
        derived(
            "box 100 x 60 mm with walls of 10 mm: second moment",
            "1.373",
            "10⁶ mm⁴",
            0.0005,
            "area moments of a rectangle less another",
            "(b h³ - b₁ h₁³) / 12, 100 and 80 mm wide, 60 and 40 mm high",
            SectionChecks::box));
  }

  /** Stress in the faces, MPa. */
  private static double sandwich() {
    Laminate panel =
        new Laminate(
            List.of(
                new Laminate.Ply(72_000, 72_000, 27_000, 2700, 5, 1),
                new Laminate.Ply(800, 800, 300, 60, 150, 1),
                new Laminate.Ply(72_000, 72_000, 27_000, 2700, 5, 1)));
    double bending = panel.bendingAlong() * 200 * Math.pow(160, 3) / 12;
    return 3e6 * 80 * panel.outer() / bending;
  }

  private static Laminate three() {
    Laminate.Ply along = new Laminate.Ply(12_000, 600, 700, 500, 6, 1);
    Laminate.Ply across = new Laminate.Ply(600, 12_000, 700, 500, 6, 1);
    return new Laminate(List.of(along, across, along));
  }

  /** Faces over ribs that fill a fifth of the width, 10⁶ mm⁴. */
  private static double box() {
    Laminate.Ply face = new Laminate.Ply(10_000, 10_000, 700, 500, 10, 1);
    Laminate.Ply ribs = new Laminate.Ply(10_000, 10_000, 700, 500, 40, 0.2);
    double modulus = new Laminate(List.of(face, ribs, face)).bendingAlong();
    return modulus / 10_000 * 100 * Math.pow(60, 3) / 12 / 1e6;
  }

  /** What Eurocode 5 leaves of strengths as printed, Eq. 2.17, over the margin of loads. */
  static List<Check> breaking() {
    return List.of(
        breaking("pine, eastern white", "5.026", "C14: 14 x 0.7 / (1.3 x 1.5)", "EN 338:2016"),
        breaking("oak, white", "6.462", "D18: 18 x 0.7 / (1.3 x 1.5)", "EN 338:2016"),
        breaking("glulam", "8.96", "GL24h: 24 x 0.7 / (1.25 x 1.5)", "EN 14080:2013"),
        breaking("OSB", "4.111", "OSB/3: 14.8 x 0.5 / (1.2 x 1.5)", "EN 12369-1:2001"));
  }

  private static Check breaking(String of, String printed, String place, String title) {
    return derived(
        "bending stress allowed for years in " + of,
        printed,
        "MPa",
        0.0005,
        title + " and EN 1995-1-1:2004, Eq. 2.17, Tables 2.3 and 3.1",
        place,
        () -> Breaking.of(Reference.substances().get(of)).orElseThrow().allowed().number());
  }

  static List<Check> spans() {
    List<Check> all = new ArrayList<>();
    for (Rows.Row row : Rows.of("aws_shelf_spans.csv")) {
      double depth = 300;
      Section section =
          plain(
              row.number("modulus_psi") * MPA_PER_PSI,
              depth,
              row.number("thickness_in") * MM_PER_INCH);
      double load = row.number("load_psf") * KPA_PER_PSF / 1000 * depth;
      ShelfLimits rule = new ShelfLimits(ratio(1), ratio(144), ratio(144), Optional.empty());
      all.add(
          published(
              row.text("material")
                  + ", "
                  + row.text("thickness_in")
                  + " in, "
                  + row.text("load_psf")
                  + " lb/sq ft",
              row.text("longest_in"),
              "in",
              1,
              "Architectural Woodwork Standards, 1st ed. (2009)",
              row.text("place"),
              () -> rule.longestSpan(new LoadedShelf(section, 1, 0, load), 1) / MM_PER_INCH));
    }
    return all;
  }

  private static Section plain(double modulus, double depth, double thickness) {
    Matter matter = new Matter(alike(modulus), stress(NO_SHEAR_MPA), density(0));
    return new Section(List.of(new Layer("shelf", matter, depth, thickness, 0, 0)));
  }

  private static Layer layer(double modulus, double width, double thickness, double top) {
    Matter matter = new Matter(alike(modulus), stress(modulus / 16), density(1));
    return new Layer("layer", matter, width, thickness, 0, top);
  }

  private static Flat alike(double modulus) {
    return new Flat(stress(modulus), stress(modulus), stress(modulus / 2.44), ratio(0.22));
  }

  private static Sourced stress(double value) {
    return new Sourced(Quantity.of(value, QuantityUnit.STRESS), Source.STATED);
  }

  private static Sourced density(double value) {
    return new Sourced(Quantity.of(value, QuantityUnit.DENSITY), Source.STATED);
  }

  private static Sourced ratio(double value) {
    return new Sourced(Quantity.of(value, QuantityUnit.RATIO), Source.STATED);
  }
}
