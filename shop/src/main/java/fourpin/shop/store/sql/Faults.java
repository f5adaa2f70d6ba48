package fourpin.shop.store.sql;

import fourpin.shop.store.DataPlace;
import java.sql.SQLException;
import java.util.Optional;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;

/** What a failure of the database is called. */
final class Faults {

  /** "lock_not_available" of PostgreSQL's table of error codes. */
  private static final String LOCKED = "55P03";

  private Faults() {}

  static String ofOpening(DataPlace place, FlywayException fault) {
    return fault.getErrorCode() == CoreErrorCode.VALIDATE_ERROR
        ? "the data in "
            + named(place)
            + " were made by another version of Fourpin; use the newest version"
        : unreachable(place, fault);
  }

  static String unreachable(DataPlace place, Throwable fault) {
    return "the data in " + named(place) + " cannot be opened: " + innermost(fault);
  }

  private static String named(DataPlace place) {
    return switch (place) {
      case DataPlace.InFile(var file) -> file.toString();
      case DataPlace.OnServer server -> server.url();
    };
  }

  /** What the driver said, without the statement. */
  static String innermost(Throwable fault) {
    Throwable deepest = deepest(fault);
    return Optional.ofNullable(deepest.getMessage())
        .flatMap(m -> m.lines().findFirst())
        .orElse(deepest.getClass().getSimpleName());
  }

  /** Whether a lock was not to be had at once. */
  static boolean isLocked(Throwable fault) {
    return deepest(fault) instanceof SQLException told && LOCKED.equals(told.getSQLState());
  }

  private static Throwable deepest(Throwable fault) {
    Throwable deepest = fault;
    while (deepest.getCause() != null && !(deepest instanceof SQLException)) {
      deepest = deepest.getCause();
    }
    return deepest;
  }
}
