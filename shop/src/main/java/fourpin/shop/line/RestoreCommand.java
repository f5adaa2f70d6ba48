package fourpin.shop.line;

import fourpin.shop.store.backup.BackupException;
import fourpin.shop.store.backup.BackupReader;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a backup into the shop's data. */
@Command(
    name = "restore",
    mixinStandardHelpOptions = true,
    description = "Puts all that a backup holds into the shop's data, whole or not at all.")
public final class RestoreCommand extends DataErrand {

  @Parameters(index = "0", paramLabel = "FILE", description = "The backup.")
  private Path file;

  @Option(
      names = "--replace",
      description = "Drops what the shop keeps now; without it, the shop must keep nothing.")
  private boolean replace;

  /** picocli sets the fields before the command runs. */
  @SuppressWarnings("NullAway.Init")
  RestoreCommand() {}

  @Override
  int work(SqlStore store) {
    if (!Files.isRegularFile(file)) {
      return refused(file + ": there is no such file; check its name and folder");
    }
    try {
      BackupReader.restore(
          file, store, replace ? SqlStore.Before.ANYTHING : SqlStore.Before.NOTHING);
    } catch (BackupException e) {
      return refused(file + ": " + e.getMessage());
    } catch (IOException e) {
      return refused(file + ": it cannot be read; check its permissions");
    }
    out().println("The shop keeps now what " + file + " holds.");
    return GOOD;
  }
}
