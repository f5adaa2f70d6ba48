package fourpin.shop.packet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a packet holds, as a file of its own in it: tells a packet from any other folder, and what
 * was put there by Fourpin from what was not.
 *
 * @param digests SHA-256 of each file by its name
 */
record Manifest(Map<String, String> digests) {

  static final String NAME = "manifest.txt";

  private static final String TITLE =
      "Fourpin packet; notes go into progress.csv, files of your own elsewhere";

  /** How it began before; packets that began so are known as well. */
  private static final String FORMER_TITLE =
      "Fourpin packet; made anew by each run, so keep notes elsewhere";

  /** What a folder holds now. */
  static Manifest of(Path folder) throws IOException {
    Map<String, String> digests = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> !Files.isDirectory(f)).toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        if (!name.equals(NAME)) {
          digests.put(name, Files.isRegularFile(file) ? digest(file) : "");
        }
      }
    }
    return new Manifest(digests);
  }

  /** The manifest that lies in a folder, if it is a packet. */
  static Optional<Manifest> in(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    List<String> lines =
        new String(Files.readAllBytes(file), StandardCharsets.UTF_8).lines().toList();
    if (lines.isEmpty() || !List.of(TITLE, FORMER_TITLE).contains(lines.getFirst())) {
      return Optional.empty();
    }
    Map<String, String> digests = new LinkedHashMap<>();
    lines.stream()
        .skip(1)
        .map(line -> line.split("  ", 2))
        .filter(parts -> parts.length == 2)
        .forEach(parts -> digests.put(parts[1], parts[0]));
    return Optional.of(new Manifest(digests));
  }

  /** The first file here that is not in the other as it is here. */
  Optional<String> strangerTo(Manifest other) {
    return digests.entrySet().stream()
        .filter(e -> !e.getValue().equals(other.digests.get(e.getKey())))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  String text() {
    return TITLE
        + "\n"
        + digests.entrySet().stream()
            .map(e -> e.getValue() + "  " + e.getKey() + "\n")
            .collect(Collectors.joining());
  }

  private static String digest(Path file) throws IOException {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
