package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.ShelfPlate.Prop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What would keep a shelf within its limits, each bent anew as the plate that it would be. */
final class ShelfCures {

  /** Loads under this share of the stated one are no cure: nobody builds a shelf for them. */
  private static final double LEAST_SHARE = 0.1;

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
    List<Cure> alone = alone();
    List<Cure> cures = alone.isEmpty() ? together() : alone;
    List<Remedy> remedies =
        new ArrayList<>(
            cures.stream().sorted(Cure.CHEAPEST).map(cure -> cure.remedy(job)).toList());
    if (alone.isEmpty()) {
      remedies.add(failing());
    }
    lessLoad().ifPresent(remedies::add);
    return remedies;
  }

  private List<Cure> alone() {
    List<Cure> cures = new ArrayList<>(made(now, 1).all());
    if (material.kind() != Kind.GLASS) {
      propped(Prop.FRONT_AND_BACK).ifPresent(cures::add);
      propped(Prop.BACK).ifPresent(cures::add);
    }
    partitions().ifPresent(cures::add);
    return cures;
  }

  private MadeCures made(Candidate of, int count) {
    return new MadeCures(job, reader, part, of, count, check);
  }

  private double depth() {
    return shelf.section().depth();
  }

  /** For each other change, the fewest partitions between which it holds with that. */
  private List<Cure> together() {
    List<List<Optional<Cure>>> byCount =
        IntStream.range(1, CaseOrder.MOST_BAYS)
            .filter(count -> between(count).span() > 0)
            .mapToObj(this::together)
            .toList();
    int kinds = byCount.stream().mapToInt(List::size).max().orElse(0);
    return IntStream.range(0, kinds)
        .mapToObj(kind -> byCount.stream().flatMap(cures -> cures.get(kind).stream()).findFirst())
        .flatMap(Optional::stream)
        .toList();
  }

  private List<Optional<Cure>> together(int count) {
    Candidate between = now.with(between(count));
    return Stream.concat(
            made(between, count + 1).kinds().stream(),
            Stream.of(check.forward(reader, part, between).map(this::forward)))
        .map(cure -> cure.map(more -> partitions(count).and(more).told(meeting())))
        .toList();
  }

  private Cure forward(RowOutward.Place place) {
    return new Cure(
        place.words() + ": " + check.outcome(place.there()),
        Optional.of(0.0),
        0,
        "less wood before the row",
        Optional.of(place.stated()));
  }

  /** What was tried, and why none of it is enough. */
  private Remedy failing() {
    List<String> all = new ArrayList<>(made(now, 1).failing());
    if (material.kind() != Kind.GLASS) {
      fails("held up in the middle too,", now.held(Prop.FRONT_AND_BACK)).ifPresent(all::add);
    }
    IntStream.range(1, CaseOrder.MOST_BAYS)
        .filter(count -> between(count).span() > 0)
        .boxed()
        .reduce((_, last) -> last)
        .flatMap(count -> fails("between " + count + " partitions", now.with(between(count))))
        .ifPresent(all::add);
    return new Remedy(
        "change more than one thing, or ask less of it; alone none of these is enough: "
            + String.join("; ", all),
        "another case");
  }

  private Optional<String> fails(String how, Candidate then) {
    return check.why(check.verdict(then)).map(why -> how + " it " + why);
  }

  /** Held in the middle of its span too. */
  private Optional<Cure> propped(Prop prop) {
    Candidate held = now.held(prop);
    return (prop == Prop.BACK && !uprights.haveBackThatBears()) || check.isFar(held)
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
                  + ", which the fixing of the back has to bring to its sides (not worked out)"
                  + sags,
              Optional.of(0.0),
              0,
              "a hole or a screw in the back for each place");
      case FRONT_AND_BACK, NONE ->
          new Cure(
              uprights.loose(push) + sags + uprights.drawers(),
              prices.of(List.of(uprights.piece(depth())), height),
              uprights.weight(depth()) * height / Gravity.STANDARD,
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

  /** Its supports reach as far out of each upright as now. */
  private LoadedShelf between(int partitions) {
    LoadedShelf loaded = shelf.loaded();
    double clear = reader.space(part).clear().size(Axis.X).mm();
    double panels = partitions * uprights.material().thickness().mm();
    double reach = clear - loaded.span();
    return loaded.over((clear - panels) / (partitions + 1) - reach);
  }

  private Cure partitions(int count, Verdict divided) {
    return partitions(count).told(": " + check.outcome(divided) + meeting());
  }

  private String meeting() {
    return reader.supportInBay(part).map(uprights::meets).orElse("")
        + uprights.screws(reader.space(part))
        + uprights.drawers();
  }

  /** With their holes kept apart, where they would meet. */
  private Stated partitioned(int count) {
    Stated partitions = new Stated.Partitions(count);
    return reader.support(part).flatMap(uprights::apart).map(partitions::then).orElse(partitions);
  }

  private Cure partitions(int count) {
    double share = count * uprights.share(reader.space(part));
    return new Cure(
        count == 1
            ? "put a partition in the middle"
            : "put " + count + " partitions in, spread evenly",
        prices.of(List.of(uprights.piece(depth())), share),
        uprights.weight(depth()) * share / Gravity.STANDARD,
        count == 1
            ? "one more upright and its rows; twice as many shelves of half the length"
            : count + " more uprights and their rows; " + (count + 1) + " times as many shelves",
        Optional.of(partitioned(count))
            .filter(_ -> part.role() == Part.Role.SHELF && !uprights.mayMeetDrawers()));
  }

  /**
   * Nothing where the shelf hardly carries itself: a load near nothing is no use; nor where its
   * load is not what is wrong, but a hand.
   */
  Optional<Remedy> lessLoad() {
    double largest = verdict.largestLoad().number();
    Quantity load = Quantity.of(largest, QuantityUnit.LARGEST_LOAD);
    double stated = shelf.load().value().value();
    return largest < LEAST_SHARE * stated || largest > stated
        ? Optional.empty()
        : Optional.of(
            new Remedy(
                "keep the load to " + load.text(job.unit()) + check.rocksUnder(verdict, largest),
                "room for less"));
  }
}
