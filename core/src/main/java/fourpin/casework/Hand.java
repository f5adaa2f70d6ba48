package fourpin.casework;

import java.util.Locale;

/** Which hand something lies on for whoever stands before a panel and looks down on it. */
public enum Hand {
  LEFT,
  RIGHT;

  /**
   * Where an edge lies: the right hand is the cross product of what looks away from you and what
   * looks up.
   *
   * @param up the face that lies upwards
   * @param near the face that looks towards you
   * @param edge the one asked for, on the third axis
   */
  public static Hand of(Face up, Face near, Face edge) {
    int away = -near.direction();
    boolean inOrder = (near.axis().ordinal() + 1) % Axis.values().length == up.axis().ordinal();
    int right = away * up.direction() * (inOrder ? 1 : -1);
    return right == edge.direction() ? RIGHT : LEFT;
  }

  /** Where the front edge of an upright lies, its lower end towards you. */
  public static Hand ofFront(Face up) {
    return of(up, Face.BOTTOM, Face.FRONT);
  }

  public Hand other() {
    return this == LEFT ? RIGHT : LEFT;
  }

  /** "left", "right". */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
