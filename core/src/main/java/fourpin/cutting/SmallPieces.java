package fourpin.cutting;

import fourpin.measure.Length;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Pieces that are too small to be held safely: those that are short both ways, since the longer
 * side lies at fence or mitre gauge, whichever way the grain runs. What may be done instead is the
 * business of whoever prints the steps.
 */
public final class SmallPieces {

  private SmallPieces() {}

  /**
   * Names of those that are cut, and of parts that come off, in the order of cutting: a small part
   * lies between fence or stop and blade, or loose beside it, where no hand may hold it.
   *
   * @param least length that can be held
   */
  public static List<String> of(List<SetUp> setUps, Length least) {
    return names(setUps, least, step -> Stream.concat(Stream.of(step.from()), parts(step)));
  }

  /** Names of those that are cut, which hangs on the layout; parts are as small in any. */
  static List<String> cut(List<SetUp> setUps, Length least) {
    return names(setUps, least, step -> Stream.of(step.from()));
  }

  private static List<String> names(
      List<SetUp> setUps, Length least, Function<SawStep, Stream<Piece>> pieces) {
    return setUps.stream()
        .flatMap(setUp -> setUp.steps().stream())
        .flatMap(pieces)
        .filter(piece -> Length.max(piece.length(), piece.width()).isLessThan(least))
        .map(Piece::name)
        .distinct()
        .toList();
  }

  private static Stream<Piece> parts(SawStep step) {
    return Stream.concat(Stream.of(step.near()), step.far().stream())
        .filter(piece -> piece.content() instanceof Piece.Content.FinishedPart);
  }
}
