package fourpin.sheets.paint;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What an area is filled with: a ground, and hatch lines over it. */
public enum Fill {
  NONE(Optional.empty()),
  /** Hides what was drawn before. */
  WHITE(Optional.of(Ink.WHITE)),
  TINT(Optional.of(Ink.TINT)),
  SHADE(Optional.of(Ink.SHADE)),
  SOLID(Optional.of(Ink.BLACK)),
  /** Cut wood and waste. */
  HATCH(Optional.of(Ink.WHITE), new Hatch(45, 2)),
  BACK_HATCH(Optional.of(Ink.WHITE), new Hatch(135, 2)),
  CROSS_HATCH(Optional.of(Ink.WHITE), new Hatch(45, 2.5), new Hatch(135, 2.5));

  /** Parallel lines: degrees anticlockwise from the x axis, and millimetres from line to line. */
  public record Hatch(double degrees, double spacing) {}

  private final Optional<Ink> ground;
  private final List<Hatch> hatches;

  Fill(Optional<Ink> ground, Hatch... hatches) {
    this.ground = ground;
    this.hatches = List.of(hatches);
  }

  public Optional<Ink> ground() {
    return ground;
  }

  public List<Hatch> hatches() {
    return hatches;
  }

  /** A name for style sheets. */
  public String key() {
    return "fill-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
