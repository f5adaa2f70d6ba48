package fourpin.strength;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Lazy;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a shelf goes down most, in words. */
class DeflectionTest {

  @ParameterizedTest
  @CsvSource({
    "2, 1, 2, at both edges",
    "2, 1, 2.0000000001, at both edges",
    "2, 1, 1.99, at the front edge",
    "1.99, 1, 2, at the back edge",
    "1, 2, 1, in the middle",
    "1, 1, 1, in the middle"
  })
  void should_name_both_edges_where_they_sag_alike(
      double front, double middle, double back, String there) {
    double most = Math.max(front, Math.max(middle, back));
    assertThat(
            new Deflection(
                    front,
                    middle,
                    back,
                    most,
                    Lazy.of(List::of),
                    Lazy.of(List::of),
                    Lazy.of(List::of))
                .there())
        .isEqualTo(there);
  }
}
