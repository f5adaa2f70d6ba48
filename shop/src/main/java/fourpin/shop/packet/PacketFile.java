package fourpin.shop.packet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/**
 * A file of a packet.
 *
 * @param name within the packet, with {@code /} between folders; letters, digits, points, hyphens
 */
public record PacketFile(String name, Content content) {

  private static final Pattern NAME =
      Pattern.compile("[\\p{L}\\p{N}_-][\\p{L}\\p{N}._ -]*(/[\\p{L}\\p{N}_-][\\p{L}\\p{N}._ -]*)*");

  /** What stands in it. */
  @FunctionalInterface
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  public PacketFile {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("a packet has no file '" + name + "'");
    }
  }

  public static PacketFile of(String name, String text) {
    return of(name, text.getBytes(StandardCharsets.UTF_8));
  }

  public static PacketFile of(String name, byte[] bytes) {
    return new PacketFile(name, out -> out.write(bytes));
  }
}
