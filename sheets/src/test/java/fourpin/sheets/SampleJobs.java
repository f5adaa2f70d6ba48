package fourpin.sheets;

import fourpin.job.Back;
import fourpin.job.Bay;
import fourpin.job.BoardStock;
import fourpin.job.CaseOrder;
import fourpin.job.Doors;
import fourpin.job.Edging;
import fourpin.job.FaceFrame;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.Paper;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.SheetStock;
import fourpin.job.Shelves;
import fourpin.job.Shop;
import fourpin.job.Sizes;
import fourpin.job.Supply;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Jobs that the tests of this module draw. */
public final class SampleJobs {

  private SampleJobs() {}

  /** In inches on Letter: three bays with a fixed shelf, four adjustable shelves each. */
  public static Job readingRoom() {
    return job("Reading room", "bookcase", Unit.INCH, 3, "84");
  }

  /**
   * In millimetres on A4: the rows of its two bays meet in the partition, which would break the
   * bottom if no block stood under it.
   */
  public static Job musicLibrary() {
    Job job = job("Music library", "cabinet", Unit.MILLIMETRE, 2, "48");
    Settings blocks = job.settings().with(Setting.BEHIND_KICK, new SettingValue.OfChoice("blocks"));
    return job.with(List.of(order("cabinet", 2, "48", blocks)));
  }

  /** The reading room's bookcase with a face frame and two inset doors before each bay. */
  public static Job framed() {
    Job job = readingRoom();
    CaseOrder plain = job.cases().getFirst();
    FaceFrame frame =
        new FaceFrame(
            "oak",
            in("1 3/4"),
            Optional.of(in("1 3/4")),
            in("3"),
            in("4"),
            in("0"),
            FaceFrame.Scribe.NONE);
    Doors doors =
        new Doors(
            Doors.Kind.INSET,
            2,
            in("3/4"),
            in("1/8"),
            List.of(in("10"), in("70")),
            in("1 1/2"),
            in("2"),
            in("3/4"));
    CaseOrder framed =
        new CaseOrder(
            plain.name(),
            plain.quantity(),
            plain.sizes(),
            plain.material(),
            plain.bays(),
            plain.topJoint(),
            plain.bottomJoint(),
            plain.partitionJoint(),
            plain.fixedShelfJoint(),
            plain.back(),
            plain.kick(),
            Optional.of(frame),
            Optional.of(doors),
            plain.edging(),
            plain.load(),
            plain.settings());
    return job.with(List.of(framed));
  }

  /** Two cases, "low" with the default depth of holes and "high" with one of its own. */
  public static Job twoDepths() {
    Job job = readingRoom();
    Settings deep = job.settings().with(Setting.HOLE_DEPTH, new SettingValue.OfLength(in("5/16")));
    return job.with(List.of(order("low", 1, "48", job.settings()), order("high", 1, "84", deep)));
  }

  /** A bookcase of one bay, open from end to end, its shelves on wooden cleats. */
  public static Job onCleats() {
    Job job = job("On cleats", "case", Unit.INCH, 1, "60");
    Support cleats =
        new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("1 1/2"), in("1 3/8"), in("5/8"));
    Bay open =
        new Bay(
            Optional.empty(), List.of(), bay().shelves(), Optional.of(cleats), Optional.empty());
    return job.with(List.of(job.cases().getFirst().with(List.of(open))));
  }

  /** A job of other names; sizes in inches. */
  public static Job job(String title, String caseName, Unit unit, int bays, String height) {
    LengthStyle style = unit.customary() ? new LengthStyle(Unit.INCH, 32) : LengthStyle.MILLIMETRES;
    return new Job(
        title,
        "B",
        unit,
        style,
        unit.customary() ? Paper.LETTER : Paper.A4,
        "$",
        Optional.empty(),
        List.of(
            material("ply", Material.Kind.SHEET, "plywood, veneer core", "3/4"),
            material("back", Material.Kind.SHEET, "plywood, veneer core", "1/4"),
            material("oak", Material.Kind.BOARD, "oak, white", "3/4")),
        List.of(sheet("ply", "48", "96.00"), sheet("back", "60", "38.00")),
        List.of(
            new BoardStock(
                "oak",
                in("96"),
                in("5 1/2"),
                Optional.empty(),
                Optional.of(new BigDecimal("31.50")),
                Supply.TO_BUY)),
        List.of(order(caseName, bays, height, Settings.standard(unit))),
        Settings.standard(unit),
        Shop.NONE);
  }

  private static CaseOrder order(String name, int bays, String height, Settings settings) {
    return new CaseOrder(
        name,
        2,
        new Sizes(Sizes.Measured.OUTSIDE, in("20").times(bays), in(height), in("12")),
        "ply",
        Collections.nCopies(bays, bay()),
        new Joint(Joint.Kind.RABBET, Optional.of(in("3/8"))),
        joint(),
        joint(),
        joint(),
        Optional.of(new Back(Back.Kind.GROOVE, "back", Optional.of(in("1/4")), Back.Pieces.ONE)),
        Optional.of(new Kick(in("3 1/2"), in("2"), "ply")),
        Optional.empty(),
        Optional.empty(),
        List.of(strip("1/4", "3/4")),
        Optional.of(new Load.Holds("books, average")),
        settings);
  }

  private static Joint joint() {
    return new Joint(Joint.Kind.DADO, Optional.of(in("1/4")));
  }

  private static Bay bay() {
    return new Bay(
        Optional.empty(),
        List.of(in("30")),
        Optional.of(
            new Shelves(
                new Shelves.Placing.Evenly(3), "ply", List.of(strip("3/4", "1 1/4")), in("0"))),
        Optional.of(new Support.Pins(in("1/4"), in("3/8"), in("3/8"), in("1/8"))),
        Optional.empty());
  }

  private static Edging strip(String thickness, String height) {
    return new Edging(
        Edging.Kind.STRIP, "oak", in(thickness), in(height), List.of(Edging.Edge.FRONT));
  }

  private static Material material(String name, Material.Kind kind, String of, String thickness) {
    return new Material(
        name,
        kind,
        of,
        in(thickness),
        Optional.empty(),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty());
  }

  private static SheetStock sheet(String material, String width, String price) {
    return new SheetStock(
        material,
        in("96"),
        in(width),
        Optional.empty(),
        Optional.of(new BigDecimal(price)),
        Supply.TO_BUY);
  }

  public static Length in(String inches) {
    return new LengthReader(Unit.INCH).read(inches).orThrow();
  }
}
