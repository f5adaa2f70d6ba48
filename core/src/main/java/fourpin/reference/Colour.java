package fourpin.reference;

import fourpin.measure.Source;
import java.util.List;

/**
 * What a substance looks like in a picture: for the eye only, boards of one wood differ.
 *
 * @param red and {@code green} and {@code blue}, 0 to 255, as screens show them (sRGB, IEC
 *     61966-2-1)
 * @param words that the colour was chosen after
 */
public record Colour(
    String name, List<String> also, int red, int green, int blue, String words, Source source)
    implements Listed {

  static Colour of(Row row) {
    return new Colour(
        row.name(),
        row.also(),
        row.whole("red"),
        row.whole("green"),
        row.whole("blue"),
        row.text("words"),
        row.source());
  }
}
