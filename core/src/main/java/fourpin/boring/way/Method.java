package fourpin.boring.way;

import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/** How a way is done for one group of bays. */
public sealed interface Method {

  /** How the bit is set that bores holes in panels, where any are bored. */
  default Optional<BitSetting> panelBit() {
    return switch (this) {
      case Guided guided -> Optional.of(guided.bit());
      case Marked marked -> Optional.of(marked.bit());
      case Programmed programmed -> Optional.of(programmed.bit());
      case Grooved _, ScrewedOn _, Blanks _ -> Optional.empty();
    };
  }

  /**
   * Through a guide.
   *
   * @param how what holds the drill or the router
   * @param clampings in the order of work
   */
  record Guided(How how, Guide guide, BitSetting bit, List<Clamping> clampings) implements Method {
    public Guided {
      clampings = List.copyOf(clampings);
    }

    /** Whether the guide is moved along a row on a pin. */
    public boolean isMovedAlong() {
      return clampings.stream().anyMatch(Clamping::isMovedAlong);
    }

    /** Whether that pin must be stepped: thick in the guide, thin in the panel. */
    public boolean needsSteppedPin() {
      return isMovedAlong() && !guide.holes().getFirst().diameter().equals(bit.diameter());
    }
  }

  /**
   * Every hole from its own mark, as the story stick gives it; on the drill press the fence gives
   * the row.
   *
   * @param how what holds the drill
   * @param gangs uprights that are marked in pairs; all others panel by panel
   */
  record Marked(How how, BitSetting bit, List<Gang> gangs) implements Method {
    public Marked {
      gangs = List.copyOf(gangs);
    }

    /** The pair that a bay's uprights are marked in, if they are. */
    public Optional<Gang> gang(int bay) {
      return gangs.stream().filter(g -> g.bay() == bay).findFirst();
    }
  }

  /** What holds the drill. */
  enum How {
    BY_HAND,
    DRILL_PRESS
  }

  /** By coordinates. */
  record Programmed(String machine, BitSetting bit) implements Method {}

  /**
   * Grooves for standards.
   *
   * @param tool name of the router bit or saw, in words
   * @param cut width of one pass
   * @param passes side by side for the width
   * @param depths one below the other, rising; the last is the groove's
   */
  record Grooved(Cutter cutter, String tool, Length cut, int passes, List<Length> depths)
      implements Method {
    public Grooved {
      depths = List.copyOf(depths);
    }
  }

  /** What cuts grooves. */
  enum Cutter {
    ROUTER,
    SAW
  }

  /** Standards that are screwed on; nothing is bored or grooved but screw holes. */
  record ScrewedOn() implements Method {}

  /** Pairs of cleat strips bored as one blank and ripped. @param stack blanks bored together */
  record Blanks(How how, BitSetting bit, int stack) implements Method {}
}
