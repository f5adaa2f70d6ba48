package fourpin.shop.file;

import fourpin.shop.yaml.Yaml;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value that may be written short, as a single value.
 *
 * @param word the short way
 * @param key of the full way, under which the short way stands there; empty where there is none
 * @param lengthen what the short way stands for
 * @param full the full way
 */
public record Short<S, T>(Word<S> word, String key, Function<S, T> lengthen, Kind<T> full)
    implements Kind<T> {

  @Override
  public String what() {
    return word.what() + ", or " + full.what();
  }

  @Override
  public Optional<T> read(Spot spot) {
    return spot.value() instanceof Yaml.Text ? word.read(spot).map(lengthen) : full.read(spot);
  }
}
