package fourpin.job;

import java.util.List;
import java.util.Optional;

/**
 * One case, made {@code quantity} times.
 *
 * @param name short, for part marks and page titles; each once in a job
 * @param material of sides, partitions, top, bottom and fixed shelves, unless a panel states its
 *     own
 * @param bays from left to right, 1 to 12
 * @param edging on the front edges of sides, partitions, top, bottom and fixed shelves
 * @param load what the shelves carry, unless a bay states its own; without either, the settings say
 * @param settings the job's, with the case's own over them
 * @param standsOn the case of the job on which this one stands, middle over middle, backs in line;
 *     without one it stands on the floor
 * @param drawers counted on for tipping alone
 */
public record CaseOrder(
    String name,
    int quantity,
    Sizes sizes,
    String material,
    List<Bay> bays,
    Joint topJoint,
    Joint bottomJoint,
    Joint partitionJoint,
    Joint fixedShelfJoint,
    Optional<Back> back,
    Optional<Kick> kick,
    Optional<FaceFrame> faceFrame,
    Optional<Doors> doors,
    List<Edging> edging,
    Optional<Load> load,
    Settings settings,
    Optional<String> standsOn,
    Optional<Drawers> drawers) {

  public static final int MOST_BAYS = 12;

  public CaseOrder {
    bays = List.copyOf(bays);
    edging = List.copyOf(edging);
  }

  /** A case on the floor, without drawers. */
  public CaseOrder(
      String name,
      int quantity,
      Sizes sizes,
      String material,
      List<Bay> bays,
      Joint topJoint,
      Joint bottomJoint,
      Joint partitionJoint,
      Joint fixedShelfJoint,
      Optional<Back> back,
      Optional<Kick> kick,
      Optional<FaceFrame> faceFrame,
      Optional<Doors> doors,
      List<Edging> edging,
      Optional<Load> load,
      Settings settings) {
    this(
        name,
        quantity,
        sizes,
        material,
        bays,
        topJoint,
        bottomJoint,
        partitionJoint,
        fixedShelfJoint,
        back,
        kick,
        faceFrame,
        doors,
        edging,
        load,
        settings,
        Optional.empty(),
        Optional.empty());
  }

  /** The same case on another one. @param below its name */
  public CaseOrder standingOn(Optional<String> below) {
    return changed(sizes, bays, back, doors, settings, below, drawers);
  }

  /** The same case with drawers, or without. */
  public CaseOrder holding(Optional<Drawers> others) {
    return changed(sizes, bays, back, doors, settings, standsOn, others);
  }

  /** The same case with other settings. */
  public CaseOrder with(Settings other) {
    return changed(sizes, bays, back, doors, other, standsOn, drawers);
  }

  /** The same case with other bays. */
  public CaseOrder with(List<Bay> other) {
    return changed(sizes, other, back, doors, settings, standsOn, drawers);
  }

  /** The same case in another size. */
  public CaseOrder with(Sizes other) {
    return changed(other, bays, back, doors, settings, standsOn, drawers);
  }

  /** The same case with another back. */
  public CaseOrder with(Back other) {
    return changed(sizes, bays, Optional.of(other), doors, settings, standsOn, drawers);
  }

  /** The same case with other doors. */
  public CaseOrder with(Doors other) {
    return changed(sizes, bays, back, Optional.of(other), settings, standsOn, drawers);
  }

  private CaseOrder changed(
      Sizes otherSizes,
      List<Bay> otherBays,
      Optional<Back> otherBack,
      Optional<Doors> otherDoors,
      Settings otherSettings,
      Optional<String> below,
      Optional<Drawers> otherDrawers) {
    return new CaseOrder(
        name,
        quantity,
        otherSizes,
        material,
        otherBays,
        topJoint,
        bottomJoint,
        partitionJoint,
        fixedShelfJoint,
        otherBack,
        kick,
        faceFrame,
        otherDoors,
        edging,
        load,
        otherSettings,
        below,
        otherDrawers);
  }
}
