package fourpin.plan;

/** What goes wrong while blanks for cleat strips are bored and ripped. */
public enum CleatMistake implements BenchMistake {
  END_FOR_END("blank marked from its other end"),
  HOLE_SKIPPED("one hole skipped"),
  HALVES_SWAPPED("halves of a blank swapped"),
  KERF_FORGOTTEN("fence set to the middle line itself");

  private final String title;

  CleatMistake(String title) {
    this.title = title;
  }

  @Override
  public String title() {
    return title;
  }
}
