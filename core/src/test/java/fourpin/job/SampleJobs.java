package fourpin.job;

import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Small jobs that tests start from and change. */
public final class SampleJobs {

  private SampleJobs() {}

  public static Length in(String inches) {
    return new LengthReader(Unit.INCH).read(inches).orThrow();
  }

  public static Material sheet(String name, String of, String nominal, String measured) {
    return new Material(
        name,
        Material.Kind.SHEET,
        of,
        in(nominal),
        Optional.of(in(measured)),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty());
  }

  public static Material board(String name, String of, String thickness) {
    return new Material(
        name,
        Material.Kind.BOARD,
        of,
        in(thickness),
        Optional.empty(),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty());
  }

  /** The same of another strength than its row in the tables has. */
  public static Material strong(Material of, Optional<Quantity> strength) {
    return new Material(
        of.name(),
        of.kind(),
        of.of(),
        of.nominal(),
        of.measured(),
        of.grain(),
        of.stiffness(),
        of.density(),
        strength,
        of.layers());
  }

  /** Pins of 1/4 in, reaching 3/8 in, with shelves on their tops. */
  public static Support pins() {
    return new Support.Pins(in("1/4"), in("3/8"), in("3/8"), in("1/8"));
  }

  public static Shelves shelves(int count) {
    return new Shelves(
        new Shelves.Placing.Evenly(count), "ply", List.of(strip("1/4", "23/32")), in("0"));
  }

  public static Edging strip(String thickness, String height) {
    return new Edging(
        Edging.Kind.STRIP, "oak", in(thickness), in(height), List.of(Edging.Edge.FRONT));
  }

  public static Bay bay(int shelves) {
    return bay(shelves(shelves));
  }

  /** On pins. */
  public static Bay bay(Shelves shelves) {
    return new Bay(
        Optional.empty(), List.of(), Optional.of(shelves), Optional.of(pins()), Optional.empty());
  }

  /** The case of {@link CaseDraft} with other bays. */
  public static CaseOrder bookcase(Bay... bays) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bays);
    return draft.order();
  }

  public static Job job(CaseOrder... cases) {
    return new Job(
        "Reading room",
        "A",
        Unit.INCH,
        LengthStyle.FRACTIONS,
        Paper.LETTER,
        "$",
        Optional.empty(),
        List.of(
            sheet("ply", "plywood, veneer core", "3/4", "23/32"),
            sheet("back", "plywood, veneer core", "1/4", "7/32"),
            board("oak", "oak, white", "3/4")),
        List.of(
            new SheetStock(
                "ply",
                in("96"),
                in("48"),
                Optional.empty(),
                Optional.of(new BigDecimal("92.00")),
                Supply.TO_BUY),
            new SheetStock(
                "back",
                in("96"),
                in("48"),
                Optional.empty(),
                Optional.of(new BigDecimal("38.00")),
                Supply.TO_BUY)),
        List.of(
            new BoardStock(
                "oak",
                in("96"),
                in("5 1/2"),
                Optional.empty(),
                Optional.of(new BigDecimal("31.50")),
                Supply.TO_BUY)),
        List.of(cases),
        Settings.standard(Unit.INCH),
        Shop.NONE);
  }
}
