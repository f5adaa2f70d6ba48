package fourpin.sheets.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A node of the tree that tells a screen reader what the marks on the pages are (ISO 32000-1,
 * 14.8). Grown during layout, top down, in reading order.
 */
final class Tag {

  /** Standard structure types. */
  enum Role {
    DOCUMENT("Document"),
    SECTION("Sect"),
    TITLE("H1"),
    SECTION_TITLE("H2"),
    HEADING("H3"),
    PARAGRAPH("P"),
    LIST("L"),
    ITEM("LI"),
    LABEL("Lbl"),
    BODY("LBody"),
    FRAME("Div"),
    TABLE("Table"),
    ROW("TR"),
    HEADER_CELL("TH"),
    CELL("TD"),
    FIGURE("Figure"),
    CONTENTS("TOC"),
    CONTENTS_ITEM("TOCI"),
    REFERENCE("Reference"),
    LINK("Link");

    private final String type;

    Role(String type) {
      this.type = type;
    }

    String type() {
      return type;
    }
  }

  private final Role role;
  private final String alternative;
  private final List<Tag> children = new ArrayList<>();

  private Tag(Role role, String alternative) {
    this.role = role;
    this.alternative = alternative;
  }

  static Tag root() {
    return new Tag(Role.DOCUMENT, "");
  }

  Tag add(Role childRole) {
    return add(childRole, "");
  }

  /** A child with a text that stands for it (figures, links). */
  Tag add(Role childRole, String childAlternative) {
    Tag child = new Tag(childRole, childAlternative);
    children.add(child);
    return child;
  }

  Role role() {
    return role;
  }

  Optional<String> alternative() {
    return alternative.isEmpty() ? Optional.empty() : Optional.of(alternative);
  }

  List<Tag> children() {
    return List.copyOf(children);
  }
}
