package fourpin.shop.file;

import fourpin.job.Material;
import fourpin.job.Settings;
import fourpin.job.Shop;
import fourpin.measure.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * What the rest of a file is read with.
 *
 * @param unit of a bare number
 * @param settings of the shop and the job
 * @param materials every name that the job declares, without a value where it could not be read;
 *     empty if it declares none, and then names are not checked
 * @param shop where the job is made
 */
record Context(Unit unit, Settings settings, Map<String, Optional<Material>> materials, Shop shop) {

  /** A file alone, before anything in it is read. */
  static Context of(Unit unit) {
    return new Context(unit, Settings.standard(unit), Map.of(), Shop.NONE);
  }

  /** The material of that name, if the job declares one that could be read. */
  Optional<Material> material(String name) {
    return materials.getOrDefault(name, Optional.empty());
  }
}
