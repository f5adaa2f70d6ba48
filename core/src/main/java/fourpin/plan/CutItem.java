package fourpin.plan;

import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.List;

/**
 * One line of the cut list: parts of one case that are alike in size, material and edging.
 *
 * @param line number in the cut list, from 1
 * @param marks of the parts, as they are written on them
 * @param quantity in all copies of the case together
 * @param length finished, along the grain, and the sum that it comes from
 * @param cutLength to cut at first: less the edging, and over size where it is cut to measure later
 * @param grain whether the part must lie along the sheet
 * @param banded edges that get edging, in words with its kind: "front: oak strip 1/4 in"
 */
public record CutItem(
    int line,
    String caseName,
    List<String> marks,
    String name,
    Part.Role role,
    String material,
    int quantity,
    Sum length,
    Sum width,
    Length thickness,
    Sum cutLength,
    Sum cutWidth,
    Direction grain,
    List<EdgeNote> banded,
    Part.CutWhen when) {

  public CutItem {
    marks = List.copyOf(marks);
    banded = List.copyOf(banded);
  }

  /** What the part is called on a layout: line, name, and whether its cutting waits. */
  public String label() {
    return line + " " + name + (when == Part.CutWhen.AFTER_ASSEMBLY ? ", waits" : "");
  }

  /** Whether a part may be turned on the sheet. */
  public enum Direction {
    ALONG_LENGTH,
    EITHER_WAY
  }

  /** An edge with what it gets. @param edge "front", "back" ... */
  public record EdgeNote(String edge, String what, Length length, Length thickness) {}
}
