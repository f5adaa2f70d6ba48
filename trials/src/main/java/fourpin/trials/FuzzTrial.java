package fourpin.trials;

import fourpin.shop.file.ShopFiles;
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

/** Whether the reader of job and shop files survives whatever stands in them. */
@Command(
    name = "fuzz",
    mixinStandardHelpOptions = true,
    description =
        "Reads spoilt job and shop files, plans those that are read, stops at the first that breaks the program.")
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
    JobFuzz.Tally tally = fuzz(Trials.root().resolve("examples")).run(seed, inputs);
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

  /** With the examples of a folder as samples. */
  static JobFuzz fuzz(Path folder) throws IOException {
    return new JobFuzz(jobs(folder), List.of(bytes(folder.resolve(ShopFiles.STANDARD))));
  }

  private static List<byte[]> jobs(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.toString().endsWith(".yaml") && !f.endsWith(ShopFiles.STANDARD))
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
