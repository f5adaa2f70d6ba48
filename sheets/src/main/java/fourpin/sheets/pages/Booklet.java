package fourpin.sheets.pages;

import java.util.List;
import java.util.Optional;

/**
 * What is to be read, before it is broken into pages.
 *
 * @param title of the whole
 * @param subtitle one line below it
 * @param job printed at the foot of every page
 * @param revision printed at the foot of every page
 * @param warning framed at the head of every page, so that a loose page carries it too
 */
public record Booklet(
    String title,
    String subtitle,
    String job,
    String revision,
    Optional<String> warning,
    Paper paper,
    List<Section> sections) {

  /** A part with a bookmark and a line in the contents; it starts a page. */
  public record Section(String title, List<Block> blocks) {
    public Section {
      blocks = List.copyOf(blocks);
    }
  }

  public Booklet {
    sections = List.copyOf(sections);
    if (sections.isEmpty()) {
      throw new IllegalArgumentException("A booklet needs a section");
    }
  }
}
