package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.boring.way.WayAnswer.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Takes one of several proposals, and one of several tools. */
final class Choosing {

  private static final Comparator<Proposal.Can> DEAREST =
      Comparator.comparing(can -> Purchase.sum(can.work().bought()));
  private static final Comparator<Proposal.Can> LONGEST =
      Comparator.comparing(can -> can.work().clampings());

  private Choosing() {}

  /**
   * What can be done with the least to buy and the fewest clampings; else what fails for the fewest
   * reasons, where the case could give way before the rest.
   *
   * @param proposals at least one
   */
  static Proposal best(List<Proposal> proposals) {
    return proposals.stream()
        .filter(p -> p instanceof Proposal.Can)
        .map(Proposal.Can.class::cast)
        .min(DEAREST.thenComparing(LONGEST))
        .<Proposal>map(can -> can)
        .orElseGet(() -> nearest(proposals));
  }

  private static Proposal nearest(List<Proposal> proposals) {
    return proposals.stream()
        .map(Proposal.Cannot.class::cast)
        .min(
            Comparator.comparing((Proposal.Cannot c) -> c.verdict() != Verdict.IF_CHANGED)
                .thenComparing(Choosing::reasons))
        .orElseThrow();
  }

  /** A case gives way for one reason, which need not be worked out to be counted. */
  private static int reasons(Proposal.Cannot cannot) {
    return cannot.verdict() == Verdict.IF_CHANGED ? 1 : cannot.reasons().size();
  }

  /** That the shop states no tool of a kind. */
  static Reason missing(String what) {
    return new Reason("no " + what + " is stated", "state one in the shop file");
  }

  /** One for each list that is empty. */
  static List<Reason> missing(Need... needs) {
    return Stream.of(needs).filter(n -> n.tools().isEmpty()).map(n -> missing(n.what())).toList();
  }

  /** Tools of a kind that a way needs one of. */
  record Need(String what, List<?> tools) {}
}
