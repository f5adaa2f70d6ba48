package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.casework.Part.Role;
import fourpin.job.Back;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.job.Support.Mounting;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Counts what is bought by the piece or by length. */
final class HardwareList {

  private static final int UPRIGHTS = 2;
  private static final int PER_CENT = 100;

  private final Job job;
  private final LengthStyle style;
  private final Map<List<String>, Entry> entries = new LinkedHashMap<>();

  private record Entry(long needed, double sparePerCent, Length length, String where) {}

  private HardwareList(Job job) {
    this.job = job;
    this.style = job.style();
  }

  static List<HardwareItem> of(Job job, List<BuiltCase> cases, List<BayGrid> grids) {
    HardwareList list = new HardwareList(job);
    for (BuiltCase built : cases) {
      grids.stream()
          .filter(g -> g.caseName().equals(built.order().name()))
          .forEach(g -> list.supports(built, g));
      list.screws(built);
      list.back(built);
      list.banding(built);
      list.glass(built);
    }
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
        String size = style.text(sleeved.outside()) + " x " + style.text(sleeved.length());
        add("sleeve", size, grid.levels().size() * ends, spare, where);
      }
      case Support.Standards standards -> standards(grid, standards, ends, seats, spare, where);
      case Support.Cleats _ -> {
        // Strips and cleats are cut from boards and stand in the cut list.
      }
    }
  }

  private void standards(
      BayGrid grid,
      Support.Standards standards,
      long ends,
      long seats,
      double spare,
      String where) {
    String name =
        standards.mounting() == Mounting.LET_IN ? "standard, let in" : "standard, surface";
    for (BayGrid.Run run : grid.runs()) {
      String size = style.text(standards.width()) + ", cut to " + style.text(run.length());
      add(name, size, ends, 0, where);
    }
    add("clip for standards", "to suit", seats, spare, where);
    long stock = standardsSold(grid, standards, ends);
    add(name + " as sold", style.text(standards.soldIn()), stock, 0, where);
  }

  /**
   * Whole standards needed, longest pieces first, each from the first standard with room for it. A
   * piece starts at a slot like the numbered end, so the one before it takes whole pitches, and the
   * saw cut out of the last of them.
   */
  private static long standardsSold(BayGrid grid, Support.Standards standards, long ends) {
    List<Length> left = new ArrayList<>();
    long joined = 0;
    for (BayGrid.Run run :
        grid.runs().stream()
            .sorted(Comparator.comparing(BayGrid.Run::length).reversed())
            .toList()) {
      if (run.length().isMoreThan(standards.soldIn())) {
        joined += ends * Math.ceilDiv(run.length().picometres(), standards.soldIn().picometres());
      } else {
        for (long i = 0; i < ends; i++) {
          cutFrom(left, run.length(), standards);
        }
      }
    }
    return left.size() + joined;
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

  /** One near each end of a standard or strip, and no farther apart than the settings say. */
  private void runScrews(BuiltCase built, BayGrid grid, long ends) {
    Length spacing = built.order().settings().length(Setting.SCREW_SPACING);
    long each =
        grid.runs().stream()
            .mapToLong(r -> Math.ceilDiv(r.length().picometres(), spacing.picometres()) + 1)
            .sum();
    add("screw for standards and strips", "to suit", each * ends, 0, built.order().name());
  }

  private String pinSize(Support.Pins pins) {
    return style.text(pins.diameter()) + " stem, " + style.text(pins.stem()) + " in the hole";
  }

  private void screws(BuiltCase built) {
    long count =
        built.parts().stream()
            .flatMap(p -> p.features().stream())
            .filter(f -> f instanceof Hole hole && hole.use() == Hole.Use.SCREW)
            .count();
    Length diameter = built.order().settings().length(Setting.SCREW_DIAMETER);
    add(
        "wood screw for joints",
        style.text(diameter) + " hole",
        count * built.order().quantity(),
        0,
        built.order().name());
  }

  /** A back that is not in a groove is fastened all round. */
  private void back(BuiltCase built) {
    boolean fastened = built.order().back().filter(b -> b.kind() != Back.Kind.GROOVE).isPresent();
    Length spacing = built.order().settings().length(Setting.SCREW_SPACING);
    built.parts().stream()
        .filter(p -> fastened && p.role() == Role.BACK)
        .forEach(
            p -> {
              Length round = p.box().size(Axis.X).plus(p.box().size(Axis.Z)).times(2);
              long count = Math.ceilDiv(round.picometres(), spacing.picometres());
              add(
                  "screw for the back",
                  "to suit its thickness",
                  count * built.order().quantity(),
                  0,
                  built.order().name());
            });
  }

  private void banding(BuiltCase built) {
    for (Part part : built.parts()) {
      for (EdgeBand band : part.edging()) {
        if (band.edging().kind() == Edging.Kind.BANDING) {
          String size = style.text(part.thickness()) + " wide";
          Length length = band.length().times(built.order().quantity());
          double spare = built.order().settings().number(Setting.EDGING_SPARE);
          add(
              band.edging().material() + " banding",
              size,
              built.order().quantity(),
              spare,
              length,
              built.order().name());
        }
      }
    }
  }

  private void glass(BuiltCase built) {
    for (Part part : built.parts()) {
      Material material = job.material(part.material());
      if (material.kind() == Material.Kind.GLASS) {
        String kind = built.order().settings().choice(Setting.GLASS);
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
    add(name, size, needed, spare, Length.ZERO, where);
  }

  private void add(
      String name, String size, long needed, double spare, Length length, String where) {
    if (needed > 0) {
      entries.merge(
          List.of(name, size), new Entry(needed, spare, length, where), HardwareList::together);
    }
  }

  private static Entry together(Entry a, Entry b) {
    String where = a.where().contains(b.where()) ? a.where() : a.where() + ", " + b.where();
    return new Entry(
        a.needed() + b.needed(),
        Math.max(a.sparePerCent(), b.sparePerCent()),
        a.length().plus(b.length()),
        where);
  }

  private List<HardwareItem> items() {
    return entries.entrySet().stream().map(e -> item(e.getKey(), e.getValue())).toList();
  }

  private static HardwareItem item(List<String> name, Entry entry) {
    double factor = 1 + entry.sparePerCent() / PER_CENT;
    Optional<Length> length =
        entry.length().isPositive()
            ? Optional.of(Length.nearestMm(entry.length().mm() * factor))
            : Optional.empty();
    return new HardwareItem(
        name.getFirst(),
        name.getLast(),
        entry.needed(),
        (long) Math.ceil(entry.needed() * factor - 1e-9),
        length,
        entry.where());
  }
}
