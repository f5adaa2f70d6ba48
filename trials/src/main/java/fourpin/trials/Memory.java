package fourpin.trials;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.OptionalLong;

/** What Linux says of a process's memory (/proc/PID/status, see proc(5)). */
final class Memory {

  private Memory() {}

  /**
   * @param what VmRSS for what is resident now, VmHWM for the most that was
   * @return none once the process has ended, and on other systems
   */
  static OptionalLong kibibytes(long pid, String what) throws IOException {
    try {
      return Files.readAllLines(Path.of("/proc", Long.toString(pid), "status")).stream()
          .filter(line -> line.startsWith(what + ":"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst();
    } catch (NoSuchFileException e) {
      return OptionalLong.empty();
    }
  }
}
