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
              "localhost",
              "127.0.0.1",
              "[::1]",
              "192.168.7.2",
              "bench.local",
              "bench",
              "8.8.8.8",
              "[fd00:0:0:0:0:0:0:7]"),
          Asked.Line.ENCRYPTED);

  @ParameterizedTest
  @CsvSource({
    "192.168.7.2:7404, https://192.168.7.2:7404",
    "bench.local:7404, https://bench.local:7404",
    "BENCH.local, https://bench.local",
    "127.0.0.1:7404, https://192.168.7.2:7404",
    "LOCALHOST:7404, https://192.168.7.2:7404",
    "[::1]:7404, https://192.168.7.2:7404",
    "[0:0::1]:7404, https://192.168.7.2:7404",
    "[fd00::7]:7404, https://[fd00::7]:7404",
    "[FD00:0::0:7]:7404, https://[fd00:0::0:7]:7404",
    "[fd00::7], https://[fd00::7]",
    "[fd00::8]:7404, https://192.168.7.2:7404",
    "[fd00::7%eth0]:7404, https://192.168.7.2:7404",
    "[fd00, https://192.168.7.2",
    "bench:7404, https://192.168.7.2:7404",
    "8.8.8.8:7404, https://192.168.7.2:7404",
    "other.local:7404, https://192.168.7.2:7404",
  })
  void byTheNameAskedForUnlessNoDeviceCanBeSureOfIt(String host, String origin) {
    assertThat(NETWORK.origin(host)).hasValue(origin);
  }

  /** Java writes addresses of version 6 in full, browsers as short as can be (RFC 5952, 4). */
  @ParameterizedTest
  @CsvSource({
    "[fd00::7]:7404, true",
    "[fd00:0000::7], true",
    "[::1]:7404, true",
    "[0:0:0:0:0:0:0:1], true",
    "[fd00::8]:7404, false",
    "[], false",
    "[fd00::7%1], false",
    "fd00::7, false",
  })
  void addressesOfVersion6AreKnownHoweverTheyAreSpelt(String host, boolean ours) {
    assertThat(NETWORK.includes(host)).isEqualTo(ours);
  }

  @Test
  void addressesOfVersion4AreToldFirstAndOneLinksNotAtAll() {
    Set<String> names = Set.of("[fd00::7]", "[fe80::7]", "[::1]", "127.0.0.1", "10.0.0.3");
    assertThat(new Reach("0.0.0.0", names, Asked.Line.ENCRYPTED).addresses())
        .containsExactly("10.0.0.3", "[fd00:0:0:0:0:0:0:7]");
  }

  @Test
  void nobodyElseFindsWhatServesThisMachineOnly() {
    assertThat(Reach.loopback().origin("127.0.0.1:7404")).isEmpty();
  }
}
