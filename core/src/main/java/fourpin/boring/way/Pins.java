package fourpin.boring.way;

import fourpin.job.Support;

/** Says what bays must stand on for a way. */
final class Pins {

  private Pins() {}

  /** For a way of boring holes for pins, where there are none. */
  static Proposal needed(Group group) {
    String supports = group.support() instanceof Support.Standards ? "standards" : "cleats";
    return Proposal.changed("the bays stand on " + supports, "state pins");
  }

  /** For a way that is not for pins. @param supports that it is for */
  static Proposal instead(String supports) {
    return Proposal.changed("the bays stand on pins", "state " + supports);
  }
}
