package fourpin.casework;

import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.measure.Sum;

/** By how much parts of a case are cut over the size that they come to. */
public record CutSizes(Job job, Settings settings) {

  /** What waits until the case stands is trimmed then; glass is ordered to measure. */
  public Sum cut(Sum size, Material material, Part.CutWhen when) {
    Length over = settings.length(Setting.OVER_SIZE);
    boolean trimmed =
        when == Part.CutWhen.AFTER_ASSEMBLY
            && material.kind() != Material.Kind.GLASS
            && over.isPositive();
    return trimmed ? size.plus("to trim", over) : size;
  }

  /** Strips are ripped over size and planed, unless boards are sold as wide as the strip. */
  public Sum ripped(Sum finished, Material material) {
    boolean asSold =
        job.boards().stream()
            .anyMatch(
                b -> b.material().equals(material.name()) && b.width().equals(finished.total()));
    return asSold ? finished : finished.plus("to plane", settings.length(Setting.STRIP_ALLOWANCE));
  }

  /** Pressed layers slide, and are trimmed together. */
  public Sum layer(Sum size) {
    return size.plus("to trim when glued", settings.length(Setting.LAYER_TRIM));
  }
}
