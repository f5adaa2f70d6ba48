package fourpin.casework;

import fourpin.job.CaseOrder;
import java.util.ArrayList;
import java.util.List;

/**
 * One case in space.
 *
 * @param outside over everything that Fourpin plans, face frame included
 * @param parts each mark once, in the order of the cut list
 */
public record BuiltCase(CaseOrder order, Box outside, List<Part> parts, List<BaySpace> bays) {

  public BuiltCase {
    parts = List.copyOf(parts);
    bays = List.copyOf(bays);
  }

  /**
   * @throws IllegalArgumentException if no part has the mark
   */
  public Part part(String mark) {
    return parts.stream()
        .filter(p -> p.mark().equals(mark))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no part is marked '" + mark + "'"));
  }

  /** The same case with one part replaced by one of the same mark. */
  public BuiltCase with(Part changed) {
    return new BuiltCase(
        order,
        outside,
        parts.stream().map(p -> p.mark().equals(changed.mark()) ? changed : p).toList(),
        bays);
  }

  /** The same case with more parts. */
  public BuiltCase withMore(List<Part> more) {
    List<Part> all = new ArrayList<>(parts);
    all.addAll(more);
    return new BuiltCase(order, outside, all, bays);
  }
}
