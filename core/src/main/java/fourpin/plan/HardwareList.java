package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.job.Support.Mounting;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.plan.HardwareItem.Amount;
import fourpin.strength.CaseAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;

/** Counts what is bought by the piece or by length. */
final class HardwareList {

  private static final int UPRIGHTS = 2;
  private static final int PER_CENT = 100;

  private final Job job;
  private final LengthStyle style;
  private final Map<List<String>, Entry> entries = new LinkedHashMap<>();

  private record Entry(
      Kind kind,
      long pieces,
      Length length,
      Optional<Quantity> covers,
      double sparePerCent,
      String where) {
    Entry(Kind kind, long pieces, Length length, double sparePerCent, String where) {
      this(kind, pieces, length, Optional.empty(), sparePerCent, where);
    }
  }

  private enum Kind {
    PIECES,
    CUT_LENGTHS,
    RUNNING,
    TO_SUIT
  }

  private HardwareList(Job job) {
    this.job = job;
    this.style = job.style();
  }

  /**
   * @param answers what cases do, by which they are anchored
   */
  static List<HardwareItem> of(
      Job job,
      List<BuiltCase> cases,
      List<BayGrid> grids,
      List<CaseBoring> borings,
      List<CaseAnswer> answers) {
    HardwareList list = new HardwareList(job);
    for (BuiltCase built : cases) {
      grids.stream()
          .filter(g -> g.caseName().equals(built.order().name()))
          .forEach(g -> list.supports(built, g));
      list.screws(built);
      list.blocks(built);
      list.back(built);
      list.stack(built, cases);
      list.banding(built);
      list.glass(built);
    }
    cases.forEach(built -> new Sundries(job, built).all(borings, answers).forEach(list::add));
    return list.items();
  }

  private void supports(BuiltCase built, BayGrid grid) {
    long copies = built.order().quantity();
    long ends = (long) grid.rows().size() * UPRIGHTS * copies;
    long seats = grid.seats().size() * ends;
    double spare = built.order().settings().number(Setting.SPARE_PINS);
    String where = built.order().name();
    runScrews(built, grid, ends);
    switch (grid.support()) {
      case Support.Pins pins -> add("shelf pin", pinSize(pins), seats, spare, where);
      case Support.Sleeved sleeved -> {
        add("shelf pin", pinSize(sleeved.pins()), seats, spare, where);
        String size = style.diameter(sleeved.outside()) + " x " + style.text(sleeved.length());
        add("sleeve", size, grid.levels().size() * ends, spare, where);
      }
      case Support.Standards standards -> standards(built, grid, standards, ends, seats, spare);
      case Support.Cleats _ -> {
        // Strips and cleats are cut from boards and stand in the cut list.
      }
    }
  }

  private void standards(
      BuiltCase built,
      BayGrid grid,
      Support.Standards standards,
      long ends,
      long seats,
      double spare) {
    String where = built.order().name();
    String name =
        standards.mounting() == Mounting.LET_IN ? "standard, let in" : "standard, surface";
    StandardCut cut = new StandardCut(built.order().settings(), style);
    for (BayGrid.Run run : grid.runs()) {
      for (Length piece : cut.pieces(run, standards)) {
        String size = style.text(standards.width()) + ", cut to " + style.text(piece);
        put(name, size, new Entry(Kind.CUT_LENGTHS, ends, Length.ZERO, 0, where));
      }
    }
    String sold = style.text(standards.width()) + ", " + style.text(standards.soldIn()) + " long";
    add(name + " as sold", sold, standardsSold(grid, standards, cut, ends), 0, where);
    add("clip for standards", "to suit", seats, spare, where);
  }

  /**
   * Whole standards needed, longest pieces first, each from the first standard with room for it. A
   * piece starts at a slot like the numbered end, so the one before it takes whole pitches, and the
   * saw cut out of the last of them.
   */
  private static long standardsSold(
      BayGrid grid, Support.Standards standards, StandardCut cut, long ends) {
    List<Length> left = new ArrayList<>();
    grid.runs().stream()
        .flatMap(run -> cut.pieces(run, standards).stream())
        .sorted(Comparator.reverseOrder())
        .forEach(piece -> LongStream.range(0, ends).forEach(_ -> cutFrom(left, piece, standards)));
    return left.size();
  }

  private static void cutFrom(List<Length> left, Length piece, Support.Standards standards) {
    int at = 0;
    while (at < left.size() && left.get(at).isLessThan(piece)) {
      at++;
    }
    if (at == left.size()) {
      left.add(standards.soldIn());
    }
    Length pitch = standards.slotPitch();
    left.set(at, left.get(at).minus(pitch.times(piece.wholeTimes(pitch) + 1)));
  }

  /** Standards and strips are screwed on alike; no screw comes out of the panel behind. */
  private void runScrews(BuiltCase built, BayGrid grid, long ends) {
    StandardCut cut = new StandardCut(built.order().settings(), style);
    long screws = grid.runs().stream().mapToLong(run -> ends * screws(cut, run, grid)).sum();
    Length panel = built.part(built.bays().get(grid.bay() - 1).left()).thickness();
    String size =
        grid.support() instanceof Support.Cleats cleats
            ? "longer than "
                + style.text(cleats.thickness())
                + ", shorter than "
                + style.text(cleats.thickness().plus(panel))
            : "to suit their holes, shorter than " + style.text(panel);
    add("screw for standards and strips", size, screws, 0, built.order().name());
  }

  private static long screws(StandardCut cut, BayGrid.Run run, BayGrid grid) {
    return grid.support() instanceof Support.Standards standards
        ? cut.screws(run, standards)
        : cut.screws(run.length());
  }

  private String pinSize(Support.Pins pins) {
    return style.diameter(pins.diameter()) + " stem, " + style.text(pins.stem()) + " in the hole";
  }

  private void screws(BuiltCase built) {
    String diameter = style.diameter(built.order().settings().length(Setting.SCREW_DIAMETER));
    for (Part part : built.parts()) {
      long count =
          part.features().stream()
              .filter(f -> f instanceof Hole hole && hole.use() == Hole.Use.SCREW)
              .count();
      add(
          "wood screw for joints",
          "for a hole of " + diameter + ", " + length(built, part.thickness()),
          count * built.order().quantity(),
          0,
          built.order().name());
    }
  }

  /** One from each side, slantwise; the bottom is to be seen above them. */
  private void blocks(BuiltCase built) {
    long blocks = built.parts().stream().filter(p -> p.role() == Part.Role.BLOCK).count();
    add(
        "wood screw for blocks under the bottom",
        "to suit a slant that ends within the bottom, " + style.text(built.part("B").thickness()),
        AssemblySteps.SCREWS_OF_BLOCK * blocks * built.order().quantity(),
        0,
        built.order().name());
  }

  /** Through one part and so far into the next. */
  private String length(BuiltCase built, Length through) {
    Length grip = built.order().settings().length(Setting.SCREW_GRIP);
    return style.text(through.plus(grip)) + " long or the next length sold";
  }

  private void back(BuiltCase built) {
    for (Part part : built.parts()) {
      long screws = BackSteps.screws(built, part) * built.order().quantity();
      String size = length(built, part.thickness());
      add("screw for the back", size, screws, 0, built.order().name());
    }
  }

  private void stack(BuiltCase built, List<BuiltCase> cases) {
    StackSteps steps = new StackSteps(job, built, cases);
    if (steps.screws() > 0) {
      long screws = steps.screws() * built.order().quantity();
      add("wood screw to the case below", steps.screwSize(), screws, 0, built.order().name());
    }
  }

  private void banding(BuiltCase built) {
    double spare = built.order().settings().number(Setting.EDGING_SPARE);
    for (Part part : built.parts()) {
      for (EdgeBand band : part.edging()) {
        if (band.edging().kind() == Edging.Kind.BANDING) {
          Length length = band.length().times(built.order().quantity());
          put(
              band.edging().material() + " banding",
              "wider than " + style.text(part.thickness()) + ", to trim",
              new Entry(Kind.RUNNING, 0, length, spare, built.order().name()));
        }
      }
    }
  }

  private void glass(BuiltCase built) {
    for (Part part : built.parts()) {
      Material material = job.material(part.material());
      if (material.kind() == Material.Kind.GLASS) {
        String kind = new GlassKinds(job, built).of(material);
        String size =
            style.number(part.length().total())
                + " x "
                + style.number(part.width().total())
                + " x "
                + style.text(part.thickness())
                + ", edges ground";
        add("glass shelf, " + kind, size, built.order().quantity(), 0, built.order().name());
      }
    }
  }

  private void add(String name, String size, long needed, double spare, String where) {
    if (needed > 0) {
      put(name, size, new Entry(Kind.PIECES, needed, Length.ZERO, spare, where));
    }
  }

  private void add(HardwareItem item) {
    switch (item.amount()) {
      case Amount.Pieces pieces -> add(item.name(), item.size(), pieces.needed(), 0, item.where());
      case Amount.ToSuit(Quantity covers) ->
          put(
              item.name(),
              item.size(),
              new Entry(Kind.TO_SUIT, 0, Length.ZERO, Optional.of(covers), 0, item.where()));
      case Amount.CutLengths _, Amount.Running _ ->
          throw new IllegalArgumentException(item.name() + " is neither counted nor to suit");
    }
  }

  private void put(String name, String size, Entry entry) {
    entries.merge(List.of(name, size), entry, HardwareList::together);
  }

  private static Entry together(Entry a, Entry b) {
    String where = a.where().contains(b.where()) ? a.where() : a.where() + ", " + b.where();
    return new Entry(
        a.kind(),
        a.pieces() + b.pieces(),
        a.length().plus(b.length()),
        a.covers().flatMap(x -> b.covers().map(y -> sum(x, y))),
        Math.max(a.sparePerCent(), b.sparePerCent()),
        where);
  }

  private static Quantity sum(Quantity a, Quantity b) {
    return Quantity.of(a.value() + b.value(), a.unit());
  }

  private List<HardwareItem> items() {
    return entries.entrySet().stream()
        .map(
            e ->
                new HardwareItem(
                    e.getKey().getFirst(),
                    e.getKey().getLast(),
                    amount(e.getValue()),
                    e.getValue().where()))
        .toList();
  }

  private Amount amount(Entry entry) {
    double factor = 1 + entry.sparePerCent() / PER_CENT;
    return switch (entry.kind()) {
      case PIECES ->
          new Amount.Pieces(entry.pieces(), (long) Math.ceil(entry.pieces() * factor - 1e-9));
      case CUT_LENGTHS -> new Amount.CutLengths(entry.pieces());
      case TO_SUIT -> new Amount.ToSuit(entry.covers().orElseThrow());
      case RUNNING ->
          new Amount.Running(entry.length(), Length.nearestMm(entry.length().mm() * factor));
    };
  }
}
