package fourpin.shop.fields;

import fourpin.measure.Reading;
import fourpin.shop.edit.Route;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A group of keys as a page shows it.
 *
 * @param id unique on the page
 * @param note under the heading; may be empty
 * @param parts groups in it that are there
 * @param begins groups in it that are not there yet, or one more of them
 * @param leave what takes the whole of it away; nothing where it must be there
 * @param earlier what makes it and the one before it in a list change places; empty where there is
 *     none before it
 */
public record Part(
    String id,
    String title,
    String note,
    List<Field> fields,
    List<Part> parts,
    List<Begin> begins,
    Optional<Target> leave,
    List<Target> earlier) {

  public Part {
    fields = List.copyOf(fields);
    parts = List.copyOf(parts);
    begins = List.copyOf(begins);
    earlier = List.copyOf(earlier);
  }

  /** A group that stands in no list, or first. */
  public Part(
      String id,
      String title,
      String note,
      List<Field> fields,
      List<Part> parts,
      List<Begin> begins,
      Optional<Target> leave) {
    this(id, title, note, fields, parts, begins, leave, List.of());
  }

  Part after(List<Target> placesChanged) {
    return new Part(id, title, note, fields, parts, begins, leave, placesChanged);
  }

  /**
   * A group that is not there yet, with what must be stated for it to be.
   *
   * @param at where it will stand; the problems of what was typed are of places under it
   * @param targets what to change for what was typed, by the keys of the blanks
   */
  public record Begin(
      String id,
      String title,
      String note,
      List<Blank> blanks,
      Route at,
      Function<Map<String, String>, Reading<List<Target>>> targets) {
    public Begin {
      blanks = List.copyOf(blanks);
    }
  }

  /**
   * What is typed for a group that is not there yet.
   *
   * @param key in that group, with points between where it is in a group of its own
   */
  public record Blank(String key, Field.Shown shown, Must must) {}

  /** Whether a blank must be filled in. */
  public enum Must {
    BE_STATED,
    MAY_BE_LEFT
  }

  /** This and every part in it. */
  public Stream<Part> all() {
    return Stream.concat(Stream.of(this), parts.stream().flatMap(Part::all));
  }

  /** Every field in it. */
  public Stream<Field> allFields() {
    return all().flatMap(p -> p.fields().stream());
  }

  public Optional<Field> field(String fieldId) {
    return allFields().filter(f -> f.shown().id().equals(fieldId)).findFirst();
  }

  public Optional<Begin> begin(String beginId) {
    return all().flatMap(p -> p.begins().stream()).filter(b -> b.id().equals(beginId)).findFirst();
  }

  public Optional<Part> part(String partId) {
    return all().filter(p -> p.id().equals(partId)).findFirst();
  }
}
