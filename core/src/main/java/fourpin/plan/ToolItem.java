package fourpin.plan;

import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Purchase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A tool that the ways taken need and the shop does not have, or that no file states. It is bought
 * once, however many cases it serves, and stays in the shop.
 *
 * @param where names of the cases that it is for
 */
public record ToolItem(Purchase tool, String where) {

  /** All of a job, in the order of its cases. */
  static List<ToolItem> of(List<CaseBoring> borings) {
    Map<String, Purchase> tools = new LinkedHashMap<>();
    Map<String, List<String>> where = new LinkedHashMap<>();
    for (CaseBoring boring : borings) {
      for (Purchase tool : boring.purchases()) {
        tools.putIfAbsent(tool.name(), tool);
        where.computeIfAbsent(tool.name(), _ -> new ArrayList<>()).add(boring.caseName());
      }
    }
    return tools.values().stream()
        .map(tool -> new ToolItem(tool, cases(where.getOrDefault(tool.name(), List.of()))))
        .toList();
  }

  private static String cases(List<String> names) {
    return String.join(", ", names.stream().distinct().toList());
  }
}
