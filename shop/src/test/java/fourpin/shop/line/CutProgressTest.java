package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Layout;
import fourpin.cutting.LowerBound;
import fourpin.cutting.Watch;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CutProgressTest {

  private static final long SECOND = 1_000_000_000L;

  private long now;
  private final StringWriter told = new StringWriter();

  private CutProgress progress(Optional<Integer> seconds) {
    return new CutProgress(Optional.of(new PrintWriter(told)), () -> now, seconds);
  }

  @Test
  void eachLotGetsItsShareOfTheTimeAndWhatOthersLeave() {
    CutProgress progress = progress(Optional.of(10));
    Watch first = progress.begin("birch ply, sheets", 1);
    now = 4 * SECOND;
    assertThat(first.enough()).isFalse();
    now = 5 * SECOND;
    assertThat(first.enough()).isTrue();
    now = 2 * SECOND;
    Watch last = progress.begin("ash, boards", 0);
    now = 8 * SECOND;
    assertThat(last.enough()).isFalse();
    now = 9 * SECOND;
    assertThat(last.enough()).isTrue();
  }

  @Test
  void withoutSecondsOnlyTheMakerEndsTheSearch() {
    CutProgress progress = progress(Optional.empty());
    Watch watch = progress.begin("birch ply, sheets", 0);
    now = 100_000 * SECOND;
    assertThat(watch.enough()).isFalse();
    progress.enough();
    assertThat(watch.enough()).isTrue();
    assertThat(progress.begin("ash, boards", 0).enough()).isTrue();
  }

  @Test
  void aShorterLineLeavesNothingOfALongerOne() {
    CutProgress progress = progress(Optional.empty());
    Watch watch = progress.begin("ply", 0);
    watch.better(new Layout(List.of(), List.of(), new LowerBound(0, 100)));
    now = 2 * SECOND;
    watch.better(new Layout(List.of(), List.of(), new LowerBound(0, 2)));
    progress.clear();
    String first = "\rply: 0; none needs fewer than 100 (0 s; Ctrl-C takes what there is)";
    String second = "\rply: 0; none needs fewer than 2 (2 s; Ctrl-C takes what there is)";
    assertThat(told).hasToString(first + second + "  \r" + " ".repeat(second.length() - 1) + "\r");
  }
}
