package fourpin.job;

import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Jobs drawn at random from a seed: 1 to 12 bays, every joint, support, back, kick, face frame,
 * door and edging, in inches or millimetres, and a shop to make it in. Most can be built; some are
 * refused, as they should be. The same seed gives the same job.
 */
public final class RandomJobs {

  private final Random random;
  private final Unit unit;

  private RandomJobs(long seed) {
    // The first numbers of neighbouring seeds are alike, so they are spread apart.
    this.random = new Random(seed * 0x9E3779B97F4A7C15L);
    this.random.nextLong();
    this.unit = random.nextBoolean() ? Unit.INCH : Unit.MILLIMETRE;
  }

  public static Job of(long seed) {
    RandomJobs jobs = new RandomJobs(seed);
    Job job = jobs.job();
    // The shop comes after it, so that the job of a seed does not change with it, and what was
    // added
    // since then last.
    return jobs.inThreeRows(job.with(RandomShop.of(jobs.random, jobs.unit, job)));
  }

  /** Now and then shallow shelves have a third row too. */
  private Job inThreeRows(Job job) {
    return random.nextInt(8) == 0
        ? job.with(job.cases().stream().map(this::inThreeRows).toList())
        : job;
  }

  private CaseOrder inThreeRows(CaseOrder order) {
    SettingValue from = new SettingValue.OfLength(length(150, 350));
    return order.with(order.settings().with(Setting.MIDDLE_ROW_FROM, from));
  }

  private Job job() {
    return new Job(
        "Random",
        "A",
        unit,
        unit == Unit.INCH ? LengthStyle.FRACTIONS : LengthStyle.MILLIMETRES,
        Paper.A4,
        "$",
        Optional.empty(),
        List.of(
            material("ply", Material.Kind.SHEET, "plywood, veneer core", 16, 26),
            material("back", Material.Kind.SHEET, "plywood, veneer core", 5, 8),
            material("oak", Material.Kind.BOARD, "oak, white", 18, 22)),
        List.of(),
        List.of(),
        List.of(order()),
        Settings.standard(unit),
        Shop.NONE);
  }

  private Material material(String name, Material.Kind kind, String of, int least, int most) {
    return new Material(
        name,
        kind,
        of,
        length(least, most),
        Optional.empty(),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty());
  }

  private CaseOrder order() {
    int count = random.nextInt(4) == 0 ? 1 + random.nextInt(12) : 1 + random.nextInt(4);
    List<Bay> bays = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      bays.add(bay());
    }
    boolean kicked = random.nextBoolean();
    return new CaseOrder(
        "Case",
        1 + random.nextInt(2),
        new Sizes(
            pick(Sizes.Measured.values()),
            length(300 * count + 60, 800 * count + 200),
            length(700, 2300),
            length(220, 520)),
        "ply",
        bays,
        joint(Joint.Kind.RABBET),
        joint(kicked ? Joint.Kind.DADO : Joint.Kind.RABBET),
        joint(Joint.Kind.DADO),
        joint(Joint.Kind.DADO),
        maybe(
            new Back(
                pick(Back.Kind.values()), "back", maybe(length(4, 8)), pick(Back.Pieces.values()))),
        kicked ? Optional.of(new Kick(length(50, 120), length(0, 60), "ply")) : Optional.empty(),
        random.nextInt(4) == 0 ? Optional.of(frame()) : Optional.empty(),
        random.nextInt(4) == 0 ? Optional.of(doors()) : Optional.empty(),
        random.nextBoolean() ? List.of(banding(List.of(Edging.Edge.FRONT))) : List.of(),
        Optional.of(new Load.Holds("books, average")),
        settings());
  }

  private Bay bay() {
    List<Length> fixed = random.nextInt(3) == 0 ? List.of(length(350, 450)) : List.of();
    if (random.nextInt(8) == 0) {
      return new Bay(Optional.empty(), fixed, Optional.empty(), Optional.empty(), Optional.empty());
    }
    return new Bay(
        Optional.empty(), fixed, Optional.of(shelves()), Optional.of(support()), Optional.empty());
  }

  private Shelves shelves() {
    Shelves.Placing placing =
        random.nextInt(4) == 0
            ? new Shelves.Placing.AtHeights(List.of(length(260, 330), length(480, 600)))
            : new Shelves.Placing.Evenly(1 + random.nextInt(4));
    List<Edging> edging = new ArrayList<>();
    if (random.nextBoolean()) {
      edging.add(banding(List.of(Edging.Edge.FRONT)));
    }
    if (random.nextInt(4) == 0) {
      edging.add(banding(List.of(Edging.Edge.LEFT, Edging.Edge.RIGHT)));
    }
    return new Shelves(placing, "ply", edging, length(0, 40));
  }

  private Support support() {
    Length stem = length(4, 8);
    Support.Pins pins = new Support.Pins(stem, length(8, 12), length(6, 14), stem.over(2));
    return switch (random.nextInt(5)) {
      case 0, 1 -> pins;
      case 2 -> new Support.Sleeved(pins, stem.plus(length(1, 2)), length(8, 12), length(0, 1));
      case 3 ->
          new Support.Standards(
              pick(Support.Mounting.values()),
              length(12, 20),
              length(3, 5),
              length(12, 26),
              length(5, 20),
              length(1, 3),
              length(2, 6),
              length(1800, 2400));
      default ->
          new Support.Cleats(
              "oak",
              length(25, 45),
              length(15, 20),
              length(20, 30),
              length(16, 20),
              length(10, 15));
    };
  }

  private Joint joint(Joint.Kind kind) {
    return random.nextInt(3) == 0
        ? new Joint(Joint.Kind.BUTT, Optional.empty())
        : new Joint(kind, maybe(length(4, 9)));
  }

  private FaceFrame frame() {
    return new FaceFrame(
        "oak",
        length(35, 60),
        maybe(length(30, 50)),
        length(40, 70),
        length(20, 40),
        length(0, 10),
        pick(FaceFrame.Scribe.values()));
  }

  private Doors doors() {
    return new Doors(
        pick(Doors.Kind.values()),
        1 + random.nextInt(2),
        length(16, 22),
        length(2, 4),
        List.of(length(150, 250), length(500, 600)),
        length(30, 60),
        length(40, 60),
        length(12, 20));
  }

  private Edging banding(List<Edging.Edge> edges) {
    return new Edging(Edging.Kind.BANDING, "veneer", length(0, 3), length(16, 26), edges);
  }

  private Settings settings() {
    Map<Setting, SettingValue> set = new LinkedHashMap<>();
    set.put(Setting.PITCH, new SettingValue.OfLength(length(25, 64)));
    set.put(Setting.CLEAR_BELOW, new SettingValue.OfLength(length(20, 200)));
    set.put(Setting.CLEAR_ABOVE, new SettingValue.OfLength(length(20, 200)));
    set.put(Setting.HOLE_DEPTH, new SettingValue.OfLength(length(6, 12)));
    set.put(Setting.ROWS, choice("full", "grouped"));
    set.put(Setting.BALANCE, choice("free", "balanced"));
    set.put(Setting.DRILL, choice("before-assembly", "after-assembly"));
    if (random.nextInt(3) == 0) {
      set.put(Setting.FIRST_HOLE, new SettingValue.OfLength(length(150, 300)));
    }
    return Settings.standard(unit).with(set);
  }

  private SettingValue choice(String one, String other) {
    return new SettingValue.OfChoice(random.nextBoolean() ? one : other);
  }

  private Length length(int least, int most) {
    return length(random, unit, least, most);
  }

  /** Between two whole numbers of mm, in 64ths of an inch or tenths of a millimetre. */
  static Length length(Random random, Unit unit, int least, int most) {
    int tenths = least * 10 + random.nextInt((most - least) * 10 + 1);
    return unit == Unit.INCH
        ? Length.inches(Math.round(tenths * 6.4 / 25.4), 64)
        : Length.of(tenths, Unit.MILLIMETRE).over(10);
  }

  private <T> Optional<T> maybe(T value) {
    return random.nextBoolean() ? Optional.of(value) : Optional.empty();
  }

  @SafeVarargs
  private <T> T pick(T... values) {
    return values[random.nextInt(values.length)];
  }
}
