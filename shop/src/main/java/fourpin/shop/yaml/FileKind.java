package fourpin.shop.yaml;

/** What a file states, in the words that messages about the whole of it use. */
public enum FileKind {
  JOB(
      "job",
      "state a job: title, unit, materials and cases",
      "write lines like title: Reading room",
      "state one job, or split it in several",
      "split the job",
      "write it out; what a case states holds for all its bays"),
  SHOP(
      "shop",
      "state a shop: shop, unit and tools",
      "write lines like shop: Harrow Mill workshop",
      "state one shop, and of its tools those that bore and groove",
      "state those that bore and groove",
      "write it out");

  private final String word;
  private final String start;
  private final String line;
  private final String tooLarge;
  private final String tooMany;
  private final String repeat;

  FileKind(String word, String start, String line, String tooLarge, String tooMany, String repeat) {
    this.word = word;
    this.start = start;
    this.line = line;
    this.tooLarge = tooLarge;
    this.tooMany = tooMany;
    this.repeat = repeat;
  }

  /** What the file states: "job". */
  public String word() {
    return word;
  }

  /** Remedy for a file that states nothing. */
  String start() {
    return start;
  }

  /** Remedy for a file without keys. */
  String line() {
    return line;
  }

  /** Remedy for more text or values than any such file has. */
  String tooLarge() {
    return tooLarge;
  }

  /** Remedy for more things under names than any such file has. */
  public String tooMany() {
    return tooMany;
  }

  /** Remedy for a value that repeats another. */
  String repeat() {
    return repeat;
  }
}
