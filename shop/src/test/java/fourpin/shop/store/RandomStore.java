package fourpin.shop.store;

import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Fills a store with something of everything, by a seed. */
public final class RandomStore {

  private static final Instant START = Instant.parse("2026-03-04T12:00:00Z");

  private static final List<String> WORDS =
      List.of("job: \"½\"\r\n", "# kept\n", "𝄞", "'--", "\t", "\\u0041", "shelf", "\n\n", "﻿", "");

  private final Random random;

  public RandomStore(long seed) {
    random = new Random(seed);
  }

  public void fill(Store store) {
    if (random.nextBoolean()) {
      store.documents().createShop(edit());
    }
    for (int i = random.nextInt(5); i > 0; i--) {
      job(store);
    }
    for (int i = random.nextInt(5); i > 0; i--) {
      Racked racked = store.rack().add(piece());
      if (random.nextBoolean()) {
        store.rack().change(racked, piece());
      }
    }
  }

  private void job(Store store) {
    Documents documents = store.documents();
    Revision newest = documents.create(edit());
    DocumentId job = newest.document();
    for (int i = random.nextInt(12); i > 0; i--) {
      RevisionId seen = documents.newest(job).orElseThrow().revision().id();
      switch (random.nextInt(3)) {
        case 0 -> documents.undo(job, seen, word());
        case 1 -> documents.redo(job, seen, word());
        default -> documents.save(job, seen, edit());
      }
    }
    for (String device : List.of("desk", "phone")) {
      store.ticks().merge(job, "plan " + word(), device, START, ticks());
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      store.layouts().keep(job, List.of(layout()));
    }
    documents.put(job, pick(List.of(Documents.Place.values())));
  }

  private List<Tick> ticks() {
    List<Tick> ticks = new ArrayList<>();
    for (int i = random.nextInt(6); i > 0; i--) {
      ticks.add(
          new Tick(
              "step " + random.nextInt(4),
              pick(List.of(Tick.State.values())),
              random.nextInt(90),
              START.minusMillis(random.nextInt(100_000))));
    }
    return ticks;
  }

  private KeptLayout layout() {
    return new KeptLayout("problem " + random.nextInt(3), word(), 1, word());
  }

  private Piece piece() {
    return new Piece(
        word(),
        pick(List.of(Piece.Form.values())),
        length(),
        length(),
        length(),
        1 + random.nextInt(9),
        random.nextBoolean()
            ? Optional.empty()
            : Optional.of(new BigDecimal(random.nextInt(10_000)).movePointLeft(2)),
        word());
  }

  private Length length() {
    return new Length(1 + random.nextLong(3_000_000_000_000L), pick(List.of(Unit.values())));
  }

  private Edit edit() {
    Optional<String> variant =
        random.nextInt(4) == 0 ? Optional.of("v" + random.nextInt(2)) : Optional.empty();
    return new Edit(word(), word() + word() + word(), word(), word(), variant);
  }

  private String word() {
    return pick(WORDS);
  }

  private <T> T pick(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
