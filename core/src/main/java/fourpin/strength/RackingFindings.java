package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Gravity;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.Made.Piece;
import fourpin.strength.RackedCase.Hold;
import fourpin.strength.RackedLegs.Brace;
import fourpin.strength.frame.Frame;
import fourpin.strength.frame.FrameOnLegs;
import fourpin.strength.frame.Legs;
import fourpin.strength.frame.SwayFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cases that sway too far sideways, and what would hold them, each worked out anew. */
final class RackingFindings {

  private final Job job;
  private final BuiltCase built;
  private final RackedCase racked;
  private final Prices prices;
  private final Uprights uprights;
  private final BackPieces pieces;

  /**
   * @param above what stands on the case, N
   */
  RackingFindings(Job job, BuiltCase built, double above) {
    this.job = job;
    this.built = built;
    this.racked = new RackedCase(job, built, above);
    this.prices = new Prices(job);
    this.uprights = new Uprights(job, built);
    this.pieces = new BackPieces(job, built);
  }

  List<Finding> all(List<Figure> figures) {
    List<Finding> all = new ArrayList<>();
    if (racked.falls() || racked.sways()) {
      all.add(sways(figures));
    }
    solidBack().filter(_ -> racked.hold() == Hold.GLUED).ifPresent(m -> all.add(splits(m)));
    return all;
  }

  private Finding sways(List<Figure> figures) {
    return new Finding(
        racked.falls() ? Severity.ERROR : Severity.DOUBT,
        "case-sways",
        what(),
        figures,
        place(),
        remedies());
  }

  private String what() {
    if (racked.leansOverInTime()) {
      return (racked.legs().isPresent() ? "joints, back and kick" : "joints and back")
          + " do not hold the case up sideways: after years of creep what stands in it would lean it"
          + " over by itself, more and more"
          + (givesWayBelow() ? "; it gives way below its bottom first" : "");
    }
    String push = Quantity.of(racked.push(), QuantityUnit.FORCE).text(job.unit());
    String pushed = "pushed sideways by " + push + " at its top, the case ";
    return racked
        .sway()
        .map(
            sway ->
                pushed
                    + "sways by "
                    + text(sway, racked.allowed())
                    + "; "
                    + text(racked.allowed(), sway)
                    + " are allowed")
        .orElse(
            pushed
                + "leans by more than "
                + Quantity.of(100 * SwayFrame.MOST_LEAN, QuantityUnit.PER_CENT).text(job.unit())
                + " of its height, which breaks joints");
  }

  /** Whether its legs alone hold less of what they carry than what stands on them. */
  private boolean givesWayBelow() {
    return racked.frame() instanceof FrameOnLegs(SwayFrame above, Legs legs)
        && legs.leaning() / legs.burden() < above.reserve();
  }

  private Place place() {
    Part.Role weak = givesWayBelow() ? Part.Role.KICK : Part.Role.BACK;
    Part part =
        built.parts().stream()
            .filter(p -> p.role() == weak)
            .findFirst()
            .orElseGet(() -> built.part("L"));
    return Place.of(built.order().name(), part.mark(), part.box());
  }

  private List<Remedy> remedies() {
    List<Tried> cures = new ArrayList<>();
    switch (racked.hold()) {
      case NO_BACK -> cures.add(back());
      case LOOSE -> cures.addAll(glue().stream().toList());
      case SCREWED -> {
        glue().ifPresent(cures::add);
        cures.add(closer());
      }
      case GLUED -> {}
    }
    cures.add(fixedShelves());
    racked.legs().ifPresent(legs -> cures.addAll(below(legs)));
    List<Remedy> remedies = new ArrayList<>(best(cures));
    remedies.add(
        new Remedy(
            "fasten it to the wall by its top and to the cases beside it: what holds it there is not counted",
            "screws; see the pull on anchors"));
    return remedies;
  }

  /** Those that hold, cheapest first; where none does, all that were tried. */
  private List<Remedy> best(List<Tried> cures) {
    boolean some = cures.stream().anyMatch(Tried::holds);
    return cures.stream()
        .filter(tried -> tried.holds() || !some)
        .map(Tried::cure)
        .sorted(Cure.CHEAPEST)
        .map(cure -> cure.remedy(job))
        .toList();
  }

  /** A cure, and whether the case then sways as little as it may. */
  private record Tried(Cure cure, boolean holds) {}

  private List<Tried> below(RackedLegs legs) {
    List<Tried> cures = new ArrayList<>();
    if (built.order().bottomJoint().kind() == Joint.Kind.BUTT) {
      cures.add(
          cure(
              "join the bottom in dadoes instead of butt joints",
              racked.withHousedBottom(),
              Optional.of(0.0),
              0,
              "dadoes",
              Optional.empty()));
    }
    legs.kick()
        .ifPresent(
            kick ->
                legs.brace()
                    .filter(_ -> BottomPlate.behind(built) != BottomPlate.Behind.BOARD)
                    .map(brace -> second(kick, brace))
                    .or(() -> legs.brace(uprights.material()).map(this::thick))
                    .ifPresent(cures::add));
    return cures;
  }

  /** No job states it besides blocks. */
  private Tried second(Part kick, Brace brace) {
    boolean free = BottomPlate.behind(built) == BottomPlate.Behind.NOTHING;
    return cure(
        "screw a second board like the kick between the sides under the back edge of the bottom"
            + (free ? ", and set behind-kick to board" : ""),
        racked.braced(2 * brace.stiffness()),
        new BehindKick(job, built).price(kick.box().size(Axis.X).mm()),
        new Masses(job).of(kick),
        "",
        Optional.<Stated>of(new Stated.OfSetting(Setting.BEHIND_KICK, "board")).filter(_ -> free));
  }

  private Tried thick(Brace brace) {
    return cure(
        "make the kick of '%s', which its screws hold in".formatted(uprights.material().name()),
        racked.braced(brace.stiffness()),
        Optional.empty(),
        0,
        "other stock",
        Optional.empty());
  }

  /** A back of solid wood must not be glued. */
  private Optional<Tried> glue() {
    return solidBack().isPresent()
        ? Optional.empty()
        : Optional.of(
            cure(
                "glue the back in all round",
                racked.held(Hold.GLUED, racked.spacing()),
                Optional.of(0.0),
                0,
                "it can't be taken out again",
                Optional.of(new Stated.OfSetting(Setting.BACK_FIXING, "glued"))));
  }

  private Tried closer() {
    Length half = settings().length(Setting.SCREW_SPACING).over(2);
    return cure(
        "put the screws of the back half as far apart, " + job.style().text(half),
        racked.held(Hold.SCREWED, half.mm()),
        Optional.of(0.0),
        0,
        "twice the screws",
        Optional.empty());
  }

  private Tried fixedShelves() {
    double price = 0;
    double weight = 0;
    boolean priced = true;
    double depth = built.part("B").box().size(Axis.Y).mm();
    for (var bay : built.bays()) {
      double width = bay.clear().size(Axis.X).mm();
      Optional<Double> one = prices.of(List.of(uprights.piece(depth)), width);
      priced &= one.isPresent();
      price += one.orElse(0.0);
      weight += uprights.weight(depth) * width / Gravity.STANDARD;
    }
    return cure(
        "put a fixed shelf more into each bay",
        racked.withFixedShelves(),
        priced ? Optional.of(price) : Optional.empty(),
        weight,
        "those shelves can't be moved",
        Optional.empty());
  }

  private Tried back() {
    return back(pieces.best());
  }

  private Tried back(BackPieces.Backed backed) {
    Material material = backed.taken().of();
    double area = racked.width() * racked.headroom();
    return cure(
        "put a back of '%s'%s on, %sscrewed all round%s"
            .formatted(
                material.name(),
                job.materials().contains(material) ? "" : " (the job states no thin sheet yet)",
                backed.widths().size() > 1 ? "a piece for each bay, " : "",
                backed.taken().words()),
        racked.withBack(material, backed.widths()),
        backed.taken().isTooLarge()
            ? Optional.empty()
            : prices.of(List.of(new Piece(material, racked.width())), racked.headroom()),
        area * material.thickness().mm() / 1e9 * Matters.of(material).density().number(),
        "",
        Optional.empty());
  }

  private Tried cure(
      String what,
      Frame frame,
      Optional<Double> price,
      double mass,
      String besides,
      Optional<Stated> stated) {
    String then =
        frame
            .sway(racked.push())
            .map(sway -> "sway " + text(sway) + (sway > racked.allowed() ? ", still too much" : ""))
            .orElse("it still falls over");
    boolean holds =
        frame.sway(racked.push()).filter(sway -> sway <= racked.allowed()).isPresent()
            && frame.reserve() >= racked.creep();
    return new Tried(
        new Cure(what + ": " + then, price, mass, besides, stated, Cure.Of.CASE), holds);
  }

  private Optional<Material> solidBack() {
    return built
        .order()
        .back()
        .map(back -> job.material(back.material()))
        .filter(m -> m.kind() == Material.Kind.BOARD);
  }

  private Finding splits(Material back) {
    return new Finding(
        Severity.DOUBT,
        "back-splits",
        "the back of '"
            + back.name()
            + "' is glued all round; solid wood moves over the year and may split or push the case apart",
        List.of(),
        place(),
        List.of(
            new Remedy(
                "set back-fixing: planned, and leave it free in its grooves",
                "it hardly holds the case square",
                Optional.of(new Stated.OfSetting(Setting.BACK_FIXING, "planned"))),
            new Remedy("make the back of plywood", "other stock")));
  }

  private Settings settings() {
    return built.order().settings();
  }

  private String text(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH).text(job.unit());
  }

  private String text(double mm, double against) {
    return Quantity.of(mm, QuantityUnit.LENGTH)
        .textBeside(Quantity.of(against, QuantityUnit.LENGTH), job.unit());
  }
}
