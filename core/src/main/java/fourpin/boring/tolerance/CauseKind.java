package fourpin.boring.tolerance;

import fourpin.job.Setting;
import java.util.Optional;

/** Kinds of causes that put a hole too high or too low. */
public enum CauseKind {
  /** Common to every use of one hole of one guide. */
  GUIDE_HOLE("place of the guide's holes", Setting.GUIDE_HOLE_ERROR),
  /** Common to what is bored in one clamping. */
  SEAT("how guide, stick or strip lies against the end", Setting.SEAT_ERROR),
  /** Common to all clampings with one spacer. */
  SPACER("thickness of the spacer", Setting.SPACER_ERROR),
  /** Common to what is bored from one batten of the block, until the block comes off. */
  BLOCK("how the battens of the index block are screwed on", Setting.BLOCK_ERROR),
  /** Common to what is bored after one step. */
  STEP("locating pin whose thicknesses are out of line", Setting.PIN_STEP_ERROR),
  /** Common to what is bored after one step; wider the more the guide's hole is worn. */
  STEP_IN_GUIDE("slip of the locating pin in the guide's hole"),
  /** Common to what is bored after one step. */
  STEP_IN_HOLE("slip of the locating pin in the bored hole"),
  /** Of one hole; wider the more holes were bored before through the same hole of the guide. */
  PLAY("play in the guide's hole"),
  /** Of one hole, led by hand. */
  WANDER("wander of the drill", Setting.DRILL_WANDER),
  /** Of one hole, by router. */
  ROUTER("wander of the router bit", Setting.ROUTER_WANDER),
  /** Of one hole. */
  MARK("marking and punching", Setting.MARK_ERROR),
  /** Of one hole, at a line that is common to its level. */
  PUNCH("punching where two lines cross", Setting.PUNCH_ERROR),
  /** Common to all lines squared across two panels, growing from edge to edge. */
  SQUARE("slope of lines squared across two panels", Setting.SQUARE_ERROR),
  /** Common to a level. */
  STICK("mark on the stick", Setting.STICK_ERROR),
  /** Of one hole, or of the two strips of a blank. */
  PRESS("setting on the drill press", Setting.PRESS_ERROR),
  /** Of one hole. */
  MACHINE("the machine's own error", Setting.MACHINE_ERROR),
  /** Of one hole. */
  PIN("loose pin in its hole"),
  /** Of one slot. */
  SLOT("slots of the standard", Setting.SLOT_ERROR),
  /** Of one panel or standard. */
  CUT("length as cut", Setting.CUT_ERROR);

  private final String title;
  private final Optional<Setting> setting;

  /** For what follows from sizes. */
  CauseKind(String title) {
    this.title = title;
    this.setting = Optional.empty();
  }

  CauseKind(String title, Setting setting) {
    this.title = title;
    this.setting = Optional.of(setting);
  }

  /** For people. */
  public String title() {
    return title;
  }

  /** That holds two standard deviations; none where the error follows from sizes. */
  public Optional<Setting> setting() {
    return setting;
  }
}
