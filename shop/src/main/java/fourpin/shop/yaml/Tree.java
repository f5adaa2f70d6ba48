package fourpin.shop.yaml;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a file.
 *
 * @param root the keys at the top; empty when the file could not be read to its end
 * @param problems what was refused, in no certain order
 */
public record Tree(Optional<Yaml.Entries> root, List<Problem> problems) {

  public Tree {
    problems = List.copyOf(problems);
  }

  static Tree refused(Place place, String thing, String rule, String remedy) {
    return new Tree(Optional.empty(), List.of(new Problem(place, thing, rule, remedy)));
  }
}
