package fourpin.trials;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.PostgresServer;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.time.InstantSource;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Whether a change is lost when many edit the same jobs at once. */
@Command(
    name = "editors",
    mixinStandardHelpOptions = true,
    description = "Many editors save the same jobs at once, on SQLite and on PostgreSQL.")
final class EditorsTrial implements Callable<Integer> {

  private static final long NANOS = 1_000_000_000;

  @Option(
      names = "--editors",
      defaultValue = "50",
      description = "Editors (default: ${DEFAULT-VALUE}).")
  private int editors;

  @Option(names = "--jobs", defaultValue = "20", description = "Jobs (default: ${DEFAULT-VALUE}).")
  private int jobs;

  @Option(
      names = "--seconds",
      defaultValue = "60",
      description = "How long, on each database (default: ${DEFAULT-VALUE}).")
  private int seconds;

  @Option(names = "--seed", defaultValue = "1", description = "Seed (default: ${DEFAULT-VALUE}).")
  private long seed;

  @Override
  public Integer call() throws IOException, InterruptedException, ExecutionException {
    System.out.println(Machine.inWords());
    boolean inFile = tell("SQLite", StoreTrial.newFile());
    try (PostgresServer server = PostgresServer.start(Trials.root())) {
      return tell("PostgreSQL", server.database()) && inFile ? 0 : 1;
    }
  }

  private boolean tell(String database, DataPlace place)
      throws InterruptedException, ExecutionException {
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      long end = System.nanoTime() + seconds * NANOS;
      Editors.Tally tally =
          new Editors(store, editors, jobs, seed, _ -> System.nanoTime() < end).run();
      tally.lost().forEach(System.out::println);
      System.out.printf(
          Locale.ROOT,
          "%s: %d editors on %d jobs for %d s; %,d changes saved, %,d times overtaken and made anew, %,d"
              + " jobs with something lost%n",
          database,
          editors,
          jobs,
          seconds,
          tally.saved(),
          tally.overtaken(),
          tally.lost().size());
      return tally.lost().isEmpty();
    }
  }
}
