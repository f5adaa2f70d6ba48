package fourpin.shop.web;

import fourpin.job.CaseOrder;
import fourpin.job.Edging;
import fourpin.job.Shelves;
import fourpin.measure.Length;
import fourpin.shop.edit.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.function.Function;

/** Edging as a job states it. */
final class EdgingWords {

  private EdgingWords() {}

  static Value of(List<Edging> all) {
    return written(all, e -> Optional.of(e.height()));
  }

  /**
   * That of a bay's shelves when they are made of something so thick: strips that would be lower
   * are left as high as that, which is what a strip without a height is.
   *
   * @return nothing where it may stay
   */
  static Optional<Value> on(CaseOrder order, int bay, Length thickness) {
    List<Edging> now = order.bays().get(bay - 1).shelves().map(Shelves::edging).orElse(List.of());
    return now.stream().anyMatch(e -> isLow(e, thickness))
        ? Optional.of(written(now, e -> Optional.of(e.height()).filter(_ -> !isLow(e, thickness))))
        : Optional.empty();
  }

  private static boolean isLow(Edging edging, Length thickness) {
    return edging.kind() == Edging.Kind.STRIP && edging.height().isLessThan(thickness);
  }

  private static Value written(List<Edging> all, Function<Edging, Optional<Length>> height) {
    List<Value> values = all.stream().map(e -> written(e, height.apply(e))).toList();
    return values.size() == 1 ? values.getFirst() : Value.list(values);
  }

  private static Value written(Edging edging, Optional<Length> height) {
    SequencedMap<String, Value> keys = new LinkedHashMap<>();
    keys.put(word(edging.kind()), Value.of(edging.material()));
    keys.put("thickness", Value.of(RackFields.written(edging.thickness())));
    height
        .filter(_ -> edging.kind() == Edging.Kind.STRIP)
        .ifPresent(h -> keys.put("height", Value.of(RackFields.written(h))));
    keys.put("edges", Value.list(edging.edges().stream().map(e -> Value.of(word(e))).toList()));
    return Value.group(keys);
  }

  private static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT);
  }
}
