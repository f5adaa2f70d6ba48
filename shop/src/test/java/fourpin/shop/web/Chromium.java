package fourpin.shop.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** Starts the browser that tests drive; where it is missing, it is installed first. */
final class Chromium {

  private static final Path FINDER =
      Path.of("..", "shop", "src", "test", "sh", "browser.sh").toAbsolutePath().normalize();

  /** Kept, because a logger that nobody holds forgets its level. */
  private static final Logger DRIVERS_LOG = Logger.getLogger("org.openqa.selenium");

  private static final long LONGEST_INSTALL_MIN = 15;

  private Chromium() {}

  /**
   * @param aside what it keeps while it runs
   * @param downloads in there
   * @throws IllegalStateException with what is missing on this machine
   */
  static ChromeDriver driver(Path aside, Path downloads) throws IOException {
    DRIVERS_LOG.setLevel(Level.SEVERE);
    List<String> found = find();
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(Path.of(found.getLast()).toFile())
            .withEnvironment(Map.of("TMPDIR", aside.toString()))
            .build();
    return new ChromeDriver(service, options(found.getFirst(), downloads));
  }

  private static List<String> find() throws IOException {
    Process finder = new ProcessBuilder("sh", FINDER.toString()).redirectErrorStream(true).start();
    List<String> said = finder.inputReader(StandardCharsets.UTF_8).readAllLines();
    try {
      if (!finder.waitFor(LONGEST_INSTALL_MIN, TimeUnit.MINUTES) || finder.exitValue() != 0) {
        throw new IllegalStateException(String.join("\n", said));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
    return said;
  }

  /** No sandbox: as root, as in most containers, Chromium has none. It sees our own pages only. */
  private static ChromeOptions options(String browser, Path downloads) {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.SEVERE);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser);
    options.addArguments("--headless=new", "--no-sandbox", "--disable-dev-shm-usage");
    options.addArguments(
        "--host-resolver-rules=MAP " + OneAuthority.HOST + " 127.0.0.1",
        "--ignore-certificate-errors-spki-list=" + OneAuthority.keysDigest());
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    options.setExperimentalOption(
        "prefs",
        Map.of(
            "download.default_directory",
            downloads.toString(),
            "plugins.always_open_pdf_externally",
            true));
    return options;
  }
}
