package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Reading;
import fourpin.sheets.packet.Codes;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Addresses for the codes of a packet from the command line. */
class BenchAddressTest {

  @ParameterizedTest
  @CsvSource({
    "http://192.168.7.2:7404/jobs/01a2-f, http://192.168.7.2:7404/jobs/01a2-f/bench",
    "' https://shop.local/jobs/1/ ', https://shop.local/jobs/1/bench",
    "http://[fd00::7]:7404/jobs/1/bench, http://[fd00::7]:7404/jobs/1/bench",
    "http://hall:80/jobs/1/bench/, http://hall:80/jobs/1/bench"
  })
  void theAddressOfAJobLeadsToItsBench(String typed, String bench) {
    assertThat(BenchAddress.read(typed))
        .isInstanceOfSatisfying(
            Reading.Good.class, good -> assertThat(((Codes) good.value()).bench()).contains(bench));
  }

  @ParameterizedTest
  @CsvSource({
    "192.168.7.2:7404/jobs/1, no address",
    "hall, begin with http",
    "ftp://hall/jobs/1, begin with http",
    "http://127.0.0.1:7404/jobs/1, asks itself",
    "http://localhost/jobs/1, asks itself",
    "http://[::1]/jobs/1, asks itself",
    "http://hall/, not that of a job",
    "http://hall/jobs/1?case=x, not that of a job",
    "http://hall/jobs/1#step-2, not that of a job",
    "http://me@hall/jobs/1, not that of a job",
    "http://hall/jobs/../devices, not that of a job",
    "http://hall/jobs/000000000000000000000000000000000000000000000000000000000000000000000000000"
        + "00000000000000000000000000000000, more than 120"
  })
  void whatPhonesCannotFollowIsRefused(String typed, String rule) {
    assertThat(BenchAddress.read(typed))
        .isInstanceOfSatisfying(Reading.Bad.class, bad -> assertThat(bad.rule()).contains(rule));
  }
}
