package fourpin.trials;

import fourpin.measure.Length;
import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Edit;
import fourpin.shop.store.Piece;
import fourpin.shop.store.RevisionId;
import fourpin.shop.store.Saving;
import fourpin.shop.store.Tick;
import fourpin.shop.store.Written;
import fourpin.shop.store.sql.SqlStore;
import java.io.PrintStream;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;

/**
 * A process that saves and saves, in trials until it is killed, and prints what it was told is
 * saved, a line for each, after it was told so.
 */
public final class SavingProcess {

  private final SqlStore store;
  private final PrintStream out;

  private SavingProcess(SqlStore store, PrintStream out) {
    this.store = store;
    this.out = out;
  }

  /**
   * @param args where the data are; the job to save; how many rounds of text, tick and piece
   */
  public static void main(String[] args) {
    Optional<String> password = Optional.ofNullable(System.getenv(DataPlace.PASSWORD_VARIABLE));
    DataPlace place = DataPlace.read(args[0], password).orThrow();
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      new SavingProcess(store, System.out).save(new DocumentId(args[1]), Integer.parseInt(args[2]));
    }
  }

  private void save(DocumentId job, int rounds) {
    RevisionId newest = store.documents().newest(job).orElseThrow().revision().id();
    for (int i = 0; i < rounds; i++) {
      newest = save(job, newest);
      tick(job, i);
      rack();
    }
  }

  private RevisionId save(DocumentId job, RevisionId newest) {
    String text = "text made on " + newest.value();
    Saving saving = store.documents().save(job, newest, new Edit("Box", text, "trial", "again"));
    RevisionId saved =
        switch (saving) {
          case Saving.Saved(var revision) -> revision.id();
          case Saving.Overtaken(Written other) ->
              throw new IllegalStateException("nobody else saves, but " + other);
        };
    say(new Acknowledged.Text(job, saved, text));
    return saved;
  }

  private void tick(DocumentId job, int count) {
    Instant now = Instant.now();
    String step = "step " + now.toEpochMilli() + " " + count;
    store
        .ticks()
        .merge(job, "plan", "trial", now, List.of(new Tick(step, Tick.State.DONE, count, now)));
    say(new Acknowledged.Ticked(job, step));
  }

  private void rack() {
    Length size = Length.mm(18);
    Piece piece =
        new Piece("ply", Piece.Form.OFFCUT, size, size, size, 1, Optional.empty(), "trial");
    say(new Acknowledged.Stored(store.rack().add(piece).id()));
  }

  private void say(Acknowledged acknowledged) {
    out.println(acknowledged.line());
    out.flush();
  }
}
