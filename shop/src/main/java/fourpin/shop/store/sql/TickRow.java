package fourpin.shop.store.sql;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.HeldTick;
import fourpin.shop.store.Tick;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import org.jdbi.v3.core.Handle;

/**
 * The last that a device said of a step, as its table holds it.
 *
 * @param heldAt when it was said, by the server's clock
 */
public record TickRow(DocumentId document, String plan, String device, Tick tick, Instant heldAt) {

  /** Keeps it, unless the device has said something later of the step. */
  void merge(Handle db) {
    db.createUpdate(
            """
            insert into tick (document, plan, step, device, state, counted, said_at, held_at)
            values (:document, :plan, :step, :device, :state, :counted, :saidAt, :heldAt)
            on conflict (document, plan, step, device) do update set
              state = excluded.state, counted = excluded.counted,
              said_at = excluded.said_at, held_at = excluded.held_at
            where excluded.said_at > tick.said_at
            """)
        .bind("document", document.value())
        .bind("plan", plan)
        .bind("step", tick.step())
        .bind("device", device)
        .bind("state", tick.state().name())
        .bind("counted", tick.counted())
        .bind("saidAt", tick.said().toEpochMilli())
        .bind("heldAt", heldAt.toEpochMilli())
        .execute();
  }

  HeldTick held() {
    return new HeldTick(tick.step(), tick.state(), tick.counted(), heldAt, device);
  }

  static TickRow of(ResultSet row) throws SQLException {
    return new TickRow(
        new DocumentId(row.getString("document")),
        row.getString("plan"),
        row.getString("device"),
        new Tick(
            row.getString("step"),
            Tick.State.valueOf(row.getString("state")),
            row.getInt("counted"),
            Instant.ofEpochMilli(row.getLong("said_at"))),
        Instant.ofEpochMilli(row.getLong("held_at")));
  }
}
