package fourpin.sheets.paint;

/**
 * The colours on paper, few so that a printer in black and white loses nothing: no two meanings
 * differ by ink alone.
 *
 * <p>The red gives a contrast of 8.4 to 1 on white (formula of WCAG 2.2, relative luminance) and
 * prints as a dark grey.
 */
public enum Ink {
  BLACK(0, 0, 0),
  RED(155, 20, 20),
  WHITE(255, 255, 255),
  /** Planes that face the light least; decoration only. */
  SHADE(222, 222, 222),
  TINT(240, 240, 240);

  private final int red;
  private final int green;
  private final int blue;

  Ink(int red, int green, int blue) {
    this.red = red;
    this.green = green;
    this.blue = blue;
  }

  /** Six hexadecimal digits after a number sign. */
  public String hex() {
    return "#"
        + java.util.HexFormat.of().formatHex(new byte[] {(byte) red, (byte) green, (byte) blue});
  }

  /** Red, green and blue from 0 to 1. */
  public float[] parts() {
    return new float[] {red / 255f, green / 255f, blue / 255f};
  }
}
