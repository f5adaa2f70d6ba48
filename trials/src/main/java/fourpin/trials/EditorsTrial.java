package fourpin.trials;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.PostgresServer;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.nio.file.Files;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Whether a change is lost when many edit the same jobs at once, in the store and on the pages. */
@Command(
    name = "editors",
    mixinStandardHelpOptions = true,
    description =
        "Many editors save the same jobs at once, and change them on the pages of a server, over loopback;"
            + " on SQLite and on PostgreSQL.")
final class EditorsTrial implements Callable<Integer> {

  private static final long NANOS = 1_000_000_000;
  private static final int LONGEST_PAUSE_MS = 6_000;

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

  private final List<String> found = new ArrayList<>();

  @Override
  public Integer call() throws IOException, InterruptedException, ExecutionException {
    String machine = Machine.inWords();
    System.out.println(machine);
    boolean good = both("SQLite", StoreTrial::newFile);
    try (PostgresServer server = PostgresServer.start(Trials.root())) {
      good = both("PostgreSQL", server::database) && good;
    }
    FaultsReport.write(Trials.root(), FaultsReport.Part.EDITORS, machine, found);
    return good ? 0 : 1;
  }

  /** Makes a new, empty place. */
  private interface Places {
    DataPlace next() throws IOException;
  }

  private boolean both(String database, Places places)
      throws IOException, InterruptedException, ExecutionException {
    boolean inStore = tell(database, places.next());
    return tellOfPages(database, places.next()) && inStore;
  }

  private boolean tellOfPages(String database, DataPlace place)
      throws IOException, InterruptedException, ExecutionException {
    String text = Files.readString(Trials.root().resolve("examples/reading-room.yaml"));
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      long end = System.nanoTime() + seconds * NANOS;
      PageEditors.Tally tally =
          new PageEditors(
                  store, text, editors, jobs, seed, LONGEST_PAUSE_MS, _ -> System.nanoTime() < end)
              .run();
      tally.wrong().forEach(System.out::println);
      found.add(
          String.format(
              Locale.ROOT,
              "%s, pages: %d people on %d jobs for %d s, each after a pause of up to 6 s; %,d changes saved, %,d times somebody else was first,"
                  + " %,d errors and losses",
              database,
              editors,
              jobs,
              seconds,
              tally.saved(),
              tally.again(),
              tally.wrong().size()));
      System.out.println(found.getLast());
      return tally.wrong().isEmpty();
    }
  }

  private boolean tell(String database, DataPlace place)
      throws InterruptedException, ExecutionException {
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      long end = System.nanoTime() + seconds * NANOS;
      Editors.Tally tally =
          new Editors(store, editors, jobs, seed, _ -> System.nanoTime() < end).run();
      tally.lost().forEach(System.out::println);
      found.add(
          String.format(
              Locale.ROOT,
              "%s: %d editors on %d jobs for %d s; %,d changes saved, %,d times overtaken and made anew, %,d"
                  + " jobs with something lost",
              database,
              editors,
              jobs,
              seconds,
              tally.saved(),
              tally.overtaken(),
              tally.lost().size()));
      System.out.println(found.getLast());
      return tally.lost().isEmpty();
    }
  }
}
