package fourpin.shop.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where devices find what was asked for. */
class ReachTest {

  private static final Reach NETWORK =
      new Reach(
          "0.0.0.0",
          Set.of(
              "localhost", "127.0.0.1", "[::1]", "192.168.7.2", "bench.local", "bench", "8.8.8.8"),
          Asked.Line.ENCRYPTED);

  @ParameterizedTest
  @CsvSource({
    "192.168.7.2:7404, https://192.168.7.2:7404",
    "bench.local:7404, https://bench.local:7404",
    "BENCH.local, https://bench.local",
    "127.0.0.1:7404, https://192.168.7.2:7404",
    "LOCALHOST:7404, https://192.168.7.2:7404",
    "[::1]:7404, https://192.168.7.2:7404",
    "bench:7404, https://192.168.7.2:7404",
    "8.8.8.8:7404, https://192.168.7.2:7404",
    "other.local:7404, https://192.168.7.2:7404",
  })
  void byTheNameAskedForUnlessNoDeviceCanBeSureOfIt(String host, String origin) {
    assertThat(NETWORK.origin(host)).hasValue(origin);
  }

  @Test
  void nobodyElseFindsWhatServesThisMachineOnly() {
    assertThat(Reach.loopback().origin("127.0.0.1:7404")).isEmpty();
  }
}
