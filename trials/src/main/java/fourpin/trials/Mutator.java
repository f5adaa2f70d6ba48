package fourpin.trials;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.random.RandomGenerator;

/** Spoils job files: now and then a little, now and then beyond recognition. */
final class Mutator {

  private static final int MOST_CHANGES = 6;
  private static final int LONGEST_RUN = 40;
  private static final int DEEPEST = 200;
  private static final int CODE_POINTS = 0x110000;

  private static final List<String> HOSTILE =
      List.of(
          "",
          "~",
          "null",
          "0",
          "-1",
          "1e99",
          "NaN",
          ".inf",
          "99999999999999999999",
          "1/0",
          "1/3",
          "7' 14\"",
          "½",
          "1,5",
          "31 1/2",
          "800 Mm",
          "0.0000000000001 mm",
          "9999 m",
          "''",
          "\"",
          "'",
          "[",
          "]",
          "{",
          "}",
          "[]",
          "{}",
          "- ",
          ": ",
          "? ",
          "# ",
          "&a ",
          "*a",
          "<<: *a",
          "!!int ",
          "!",
          "%YAML 1.1\n",
          "---\n",
          "...\n",
          "|\n",
          ">-\n",
          "\t",
          "\r",
          "\u0000",
          "\u0085",
          "\u2028",
          "\u202e",
          "\ufeff",
          "\ud83e\udeb5",
          "@",
          "`",
          "\\",
          "../",
          "=1+1",
          "outside: {width: 1}",
          "bays: [{}, {}]",
          "shelves: 0",
          "unit: mm",
          "unit: inch",
          "true",
          "no",
          "2026-01-01");

  private final RandomGenerator random;
  private final List<byte[]> samples;

  Mutator(RandomGenerator random, List<byte[]> samples) {
    this.random = random;
    this.samples = samples;
  }

  byte[] next() {
    byte[] text = sample().clone();
    for (int changes = 1 + random.nextInt(MOST_CHANGES); changes > 0; changes--) {
      text = changed(text);
    }
    return text;
  }

  private byte[] sample() {
    return samples.get(random.nextInt(samples.size()));
  }

  private byte[] changed(byte[] text) {
    int at = random.nextInt(text.length + 1);
    int end = Math.min(text.length, at + random.nextInt(LONGEST_RUN));
    return switch (random.nextInt(9)) {
      case 0 -> flipped(text);
      case 1 -> put(text, at, end, new byte[0]);
      case 2 -> put(text, at, at, run(text));
      case 3 -> put(text, at, end, hostile());
      case 4 -> value(text, hostile());
      case 5 -> put(text, at, at, nest());
      case 6 -> put(text, at, end, unicode());
      case 7 -> put(text, at, end, run(sample()));
      default -> swappedLines(text);
    };
  }

  private byte[] flipped(byte[] text) {
    byte[] copy = text.clone();
    if (copy.length > 0) {
      copy[random.nextInt(copy.length)] ^= (byte) (1 << random.nextInt(Byte.SIZE));
    }
    return copy;
  }

  private static byte[] put(byte[] text, int from, int to, byte[] piece) {
    byte[] out = new byte[text.length - (to - from) + piece.length];
    System.arraycopy(text, 0, out, 0, from);
    System.arraycopy(piece, 0, out, from, piece.length);
    System.arraycopy(text, to, out, from + piece.length, text.length - to);
    return out;
  }

  private byte[] run(byte[] text) {
    int from = random.nextInt(text.length + 1);
    int to = Math.min(text.length, from + random.nextInt(LONGEST_RUN));
    return java.util.Arrays.copyOfRange(text, from, to);
  }

  private byte[] hostile() {
    return bytes(HOSTILE.get(random.nextInt(HOSTILE.size())));
  }

  /** In place of what stands behind a colon. */
  private byte[] value(byte[] text, byte[] by) {
    String[] lines = new String(text, StandardCharsets.UTF_8).split("\n", -1);
    int at = random.nextInt(lines.length);
    int colon = lines[at].indexOf(": ");
    if (colon < 0) {
      return text;
    }
    lines[at] = lines[at].substring(0, colon + 2) + new String(by, StandardCharsets.UTF_8);
    return bytes(String.join("\n", lines));
  }

  private byte[] nest() {
    String open = List.of("[", "{a: ", "- ", "? ").get(random.nextInt(4));
    return bytes(open.repeat(random.nextInt(DEEPEST)));
  }

  private byte[] unicode() {
    StringBuilder out = new StringBuilder();
    for (int i = random.nextInt(LONGEST_RUN / 4); i >= 0; i--) {
      out.appendCodePoint(random.nextInt(CODE_POINTS));
    }
    return bytes(out.toString());
  }

  private byte[] swappedLines(byte[] text) {
    String[] lines = new String(text, StandardCharsets.UTF_8).split("\n", -1);
    int one = random.nextInt(lines.length);
    int other = random.nextInt(lines.length);
    String kept = lines[one];
    lines[one] = lines[other];
    lines[other] = kept;
    return bytes(String.join("\n", lines));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
