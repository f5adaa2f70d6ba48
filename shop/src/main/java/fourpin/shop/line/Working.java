package fourpin.shop.line;

import fourpin.measure.Figure;
import fourpin.measure.FigureText;
import java.util.ArrayList;
import java.util.List;

/** A figure with its working, as lines. */
record Working(FigureText text) {

  /** One line: id, value and title. */
  String line(Figure figure) {
    return figure.id() + " " + equal(text.value(figure.value())) + "  " + figure.title();
  }

  List<String> lines(Figure figure) {
    List<String> lines = new ArrayList<>();
    lines.add(figure.title() + ": " + text.value(figure.value()));
    lines.add("  id      " + figure.id());
    lines.add("  formula " + figure.formula());
    for (Figure.Input input : figure.inputs()) {
      lines.add(
          "  "
              + input.symbol()
              + " "
              + equal(text.input(input.value()))
              + "  "
              + input.meaning()
              + "; "
              + input.source().text());
    }
    lines.add("  source  " + figure.source().text());
    return lines;
  }

  /** What is rounded has its own sign. */
  private static String equal(String value) {
    return value.startsWith("≈") ? value : "= " + value;
  }
}
