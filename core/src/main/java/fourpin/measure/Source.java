package fourpin.measure;

/**
 * Where a value or formula comes from.
 *
 * @param title title and edition, or who stated it
 * @param place table, page or clause; may be empty
 */
public record Source(String title, String place, Standing standing) {

  /** How far a source can be leaned on. */
  public enum Standing {
    /** Read in the work named, or in a copy or extract of it. */
    PUBLISHED("published"),
    /** Usual in the trade, without one work that fixes it. */
    COMMON_PRACTICE("common practice"),
    /** Known from a published work but not looked up: verify before it decides anything. */
    FROM_MEMORY("from memory, verify"),
    /** Follows from plain mechanics or geometry. */
    DERIVED("derived"),
    /** Given by the maker. */
    STATED("stated by the maker");

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public static final Source STATED = new Source("the job", "", Standing.STATED);

  public static final Source SHOP_FILE = new Source("the shop file", "", Standing.STATED);

  public static final Source GEOMETRY = new Source("geometry of the case", "", Standing.DERIVED);

  public static Source published(String title, String place) {
    return new Source(title, place, Standing.PUBLISHED);
  }

  public static Source practice(String title) {
    return new Source(title, "", Standing.COMMON_PRACTICE);
  }

  /** Whether the maker has given it, in the job or in the shop file. */
  public boolean isStated() {
    return standing == Standing.STATED;
  }

  /** As one line: {@code Wood Handbook FPL-GTR-190, Table 9-1 (published)}. */
  public String text() {
    return title + (place.isEmpty() ? "" : ", " + place) + " (" + standing.words() + ")";
  }
}
