package fourpin.strength;

import fourpin.casework.Finding.Remedy;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.Section.Layer;
import fourpin.strength.Section.Matter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What would keep a shelf within its limits, each computed anew. */
final class ShelfCures {

  private static final double GRAVITY = 9.80665;

  /** Strips are tried in steps that a saw is set to, up to so many times the shelf's thickness. */
  private static final Length STEP_INCHES = Length.inches(1, 4);

  private static final Length STEP_METRIC = Length.mm(5);
  private static final int TALLEST_STRIP = 4;

  private final Job job;
  private final ShelfOnSupports shelf;
  private final Material material;

  ShelfCures(Job job, ShelfOnSupports shelf, Material material) {
    this.job = job;
    this.shelf = shelf;
    this.material = material;
  }

  List<Remedy> all() {
    List<Remedy> cures = new ArrayList<>();
    thicker().ifPresent(cures::add);
    if (material.kind() != Kind.GLASS) {
      doubled().ifPresent(cures::add);
      strip().ifPresent(cures::add);
    }
    partition().ifPresent(cures::add);
    cures.add(lessLoad());
    return cures;
  }

  /** The thinnest of the job's other materials that holds. */
  private Optional<Remedy> thicker() {
    boolean glass = material.kind() == Kind.GLASS;
    return job.materials().stream()
        .filter(m -> (m.kind() == Kind.GLASS) == glass)
        .filter(m -> m.thickness().isMoreThan(material.thickness()))
        .sorted(Comparator.comparing(Material::thickness))
        .flatMap(
            m ->
                cure(
                    "make it of '" + m.name() + "', " + job.style().text(m.thickness()),
                    plain(Matters.of(m), m.thickness()))
                    .stream())
        .findFirst();
  }

  private Optional<Remedy> doubled() {
    return cure(
        "glue two layers of '" + material.name() + "' together",
        plain(Matters.of(material), material.thickness().times(2)));
  }

  /** The shelf without strips, over its whole depth. */
  private Section plain(Matter matter, Length thickness) {
    double depth = shelf.section().depth();
    return new Section(List.of(new Layer("shelf", matter, depth, thickness.mm(), 0, 0)));
  }

  /** The lowest strip of one of the job's boards that holds: in front, else front and back. */
  private Optional<Remedy> strip() {
    return boards().flatMap(board -> strips(board, false).or(() -> strips(board, true)));
  }

  private Optional<Material> boards() {
    return job.materials().stream().filter(m -> m.kind() == Kind.BOARD).findFirst();
  }

  private Optional<Remedy> strips(Material board, boolean both) {
    if (panel(board, both) <= 0) {
      return Optional.empty();
    }
    Length step = job.unit().customary() ? STEP_INCHES : STEP_METRIC;
    Length tallest = material.thickness().times(TALLEST_STRIP);
    Length height = step.times(material.thickness().wholeTimes(step) + 1);
    for (; tallest.isAtLeast(height); height = height.plus(step)) {
      Optional<Remedy> cure = cure(words(board, height, both), stripped(board, height, both));
      if (cure.isPresent()) {
        return cure;
      }
    }
    return Optional.empty();
  }

  private String words(Material board, Length height, boolean both) {
    return "glue a strip of '%s', %s x %s, to the front edge%s over its whole length"
        .formatted(
            board.name(),
            job.style().number(board.thickness()),
            job.style().text(height),
            both ? " and one to the back edge" : "");
  }

  /** What is left of the shelf between the strips, front to back, mm. */
  private double panel(Material board, boolean both) {
    return shelf.section().depth() - (both ? 2 : 1) * board.thickness().mm();
  }

  private Section stripped(Material board, Length height, boolean both) {
    double strip = board.thickness().mm();
    double panel = panel(board, both);
    Matter wood = Matters.of(board);
    List<Layer> layers = new ArrayList<>();
    layers.add(
        new Layer("shelf", Matters.of(material), panel, material.thickness().mm(), strip, 0));
    layers.add(new Layer("front strip", wood, strip, height.mm(), 0, 0));
    if (both) {
      layers.add(new Layer("back strip", wood, strip, height.mm(), strip + panel, 0));
    }
    return new Section(layers);
  }

  /** A partition of the shelf's own material in the middle. */
  private Optional<Remedy> partition() {
    LoadedShelf loaded = shelf.loaded();
    LoadedShelf half = loaded.over((loaded.span() - material.thickness().mm()) / 2);
    return half.span() > 0 && shelf.limits().holds(half)
        ? Optional.of(
            new Remedy(
                "put a partition in the middle: " + sags(half),
                "one more upright and its rows; twice as many shelves of half the length"))
        : Optional.empty();
  }

  private Remedy lessLoad() {
    double largest = shelf.limits().largestLoad(shelf.loaded());
    Quantity load = Quantity.of(largest, QuantityUnit.LINE_LOAD);
    return new Remedy(
        largest > 0
            ? "keep the load to " + load.textAtMost(job.unit())
            : "choose another shelf: its own weight alone is too much",
        "room for less");
  }

  private Optional<Remedy> cure(String what, Section section) {
    LoadedShelf cured = shelf.loaded().of(section);
    if (!shelf.limits().holds(cured)) {
      return Optional.empty();
    }
    return Optional.of(new Remedy(what + ": " + sags(cured), weight(cured)));
  }

  private String sags(LoadedShelf cured) {
    double sag = cured.sag();
    return "sag %s now, %s after years"
        .formatted(text(sag), text(sag * shelf.limits().creep().number()));
  }

  private String weight(LoadedShelf cured) {
    double more = (cured.section().weight() - shelf.section().weight()) * cured.length() / GRAVITY;
    String amount = Quantity.of(Math.abs(more), QuantityUnit.MASS).text(job.unit());
    return amount + (more < 0 ? " lighter" : " heavier") + ", each shelf";
  }

  private String text(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH).text(job.unit());
  }
}
