package fourpin.shop.line;

import fourpin.measure.Reading;
import fourpin.shop.store.DataPlace;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where a command finds what the shop keeps. */
final class DataOption {

  private static final String VARIABLE = "FOURPIN_DATA";

  @Option(
      names = "--data",
      paramLabel = "WHERE",
      description =
          "Where the shop keeps its data: a file, or jdbc:postgresql://HOST/DATABASE?user=NAME"
              + " (default: $FOURPIN_DATA, or fourpin/shop.db among your data).")
  private Optional<String> where = Optional.empty();

  /**
   * @param environment of this process, or of a test
   */
  Reading<DataPlace> place(Map<String, String> environment) {
    return where
        .or(() -> Optional.ofNullable(environment.get(VARIABLE)))
        .map(
            text ->
                DataPlace.read(
                    text, Optional.ofNullable(environment.get(DataPlace.PASSWORD_VARIABLE))))
        .orElseGet(() -> Reading.good(new DataPlace.InFile(standard(environment))));
  }

  /**
   * Where the certificate authority is kept: beside the file, and for data on a server where the
   * file would be.
   */
  Path authority(Map<String, String> environment) {
    Path beside =
        place(environment) instanceof Reading.Good<DataPlace>(DataPlace.InFile(Path file))
            ? file
            : standard(environment);
    return beside.resolveSibling(beside.getFileName() + "-authority.p12");
  }

  /** Where programs keep their users' data: XDG Base Directory Specification 0.8. */
  private static Path standard(Map<String, String> environment) {
    Path data =
        Optional.ofNullable(environment.get("XDG_DATA_HOME"))
            .filter(folder -> folder.startsWith("/"))
            .map(Path::of)
            .orElseGet(() -> Path.of(System.getProperty("user.home"), ".local", "share"));
    return data.resolve("fourpin").resolve("shop.db");
  }
}
