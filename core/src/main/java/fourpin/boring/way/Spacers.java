package fourpin.boring.way;

import fourpin.boring.way.Clamping.Bearing;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What keeps one guide off the end or the edge that it is set from, each size once, smallest first:
 * the same piece then serves every panel, and what is wrong in it is wrong alike in all of them.
 */
public record Spacers(List<Spacer> list) {

  public Spacers {
    list = List.copyOf(list);
  }

  /** Where a spacer lies. */
  public enum Kind {
    /** Between the guide's block, or its own end, and what it would bear on. */
    END("E"),
    /** Along the edge, between the panel's and the guide's. */
    EDGE("S");

    private final String letter;

    Kind(String letter) {
      this.letter = letter;
    }
  }

  /**
   * One piece.
   *
   * @param guide mark of the guide; it is written on the spacer with its number
   * @param size how far it keeps the guide off
   * @param length along the end or the edge
   * @param number among those of its guide, a letter and a count: "E1"
   */
  public record Spacer(String guide, String number, Kind kind, Length size, Length length) {
    public String mark() {
      return guide + " " + number;
    }
  }

  public static Spacers of(Method.Guided method) {
    List<Spacer> list = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      List<Length> sizes =
          method.clampings().stream()
              .flatMap(c -> size(kind, c).stream())
              .distinct()
              .sorted()
              .toList();
      Guide guide = method.guide();
      for (Length size : sizes) {
        String number = kind.letter + (sizes.indexOf(size) + 1);
        Length length = kind == Kind.END ? guide.width() : guide.length();
        list.add(new Spacer(guide.mark(), number, kind, size, length));
      }
    }
    return new Spacers(list);
  }

  /** The one that lies so in a clamping. */
  public Optional<Spacer> at(Kind kind, Clamping clamping) {
    return size(kind, clamping)
        .flatMap(
            s -> list.stream().filter(o -> o.kind() == kind && o.size().equals(s)).findFirst());
  }

  /** All that are needed for a clamping. */
  public List<Spacer> at(Clamping clamping) {
    return Stream.of(Kind.values()).flatMap(kind -> at(kind, clamping).stream()).toList();
  }

  private static Optional<Length> size(Kind kind, Clamping clamping) {
    Length size =
        switch (kind) {
          case END -> atEnd(clamping);
          case EDGE -> clamping.across();
        };
    return Optional.of(size).filter(Length::isPositive);
  }

  private static Length atEnd(Clamping clamping) {
    return switch (clamping.bearing()) {
      case Bearing.End _ -> clamping.along().negated();
      case Bearing.PanelBelow(_, Length spacer) -> spacer;
    };
  }
}
