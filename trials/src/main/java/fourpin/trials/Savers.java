package fourpin.trials;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * Starts processes that save.
 *
 * @param java how, up to the main class
 */
record Savers(List<String> java) {

  private static final String PRACTICE_ROUNDS = "20";

  /** As anybody starts Java. */
  static Savers plain() {
    return new Savers(java(System.getProperty("java.class.path"), List.of()));
  }

  /**
   * Starts in about half the processor time: the classes lie in jars and are made ready in an
   * archive by a first process, which saves a little and ends by itself.
   *
   * @param place of the same kind as those to be saved in; something is left in it
   * @param folder for the jars and the archive, as long as this is used
   */
  static Savers practised(DataPlace place, Path folder) throws IOException {
    String jars = jars(folder);
    unpackSqlite(folder);
    Path archive = folder.resolve("saving.aot");
    List<String> ready = List.of("-Dorg.sqlite.lib.path=" + folder);
    Process practice =
        new Savers(java(jars, with(ready, "-XX:AOTCacheOutput=" + archive)))
            .start(place, Kills.begin(place), PRACTICE_ROUNDS);
    practice.getInputStream().transferTo(OutputStream.nullOutputStream());
    return new Savers(java(jars, with(ready, "-XX:AOTCache=" + archive)));
  }

  private static List<String> with(List<String> options, String another) {
    return Stream.concat(options.stream(), Stream.of(another)).toList();
  }

  private static List<String> java(String classPath, List<String> options) {
    List<String> java = new ArrayList<>();
    java.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    java.addAll(
        List.of(
            "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "--enable-native-access=ALL-UNNAMED"));
    java.addAll(options);
    java.addAll(List.of("-cp", classPath));
    return List.copyOf(java);
  }

  /** Archives know jars only. */
  private static String jars(Path folder) throws IOException {
    List<String> jars = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      Path path = Path.of(entry);
      jars.add(
          Files.isDirectory(path) ? packed(path, folder.resolve(jars.size() + ".jar")) : entry);
    }
    return String.join(File.pathSeparator, jars);
  }

  /** With its folders, by which the tables' scripts are found. */
  private static String packed(Path classes, Path jar) throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar));
        Stream<Path> all = Files.walk(classes)) {
      for (Path path : all.filter(p -> !p.equals(classes)).sorted().toList()) {
        String name = classes.relativize(path).toString().replace(File.separatorChar, '/');
        if (Files.isDirectory(path)) {
          zip.putNextEntry(new ZipEntry(name + "/"));
        } else {
          zip.putNextEntry(new ZipEntry(name));
          Files.copy(path, zip);
        }
        zip.closeEntry();
      }
    }
    return jar.toString();
  }

  /** Else each process unpacks it anew, and leaves it behind when it is killed. */
  private static void unpackSqlite(Path folder) throws IOException {
    String name = LibraryLoaderUtil.getNativeLibName();
    String resource = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
    try (InputStream library = LibraryLoaderUtil.class.getResourceAsStream(resource)) {
      Files.copy(Objects.requireNonNull(library, resource), folder.resolve(name));
    }
  }

  /** Starts one that saves until it is killed. */
  Process start(DataPlace place, DocumentId job) {
    return start(place, job, String.valueOf(Integer.MAX_VALUE));
  }

  private Process start(DataPlace place, DocumentId job, String rounds) {
    List<String> command = new ArrayList<>(java);
    command.addAll(List.of(SavingProcess.class.getName(), name(place), job.value(), rounds));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    if (place instanceof DataPlace.OnServer server) {
      server.password().ifPresent(p -> builder.environment().put(DataPlace.PASSWORD_VARIABLE, p));
    }
    try {
      return builder.start();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String name(DataPlace place) {
    return switch (place) {
      case DataPlace.InFile(Path file) -> file.toString();
      case DataPlace.OnServer server -> server.url();
    };
  }
}
