package fourpin.shop.fields;

import fourpin.job.Material;
import fourpin.job.Setting;
import java.util.List;

/** What of a file is known beyond the keys that a field is about. */
public interface Known {

  /** The materials of these kinds that the file names. */
  List<Field.Choice> materials(List<Material.Kind> kinds);

  /** The cases that the file names. */
  List<String> cases();

  /** What a setting is where the file does not state it. */
  String standing(Setting setting);

  /** A limit of a length or quantity, as the maker reads it. */
  String limit(String written);

  /**
   * What a blank is begun with, for a maker who does not know better.
   *
   * @param group the group without its article, as "kick"
   * @return empty if there is nothing usual
   */
  String start(String group, String key);
}
