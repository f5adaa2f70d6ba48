package fourpin.strength;

import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.Made.Layers;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.Use.Limit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What keeps a shelf from tipping over one of its rows, each worked out anew. */
final class TippingCures {

  /** Loads under this share of the stated one are no cure: nobody builds a shelf for them. */
  private static final double LEAST_SHARE = 0.1;

  /** The load named is this share of the one at which the shelf is about to tip. */
  private static final double SHORT_OF_TIPPING = 0.99;

  private final Job job;
  private final ShelfReader reader;
  private final Part part;
  private final Over row;
  private final Verdict verdict;
  private final Candidate now;
  private final PlateBending.Memory plates;

  private final NewRocking rocking;

  /**
   * @param row over which it tips
   * @param rocking of the shelf as it is
   */
  TippingCures(
      Job job,
      ShelfReader reader,
      Part part,
      Over row,
      NewRocking rocking,
      PlateBending.Memory plates) {
    this.job = job;
    this.reader = reader;
    this.part = part;
    this.row = row;
    this.rocking = rocking;
    this.verdict = rocking.now();
    this.now = verdict.shelf();
    this.plates = plates;
  }

  List<Remedy> all() {
    List<Remedy> all = new ArrayList<>();
    new RowOutward(job, reader, part, row, verdict, plates)
        .find()
        .map(this::outward)
        .ifPresent(all::add);
    if (now.bearing() instanceof Bearing.Rows rows) {
      all.add(heldDown(rows));
      lessInRow(rows).ifPresent(all::add);
    }
    thicker().ifPresent(all::add);
    return all;
  }

  private Remedy outward(RowOutward.Place place) {
    String most =
        place.setback().equals(place.farthest())
            ? ""
            : "; it tips from more than " + place.farthest() + " on";
    return new Remedy(
        place.words() + most + ": " + outcome(place.there()),
        "less wood between the row and the edge",
        Optional.of(place.stated()));
  }

  private String outcome(Verdict then) {
    boolean bends =
        then.uses().stream()
            .filter(u -> u.isBy(Limit.SAG) || u.isBy(Limit.STRESS))
            .allMatch(Use::holds);
    return carried(then.push())
        + underHand()
        + (bends ? "" : "; it still bends too far: cure that too")
        + (then.tips() ? "; it still tips over its other row: cure that too" : "")
        + rocking.by(then);
  }

  /** What a support then carries, and whether it may. */
  private String carried(double push) {
    String carries = "a support then carries %s at the most".formatted(force(push));
    return now.supports().stream()
        .filter(limit -> limit.isPassedBy(push))
        .min(Comparator.comparingDouble(limit -> limit.most().value()))
        .map(
            limit ->
                "%s; %s are allowed %s: cure that too"
                    .formatted(carries, limit.most().text(job.unit()), limit.by()))
        .orElse(carries);
  }

  /** That presses on a front support as hard by each cure; nothing where that is allowed. */
  private String underHand() {
    double push = verdict.handPush().filter(_ -> row == Over.FRONT).orElse(0.0);
    return now.supports().stream()
        .filter(limit -> push > limit.brief().value())
        .min(Comparator.comparingDouble(limit -> limit.brief().value()))
        .map(
            limit ->
                "; under the hand it carries %s, and %s are allowed for minutes %s: cure that too"
                    .formatted(force(push), limit.brief().text(job.unit()), limit.by()))
        .orElse("");
  }

  private List<LoadCase> tipping() {
    return verdict.tipping(row);
  }

  /** Above the other row, at both ends alike; the one that it tips over then carries all. */
  private Remedy heldDown(Bearing.Rows rows) {
    double margin = EurocodeMargins.load().number();
    return new Remedy(
        "hold the shelf down over its %s row by a clip or a pin above it at each end, each good for %s, the load taken %s times as large: %s; how it then sags is not worked out"
            .formatted(
                row.off(),
                force(heldDown(rows, margin)),
                Quantity.of(margin, QuantityUnit.RATIO).text(job.unit()),
                carried(rowPush(rows)) + underHand()),
        "two parts for each shelf");
  }

  /** Of one end, N. */
  private double heldDown(Bearing.Rows rows, double margin) {
    return tipping().stream()
        .map(of -> resting(of).heldDown(row.setback(rows), between(rows), margin) / 2)
        .max(Comparator.naturalOrder())
        .orElse(0.0);
  }

  /** Under its load; a hand's is told apart, since it is held against more. */
  private double rowPush(Bearing.Rows rows) {
    return tipping().stream()
        .filter(of -> !of.equals(now.cases().empty()))
        .map(this::resting)
        .map(r -> (r.load() + r.own() + r.heldDown(row.setback(rows), between(rows), 1)) / 2)
        .max(Comparator.naturalOrder())
        .map(push -> Math.max(push, verdict.push()))
        .orElseGet(verdict::push);
  }

  /** From the edge before that row. */
  private Resting resting(LoadCase of) {
    return Resting.of(now, of).from(row, now);
  }

  private double between(Bearing.Rows rows) {
    return rows.between(now.beam().section().depth());
  }

  /** Of things in a row at that edge; a hand may push whatever stands there. */
  private Optional<Remedy> lessInRow(Bearing.Rows rows) {
    return tipping().stream()
        .filter(this::isRow)
        .filter(of -> tipping().equals(List.of(of)))
        .flatMap(of -> lessInRow(rows, of).stream())
        .findFirst();
  }

  private boolean isRow(LoadCase of) {
    return switch (row) {
      case FRONT -> of instanceof LoadCase.FrontRow;
      case BACK -> of instanceof LoadCase.BackRow;
    };
  }

  private Optional<Remedy> lessInRow(Bearing.Rows rows, LoadCase of) {
    double load = SHORT_OF_TIPPING * resting(of).most(row.setback(rows)) / now.beam().length();
    String most = Quantity.of(load, QuantityUnit.LINE_LOAD).textAtMost(job.unit());
    return load < LEAST_SHARE * now.beam().load() || tips(of, load)
        ? Optional.empty()
        : Optional.of(
            new Remedy(
                "keep what stands %s to %s; spread evenly the load may be what it is"
                    .formatted(inRow(), most),
                "room for less"));
  }

  private String inRow() {
    return switch (row) {
      case FRONT -> "in a row in front";
      case BACK -> "in a row against the back";
    };
  }

  private boolean tips(LoadCase of, double load) {
    return verdict.uses(of, load).anyMatch(use -> use.isBy(Limit.TIPPING));
  }

  /** The thinnest of the job's other materials whose weight keeps it down, as for what sags. */
  private Optional<Remedy> thicker() {
    Material material = reader.material(part);
    boolean glass = material.kind() == Kind.GLASS;
    return job.materials().stream()
        .filter(m -> (m.kind() == Kind.GLASS) == glass)
        .filter(m -> m.thickness().isMoreThan(material.thickness()))
        .sorted(Comparator.comparing(Material::thickness))
        .map(new ShelfStock(job, reader, part, 0)::plain)
        .sorted(Taken.READIEST)
        .flatMap(taken -> thicker(taken).stream())
        .findFirst();
  }

  private Optional<Remedy> thicker(Taken taken) {
    Made made = Made.edged(now.beam().section(), reader.pieces(part), taken.of(), Layers.ONE);
    Verdict then = new Verdict(now.made(made.section(), reader.limits(made.panel())), plates);
    return Optional.of(then)
        .filter(v -> v.tipping(row).isEmpty())
        .map(v -> thicker(taken, made, v).remedy(job));
  }

  private Cure thicker(Taken taken, Made made, Verdict then) {
    Material thick = taken.of();
    double length = now.beam().length();
    Prices prices = new Prices(job);
    Optional<Double> before = prices.of(reader.pieces(part), length);
    return taken.bars(
        new Cure(
            "make the shelf of '%s', %s%s: %s%s"
                .formatted(
                    thick.name(),
                    job.style().text(thick.thickness()),
                    taken.words(),
                    outcome(then),
                    reader.climate().swelling(part, thick)),
            prices.of(made.pieces(), length).flatMap(after -> before.map(b -> after - b)),
            (made.section().weight() - now.beam().section().weight()) * length / Gravity.STANDARD,
            "",
            Optional.<Stated>of(new Stated.ShelvesOf(Optional.of(thick.name()), Optional.empty()))
                .filter(_ -> part.role() == Part.Role.SHELF)));
  }

  private String force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE).text(job.unit());
  }
}
