package fourpin.shop.web;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents;
import fourpin.shop.store.Revision;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Variants of a job: states of it that a maker has given a name. Edits form a tree already, so that
 * a variant is nothing more than an edit whose reason is its name.
 */
record Variants(Documents documents) {

  static final int LONGEST_NAME = 40;

  /** So many changes back they are looked for. */
  private static final int MOST_CHANGES = 1_000;

  private static final String MARK = "Variant: ";

  /** What the list of changes calls it. */
  static String why(String name) {
    return MARK + name;
  }

  /** The last of each name, the newest first. */
  List<Revision> of(DocumentId job) {
    Map<String, Revision> byName = new LinkedHashMap<>();
    documents.history(job, Long.MAX_VALUE, MOST_CHANGES).stream()
        .filter(r -> r.kind() == Revision.Kind.EDIT && r.why().startsWith(MARK))
        .forEach(r -> byName.putIfAbsent(r.why(), r));
    return new ArrayList<>(byName.values());
  }
}
