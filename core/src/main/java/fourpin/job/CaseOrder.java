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
    Optional<String> standsOn) {

  public static final int MOST_BAYS = 12;

  public CaseOrder {
    bays = List.copyOf(bays);
    edging = List.copyOf(edging);
  }

  /** A case on the floor. */
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
        Optional.empty());
  }

  /** The same case on another one. @param below its name */
  public CaseOrder standingOn(Optional<String> below) {
    return new CaseOrder(
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
        below);
  }

  /** The same case with other settings. */
  public CaseOrder with(Settings other) {
    return changed(sizes, bays, other);
  }

  /** The same case with other bays. */
  public CaseOrder with(List<Bay> other) {
    return changed(sizes, other, settings);
  }

  /** The same case in another size. */
  public CaseOrder with(Sizes other) {
    return changed(other, bays, settings);
  }

  private CaseOrder changed(Sizes otherSizes, List<Bay> otherBays, Settings otherSettings) {
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
        back,
        kick,
        faceFrame,
        doors,
        edging,
        load,
        otherSettings,
        standsOn);
  }
}
