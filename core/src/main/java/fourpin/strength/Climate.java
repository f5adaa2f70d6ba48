package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.reference.Substance;
import fourpin.reference.Substance.Family;
import fourpin.reference.WoodMovement;
import fourpin.strength.wood.Moisture;
import fourpin.strength.wood.Moisture.Way;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** How solid parts of one case move over the year of its place; along the grain hardly at all. */
final class Climate {

  private static final String ALONG = "shrinkage along the grain";

  /** By what the change of moisture is divided where Table 13-5 does not hold. */
  private static final String GREEN = "(30 (100 / S - 1) + m₀)";

  private static final Source BY_SHRINKAGE =
      new Source(
          "Wood Handbook FPL-GTR-190 (2010)",
          "Eq. 13-2 in its form by shrinkage, beyond 6 to 14 % of moisture",
          Source.Standing.FROM_MEMORY);

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;
  private final String id;

  Climate(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
    this.id = Figure.id(built.order().name());
  }

  /** Moistures and movements; nothing for a case without solid parts. */
  List<Figure> figures() {
    Map<String, Part> moving = moving();
    List<Figure> all = new ArrayList<>();
    if (!moving.isEmpty()) {
      all.addAll(List.of(bench(), dry(), damp()));
    }
    moving.values().forEach(part -> all.addAll(movements(part)));
    breathes().ifPresent(all::add);
    return all;
  }

  /** By how much a case grows wider whose top is solid, its grain running from side to side. */
  private Optional<Figure> breathes() {
    return movement(built.part("T")).map(_ -> breathes(built.outside().size(Axis.X).mm()));
  }

  private Figure breathes(double width) {
    Sourced along = Reference.constant(ALONG).sourced();
    return new Figure(
        id + "/width-breathes",
        "by how much the case grows wider along the grain of its top, in the dampest month",
        Quantity.of(width * breath(), QuantityUnit.LENGTH),
        "W S max(0, m - m₀) / 3000",
        List.of(
            new Input("W", "width", Quantity.of(width, QuantityUnit.LENGTH), Source.GEOMETRY),
            along.input("S", "shrinkage along the grain, per cent from 30 % of moisture to none"),
            new Input("m", damp().title(), damp().value(), damp().source()),
            new Input("m₀", bench().title(), bench().value(), bench().source())),
        along.source());
  }

  /** As a share of the width; air that never gets damper than the shop's lets nothing grow. */
  private double breath() {
    double moister = Math.max(0, damp().value().value() - bench().value().value());
    return Reference.constant(ALONG).value() / 100 / Moisture.FIBRE_SATURATION * moister;
  }

  /**
   * How much wider a span grows over the year than a shelf in it, mm: solid shelves grow with a
   * solid case.
   */
  double apart(Part shelf, double span) {
    boolean caseAlone = movement(built.part("T")).isPresent() && movement(shelf).isEmpty();
    return caseAlone ? span * breath() : 0;
  }

  /** Solid shelves that swell by more than the play at their back, and strips across their ends. */
  List<Finding> findings() {
    Length play = settings.length(Setting.BACK_PLAY);
    Stream<Finding> jams =
        moving().values().stream()
            .filter(part -> part.role() == Part.Role.SHELF)
            .filter(part -> swells(part).value().value() > play.mm())
            .map(part -> jams(part, play));
    List<Finding> strips = new EndStrips(job, built.order().name(), this).of(built.parts());
    return Stream.of(isDamp(), jams, strips.stream()).flatMap(all -> all).toList();
  }

  /** That a shelf would swell too much if it were of another material, and does not as it is. */
  String swelling(Part shelf, Material other) {
    Length play = settings.length(Setting.BACK_PLAY);
    double then = swells(shelf, other);
    return shelf.role() != Part.Role.SHELF
            || then <= play.mm()
            || swells(shelf, job.material(shelf.material())) > play.mm()
        ? ""
        : "; it then swells by %s over its depth in the dampest month, and %s are left behind it: set back-play to more"
            .formatted(
                Quantity.of(then, QuantityUnit.LENGTH).text(job.unit()), job.style().text(play));
  }

  /** Over the width that the part has, mm; 0 for what does not move. */
  private double swells(Part part, Material of) {
    double change =
        Reference.movement()
            .find(of.of())
            .map(
                wood ->
                    Moisture.change(
                        wood, way(), width(part), bench().value().value(), damp().value().value()))
            .orElse(0.0);
    return Math.max(0, change);
  }

  /** Wood creeps more in damp air; not every board may be used there. */
  private Stream<Finding> isDamp() {
    ServiceClass air = ServiceClass.of(settings);
    return air == ServiceClass.FIRST ? Stream.of() : Stream.of(isDamp(air));
  }

  private Finding isDamp(ServiceClass air) {
    double humidity = settings.number(Setting.HUMIDITY_HIGH);
    List<String> unfit = unfit(air);
    return new Finding(
        unfit.isEmpty() ? Severity.DOUBT : Severity.ERROR,
        "damp-place",
        "air of "
            + Quantity.of(humidity, QuantityUnit.PER_CENT).text(job.unit())
            + " is service class "
            + air.number()
            + " of EN 1995-1-1, if it is so damp for more than a few weeks a year: "
            + creeps(air)
            + boards(unfit),
        List.of(),
        Place.of(built.order().name(), "B", built.part("B").box()),
        List.of(
            new Remedy("dry the place, and set humidity-high to what it then is", "a dehumidifier"),
            new Remedy(
                "take boards that are sold for damp rooms (EN 312, EN 622 and EN 636 name them: from"
                    + " memory), and set "
                    + (isByEurocode()
                        ? "creep-rule: handbook with creep-panel and creep-solid as"
                        : "creep-rule: eurocode, or creep-panel and creep-solid to what")
                    + " their makers tell for such air",
                "dearer boards")));
  }

  /** What Eurocode 5 has carry no load that stays in such air. */
  private List<String> unfit(ServiceClass air) {
    return whereOf(of -> EurocodeMargins.duration(of, air).isEmpty());
  }

  /** Of which there is a part of the case; backs carry no load. */
  private List<String> whereOf(Predicate<Substance> others) {
    return built.parts().stream()
        .filter(part -> part.role() != Part.Role.BACK)
        .map(Part::material)
        .distinct()
        .map(job::material)
        .filter(of -> others.test(Matters.substance(of)))
        .map(of -> "'" + of.name() + "' (" + of.of() + ")")
        .toList();
  }

  private static String boards(List<String> unfit) {
    return unfit.isEmpty()
        ? "; boards for dry rooms swell and lose strength, and those for damp rooms are taken"
        : "; Eurocode 5 has no strength for %s under loads that stay in such air: where bending is held against one, that is of drier air, and too much"
            .formatted(String.join(", ", unfit));
  }

  private boolean isByEurocode() {
    return settings.choice(Setting.CREEP_RULE).equals("eurocode");
  }

  private String creeps(ServiceClass air) {
    List<String> beyond =
        whereOf(of -> of.family() != Family.GLASS && Matters.creepingAs(of.family(), air) != air);
    return !isByEurocode()
        ? "wood and panels creep more there than sags after years count, unless creep-panel and"
            + " creep-solid are of such air"
        : beyond.isEmpty()
            ? "sags after years count that wood and panels creep more there"
            : "Eurocode 5 has no factor for %s in such air: sags after years count that of the dampest air that it has one for, and come out too small"
                .formatted(String.join(", ", beyond));
  }

  private Finding jams(Part shelf, Length play) {
    Figure swells = swells(shelf);
    return new Finding(
        Severity.DOUBT,
        "shelf-swells",
        "shelf %s swells by %s over its depth in the dampest month; %s are left behind it"
            .formatted(shelf.mark(), swells.value().text(job.unit()), job.style().text(play)),
        List.of(swells),
        Place.of(built.order().name(), shelf.mark(), shelf.box()),
        List.of(
            new Remedy(
                "set back-play to "
                    + swells.value().text(job.unit())
                    + " or more, so that it has room at the back",
                "a narrower shelf"),
            new Remedy("cut it when the air is as damp as it gets there", "waiting"),
            new Remedy("use quarter-sawn boards and set boards-sawn: quarter", "dearer wood")));
  }

  /** The first of the solid parts of each material and width, by what makes them alike. */
  private Map<String, Part> moving() {
    Map<String, Part> moving = new LinkedHashMap<>();
    for (Part part : built.parts()) {
      switch (part.role()) {
        case SHELF, FIXED_SHELF, SIDE, PARTITION, TOP, BOTTOM -> {
          if (movement(part).isPresent()) {
            moving.putIfAbsent(part.role() + part.material() + part.width(), part);
          }
        }
        case BACK, KICK, BLOCK, STILE, RAIL, STRIP, CLEAT -> {}
      }
    }
    return moving;
  }

  private Optional<WoodMovement> movement(Part part) {
    return Reference.movement().find(job.material(part.material()).of());
  }

  private Figure bench() {
    return moisture("bench", "in the shop", Setting.BENCH_HUMIDITY);
  }

  private Figure dry() {
    return moisture("dry", "in the driest month", Setting.HUMIDITY_LOW);
  }

  private Figure damp() {
    return moisture("damp", "in the dampest month", Setting.HUMIDITY_HIGH);
  }

  private Figure moisture(String when, String words, Setting humidity) {
    double celsius = settings.number(Setting.ROOM_TEMPERATURE);
    double percent = Moisture.equilibrium(celsius, settings.number(humidity));
    List<Input> inputs = new ArrayList<>();
    inputs.add(
        new Input(
            "H",
            humidity.meaning(),
            Quantity.of(settings.number(humidity), QuantityUnit.PER_CENT),
            settings.source(humidity)));
    inputs.add(
        new Input(
            "T",
            Setting.ROOM_TEMPERATURE.meaning(),
            Quantity.of(celsius, QuantityUnit.RATIO),
            settings.source(Setting.ROOM_TEMPERATURE)));
    Moisture.curves(celsius)
        .forEach((symbol, curve) -> inputs.add(curve.input(symbol, "at the temperature T")));
    return new Figure(
        id + "/moisture-" + when,
        "moisture that wood comes to " + words,
        Quantity.of(percent, QuantityUnit.PER_CENT),
        Moisture.EQUILIBRIUM,
        inputs,
        Moisture.source());
  }

  /** Nothing for what does not move. */
  List<Figure> moving(Part part) {
    return movement(part).map(_ -> movements(part)).orElse(List.of());
  }

  private List<Figure> movements(Part part) {
    return List.of(swells(part), shrinks(part));
  }

  /** Nothing in air that never gets damper than the shop's. */
  private Figure swells(Part part) {
    Figure damp = damp();
    return new Figure(
        id(part, "swells"),
        "by how much %s %s swells over its width".formatted(part.name(), part.mark()),
        Quantity.of(Math.max(0, growth(part, damp)), QuantityUnit.LENGTH),
        isEven(damp) ? "max(0, W C (m - m₀))" : "max(0, W (m - m₀) / " + GREEN + ")",
        change(part, damp),
        source(part, damp));
  }

  /** Nothing in air that never gets drier than the shop's. */
  private Figure shrinks(Part part) {
    Figure dry = dry();
    return new Figure(
        id(part, "shrinks"),
        "by how much %s %s shrinks over its width".formatted(part.name(), part.mark()),
        Quantity.of(Math.max(0, -growth(part, dry)), QuantityUnit.LENGTH),
        isEven(dry) ? "max(0, W C (m₀ - m))" : "max(0, W (m₀ - m) / " + GREEN + ")",
        change(part, dry),
        source(part, dry));
  }

  private boolean isEven(Figure then) {
    return Moisture.isEven(bench().value().value(), then.value().value());
  }

  private Source source(Part part, Figure then) {
    return isEven(then) ? wood(part).source() : BY_SHRINKAGE;
  }

  /** Nothing for what does not move. */
  Optional<Figure> shrinking(Part part) {
    return movement(part).map(_ -> shrinks(part));
  }

  private String id(Part part, String what) {
    return id + "/" + part.mark().toLowerCase(Locale.ROOT) + "/" + what;
  }

  private WoodMovement wood(Part part) {
    return movement(part).orElseThrow();
  }

  private Way way() {
    return settings.choice(Setting.BOARDS_SAWN).equals("quarter") ? Way.RADIAL : Way.TANGENTIAL;
  }

  private static double width(Part part) {
    return part.box().size(part.widthAxis()).mm();
  }

  /** Over its width, as it comes from the shop's air to another; negative if it shrinks. */
  private double growth(Part part, Figure then) {
    return Moisture.change(
        wood(part), way(), width(part), bench().value().value(), then.value().value());
  }

  private List<Input> change(Part part, Figure then) {
    WoodMovement wood = wood(part);
    Figure bench = bench();
    return List.of(
        new Input("W", "width", Quantity.of(width(part), QuantityUnit.LENGTH), Source.GEOMETRY),
        isEven(then)
            ? new Input(
                "C",
                "change for each per cent of moisture, " + wood.name(),
                Quantity.of(Moisture.each(wood, way()), QuantityUnit.RATIO),
                wood.source())
            : new Input(
                "S",
                "shrinkage from green to ovendry, " + wood.name(),
                Quantity.of(Moisture.shrinkage(wood, way()), QuantityUnit.PER_CENT),
                wood.source()),
        new Input("m", then.title(), then.value(), then.source()),
        new Input("m₀", bench.title(), bench.value(), bench.source()));
  }
}
