package fourpin.shop.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class TreeReaderTest {

  /** A complaint that the parser gives no place for; found with spoilt files. */
  @Test
  void saysHowFarItCameWhereTheParserDoesNot() {
    Tree tree = read("a:\n  b: 1\n ? ? x: \"\n y\"  z: 80\n");

    assertThat(tree.root()).isEmpty();
    assertThat(tree.problems()).hasSize(1);
    assertThat(tree.problems().getFirst().place().line()).isGreaterThan(1);
  }

  @Test
  void keepsThePlaceOfEveryKeyAndValue() {
    Yaml.Entries root = read("a: 1\nbü: [x, {c: y}]\n").root().orElseThrow();

    Yaml.Entry second = root.entries().get(1);
    assertThat(second.key().place()).isEqualTo(new Place(2, 1));
    assertThat(second.value().place()).isEqualTo(new Place(2, 5));
    Yaml.Items items = (Yaml.Items) second.value();
    assertThat(items.items().get(1).place()).isEqualTo(new Place(2, 9));
  }

  @Test
  void countsCharactersAndNotTheirHalves() {
    Yaml.Entries root = read("\ud83e\udeb5: x\n").root().orElseThrow();

    assertThat(root.entries().getFirst().value().place()).isEqualTo(new Place(1, 4));
  }

  private static Tree read(String text) {
    return TreeReader.read(text.getBytes(StandardCharsets.UTF_8), FileKind.JOB);
  }
}
