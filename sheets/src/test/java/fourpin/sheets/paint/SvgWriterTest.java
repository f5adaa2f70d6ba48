package fourpin.sheets.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SvgWriterTest {

  private static final Drawing DRAWING =
      Drawing.toScale(
          "a-panel",
          "Panel <1> & \"more\"",
          "Holes\u0000 and a hatch.",
          new Scale(1, 2),
          new Sketch(new Scale(1, 2))
              .rectangle(new Box(0, 0, 100, 60), Pen.OUTLINE, Fill.HATCH)
              .group(
                  "Holes",
                  s ->
                      s.circle(33.3333, 20, 5, Pen.EDGE, Fill.WHITE)
                          .circle(66, 40, 5, Pen.EDGE, Fill.NONE))
              .text(50, 30, Lettering.of("A & B < 3/4", Typeface.BOLD, 3).turned(90).backed())
              .marks());

  @Test
  void isWellFormedAndNamesItself() throws Exception {
    Element svg = parsed(SvgWriter.write(DRAWING)).getDocumentElement();
    assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("Panel <1> & \"more\"");
    assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
        .isEqualTo("Holes\ufffd and a hatch.");
    assertThat(svg.getAttribute("role")).isEqualTo("img");
    assertThat(svg.getAttribute("aria-labelledby")).isEqualTo("a-panel-title a-panel-text");
  }

  @Test
  void isAsLargeAsThePaperItCovers() throws Exception {
    Element svg = parsed(SvgWriter.write(DRAWING)).getDocumentElement();
    String[] view = svg.getAttribute("viewBox").split(" ");
    assertThat(svg.getAttribute("width")).isEqualTo(view[2] + "mm");
    assertThat(svg.getAttribute("height")).isEqualTo(view[3] + "mm");
    assertThat(Double.parseDouble(view[2])).isBetween(50.0, 100.0);
  }

  @Test
  void textIsRealText() throws Exception {
    NodeList texts = parsed(SvgWriter.write(DRAWING)).getElementsByTagName("text");
    assertThat(words(texts)).containsExactly("A & B < ¾", "DRAWING, DO NOT MEASURE · scale 1:2");
    assertThat(((Element) texts.item(0)).getAttribute("transform")).startsWith("rotate(-90 ");
  }

  @Test
  void circlesLieWhereTheDrawingHasThem() throws Exception {
    NodeList circles = parsed(SvgWriter.write(DRAWING)).getElementsByTagName("circle");
    assertThat(attributes(circles, "cx")).containsExactly("16.667", "33");
    assertThat(attributes(circles, "cy")).containsExactly("-10", "-20");
    assertThat(attributes(circles, "r")).containsExactly("1.25", "1.25");
  }

  @Test
  void aLocaleWithCommasChangesNothing() {
    String here = SvgWriter.write(DRAWING);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("fr-FR"));
      assertThat(SvgWriter.write(DRAWING)).isEqualTo(here).doesNotContain("16,667");
    } finally {
      Locale.setDefault(before);
    }
  }

  static Document parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
  }

  private static List<String> words(NodeList nodes) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      words.add(nodes.item(i).getTextContent());
    }
    return words;
  }

  private static List<String> attributes(NodeList nodes, String name) {
    List<String> values = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      values.add(((Element) nodes.item(i)).getAttribute(name));
    }
    return values;
  }
}
