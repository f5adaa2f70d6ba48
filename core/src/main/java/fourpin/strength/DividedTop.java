package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Support;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The fewest partitions over which the top of a case keeps within its limits. */
final class DividedTop {

  private final Job job;
  private final BuiltCase built;
  private final Verdict now;
  private final Uprights uprights;
  private final PlateBending.Memory plates = new PlateBending.Memory();

  /**
   * @param now the top over the widest bay
   */
  DividedTop(Job job, BuiltCase built, ShelfReader reader, Verdict now) {
    this.job = job;
    this.built = built;
    this.now = now;
    this.uprights = reader.uprights();
  }

  /** How many partitions stand in a bay. */
  private record Divided(BaySpace bay, int count) {}

  /** Nothing where no number of them does, or none is needed. */
  Optional<Remedy> partitions() {
    List<Divided> all = built.bays().stream().flatMap(bay -> divided(bay).stream()).toList();
    List<Divided> more = all.stream().filter(d -> d.count() > 0).toList();
    int bays = all.size() + count(more);
    return all.size() < built.bays().size() || more.isEmpty() || bays > CaseOrder.MOST_BAYS
        ? Optional.empty()
        : Optional.of(remedy(all, more));
  }

  private static int count(List<Divided> all) {
    return all.stream().mapToInt(Divided::count).sum();
  }

  private Optional<Divided> divided(BaySpace bay) {
    return IntStream.range(0, CaseOrder.MOST_BAYS)
        .mapToObj(count -> new Divided(bay, count))
        .filter(d -> span(d) > 0 && over(span(d)).holds())
        .findFirst();
  }

  private double span(Divided of) {
    double panels = of.count() * uprights.material().thickness().mm();
    return (of.bay().clear().size(Axis.X).mm() - panels) / (of.count() + 1);
  }

  private Verdict over(double span) {
    return new Verdict(now.shelf().over(span), plates);
  }

  private Remedy remedy(List<Divided> all, List<Divided> more) {
    double length = more.stream().mapToDouble(d -> d.count() * height(d.bay())).sum();
    double depth = more.getFirst().bay().clear().size(Axis.Y).mm();
    int count = count(more);
    return new Cure(
            "put " + words(more) + ": " + outcome(all) + meeting(more),
            new Prices(job).of(List.of(uprights.piece(depth)), length),
            uprights.weight(depth) * length / Gravity.STANDARD,
            count == 1 ? "one more upright and its rows" : count + " more uprights and their rows",
            Optional.of(stated(more)).filter(_ -> !uprights.mayMeetDrawers()),
            Cure.Of.CASE)
        .remedy(job);
  }

  private static double height(BaySpace bay) {
    return bay.clear().size(Axis.Z).mm();
  }

  private String words(List<Divided> more) {
    return more.stream()
        .map(
            d ->
                "%s %s"
                    .formatted(
                        d.count() == 1 ? "a partition" : d.count() + " partitions, spread evenly,",
                        built.bays().size() == 1
                            ? "under " + (d.count() == 1 ? "its middle" : "it")
                            : (d.count() == 1 ? "in the middle of bay " : "in bay ")
                                + d.bay().number()))
        .collect(Collectors.joining(", and "));
  }

  /** Over the widest bay that there is then, however its load lies. */
  private String outcome(List<Divided> all) {
    Verdict widest = over(all.stream().mapToDouble(this::span).max().orElseThrow());
    double sag = widest.sagging().flatMap(widest::under).orElseThrow().sag();
    double years = sag * now.shelf().limits().creep().number();
    return "it then sags by %s now and %s after years".formatted(text(sag), text(years));
  }

  private String meeting(List<Divided> more) {
    return more.stream()
            .flatMap(
                d ->
                    Stream.of(
                        supported(d).map(uprights::meets).orElse(""), uprights.screws(d.bay())))
            .distinct()
            .collect(Collectors.joining())
        + uprights.drawers();
  }

  private Optional<Support> supported(Divided of) {
    return built.order().bays().get(of.bay().number() - 1).supports();
  }

  /** From the right, so that those on the left keep their numbers; then their holes kept apart. */
  private Stated stated(List<Divided> more) {
    List<Stated.One> all = new ArrayList<>();
    more.reversed().forEach(d -> all.add(new Stated.PartitionsIn(d.bay().number(), d.count())));
    return more.stream()
        .flatMap(d -> supported(d).flatMap(uprights::apart).stream())
        .findFirst()
        .map(a -> new Stated.Together(all).then(a))
        .orElseGet(() -> new Stated.Together(all));
  }

  private String text(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH).text(job.unit());
  }
}
