package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Layer;
import fourpin.job.Material.Turn;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Shelves of ribs between faces: what their faces do between ribs, and over supports. */
final class HollowShelves {

  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;
  private static final double KPA_PER_MPA = 1000;

  private static final Source STRIP =
      new Source(
          "a strip of the face from rib to rib that may turn on them, loaded evenly or by one force in"
              + " its middle; faces that go on over their ribs sag less",
          "any strength of materials",
          Standing.DERIVED);

  /** Of a face by itself. */
  private static final String UNKNOWN =
      "held against nothing: stress-allowed is what its faces may bear as the whole shelf bends, and"
          + " the tables give no strength of thin sheets that bend by themselves";

  private final Job job;
  private final AlikeShelves alike;
  private final ShelfOnSupports read;
  private final Verdict verdict;
  private final Optional<PinInSide> pin;
  private final Material material;

  /**
   * @param shelves alike; at least one
   */
  HollowShelves(
      Job job, List<Part> shelves, ShelfOnSupports read, Verdict verdict, Optional<PinInSide> pin) {
    this.job = job;
    this.alike = new AlikeShelves(job, shelves, read.caseName());
    this.read = read;
    this.verdict = verdict;
    this.pin = pin;
    this.material = job.material(shelves.getFirst().material());
  }

  /** A face, the ribs that it spans between, and the clear way between two of them in mm. */
  private record Face(Layer of, Layer ribs, double clear) {

    static Optional<Face> of(Layer face, Layer next) {
      return Optional.of(next)
          .filter(Layer::isRibs)
          .flatMap(Layer::pitch)
          .map(pitch -> new Face(face, next, pitch - next.rib().orElseThrow().mm()));
    }

    /** It bends from rib to rib, across them. */
    Sourced modulus() {
      boolean turned = of.turn() != ribs.turn();
      Flat flat = Matters.tabled(of.of());
      return turned ? flat.along() : flat.across();
    }

    double thickness() {
      return of.thickness().mm();
    }

    double stiffness() {
      return modulus().number() * Math.pow(thickness(), 3) / 12;
    }
  }

  private Optional<Face> top() {
    List<Layer> layers = material.layers();
    return layers.size() < 2 ? Optional.empty() : Face.of(layers.getFirst(), layers.get(1));
  }

  private Optional<Face> bottom() {
    List<Layer> layers = material.layers();
    return layers.size() < 2
        ? Optional.empty()
        : Face.of(layers.getLast(), layers.get(layers.size() - 2));
  }

  List<Figure> figures() {
    List<Figure> all = new ArrayList<>();
    top().ifPresent(face -> all.addAll(List.of(sag(face), years(face), stress(face))));
    overSupport().ifPresent(face -> all.addAll(List.of(gives(face), stressed(face))));
    return all;
  }

  List<Finding> findings() {
    List<Finding> all = new ArrayList<>();
    top().filter(face -> !holds(face)).map(this::sags).ifPresent(all::add);
    hollow().ifPresent(all::add);
    return all;
  }

  private Finding sags(Face face) {
    return alike.finding(
        Severity.DOUBT,
        "face-sags",
        "%s: the upper face sags by %s now and %s after years between ribs %s apart; %s and %s are allowed by the shelf's own limits. It is stressed to %s, %s"
            .formatted(
                alike.names(),
                alike.text(sag(face)),
                alike.text(years(face)),
                text(face.clear()),
                text(allowed(face, read.limits().firstOver())),
                text(allowed(face, read.limits().yearsOver())),
                alike.text(stress(face)),
                UNKNOWN),
        List.of(sag(face), years(face), stress(face)),
        List.of(
            new Remedy("put ribs closer together: state a larger share for them", "more ribs"),
            new Remedy("make the faces of '" + material.name() + "' thicker", "wood and weight")));
  }

  private String text(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH).text(job.unit());
  }

  private static double allowed(Face face, Sourced over) {
    return face.clear() / over.number();
  }

  private boolean holds(Face face) {
    double sag = sag(face).value().value();
    return sag <= allowed(face, read.limits().firstOver())
        && sag * read.limits().creep().number() <= allowed(face, read.limits().yearsOver());
  }

  /** Nothing where a rib along each end lies over all that a support reaches. */
  private Optional<Finding> hollow() {
    boolean ribbed = material.layers().stream().anyMatch(Layer::isRibs);
    return ribbed && !isCarriedByRibs() ? Optional.of(overHollow()) : Optional.empty();
  }

  private Finding overHollow() {
    List<Figure> shown =
        overSupport().map(face -> List.of(gives(face), stressed(face))).orElse(List.of());
    String far =
        shown.isEmpty()
            ? ""
            : ", and half way between two ribs a strip of it as wide as a pin reaches would give way by %s, stressed to %s, %s: do not count on it"
                .formatted(alike.text(shown.getFirst()), alike.text(shown.getLast()), UNKNOWN);
    return alike.finding(
        Severity.DOUBT,
        "hollow-over-support",
        "%s: no rib is sure to lie over the supports, which press on the lower face alone%s"
            .formatted(alike.names(), far),
        shown,
        List.of(
            new Remedy(
                "glue a solid block, or a rib, between the faces over each support, and wherever a screw, a joint or a cleat holds; what is worked out for the shelf counts on them",
                "blocks and glue")));
  }

  private Optional<Face> overSupport() {
    return pin.isPresent() && !isCarriedByRibs() ? bottom() : Optional.empty();
  }

  /** Ribs from front to back stand along both ends of it. */
  private boolean isCarriedByRibs() {
    return bottom()
        .filter(face -> face.ribs().turn() == Turn.ACROSS)
        .flatMap(face -> face.ribs().rib())
        .filter(thick -> pin.filter(p -> p.reach().number() <= thick.mm()).isPresent())
        .isPresent();
  }

  private Figure sag(Face face) {
    List<Input> inputs = new ArrayList<>(pressing(face));
    inputs.addAll(bending(face));
    return figure(
        "face-sag",
        "sag of the upper face between ribs",
        Quantity.of(
            5 * pressure(face) * Math.pow(face.clear(), 4) / (384 * face.stiffness()),
            QuantityUnit.LENGTH),
        "5 (q / D + g) l^4 / (384 E t³ / 12)",
        inputs);
  }

  private Figure years(Face face) {
    Figure now = sag(face);
    Sourced creep = read.limits().creep();
    return figure(
        "face-sag-years",
        "sag of the upper face between ribs after years",
        Quantity.of(creep.number() * now.value().value(), QuantityUnit.LENGTH),
        "k s",
        List.of(
            creep.input("k", "sag after years over sag at first"),
            new Input("s", now.title(), now.value(), now.source())));
  }

  private Figure stress(Face face) {
    List<Input> inputs = new ArrayList<>(pressing(face));
    inputs.addAll(bending(face));
    double section = face.thickness() * face.thickness() / 6;
    return figure(
        "face-stress",
        "bending stress in the upper face between ribs, " + UNKNOWN,
        Quantity.of(
            pressure(face) * face.clear() * face.clear() / 8 / section, QuantityUnit.STRESS),
        "(q / D + g) l² / (8 t² / 6)",
        inputs);
  }

  private Figure gives(Face face) {
    double wide = pin.orElseThrow().reach().number();
    return figure(
        "face-over-support",
        "how far the lower face gives way over a support half way between ribs",
        Quantity.of(
            verdict.push() * Math.pow(face.clear(), 3) / (48 * face.stiffness() * wide),
            QuantityUnit.LENGTH),
        "r l³ / (48 E b t³ / 12)",
        pushed(face));
  }

  private Figure stressed(Face face) {
    double wide = pin.orElseThrow().reach().number();
    double section = wide * face.thickness() * face.thickness() / 6;
    return figure(
        "face-over-support-stress",
        "bending stress in the lower face over a support half way between ribs, " + UNKNOWN,
        Quantity.of(verdict.push() * face.clear() / 4 / section, QuantityUnit.STRESS),
        "r l / (4 b t² / 6)",
        pushed(face));
  }

  private List<Input> pushed(Face face) {
    List<Input> inputs = new ArrayList<>();
    inputs.add(
        new Input(
            "r",
            "load on the most loaded support",
            Quantity.of(verdict.push(), QuantityUnit.FORCE),
            PlateFigures.PLATE));
    inputs.add(pin.orElseThrow().reach().input("b", "reach of the pin, as wide as the strip"));
    inputs.addAll(bending(face));
    return inputs;
  }

  private static List<Input> bending(Face face) {
    return List.of(
        new Input(
            "l",
            "clear between two ribs, thickness of a rib over its share less its thickness",
            Quantity.of(face.clear(), QuantityUnit.LENGTH),
            Source.GEOMETRY),
        face.modulus().input("E", "modulus of elasticity of the face across the ribs"),
        new Input("t", "thickness of the face", Quantity.of(face.of().thickness()), Source.STATED));
  }

  private List<Input> pressing(Face face) {
    return List.of(
        new Input("q", read.load().title(), read.load().value(), read.load().source()),
        new Input(
            "D",
            "how deep the load stands, in a row where it may all stand in one",
            Quantity.of(verdict.shelf().cases().stands(), QuantityUnit.LENGTH),
            Source.GEOMETRY),
        new Input(
            "g",
            "the face's own weight",
            Quantity.of(KPA_PER_MPA * own(face), QuantityUnit.AREA_LOAD),
            Reference.substances().get(face.of().of()).source()));
  }

  private double pressure(Face face) {
    return read.load().value().value() / verdict.shelf().cases().stands() + own(face);
  }

  private static double own(Face face) {
    double density = Reference.substances().get(face.of().of()).density().typical().value();
    return density * Gravity.STANDARD * face.thickness() / CUBIC_MM_PER_CUBIC_M;
  }

  private Figure figure(
      String id, String title, Quantity value, String formula, List<Input> inputs) {
    return new Figure(read.prefix() + "/" + id, title, value, formula, inputs, STRIP);
  }
}
