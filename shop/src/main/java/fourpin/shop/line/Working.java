package fourpin.shop.line;

import fourpin.measure.Figure;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import java.util.ArrayList;
import java.util.List;

/** A figure with its working, as lines. */
record Working(LengthStyle style) {

  /** One line: id, value and title. */
  String line(Figure figure) {
    return figure.id() + " = " + text(figure.value()) + "  " + figure.title();
  }

  List<String> lines(Figure figure) {
    List<String> lines = new ArrayList<>();
    lines.add(figure.title() + ": " + text(figure.value()));
    lines.add("  id      " + figure.id());
    lines.add("  formula " + figure.formula());
    for (Figure.Input input : figure.inputs()) {
      lines.add(
          "  "
              + input.symbol()
              + " = "
              + both(input.value())
              + "  "
              + input.meaning()
              + "; "
              + input.source().text());
    }
    lines.add("  source  " + figure.source().text());
    return lines;
  }

  /** As the maker reads it and, where that differs, in the unit that the formula is worked in. */
  private String both(Quantity quantity) {
    String shown = text(quantity);
    String computed = quantity.computedText();
    return shown.equals(computed) ? shown : shown + " (" + computed + ")";
  }

  private String text(Quantity quantity) {
    return quantity.text(style.unit());
  }
}
