package fourpin.trials;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The page of what was tried against faults and what came of it; each trial writes its part anew.
 */
final class FaultsReport {

  /** The parts of the page, in their order. */
  enum Part {
    KILLS(
        "Killed in the middle of saving",
        "`trials/run store` starts processes that save texts, ticks and pieces of stock as fast as they can and print"
            + " each once the\nstore says that it is saved. After 1 to 40 of those and up to 3 ms the process is killed"
            + " (SIGKILL), and whatever it printed is\nlooked for; at the end of a round of 50 all of it is looked for once more. Every tenth time every process of\nthe PostgreSQL server"
            + " is killed at once as well. A killed process loses what it has not\nhanded to the system; it is not a power"
            + " cut, for which the databases are set to write through to the disk (ARCHITECTURE.md).\nEach round is noted in `docs/faults-kills.csv`."),
    EDITORS(
        "Many people at the same jobs",
        "`trials/run editors` lets 50 people change 20 jobs for a minute: first straight in the store, each adding lines,"
            + " then on the\npages of a server over loopback, each with an address of its own, looking at a job and, after a moment, changing"
            + " a length in it. Who is told that\nsomebody else was first looks again and changes it again. At the end"
            + " each revision must be the one before it with one change\nmore, each change that was said to be saved must be"
            + " in one, and there may be no other answer.");

    private final String title;
    private final String about;

    Part(String title, String about) {
      this.title = title;
      this.about = about;
    }
  }

  private static final String HEAD =
      """
      # Faults

      Written by the trials named below; what they ran on stands beside the figures.

      """;

  private FaultsReport() {}

  /**
   * Writes a part in place of the one that stood there.
   *
   * @param machine what it ran on
   * @param found what came of it, a line each
   */
  static void write(Path root, Part part, String machine, List<String> found) throws IOException {
    Path file = root.resolve("docs/faults.md");
    Map<Part, String> parts = parts(Files.exists(file) ? Files.readString(file) : HEAD);
    String list = found.stream().map(f -> "* " + f + "\n").collect(Collectors.joining());
    parts.put(part, part.about + "\n\nOn " + machine + ":\n\n" + list);
    StringBuilder page = new StringBuilder(HEAD.strip());
    parts.forEach((p, text) -> page.append("\n\n## " + p.title + "\n\n" + text.strip()));
    Files.writeString(file, page.append('\n'));
  }

  private static Map<Part, String> parts(String page) {
    Map<Part, String> parts = new EnumMap<>(Part.class);
    for (String section : page.split("\n## ")) {
      for (Part part : Part.values()) {
        if (section.startsWith(part.title + "\n")) {
          parts.put(part, section.substring(part.title.length()));
        }
      }
    }
    return parts;
  }
}
