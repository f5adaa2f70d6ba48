package fourpin.shop.line;

import fourpin.casework.Finding;
import fourpin.cutting.SoFar;
import fourpin.cutting.ThoroughCutter;
import fourpin.job.Job;
import fourpin.job.Paper;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Shop;
import fourpin.measure.Figure;
import fourpin.measure.LengthStyle;
import fourpin.measure.Reading;
import fourpin.measure.Spelling;
import fourpin.measure.Unit;
import fourpin.plan.CutMaterial;
import fourpin.plan.CutPlan;
import fourpin.plan.CutPlanner;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.Planner;
import fourpin.plan.Wanted;
import fourpin.plan.Yield;
import fourpin.shop.cut.CutReader;
import fourpin.shop.cut.SoFarReader;
import fourpin.shop.file.Opened;
import fourpin.shop.packet.CutFiles;
import fourpin.shop.yaml.Problem;
import java.io.Console;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays parts out on stock, both from tables, or what is left of a job that is being cut. */
@Command(
    name = "cut",
    mixinStandardHelpOptions = true,
    description =
        "Lays parts out on sheets and boards, from two tables or a job, and writes the layouts.")
public final class CutCommand extends Errand {

  /** What the cutting hangs on. */
  private static final List<Setting> SETTINGS =
      List.of(
          Setting.KERF,
          Setting.SHEET_TRIM,
          Setting.BOARD_TRIM,
          Setting.BOARD_EDGE_TRIM,
          Setting.OFFCUT_LENGTH,
          Setting.OFFCUT_WIDTH,
          Setting.SMALL_PIECE,
          Setting.LONGEST_RIP,
          Setting.WIDEST_CROSSCUT,
          Setting.HELD_CROSSCUT,
          Setting.NARROW_RIP,
          Setting.FIRST_CUT,
          Setting.CUT_STAGES);

  private static final int MOST_MESSAGES = 50;

  /** A day. */
  private static final int MOST_SECONDS = 86_400;

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
  private Map<String, String> set = new LinkedHashMap<>();

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description =
          "Seconds to search for, all materials together, 1 to 86400 (default: as far as a set"
              + " amount of work goes, so that the same tables give the same layouts).")
  private Optional<Integer> seconds = Optional.empty();

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

  /** What is to be cut. @param frame with the settings that hold, and the style of printing */
  private record Asked(Job frame, List<Wanted> wanted) {}

  @Override
  int run() {
    List<String> wrong = new ArrayList<>();
    Optional<Asked> asked = stock.isPresent() ? ofTables(stock.get(), wrong) : ofJob(wrong);
    seconds
        .filter(s -> s < 1 || s > MOST_SECONDS)
        .ifPresent(
            s ->
                wrong.add(
                    Problem.ofFile(
                        "--seconds " + s,
                        "it is from 1 to " + MOST_SECONDS,
                        "write how many seconds to search for")));
    if (out.filter(folder -> after.stream().anyMatch(folder::equals)).isPresent()) {
      wrong.add(
          Problem.ofFile(
              "--out " + out.get(),
              "the earlier cutting is there, with your notes",
              "name another folder"));
    }
    List<Wanted> wanted = asked.map(all -> left(all.wanted, wrong)).orElse(List.of());
    wrong.stream().limit(MOST_MESSAGES).forEach(err()::println);
    if (wrong.size() > MOST_MESSAGES) {
      err().println("fourpin: and " + (wrong.size() - MOST_MESSAGES) + " more errors");
    }
    if (!wrong.isEmpty() || asked.isEmpty()) {
      return INPUT_WRONG;
    }
    if (wanted.isEmpty()) {
      out().println("Nothing is left to be cut.");
      return GOOD;
    }
    return cut(asked.get().frame, wanted);
  }

  /** What earlier cuttings leave to be cut. */
  private List<Wanted> left(List<Wanted> wanted, List<String> wrong) {
    Map<String, SoFar> soFar = new LinkedHashMap<>();
    for (Path folder : after) {
      Optional<byte[]> layouts = open(folder.resolve("layouts.csv"), wrong);
      Optional<byte[]> progress = open(folder.resolve("progress.csv"), wrong);
      if (layouts.isPresent() && progress.isPresent()) {
        switch (SoFarReader.read(wanted, layouts.get(), progress.get())) {
          case SoFarReader.Outcome.Good(var byMaterial, var changed) -> {
            byMaterial.forEach((material, its) -> soFar.merge(material, its, SoFar::and));
            changed.forEach(out()::println);
          }
          case SoFarReader.Outcome.Refused(var problems) ->
              problems.forEach(p -> wrong.add(p.text(folder.resolve("progress.csv").toString())));
        }
      }
    }
    return wanted.stream()
        .map(each -> each.after(soFar.getOrDefault(each.material(), SoFar.NOTHING)))
        .filter(each -> !each.parts().isEmpty())
        .toList();
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
    return switch (new JobSource(parts).read()) {
      case JobSource.Outcome.Good(Job job) ->
          Optional.of(new Asked(job, CutPlanner.wanted(Planner.plan(job))));
      case JobSource.Outcome.Refused(var messages) -> {
        wrong.addAll(messages);
        yield Optional.empty();
      }
    };
  }

  private Optional<Asked> ofTables(Path ofStock, List<String> wrong) {
    Optional<CutReader.Outcome.Good> read = read(ofStock, wrong);
    LengthStyle style = read.map(CutReader.Outcome.Good::style).orElse(LengthStyle.MILLIMETRES);
    Settings settings = settings(style.unit(), wrong);
    return read.map(good -> new Asked(frame(style, settings), good.wanted()));
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

  private Settings settings(Unit printed, List<String> wrong) {
    Map<Setting, SettingValue> values = new EnumMap<>(Setting.class);
    set.forEach(
        (key, text) -> {
          switch (setting(key, text)) {
            case Reading.Good<Map.Entry<Setting, SettingValue>>(var value) ->
                values.put(value.getKey(), value.getValue());
            case Reading.Bad<Map.Entry<Setting, SettingValue>>(String rule, String remedy) ->
                wrong.add(Problem.ofFile("--set " + key + "=" + text, rule, remedy));
          }
        });
    return Settings.standard(printed).with(values);
  }

  private Reading<Map.Entry<Setting, SettingValue>> setting(String key, String text) {
    List<String> keys = SETTINGS.stream().map(Setting::key).toList();
    Optional<Setting> named = Setting.named(key).filter(SETTINGS::contains);
    if (named.isEmpty()) {
      return Reading.bad(
          "cutting has no such setting",
          Spelling.nearest(key, keys)
              .map(near -> "did you mean '" + near + "'?")
              .orElse("it has " + String.join(", ", keys)));
    }
    if (named.get().kind() == Setting.Kind.LENGTH
        && unit.isEmpty()
        && text.strip().matches("[\\d./ -]+")) {
      return Reading.bad("a length without a unit", "write it like 1/8 in or 3.2 mm");
    }
    Unit bare = unit.map(u -> u.unit).orElse(Unit.MILLIMETRE);
    return SettingReader.read(named.get(), text, bare)
        .then(value -> Reading.good(Map.entry(named.get(), value)));
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
  private int cut(Job frame, List<Wanted> wanted) {
    CutProgress progress = new CutProgress(terminalToTell(), System::nanoTime, seconds);
    try (Interrupt interrupt = new Interrupt(progress::enough)) {
      ThoroughCutter.Limit limit =
          seconds.isPresent() ? ThoroughCutter.Limit.WATCH : ThoroughCutter.Limit.WORK;
      CutPlan plan = CutPlanner.plan(frame, wanted, limit, progress);
      progress.clear();
      return write(plan);
    }
  }

  private Optional<PrintWriter> terminalToTell() {
    return Optional.ofNullable(System.console()).filter(Console::isTerminal).map(_ -> err());
  }

  private int write(CutPlan plan) {
    Unit unit = plan.job().unit();
    plan.materials().stream().flatMap(material -> told(material, unit)).forEach(out()::println);
    plan.yields().stream().map(yield -> told(yield, unit)).forEach(out()::println);
    plan.findings().stream().map(CutCommand::told).forEach(out()::println);
    return write(
        "cutting",
        out.orElseGet(() -> beside(parts, ".cutting" + (after.isEmpty() ? "" : place()))),
        CutFiles.of(plan),
        plan.complete() ? GOOD : PLAN_HAS_ERRORS);
  }

  /** Behind the name of the folder, so that earlier cuttings stay. */
  private String place() {
    return "-" + (after.size() + 1);
  }

  private static Stream<String> told(CutMaterial material, Unit unit) {
    return material.layouts().stream()
        .flatMap(l -> Stream.concat(Stream.of(told(material, l)), unproven(l.gap(), unit)));
  }

  private static Stream<String> unproven(Figure gap, Unit unit) {
    return gap.value().value() > 0
        ? Stream.of(gap.title() + " " + gap.value().text(unit))
        : Stream.empty();
  }

  private static String told(CutMaterial material, StockLayout layout) {
    return material.material()
        + ", "
        + layout.title()
        + ": "
        + layout.layout().sheets()
        + "; no layout needs fewer than "
        + layout.layout().bound().sheets();
  }

  private static String told(Yield yield, Unit unit) {
    return yield.material()
        + ": "
        + yield.taken().value().text(unit)
        + " taken, "
        + yield.inParts().value().text(unit)
        + " in parts, yield "
        + yield.share().value().text(unit);
  }

  private static String told(Finding finding) {
    return finding.severity().name().toLowerCase(java.util.Locale.ROOT) + ": " + finding.what();
  }
}
