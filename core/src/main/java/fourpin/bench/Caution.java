package fourpin.bench;

/**
 * A caution that stands at a step.
 *
 * @param hazard in one or two words: "saw", "dust", "lifting", "tip-over"
 * @param text what to do or not to do; its first sentence is the essence
 */
public record Caution(String hazard, String text) {

  /** The first sentence: enough where the whole text stands a few steps before. */
  public String essence() {
    int end = text.indexOf(". ");
    return end < 0 ? text : text.substring(0, end + 1);
  }
}
