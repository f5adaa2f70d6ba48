package fourpin.shop.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Files of the repository that tests hold to the code. */
public final class Documents {

  /** Tests run in the folder of their module. */
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

  private Documents() {}

  static String read(String path) {
    try {
      return Files.readString(ROOT.resolve(path));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path shopExample() {
    return ROOT.resolve("examples").resolve(ShopFiles.STANDARD);
  }

  /** Jobs. */
  static List<Path> examples() {
    try (Stream<Path> files = Files.list(ROOT.resolve("examples"))) {
      return files
          .filter(f -> f.toString().endsWith(".yaml") && !f.endsWith(ShopFiles.STANDARD))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Holds a file to what the code says, or writes it when {@code -Ddocuments=write} is given. */
  public static void hold(String path, String expected) {
    if ("write".equals(System.getProperty("documents"))) {
      write(path, expected);
    }
    assertThat(read(path))
        .as(path + " is current; mvn test -pl shop -am -Ddocuments=write writes it anew")
        .isEqualTo(expected);
  }

  private static void write(String path, String text) {
    try {
      Files.writeString(ROOT.resolve(path), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
