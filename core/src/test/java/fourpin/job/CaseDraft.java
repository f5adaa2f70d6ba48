package fourpin.job;

import static fourpin.job.SampleJobs.in;

import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;

/**
 * A case to be changed field by field: a bookcase 72 x 84 x 12 in with two bays of four shelves.
 */
public final class CaseDraft {

  public String name = "North";
  public int quantity = 1;
  public Sizes sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("84"), in("12"));
  public String material = "ply";
  public List<Bay> bays = List.of(SampleJobs.bay(4), SampleJobs.bay(4));
  public Joint topJoint = joint(Joint.Kind.RABBET, "3/8");
  public Joint bottomJoint = joint(Joint.Kind.DADO, "1/4");
  public Joint partitionJoint = joint(Joint.Kind.DADO, "1/4");
  public Joint fixedShelfJoint = joint(Joint.Kind.DADO, "1/4");
  public Optional<Back> back =
      Optional.of(new Back(Back.Kind.GROOVE, "back", Optional.of(in("1/4")), Back.Pieces.ONE));
  public Optional<Kick> kick = Optional.of(new Kick(in("3 1/2"), in("0"), "ply"));
  public Optional<FaceFrame> faceFrame = Optional.empty();
  public Optional<Doors> doors = Optional.empty();
  public Optional<Drawers> drawers = Optional.empty();
  public List<Edging> edging = List.of();
  public Optional<Load> load = Optional.of(new Load.Holds("books, average"));
  public Settings settings = Settings.standard(Unit.INCH);

  /** A draft of a case in plywood, to make another of it. */
  public static CaseDraft of(CaseOrder order) {
    CaseDraft draft = new CaseDraft();
    draft.name = order.name();
    draft.material = order.material();
    draft.quantity = order.quantity();
    draft.sizes = order.sizes();
    draft.bays = order.bays();
    draft.topJoint = order.topJoint();
    draft.bottomJoint = order.bottomJoint();
    draft.partitionJoint = order.partitionJoint();
    draft.fixedShelfJoint = order.fixedShelfJoint();
    draft.back = order.back();
    draft.kick = order.kick();
    draft.faceFrame = order.faceFrame();
    draft.doors = order.doors();
    draft.drawers = order.drawers();
    draft.edging = order.edging();
    draft.load = order.load();
    draft.settings = order.settings();
    return draft;
  }

  public static Joint joint(Joint.Kind kind, String depth) {
    return new Joint(kind, Optional.of(in(depth)));
  }

  public void set(Setting setting, double value) {
    settings = settings.with(setting, new SettingValue.OfNumber(value));
  }

  /** Doors of 3/4 in that lie on the case by 1/8 in. @param perBay none, one or two */
  public void overlayDoors(int perBay) {
    doors =
        perBay == 0
            ? Optional.empty()
            : Optional.of(
                new Doors(
                    Doors.Kind.OVERLAY,
                    perBay,
                    in("3/4"),
                    in("1/8"),
                    List.of(),
                    in("2"),
                    in("2"),
                    in("1/2")));
  }

  public CaseOrder order() {
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
            settings)
        .holding(drawers);
  }
}
