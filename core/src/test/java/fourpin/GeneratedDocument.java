package fourpin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Pages under {@code docs} that tests of core work out, and hold to what they say. */
public final class GeneratedDocument {

  /** Tests run in the folder of their module. */
  private static final Path DOCS = Path.of("..", "docs").toAbsolutePath().normalize();

  private GeneratedDocument() {}

  /** Holds a page to what is worked out, or writes it when {@code -Ddocuments=write} is given. */
  public static void hold(String name, String expected) {
    Path page = DOCS.resolve(name);
    try {
      if ("write".equals(System.getProperty("documents"))) {
        Files.writeString(page, expected);
      }
      assertThat(Files.readString(page))
          .as(name + " is current; mvn test -pl core -Ddocuments=write writes it anew")
          .isEqualTo(expected);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
