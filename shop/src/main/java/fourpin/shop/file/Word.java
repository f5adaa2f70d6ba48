package fourpin.shop.file;

import fourpin.job.Material;
import fourpin.measure.Reading;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * A single value.
 *
 * @param example of what to write
 * @param shape what other programs can know of it
 */
public record Word<T>(
    String what, String example, Shape shape, BiFunction<String, Context, Reading<T>> reader)
    implements Kind<T> {

  /** What can be said of a value without reading it. */
  public sealed interface Shape {

    /** What it names of the things that the file has under names; empty for nothing. */
    default String calls() {
      return "";
    }

    /**
     * A number with or without a unit, or a length with feet and fractions.
     *
     * @param least and {@code most} that it can be, with their units; empty where it depends
     */
    record Measure(String least, String most) implements Shape {
      static final Measure ANY = new Measure("", "");
    }

    /** Digits, perhaps with decimals. */
    record Number(Grain grain, double least, double most) implements Shape {}

    /** One of some words. */
    record Choice(List<String> words) implements Shape {}

    /** One of some words, or another name for one of them. */
    record Row(List<String> names) implements Shape {}

    /** The name of a material of the job, of one of some kinds. */
    record OfMaterial(List<Material.Kind> kinds) implements Shape {
      @Override
      public String calls() {
        return Named.MATERIAL;
      }
    }

    /** The name of a case of the job. */
    record OfCase() implements Shape {
      @Override
      public String calls() {
        return Named.CASE;
      }
    }

    /** Words of the maker's own, not longer than that. */
    record Free(int longest) implements Shape {}
  }

  /** Whether a number has decimals. */
  public enum Grain {
    WHOLE,
    DECIMAL
  }

  @Override
  public Optional<T> read(Spot spot) {
    return spot.text()
        .map(text -> spot.take(reader.apply(text, spot.context())))
        .orElseGet(() -> spot.refuse(what + " is expected, not " + spot.value().what(), remedy()));
  }

  String remedy() {
    return "write it like " + example;
  }
}
