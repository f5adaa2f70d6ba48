package fourpin.shop.web.guard;

import java.time.Duration;
import java.util.Optional;

/** What is decided about a request. */
public sealed interface Ruling {

  /** It may go on. */
  record Admitted(Visitor visitor) implements Ruling {}

  /**
   * It is led elsewhere.
   *
   * @param to a path of this server, or a whole address
   */
  record Led(String to) implements Ruling {}

  /**
   * It is answered with this.
   *
   * @param status of HTTP (RFC 9110, section 15)
   * @param words why, for people
   * @param again after which it may be asked again
   */
  record Refused(int status, String words, Optional<Duration> again) implements Ruling {

    Refused(int status, String words) {
      this(status, words, Optional.empty());
    }
  }
}
