package fourpin.trials;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Folders for a trial, which are gone with all that is in them when the process ends. */
final class Aside {

  private Aside() {}

  static Path folder() throws IOException {
    Path folder = Files.createTempDirectory("fourpin-trial");
    Runtime.getRuntime().addShutdownHook(Thread.ofPlatform().unstarted(() -> delete(folder)));
    return folder;
  }

  /** What another process still writes stays. */
  private static void delete(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
