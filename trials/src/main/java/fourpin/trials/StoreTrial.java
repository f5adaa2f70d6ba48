package fourpin.trials;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.PostgresServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

  private static final long NANOS = 1_000_000_000;
  private static final int LOST_TOLD = 20;
  private static final int CRASH_EACH = 10;

  /** Each round has a new database, so that looking for everything stays cheap. */
  private static final int KILLS_OF_ROUND = 50;

  @Option(
      names = "--kills",
      defaultValue = "500",
      description = "Kills on each database (default: ${DEFAULT-VALUE}), in rounds of 50.")
  private int kills;

  @Option(
      names = "--seed",
      defaultValue = "1",
      description = "Seed of the first round (default: ${DEFAULT-VALUE}).")
  private long seed;

  @Option(
      names = "--go-on",
      description = "Only the rounds that are not yet noted in docs/faults-kills.csv.")
  private boolean goOn;

  private final String machine = Machine.inWords();
  private final List<KillRound> rounds = new ArrayList<>();

  @Override
  public Integer call() throws IOException {
    System.out.println(machine);
    begin();
    Path folder = Aside.folder();
    try (PostgresServer server = PostgresServer.start(Trials.root())) {
      Savers toFiles = Savers.practised(newFile(), Files.createDirectory(folder.resolve("file")));
      Savers toServer =
          Savers.practised(server.database(), Files.createDirectory(folder.resolve("server")));
      bothAtOnce(
          s -> round("SQLite", s, new Kills(newFile(), toFiles, Kills.Crash.NONE, CRASH_EACH)),
          s ->
              round(
                  "PostgreSQL",
                  s,
                  new Kills(server.database(), toServer, server::crash, CRASH_EACH)));
    }
    remove(folder);
    return rounds.stream().allMatch(round -> round.lost() == 0) ? 0 : 1;
  }

  /** A round with its seed. */
  private interface Round {
    void run(long seed) throws IOException;
  }

  /** A kill keeps one processor busy, and there are two databases. */
  private void bothAtOnce(Round one, Round other) throws IOException {
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      List<Future<Integer>> both =
          Stream.of(one, other).map(round -> threads.submit(() -> all(round))).toList();
      for (Future<Integer> each : both) {
        each.get();
      }
    } catch (ExecutionException e) {
      throw new IOException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * @return how many there are
   */
  private int all(Round round) throws IOException {
    int all = Math.ceilDiv(kills, KILLS_OF_ROUND);
    for (int i = 0; i < all; i++) {
      round.run(seed + i);
    }
    return all;
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  private void begin() throws IOException {
    if (!goOn) {
      KillRound.beginAnew(Trials.root());
    }
    rounds.addAll(KillRound.noted(Trials.root()));
  }

  static DataPlace.InFile newFile() throws IOException {
    return new DataPlace.InFile(Aside.folder().resolve("shop.db"));
  }

  private void round(String database, long seedOfRound, Kills on) throws IOException {
    if (isNoted(database, seedOfRound)) {
      return;
    }
    long start = System.nanoTime();
    Kills.Tally tally = on.run(KILLS_OF_ROUND, seedOfRound);
    tally.lost().stream().limit(LOST_TOLD).forEach(System.out::println);
    note(
        new KillRound(
            database,
            seedOfRound,
            tally.kills(),
            tally.acknowledged(),
            tally.lost().size(),
            (System.nanoTime() - start) / NANOS,
            machine));
  }

  private synchronized boolean isNoted(String database, long ofSeed) {
    return rounds.stream().anyMatch(round -> round.is(database, ofSeed));
  }

  private synchronized void note(KillRound round) throws IOException {
    round.note(Trials.root());
    rounds.add(round);
    report();
  }

  private void report() throws IOException {
    Map<String, List<KillRound>> on =
        rounds.stream()
            .collect(Collectors.groupingBy(KillRound::database, TreeMap::new, Collectors.toList()));
    List<String> found = new ArrayList<>();
    on.forEach((database, of) -> found.add(KillRound.inWords(database, of)));
    System.out.println(String.join("\n", found));
    String machines =
        rounds.stream().map(KillRound::machine).distinct().collect(Collectors.joining("; and on "));
    FaultsReport.write(Trials.root(), FaultsReport.Part.KILLS, machines, found);
  }
}
