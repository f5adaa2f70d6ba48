package fourpin.boring.way;

/** Finds out what one way of boring comes to for a group of bays. */
interface WayCheck {

  Proposal of(Group group);
}
