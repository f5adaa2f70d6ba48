package fourpin.shop.file;

import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Paper;
import fourpin.job.Room;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.LengthStyle;
import fourpin.measure.Reading;
import fourpin.measure.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The whole file. */
final class JobForm {

  private static final int LONGEST_TITLE = 80;
  private static final int LONGEST_REVISION = 20;
  private static final int LONGEST_CURRENCY = 4;
  private static final int LONGEST_FILE = 200;
  private static final int MOST_MATERIALS = 100;
  private static final int MOST_CASES = 100;

  static final Key<Unit> UNIT =
      Key.required("unit", Words.choice(units()), "the unit of a bare number, inch or mm");
  static final Key<List<Material>> MATERIALS =
      Key.required(
          "materials",
          new Named<>(Named.MATERIAL, MaterialForm.FORM, MOST_MATERIALS),
          "each under a name that the rest of the job calls it by");
  static final Key<Map<Setting, SettingValue>> SETTINGS =
      Key.optional("settings", SettingsForm.FORM, "as listed below", "what makers disagree about");

  private static final Key<String> TITLE =
      Key.required(
          "title",
          Words.free("a title", "Reading room", LONGEST_TITLE),
          "what the job is called on every page");
  private static final Key<String> REVISION =
      Key.optional(
          "revision",
          Words.free("a mark", "B", LONGEST_REVISION),
          "A",
          "the mark that tells new paper from old");
  private static final Key<Paper> PAPER =
      Key.optional(
          "paper",
          Words.choice(Paper.class),
          "letter for inch, a4 for mm",
          "the paper that is printed on");
  private static final Key<LengthStyle> PRINT =
      Key.optional(
          "print",
          print(),
          "1/64 for inch, 0.1 for mm",
          "the finest part of a length that is printed");
  private static final Key<String> CURRENCY =
      Key.optional(
          "currency",
          Words.free("a currency", "$", LONGEST_CURRENCY),
          "none",
          "the sign before amounts of money");
  private static final Key<Length> WIDTH =
      Key.optional(
          "width",
          Words.length("100 mm", "50 m"),
          "not checked",
          "of the wall or alcove, the smallest reading");
  private static final Key<Length> CEILING =
      Key.optional(
          "ceiling",
          Words.length("500 mm", "20 m"),
          "not checked",
          "clear height, the smallest reading");
  private static final Key<Length> DEPTH =
      Key.optional(
          "depth",
          Words.length("50 mm", "5 m"),
          "not checked",
          "how far a case may stand out from the wall");
  private static final Key<Room> ROOM =
      Key.optional(
          "room",
          Form.of(
              "a room",
              List.of(WIDTH, CEILING, DEPTH),
              v -> new Room(v.find(WIDTH), v.find(CEILING), v.find(DEPTH))),
          "not checked",
          "the place where the cases stand side by side");
  static final Key<String> SHOP =
      Key.optional(
          "shop",
          Words.free("a file", "hall-shop.yaml", LONGEST_FILE),
          "shop.yaml beside the job file, if it is there",
          "the shop file with the tools, as seen from the job file's folder");
  private static final Key<StockForm.Stock> STOCK =
      Key.optional("stock", StockForm.FORM, "none", "sheets and boards, on hand or to buy");
  static final Key<List<CaseOrder>> CASES =
      Key.required(
          "cases", new Named<>(Named.CASE, CaseForm.FORM, MOST_CASES), "each under its name");

  static final Form<Job> FORM =
      new Form<>(
          "a job",
          List.of(
              TITLE, REVISION, UNIT, PAPER, PRINT, CURRENCY, SHOP, ROOM, MATERIALS, STOCK, CASES,
              SETTINGS),
          List.of(),
          JobForm::checked);

  private JobForm() {}

  private static Map<String, Unit> units() {
    Map<String, Unit> units = new LinkedHashMap<>();
    units.put("inch", Unit.INCH);
    units.put("mm", Unit.MILLIMETRE);
    return units;
  }

  private static Optional<Job> checked(Values v) {
    v.get(CASES).forEach(order -> order.standsOn().ifPresent(below -> stands(v, order, below)));
    new LayerChecks(v.get(MATERIALS), v.spot(MATERIALS)).run();
    return Optional.of(make(v));
  }

  /** A case stands on one that stands on the floor, as many of the one as of the other. */
  private static void stands(Values v, CaseOrder order, String below) {
    Optional<CaseOrder> under =
        v.get(CASES).stream().filter(c -> c.name().equals(below)).findFirst();
    if (under.isEmpty()) {
      v.spot(CASES)
          .refuse(
              "'%s' stands on '%s', which is no case of the job".formatted(order.name(), below),
              "its cases are "
                  + v.get(CASES).stream().map(CaseOrder::name).collect(Collectors.joining(", ")));
    } else if (under.get().standsOn().isPresent()) {
      v.spot(CASES)
          .refuse(
              "'%s' stands on '%s', which does not stand on the floor"
                  .formatted(order.name(), below),
              "stack two cases, not more");
    } else if (under.get().quantity() != order.quantity()) {
      v.spot(CASES)
          .refuse(
              "%s of '%s' stand on %s of '%s'"
                  .formatted(order.quantity(), order.name(), under.get().quantity(), below),
              "make as many of the one as of the other");
    }
  }

  private static Job make(Values v) {
    Unit unit = v.get(UNIT);
    boolean inch = unit.customary();
    StockForm.Stock stock = v.find(STOCK).orElse(StockForm.Stock.NONE);
    return new Job(
        v.get(TITLE),
        v.find(REVISION).orElse("A"),
        unit,
        v.find(PRINT).orElse(inch ? LengthStyle.FRACTIONS : LengthStyle.MILLIMETRES),
        v.find(PAPER).orElse(inch ? Paper.LETTER : Paper.A4),
        v.find(CURRENCY).orElse(""),
        v.find(ROOM),
        v.get(MATERIALS),
        stock.sheets(),
        stock.boards(),
        v.get(CASES),
        v.context().settings(),
        v.context().shop());
  }

  private static Word<LengthStyle> print() {
    return new Word<>(
        "the finest part printed",
        "1/32 or 0.5 mm",
        Word.Shape.Measure.ANY,
        (text, c) -> new LengthReader(c.unit()).read(text).then(JobForm::style));
  }

  private static Reading<LengthStyle> style(Length finest) {
    Unit unit = finest.unit().customary() ? Unit.INCH : Unit.MILLIMETRE;
    Optional<LengthStyle> style = finest.isPositive() ? parts(finest, unit) : Optional.empty();
    return style
        .map(Reading::good)
        .orElseGet(
            () ->
                Reading.bad(
                    "lengths are printed to 1, 1/2, 1/4 ... 1/256 in, or to 1, 0.5, 0.1, 0.01 or 0.001 mm",
                    "choose one of them"));
  }

  private static Optional<LengthStyle> parts(Length finest, Unit unit) {
    long parts = unit.picometres() / finest.picometres();
    boolean whole = unit.picometres() % finest.picometres() == 0;
    return whole && LengthStyle.canPrint(unit, parts)
        ? Optional.of(new LengthStyle(unit, (int) parts))
        : Optional.empty();
  }
}
