package fourpin.shop.cut;

import fourpin.cutting.Defect;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the defects of a board as a maker measures them: "40 in..44 in x 0 in..2 in" is from 40 to
 * 44 in from the near end and from 0 to 2 in from the near edge; several are parted by semicolons.
 */
final class DefectCells {

  private static final Pattern DEFECT = Pattern.compile("(.+?)\\.\\.(.+?)\\s+x\\s+(.+?)\\.\\.(.+)");

  private DefectCells() {}

  static List<Defect> read(Cell cell, Cells cells) {
    List<Defect> defects = new ArrayList<>();
    for (String text : cell.isEmpty() ? new String[0] : cell.text().split(";")) {
      defect(cell.part(text), cells).ifPresent(defects::add);
    }
    return defects;
  }

  private static Optional<Defect> defect(Cell cell, Cells cells) {
    Matcher ends = DEFECT.matcher(cell.text());
    if (!ends.matches()) {
      cells.wrong(
          "defects",
          cell,
          "a defect is told from where to where, along and across",
          "write it like 40 in..44 in x 0 in..2 in, and a semicolon between two");
      return Optional.empty();
    }
    List<Length> read = new ArrayList<>();
    for (int end = 1; end <= ends.groupCount(); end++) {
      Cell one = cell.part(ends.group(end));
      cells.length("defects", one, "0 mm", "8 m").ifPresent(read::add);
    }
    if (read.size() < ends.groupCount()) {
      return Optional.empty();
    }
    Length along = read.get(1).minus(read.get(0));
    Length across = read.get(3).minus(read.get(2));
    if (!along.isPositive() || !across.isPositive()) {
      cells.wrong("defects", cell, "it ends before it begins", "write the lesser number first");
      return Optional.empty();
    }
    return Optional.of(new Defect(read.get(0), read.get(2), along, across));
  }
}
