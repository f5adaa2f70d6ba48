package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.Box;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The stiles of a face frame that stand before the front edges of uprights while a standing case is
 * bored. One that reaches into the bay gives a guide its back to lie at, where the front edge would
 * be; one that ends level with the upright covers that edge and gives nothing.
 */
record Stiles(Group group) {

  private static final String BEFORE_THE_FRAME =
      "bore before assembly, or put the face frame on when the rows are bored";

  /** How far the stile before a row reaches into the bay; none where no stile stands there. */
  private Optional<Length> reach(Column column) {
    return group.isBoredAfterAssembly()
        ? group.built().parts().stream()
            .filter(p -> p.role() == Role.STILE && isBefore(p.box(), column.part().box()))
            .map(p -> reach(column, p))
            .findFirst()
        : Optional.empty();
  }

  private static boolean isBefore(Box stile, Box panel) {
    return stile.at(Face.LEFT).isLessThan(panel.at(Face.RIGHT))
        && panel.at(Face.LEFT).isLessThan(stile.at(Face.RIGHT));
  }

  private static Length reach(Column column, Part stile) {
    Length from = column.part().box().at(column.face());
    Length to = stile.box().at(column.face());
    return column.face() == Face.RIGHT ? to.minus(from) : from.minus(to);
  }

  private Stream<Column> covered() {
    return group.columns().stream().filter(c -> reach(c).filter(l -> !l.isNegative()).isPresent());
  }

  /** Why a guide can't be laid at the front edges; a stile behind the face leaves them free. */
  Optional<Reason> against(Across across) {
    Optional<Length> over =
        covered().map(across::spacer).filter(Length::isNegative).min(Length::compareTo);
    if (over.isPresent()) {
      Telling tell = new Telling(group, "guide-over-edge", "guide over the front edge, by");
      tell.derived("c", "from the guide's index edge to its holes", across.column());
      tell.derived("f", "from the front edge to the row", across.column().plus(over.get()));
      return Optional.of(
          tell.reason(
              "the guide would stand "
                  + group.text(over.get().abs())
                  + " over the front edge, where the face frame is",
              "bore before assembly, or set the front row further back",
              "c - f",
              over.get().abs()));
    }
    return covered()
        .filter(c -> reach(c).filter(Length::isZero).isPresent())
        .findFirst()
        .map(
            c ->
                new Reason(
                    "the stile before "
                        + c.part().name()
                        + " covers its front edge and ends level with its face, so that a guide"
                        + " finds nothing to lie at",
                    BEFORE_THE_FRAME + ", or give it stiles that reach into the bay"));
  }

  /** What a guide lies at, where that is not the front edge. */
  List<Reason> notes() {
    return covered().anyMatch(c -> reach(c).filter(Length::isPositive).isPresent())
        ? List.of(
            new Reason(
                "stiles stand before front edges: the guide's edge, or its spacer, lies at the back"
                    + " of the stile",
                "see that no glue stands in the corner"))
        : List.of();
  }

  /** Where rows are gauged from, when front edges are covered. */
  List<Reason> gauged() {
    return covered()
        .findFirst()
        .map(
            c ->
                new Reason(
                    "the stile before "
                        + c.part().name()
                        + " covers its front edge: gauge the rows from "
                        + (reach(c).filter(Length::isZero).isPresent()
                            ? "the front of the frame, its thickness more"
                            : "the back of the stile"),
                    BEFORE_THE_FRAME))
        .stream()
        .toList();
  }

  /**
   * The least from a row to a stile that stands higher on its face than something flat that lies
   * there.
   *
   * @param thickness of what lies on the face
   */
  Optional<Length> inFrontOf(Length thickness) {
    return covered()
        .filter(c -> reach(c).filter(l -> l.isMoreThan(thickness)).isPresent())
        .map(Column::fromFront)
        .min(Length::compareTo);
  }
}
