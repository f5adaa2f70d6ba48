package fourpin.plan;

import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Rescue;
import java.util.Locale;
import java.util.Optional;

/** Panels that are off alike do, where their rows meet and keep clear. */
record AlikeRescue(MistakeFigures figures, RowNames names, PanelRescue.Tries tries) {

  /** Nothing where they do not. */
  Optional<PanelRescue.Answer> from(Mistake mistake) {
    return bothAlike().or(() -> othersAlike(tries.all().apply(mistake)));
  }

  /** The datum is moved, if all rows keep clear of what panels have, and meet across each bay. */
  private Optional<PanelRescue.Answer> othersAlike(AllSpoilt all) {
    return Optional.of(all)
        .filter(this::does)
        .map(
            a ->
                new PanelRescue.Answer(
                    Rescue.OTHERS_ALIKE,
                    say(
                        "Bore every other panel of the case the same way: tried so on the virtual"
                            + " bench, rows meet across each bay and keep at least %s clear of ends,"
                            + " edges, joints and other holes. All levels then lie otherwise than"
                            + " planned; measure them before shelves are placed.",
                        clear(a))));
  }

  /** Rows that are off in both uprights of a bay still meet, if they keep clear. */
  private Optional<PanelRescue.Answer> bothAlike() {
    return Optional.of(tries.together())
        .filter(t -> !t.isAlone())
        .map(_ -> tries.once().get())
        .filter(this::does)
        .map(
            a ->
                new PanelRescue.Answer(
                    Rescue.USE,
                    say(
                        "%s and %s are off alike, so that their rows meet across the bay, and keep at"
                            + " least %s clear of ends, edges, joints and other holes. Its levels lie"
                            + " otherwise than planned; measure them before shelves are placed.",
                        names.part().mark(), tries.together().words(), clear(a))));
  }

  private boolean does(AllSpoilt all) {
    return all.leastWood() >= names.settings().length(Setting.LEAST_EDGE).mm()
        && all.doWebsStay(names.settings().length(Setting.LEAST_WEB))
        && all.doRowsMeet();
  }

  private String clear(AllSpoilt all) {
    return figures.length(
        "wood-round-all",
        "least wood round a wrong hole of any panel bored so, to ends, edges, joints and other"
            + " holes",
        Length.nearestMm(all.leastWood()),
        "measured on all virtual panels, not less than m for rows that may be used",
        figures.input("m", Setting.LEAST_EDGE));
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
