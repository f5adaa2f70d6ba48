package fourpin.trials;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program as a process of its own that serves pages on any free port. */
final class ServerProcess implements AutoCloseable {

  private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+");

  private final Process process;
  private final URI origin;

  /** Returns once it says where it is. */
  ServerProcess(Path launcher, Path data) throws IOException {
    this.process =
        new ProcessBuilder(launcher.toString(), "serve", "--port", "0", "--data", data.toString())
            .redirectErrorStream(true)
            .start();
    this.origin = said(process.getInputStream());
  }

  /** Where it says it is. One that says anything else does not live on. */
  private URI said(InputStream output) throws IOException {
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(output, StandardCharsets.UTF_8));
    String line = lines.readLine();
    Matcher address = ADDRESS.matcher(String.valueOf(line));
    if (!address.find()) {
      close();
      throw new IllegalStateException("The server says: " + line);
    }
    return URI.create(address.group());
  }

  /** An address of it. @param path from its root, with a slash before it */
  URI at(String path) {
    return origin.resolve(path);
  }

  OptionalLong residentKibibytes() throws IOException {
    return Memory.kibibytes(process.pid(), "VmRSS");
  }

  /** Of processors that it had so far, whatever for; none where the system does not tell. */
  Optional<Duration> processorTime() {
    return process.info().totalCpuDuration();
  }

  @Override
  public void close() {
    process.destroy();
    process.onExit().join();
  }
}
