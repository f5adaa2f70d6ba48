package fourpin.shop.web;

import fourpin.measure.Figure;
import fourpin.sheets.packet.Words;
import java.util.Optional;

/** A cell of a table. @param figure whose working it opens */
public record Cell(String text, Optional<String> figure) {

  static Cell of(String text) {
    return new Cell(text, Optional.empty());
  }

  static Cell of(Figure figure, Words words) {
    return new Cell(words.value(figure), Optional.of(figure.id()));
  }
}
