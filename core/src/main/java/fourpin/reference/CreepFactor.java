package fourpin.reference;

import fourpin.measure.Source;

/**
 * How sag grows under a load that stays.
 *
 * @param name the rule and the family: "handbook, plywood"
 * @param totalOverFirst sag after years over sag at first; 1 or more
 * @param condition what it holds for
 */
public record CreepFactor(
    String name, Substance.Family family, double totalOverFirst, String condition, Source source)
    implements Listed {

  static CreepFactor of(Row row) {
    return new CreepFactor(
        row.name(),
        Substance.Family.valueOf(row.text("family")),
        row.number("total_over_first"),
        row.text("condition"),
        row.source());
  }
}
