package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Part;
import fourpin.job.CaseOrder;
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

  /** Loads under this share of the stated one are no cure: nobody builds a shelf for them. */
  private static final double LEAST_SHARE = 0.1;

  /** For strips where the job has no boards: a usual hardwood at a usual thickness. */
  private static final String STAND_IN = "oak, white";

  private final Job job;
  private final ShelfOnSupports shelf;
  private final Part part;
  private final Material material;

  ShelfCures(Job job, ShelfOnSupports shelf, Part part) {
    this.job = job;
    this.shelf = shelf;
    this.part = part;
    this.material = job.material(part.material());
  }

  List<Remedy> all() {
    List<Remedy> cures = new ArrayList<>();
    thicker().ifPresent(cures::add);
    if (material.kind() != Kind.GLASS) {
      doubled().ifPresent(cures::add);
      strip().ifPresent(cures::add);
    }
    partitions().ifPresent(cures::add);
    lessLoad().ifPresent(cures::add);
    return cures;
  }

  /** What the job file can't say is done by hand, and the plan does not count it. */
  private String byHand() {
    return part.role() == Part.Role.FIXED_SHELF
        ? " (by hand: a job file states this for all panels of a case only, so it is in no cut list)"
        : "";
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
                    "make it of '"
                        + m.name()
                        + "', "
                        + job.style().text(m.thickness())
                        + gluedUp(m)
                        + byHand(),
                    plain(Matters.of(m), m.thickness()))
                    .stream())
        .findFirst();
  }

  /** Boards narrower than the shelf have to be joined first. */
  private String gluedUp(Material wood) {
    Length depth = part.box().size(Axis.Y);
    boolean wide =
        job.boards().stream()
            .filter(b -> b.material().equals(wood.name()))
            .anyMatch(b -> b.width().isAtLeast(depth));
    return wood.kind() == Kind.BOARD && !wide ? ", glued up from narrower boards" : "";
  }

  /** Two layers of its own material, or of the first other sheet material with which it holds. */
  private Optional<Remedy> doubled() {
    return sheets().stream().flatMap(m -> doubled(m).stream()).findFirst();
  }

  private Optional<Remedy> doubled(Material sheet) {
    return cure(
        "glue two layers of '" + sheet.name() + "' together" + byHand(),
        plain(Matters.of(sheet), sheet.thickness().times(2)));
  }

  /** The shelf's own material, then the job's thicker sheets, thinnest first. */
  private List<Material> sheets() {
    List<Material> all = new ArrayList<>(List.of(material));
    job.materials().stream()
        .filter(m -> m.kind() == Kind.SHEET && m.thickness().isMoreThan(material.thickness()))
        .sorted(Comparator.comparing(Material::thickness))
        .forEach(all::add);
    return all;
  }

  /** The shelf without strips, over its whole depth. */
  private Section plain(Matter matter, Length thickness) {
    double depth = shelf.section().depth();
    return new Section(List.of(new Layer("shelf", matter, depth, thickness.mm(), 0, 0)));
  }

  /**
   * The lowest strip of one of the job's boards that holds: in front, else front and back; on its
   * own material, else on a thicker one.
   */
  private Optional<Remedy> strip() {
    Material board = board();
    return sheets().stream()
        .flatMap(sheet -> strips(sheet, board, false).or(() -> strips(sheet, board, true)).stream())
        .findFirst();
  }

  private Material board() {
    return job.materials().stream()
        .filter(m -> m.kind() == Kind.BOARD)
        .findFirst()
        .orElseGet(this::standIn);
  }

  private Material standIn() {
    return new Material(
        STAND_IN,
        Kind.BOARD,
        STAND_IN,
        job.unit().customary() ? Length.inches(3, 4) : Length.mm(20),
        Optional.empty(),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty());
  }

  private Optional<Remedy> strips(Material sheet, Material board, boolean both) {
    if (panel(board, both) <= 0) {
      return Optional.empty();
    }
    Length step = job.unit().customary() ? STEP_INCHES : STEP_METRIC;
    Length tallest = sheet.thickness().times(TALLEST_STRIP);
    Length height = step.times(sheet.thickness().wholeTimes(step) + 1);
    for (; tallest.isAtLeast(height); height = height.plus(step)) {
      Optional<Remedy> cure =
          cure(words(sheet, board, height, both), stripped(sheet, board, height, both));
      if (cure.isPresent()) {
        return cure;
      }
    }
    return Optional.empty();
  }

  private String words(Material sheet, Material board, Length height, boolean both) {
    return "%sglue a strip of '%s'%s, %s x %s, to the front edge%s over its whole length%s"
        .formatted(
            sheet.equals(material) ? "" : "make it of '" + sheet.name() + "' and ",
            board.name(),
            job.materials().contains(board) ? "" : " (the job states no boards yet)",
            job.style().number(board.thickness()),
            job.style().text(height),
            both ? " and one to the back edge" : "",
            byHand());
  }

  /** What is left of the shelf between the strips, front to back, mm. */
  private double panel(Material board, boolean both) {
    return shelf.section().depth() - (both ? 2 : 1) * board.thickness().mm();
  }

  private Section stripped(Material sheet, Material board, Length height, boolean both) {
    double strip = board.thickness().mm();
    double panel = panel(board, both);
    Matter wood = Matters.of(board);
    List<Layer> layers = new ArrayList<>();
    layers.add(new Layer("shelf", Matters.of(sheet), panel, sheet.thickness().mm(), strip, 0));
    layers.add(new Layer("front strip", wood, strip, height.mm(), 0, 0));
    if (both) {
      layers.add(new Layer("back strip", wood, strip, height.mm(), strip + panel, 0));
    }
    return new Section(layers);
  }

  /** The fewest partitions, of the shelf's own thickness, between which it holds. */
  private Optional<Remedy> partitions() {
    double longest = shelf.limits().longestSpan(shelf.loaded());
    for (int count = 1; count < CaseOrder.MOST_BAYS; count++) {
      LoadedShelf between = between(count);
      if (between.span() > 0 && shelf.limits().holds(between)) {
        return Optional.of(partitions(count, between, longest));
      }
    }
    return Optional.empty();
  }

  private LoadedShelf between(int partitions) {
    LoadedShelf loaded = shelf.loaded();
    double panels = partitions * material.thickness().mm();
    return loaded.over((loaded.span() - panels) / (partitions + 1));
  }

  private Remedy partitions(int count, LoadedShelf between, double longest) {
    String put =
        count == 1
            ? "put a partition in the middle"
            : "put " + count + " partitions in, spread evenly";
    return new Remedy(
        put
            + ": "
            + sags(between)
            + "; it holds up to a span of "
            + Quantity.of(longest, QuantityUnit.LENGTH).textAtMost(job.unit()),
        count == 1
            ? "one more upright and its rows; twice as many shelves of half the length"
            : count + " more uprights and their rows; " + (count + 1) + " times as many shelves");
  }

  /** Nothing where the shelf hardly carries itself: a load near nothing is no use. */
  private Optional<Remedy> lessLoad() {
    double largest = shelf.limits().largestLoad(shelf.loaded());
    Quantity load = Quantity.of(largest, QuantityUnit.LINE_LOAD);
    return largest < LEAST_SHARE * shelf.load().value().value()
        ? Optional.empty()
        : Optional.of(
            new Remedy("keep the load to " + load.textAtMost(job.unit()), "room for less"));
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
