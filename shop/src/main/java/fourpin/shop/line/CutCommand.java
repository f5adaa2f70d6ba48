package fourpin.shop.line;

import fourpin.casework.Finding;
import fourpin.cutting.SoFar;
import fourpin.cutting.ThoroughCutter;
import fourpin.job.Job;
import fourpin.job.Paper;
import fourpin.job.Settings;
import fourpin.job.Shop;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import fourpin.plan.CutPlan;
import fourpin.plan.CutPlanner;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.plan.Stock;
import fourpin.plan.Wanted;
import fourpin.shop.cut.CutReader;
import fourpin.shop.file.Opened;
import fourpin.shop.packet.CutFiles;
import fourpin.shop.yaml.Problem;
import java.io.Console;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays parts out on stock, both from tables, or what is left of a job that is being cut. */
@Command(
    name = "cut",
    mixinStandardHelpOptions = true,
    description =
        "Lays parts out on sheets and boards, from two tables or a job, and writes the layouts.",
    footerHeading = "%n",
    footer = {
      "PARTS needs the columns part, material, length, width; it may have count, grain, spares,"
          + " match, thickness, glue-up, together. STOCK needs material, length, width; it may have"
          + " count, price, kind, supply, worth, thickness, rough-length, rough-width,"
          + " rough-thickness, jointing, first-cut, defects. What they mean stands in"
          + " docs/cutting.md; examples/tool-rack-parts.csv and examples/tool-rack-stock.csv are"
          + " two to start from."
    })
public final class CutCommand extends Errand {

  private static final int MOST_MESSAGES = 50;

  /** How the names of tables end. */
  private static final String TABLE = ".csv";

  /** The units of bare numbers. */
  enum BareUnit {
    inch(Unit.INCH),
    mm(Unit.MILLIMETRE);

    private final Unit unit;

    BareUnit(Unit unit) {
      this.unit = unit;
    }
  }

  @Parameters(
      index = "0",
      paramLabel = "PARTS",
      description = "The table of parts (CSV); or a job file, and no STOCK.")
  private Path parts;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "STOCK",
      description = "The table of stock (CSV).")
  private Optional<Path> stock = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the layouts go (default: a folder beside PARTS, named after it).")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      description = "inch or mm, for numbers without a unit and for printing.")
  private Optional<BareUnit> unit = Optional.empty();

  @Option(
      names = "--set",
      paramLabel = "KEY=VALUE",
      description = "A setting, as in a job file: kerf, sheet-trim, board-trim, ...")
  private List<String> set = List.of();

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description =
          "Seconds to search for, all materials together, 1 to 86400 (default: as far as a set"
              + " amount of work goes, so that the same tables give the same layouts).")
  private Optional<String> seconds = Optional.empty();

  @Option(
      names = "--after",
      paramLabel = "DIR",
      description =
          "An earlier cutting of the same tables, or the packet of the job: what its progress.csv"
              + " says is cut stays, and the rest is laid out again. May be given for each.")
  private List<Path> after = List.of();

  /** picocli sets the fields before the command runs. */
  @SuppressWarnings("NullAway.Init")
  CutCommand() {}

  /**
   * What is to be cut.
   *
   * @param frame with the settings that hold, and the style of printing
   * @param wrong with the job that it is cut for
   */
  private record Asked(Job frame, List<Wanted> wanted, List<Finding> wrong) {

    /** Parts of a case that is refused are not known. */
    boolean lacksParts() {
      return wrong.stream().anyMatch(f -> f.severity() == Finding.Severity.REFUSED);
    }

    int code() {
      return wrong.isEmpty() ? GOOD : PLAN_HAS_ERRORS;
    }
  }

  @Override
  int run() {
    List<String> wrong = new ArrayList<>();
    Optional<Asked> asked = stock.isPresent() ? ofTables(stock.get(), wrong) : ofJob(wrong);
    Optional<Integer> time = seconds.flatMap(text -> Seconds.read(text, wrong));
    Path folder = folder();
    checkFolders(folder, wrong);
    List<Wanted> wanted =
        asked
            .filter(all -> !all.lacksParts())
            .map(all -> left(all.wanted, wrong))
            .orElse(List.of());
    wrong.stream().limit(MOST_MESSAGES).forEach(err()::println);
    if (wrong.size() > MOST_MESSAGES) {
      err().println("fourpin: and " + (wrong.size() - MOST_MESSAGES) + " more errors");
    }
    if (!wrong.isEmpty() || asked.isEmpty()) {
      return INPUT_WRONG;
    }
    asked.get().wrong.stream().map(CutSummary::line).forEach(out()::println);
    if (asked.get().lacksParts()) {
      out().println("Nothing is laid out: the parts of what is refused are not known.");
      return PLAN_HAS_ERRORS;
    }
    if (wanted.isEmpty()) {
      out().println("Nothing is left to be cut.");
      return asked.get().code();
    }
    Job frame = asked.get().frame;
    return Math.max(
        cut(frame.titled(frame.title() + nth()), wanted, time, folder), asked.get().code());
  }

  private void checkFolders(Path folder, List<String> wrong) {
    Set<Path> earlier = new LinkedHashSet<>();
    for (Path each : after) {
      if (!earlier.add(each.toAbsolutePath().normalize())) {
        wrong.add(
            Problem.ofFile(
                "--after " + each, "it is given twice", "name each earlier cutting once"));
      }
    }
    if (earlier.contains(folder.toAbsolutePath().normalize())) {
      wrong.add(
          Problem.ofFile(
              "--out " + folder,
              "the earlier cutting is there, with your notes",
              "name another folder"));
    } else {
      refused(folder).ifPresent(wrong::add);
    }
  }

  private Path folder() {
    return out.orElseGet(() -> beside(parts, ".cutting" + (after.isEmpty() ? "" : place())));
  }

  /** What earlier cuttings leave to be cut. */
  private List<Wanted> left(List<Wanted> wanted, List<String> wrong) {
    EarlierCuttings.Found found = new EarlierCuttings(wanted, wrong).read(after);
    found.told().forEach(out()::println);
    Map<String, SoFar> soFar = found.soFar();
    List<Wanted> left =
        wanted.stream()
            .map(
                each ->
                    each.after(
                        soFar.getOrDefault(each.material(), SoFar.NOTHING),
                        found.last().getOrDefault(each.material(), 0)))
            .filter(each -> !each.parts().isEmpty())
            .toList();
    left.forEach(this::tellBought);
    return left;
  }

  private void tellBought(Wanted left) {
    left.stock().stream()
        .filter(Stock::isBought)
        .map(stock -> bought(left.material(), stock))
        .forEach(out()::println);
  }

  private static String bought(String material, Stock stock) {
    int count = stock.count().orElseThrow();
    return material
        + ": "
        + count
        + " of '"
        + Stock.stated(stock.name())
        + "' from the earlier layouts "
        + (count == 1 ? "is whole, and counts" : "are whole, and count")
        + " as bought.";
  }

  /** Of a job, with its settings and its stock. */
  private Optional<Asked> ofJob(List<String> wrong) {
    if (unit.isPresent() || !set.isEmpty()) {
      wrong.add(
          Problem.ofFile(
              unit.isPresent() ? "--unit" : "--set",
              "a job states its own unit and settings",
              "write them into the job, or name a table of stock after one of parts"));
    }
    if (parts.toString().toLowerCase(Locale.ROOT).endsWith(TABLE)) {
      wrong.add(
          Problem.ofFile(
              parts.toString(),
              "a table of parts needs one of stock",
              "name the table of stock after it"));
      return Optional.empty();
    }
    return switch (new JobSource(parts).read()) {
      case JobSource.Outcome.Good(Job job) -> Optional.of(ofPlan(Planner.plan(job)));
      case JobSource.Outcome.Refused(var messages) -> {
        wrong.addAll(messages);
        yield Optional.empty();
      }
    };
  }

  private static Asked ofPlan(Plan plan) {
    return new Asked(plan.job(), CutPlanner.wanted(plan), CutPlanner.wrongBesides(plan));
  }

  private Optional<Asked> ofTables(Path ofStock, List<String> wrong) {
    Optional<CutReader.Outcome.Good> read = read(ofStock, wrong);
    LengthStyle style = read.map(CutReader.Outcome.Good::style).orElse(LengthStyle.MILLIMETRES);
    Settings settings = SetOptions.read(set, style.unit(), unit.map(u -> u.unit), wrong);
    return read.map(good -> new Asked(frame(style, settings), good.wanted(), List.of()));
  }

  private Optional<CutReader.Outcome.Good> read(Path table, List<String> wrong) {
    Optional<byte[]> partsRead = open(parts, wrong);
    Optional<byte[]> stockRead = open(table, wrong);
    if (partsRead.isEmpty() || stockRead.isEmpty()) {
      return Optional.empty();
    }
    return switch (CutReader.read(partsRead.get(), stockRead.get(), unit.map(u -> u.unit))) {
      case CutReader.Outcome.Good good -> Optional.of(good);
      case CutReader.Outcome.Refused(var ofParts, var ofStock) -> {
        ofParts.forEach(p -> wrong.add(p.text(parts.toString())));
        ofStock.forEach(p -> wrong.add(p.text(table.toString())));
        yield Optional.empty();
      }
    };
  }

  private static Optional<byte[]> open(Path file, List<String> wrong) {
    return switch (Opened.open(file, "check its name and folder", "name the table itself")) {
      case Opened.Bytes bytes -> Optional.of(bytes.bytes());
      case Opened.Refused(String name, String rule, String remedy) -> {
        wrong.add(Problem.ofFile(name, rule, remedy));
        yield Optional.empty();
      }
    };
  }

  /** What is printed on every page, and how. */
  private Job frame(LengthStyle style, Settings settings) {
    boolean inches = style.unit().customary();
    return new Job(
        parts.getFileName().toString().replaceFirst("\\.[^.]*$", ""),
        "A",
        inches ? Unit.INCH : Unit.MILLIMETRE,
        style,
        inches ? Paper.LETTER : Paper.A4,
        "",
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        settings,
        Shop.NONE);
  }

  /** An interrupt ends the search, and what there is by then is written. */
  private int cut(Job frame, List<Wanted> wanted, Optional<Integer> time, Path folder) {
    CutProgress progress = new CutProgress(terminalToTell(), System::nanoTime, time, frame.unit());
    try (Interrupt interrupt = new Interrupt(progress::enough)) {
      ThoroughCutter.Limit limit =
          time.isPresent() ? ThoroughCutter.Limit.WATCH : ThoroughCutter.Limit.WORK;
      CutPlan plan = CutPlanner.plan(frame, wanted, limit, progress);
      progress.clear();
      CutSummary.of(plan).forEach(out()::println);
      out().flush();
      progress.writing();
      int code = plan.complete() ? GOOD : PLAN_HAS_ERRORS;
      return write("cutting", folder, CutFiles.of(plan, number()), code);
    }
  }

  private Optional<PrintWriter> terminalToTell() {
    return Optional.ofNullable(System.console()).filter(Console::isTerminal).map(_ -> err());
  }

  /** So that its pages are not taken for those of an earlier cutting. */
  private String nth() {
    return after.isEmpty() ? "" : ", cutting " + number();
  }

  /** Its place among the cuttings of the same parts. */
  private int number() {
    return after.size() + 1;
  }

  /** Behind the name of the folder, so that earlier cuttings stay. */
  private String place() {
    return "-" + number();
  }
}
