package fourpin.strength;

import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.job.Job;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One way to keep a shelf or a case within its limits.
 *
 * @param what to do, and what it then does
 * @param price of the wood that it takes more; nothing where stock has no price
 * @param mass that it weighs more, kg
 * @param besides what else it costs, in words; may be empty where it takes wood
 * @param stated how to write it into the job, where that can be said
 */
record Cure(
    String what,
    Optional<Double> price,
    double mass,
    String besides,
    Optional<Stated> stated,
    Of of) {

  /** What price and weight are of. */
  enum Of {
    SHELF(", each shelf"),
    CASE("");

    private final String words;

    Of(String words) {
      this.words = words;
    }
  }

  /** Of a shelf. */
  Cure(String what, Optional<Double> price, double mass, String besides, Optional<Stated> stated) {
    this(what, price, mass, besides, stated, Of.SHELF);
  }

  Cure(String what, Optional<Double> price, double mass, String besides) {
    this(what, price, mass, besides, Optional.empty());
  }

  /** Cheapest first, those without a price after those with one; the lighter first. */
  static final Comparator<Cure> CHEAPEST =
      Comparator.<Cure>comparingDouble(c -> c.price().orElse(Double.POSITIVE_INFINITY))
          .thenComparingDouble(Cure::mass);

  /** Both together; what the other changes is divided by this one. */
  Cure and(Cure other) {
    String costs =
        Stream.of(besides, other.besides)
            .filter(cost -> !cost.isEmpty())
            .collect(Collectors.joining("; "));
    return new Cure(
        what + ", and " + other.what,
        price.flatMap(one -> other.price.map(more -> one + more)),
        mass + other.mass,
        costs,
        other.stated.flatMap(first -> stated.map(first::then)),
        of);
  }

  /** With more to say of it. */
  Cure told(String more) {
    return new Cure(what + more, price, mass, besides, stated, of);
  }

  /** What else it costs. */
  Cure costing(String other) {
    return new Cure(what, price, mass, other, stated, of);
  }

  /** What the job file can't say. */
  Cure byHand() {
    return new Cure(what, price, mass, besides, Optional.empty(), of);
  }

  Cure unpriced() {
    return new Cure(what, Optional.empty(), mass, besides, stated, of);
  }

  Remedy remedy(Job job) {
    List<String> costs = new ArrayList<>();
    if (!besides.isEmpty()) {
      costs.add(besides);
    }
    if (mass != 0) {
      costs.add(price.map(p -> money(job, p) + ", ").orElse("") + weight(job) + of.words);
    }
    return new Remedy(what, String.join("; ", costs), stated);
  }

  private static String money(Job job, double price) {
    String amount = Quantity.of(Math.abs(price), QuantityUnit.MONEY).text(job.unit());
    return "wood for about " + job.currency() + amount + (price < 0 ? " less" : " more");
  }

  private String weight(Job job) {
    String amount = Quantity.of(Math.abs(mass), QuantityUnit.MASS).text(job.unit());
    return amount + (mass < 0 ? " lighter" : " heavier");
  }
}
