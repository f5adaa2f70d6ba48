package fourpin.plan;

/** What goes wrong while standards are let in, cut and screwed on. */
public enum GrooveMistake implements BenchMistake {
  WRONG_EDGE("groove from the wrong edge", Mistake.WRONG_EDGE),
  PANEL_TURNED("panel turned end for end", Mistake.PANEL_TURNED),
  SECOND_LEFT("two left sides", Mistake.SECOND_LEFT),
  PASS_LEFT_OUT("a pass left out", Mistake.HOLE_SKIPPED),
  TOO_DEEP("depth stop slipped", Mistake.STOP_SLIPPED),
  OTHER_CUTTER("cutter of another size", Mistake.OTHER_BIT),
  STANDARD_TURNED("standard upside down", Mistake.END_FOR_END),
  CUT_AT_NUMBERED_END("standard cut at its numbered end", Mistake.END_FOR_END);

  private final String title;
  private final Mistake like;

  GrooveMistake(String title, Mistake like) {
    this.title = title;
    this.like = like;
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Mistake like() {
    return like;
  }
}
