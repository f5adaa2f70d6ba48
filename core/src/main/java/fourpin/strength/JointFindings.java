package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.reference.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Fixed shelves, bottoms and tops whose joints carry more than wood and screws are allowed. */
final class JointFindings {

  private final Job job;
  private final List<Part> shelves;
  private final JointFigures figures;
  private final String caseName;

  /**
   * @param shelves alike; at least one
   */
  JointFindings(Job job, String caseName, List<Part> shelves, JointFigures figures) {
    this.job = job;
    this.caseName = caseName;
    this.shelves = shelves;
    this.figures = figures;
  }

  List<Finding> all() {
    return (figures.screwed() ? screws() : bearing()).stream().toList();
  }

  private Optional<Finding> bearing() {
    Figure pressure = figures.bearing();
    Figure allowed = figures.allowedBearing();
    return value(pressure) <= value(allowed)
        ? Optional.empty()
        : Optional.of(
            finding(
                sure(Severity.ERROR),
                "%s: %sthe end presses on its %s with %s; %s are allowed"
                    .formatted(
                        names(),
                        lying(figures.pressing()),
                        figures.cut(),
                        text(pressure, allowed),
                        text(allowed, pressure)),
                List.of(pressure, allowed),
                Stream.concat(deeper(), Stream.of(cleat())).toList()));
  }

  /** Such that it holds, as a job file writes it; nothing where that leaves too little wood. */
  private Stream<Remedy> deeper() {
    double needed = figures.depth() * value(figures.bearing()) / value(figures.allowedBearing());
    double step = (job.unit() == Unit.INCH ? Length.inches(1, 16) : Length.mm(1)).mm();
    long steps = (long) Math.ceil(needed / step);
    return steps * step > deepest() ? Stream.of() : Stream.of(deeper(steps));
  }

  /** Half the panel, which the shelves of two bays share where a partition stands between, mm. */
  private double deepest() {
    boolean shared = role() == Part.Role.FIXED_SHELF && order().bays().size() > 1;
    double half = job.material(order().material()).thickness().mm() / 2;
    return shared ? half / 2 : half;
  }

  private Remedy deeper(long steps) {
    Length deep = job.unit() == Unit.INCH ? Length.inches(steps, 16) : Length.mm(steps);
    String text = job.style().text(deep);
    return new Remedy(
        "cut them %s deep: joints: %s: {kind: %s, depth: %s}"
            .formatted(text, key(), figures.cut(), text),
        "less wood behind them; a longer part");
  }

  /** Over both codes it fails; over one of them it is a doubt. */
  private Optional<Finding> screws() {
    Figure load = figures.screwLoad();
    List<Figure> allowed = figures.allowedScrew();
    long over = allowed.stream().filter(a -> value(load) > value(a)).count();
    return over == 0
        ? Optional.empty()
        : Optional.of(
            screws(load, allowed, over == allowed.size() ? Severity.ERROR : Severity.DOUBT));
  }

  private Finding screws(Figure load, List<Figure> allowed, Severity severity) {
    String limits =
        allowed.stream().map(a -> text(a) + " " + code(a)).collect(Collectors.joining(" and "));
    List<Figure> shown = new ArrayList<>(List.of(load));
    shown.addAll(allowed);
    return finding(
        sure(severity),
        "%s: %sthe most loaded screw of an end carries %s; in end grain, for loads that stay, %s are allowed"
            .formatted(names(), lying(figures.pulling()), text(load), limits),
        shown,
        remedies(allowed));
  }

  private static String code(Figure allowed) {
    return allowed.id().endsWith("nds") ? "by the NDS" : "by Eurocode 5";
  }

  private List<Remedy> remedies(List<Figure> allowed) {
    double least = allowed.stream().mapToDouble(JointFindings::value).min().orElseThrow();
    int needed = figures.screwsFor(least);
    List<Remedy> remedies = new ArrayList<>();
    remedies.add(
        new Remedy(
            "let the ends into %1$s, which carry by wood on wood: joints: %2$s: %3$s"
                .formatted(cuts(), key(), cut()),
            "a %s in each side".formatted(cut())));
    spacing(needed)
        .ifPresent(
            apart ->
                remedies.add(
                    new Remedy(
                        "drive " + needed + " screws into each end: set screw-spacing to " + apart,
                        "more screws, in the case's other joints too",
                        Optional.of(new Stated.OfSetting(Setting.SCREW_SPACING, apart)))));
    remedies.add(cleat());
    return remedies;
  }

  /** As a job file writes it, rounded down; nothing where screws would stand too close. */
  private Optional<String> spacing(int needed) {
    double apart = figures.along() / needed;
    Length least = Length.mm(40);
    Length set =
        job.unit() == Unit.INCH
            ? Length.inches((long) Math.floor(apart / Length.inches(1, 4).mm()), 4)
            : Length.mm((long) Math.floor(apart));
    return set.isLessThan(least) ? Optional.empty() : Optional.of(job.style().text(set));
  }

  /** On solid sides it lies across their grain, and they move over the year. */
  private Remedy cleat() {
    return new Remedy(
        sidesMove()
            ? "screw a cleat to the sides under each end, front to back: glue at its front end only,"
                + " and the screws behind in slots along it, since solid sides move"
            : "glue and screw a cleat to the sides under each end, front to back",
        "two cleats; they show, and take height below");
  }

  private boolean sidesMove() {
    String of = job.material(order().material()).of();
    return Reference.movement().find(of).isPresent();
  }

  private CaseOrder order() {
    return job.cases().stream().filter(o -> o.name().equals(caseName)).findFirst().orElseThrow();
  }

  private Finding finding(
      Severity severity, String what, List<Figure> shown, List<Remedy> remedies) {
    Part first = shelves.getFirst();
    Place place = Place.of(caseName, first.mark(), first.box());
    return new Finding(severity, "joint-carries", what, shown, place, remedies);
  }

  private String lying(EndLoad load) {
    return load.of().equals(LoadCase.EVEN) ? "" : "with " + load.of().words(job.unit()) + ", ";
  }

  /** Of a bottom, which a kick carries too, and of a top, whose load is assumed: a doubt. */
  private Severity sure(Severity severity) {
    return switch (figures.carried().counted()) {
      case STATED, CASE -> severity;
      case WITHOUT_KICK, ASSUMED -> Severity.DOUBT;
    };
  }

  private Part.Role role() {
    return shelves.getFirst().role();
  }

  private String key() {
    return switch (role()) {
      case BOTTOM -> "bottom";
      case TOP -> "top";
      default -> "fixed-shelves";
    };
  }

  /** What may hold it: beyond a top the sides have no wood; other ends lie off theirs. */
  private String cut() {
    return role() == Part.Role.TOP ? "rabbet" : "dado";
  }

  private String cuts() {
    return role() == Part.Role.TOP ? "rabbets" : "dadoes";
  }

  private String names() {
    return switch (figures.carried().counted()) {
      case WITHOUT_KICK -> "the bottom, its kick not counted on";
      case ASSUMED -> "the top, under the load that top-load assumes";
      case CASE -> "the top, under what stands on it";
      case STATED -> fixed();
    };
  }

  private String fixed() {
    String marks = shelves.stream().map(Part::mark).collect(Collectors.joining(", "));
    return (shelves.size() == 1 ? "fixed shelf " : "fixed shelves ") + marks;
  }

  private static double value(Figure figure) {
    return figure.value().value();
  }

  private String text(Figure figure, Figure against) {
    return figure.value().textBeside(against.value(), job.unit());
  }

  private String text(Figure figure) {
    return figure.value().text(job.unit());
  }
}
