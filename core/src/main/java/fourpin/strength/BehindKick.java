package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Gravity;
import fourpin.strength.Made.Piece;
import java.util.List;
import java.util.Optional;

/** What might stand behind the kick of a case, made of what that is made of, and what it takes. */
final class BehindKick {

  private final Job job;
  private final BuiltCase built;
  private final Part kick;

  /**
   * @param built has a kick
   */
  BehindKick(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
    this.kick = built.part("K");
  }

  /**
   * A second board. Where blocks are stated, no job states both.
   *
   * @param then what comes of it
   */
  Remedy board(String then) {
    boolean besides = BottomPlate.behind(built) == BottomPlate.Behind.BLOCKS;
    String what =
        "stand a second kick board under its back edge from side to side, %s: %s"
            .formatted(
                besides ? "besides the blocks, by hand" : "and set behind-kick to board", then);
    return remedy(what, kick.box().size(Axis.X).mm(), stated("board").filter(_ -> !besides));
  }

  /** A block below each partition, from the kick to the back edge of the bottom. */
  Remedy blocks(String then) {
    double behind = built.part("B").box().high().y().minus(kick.box().high().y()).mm();
    return remedy(
        "stand a block behind the kick below each partition, and set behind-kick to blocks: "
            + then,
        (built.bays().size() - 1) * behind,
        stated("blocks"));
  }

  private static Optional<Stated> stated(String what) {
    return Optional.of(new Stated.OfSetting(Setting.BEHIND_KICK, what));
  }

  /**
   * @param length of all pieces together, as high as the kick, mm
   */
  private Remedy remedy(String what, double length, Optional<Stated> stated) {
    return new Cure(what, price(length), mass(length), "", stated, Cure.Of.CASE).remedy(job);
  }

  /** Of the wood of a board so long. */
  Optional<Double> price(double length) {
    double high = kick.box().size(Axis.Z).mm();
    return new Prices(job).of(List.of(new Piece(job.material(kick.material()), high)), length);
  }

  private double mass(double length) {
    return Matters.section(job, kick, kick.box().size(Axis.Z).mm()).weight()
        * length
        / Gravity.STANDARD;
  }
}
