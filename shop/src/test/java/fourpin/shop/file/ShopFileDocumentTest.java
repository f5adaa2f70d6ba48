package fourpin.shop.file;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.yaml.FileKind;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** docs/shop-file.md tells every key as the reader knows it. */
class ShopFileDocumentTest {

  private static final KeyDocument DOCUMENT =
      new KeyDocument("docs/shop-file.md", ShopForm.FORM, Set.of("settings"));

  @Test
  void tablesAreCurrent() {
    DOCUMENT.holdTables(Map.of());
  }

  static List<String> shops() {
    return DOCUMENT.blocks().stream().map(ShopFileDocumentTest::inAShop).toList();
  }

  @ParameterizedTest
  @MethodSource("shops")
  void readsEveryExample(String shop) {
    assertThat(ShopReaderTest.good(shop)).isNotNull();
    assertThat(SchemaTest.complaintsOfShop(shop)).isEmpty();
  }

  @Test
  void givesAnExampleOfEveryKey() {
    DOCUMENT.holdEveryKeyShown(FileKind.SHOP, shops());
  }

  /** A block that states no whole shop states tools. */
  private static String inAShop(String block) {
    return block.contains("shop:")
        ? block
        : "shop: Around the example\nunit: inch\ntools:\n" + block.indent(2);
  }
}
