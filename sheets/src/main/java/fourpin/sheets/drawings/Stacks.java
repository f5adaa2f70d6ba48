package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import java.util.List;

/** Cases as they stand: those on the floor, each with what is set on it. */
public final class Stacks {

  private Stacks() {}

  /**
   * A case on another one, middle over middle, backs in line.
   *
   * @param right how far it is moved from its own coordinates to those of the case below, mm
   */
  record Placed(BuiltCase built, double right, double back, double up) {

    static Placed on(BuiltCase lower, BuiltCase upper) {
      double middle = middle(lower) - middle(upper);
      double back = lower.outside().high().y().mm() - upper.outside().high().y().mm();
      double up = lower.outside().high().z().mm() - upper.outside().low().z().mm();
      return new Placed(upper, middle, back, up);
    }

    private static double middle(BuiltCase of) {
      return (of.outside().low().x().mm() + of.outside().high().x().mm()) / 2;
    }
  }

  /** A case on the floor and what stands on it. */
  public record Stack(BuiltCase lower, List<Placed> upper) {

    double height() {
      double most =
          upper.stream().mapToDouble(u -> u.built().outside().size(Axis.Z).mm()).max().orElse(0);
      return lower.outside().size(Axis.Z).mm() + most;
    }

    public String name() {
      List<String> names = upper.stream().map(u -> u.built().order().name() + " on ").toList();
      return String.join("", names) + lower.order().name();
    }
  }

  /** Each case once. */
  static List<Stack> of(List<BuiltCase> cases) {
    return cases.stream()
        .filter(c -> c.order().standsOn().filter(name -> has(cases, name)).isEmpty())
        .map(lower -> new Stack(lower, on(lower, cases)))
        .toList();
  }

  /** Only those with something on them. */
  public static List<Stack> high(List<BuiltCase> cases) {
    return of(cases).stream().filter(s -> !s.upper().isEmpty()).toList();
  }

  private static boolean has(List<BuiltCase> cases, String name) {
    return cases.stream().anyMatch(c -> c.order().name().equals(name));
  }

  private static List<Placed> on(BuiltCase lower, List<BuiltCase> cases) {
    String name = lower.order().name();
    return cases.stream()
        .filter(c -> c.order().standsOn().filter(name::equals).isPresent())
        .map(upper -> Placed.on(lower, upper))
        .toList();
  }
}
