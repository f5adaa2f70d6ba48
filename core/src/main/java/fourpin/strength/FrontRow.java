package fourpin.strength;

import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Sourced;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A shelf within its limits under an even load, with that load in a row along its front edge. What
 * is wrong under the even load is found fault with as such. A load on one half of the length alone
 * needs no such look: the shelf sags less, and its near supports carry three quarters of it, three
 * eighths of the whole, where the even load puts a half.
 */
final class FrontRow {

  private final Job job;
  private final ShelfOnSupports read;
  private final Verdict verdict;
  private final Optional<Figure> even;
  private final Optional<PlateFigures> figures;

  /** Allowed on a support: by the codes and by its maker. */
  private final List<Allowed> allowed;

  private record Allowed(double most, String words) {}

  /** A support that carries more than is allowed. @param limits those passed, in words */
  record Crushing(Figure push, Figure even, List<String> limits) {}

  FrontRow(
      Job job,
      ShelfOnSupports read,
      Verdict verdict,
      SupportFigures supports,
      Optional<PinInSide> pin,
      Optional<Sourced> rating) {
    this.job = job;
    this.read = read;
    this.verdict = verdict;
    this.even = supports.push();
    this.figures =
        verdict.plate().map(plate -> new PlateFigures(read, plate, verdict.largestLoad()));
    this.allowed =
        Stream.concat(
                pin.stream()
                    .flatMap(in -> Stream.of(supports.nds(in), supports.ec5(in)))
                    .flatMap(Optional::stream)
                    .map(this::byCode),
                rating.stream().map(this::byMaker))
            .toList();
  }

  private Allowed byCode(Figure figure) {
    String by = figure.title().substring(figure.title().indexOf(", by ") + 1);
    return new Allowed(value(figure), figure.value().text(job.unit()) + by);
  }

  private Allowed byMaker(Sourced rating) {
    return new Allowed(
        rating.number(), rating.value().text(job.unit()) + " by the rating of its maker");
  }

  /** Its sag, if it is more than is allowed. */
  Optional<Figure> sagging() {
    return figures
        .flatMap(PlateFigures::rowSag)
        .filter(sag -> verdict.sagHolds() && !verdict.allows(value(sag)));
  }

  /** Only where the even load is within all that is allowed on a support. */
  Optional<Crushing> crushing() {
    return even.filter(push -> over(push).isEmpty())
        .flatMap(push -> figures.flatMap(PlateFigures::rowPush).map(row -> crushing(row, push)))
        .filter(crushing -> !crushing.limits().isEmpty());
  }

  private Crushing crushing(Figure push, Figure spread) {
    return new Crushing(push, spread, over(push));
  }

  private List<String> over(Figure push) {
    return allowed.stream().filter(a -> value(push) > a.most()).map(Allowed::words).toList();
  }

  /** How its load lies. */
  String words() {
    String deep = read.standing().map(d -> " " + d.value().text(job.unit()) + " deep").orElse("");
    return "its load in a row" + deep + " along the front edge";
  }

  /** The same where it passes a limit so. */
  Optional<String> beyond() {
    return sagging().isPresent() || crushing().isPresent()
        ? Optional.of(words())
        : Optional.empty();
  }

  private static double value(Figure figure) {
    return figure.value().value();
  }
}
