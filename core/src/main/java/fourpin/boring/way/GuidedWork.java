package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The work of boring through a guide.
 *
 * @param how what holds the drill or the router
 * @param seconds for one hole
 * @param making of the guide; its holes are counted where it is bored in the shop
 * @param wear of its holes
 */
record GuidedWork(Method.How how, Setting seconds, Setting making, Setting wear) {

  /**
   * What can be done, or why not.
   *
   * @param against what speaks against the tools, whatever the guide; empty if nothing does
   */
  Proposal proposal(
      Group group,
      BitSetting bit,
      Designed designed,
      List<Reason> against,
      List<Reason> notes,
      List<Purchase> bought) {
    List<Reason> reasons = new ArrayList<>(against);
    if (designed instanceof Designed.Failed(Reason reason)) {
      reasons.add(reason);
    }
    return reasons.isEmpty() && designed instanceof Designed.Made made
        ? can(
            group,
            new Method.Guided(how, made.guide(), bit, made.clampings()),
            made,
            Stream.concat(notes.stream(), new Stiles(group).notes().stream()).toList(),
            bought)
        : Proposal.cannot(reasons);
  }

  private Proposal can(
      Group group,
      Method.Guided method,
      Designed.Made made,
      List<Reason> notes,
      List<Purchase> bought) {
    int pins = method.needsSteppedPin() ? 1 : 0;
    return new Proposal.Can(method, work(group, made, pins, bought), notes, together(group));
  }

  /** A pair would lie front edges together for the front rows, and again for the back rows. */
  private static Proposal.Together together(Group group) {
    return Proposal.Together.no(
        group.isBoredAfterAssembly()
            ? "the case stands when it is bored"
            : "the guide's column of holes lies on one panel at a time. A guide across two panels"
                + " would need two columns, whose errors don't cancel, and the panels laid together"
                + " once for the front rows and once for the back rows: as many clampings as now."
                + " Holes that stop in the wood can't be bored in a stack");
  }

  private Work work(Group group, Designed.Made made, int pins, List<Purchase> bought) {
    boolean bored = made.guide().make() instanceof Guide.Make.Bored;
    return new Work(
            1,
            made.places(),
            group.holes(),
            seconds,
            new Work.Making(making, bored ? made.guide().holes().size() : 0, pins),
            Optional.of(new Work.Wear(wear, made.uses())),
            bought)
        .withRefits(made.refits());
  }
}
