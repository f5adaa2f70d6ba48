package fourpin.validation;

import static fourpin.validation.Check.published;

import fourpin.reference.Reference;
import fourpin.reference.WoodMovement;
import fourpin.strength.wood.Moisture;
import fourpin.strength.wood.Moisture.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/** What moist air does to wood: tables and an example of the handbook. */
final class MoistureChecks {

  private static final String HANDBOOK = "Wood Handbook FPL-GTR-190 (2010)";

  private MoistureChecks() {}

  /** Equilibrium moisture, the whole table. */
  static List<Check> equilibrium() {
    List<Check> all = new ArrayList<>();
    for (Rows.Row row : Rows.of("emc_table.csv")) {
      double celsius = (row.number("fahrenheit") - 32) / 1.8;
      all.add(
          published(
              row.text("fahrenheit") + " °F, " + row.text("humidity") + " % humidity",
              row.text("printed_pct"),
              "%",
              0.06,
              HANDBOOK,
              "Table 4-2",
              () -> Moisture.equilibrium(celsius, row.number("humidity"))));
    }
    return all;
  }

  static List<Check> movement() {
    WoodMovement coefficient =
        new WoodMovement(
            "flat-grained", 1, 1, 0.001, 0.00245, "", Reference.moisture().get("W").source());
    List<Check> all = new ArrayList<>();
    all.add(
        published(
            "a flat-grained board of 232 mm, 8 to 11 %, coefficient 0.00245",
            "1.7",
            "mm",
            0.05,
            HANDBOOK,
            "ch. 13, example under Table 13-5; coefficient from memory",
            () -> Moisture.change(coefficient, Way.TANGENTIAL, 232, 8, 11)));
    String[][] table = {
      {"walnut, black", "0.00190", "0.00274"},
      {"maple, sugar", "0.00165", "0.00353"},
      {"cherry, black", "0.00126", "0.00248"},
      {"ash, white", "0.00169", "0.00274"},
      {"alder, red", "0.00151", "0.00256"}
    };
    for (String[] row : table) {
      WoodMovement wood = Reference.movement().get(row[0]);
      String place = "Table 13-5, from the shrinkage of Table 4-3 by C = S / (30 - 20 S)";
      all.add(
          published(
              row[0] + ", each per cent, radial",
              row[1],
              "",
              1.5e-5,
              HANDBOOK,
              place,
              () -> rule(wood.radialShrinkage())));
      all.add(
          published(
              row[0] + ", each per cent, tangential",
              row[2],
              "",
              1.5e-5,
              HANDBOOK,
              place,
              () -> rule(wood.tangentialShrinkage())));
    }
    return all;
  }

  /** The program's table beside a copy of the later edition. */
  static List<Check> shrinkage() {
    List<Check> all = new ArrayList<>();
    for (Rows.Row row : Rows.of("wood_shrinkage.csv")) {
      WoodMovement wood = Reference.movement().get(row.text("wood"));
      all.add(shrinkage(wood, "radial", row, wood::radialShrinkage));
      all.add(shrinkage(wood, "tangential", row, wood::tangentialShrinkage));
    }
    return all;
  }

  private static Check shrinkage(WoodMovement wood, String way, Rows.Row row, DoubleSupplier ours) {
    return published(
        wood.name() + ", green to ovendry, " + way,
        row.text(way + "_pct"),
        "%",
        0,
        "Wood Handbook FPL-GTR-282 (2021)",
        "Table 4-3 (p. 4-8), as a public copy has it",
        ours);
  }

  private static double rule(double percent) {
    double s = percent / 100;
    return s / (30 - 20 * s);
  }
}
