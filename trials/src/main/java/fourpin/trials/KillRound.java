package fourpin.trials;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What came of killing processes on one new database. Rounds are noted at once, so that a long
 * trial goes on where it was stopped.
 *
 * @param machine what it ran on; without line breaks
 */
record KillRound(
    String database,
    long seed,
    int kills,
    int acknowledged,
    int lost,
    long seconds,
    String machine) {

  private static final String HEAD = "database,seed,kills,acknowledged,lost,seconds,machine\n";
  private static final int FIELDS = 7;

  private static Path file(Path root) {
    return root.resolve("docs/faults-kills.csv");
  }

  boolean is(String onDatabase, long ofSeed) {
    return database.equals(onDatabase) && seed == ofSeed;
  }

  /** The rounds that are noted. */
  static List<KillRound> noted(Path root) throws IOException {
    Path file = file(root);
    return Files.exists(file)
        ? Files.readAllLines(file).stream().skip(1).map(KillRound::read).toList()
        : List.of();
  }

  private static KillRound read(String line) {
    String[] fields = line.split(",", FIELDS);
    return new KillRound(
        fields[0],
        Long.parseLong(fields[1]),
        Integer.parseInt(fields[2]),
        Integer.parseInt(fields[3]),
        Integer.parseInt(fields[4]),
        Long.parseLong(fields[5]),
        fields[6]);
  }

  /** Forgets what was noted. */
  static void beginAnew(Path root) throws IOException {
    Files.writeString(file(root), HEAD);
  }

  /** Adds it to those that are noted. */
  void note(Path root) throws IOException {
    String line =
        Stream.of(database, seed, kills, acknowledged, lost, seconds, machine)
            .map(String::valueOf)
            .collect(Collectors.joining(",", "", "\n"));
    Files.writeString(file(root), line, StandardOpenOption.APPEND);
  }

  /** Rounds on one database together, in words. */
  static String inWords(String database, List<KillRound> rounds) {
    return String.format(
        Locale.ROOT,
        "%s: %,d kills in %d rounds, seeds from %d; %,d saves acknowledged, %,d of them lost; %,d s",
        database,
        sum(rounds, KillRound::kills),
        rounds.size(),
        rounds.getFirst().seed(),
        sum(rounds, KillRound::acknowledged),
        sum(rounds, KillRound::lost),
        sum(rounds, KillRound::seconds));
  }

  private static long sum(List<KillRound> rounds, ToLongFunction<KillRound> field) {
    return rounds.stream().mapToLong(field).sum();
  }
}
