package fourpin.shop.store.sql;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.KeptLayout;
import fourpin.shop.store.Layouts;
import java.util.Collection;
import java.util.List;

/** Layouts that were found, in the database. */
record SqlLayouts(Database database) implements Layouts {

  @Override
  public List<KeptLayout> of(DocumentId job) {
    return database.inTransaction(
        db ->
            db.createQuery("select * from layout where document = :document order by problem")
                .bind("document", job.value())
                .map((row, _) -> LayoutRow.of(row).layout())
                .list());
  }

  @Override
  public void keep(DocumentId job, Collection<KeptLayout> layouts) {
    database.inTransaction(
        db -> {
          SqlDocuments.require(db, job);
          layouts.forEach(layout -> new LayoutRow(job, layout).put(db));
          return job;
        });
  }
}
