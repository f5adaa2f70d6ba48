package fourpin.trials;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Whether the reader of job files survives whatever stands in them. */
@Command(
    name = "fuzz",
    mixinStandardHelpOptions = true,
    description =
        "Reads spoilt job files, plans those that are read, stops at the first that breaks the program.")
final class FuzzTrial implements Callable<Integer> {

  @Option(
      names = "--inputs",
      defaultValue = "1000000",
      description = "Inputs (default: ${DEFAULT-VALUE}).")
  private long inputs;

  @Option(names = "--seed", defaultValue = "1", description = "Seed (default: ${DEFAULT-VALUE}).")
  private long seed;

  @Override
  public Integer call() throws IOException {
    long start = System.nanoTime();
    JobFuzz.Tally tally = new JobFuzz(samples(Trials.root().resolve("examples"))).run(seed, inputs);
    System.out.printf(
        Locale.ROOT,
        "%d inputs, seed %d: %d read, %d refused with %d messages, none unhandled; %.0f s%n",
        inputs,
        seed,
        tally.good(),
        tally.refused(),
        tally.messages(),
        (System.nanoTime() - start) / 1e9);
    return 0;
  }

  static List<byte[]> samples(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.toString().endsWith(".yaml"))
          .sorted()
          .map(FuzzTrial::bytes)
          .toList();
    }
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
