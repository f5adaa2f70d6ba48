package fourpin.shop.store;

import org.junit.jupiter.api.extension.ExtendWith;

@ExtendWith(OnePostgres.class)
class PostgresStoreTest extends StoreTests {

  private final PostgresServer server;

  PostgresStoreTest(PostgresServer server) {
    this.server = server;
  }

  @Override
  DataPlace emptyPlace() {
    return server.database();
  }
}
