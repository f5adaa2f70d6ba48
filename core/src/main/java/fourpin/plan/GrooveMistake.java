package fourpin.plan;

/** What goes wrong while standards are let in, cut and screwed on. */
public enum GrooveMistake implements BenchMistake {
  WRONG_EDGE("groove from the wrong edge"),
  SECOND_LEFT("two left sides"),
  TOO_DEEP("groove too deep"),
  PASS_LEFT_OUT("a pass left out"),
  STANDARD_TURNED("standard upside down"),
  CUT_AT_NUMBERED_END("standard cut at its numbered end");

  private final String title;

  GrooveMistake(String title) {
    this.title = title;
  }

  @Override
  public String title() {
    return title;
  }
}
