package fourpin.trials;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Edit;
import fourpin.shop.store.Revision;
import fourpin.shop.store.Store;
import fourpin.shop.store.sql.SqlStore;
import java.io.BufferedReader;
import java.io.IOException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;

/**
 * Kills processes in the middle of saving, and looks for what they were told is saved.
 *
 * @param place with an empty store at first
 * @param savers how the processes are started
 * @param crash what dies besides the process
 * @param crashEach every so many kills
 */
record Kills(DataPlace place, Savers savers, Crash crash, int crashEach) {

  /** Kills a database server and starts it again. */
  interface Crash {
    /** For a database that has no server. */
    Crash NONE = () -> {};

    void crash();
  }

  private static final int MOST_SAVES = 40;
  private static final int LONGEST_DELAY_NS = 3_000_000;

  /**
   * What came of it.
   *
   * @param acknowledged saves in all; each is looked for after its kill and again at the end
   * @param lost what was acknowledged and is not there
   */
  record Tally(int kills, int acknowledged, Set<String> lost) {}

  Tally run(int kills, long seed) throws IOException {
    Random random = new Random(seed);
    DocumentId job = begin(place);
    Set<String> lost = new LinkedHashSet<>();
    List<Acknowledged> all = new ArrayList<>();
    for (int i = 1; i <= kills; i++) {
      List<Acknowledged> told = killed(job, random, i % crashEach == 0 ? crash : Crash.NONE);
      lost.addAll(missing(job, told));
      all.addAll(told);
    }
    lost.addAll(missing(job, all));
    return new Tally(kills, all.size(), lost);
  }

  /** A job to be saved. */
  static DocumentId begin(DataPlace place) {
    try (SqlStore store = open(place)) {
      return store.documents().create(new Edit("Box", "first", "trial", "new")).document();
    }
  }

  private static SqlStore open(DataPlace place) {
    return SqlStore.open(place, InstantSource.system());
  }

  private List<Acknowledged> killed(DocumentId job, Random random, Crash also) throws IOException {
    Process process = savers.start(place, job);
    List<Acknowledged> told = new ArrayList<>();
    List<String> complaints = new ArrayList<>();
    try (BufferedReader said = process.inputReader()) {
      int saves = 1 + random.nextInt(MOST_SAVES);
      for (String line = said.readLine(); line != null; line = said.readLine()) {
        Acknowledged.read(line).ifPresentOrElse(told::add, complaint(complaints, line));
        if (told.size() == saves) {
          delay(random.nextInt(LONGEST_DELAY_NS));
          also.crash();
          kill(process);
        }
      }
    } finally {
      kill(process);
    }
    if (told.isEmpty()) {
      throw new IllegalStateException(
          "a process has saved nothing: " + String.join("\n", complaints));
    }
    return told;
  }

  private static Runnable complaint(List<String> complaints, String line) {
    return () -> complaints.add(line);
  }

  /** By its handle, which leaves what the process has said to be read. */
  private static void kill(Process process) {
    process.toHandle().destroyForcibly();
  }

  /** Busy, because the system's shortest sleep is as long as a save. */
  private static void delay(long nanos) {
    long end = System.nanoTime() + nanos;
    while (System.nanoTime() < end) {
      Thread.onSpinWait();
    }
  }

  private List<String> missing(DocumentId job, List<Acknowledged> told) {
    try (SqlStore store = open(place)) {
      Acknowledged.Kept kept = Acknowledged.Kept.of(store, job);
      List<String> missing =
          new ArrayList<>(
              told.stream().filter(t -> !t.isIn(kept)).map(Acknowledged::line).toList());
      if (!gapless(store, job)) {
        missing.add("a revision of " + job);
      }
      return missing;
    }
  }

  private static boolean gapless(Store store, DocumentId job) {
    List<Long> numbers =
        store.documents().history(job, Long.MAX_VALUE, Integer.MAX_VALUE).stream()
            .map(Revision::number)
            .toList();
    long newest = store.documents().newest(job).orElseThrow().revision().number();
    return LongStream.rangeClosed(1, newest)
        .map(n -> newest + 1 - n)
        .boxed()
        .toList()
        .equals(numbers);
  }
}
