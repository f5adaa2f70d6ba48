package fourpin.shop.file;

import fourpin.shop.file.Word.Grain;
import fourpin.shop.file.Word.Shape;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes the forms as a JSON Schema, draft 2020-12. */
final class SchemaWriter {

  /** One line of signs that print; none of those that turn the writing round. */
  private static final String PRINTED =
      "^\\s*[^\\u0000-\\u001F\\u007F-\\u009F\\u202A-\\u202E\\u2066-\\u2069]+\\s*$";

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String STARTS_A_NUMBER = "^\\s*[0-9.½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚][^,]*$";

  private final Map<String, ObjectNode> definitions = new TreeMap<>();

  /**
   * @param title and {@code description} of the schema, for people
   */
  static String write(Form<?> form, String title, String description) {
    SchemaWriter writer = new SchemaWriter();
    ObjectNode root = JSON.createObjectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("title", title);
    root.put("description", description);
    root.put("$ref", writer.reference(form));
    ObjectNode definitions = root.putObject("$defs");
    writer.definitions.forEach(definitions::set);
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
  }

  private String reference(Form<?> form) {
    String name = form.what().replaceFirst("^an? ", "").replace(' ', '-');
    if (!definitions.containsKey(name)) {
      definitions.put(name, JSON.createObjectNode());
      definitions.put(name, group(form));
    }
    return "#/$defs/" + name;
  }

  private ObjectNode group(Form<?> form) {
    ObjectNode schema = JSON.createObjectNode().put("type", "object");
    schema.put("additionalProperties", false);
    ObjectNode properties = schema.putObject("properties");
    form.keys().forEach(k -> properties.set(k.name(), property(k)));
    List<String> required =
        form.keys().stream().filter(k -> k.need() == Key.Need.REQUIRED).map(k -> k.name()).toList();
    if (!required.isEmpty()) {
      required.forEach(schema.putArray("required")::add);
    }
    if (!form.picks().isEmpty()) {
      ArrayNode all = schema.putArray("allOf");
      form.picks().forEach(p -> all.add(pick(p)));
    }
    return schema;
  }

  private ObjectNode property(Key<?> key) {
    ObjectNode schema = schema(key.kind());
    String standard = key.standard().isEmpty() ? "" : " Without it: " + key.standard() + ".";
    return schema.put("description", key.meaning() + "." + standard);
  }

  private static ObjectNode pick(Form.Pick pick) {
    ObjectNode schema = JSON.createObjectNode();
    if (pick.take() == Form.Take.EXACTLY_ONE) {
      ArrayNode one = schema.putArray("oneOf");
      pick.keys().forEach(k -> one.addObject().putArray("required").add(k.name()));
    } else {
      ArrayNode both = schema.putObject("not").putArray("required");
      pick.keys().forEach(k -> both.add(k.name()));
    }
    return schema;
  }

  private ObjectNode schema(Kind<?> kind) {
    return switch (kind) {
      case Word<?> word -> word(word);
      case ListOf<?> list -> list(list);
      case Named<?> named -> named(named);
      case Short<?, ?> both -> either(schema(both.word()), schema(both.full()));
      case Form<?> form -> JSON.createObjectNode().put("$ref", reference(form));
      case OneOf<?> one -> oneOf(one);
    };
  }

  /** Editors that see the kind complain of that kind's keys alone. */
  private ObjectNode oneOf(OneOf<?> one) {
    ObjectNode schema = JSON.createObjectNode().put("type", "object");
    one.forms()
        .keySet()
        .forEach(schema.putObject("properties").putObject(OneOf.KEY).putArray("enum")::add);
    schema.putArray("required").add(OneOf.KEY);
    ArrayNode all = schema.putArray("allOf");
    one.forms().forEach((word, form) -> all.add(ofKind(word, form)));
    return schema;
  }

  private ObjectNode ofKind(String word, Form<?> form) {
    ObjectNode schema = JSON.createObjectNode();
    ObjectNode condition = schema.putObject("if");
    condition.putObject("properties").putObject(OneOf.KEY).put("const", word);
    condition.putArray("required").add(OneOf.KEY);
    schema.putObject("then").put("$ref", reference(form));
    return schema;
  }

  private static ObjectNode either(ObjectNode one, ObjectNode other) {
    ObjectNode schema = JSON.createObjectNode();
    schema.putArray("anyOf").add(one).add(other);
    return schema;
  }

  private ObjectNode list(ListOf<?> list) {
    ObjectNode many = JSON.createObjectNode().put("type", "array");
    many.put("minItems", 1).put("maxItems", list.most()).set("items", schema(list.item()));
    return either(schema(list.item()), many);
  }

  private ObjectNode named(Named<?> named) {
    ObjectNode schema = JSON.createObjectNode().put("type", "object");
    schema.putObject("patternProperties").set("^" + Named.PATTERN + "$", schema(named.thing()));
    return schema
        .put("additionalProperties", false)
        .put("minProperties", 1)
        .put("maxProperties", named.most());
  }

  private static ObjectNode word(Word<?> word) {
    ObjectNode schema = shape(word.shape());
    if (!(word.shape() instanceof Shape.Choice)) {
      schema.putArray("examples").add(word.example());
    }
    return schema;
  }

  private static ObjectNode shape(Shape shape) {
    ObjectNode schema = JSON.createObjectNode();
    switch (shape) {
      case Shape.Measure _ -> {
        types(schema, "number", "string");
        schema.put("minimum", 0).put("pattern", STARTS_A_NUMBER);
      }
      case Shape.Number(Grain grain, double least, double most) -> {
        types(schema, grain == Grain.WHOLE ? "integer" : "number", "string");
        schema.put("minimum", plain(least)).put("maximum", plain(most));
        schema.put("pattern", grain == Grain.WHOLE ? "^\\d+$" : "^-?\\d+(\\.\\d+)?$");
      }
      case Shape.Choice(List<String> words) -> words.forEach(schema.putArray("enum")::add);
      case Shape.Row(List<String> names) -> {
        ArrayNode any = schema.putArray("anyOf");
        names.forEach(any.addObject().putArray("enum")::add);
        any.addObject().put("type", "string");
      }
      case Shape.OfMaterial _, Shape.OfCase _ -> free(schema, Named.LONGEST);
      case Shape.Free(int longest) -> free(schema, longest);
    }
    return schema;
  }

  private static void free(ObjectNode schema, int longest) {
    types(schema, "string", "number", "boolean");
    schema.put("minLength", 1).put("maxLength", longest).put("pattern", PRINTED);
  }

  private static BigDecimal plain(double number) {
    return new BigDecimal(BigDecimal.valueOf(number).stripTrailingZeros().toPlainString());
  }

  private static void types(ObjectNode schema, String... types) {
    List.of(types).forEach(schema.putArray("type")::add);
  }
}
