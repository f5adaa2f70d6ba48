package fourpin.shop.store;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class SqliteStoreTest extends StoreTests {

  @TempDir private Path folder;

  @Override
  DataPlace emptyPlace() {
    return new DataPlace.InFile(folder.resolve("made/shop.db"));
  }
}
