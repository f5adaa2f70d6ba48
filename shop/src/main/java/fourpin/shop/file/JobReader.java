package fourpin.shop.file;

import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Settings;
import fourpin.measure.Unit;
import fourpin.shop.yaml.FileKind;
import fourpin.shop.yaml.Problem;
import fourpin.shop.yaml.Tree;
import fourpin.shop.yaml.TreeReader;
import fourpin.shop.yaml.Yaml;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a job file, and with it the shop file. Never throws for what the files hold. */
public final class JobReader {

  private JobReader() {}

  /** What came of reading a job file. */
  public sealed interface Outcome {

    record Good(Job job) implements Outcome {}

    /**
     * At least one problem in all.
     *
     * @param problems all those of the job file, in file order
     * @param shop those of the shop file
     */
    record Refused(List<Problem> problems, ShopProblems shop) implements Outcome {
      public Refused {
        problems = sorted(problems);
      }
    }
  }

  /**
   * What is wrong in a shop file.
   *
   * @param path of the file, as messages call it
   * @param problems all of them, in file order; may be empty
   */
  public record ShopProblems(String path, List<Problem> problems) {

    static final ShopProblems NONE = new ShopProblems("", List.of());

    public ShopProblems {
      problems = sorted(problems);
    }
  }

  private static List<Problem> sorted(List<Problem> problems) {
    return problems.stream().sorted(Comparator.comparing(Problem::place)).toList();
  }

  /** A job that lies in no folder, so without a shop. */
  public static Outcome read(byte[] bytes) {
    return read(bytes, ShopFiles.NONE);
  }

  public static Outcome read(byte[] bytes, ShopFiles shops) {
    Tree tree = TreeReader.read(bytes, FileKind.JOB);
    return tree.root()
        .map(root -> read(root, tree.problems(), shops))
        .orElseGet(() -> new Outcome.Refused(tree.problems(), ShopProblems.NONE));
  }

  private static Outcome read(Yaml.Entries root, List<Problem> found, ShopFiles shops) {
    List<Problem> all = new ArrayList<>(found);
    Optional<Yaml.Entry> tools = root.entry(ShopForm.TOOLS.name());
    if (tools.isPresent() && root.entry(JobForm.CASES.name()).isEmpty()) {
      all.add(shopFile(tools.get()));
      return new Outcome.Refused(all, ShopProblems.NONE);
    }
    Optional<Opened> file = shopFile(root, shops, all);
    FileReader.Read<ShopForm.Stated> shop =
        file.map(ShopReader::read)
            .orElse(new FileReader.Read<>(Optional.of(ShopForm.Stated.NONE), List.of()));
    FileReader.Read<Job> job = read(root, all, shop.value().orElse(ShopForm.Stated.NONE));
    return job.value().isPresent() && shop.problems().isEmpty()
        ? new Outcome.Good(job.value().get())
        : new Outcome.Refused(
            job.problems(), new ShopProblems(file.map(Opened::path).orElse(""), shop.problems()));
  }

  /** What its keys are for is better said once than of each of them that no job has. */
  private static Problem shopFile(Yaml.Entry tools) {
    return new Problem(
        tools.key().place(),
        tools.key().text(),
        "this is a shop file: it states tools, and no cases",
        "give the file of a job; it reads the shop file beside it, or the one it names");
  }

  private static FileReader.Read<Job> read(
      Yaml.Entries root, List<Problem> found, ShopForm.Stated shop) {
    return new FileReader<>(FileKind.JOB, JobForm.FORM, (r, unit) -> context(r, unit, shop))
        .read(root, found);
  }

  /** The file that the job names, else that of the standard name. */
  private static Optional<Opened> shopFile(
      Yaml.Entries root, ShopFiles shops, List<Problem> problems) {
    Optional<Yaml.Entry> key = root.entry(JobForm.SHOP.name());
    return key.isPresent() ? named(root, key.get(), shops, problems) : shops.standard();
  }

  /** One that cannot be opened is complained about where the job names it. */
  private static Optional<Opened> named(
      Yaml.Entries root, Yaml.Entry key, ShopFiles shops, List<Problem> problems) {
    Context bare = Context.of(Unit.MILLIMETRE);
    Optional<Opened> file =
        FileReader.entry(FileKind.JOB, root, JobForm.SHOP, bare).map(shops::named);
    if (file.isPresent() && file.get() instanceof Opened.Refused(_, String rule, String remedy)) {
      return Spot.top(FileKind.JOB, root, bare, problems).at(key).refuse(rule, remedy);
    }
    return file;
  }

  /** Shop, materials and settings are known before anything else is read, wherever they stand. */
  private static Context context(Yaml.Entries root, Unit unit, ShopForm.Stated shop) {
    Context bare = Context.of(unit);
    Settings settings = bare.settings().withShop(shop.settings());
    return new Context(
        unit,
        FileReader.entry(FileKind.JOB, root, JobForm.SETTINGS, bare)
            .map(settings::with)
            .orElse(settings),
        materials(root, bare),
        shop.shop());
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
            FileKind.JOB,
            new Yaml.Entries(entry.key().place(), Yaml.Layout.LINES, List.of(entry)),
            bare,
            new ArrayList<>());
    return MaterialForm.FORM.read(nowhere.at(entry));
  }
}
