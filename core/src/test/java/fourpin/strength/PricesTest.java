package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.withMaterial;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Layer;
import fourpin.job.Material.Turn;
import fourpin.job.SampleJobs;
import fourpin.strength.Made.Piece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What wood costs by its area. */
class PricesTest {

  private static final String PLY = "plywood, veneer core";

  private static Layer layer(String thickness, double share, Optional<String> from) {
    return new Layer(PLY, in(thickness), share, Turn.ALONG, from);
  }

  private static Optional<Double> price(Optional<String> from) {
    Material box =
        new Material(
            "panel",
            Material.Kind.SHEET,
            PLY,
            in("1 1/2"),
            Optional.empty(),
            Material.Grain.LENGTHWISE,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(layer("1/4", 1, from), layer("1", 0.2, from), layer("1/4", 1, from)));
    Job job = withMaterial(box, SampleJobs.bay(1));
    return new Prices(job).of(List.of(new Piece(box, 300)), 1000);
  }

  /** It is not for sale as a panel: 1 + 0.2 + 1 of what its layers are cut from. */
  @Test
  void aGluedUpPanelCostsWhatItsLayersAreCutFrom() {
    Job job = SampleJobs.job(new CaseDraft().order());
    Material ply =
        job.materials().stream().filter(m -> m.name().equals("ply")).findFirst().orElseThrow();
    double one = new Prices(job).of(List.of(new Piece(ply, 300)), 1000).orElseThrow();
    assertThat(price(Optional.of("ply")).orElseThrow()).isCloseTo(2.2 * one, withPercentage(1e-9));
    assertThat(price(Optional.of("nothing"))).isEmpty();
    assertThat(price(Optional.empty())).isEmpty();
  }
}
