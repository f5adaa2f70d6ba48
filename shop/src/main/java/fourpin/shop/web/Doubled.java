package fourpin.shop.web;

import fourpin.job.CaseOrder;
import fourpin.job.Material;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.fields.Target;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.stream.Stream;

/** A material of two layers of another, which the plan cuts and glues, for the shelves of a bay. */
final class Doubled {

  private static final int LAYERS = 2;

  private Doubled() {}

  static List<Target> of(State seen, CaseOrder order, int bay, Material single) {
    SequencedMap<String, Value> keys = new LinkedHashMap<>();
    String name = name(seen, single);
    keys.put("material", Value.of(name));
    EdgingWords.on(order, bay, single.thickness().times(LAYERS))
        .ifPresent(edging -> keys.put("edging", edging));
    return Stream.concat(
            Stream.of(Target.put(Route.of("materials", name), stated(single))),
            StatedBays.of(seen, order).shelfKeys(bay, keys).stream())
        .toList();
  }

  /** One that no material has, but the same made before. */
  private static String name(State seen, Material single) {
    String plain = single.name() + "-doubled";
    return Stream.iterate(1, n -> n + 1)
        .map(n -> n == 1 ? plain : plain + "-" + n)
        .filter(name -> seen.job().materials().stream().noneMatch(m -> isOther(m, name, single)))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isOther(Material there, String name, Material single) {
    return there.name().equals(name) && !there.layers().equals(layers(single));
  }

  private static List<Material.Layer> layers(Material single) {
    Material.Layer layer =
        new Material.Layer(
            single.of(), single.thickness(), 1, Material.Turn.ALONG, Optional.of(single.name()));
    return Collections.nCopies(LAYERS, layer);
  }

  private static Value stated(Material single) {
    SequencedMap<String, Value> keys = new LinkedHashMap<>();
    keys.put("kind", Value.of(plain(single.kind())));
    keys.put("of", Value.of(single.of()));
    keys.put("thickness", Value.of(RackFields.written(single.thickness().times(LAYERS))));
    keys.put("grain", Value.of(plain(single.grain())));
    keys.put("layers", Value.list(Collections.nCopies(LAYERS, layer(single))));
    return Value.group(keys);
  }

  private static Value layer(Material single) {
    SequencedMap<String, Value> keys = new LinkedHashMap<>();
    keys.put("of", Value.of(single.of()));
    keys.put("thickness", Value.of(RackFields.written(single.thickness())));
    keys.put("cut-from", Value.of(single.name()));
    return Value.group(keys);
  }

  private static String plain(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT);
  }
}
