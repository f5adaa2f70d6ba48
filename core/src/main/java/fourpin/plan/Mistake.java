package fourpin.plan;

/** What goes wrong while the rows of a panel are bored. */
public enum Mistake implements BenchMistake {
  END_FOR_END("guide or stick end for end"),
  WRONG_EDGE("row from the wrong edge"),
  PANEL_TURNED("panel turned end for end"),
  SECOND_LEFT("two left sides"),
  HOLE_SKIPPED("one hole skipped"),
  MASKED_HOLE("hole bored that is taped over"),
  PIN_IN_WRONG_HOLE("locating pin in the wrong hole"),
  SPACER_FORGOTTEN("spacer forgotten"),
  WRONG_SPACER("another spacer"),
  STOP_SLIPPED("stop slipped"),
  OTHER_BIT("bit of another size");

  private final String title;

  Mistake(String title) {
    this.title = title;
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Mistake like() {
    return this;
  }
}
