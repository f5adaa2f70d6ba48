package fourpin.sheets.pages;

/**
 * A line of the contents.
 *
 * @param place where its section is taken to; empty for headings within it
 */
record Outlined(Strip.Anchor anchor, String place) {}
