package fourpin.bench;

/**
 * A caution that stands at a step.
 *
 * @param hazard in one or two words: "saw", "dust", "lifting", "tip-over"
 * @param text what to do or not to do
 */
public record Caution(String hazard, String text) {}
