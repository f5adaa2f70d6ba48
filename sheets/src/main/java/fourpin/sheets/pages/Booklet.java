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

  /** Where a section may begin. */
  public enum Opening {
    NEW_PAGE,
    /** Below the section before it, where there is room. */
    GOES_ON
  }

  /**
   * A part with a bookmark and a line in the contents.
   *
   * @param place where it is taken to, which the contents tell above its line; may be empty
   */
  public record Section(String title, String place, Opening opening, List<Block> blocks) {
    public Section {
      blocks = List.copyOf(blocks);
    }

    /** It starts a page. */
    public Section(String title, List<Block> blocks) {
      this(title, "", Opening.NEW_PAGE, blocks);
    }

    public Section at(String newPlace, Opening newOpening) {
      return new Section(title, newPlace, newOpening, blocks);
    }
  }

  public Booklet {
    sections = List.copyOf(sections);
    if (sections.isEmpty()) {
      throw new IllegalArgumentException("A booklet needs a section");
    }
  }
}
