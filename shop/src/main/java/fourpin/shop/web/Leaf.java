package fourpin.shop.web;

import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A job file on its way: out to be edited, and back. A comment at its end says which state of the
 * job it was, so that what others changed while it was away is not undone in silence when it comes
 * back. At the end, because messages about a file count its lines.
 *
 * @param text without that comment
 * @param left the state it was; nothing where the comment was taken out, and of other files
 */
record Leaf(String text, Optional<RevisionId> left) {

  private static final Pattern COMMENT =
      Pattern.compile(
          "(?m)^# Fourpin keeps this job\\. This file left it at change \\d+ \\(([0-9a-f-]+)\\);"
              + " leave this line in it\\.\\R?");

  static String out(String text, Revision revision) {
    return text
        + (text.endsWith("\n") ? "" : "\n")
        + "# Fourpin keeps this job. This file left it at change "
        + revision.number()
        + " ("
        + revision.id().value()
        + "); leave this line in it.\n";
  }

  static Leaf back(String file) {
    Optional<String> last =
        COMMENT.matcher(file).results().map(found -> found.group(1)).reduce((_, b) -> b);
    return new Leaf(COMMENT.matcher(file).replaceAll(""), last.map(RevisionId::new));
  }
}
