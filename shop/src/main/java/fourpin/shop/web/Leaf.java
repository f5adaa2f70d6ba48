package fourpin.shop.web;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A job file or shop file on its way: out to be edited, and back. A comment at its end says which
 * state of it that was, so that what others changed while it was away is not undone in silence when
 * it comes back. At the end, because messages about a file count its lines.
 *
 * @param text without that comment
 * @param left the state it was; nothing where the comment was taken out, and of other files
 */
record Leaf(String text, Optional<RevisionId> left) {

  private static final Pattern COMMENT =
      Pattern.compile(
          "(?m)^# Fourpin keeps this (?:job|shop)\\. This file left it at change \\d+ \\(([0-9a-f-]+)\\);"
              + " leave this line in it\\.\\R?");

  static String out(String text, Revision revision) {
    return text
        + (text.endsWith("\n") ? "" : "\n")
        + "# Fourpin keeps this "
        + (revision.document().equals(DocumentId.SHOP) ? "shop" : "job")
        + ". This file left it at change "
        + revision.number()
        + " ("
        + revision.id().value()
        + "); leave this line in it.\n";
  }

  /** What came along with a form; nothing if no file was chosen. */
  static Optional<Leaf> uploaded(Context http) {
    return Optional.ofNullable(http.uploadedFile("file")).map(Leaf::text).map(Leaf::back);
  }

  /**
   * Whether two texts are one but for a mark of byte order and how lines end, which editors and
   * mail change unasked.
   */
  static boolean isSame(String text, String other) {
    return plain(text).equals(plain(other));
  }

  private static String plain(String text) {
    String lines = text.replaceAll("^\uFEFF", "").replaceAll("\r\n?", "\n");
    return lines.endsWith("\n") ? lines : lines + "\n";
  }

  /** Signs that are not UTF-8 become such that the reader refuses. */
  private static String text(UploadedFile file) {
    try (var in = file.content()) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Leaf back(String file) {
    Optional<String> last =
        COMMENT.matcher(file).results().map(found -> found.group(1)).reduce((_, b) -> b);
    return new Leaf(COMMENT.matcher(file).replaceAll(""), last.map(RevisionId::new));
  }
}
