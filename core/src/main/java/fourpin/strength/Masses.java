package fourpin.strength;

import fourpin.casework.Feature.Channel;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.measure.Lazy;
import fourpin.measure.Sourced;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** What parts weigh: edging included, cuts taken off; holes, glue and finish left out. */
public final class Masses {

  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

  /** In kg/m³ by material, each looked up once. */
  private final Map<String, Lazy<Sourced>> densities = new HashMap<>();

  public Masses(Job job) {
    for (Material material : job.materials()) {
      densities.put(material.name(), Lazy.of(() -> Matters.of(material).density()));
    }
  }

  /** Mass of a part in kg. */
  public double of(Part part) {
    double kg = 0;
    for (Map.Entry<String, Double> share : volumes(part).entrySet()) {
      kg += share.getValue() * density(share.getKey()).number() / CUBIC_MM_PER_CUBIC_M;
    }
    return kg;
  }

  /** Volumes in cubic millimetres by material. */
  public Map<String, Double> volumes(Part part) {
    Map<String, Double> volumes = new LinkedHashMap<>();
    double panel = part.box().volume();
    for (EdgeBand band : part.edging()) {
      Edging edging = band.edging();
      double covered = edging.thickness().mm() * part.thickness().mm() * band.length().mm();
      panel -= covered;
      boolean strip = edging.kind() == Edging.Kind.STRIP;
      double solid = edging.thickness().mm() * edging.height().mm() * band.length().mm();
      volumes.merge(
          strip ? edging.material() : part.material(), strip ? solid : covered, Double::sum);
    }
    for (var feature : part.features()) {
      panel -= feature instanceof Channel channel ? channel.volume().volume() : 0;
    }
    volumes.merge(part.material(), panel, Double::sum);
    return volumes;
  }

  /** kg/m³, as the job states it, else by the tables. */
  public Sourced density(String name) {
    return Objects.requireNonNull(densities.get(name), name).get();
  }
}
