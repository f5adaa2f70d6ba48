package fourpin.sheets.paint;

import java.util.ArrayList;
import java.util.List;

/**
 * A finished drawing: marks in millimetres on paper, and what they are of.
 *
 * @param name for files and anchors: small letters, digits and hyphens
 * @param title one line, for a person
 * @param description what it shows, for one who cannot see it
 */
public record Drawing(
    String name, String title, String description, Scale scale, List<Mark> marks) {

  private static final double LEGEND_SIZE = 2.5;
  private static final double LEGEND_GAP = 3;
  private static final double LEADING = 1.2;

  public Drawing {
    marks = List.copyOf(marks);
    if (!name.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException(
          "A drawing's name is small letters, digits and hyphens, not " + name);
    }
    if (marks.isEmpty()) {
      throw new IllegalArgumentException("The drawing " + name + " is empty");
    }
  }

  /** A drawing that says under itself that it is not to be measured, and its scale. */
  public static Drawing toScale(
      String name, String title, String description, Scale scale, List<Mark> marks) {
    return toScale(name, title, description, scale, "", marks);
  }

  /**
   * The same, with what the reader must know to read it.
   *
   * @param note such as the unit of its dimensions; may be empty
   */
  public static Drawing toScale(
      String name, String title, String description, Scale scale, String note, List<Mark> marks) {
    List<Mark> all = new ArrayList<>(marks);
    Box box = Mark.around(marks);
    List<String> lines = legend(scale, note, box.width());
    for (int i = 0; i < lines.size(); i++) {
      double down = LEGEND_GAP + i * LEGEND_SIZE * LEADING;
      all.add(legend(lines.get(i)).at(new Point(box.left(), box.bottom() - down)));
    }
    return new Drawing(name, title, description, scale, all);
  }

  /** On two lines where one would make the drawing wider. */
  private static List<String> legend(Scale scale, String note, double width) {
    String always = "DRAWING, DO NOT MEASURE · scale " + scale.label();
    String line = note.isEmpty() ? always : always + " · " + note;
    return note.isEmpty() || legend(line).width() <= width ? List.of(line) : List.of(always, note);
  }

  private static Lettering legend(String words) {
    return Lettering.of(words, Typeface.BOLD, LEGEND_SIZE)
        .with(Lettering.Align.START, Lettering.Seat.TOP);
  }

  /** What the drawing covers on paper. */
  public Box extent() {
    return Mark.around(marks);
  }

  public boolean fits(double width, double height) {
    Box box = extent();
    return box.width() <= width && box.height() <= height;
  }
}
