package fourpin.bench;

import fourpin.measure.Length;

/** Wood that is gone: measured from the index end, the index edge and the face. */
public sealed interface Removal {

  Surface surface();

  String purpose();

  /** A block. */
  record Block(
      Step.Channel.Shape shape,
      Surface surface,
      Span length,
      Span width,
      Span thickness,
      String purpose)
      implements Removal {}

  /**
   * A hole.
   *
   * @param length of its centre from the index end, {@code width} from the index edge; beyond the
   *     edge where the piece was ripped through the hole
   */
  record Bore(
      Surface surface, Length length, Length width, Length diameter, Length depth, String purpose)
      implements Removal {}
}
