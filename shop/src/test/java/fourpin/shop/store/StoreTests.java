package fourpin.shop.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fourpin.measure.Length;
import fourpin.shop.store.Documents.Place;
import fourpin.shop.store.Revision.Kind;
import fourpin.shop.store.sql.SqlStore;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every store does, whatever database holds it. */
abstract class StoreTests {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  private final TestClock clock = new TestClock(NOON);
  private Store store;

  /** A new, empty place. */
  abstract DataPlace emptyPlace();

  @BeforeEach
  void open() {
    store = SqlStore.open(emptyPlace(), clock);
  }

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void aJobIsKeptWithEveryText() {
    Revision first = store.documents().create(edit("one"));
    Revision second = saved(first, "two");
    assertThat(text(first.document())).isEqualTo("two");
    assertThat(store.documents().revision(first.document(), first.id()))
        .contains(new Written(first, "one"));
    assertThat(store.documents().history(first.document(), Long.MAX_VALUE, 10))
        .containsExactly(second, first);
    assertThat(store.documents().history(first.document(), second.number(), 10))
        .containsExactly(first);
    assertThat(first)
        .isEqualTo(
            new Revision(
                first.id(),
                first.document(),
                1,
                Kind.EDIT,
                first.id(),
                "Reading room",
                NOON,
                "bench phone",
                "one",
                Optional.empty()));
  }

  @Test
  void whoSavesOnAnOldTextIsToldTheNewest() {
    Revision first = store.documents().create(edit("one"));
    Revision second = saved(first, "two");
    assertThat(store.documents().save(first.document(), first.id(), edit("mine")))
        .isEqualTo(new Saving.Overtaken(new Written(second, "two")));
    assertThat(store.documents().undo(first.document(), first.id(), "desk"))
        .isEqualTo(new Saving.Overtaken(new Written(second, "two")));
    assertThat(store.documents().history(first.document(), Long.MAX_VALUE, 10)).hasSize(2);
  }

  @Test
  void aRevisionOfAnotherJobIsNoneOfThis() {
    Revision first = store.documents().create(edit("one"));
    Revision other = store.documents().create(edit("other"));
    assertThat(store.documents().revision(first.document(), other.id())).isEmpty();
    assertThat(store.documents().save(first.document(), other.id(), edit("mine")))
        .isInstanceOf(Saving.Overtaken.class);
  }

  @Test
  void whatIsNotThereCannotBeSaved() {
    DocumentId none = new DocumentId("none");
    assertThat(store.documents().newest(none)).isEmpty();
    assertThatThrownBy(() -> store.documents().save(none, new RevisionId("r"), edit("x")))
        .isInstanceOf(NoSuchElementException.class);
    assertThatThrownBy(() -> store.documents().put(none, Place.ASIDE))
        .isInstanceOf(NoSuchElementException.class);
    assertThatThrownBy(() -> store.ticks().merge(none, "p", "d", NOON, List.of()))
        .isInstanceOf(NoSuchElementException.class);
  }

  @Test
  void undoAndRedoGoToTheEndsAndNoFurther() {
    Revision newest = store.documents().create(edit("0"));
    for (int i = 1; i <= 30; i++) {
      newest = saved(newest, Integer.toString(i));
    }
    for (int i = 29; i >= 0; i--) {
      newest = undone(newest);
      assertThat(text(newest.document())).isEqualTo(Integer.toString(i));
      assertThat(newest.why()).as("what was undone").isEqualTo(Integer.toString(i + 1));
    }
    assertThat(store.documents().undo(newest.document(), newest.id(), "desk"))
        .isEqualTo(new Stepping.NoFurther());
    for (int i = 1; i <= 30; i++) {
      newest = redone(newest);
      assertThat(text(newest.document())).isEqualTo(Integer.toString(i));
    }
    assertThat(store.documents().redo(newest.document(), newest.id(), "desk"))
        .isEqualTo(new Stepping.NoFurther());
    assertThat(newest.number()).isEqualTo(91);
  }

  @Test
  void anEditAfterAnUndoStartsAnotherWayForward() {
    Revision a = store.documents().create(edit("a"));
    Revision b = saved(a, "b");
    Revision c = saved(undone(b), "c");
    assertThat(store.documents().redo(c.document(), c.id(), "desk"))
        .isEqualTo(new Stepping.NoFurther());
    Revision back = undone(c);
    assertThat(text(a.document())).isEqualTo("a");
    redone(back);
    assertThat(text(a.document())).isEqualTo("c");
    assertThat(store.documents().revision(a.document(), b.id()))
        .as("what was left behind is in the history")
        .contains(new Written(b, "b"));
  }

  /** Held against the usual two stacks: undone and done. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void undoAndRedoDoAsTwoStacksDo(long seed) {
    Random random = new Random(seed);
    List<String> done = new ArrayList<>(List.of("0"));
    List<String> undone = new ArrayList<>();
    Revision newest = store.documents().create(edit("0"));
    for (int i = 1; i <= 40; i++) {
      switch (random.nextInt(3)) {
        case 0 -> {
          newest = saved(newest, Integer.toString(i));
          done.add(Integer.toString(i));
          undone.clear();
        }
        case 1 -> {
          if (done.size() > 1) {
            newest = undone(newest);
            undone.add(done.removeLast());
          }
        }
        default -> {
          if (!undone.isEmpty()) {
            newest = redone(newest);
            done.add(undone.removeLast());
          }
        }
      }
      assertThat(text(newest.document())).isEqualTo(done.getLast());
    }
  }

  @Test
  void theShopFileIsOneAndNoJob() {
    Saving first = store.documents().createShop(edit("tools"));
    assertThat(first).isInstanceOf(Saving.Saved.class);
    assertThat(store.documents().createShop(edit("other tools")))
        .isEqualTo(new Saving.Overtaken(store.documents().newest(DocumentId.SHOP).orElseThrow()));
    assertThat(text(DocumentId.SHOP)).isEqualTo("tools");
    assertThat(store.documents().jobs(Place.AT_HAND)).isEmpty();
    assertThatThrownBy(() -> store.documents().put(DocumentId.SHOP, Place.ASIDE))
        .isInstanceOf(NoSuchElementException.class);
  }

  @Test
  void jobsAreListedByTheirLastChangeAndCanBePutAside() {
    Revision one = store.documents().create(edit("one"));
    Revision two = store.documents().create(edit("two"));
    clock.pass(1_000);
    Revision oneLater = saved(one, "one later");
    assertThat(store.documents().jobs(Place.AT_HAND)).containsExactly(oneLater, two);
    store.documents().put(two.document(), Place.ASIDE);
    assertThat(store.documents().jobs(Place.AT_HAND)).containsExactly(oneLater);
    assertThat(store.documents().jobs(Place.ASIDE)).containsExactly(two);
    store.documents().put(two.document(), Place.AT_HAND);
    assertThat(store.documents().jobs(Place.ASIDE)).isEmpty();
  }

  @Test
  void textIsKeptToTheLetter() {
    String text = "﻿job: \"Ö ½ ⁄ 𝄞 '; drop table document; --\"\r\n\t# kept \\ \u001f\n";
    Revision job = store.documents().create(new Edit("½ 𝄞", text, "'", "%_"));
    assertThat(store.documents().newest(job.document())).contains(new Written(job, text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\0b", "a\ud800b", "\udc00"})
  void textThatOneOfTheDatabasesCannotHoldIsRefused(String text) {
    assertThatThrownBy(() -> edit(text)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Tick(text, Tick.State.DONE, 0, NOON))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> store.ticks().merge(new DocumentId("d"), text, "", NOON, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void variantsAreTheLastOfEachNameWhateverCameAfterThem() {
    Revision first = store.documents().create(edit("one"));
    variant(first, "oak");
    Revision pine = variant(first, "pine");
    Revision oak = variant(first, "oak");
    store.documents().undo(first.document(), oak.id(), "desk");
    saved(store.documents().newest(first.document()).orElseThrow().revision(), "two");
    assertThat(store.documents().variants(first.document())).containsExactly(oak, pine);
    assertThat(store.documents().variants(store.documents().create(edit("other")).document()))
        .isEmpty();
  }

  private Revision variant(Revision of, String name) {
    Edit edit = new Edit("Reading room", "one", "desk", "kept", Optional.of(name));
    Written newest = store.documents().newest(of.document()).orElseThrow();
    return switch (store.documents().save(of.document(), newest.revision().id(), edit)) {
      case Saving.Saved(Revision revision) -> revision;
      case Saving.Overtaken overtaken -> throw new AssertionError(overtaken);
    };
  }

  @Test
  void aLayoutIsKeptOnceForEachProblem() {
    DocumentId job = store.documents().create(edit("one")).document();
    KeptLayout first = new KeptLayout("a", "ply", 1, "first");
    KeptLayout other = new KeptLayout("b", "oak", 1, "other");
    KeptLayout better = new KeptLayout("a", "ply", 4, "better");
    store.layouts().keep(job, List.of(other, first));
    assertThat(store.layouts().of(job)).containsExactly(first, other);
    store.layouts().keep(job, List.of(better));
    assertThat(store.layouts().of(job)).containsExactly(better, other);
    assertThat(store.layouts().of(new DocumentId("none"))).isEmpty();
    assertThatThrownBy(() -> store.layouts().keep(new DocumentId("none"), List.of(first)))
        .isInstanceOf(NoSuchElementException.class);
  }

  @Test
  void ticksOfADeviceCountOnceInAnyOrder() {
    DocumentId job = store.documents().create(edit("one")).document();
    List<Tick> ticks = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      ticks.add(new Tick("bore", Tick.State.OPEN, i, NOON.plusMillis(i - 1000)));
    }
    ticks.add(new Tick("bore", Tick.State.DONE, 20, NOON.plusMillis(-100)));
    Collections.shuffle(ticks, new Random(7));
    store.ticks().merge(job, "plan", "phone", NOON, ticks.subList(0, 9));
    clock.pass(5_000);
    List<HeldTick> once = store.ticks().merge(job, "plan", "phone", NOON.plusMillis(5_000), ticks);
    assertThat(store.ticks().merge(job, "plan", "phone", NOON.plusMillis(9_000), ticks))
        .isEqualTo(once)
        .containsExactly(new HeldTick("bore", Tick.State.DONE, 20, NOON.plusMillis(-100), "phone"));
    assertThat(store.ticks().of(job, "another plan")).isEmpty();
    assertThat(store.ticks().plans(job)).containsExactly("plan");
  }

  @Test
  void ofSeveralDevicesTheLastByTheServersClockHolds() {
    DocumentId job = store.documents().create(edit("one")).document();
    Instant anHourAhead = NOON.plusSeconds(3_600);
    store
        .ticks()
        .merge(
            job,
            "plan",
            "wrong clock",
            anHourAhead,
            List.of(new Tick("glue", Tick.State.DONE, 0, anHourAhead.minusSeconds(60))));
    List<HeldTick> held =
        store
            .ticks()
            .merge(
                job,
                "plan",
                "right clock",
                NOON,
                List.of(new Tick("glue", Tick.State.OPEN, 0, NOON.minusSeconds(30))));
    assertThat(held)
        .containsExactly(
            new HeldTick("glue", Tick.State.OPEN, 0, NOON.minusSeconds(30), "right clock"));
  }

  @Test
  void nothingIsTickedLaterThanNow() {
    DocumentId job = store.documents().create(edit("one")).document();
    Tick tick = new Tick("glue", Tick.State.DONE, 0, NOON.plusSeconds(60));
    assertThat(store.ticks().merge(job, "plan", "phone", NOON, List.of(tick)))
        .extracting(HeldTick::at)
        .containsExactly(NOON);
  }

  @Test
  void theRackIsChangedByOneAtATime() {
    Racked ply = store.rack().add(piece(3, Optional.of(new BigDecimal("48.50"))));
    Racked offcut = store.rack().add(piece(1, Optional.empty()));
    assertThat(store.rack().all()).containsExactlyInAnyOrder(ply, offcut);
    Rack.Change made = store.rack().change(ply, piece(2, Optional.empty()));
    Racked now = new Racked(ply.id(), 2, piece(2, Optional.empty()));
    assertThat(made).isEqualTo(new Rack.Change.Made(Optional.of(now)));
    assertThat(store.rack().change(ply, piece(9, Optional.empty())))
        .isEqualTo(new Rack.Change.Overtaken(Optional.of(now)));
    assertThat(store.rack().remove(ply)).isEqualTo(new Rack.Change.Overtaken(Optional.of(now)));
    assertThat(store.rack().remove(now)).isEqualTo(new Rack.Change.Made(Optional.empty()));
    assertThat(store.rack().change(now, piece(9, Optional.empty())))
        .isEqualTo(new Rack.Change.Overtaken(Optional.empty()));
    assertThat(store.rack().all()).containsExactly(offcut);
    assertThat(store.rack().all().getFirst().piece().length().unit())
        .isEqualTo(fourpin.measure.Unit.INCH);
  }

  @Test
  void pairingsExpireAndEnd() {
    Instant later = NOON.plusSeconds(60);
    Device phone = store.devices().pair("phone", "digest 1", NOON, later);
    Device second = store.devices().pair("phone", "digest 2", NOON, NOON.plusSeconds(90));
    assertThat(second.name()).isEqualTo("phone 2");
    assertThat(store.devices().with("digest 1", NOON)).contains(phone);
    assertThat(store.devices().with("digest 3", NOON)).isEmpty();
    assertThat(store.devices().with("digest 1", later)).as("at the end").isEmpty();
    assertThat(store.devices().all(NOON)).containsExactly(phone, second);
    assertThat(store.devices().all(later)).containsExactly(second);
    assertThat(store.devices().pair("phone", "digest 4", later, later.plusSeconds(60)).name())
        .as("the name is free again")
        .isEqualTo("phone");
    store.devices().unpair(second.id());
    assertThat(store.devices().with("digest 2", NOON)).isEmpty();
  }

  private static Piece piece(int count, Optional<BigDecimal> price) {
    return new Piece(
        "birch plywood",
        Piece.Form.SHEET,
        Length.mm(18),
        Length.inches(96),
        Length.inches(1225, 256),
        count,
        price,
        "behind the door");
  }

  private static Edit edit(String text) {
    return new Edit("Reading room", text, "bench phone", text);
  }

  private Revision saved(Revision newest, String text) {
    return revision(store.documents().save(newest.document(), newest.id(), edit(text)));
  }

  private static Revision revision(Saving saving) {
    assertThat(saving).isInstanceOf(Saving.Saved.class);
    return ((Saving.Saved) saving).revision();
  }

  private Revision undone(Revision newest) {
    return stepped(store.documents().undo(newest.document(), newest.id(), "desk"), Kind.UNDO);
  }

  private Revision redone(Revision newest) {
    return stepped(store.documents().redo(newest.document(), newest.id(), "desk"), Kind.REDO);
  }

  private static Revision stepped(Stepping stepping, Kind kind) {
    assertThat(stepping).isInstanceOf(Saving.Saved.class);
    Revision revision = ((Saving.Saved) stepping).revision();
    assertThat(revision.kind()).isEqualTo(kind);
    return revision;
  }

  private String text(DocumentId id) {
    return store.documents().newest(id).orElseThrow().text();
  }
}
