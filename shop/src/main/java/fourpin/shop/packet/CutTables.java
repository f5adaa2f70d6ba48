package fourpin.shop.packet;

import fourpin.cutting.Direction;
import fourpin.cutting.Node;
import fourpin.cutting.Part;
import fourpin.cutting.Piece;
import fourpin.cutting.Placed;
import fourpin.cutting.SawStep;
import fourpin.cutting.SetUp;
import fourpin.cutting.SheetPattern;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import fourpin.plan.CutMaterial;
import fourpin.plan.Finished;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.SawCare;
import fourpin.plan.Wanted;
import fourpin.plan.Yield;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Layouts, cutting order and stock for spreadsheets: lengths as printed, and in millimetres to
 * reckon with.
 */
final class CutTables {

  private static final List<String> LAYOUT_COLUMNS =
      List.of(
          "material",
          "cut from",
          "layout",
          "alike",
          "stock",
          "what",
          "part",
          "length",
          "width",
          "x mm",
          "y mm",
          "length mm",
          "width mm");
  private static final List<String> ORDER_COLUMNS =
      List.of(
          "material",
          "cut from",
          "layout",
          "set-up",
          "saw",
          "setting",
          "setting mm",
          "piece",
          "near",
          "near is",
          "far",
          "far is",
          "held by",
          "care",
          "fence or stop",
          "fence or stop mm");

  private static final List<String> PROGRESS_COLUMNS =
      List.of("cutting", "material", "cut from", "layout", "sheet", "stock", "state", "except");

  private static final List<String> FINISHED_COLUMNS =
      List.of(
          "material",
          "part",
          "pieces for each",
          "cut length",
          "cut width",
          "finished length",
          "finished width",
          "finished thickness",
          "cut length mm",
          "cut width mm",
          "finished length mm",
          "finished width mm",
          "finished thickness mm");

  private final List<CutMaterial> materials;
  private final LengthStyle style;

  CutTables(List<CutMaterial> materials, LengthStyle style) {
    this.materials = List.copyOf(materials);
    this.style = style;
  }

  /** Where every part and every offcut lies, from the near end and the near edge of its sheet. */
  Csv layouts() {
    List<List<String>> lines = new ArrayList<>();
    for (CutMaterial material : materials) {
      for (StockLayout layout : material.layouts()) {
        List<SheetPattern> patterns = layout.layout().patterns();
        for (int i = 0; i < patterns.size(); i++) {
          SheetPattern pattern = patterns.get(i);
          List<String> start =
              List.of(
                  material.material(),
                  layout.title(),
                  layout.name(i + 1),
                  Integer.toString(pattern.quantity()),
                  pattern.sheet().name());
          Stream.concat(pattern.parts().stream(), pattern.offcuts().stream())
              .forEach(placed -> lines.add(row(start, placed)));
        }
      }
    }
    return new Csv(LAYOUT_COLUMNS, lines);
  }

  private List<String> row(List<String> start, Placed placed) {
    Optional<String> part =
        placed.node() instanceof Node.Finished finished
            ? Optional.of(finished.mark())
            : Optional.empty();
    List<String> row = new ArrayList<>(start);
    row.add(part.isPresent() ? "part" : "left over");
    row.add(part.orElse(""));
    row.add(style.number(placed.length()));
    row.add(style.number(placed.width()));
    Stream.of(placed.x(), placed.y(), placed.length(), placed.width())
        .map(Tables::mm)
        .forEach(row::add);
    return row;
  }

  /**
   * One line for each sheet, for the maker to note what has become of it.
   *
   * @param cutting its place among the cuttings of the same parts, from 1
   */
  Csv progress(int cutting) {
    List<List<String>> lines = new ArrayList<>();
    for (CutMaterial material : materials) {
      for (StockLayout layout : material.layouts()) {
        List<SheetPattern> patterns = layout.layout().patterns();
        for (int i = 0; i < patterns.size(); i++) {
          for (int sheet = 1; sheet <= patterns.get(i).quantity(); sheet++) {
            lines.add(
                List.of(
                    Integer.toString(cutting),
                    material.material(),
                    layout.title(),
                    layout.name(i + 1),
                    Integer.toString(sheet),
                    patterns.get(i).sheet().name(),
                    "",
                    ""));
          }
        }
      }
    }
    return new Csv(PROGRESS_COLUMNS, lines);
  }

  /** Every pass at the saw, in order. */
  Csv order() {
    List<List<String>> lines = new ArrayList<>();
    for (CutMaterial material : materials) {
      for (StockLayout layout : material.layouts()) {
        List<List<SetUp>> setUps = layout.setUps();
        for (int sheet = 0; sheet < setUps.size(); sheet++) {
          List<String> start = List.of(material.material(), layout.title(), layout.name(sheet + 1));
          Set<String> small = Set.copyOf(layout.small(sheet + 1));
          lines.addAll(passes(start, setUps.get(sheet), small));
        }
      }
    }
    return new Csv(ORDER_COLUMNS, lines);
  }

  private List<List<String>> passes(List<String> start, List<SetUp> setUps, Set<String> small) {
    List<List<String>> lines = new ArrayList<>();
    for (int i = 0; i < setUps.size(); i++) {
      for (SawStep step : setUps.get(i).steps()) {
        List<String> row = new ArrayList<>(start);
        row.add(Integer.toString(i + 1));
        row.add(saw(setUps.get(i)));
        row.add(style.number(setting(setUps.get(i))));
        row.add(Tables.mm(setting(setUps.get(i))));
        row.add(step.from().name());
        row.add(step.near().name());
        row.add(is(step.near()));
        row.add(step.far().map(Piece::name).orElse(""));
        row.add(step.far().map(CutTables::is).orElse(""));
        row.add(heldBy(setUps.get(i)));
        row.add(care(setUps.get(i), step, small));
        Optional<Length> stands = stands(setUps.get(i), step);
        row.add(stands.map(style::number).orElse(""));
        row.add(stands.map(Tables::mm).orElse(""));
        lines.add(row);
      }
    }
    return lines;
  }

  private static String care(SetUp setUp, SawStep step, Set<String> small) {
    return Stream.of(SawCare.isNarrow(setUp) ? "narrow" : "", size(step, small))
        .filter(hazard -> !hazard.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static String size(SawStep step, Set<String> small) {
    if (small.contains(step.from().name())) {
      return "small";
    }
    boolean part =
        Stream.concat(Stream.of(step.near()), step.far().stream())
            .filter(piece -> piece.content() instanceof Piece.Content.FinishedPart)
            .anyMatch(piece -> small.contains(piece.name()));
    return part ? "small part" : "";
  }

  private static String saw(SetUp setUp) {
    return switch (setUp) {
      case SetUp.TrimEdge trim ->
          "trim " + trim.edge().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      case SetUp.CutTo cut -> cut.direction() == Direction.RIP ? "rip" : "crosscut";
    };
  }

  private static Length setting(SetUp setUp) {
    return switch (setUp) {
      case SetUp.TrimEdge trim -> trim.off();
      case SetUp.CutTo cut -> cut.fence();
    };
  }

  /** Where fence or stop stands, for what is cut by one. */
  private static Optional<Length> stands(SetUp setUp, SawStep step) {
    return switch (setUp.hold()) {
      case FENCE_AT_REST -> Optional.of(setUp.rest(step));
      case FENCE, GAUGE, CLAMPED_GAUGE ->
          setUp instanceof SetUp.CutTo cut ? Optional.of(cut.fence()) : Optional.empty();
      case BAND_SAW, FIRST_EDGE, JIG, MITRE_SAW, STRAIGHTEDGE -> Optional.empty();
    };
  }

  private static String heldBy(SetUp setUp) {
    return switch (setUp.hold()) {
      case FENCE -> "fence";
      case FENCE_AT_REST -> "fence, strip outside the blade";
      case BAND_SAW -> "band saw or hand";
      case GAUGE -> gauge(setUp);
      case CLAMPED_GAUGE -> gauge(setUp) + ", clamped";
      case JIG -> "clamped sled or jig, or hand saw";
      case MITRE_SAW -> "mitre saw, or straightedge and hand-held saw";
      case STRAIGHTEDGE -> "straightedge, hand-held saw";
      case FIRST_EDGE -> "straightedge and hand-held saw, sled, or jointer";
    };
  }

  private static String gauge(SetUp setUp) {
    return setUp instanceof SetUp.CutTo ? "mitre gauge, stop" : "mitre gauge";
  }

  private static String is(Piece piece) {
    return switch (piece.content()) {
      case Piece.Content.ToCut _ -> "to cut";
      case Piece.Content.FinishedPart part -> part.mark();
      case Piece.Content.LeftOver _ -> "left over";
      case Piece.Content.TrimWaste _ -> "waste";
    };
  }

  /** What the pieces as cut are worked to. */
  Csv finished(List<Wanted> wanted) {
    List<List<String>> lines = new ArrayList<>();
    for (Wanted each : wanted) {
      for (Part part : each.parts()) {
        Optional.ofNullable(each.finished().get(part.mark()))
            .ifPresent(finished -> lines.add(row(each.material(), part, finished)));
      }
    }
    return new Csv(FINISHED_COLUMNS, lines);
  }

  private List<String> row(String material, Part part, Finished finished) {
    List<String> row = new ArrayList<>(List.of(material, part.mark()));
    row.add(Integer.toString(finished.blank().strips()));
    List<Length> sizes =
        List.of(part.length(), part.width(), finished.blank().length(), finished.blank().width());
    sizes.stream().map(style::number).forEach(row::add);
    row.add(finished.thickness().map(style::number).orElse(""));
    sizes.stream().map(Tables::mm).forEach(row::add);
    row.add(finished.thickness().map(Tables::mm).orElse(""));
    return row;
  }

  /** How much wood is taken, and how much of it is in parts. */
  static Csv yields(List<Yield> yields) {
    return new Csv(
        List.of("material", "taken bd ft", "in parts bd ft", "taken m3", "in parts m3", "yield %"),
        yields.stream()
            .map(
                each ->
                    List.of(
                        each.material(),
                        each.taken().value().numberText(Unit.INCH),
                        each.inParts().value().numberText(Unit.INCH),
                        each.taken().value().numberText(Unit.MILLIMETRE),
                        each.inParts().value().numberText(Unit.MILLIMETRE),
                        each.share().value().numberText(Unit.MILLIMETRE)))
            .toList());
  }

  /** What is taken of each stock. */
  Csv stock() {
    List<List<String>> lines =
        materials.stream()
            .flatMap(
                m ->
                    m.stock().stream()
                        .map(
                            use ->
                                List.of(
                                    m.material(),
                                    use.size(),
                                    Long.toString(use.count()),
                                    Long.toString(use.buy()),
                                    use.each().map(BigDecimal::toPlainString).orElse(""),
                                    use.together().map(BigDecimal::toPlainString).orElse(""))))
            .toList();
    return new Csv(
        List.of("material", "size", "needed", "to buy", "price of one", "together"), lines);
  }
}
