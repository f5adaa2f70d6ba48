package fourpin.shop.store;

import fourpin.measure.Reading;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/** Where a shop keeps its data. */
public sealed interface DataPlace {

  /** One file, by SQLite; files beside it with the same name and an ending belong to it. */
  record InFile(Path file) implements DataPlace {}

  /**
   * A database on a PostgreSQL server.
   *
   * @param url without a password
   * @param password nothing if the server asks for none, or it stands in a .pgpass file
   */
  record OnServer(String url, Optional<String> password) implements DataPlace {
    @Override
    public String toString() {
      return url;
    }
  }

  /** The environment variable that may hold the password of a server. */
  String PASSWORD_VARIABLE = "FOURPIN_DATA_PASSWORD";

  String SERVER = "jdbc:postgresql:";

  /** Everybody on the machine can read a command line. */
  Pattern SECRET = Pattern.compile("[?&](password|sslpassword)=|//[^/?]*:[^/?@]*@");

  /**
   * Reads the setting: a file's name, or {@code jdbc:postgresql://host/database?user=name}.
   *
   * @param password what {@link #PASSWORD_VARIABLE} holds
   */
  static Reading<DataPlace> read(String text, Optional<String> password) {
    if (text.startsWith(SERVER)) {
      return SECRET.matcher(text).find()
          ? Reading.bad(
              "a password stands where everybody on the machine can read it",
              "leave it out, and set the environment variable " + PASSWORD_VARIABLE)
          : Reading.good(new OnServer(text, password));
    }
    return text.startsWith("jdbc:")
        ? Reading.bad(
            "only PostgreSQL is known as a server",
            "write " + SERVER + "//host/database, or a file")
        : file(text);
  }

  private static Reading<DataPlace> file(String text) {
    try {
      return text.isBlank()
          ? Reading.bad("it names no file", "name the file that holds the data")
          : Reading.good(new InFile(Path.of(text).toAbsolutePath()));
    } catch (InvalidPathException e) {
      return Reading.bad("no file can have this name", "check the name");
    }
  }
}
