package fourpin.boring.way;

import fourpin.boring.BayGrid;
import fourpin.boring.Borer;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.List;

/**
 * What a case has at one pitch and at another, found by boring it at both.
 *
 * @param levels of all its bays, {@code seated} shelves that lie on one
 * @param row levels of the bay that has most
 */
record Repitched(int levels, int seated, int row) {

  static Repitched at(Job job, CaseOrder order, Length pitch) {
    return ofGrids(Borer.grids(job, StripPitch.with(order, pitch)));
  }

  /**
   * @param groups all of one case
   */
  static Repitched of(List<Group> groups) {
    return ofGrids(groups.stream().flatMap(g -> g.grids().stream()).toList());
  }

  /** What is bored alike at another pitch; none if the case can't be built. */
  static List<Group> groups(Job job, CaseOrder order, Length pitch) {
    CaseOrder changed = StripPitch.with(order, pitch);
    Job alone = job.with(List.of(changed));
    return CaseworkBuilder.build(alone).cases().stream()
        .flatMap(built -> Group.of(alone, built, Borer.grids(alone, changed)).stream())
        .toList();
  }

  private static Repitched ofGrids(List<BayGrid> grids) {
    return new Repitched(
        grids.stream().mapToInt(g -> g.levels().size()).sum(),
        grids.stream().mapToInt(g -> g.seats().size()).sum(),
        grids.stream().mapToInt(g -> g.levels().size()).max().orElse(0));
  }

  /** What the pitch of a strip costs a case. */
  record Loss(Length wished, Length given, Repitched before, Repitched after) {

    static Loss of(Job job, CaseOrder order, Length wished, Length given) {
      return new Loss(wished, given, at(job, order, wished), at(job, order, given));
    }

    /**
     * "the strip gives 3/4 in, not 1 in: 53 levels instead of 40".
     *
     * @param strip in words
     */
    String words(LengthStyle style, String strip) {
      return strip
          + " gives "
          + style.textApart(given, wished)
          + ", not "
          + style.textApart(wished, given)
          + ": "
          + (after.levels() == before.levels()
              ? "as many levels, " + after.levels()
              : after.levels() + " levels instead of " + before.levels())
          + rise(style)
          + (unseated() > 0 ? ", and " + unseated() + " fewer shelves find a level" : "");
    }

    /** A little in each space is much in a row; of another pitch altogether levels tell enough. */
    private String rise(LengthStyle style) {
      return rise().abs().isLessThan(wished)
          ? ", the highest of a row of "
              + row()
              + " lies "
              + style.text(rise().abs())
              + (rise().isNegative() ? " nearer to the lowest" : " further from the lowest")
          : "";
    }

    private Length rise() {
      return given.minus(wished).times(row() - 1L);
    }

    /** Levels that the longest row has at both pitches. */
    private int row() {
      return Math.max(1, Math.min(before.row(), after.row()));
    }

    private int unseated() {
      return before.seated() - after.seated();
    }

    /**
     * The pitch that is given, with what it is taken from and what comes of it.
     *
     * @param strip its own pitch
     * @param asked where the pitch that is wished comes from
     */
    Figure figure(String id, Length strip, Source asked) {
      return new Figure(
          id,
          "pitch that the strip gives",
          Quantity.of(given),
          "k s, the whole k that comes nearest to p",
          List.of(
              length("s", "pitch of the strip, as measured", strip, Source.STATED),
              count("k", "spaces of the strip", given.wholeTimes(strip)),
              length("p", "pitch that is wished", wished, asked),
              length(
                  "r",
                  "what it adds from the lowest to the highest of a row",
                  rise(),
                  Source.GEOMETRY),
              count("n", "levels at the pitch given", after.levels()),
              count("m", "levels at the pitch wished", before.levels()),
              count("u", "shelves that no longer find a level", Math.max(0, unseated()))),
          Source.GEOMETRY);
    }

    private static Input length(String symbol, String meaning, Length value, Source source) {
      return new Input(symbol, meaning, Quantity.of(value), source);
    }

    private static Input count(String symbol, String meaning, long value) {
      return new Input(symbol, meaning, Quantity.count(value), Source.GEOMETRY);
    }
  }
}
