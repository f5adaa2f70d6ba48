package fourpin.trials;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;

/**
 * Runs of a command as a process of its own: from its start until it has ended, output thrown away.
 *
 * <p>The peak of resident memory is the high-water mark that Linux keeps (VmHWM in
 * /proc/PID/status, see proc(5)), read every few milliseconds because it goes away with the
 * process. It is missing on other systems.
 */
record WholeProcess(Sample seconds, OptionalLong peakKibibytes) {

  private static final long BETWEEN_LOOKS_MS = 5;
  private static final double NANOS_PER_SECOND = 1e9;

  /**
   * One run to warm the caches of the disk, then {@code runs} that count.
   *
   * @throws IllegalStateException if a run ends with anything but 0
   */
  static WholeProcess of(int runs, List<String> command) throws IOException, InterruptedException {
    once(command);
    List<Double> seconds = new ArrayList<>();
    OptionalLong peak = OptionalLong.empty();
    for (int run = 0; run < runs; run++) {
      Once once = once(command);
      seconds.add(once.seconds());
      peak = larger(peak, once.peakKibibytes());
    }
    return new WholeProcess(new Sample(seconds), peak);
  }

  private static Once once(List<String> command) throws IOException, InterruptedException {
    Path said = Files.createTempFile("fourpin-trial", ".txt");
    try {
      long start = System.nanoTime();
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(said.toFile())
              .start();
      OptionalLong peak = watch(process);
      double seconds = (System.nanoTime() - start) / NANOS_PER_SECOND;
      if (process.exitValue() != 0) {
        throw new IllegalStateException(
            command + " ended with " + process.exitValue() + ":\n" + Files.readString(said));
      }
      return new Once(seconds, peak);
    } finally {
      Files.delete(said);
    }
  }

  private static OptionalLong watch(Process process) throws IOException, InterruptedException {
    OptionalLong peak = OptionalLong.empty();
    do {
      peak = larger(peak, Memory.kibibytes(process.pid(), "VmHWM"));
    } while (!process.waitFor(BETWEEN_LOOKS_MS, TimeUnit.MILLISECONDS));
    return peak;
  }

  private static OptionalLong larger(OptionalLong a, OptionalLong b) {
    return a.isEmpty() || (b.isPresent() && b.getAsLong() > a.getAsLong()) ? b : a;
  }

  private record Once(double seconds, OptionalLong peakKibibytes) {}
}
