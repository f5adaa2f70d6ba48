package fourpin.casework;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandTest {

  /**
   * By hand, with a panel before you. The first two: the inside of a left panel looks to the right;
   * laid down with it upwards and the foot towards you, the front edge is on the left, as it is
   * when the panel stands and you look at it from the right.
   */
  @ParameterizedTest
  @CsvSource({
    "RIGHT, BOTTOM, FRONT, LEFT",
    "LEFT, BOTTOM, FRONT, RIGHT",
    "RIGHT, BOTTOM, BACK, RIGHT",
    "LEFT, BOTTOM, BACK, LEFT",
    "RIGHT, TOP, FRONT, RIGHT",
    "TOP, FRONT, LEFT, LEFT",
    "TOP, FRONT, RIGHT, RIGHT",
    "BOTTOM, FRONT, LEFT, RIGHT",
    "FRONT, BOTTOM, LEFT, LEFT",
    "BACK, BOTTOM, LEFT, RIGHT",
    "TOP, LEFT, FRONT, RIGHT"
  })
  void should_tell_on_which_hand_an_edge_lies(Face up, Face near, Face edge, Hand hand) {
    assertThat(Hand.of(up, near, edge)).isEqualTo(hand);
  }
}
