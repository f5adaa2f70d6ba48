package fourpin.shop.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.Device;
import fourpin.shop.store.Store;
import fourpin.shop.store.TestClock;
import fourpin.shop.store.sql.SqlStore;
import java.net.InetAddress;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pairing, its end, and how often one may ask. */
class PairingTest {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
  private static final InetAddress PHONE = InetAddress.ofLiteral("192.168.1.30");

  private static final Reach REACH =
      new Reach("0.0.0.0", Set.of("localhost", "192.168.1.20", "[fd00::1]"), Asked.Line.ENCRYPTED);

  @TempDir private Path folder;

  private final TestClock clock = new TestClock(NOON);
  private Store store;
  private Guard guard;

  @BeforeEach
  void open() {
    store = SqlStore.open(new DataPlace.InFile(folder.resolve("shop.db")), clock);
    guard = new Guard(() -> REACH, Limits.STANDARD, store.devices(), clock);
  }

  @AfterEach
  void close() {
    store.close();
  }

  private String code() {
    return guard.codes().offer().digits();
  }

  /** Eight digits that are not the code. */
  private static String not(String code) {
    return code.equals("00000000") ? "00000001" : "00000000";
  }

  private Ruling asks(InetAddress from, Map<String, List<String>> more) {
    Map<String, List<String>> headers = new HashMap<>(more);
    headers.putIfAbsent("host", List.of("192.168.1.20:7404"));
    return guard.rule(new Asked(Asked.Line.ENCRYPTED, "GET", "/", "", from, headers), () -> "");
  }

  private Ruling shows(String setCookie) {
    return asks(PHONE, Map.of("cookie", List.of(setCookie.split(";")[0])));
  }

  @Test
  void aCodePairsOneDeviceOnce() {
    PairingCodes.Offer offer = guard.codes().offer();
    assertThat(offer.digits()).matches("\\d{8}");
    assertThat(offer.shown()).matches("\\d{4} \\d{4}");
    String cookie = guard.pair(" " + offer.shown() + "-", "Bench <phone>\n").orElseThrow();
    assertThat(cookie)
        .matches(
            "__Host-fourpin-device=[A-Za-z0-9_-]{43}; Path=/; Secure; HttpOnly; SameSite=Strict; Max-Age=2592000");
    Device device = store.devices().all(NOON).getFirst();
    assertThat(device.name()).isEqualTo("Bench phone");
    assertThat(shows(cookie)).isEqualTo(new Ruling.Admitted(new Visitor.Paired(device)));
    assertThat(guard.pair(offer.digits(), "another")).as("used up").isEmpty();
  }

  @Test
  void noCodeNoPairing() {
    assertThat(guard.pair("", "phone")).isEmpty();
    assertThat(guard.pair("00000000", "phone")).isEmpty();
  }

  @Test
  void fiveWrongCodesSpoilTheRightOne() {
    String code = code();
    for (int i = 1; i < Limits.STANDARD.codeTries(); i++) {
      assertThat(guard.pair(not(code), "phone")).isEmpty();
    }
    assertThat(guard.pair(code, "phone")).as("the last try").isPresent();
    String second = code();
    for (int i = 0; i < Limits.STANDARD.codeTries(); i++) {
      assertThat(guard.pair(not(second), "phone")).isEmpty();
    }
    assertThat(guard.pair(second, "phone")).isEmpty();
  }

  @Test
  void aCodeIsGoodForFiveMinutesAndUntilTheNext() {
    String code = code();
    clock.pass(5 * 60_000 - 1);
    assertThat(guard.pair(code, "phone")).isPresent();
    String old = code();
    clock.pass(5 * 60_000);
    assertThat(guard.pair(old, "phone")).as("too old").isEmpty();
    String replaced = code();
    String next = code();
    assertThat(guard.pair(replaced, "phone")).as("replaced").isEmpty();
    assertThat(guard.pair(next, "phone")).isPresent();
  }

  @Test
  void aPairingEndsAfterThirtyDaysOrWhenItIsEnded() {
    String first = guard.pair(code(), "phone").orElseThrow();
    String second = guard.pair(code(), "tablet").orElseThrow();
    store.devices().unpair(store.devices().all(NOON).get(1).id());
    assertThat(shows(second)).isEqualTo(new Ruling.Led(Guard.PAIR));
    clock.pass(Limits.STANDARD.pairingLife().toMillis() - 1);
    assertThat(shows(first)).isInstanceOf(Ruling.Admitted.class);
    clock.pass(1);
    assertThat(shows(first)).isEqualTo(new Ruling.Led(Guard.PAIR));
  }

  @Test
  void namesAreMadeHarmless() {
    assertThat(guard.pair(code(), "\ud800\0'; drop table device; --" + "x".repeat(100)))
        .isPresent();
    assertThat(guard.pair(code(), "<>")).isPresent();
    assertThat(store.devices().all(NOON))
        .extracting(Device::name)
        .containsExactlyInAnyOrder("drop table device --" + "x".repeat(19), "a device");
  }

  @Test
  void whoAsksTooOftenWaitsAndOthersDoNot() {
    Map<String, List<String>> none = Map.of();
    for (int i = 0; i < Limits.STANDARD.requestsAtOnce(); i++) {
      assertThat(asks(PHONE, none)).isEqualTo(new Ruling.Led(Guard.PAIR));
    }
    assertThat(asks(PHONE, none))
        .isInstanceOfSatisfying(
            Ruling.Refused.class,
            refused -> {
              assertThat(refused.status()).isEqualTo(429);
              assertThat(refused.again()).isPresent();
            });
    assertThat(asks(InetAddress.ofLiteral("192.168.1.31"), none))
        .isEqualTo(new Ruling.Led(Guard.PAIR));
    clock.pass(60_000 / Limits.STANDARD.requestsPerMinute());
    assertThat(asks(PHONE, none))
        .as("one more after a while")
        .isEqualTo(new Ruling.Led(Guard.PAIR));
    assertThat(asks(PHONE, none)).isInstanceOf(Ruling.Refused.class);
  }

  @Test
  void addressesOfOneHouseholdAreOne() {
    for (int i = 0; i < Limits.STANDARD.requestsAtOnce(); i++) {
      asks(InetAddress.ofLiteral("2001:db8::" + Integer.toHexString(i + 1)), Map.of());
    }
    assertThat(asks(InetAddress.ofLiteral("2001:db8::ffff"), Map.of()))
        .isInstanceOf(Ruling.Refused.class);
    assertThat(asks(InetAddress.ofLiteral("2001:db8:0:1::1"), Map.of()))
        .isEqualTo(new Ruling.Led(Guard.PAIR));
  }

  @ParameterizedTest
  @CsvSource({
    "192.168.1.20, true",
    "192.168.1.20:7404, true",
    "LOCALHOST:1, true",
    "[fd00::1]:7404, true",
    "[fd00::1], true",
    "192.168.1.21, false",
    "192.168.1.20.evil.example, false",
    "192.168.1.20:7404:1, false",
    "localhost., false",
    "'', false"
  })
  void thisMachineIsCalledByItsNamesOnly(String host, boolean ours) {
    Ruling ruling = asks(PHONE, Map.of("host", List.of(host)));
    assertThat(ruling).isEqualTo(ours ? new Ruling.Led(Guard.PAIR) : wrongName());
  }

  private static Ruling wrongName() {
    return new Ruling.Refused(
        421, "Ask for this machine by its own name or address.", Optional.empty());
  }

  @Test
  void theNetworksReachHasThisMachinesAddresses() {
    assertThat(Reach.network().names()).containsAll(Reach.loopback().names());
    assertThat(Reach.network().includes("evil.example")).isFalse();
  }
}
