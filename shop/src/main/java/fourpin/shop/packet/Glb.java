package fourpin.shop.packet;

import static fourpin.shop.packet.PlanJson.object;

import fourpin.reference.Colour;
import fourpin.sheets.solid.Body;
import fourpin.sheets.solid.Look;
import fourpin.sheets.solid.Skin;
import fourpin.sheets.solid.Solid;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;

/**
 * A case as a file of glTF 2.0 in its binary form (ISO/IEC 12113:2022): metres, y upwards, the
 * front towards positive z. Each part is a node by its mark; doors turn in an animation, and
 * shelves carry the heights that they may lie at as {@code extras}.
 */
public final class Glb {

  public static final String TYPE = "model/gltf-binary";

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private static final int MAGIC = 0x46546C67;
  private static final int VERSION = 2;
  private static final int JSON_CHUNK = 0x4E4F534A;
  private static final int BINARY_CHUNK = 0x004E4942;
  private static final int HEADER = 12;
  private static final int CHUNK_HEADER = 8;
  private static final int ALIGNED = 4;
  private static final byte BLANK = ' ';

  /** Exponent, slope, offset and limit of the straight part of sRGB (IEC 61966-2-1). */
  private static final double SRGB_GAMMA = 2.4;

  private static final double SRGB_OFFSET = 0.055;
  private static final double SRGB_STRAIGHT = 12.92;
  private static final double SRGB_LIMIT = 0.04045;
  private static final double FULL = 255;

  /** Wood with a dull finish, for the eye only. */
  private static final double ROUGH = 0.8;

  private static final double MM_PER_METRE = 1000;

  /** How long a door takes to open in viewers that play it, in seconds. */
  private static final float OPENING = 1.5f;

  private final List<Object> nodes = new ArrayList<>();
  private final List<Object> meshes = new ArrayList<>();
  private final List<Object> materials = new ArrayList<>();
  private final Map<Look, Integer> looks = new LinkedHashMap<>();
  private final List<Object> channels = new ArrayList<>();
  private final List<Object> samplers = new ArrayList<>();
  private final Accessors accessors = new Accessors();

  private Glb() {}

  /** The same case gives the same bytes. */
  public static byte[] write(Solid solid) {
    Glb glb = new Glb();
    List<Integer> children = new ArrayList<>();
    for (Body body : solid.bodies()) {
      children.add(glb.add(body));
    }
    glb.nodes.add(object("name", solid.name(), "children", children));
    return glb.file(solid);
  }

  private int add(Body body) {
    Map<String, Object> node = object("name", body.name(), "mesh", meshes.size());
    Map<String, Object> extras = object("what", body.words());
    node.put(
        "translation",
        metres(body.origin().x().mm(), body.origin().y().mm(), body.origin().z().mm()));
    switch (body.move()) {
      case Body.Still() -> {}
      case Body.Turns(double degrees) -> {
        extras.put("opens", degrees);
        opening(degrees);
      }
      case Body.Lifts lifts -> {
        extras.put("bay", lifts.bay());
        extras.put("shelf", lifts.shelf());
        extras.put("level", lifts.level());
        extras.put("levels", lifts.tops().stream().map(top -> top.mm() / MM_PER_METRE).toList());
      }
    }
    node.put("extras", extras);
    nodes.add(node);
    meshes.add(
        object("name", body.name(), "primitives", body.skins().stream().map(this::skin).toList()));
    return nodes.size() - 1;
  }

  /** Right, back and up of the case become x, -z and y: turned, not mirrored. */
  private static List<Float> metres(double right, double back, double up) {
    return List.of(metres(right), metres(up), metres(-back));
  }

  /** Adding zero makes a negative zero positive. */
  private static float metres(double mm) {
    return (float) (mm / MM_PER_METRE) + 0f;
  }

  private Map<String, Object> skin(Skin skin) {
    List<List<Float>> places =
        skin.vertices().stream().map(v -> metres(v.x(), v.y(), v.z())).toList();
    List<List<Float>> directions =
        skin.vertices().stream()
            .map(v -> List.of((float) v.toX(), (float) v.toZ(), 0f - (float) v.toY()))
            .toList();
    return object(
        "attributes",
        object("POSITION", accessors.places(places), "NORMAL", accessors.directions(directions)),
        "indices",
        accessors.numbers(skin.corners()),
        "material",
        looks.computeIfAbsent(skin.look(), this::material));
  }

  private int material(Look look) {
    Colour colour = look.colour();
    Map<String, Object> material =
        object(
            "name",
            look.name(),
            "pbrMetallicRoughness",
            object(
                "baseColorFactor",
                List.of(
                    linear(colour.red()),
                    linear(colour.green()),
                    linear(colour.blue()),
                    (float) look.opacity()),
                "metallicFactor",
                0,
                "roughnessFactor",
                ROUGH));
    if (look.opacity() < 1) {
      material.put("alphaMode", "BLEND");
    }
    materials.add(material);
    return materials.size() - 1;
  }

  /** From what screens show to amounts of light. */
  private static float linear(int shown) {
    double part = shown / FULL;
    return (float)
        (part <= SRGB_LIMIT
            ? part / SRGB_STRAIGHT
            : StrictMath.pow((part + SRGB_OFFSET) / (1 + SRGB_OFFSET), SRGB_GAMMA));
  }

  /** Shut at first, open at last, for the node that comes next. */
  private void opening(double degrees) {
    double half = StrictMath.toRadians(degrees) / 2;
    List<List<Float>> turns =
        List.of(
            List.of(0f, 0f, 0f, 1f),
            List.of(0f, (float) StrictMath.sin(half), 0f, (float) StrictMath.cos(half)));
    samplers.add(
        object(
            "input",
            accessors.times(List.of(0f, OPENING)),
            "output",
            accessors.turns(turns),
            "interpolation",
            "LINEAR"));
    channels.add(
        object(
            "sampler",
            samplers.size() - 1,
            "target",
            object("node", nodes.size(), "path", "rotation")));
  }

  private byte[] file(Solid solid) {
    byte[] json = padded(JSON.writeValueAsString(json(solid)).getBytes(StandardCharsets.UTF_8));
    byte[] binary = accessors.bytes();
    int length = HEADER + 2 * CHUNK_HEADER + json.length + binary.length;
    return ByteBuffer.allocate(length)
        .order(ByteOrder.LITTLE_ENDIAN)
        .putInt(MAGIC)
        .putInt(VERSION)
        .putInt(length)
        .putInt(json.length)
        .putInt(JSON_CHUNK)
        .put(json)
        .putInt(binary.length)
        .putInt(BINARY_CHUNK)
        .put(binary)
        .array();
  }

  private static byte[] padded(byte[] json) {
    byte[] padded = Arrays.copyOf(json, Math.ceilDiv(json.length, ALIGNED) * ALIGNED);
    Arrays.fill(padded, json.length, padded.length, BLANK);
    return padded;
  }

  private Map<String, Object> json(Solid solid) {
    Map<String, Object> json =
        object(
            "asset",
            object(
                "version", "2.0", "generator", "Fourpin", "extras", object("about", solid.about())),
            "scene",
            0,
            "scenes",
            List.of(object("name", solid.name(), "nodes", List.of(nodes.size() - 1))),
            "nodes",
            nodes,
            "meshes",
            meshes,
            "materials",
            materials,
            "accessors",
            accessors.all(),
            "bufferViews",
            accessors.views(),
            "buffers",
            List.of(object("byteLength", accessors.bytes().length)));
    if (!channels.isEmpty()) {
      json.put(
          "animations",
          List.of(object("name", "doors open", "channels", channels, "samplers", samplers)));
    }
    return json;
  }
}
