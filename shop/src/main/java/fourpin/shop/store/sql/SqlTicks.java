package fourpin.shop.store.sql;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.HeldTick;
import fourpin.shop.store.Letters;
import fourpin.shop.store.Tick;
import fourpin.shop.store.Ticks;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Ticks: the last of each device is kept, and the last of all devices holds. */
final class SqlTicks implements Ticks {

  private static final BinaryOperator<HeldTick> LATER =
      BinaryOperator.maxBy(Comparator.comparing(HeldTick::at).thenComparing(HeldTick::device));

  private final Database database;
  private final InstantSource clock;

  SqlTicks(Database database, InstantSource clock) {
    this.database = database;
    this.clock = clock;
  }

  @Override
  public List<HeldTick> of(DocumentId job, String plan) {
    Letters.require(plan);
    return database.inTransaction(db -> held(db, job, plan));
  }

  private static List<HeldTick> held(Handle db, DocumentId job, String plan) {
    return List.copyOf(
        db
            .createQuery("select * from tick where document = :document and plan = :plan")
            .bind("document", job.value())
            .bind("plan", plan)
            .map((row, _) -> TickRow.of(row).held())
            .stream()
            .collect(Collectors.toMap(HeldTick::step, Function.identity(), LATER, TreeMap::new))
            .values());
  }

  @Override
  public List<HeldTick> merge(
      DocumentId job, String plan, String device, Instant sent, Collection<Tick> ticks) {
    Letters.require(plan, device);
    Instant now = Instant.ofEpochMilli(clock.millis());
    Duration behind = Duration.between(sent, now);
    return database.inTransaction(
        db -> {
          SqlDocuments.require(db, job);
          ticks.stream()
              .map(t -> new TickRow(job, plan, device, t, earlier(t.said().plus(behind), now)))
              .forEach(row -> row.merge(db));
          return held(db, job, plan);
        });
  }

  private static Instant earlier(Instant a, Instant b) {
    return a.isBefore(b) ? a : b;
  }

  @Override
  public List<String> plans(DocumentId job) {
    return database.inTransaction(
        db ->
            db.createQuery(
                    """
                    select plan from tick where document = :document
                    group by plan order by max(held_at) desc, plan
                    """)
                .bind("document", job.value())
                .mapTo(String.class)
                .list());
  }
}
