package fourpin.shop.line;

import fourpin.shop.store.backup.BackupWriter;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes all that the shop keeps into one file. */
@Command(
    name = "backup",
    mixinStandardHelpOptions = true,
    description = "Writes all jobs, ticks, stock and tools that the shop keeps into one file.")
public final class BackupCommand extends DataErrand {

  @Parameters(index = "0", paramLabel = "FILE", description = "The backup to write (zip).")
  private Path file;

  @Option(names = "--replace", description = "Replaces a file that is there already.")
  private boolean replace;

  /** picocli sets the fields before the command runs. */
  @SuppressWarnings("NullAway.Init")
  BackupCommand() {}

  @Override
  int work(SqlStore store) throws IOException {
    if (Files.isDirectory(file)) {
      return refused(file + ": it is a folder; name a file");
    }
    if (Files.exists(file) && !replace) {
      return refused(file + ": there is a file already; name another, or add --replace");
    }
    return written(store);
  }

  private int written(SqlStore store) {
    try {
      BackupWriter.write(store, file);
    } catch (IOException e) {
      return refused(file + ": it cannot be written; check its folder and the room on the disk");
    }
    out().println("The backup is in " + file + ".");
    return GOOD;
  }
}
