package fourpin.shop.packet;

import static fourpin.shop.packet.PlanJson.object;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;

/** The numbers of a glTF file, one after another in its buffer, and what says where they stand. */
final class Accessors {

  private static final int FLOAT = 5126;
  private static final int FOR_VERTICES = 34962;
  private static final int FOR_INDICES = 34963;
  private static final int ALIGNED = 4;

  /** Of whole numbers, with the largest that may be used: the standard keeps the last of each. */
  private enum Whole {
    SHORT(5123, Short.BYTES, 0xFFFE),
    INT(5125, Integer.BYTES, Integer.MAX_VALUE);

    private final int code;
    private final int bytes;
    private final int most;

    Whole(int code, int bytes, int most) {
      this.code = code;
      this.bytes = bytes;
      this.most = most;
    }

    private void put(ByteBuffer buffer, int number) {
      if (this == SHORT) {
        buffer.putShort((short) number);
      } else {
        buffer.putInt(number);
      }
    }
  }

  private final List<Object> views = new ArrayList<>();
  private final List<Object> all = new ArrayList<>();
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

  /** With the least and the most along each axis, which viewers look at first. */
  int places(List<List<Float>> vectors) {
    Map<String, Object> accessor =
        floats("VEC3", vectors, view -> view.put("target", FOR_VERTICES));
    accessor.put("min", ends(vectors, Math::min));
    accessor.put("max", ends(vectors, Math::max));
    return all.size() - 1;
  }

  int directions(List<List<Float>> vectors) {
    floats("VEC3", vectors, view -> view.put("target", FOR_VERTICES));
    return all.size() - 1;
  }

  int turns(List<List<Float>> quaternions) {
    floats("VEC4", quaternions, _ -> {});
    return all.size() - 1;
  }

  int times(List<Float> seconds) {
    List<List<Float>> each = seconds.stream().map(List::of).toList();
    Map<String, Object> accessor = floats("SCALAR", each, _ -> {});
    accessor.put("min", ends(each, Math::min));
    accessor.put("max", ends(each, Math::max));
    return all.size() - 1;
  }

  int numbers(List<Integer> numbers) {
    Whole whole = Collections.max(numbers) <= Whole.SHORT.most ? Whole.SHORT : Whole.INT;
    ByteBuffer buffer = buffer(numbers.size() * whole.bytes);
    numbers.forEach(number -> whole.put(buffer, number));
    add(whole.code, "SCALAR", numbers.size(), buffer, view -> view.put("target", FOR_INDICES));
    return all.size() - 1;
  }

  private Map<String, Object> floats(String type, List<List<Float>> vectors, Mark mark) {
    ByteBuffer buffer = buffer(vectors.size() * vectors.getFirst().size() * Float.BYTES);
    vectors.forEach(vector -> vector.forEach(buffer::putFloat));
    return add(FLOAT, type, vectors.size(), buffer, mark);
  }

  /** What else is said of a stretch of the buffer. */
  private interface Mark {
    void on(Map<String, Object> view);
  }

  private Map<String, Object> add(int code, String type, int count, ByteBuffer buffer, Mark mark) {
    Map<String, Object> view =
        object("buffer", 0, "byteOffset", bytes.size(), "byteLength", buffer.capacity());
    mark.on(view);
    Map<String, Object> accessor =
        object("bufferView", views.size(), "componentType", code, "count", count, "type", type);
    views.add(view);
    all.add(accessor);
    bytes.writeBytes(buffer.array());
    bytes.writeBytes(new byte[Math.ceilDiv(bytes.size(), ALIGNED) * ALIGNED - bytes.size()]);
    return accessor;
  }

  private static ByteBuffer buffer(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static List<Float> ends(List<List<Float>> vectors, BinaryOperator<Float> end) {
    List<Float> ends = new ArrayList<>(vectors.getFirst());
    for (List<Float> vector : vectors) {
      for (int i = 0; i < ends.size(); i++) {
        ends.set(i, end.apply(ends.get(i), vector.get(i)));
      }
    }
    return ends;
  }

  List<Object> all() {
    return all;
  }

  List<Object> views() {
    return views;
  }

  /** The buffer; a multiple of four bytes. */
  byte[] bytes() {
    return bytes.toByteArray();
  }
}
