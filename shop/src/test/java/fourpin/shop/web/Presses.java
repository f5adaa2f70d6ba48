package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.shop.edit.Edit;
import fourpin.shop.edit.Edited;
import fourpin.shop.edit.JobText;
import fourpin.shop.file.JobReader;
import fourpin.shop.store.DataPlace;
import fourpin.shop.store.sql.SqlStore;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Brings jobs in and presses their cures as the pages do, and plans anew what comes of it. */
final class Presses implements AutoCloseable {

  private final SqlStore store;
  private final Desk desk;
  private final Map<String, Plan> plans = new HashMap<>();

  Presses(Path file) {
    store = SqlStore.open(new DataPlace.InFile(file), InstantSource.system());
    desk = new Desk(store.documents(), store.layouts());
  }

  @Override
  public void close() {
    store.close();
  }

  void bringShop(String text) {
    store.documents().createShop(new fourpin.shop.store.Edit("shop", text, "hall", "brought"));
  }

  State brought(List<String> drafts) {
    Desk.Taking taking = desk.createBest(drafts, "hall", "brought");
    assertThat(taking).as(drafts.getFirst()).isInstanceOf(Desk.Taking.Taken.class);
    return desk.newest(((Desk.Taking.Taken) taking).revision().document()).orElseThrow();
  }

  /**
   * What comes of one.
   *
   * @param then planned from the text alone
   */
  record Pressed(Curing.Trial.Would would, Plan then) {}

  /**
   * It can be pressed, its finding is gone from a plan of the text that comes of it, and no new
   * kind of error is in that unless the maker is asked.
   *
   * @param what it is pressed on, for a message
   */
  Pressed pressed(String what, State seen, Finding finding, Remedy remedy) {
    Curing.Trial trial = new Curing(desk, seen, finding).tried(remedy);
    assertThat(trial).as(what).isInstanceOf(Curing.Trial.Would.class);
    Curing.Trial.Would would = (Curing.Trial.Would) trial;
    Plan then = plan(edited(seen.text(), would.edits()));
    assertThat(then.findings())
        .as(what)
        .noneMatch(f -> f.kind().equals(finding.kind()) && f.place().equals(finding.place()));
    Set<String> errors = errors(then);
    errors.removeAll(errors(seen.plan()));
    assertThat(would.spoilt()).as(what).extracting(Finding::kind).containsAll(errors);
    return new Pressed(would, then);
  }

  private static String edited(JobText text, List<Edit> edits) {
    JobText now = text;
    for (Edit edit : edits) {
      now = ((Edited.Done) now.with(edit)).text();
    }
    return now.text();
  }

  /** Several cures of a case may come to the same text. */
  private Plan plan(String text) {
    return plans.computeIfAbsent(text, this::planned);
  }

  private Plan planned(String text) {
    JobReader.Outcome read =
        JobReader.read(text.getBytes(StandardCharsets.UTF_8), new KeptShop(store.documents()));
    assertThat(read).as(text).isInstanceOf(JobReader.Outcome.Good.class);
    return Planner.plan(((JobReader.Outcome.Good) read).job());
  }

  private static Set<String> errors(Plan plan) {
    return plan.findings().stream()
        .filter(Finding::isGrave)
        .map(Finding::kind)
        .collect(Collectors.toSet());
  }
}
