package fourpin.shop.file;

/**
 * A key of a group. Two keys are the same only if they are one object, so that a value can be asked
 * for by its key and no other.
 */
public final class Key<T> {

  /** Whether it must be there. */
  public enum Need {
    REQUIRED,
    OPTIONAL
  }

  private final String name;
  private final Kind<T> kind;
  private final Need need;
  private final String standard;
  private final String meaning;

  private Key(String name, Kind<T> kind, Need need, String standard, String meaning) {
    this.name = name;
    this.kind = kind;
    this.need = need;
    this.standard = standard;
    this.meaning = meaning;
  }

  static <T> Key<T> required(String name, Kind<T> kind, String meaning) {
    return new Key<>(name, kind, Need.REQUIRED, "", meaning);
  }

  /**
   * @param standard what holds without it, for the documents
   */
  static <T> Key<T> optional(String name, Kind<T> kind, String standard, String meaning) {
    return new Key<>(name, kind, Need.OPTIONAL, standard, meaning);
  }

  public String name() {
    return name;
  }

  public Kind<T> kind() {
    return kind;
  }

  public Need need() {
    return need;
  }

  public String standard() {
    return standard;
  }

  public String meaning() {
    return meaning;
  }
}
