package fourpin.shop.file;

import fourpin.shop.yaml.TreeReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** What came of opening a file. */
public sealed interface Opened {

  /** What messages call the file. */
  String path();

  /** What it holds, up to a byte more than was asked for. */
  final class Bytes implements Opened {
    private final String path;
    private final byte[] bytes;

    public Bytes(String path, byte[] bytes) {
      this.path = path;
      this.bytes = bytes.clone();
    }

    @Override
    public String path() {
      return path;
    }

    public byte[] bytes() {
      return bytes.clone();
    }
  }

  /** Why there is nothing to read. */
  record Refused(String path, String rule, String remedy) implements Opened {}

  /**
   * Opens a file.
   *
   * @param ifMissing remedy where there is no such file
   * @param ifOther remedy where it is a folder or the like
   */
  static Opened open(Path file, String ifMissing, String ifOther) {
    return open(file, TreeReader.MOST_BYTES, ifMissing, ifOther);
  }

  /**
   * The same of a file that may be larger than what makers write.
   *
   * @param most bytes that it may have
   */
  static Opened open(Path file, int most, String ifMissing, String ifOther) {
    if (!Files.exists(file)) {
      return new Refused(file.toString(), "there is no such file", ifMissing);
    }
    if (!Files.isRegularFile(file)) {
      return new Refused(file.toString(), "it is not a file", ifOther);
    }
    try (InputStream in = Files.newInputStream(file)) {
      return new Bytes(file.toString(), in.readNBytes(most + 1));
    } catch (IOException e) {
      return new Refused(file.toString(), "it cannot be read", "check its permissions");
    }
  }
}
