package fourpin.shop.file;

import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Settings;
import fourpin.measure.Unit;
import fourpin.shop.yaml.Place;
import fourpin.shop.yaml.Problem;
import fourpin.shop.yaml.Tree;
import fourpin.shop.yaml.TreeReader;
import fourpin.shop.yaml.Yaml;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads a job file. Never throws for what the file holds. */
public final class JobReader {

  private JobReader() {}

  /** What came of reading a job file. */
  public sealed interface Outcome {

    record Good(Job job) implements Outcome {}

    /**
     * @param problems all of them, in file order; at least one
     */
    record Refused(List<Problem> problems) implements Outcome {
      public Refused {
        problems = problems.stream().sorted(Comparator.comparing(Problem::place)).toList();
      }
    }
  }

  public static Outcome read(byte[] bytes) {
    Tree tree = TreeReader.read(bytes);
    return tree.root()
        .map(root -> read(root, tree.problems()))
        .orElseGet(() -> new Outcome.Refused(tree.problems()));
  }

  private static Outcome read(Yaml.Entries root, List<Problem> found) {
    Optional<Unit> unit = entry(root, JobForm.UNIT, unitless());
    return unit.map(u -> read(root, u, found)).orElseGet(() -> withoutUnit(root, found));
  }

  private static Outcome read(Yaml.Entries root, Unit unit, List<Problem> found) {
    List<Problem> problems = new ArrayList<>(found);
    Optional<Job> job = JobForm.FORM.read(Spot.top(root, context(root, unit), problems));
    return job.isPresent() && problems.isEmpty()
        ? new Outcome.Good(job.get())
        : new Outcome.Refused(oneEach(found, problems));
  }

  /** Where the tree could not be read, what its gap leads to is not complained about again. */
  private static List<Problem> oneEach(List<Problem> found, List<Problem> all) {
    Set<Place> gaps = found.stream().map(Problem::place).collect(Collectors.toSet());
    return all.stream().filter(p -> found.contains(p) || !gaps.contains(p.place())).toList();
  }

  /** Without a unit only that is wrong which is wrong in either. */
  private static Outcome withoutUnit(Yaml.Entries root, List<Problem> found) {
    List<Problem> inches = new ArrayList<>(found);
    JobForm.FORM.read(Spot.top(root, context(root, Unit.INCH), inches));
    List<Problem> millimetres = new ArrayList<>(found);
    JobForm.FORM.read(Spot.top(root, context(root, Unit.MILLIMETRE), millimetres));
    inches.retainAll(new LinkedHashSet<>(millimetres));
    return new Outcome.Refused(oneEach(found, inches));
  }

  /** Materials and settings are known before anything else is read, wherever they stand. */
  private static Context context(Yaml.Entries root, Unit unit) {
    Context bare = new Context(unit, Settings.standard(unit), Map.of());
    Settings settings =
        entry(root, JobForm.SETTINGS, bare)
            .map(set -> bare.settings().with(set))
            .orElse(bare.settings());
    return new Context(unit, settings, materials(root, bare));
  }

  private static Map<String, Optional<Material>> materials(Yaml.Entries root, Context bare) {
    Map<String, Optional<Material>> materials = new LinkedHashMap<>();
    root.entry(JobForm.MATERIALS.name())
        .filter(e -> e.value() instanceof Yaml.Entries)
        .ifPresent(
            e ->
                ((Yaml.Entries) e.value())
                    .entries()
                    .forEach(m -> materials.put(m.key().text(), material(m, bare))));
    return materials;
  }

  private static Optional<Material> material(Yaml.Entry entry, Context bare) {
    Spot nowhere =
        Spot.top(
            new Yaml.Entries(entry.key().place(), Yaml.Layout.LINES, List.of(entry)),
            bare,
            new ArrayList<>());
    return MaterialForm.FORM.read(nowhere.at(entry));
  }

  private static Context unitless() {
    return new Context(Unit.MILLIMETRE, Settings.standard(Unit.MILLIMETRE), Map.of());
  }

  /** The value of a key at the top; complaints about it come when the whole file is read. */
  private static <T> Optional<T> entry(Yaml.Entries root, Key<T> key, Context context) {
    Spot top = Spot.top(root, context, new ArrayList<>());
    return root.entry(key.name()).flatMap(e -> key.kind().read(top.at(e)));
  }
}
