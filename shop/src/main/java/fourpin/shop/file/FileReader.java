package fourpin.shop.file;

import fourpin.measure.Unit;
import fourpin.shop.yaml.FileKind;
import fourpin.shop.yaml.Place;
import fourpin.shop.yaml.Problem;
import fourpin.shop.yaml.Yaml;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/**
 * Reads the keys of a whole file.
 *
 * @param form of the whole file
 * @param context what is known before the form is read, by the file's unit
 */
record FileReader<T>(FileKind kind, Form<T> form, BiFunction<Yaml.Entries, Unit, Context> context) {

  /**
   * What came of it.
   *
   * @param value only if there is nothing to complain about
   * @param problems in no certain order
   */
  record Read<T>(Optional<T> value, List<Problem> problems) {}

  /**
   * @param found what is wrong already
   */
  Read<T> read(Yaml.Entries root, List<Problem> found) {
    return entry(kind, root, JobForm.UNIT, Context.of(Unit.MILLIMETRE))
        .map(unit -> read(root, unit, found))
        .orElseGet(() -> withoutUnit(root, found));
  }

  private Read<T> read(Yaml.Entries root, Unit unit, List<Problem> found) {
    List<Problem> problems = new ArrayList<>(found);
    Optional<T> value = form.read(Spot.top(kind, root, context.apply(root, unit), problems));
    return new Read<>(value.filter(_ -> problems.isEmpty()), oneEach(found, problems));
  }

  /** Where the tree could not be read, what its gap leads to is not complained about again. */
  private static List<Problem> oneEach(List<Problem> found, List<Problem> all) {
    Set<Place> gaps = found.stream().map(Problem::place).collect(Collectors.toSet());
    return all.stream().filter(p -> found.contains(p) || !gaps.contains(p.place())).toList();
  }

  /** Without a unit only that is wrong which is wrong in either. */
  private Read<T> withoutUnit(Yaml.Entries root, List<Problem> found) {
    List<Problem> both = new ArrayList<>(read(root, Unit.INCH, found).problems());
    both.retainAll(new HashSet<>(read(root, Unit.MILLIMETRE, found).problems()));
    return new Read<>(Optional.empty(), both);
  }

  /** The value of a key at the top; complaints about it come when the whole file is read. */
  static <V> Optional<V> entry(FileKind kind, Yaml.Entries root, Key<V> key, Context context) {
    Spot top = Spot.top(kind, root, context, new ArrayList<>());
    return root.entry(key.name()).flatMap(e -> key.kind().read(top.at(e)));
  }
}
