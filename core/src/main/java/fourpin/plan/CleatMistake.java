package fourpin.plan;

/** What goes wrong while blanks for cleat strips are bored and ripped. */
public enum CleatMistake implements BenchMistake {
  END_FOR_END("stick end for end", Mistake.END_FOR_END),
  WRONG_EDGE("row from the wrong edge", Mistake.WRONG_EDGE),
  PANEL_TURNED("blank turned end for end", Mistake.PANEL_TURNED),
  SECOND_LEFT("two left blanks", Mistake.SECOND_LEFT),
  HOLE_SKIPPED("one hole skipped", Mistake.HOLE_SKIPPED),
  STOP_SLIPPED("stop slipped", Mistake.STOP_SLIPPED),
  OTHER_BIT("bit of another size", Mistake.OTHER_BIT),
  HALVES_SWAPPED("halves of a blank swapped", Mistake.SECOND_LEFT),
  KERF_FORGOTTEN("fence set to the middle line itself", Mistake.WRONG_EDGE);

  private final String title;
  private final Mistake like;

  CleatMistake(String title, Mistake like) {
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
