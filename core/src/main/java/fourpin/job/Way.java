package fourpin.job;

import java.util.Optional;
import java.util.stream.Stream;

/** Ways of making the places that shelves can lie at. */
public enum Way {
  HARDBOARD_STRIP("hardboard-strip", "hand drill through a strip of perforated hardboard"),
  CENTRING_GUIDE("centring-guide", "self-centring bit through a guide made in the shop"),
  ROUTER_GUIDE("router-guide", "plunge router with a bushing through a guide made in the shop"),
  STEEL_STRAP("steel-strap", "self-centring bit through a perforated steel strap"),
  DRILL_PRESS("drill-press", "drill press with fence and depth stop"),
  STORY_STICK("story-stick", "story stick, centre punch and hand drill"),
  GROOVED_STANDARDS("standards", "metal standards in place of holes"),
  CLEAT_BLANK("cleats", "wooden cleat strips, bored as a blank and ripped in two"),
  MACHINE("machine", "line-boring machine or numerically controlled router");

  private final String key;
  private final String title;

  Way(String key, String title) {
    this.key = key;
    this.title = title;
  }

  /** Its name in a job file. */
  public String key() {
    return key;
  }

  /** For people. */
  public String title() {
    return title;
  }

  public static Optional<Way> named(String key) {
    return Stream.of(values()).filter(w -> w.key.equals(key)).findFirst();
  }
}
