package fourpin.job;

import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;

/**
 * What the maker states.
 *
 * @param title what the job is called on every page; not empty
 * @param revision the mark that stands on every sheet, so that old paper is told from new; not
 *     empty
 * @param unit the unit of a bare number in the job: {@link Unit#INCH} or {@link Unit#MILLIMETRE}
 * @param style how lengths are printed
 * @param currency the sign before amounts of money; may be empty
 * @param materials each name once
 * @param cases each name once; none only where parts and stock alone are cut
 * @param settings what holds for the whole job; a case may set its own over it
 * @param shop what it is made with
 */
public record Job(
    String title,
    String revision,
    Unit unit,
    LengthStyle style,
    Paper paper,
    String currency,
    Optional<Room> room,
    List<Material> materials,
    List<SheetStock> sheets,
    List<BoardStock> boards,
    List<CaseOrder> cases,
    Settings settings,
    Shop shop) {

  public Job {
    materials = among(List.copyOf(materials));
    sheets = List.copyOf(sheets);
    boards = List.copyOf(boards);
    cases = List.copyOf(cases);
  }

  private static List<Material> among(List<Material> materials) {
    return materials.stream().map(m -> m.among(materials)).toList();
  }

  /** The same job under another title. */
  public Job titled(String other) {
    return new Job(
        other, revision, unit, style, paper, currency, room, materials, sheets, boards, cases,
        settings, shop);
  }

  /** The same job with other cases. */
  public Job with(List<CaseOrder> others) {
    return new Job(
        title, revision, unit, style, paper, currency, room, materials, sheets, boards, others,
        settings, shop);
  }

  /** The same job in another shop. */
  public Job with(Shop other) {
    return new Job(
        title, revision, unit, style, paper, currency, room, materials, sheets, boards, cases,
        settings, other);
  }

  /**
   * The material of that name.
   *
   * @throws IllegalArgumentException if the job has none: readers check every name they pass on
   */
  public Material material(String name) {
    return materials.stream()
        .filter(m -> m.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no material is called '" + name + "'"));
  }
}
