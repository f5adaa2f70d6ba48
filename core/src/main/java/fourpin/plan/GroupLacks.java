package fourpin.plan;

import fourpin.cutting.GroupLack;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.Together;
import fourpin.measure.LengthStyle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says of parts that must share a sheet why no stock can hold them, where sums show it. */
record GroupLacks(SheetProblem problem, LengthStyle style) {

  private static final double PER_CENT = 100;

  /** Empty where some stock might do. */
  Optional<String> of(Together group) {
    List<GroupLack> lacks =
        problem.stock().stream()
            .flatMap(sheet -> GroupLack.of(problem, group, sheet).stream())
            .toList();
    return lacks.size() == problem.stock().size()
        ? Optional.of(lacks.stream().map(this::told).collect(Collectors.joining("; ")))
        : Optional.empty();
  }

  private String told(GroupLack lack) {
    return switch (lack) {
      case GroupLack.TooLong(var sheet, var marks, var taken, var clear) ->
          "on "
              + sheet.name()
              + " no two of "
              + String.join(", ", marks)
              + " lie beside each other, and end to end they take "
              + style.text(taken)
              + ", of which "
              + style.text(clear)
              + " are clear";
      case GroupLack.TooLarge(var sheet, var clear) ->
          sheet.name()
              + " has "
              + Math.round(Math.floor(PER_CENT * clear))
              + " % of the area that its parts take";
    };
  }
}
