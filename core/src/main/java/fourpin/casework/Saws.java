package fourpin.casework;

import fourpin.cutting.HoldLimits;
import fourpin.cutting.Saw;
import fourpin.cutting.SawLimits;
import fourpin.cutting.SawLimits.FirstCut;
import fourpin.cutting.SawLimits.FirstOf;
import fourpin.cutting.Trim;
import fourpin.job.Setting;
import fourpin.job.Settings;
import java.util.Locale;
import java.util.Optional;

/** The saw as the settings have it, for each way that stock is cut. */
public record Saws(Settings settings) {

  /** All four edges are trimmed. */
  public Saw sheets() {
    return saw(
        Trim.allRound(settings.length(Setting.SHEET_TRIM)),
        reach().withFirst(firstCut(Setting.FIRST_CUT)).withStages(stages()));
  }

  /** The ends are trimmed; edges only where boards are ripped, which the stock says. */
  public Saw boards() {
    return saw(
        Trim.ends(settings.length(Setting.BOARD_TRIM)),
        reach().withFirst(firstCut(Setting.BOARD_FIRST_CUT)).withFirstOf(FirstOf.CUT_BOTH_WAYS));
  }

  private Saw saw(Trim trim, SawLimits limits) {
    return new Saw(settings.length(Setting.KERF), trim, limits);
  }

  /** What holds for boards as well. */
  private SawLimits reach() {
    return new SawLimits(
        settings.optionalLength(Setting.LONGEST_RIP),
        settings.optionalLength(Setting.WIDEST_CROSSCUT),
        FirstCut.EITHER,
        SawLimits.FREE);
  }

  /** What rip fence and mitre gauge hold, and what has to be clamped. */
  public HoldLimits holds() {
    return new HoldLimits(
        settings.length(Setting.SMALL_PIECE),
        settings.length(Setting.NARROW_RIP),
        Optional.of(settings.length(Setting.FENCE_REACH)),
        settings.optionalLength(Setting.LONGEST_RIP),
        settings.optionalLength(Setting.WIDEST_CROSSCUT),
        Optional.of(
            settings
                .optionalLength(Setting.WIDEST_CROSSCUT)
                .orElseGet(() -> settings.length(Setting.HELD_CROSSCUT))),
        Optional.of(settings.length(Setting.HELD_LENGTH)));
  }

  private FirstCut firstCut(Setting setting) {
    return FirstCut.valueOf(settings.choice(setting).toUpperCase(Locale.ROOT));
  }

  private int stages() {
    String stages = settings.choice(Setting.CUT_STAGES);
    return stages.equals("free") ? SawLimits.FREE : Integer.parseInt(stages);
  }
}
