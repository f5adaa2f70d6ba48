package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.CaseOrder;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.Made.Layers;
import fourpin.strength.Made.Stripped;
import fourpin.strength.ShelfPlate.Prop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** What would keep a shelf within its limits, each bent anew as the plate that it would be. */
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
  private final ShelfReader reader;
  private final ShelfOnSupports shelf;
  private final Part part;
  private final Material material;
  private final Verdict verdict;
  private final Candidate now;
  private final CureCheck check;
  private final Prices prices;
  private final Uprights uprights;

  /**
   * @param verdict of the shelf as it is
   */
  ShelfCures(Job job, ShelfReader reader, Part part, Verdict verdict, CureCheck check) {
    this.job = job;
    this.reader = reader;
    this.shelf = reader.read(part);
    this.part = part;
    this.material = reader.material(part);
    this.verdict = verdict;
    this.now = verdict.shelf();
    this.check = check;
    this.prices = new Prices(job);
    this.uprights = reader.uprights();
  }

  /** The cheapest first; less load last, since it is no cure for who has the load. */
  List<Remedy> all() {
    List<Cure> cures = new ArrayList<>();
    thicker().ifPresent(cures::add);
    if (material.kind() != Kind.GLASS) {
      doubled().ifPresent(cures::add);
      strip(Stripped.FRONT).ifPresent(cures::add);
      strip(Stripped.FRONT_AND_BACK).ifPresent(cures::add);
      propped(Prop.FRONT_AND_BACK).ifPresent(cures::add);
      propped(Prop.BACK).ifPresent(cures::add);
    }
    partitions().ifPresent(cures::add);
    List<Remedy> remedies =
        new ArrayList<>(
            cures.stream().sorted(Cure.CHEAPEST).map(cure -> cure.remedy(job)).toList());
    lessLoad().ifPresent(remedies::add);
    return remedies;
  }

  /** What the job file can't say is done by hand, and the plan does not count it. */
  private String byHand() {
    return part.role() == Part.Role.FIXED_SHELF
        ? " (by hand: a job file states this for all panels of a case only, so it is in no cut list)"
        : "";
  }

  private double depth() {
    return shelf.section().depth();
  }

  /** The thinnest of the job's other materials that holds. */
  private Optional<Cure> thicker() {
    boolean glass = material.kind() == Kind.GLASS;
    return job.materials().stream()
        .filter(m -> (m.kind() == Kind.GLASS) == glass)
        .filter(m -> m.thickness().isMoreThan(material.thickness()))
        .sorted(Comparator.comparing(Material::thickness))
        .flatMap(m -> thicker(m).stream())
        .findFirst();
  }

  private Optional<Cure> thicker(Material thick) {
    String what =
        "make it of '"
            + thick.name()
            + "', "
            + job.style().text(thick.thickness())
            + gluedUp(thick)
            + byHand();
    return cure(
        what,
        Made.plain(thick, depth(), Layers.ONE),
        shelvesOf(Optional.of(thick.name()), Optional.empty()));
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
  private Optional<Cure> doubled() {
    return sheets().stream()
        .filter(m -> m.layers().isEmpty())
        .flatMap(m -> doubled(m).stream())
        .findFirst();
  }

  private Optional<Cure> doubled(Material sheet) {
    String what = "glue two layers of '" + sheet.name() + "' together" + byHand();
    return cure(what, Made.plain(sheet, depth(), Layers.TWO), doubledShelves(sheet));
  }

  /** Layers bend as their rows in the tables do, whatever the job states of a material itself. */
  private Optional<Stated> doubledShelves(Material sheet) {
    return Optional.<Stated>of(new Stated.ShelvesDoubled(sheet.name()))
        .filter(_ -> part.role() == Part.Role.SHELF)
        .filter(_ -> sheet.stiffness().isEmpty() && sheet.density().isEmpty());
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

  /** The lowest strip of one of the job's boards that holds, on the thinnest sheet that does. */
  private Optional<Cure> strip(Stripped edges) {
    Material board = board();
    return Made.panel(board, depth(), edges) <= 0
        ? Optional.empty()
        : sheets().stream().flatMap(sheet -> strip(sheet, board, edges).stream()).findFirst();
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

  private Optional<Cure> strip(Material sheet, Material board, Stripped edges) {
    Length step = job.unit().customary() ? STEP_INCHES : STEP_METRIC;
    return lowest(
            n -> Made.stripped(sheet, board, depth(), step.times(n), edges),
            (int) sheet.thickness().wholeTimes(step),
            (int) sheet.thickness().times(TALLEST_STRIP).wholeTimes(step))
        .map(steps -> strip(sheet, board, step.times(steps), edges));
  }

  private Cure strip(Material sheet, Material board, Length height, Stripped edges) {
    return cured(
        words(sheet, board, height, edges),
        Made.stripped(sheet, board, depth(), height, edges),
        job.materials().contains(board)
            ? shelvesOf(
                Optional.of(sheet.name()).filter(_ -> !sheet.equals(material)),
                Optional.of(strip(board, height, edges)))
            : Optional.empty());
  }

  /**
   * How many steps the lowest strip has that holds. A taller strip never sags more, so that halving
   * finds the lowest one that is near; only from that one on they are bent on the fine mesh.
   *
   * @param made with a strip of so many steps
   * @param low steps that are too few, or no strip
   */
  private Optional<Integer> lowest(IntFunction<Made> made, int low, int most) {
    if (most <= low || isFar(made.apply(most))) {
      return Optional.empty();
    }
    int far = low;
    int near = most;
    while (near - far > 1) {
      int middle = (far + near) / 2;
      boolean isFar = isFar(made.apply(middle));
      far = isFar ? middle : far;
      near = isFar ? near : middle;
    }
    return IntStream.rangeClosed(near, most)
        .filter(steps -> check.holds(verdict(made.apply(steps))))
        .boxed()
        .findFirst();
  }

  private static Edging strip(Material board, Length height, Stripped edges) {
    return new Edging(Edging.Kind.STRIP, board.name(), board.thickness(), height, edges.edges());
  }

  /** A job file states adjustable shelves for themselves, and fixed ones with their case only. */
  private Optional<Stated> shelvesOf(Optional<String> of, Optional<Edging> strip) {
    return Optional.<Stated>of(new Stated.ShelvesOf(of, strip))
        .filter(_ -> part.role() == Part.Role.SHELF);
  }

  private String words(Material sheet, Material board, Length height, Stripped edges) {
    return "%sglue a strip of '%s'%s, %s x %s, to %s over its whole length%s"
        .formatted(
            sheet.equals(material) ? "" : "make it of '" + sheet.name() + "' and ",
            board.name(),
            job.materials().contains(board) ? "" : " (the job states no boards yet)",
            job.style().number(board.thickness()),
            job.style().text(height),
            edges.words(),
            byHand());
  }

  private boolean holds(Made made) {
    return !isFar(made) && check.holds(verdict(made));
  }

  private boolean isFar(Made made) {
    return check.isFar(candidate(made));
  }

  private Verdict verdict(Made made) {
    return check.verdict(candidate(made));
  }

  private Candidate candidate(Made made) {
    return now.made(made.section(), reader.limits(made.panel()));
  }

  private Optional<Cure> cure(String what, Made made, Optional<Stated> stated) {
    return holds(made) ? Optional.of(cured(what, made, stated)) : Optional.empty();
  }

  private Cure cured(String what, Made made, Optional<Stated> stated) {
    double length = shelf.loaded().length();
    Optional<Double> now = prices.of(reader.pieces(part), length);
    Optional<Double> then = prices.of(made.pieces(), length);
    return new Cure(
        what + ": " + check.outcome(verdict(made)),
        then.flatMap(t -> now.map(n -> t - n)),
        (made.section().weight() - shelf.section().weight()) * length / GRAVITY,
        "",
        stated);
  }

  /** Held in the middle of its span too. */
  private Optional<Cure> propped(Prop prop) {
    Candidate held = now.held(prop);
    return (prop == Prop.BACK && !uprights.haveBack()) || check.isFar(held)
        ? Optional.empty()
        : Optional.of(check.verdict(held)).filter(check::holds).map(v -> propped(prop, v));
  }

  private Cure propped(Prop prop, Verdict verdict) {
    String push = Quantity.of(verdict.propPush(), QuantityUnit.FORCE).text(job.unit());
    String sags = Uprights.lifting(verdict) + ": " + check.outcome(verdict);
    double height = uprights.opening(reader.space(part));
    return switch (prop) {
      case BACK ->
          new Cure(
              "hold its back edge up in the middle, by a pin or a cleat on the back that carries "
                  + push
                  + sags,
              Optional.of(0.0),
              0,
              "a hole or a screw in the back for each place");
      case FRONT_AND_BACK, NONE ->
          new Cure(
              Uprights.loose(push) + sags,
              prices.of(List.of(uprights.piece(depth())), height),
              uprights.weight(depth()) * height / GRAVITY,
              "things can't stand across the middle");
    };
  }

  /** The fewest partitions, of the case's material, between which it holds. */
  Optional<Cure> partitions() {
    for (int count = 1; count < CaseOrder.MOST_BAYS; count++) {
      Candidate between = now.with(between(count));
      if (between.span() > 0 && !check.isFar(between)) {
        Verdict divided = check.verdict(between);
        if (check.holds(divided)) {
          return Optional.of(partitions(count, divided));
        }
      }
    }
    return Optional.empty();
  }

  private LoadedShelf between(int partitions) {
    LoadedShelf loaded = shelf.loaded();
    double panels = partitions * uprights.material().thickness().mm();
    return loaded.over((loaded.span() - panels) / (partitions + 1));
  }

  private Cure partitions(int count, Verdict divided) {
    String put =
        count == 1
            ? "put a partition in the middle"
            : "put " + count + " partitions in, spread evenly";
    String meeting = reader.support(part).map(uprights::meeting).orElse("");
    double share = count * uprights.share(reader.space(part));
    return new Cure(
        put + ": " + check.outcome(divided) + meeting,
        prices.of(List.of(uprights.piece(depth())), share),
        uprights.weight(depth()) * share / GRAVITY,
        count == 1
            ? "one more upright and its rows; twice as many shelves of half the length"
            : count + " more uprights and their rows; " + (count + 1) + " times as many shelves",
        Optional.<Stated>of(new Stated.Partitions(count))
            .filter(_ -> part.role() == Part.Role.SHELF));
  }

  /** Nothing where the shelf hardly carries itself: a load near nothing is no use. */
  Optional<Remedy> lessLoad() {
    double largest = verdict.largestLoad().number();
    Quantity load = Quantity.of(largest, QuantityUnit.LINE_LOAD);
    return largest < LEAST_SHARE * shelf.load().value().value()
        ? Optional.empty()
        : Optional.of(
            new Remedy("keep the load to " + load.textAtMost(job.unit()), "room for less"));
  }
}
