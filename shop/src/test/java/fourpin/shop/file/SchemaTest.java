package fourpin.shop.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fourpin.shop.file.BadInputs.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.databind.json.JsonMapper;

/** The schema agrees with the reader, as an editor sees it: YAML 1.2 with the core schema. */
class SchemaTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String JOB_TEXT =
      SchemaWriter.write(
          JobForm.FORM,
          "Fourpin job file",
          "What a maker states: room, materials, stock and cases.");
  private static final String SHOP_TEXT =
      SchemaWriter.write(ShopForm.FORM, "Fourpin shop file", "What a shop bores and grooves with.");
  private static final Schema JOB = schema(JOB_TEXT);
  private static final Schema SHOP = schema(SHOP_TEXT);

  private static Schema schema(String text) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(text, InputFormat.JSON);
  }

  static List<Path> examples() {
    return Documents.examples();
  }

  static List<BadInput> faultsOfShape() {
    return BadInputs.all().stream().filter(BadInput::isOfShape).toList();
  }

  static List<BadInput> faultsOfShapeOfShops() {
    return BadInputs.shops().stream().filter(BadInput::isOfShape).toList();
  }

  @Test
  void theFilesAreCurrent() {
    Documents.hold("docs/job.schema.json", JOB_TEXT);
    Documents.hold("docs/shop.schema.json", SHOP_TEXT);
  }

  @Test
  void takesTheShops() throws IOException {
    assertThat(complaintsOfShop(Files.readString(Documents.shopExample()))).isEmpty();
    assertThat(complaintsOfShop(BadInputs.plainShop())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("faultsOfShapeOfShops")
  void refusesFaultsOfShapeOfShops(BadInput input) {
    assertThat(complaintsOfShop(input.text())).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void takesEveryExample(Path example) throws IOException {
    assertThat(complaints(Files.readString(example))).isEmpty();
  }

  @Test
  void takesThePlainJob() {
    assertThat(complaints(BadInputs.plain())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("faultsOfShape")
  void refusesFaultsOfShape(BadInput input) {
    assertThat(complaints(input.text())).isNotEmpty();
  }

  static List<String> complaints(String yaml) {
    return complaints(JOB, yaml);
  }

  static List<String> complaintsOfShop(String yaml) {
    return complaints(SHOP, yaml);
  }

  private static List<String> complaints(Schema schema, String yaml) {
    Object loaded =
        new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(yaml);
    return schema.validate(JSON.writeValueAsString(loaded), InputFormat.JSON).stream()
        .map(Object::toString)
        .toList();
  }
}
