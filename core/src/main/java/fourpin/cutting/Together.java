package fourpin.cutting;

import java.util.List;

/**
 * Parts that must all come from one sheet, for the sake of its colour or thickness.
 *
 * @param name different for each group of a problem
 * @param marks of all parts of the group, each once, whatever their counts
 */
public record Together(String name, List<String> marks) {

  public Together {
    Require.named(name, "name of parts that share a sheet");
    marks = List.copyOf(marks);
    Require.distinct(marks, "marks of parts that share a sheet");
  }
}
