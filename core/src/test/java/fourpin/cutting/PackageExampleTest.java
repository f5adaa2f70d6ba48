package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example in the package's documentation compiles and does what it says. */
class PackageExampleTest {

  private static final Path SOURCE = Path.of("src/main/java/fourpin/cutting/package-info.java");
  private static final String HEAD =
      """
      import fourpin.cutting.*;
      import fourpin.measure.Length;
      import java.util.List;

      public class Example {
        public static void main(String[] args) {
      """;

  @TempDir private Path classes;

  private static String example() throws IOException {
    String text = Files.readString(SOURCE);
    int start = text.indexOf("{@snippet :");
    return text.substring(start, text.lastIndexOf("\n * }\n"))
        .replace("{@snippet :", "")
        .replace("\n *", "\n");
  }

  private record Source(String text) {
    JavaFileObject file() {
      return new SimpleJavaFileObject(
          URI.create("string:///Example.java"), JavaFileObject.Kind.SOURCE) {
        @Override
        public CharSequence getCharContent(boolean ignored) {
          return text;
        }
      };
    }
  }

  @Test
  void compilesAndRuns() throws Exception {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<String> options =
        List.of(
            "-proc:none", "-cp", System.getProperty("java.class.path"), "-d", classes.toString());
    Source source = new Source(HEAD + example() + "\n}}\n");
    assertThat(compiler.getTask(null, null, null, options, null, List.of(source.file())).call())
        .isTrue();
    assertThat(run().lines()).first().isEqualTo("5 sheets; none needs fewer than 5");
    assertThat(run()).endsWith("faults: []\n");
  }

  private String run() throws Exception {
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    PrintStream before = System.out;
    try (URLClassLoader loader =
        new URLClassLoader(new URL[] {classes.toUri().toURL()}, getClass().getClassLoader())) {
      System.setOut(new PrintStream(told, true, StandardCharsets.UTF_8));
      loader
          .loadClass("Example")
          .getMethod("main", String[].class)
          .invoke(null, (Object) new String[0]);
    } finally {
      System.setOut(before);
    }
    return told.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
  }
}
