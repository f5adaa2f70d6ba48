package fourpin.shop.store.backup;

import java.util.Locale;

/** What the files in a backup are called. */
final class Names {

  static final String ABOUT = "about.json";
  static final String DOCUMENTS = "documents.jsonl";
  static final String REVISIONS = "revisions.jsonl";
  static final String TICKS = "ticks.jsonl";
  static final String LAYOUTS = "layouts.jsonl";
  static final String RACK = "rack.jsonl";
  static final String SUMS = "SHA256SUMS";

  private Names() {}

  /** The text of an edit. */
  static String text(String document, long number) {
    return String.format(Locale.ROOT, "texts/%s/%06d.yaml", document, number);
  }
}
