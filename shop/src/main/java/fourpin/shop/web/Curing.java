package fourpin.shop.web;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Place;
import fourpin.job.CaseOrder;
import fourpin.plan.Plan;
import fourpin.shop.edit.Edit;
import fourpin.shop.fields.Target;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Tries a cure on a job before it is kept. What it would spoil is cured too, as far as its own
 * cures can be pressed and spoil nothing in turn; what is left of that, the maker is asked about.
 */
final class Curing {

  /** Each takes a plan, and who presses waits for them. */
  private static final int MOST_TRIALS = 8;

  private final Desk desk;
  private final State seen;
  private final Finding finding;
  private int trials;

  Curing(Desk desk, State seen, Finding finding) {
    this.desk = desk;
    this.seen = seen;
    this.finding = finding;
  }

  /** What a press would come to. */
  sealed interface Trial {
    /**
     * @param edits in the terms of what was seen
     * @param besides what is done for the rest of what is to be cured, and what the cure would
     *     spoil
     * @param then with nothing kept
     * @param spoilt what would spoil the work then, and does not yet
     */
    record Would(List<Edit> edits, List<String> besides, State then, List<Finding> spoilt)
        implements Trial {
      public Would {
        edits = List.copyOf(edits);
        besides = List.copyOf(besides);
        spoilt = List.copyOf(spoilt);
      }

      /** With something that was done besides. */
      Would with(String more) {
        return new Would(
            edits, Stream.concat(besides.stream(), Stream.of(more)).toList(), then, spoilt);
      }
    }

    record Not(Answer answer) implements Trial {}
  }

  Trial tried(Remedy remedy) {
    return remedy.stated().map(this::tried).orElseGet(this::byHand);
  }

  private Trial tried(Stated stated) {
    Trial first = stated(start(), finding, stated);
    return first instanceof Trial.Would would ? asked(completed(throughout(would, stated))) : first;
  }

  /** The same in the other bays that the finding names; a setting is of the whole case anyway. */
  private Trial.Would throughout(Trial.Would would, Stated stated) {
    Trial.Would now = would;
    Optional<Trial.Would> next = leavesParts(stated) ? Optional.empty() : further(now, stated);
    while (next.isPresent()) {
      now = next.get();
      next = further(now, stated);
    }
    return now;
  }

  private Optional<Trial.Would> further(Trial.Would would, Stated stated) {
    return would.then().plan().findings().stream()
        .filter(f -> f.kind().equals(finding.kind()) && isOf(f, finding.place().caseName()))
        .filter(f -> seen.plan().findings().stream().noneMatch(b -> b.place().equals(f.place())))
        .flatMap(f -> further(would, f, stated).stream())
        .findFirst();
  }

  private Optional<Trial.Would> further(Trial.Would would, Finding rest, Stated stated) {
    return rest.remedies().stream()
        .flatMap(r -> r.stated().stream())
        .filter(s -> trials < MOST_TRIALS && isAlike(s, stated))
        .map(s -> stated(would, rest, s))
        .filter(Trial.Would.class::isInstance)
        .map(Trial.Would.class::cast)
        .map(w -> w.with("the same in another bay that it names"))
        .findFirst();
  }

  /** Whether it does no more than the other, such as divide without what is the same for all. */
  private static boolean isAlike(Stated one, Stated other) {
    return kinds(other).containsAll(kinds(one));
  }

  private static Set<Class<?>> kinds(Stated stated) {
    return stated.each().stream().map(Object::getClass).collect(Collectors.toSet());
  }

  private Trial.Would start() {
    return new Trial.Would(List.of(), List.of(), seen, List.of());
  }

  /** A cure that leaves its finding is none. */
  private Trial asked(Trial.Would would) {
    return unproven(would.then().plan(), finding)
        .<Trial>map(reason -> new Trial.Not(new Answer.Refused(seen, reason)))
        .orElse(would);
  }

  /** Says so if a finding is there still. */
  static Optional<String> unproven(Plan plan, Finding finding) {
    return isThere(plan, finding)
        ? Optional.of("That alone does not cure it here; nothing was changed.")
        : Optional.empty();
  }

  static boolean isThere(Plan plan, Finding finding) {
    return plan.findings().stream()
        .anyMatch(f -> f.kind().equals(finding.kind()) && f.place().equals(finding.place()));
  }

  private Trial stated(Trial.Would so, Finding of, Stated stated) {
    Trial now = so;
    for (Stated.One one : stated.each()) {
      now = now instanceof Trial.Would would ? stated(would, of, one) : now;
    }
    return now;
  }

  private Trial stated(Trial.Would so, Finding of, Stated.One one) {
    CaseOrder order = so.then().order(of.place().caseName());
    List<Target> targets = Wishes.cured(so.then(), order, of, one);
    return targets.isEmpty() ? byHand() : with(so, Target.edits(targets, so.then().text()));
  }

  private Trial byHand() {
    return new Trial.Not(new Answer.Refused(seen, "This takes a maker's hand."));
  }

  private Trial with(Trial.Would so, List<Edit> edits) {
    trials++;
    return switch (desk.tried(so.then(), edits)) {
      case Desk.Tried.Not(Answer answer) -> new Trial.Not(answer);
      case Desk.Tried.Would(State then) ->
          new Trial.Would(
              Stream.concat(so.edits().stream(), edits.stream()).toList(),
              so.besides(),
              then,
              spoilt(seen.plan(), then.plan()));
    };
  }

  /** With cures of what it spoils, as long as each leaves less of that. */
  private Trial.Would completed(Trial.Would would) {
    Trial.Would now = would;
    Optional<Trial.Would> next = better(now);
    while (next.isPresent()) {
      now = next.get();
      next = better(now);
    }
    return now;
  }

  private Optional<Trial.Would> better(Trial.Would than) {
    Optional<Trial.Would> best = Optional.empty();
    for (Finding spoilt : than.spoilt()) {
      for (Remedy remedy : pressed(spoilt)) {
        int most = best.orElse(than).spoilt().size();
        if (trials < MOST_TRIALS
            && most > 0
            && stated(than, spoilt, remedy.stated().orElseThrow()) instanceof Trial.Would would
            && would.spoilt().size() < most
            && unproven(would.then().plan(), finding).isEmpty()) {
          best = Optional.of(would.with(remedy.what()));
        }
      }
    }
    return best;
  }

  /** Those that move holes and leave the parts: other shelves and partitions a maker chooses. */
  private static List<Remedy> pressed(Finding finding) {
    return finding.remedies().stream()
        .filter(r -> r.stated().filter(Curing::leavesParts).isPresent())
        .toList();
  }

  private static boolean leavesParts(Stated stated) {
    return stated.each().stream().allMatch(Curing::leavesParts);
  }

  private static boolean leavesParts(Stated.One one) {
    return switch (one) {
      case Stated.OfSetting _, Stated.OfSettings _, Stated.EverySecondBay _ -> true;
      case Stated.Partitions _,
          Stated.PartitionsIn _,
          Stated.ShelvesOf _,
          Stated.ShelvesDoubled _ ->
          false;
    };
  }

  /**
   * What forbids cutting in a plan and did not before. A finding has the first of its parts as its
   * place and names all of them: one that falls into several is none of them new.
   */
  static List<Finding> spoilt(Plan before, Plan after) {
    return bad(after)
        .filter(f -> alike(after, f).count() > alike(before, f).count())
        .filter(f -> alike(before, f).noneMatch(b -> isAbout(b, f.place())))
        .toList();
  }

  private static boolean isAbout(Finding finding, Place place) {
    return finding.place().equals(place)
        || place.part().filter(p -> names(finding.what(), p)).isPresent();
  }

  private static boolean names(String words, String part) {
    return Pattern.compile("\\b" + Pattern.quote(part) + "\\b").matcher(words).find();
  }

  private static Stream<Finding> bad(Plan plan) {
    return plan.findings().stream().filter(Finding::isGrave);
  }

  private static Stream<Finding> alike(Plan plan, Finding one) {
    return bad(plan).filter(f -> f.kind().equals(one.kind()) && isOf(f, one.place().caseName()));
  }

  private static boolean isOf(Finding finding, String caseName) {
    return finding.place().caseName().equals(caseName);
  }
}
