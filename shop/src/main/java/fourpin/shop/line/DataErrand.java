package fourpin.shop.line;

import fourpin.measure.Reading;
import fourpin.shop.store.DataPlace;
import fourpin.shop.store.StoreException;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import picocli.CommandLine.Mixin;

/** What commands share that work on all that the shop keeps. */
abstract class DataErrand extends Errand {

  @Mixin private DataOption data = new DataOption();

  /**
   * With the store open.
   *
   * @return the exit code
   */
  abstract int work(SqlStore store) throws IOException;

  /** Where the shop's certificate authority is kept: with the data, but in no backup. */
  final Path authority() {
    return data.authority(System.getenv());
  }

  @Override
  final int run() throws IOException {
    return switch (data.place(System.getenv())) {
      case Reading.Good<DataPlace>(DataPlace place) -> at(place);
      case Reading.Bad<DataPlace>(String rule, String remedy) ->
          refused("--data: " + rule + "; " + remedy);
    };
  }

  private int at(DataPlace place) throws IOException {
    try (SqlStore store = SqlStore.open(place, InstantSource.system())) {
      return work(store);
    } catch (StoreException e) {
      return refused(String.valueOf(e.getMessage()));
    }
  }

  final int refused(String message) {
    err().println("fourpin: " + message);
    return INPUT_WRONG;
  }
}
