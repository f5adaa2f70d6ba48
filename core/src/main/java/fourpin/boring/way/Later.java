package fourpin.boring.way;

/** Holds the place of a way that is still to be worked out. */
final class Later implements WayCheck {

  @Override
  public Proposal of(Group group) {
    return Proposal.cannot("this way is not worked out yet", "take another");
  }
}
