package fourpin.trials;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.PostgresServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Whether anything that was acknowledged is lost when a process is killed in mid-save. */
@Command(
    name = "store",
    mixinStandardHelpOptions = true,
    description =
        "Kills processes in the middle of saving, on SQLite and on PostgreSQL, and looks for what they"
            + " were told is saved; every tenth time the PostgreSQL server dies too.")
final class StoreTrial implements Callable<Integer> {

  private static final double NANOS = 1e9;
  private static final int LOST_TOLD = 20;
  private static final int CRASH_EACH = 10;

  @Option(
      names = "--kills",
      defaultValue = "500",
      description = "Kills on each database (default: ${DEFAULT-VALUE}).")
  private int kills;

  @Option(names = "--seed", defaultValue = "1", description = "Seed (default: ${DEFAULT-VALUE}).")
  private long seed;

  private final List<String> found = new ArrayList<>();

  @Override
  public Integer call() throws IOException {
    String machine = Machine.inWords();
    System.out.println(machine);
    boolean good = tell("SQLite", new Kills(newFile(), Kills.Crash.NONE, CRASH_EACH));
    try (PostgresServer server = PostgresServer.start(Trials.root())) {
      good = tell("PostgreSQL", new Kills(server.database(), server::crash, CRASH_EACH)) && good;
    }
    FaultsReport.write(Trials.root(), FaultsReport.Part.KILLS, machine, found);
    return good ? 0 : 1;
  }

  static DataPlace.InFile newFile() throws IOException {
    Path folder = Files.createTempDirectory("fourpin-trial");
    folder.toFile().deleteOnExit();
    return new DataPlace.InFile(folder.resolve("shop.db"));
  }

  private boolean tell(String database, Kills on) throws IOException {
    long start = System.nanoTime();
    Kills.Tally tally = on.run(kills, seed);
    tally.lost().stream().limit(LOST_TOLD).forEach(System.out::println);
    found.add(
        String.format(
            Locale.ROOT,
            "%s: %,d kills, seed %d; %,d saves acknowledged, %,d of them lost; %.0f s",
            database,
            tally.kills(),
            seed,
            tally.acknowledged(),
            tally.lost().size(),
            (System.nanoTime() - start) / NANOS));
    System.out.println(found.getLast());
    return tally.lost().isEmpty();
  }
}
