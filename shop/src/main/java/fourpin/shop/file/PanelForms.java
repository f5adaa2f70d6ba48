package fourpin.shop.file;

import fourpin.job.Back;
import fourpin.job.CaseOrder;
import fourpin.job.Doors;
import fourpin.job.FaceFrame;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.Material;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/** Joints, back, kick, face frame and doors of a case. */
final class PanelForms {

  private static final Key<Length> DEPTH =
      Key.optional(
          "depth", Words.length("0.5 mm", "60 mm"), "the setting dado-depth", "of the channel");

  private static final Word<Joint.Kind> JOINT_KIND = Words.choice(Joint.Kind.class);
  private static final Key<Joint.Kind> KIND =
      Key.required("kind", JOINT_KIND, "dado, rabbet, or butt for a joint with screws");
  private static final Kind<Joint> JOINT =
      new Short<>(
          JOINT_KIND,
          KIND.name(),
          kind -> new Joint(kind, Optional.empty()),
          Form.of("a joint", List.of(KIND, DEPTH), v -> new Joint(v.get(KIND), v.find(DEPTH))));
  private static final Key<Joint> TOP =
      Key.optional("top", JOINT, "rabbet", "of the top with the sides");
  private static final Key<Joint> BOTTOM =
      Key.optional("bottom", JOINT, "dado", "of the bottom with the sides");
  private static final Key<Joint> PARTITIONS =
      Key.optional("partitions", JOINT, "dado", "of partitions with top and bottom");
  private static final Key<Joint> FIXED_SHELVES =
      Key.optional("fixed-shelves", JOINT, "dado", "of fixed shelves with sides and partitions");

  /** The joints of a case. */
  record Joints(Joint top, Joint bottom, Joint partitions, Joint fixedShelves) {
    static final Joints STANDARD =
        new Joints(
            plain(Joint.Kind.RABBET),
            plain(Joint.Kind.DADO),
            plain(Joint.Kind.DADO),
            plain(Joint.Kind.DADO));

    private static Joint plain(Joint.Kind kind) {
      return new Joint(kind, Optional.empty());
    }
  }

  static final Form<Joints> JOINTS =
      Form.of(
          "joints",
          List.of(TOP, BOTTOM, PARTITIONS, FIXED_SHELVES),
          v ->
              new Joints(
                  v.find(TOP).orElse(Joints.STANDARD.top()),
                  v.find(BOTTOM).orElse(Joints.STANDARD.bottom()),
                  v.find(PARTITIONS).orElse(Joints.STANDARD.partitions()),
                  v.find(FIXED_SHELVES).orElse(Joints.STANDARD.fixedShelves())));

  private static final Key<Back.Kind> BACK_KIND =
      Key.required(
          "kind", Words.choice(Back.Kind.class), "groove, rabbet, or applied on the back edges");
  private static final Key<String> BACK_MATERIAL =
      Key.required(
          "material", Words.material(Material.Kind.SHEET, Material.Kind.BOARD), "of the back");
  private static final Key<Back.Pieces> PIECES =
      Key.optional(
          "pieces",
          Words.choice(Back.Pieces.class),
          "one",
          "one panel over the whole case, or by-bay: one for each bay, meeting on the partitions");
  static final Form<Back> BACK =
      new Form<>(
          "a back", List.of(BACK_KIND, BACK_MATERIAL, DEPTH, PIECES), List.of(), PanelForms::back);

  private static final Key<Length> KICK_HEIGHT =
      Key.required(
          "height", Words.length("10 mm", "500 mm"), "from the floor to the bottom's lower face");
  private static final Key<Length> RECESS =
      Key.optional(
          "recess",
          Words.length("0 mm", "200 mm"),
          "0",
          "from the front of the sides to the front of the kick");
  private static final Key<String> KICK_MATERIAL =
      Key.required(
          "material", Words.material(Material.Kind.SHEET, Material.Kind.BOARD), "of the kick");
  static final Form<Kick> KICK =
      Form.of(
          "a kick",
          List.of(KICK_HEIGHT, RECESS, KICK_MATERIAL),
          v ->
              new Kick(
                  v.get(KICK_HEIGHT), v.find(RECESS).orElse(Length.ZERO), v.get(KICK_MATERIAL)));

  private static final Key<String> FRAME_MATERIAL =
      Key.required("material", Words.material(Material.Kind.BOARD), "solid wood, of kind board");
  private static final Key<Length> STILE =
      Key.required("stile", Words.length("10 mm", "300 mm"), "width of the outer stiles");
  private static final Key<Length> MIDDLE_STILE =
      Key.optional(
          "middle-stile",
          Words.length("10 mm", "300 mm"),
          "none; the partitions show",
          "width of a stile in front of each partition");
  private static final Key<Length> TOP_RAIL =
      Key.required("top-rail", Words.length("10 mm", "500 mm"), "width of the top rail");
  private static final Key<Length> BOTTOM_RAIL =
      Key.required(
          "bottom-rail",
          Words.length("10 mm", "500 mm"),
          "width of the bottom rail, level with the bottom's upper face");
  private static final Key<Length> OVERHANG =
      Key.optional(
          "overhang",
          Words.length("0 mm", "100 mm"),
          "0",
          "of the outer stiles beyond the outside of the sides");
  private static final Key<FaceFrame.Scribe> SCRIBE =
      Key.optional(
          "scribe",
          Words.choice(FaceFrame.Scribe.class),
          "none",
          "which stiles are cut wider, to be fitted to a wall");
  static final Form<FaceFrame> FACE_FRAME =
      Form.of(
          "a face frame",
          List.of(FRAME_MATERIAL, STILE, MIDDLE_STILE, TOP_RAIL, BOTTOM_RAIL, OVERHANG, SCRIBE),
          v ->
              new FaceFrame(
                  v.get(FRAME_MATERIAL),
                  v.get(STILE),
                  v.find(MIDDLE_STILE),
                  v.get(TOP_RAIL),
                  v.get(BOTTOM_RAIL),
                  v.find(OVERHANG).orElse(Length.ZERO),
                  v.find(SCRIBE).orElse(FaceFrame.Scribe.NONE)));

  private static final int MOST_PLATES = 8;
  private static final Key<Doors.Kind> DOOR_KIND =
      Key.required(
          "kind",
          Words.choice(Doors.Kind.class),
          "inset between the sides, or overlay in front of them");
  private static final Key<Integer> PER_BAY =
      Key.optional("per-bay", Words.whole(1, 2), "1", "doors in front of each bay");
  private static final Key<Length> DOOR_THICKNESS =
      Key.required("thickness", Words.length("3 mm", "60 mm"), "of the doors");
  private static final Key<Length> GAP =
      Key.required(
          "gap",
          Words.length("0.5 mm", "20 mm"),
          "round an inset door, and between door and shelves");
  private static final Key<List<Length>> PLATE_HEIGHTS =
      Key.required(
          "plate-heights",
          new ListOf<>(Words.length("10 mm", "5 m"), MOST_PLATES),
          "of the hinge plates' centres above the foot of the case, rising");
  private static final Key<Length> PLATE_SETBACK =
      Key.required(
          "plate-setback",
          Words.length("5 mm", "150 mm"),
          "from the front of the sides to the hinge plate's centre line");
  private static final Key<Length> PLATE_LENGTH =
      Key.required(
          "plate-length",
          Words.length("5 mm", "200 mm"),
          "of a hinge plate, along the height of the side");
  private static final Key<Length> PLATE_WIDTH =
      Key.required(
          "plate-width", Words.length("5 mm", "120 mm"), "of a hinge plate, across the side");
  private static final Key<List<Doors.Hang>> HANGS =
      Key.optional(
          "hangs",
          new ListOf<>(Words.choice(Doors.Hang.class), CaseOrder.MOST_BAYS),
          "left",
          "on which side of its bay a single door hangs: one for all, or one for each bay");
  private static final Key<Length> OVER =
      Key.optional(
          "over",
          Words.length("1 mm", "100 mm"),
          "to the outside of the case, and to half a gap from the middle between two bays",
          "how far an overlay door lies over what surrounds its opening");
  static final Form<Doors> DOORS =
      new Form<>(
          "doors",
          List.of(
              DOOR_KIND,
              PER_BAY,
              DOOR_THICKNESS,
              GAP,
              PLATE_HEIGHTS,
              PLATE_SETBACK,
              PLATE_LENGTH,
              PLATE_WIDTH,
              HANGS,
              OVER),
          List.of(),
          PanelForms::doors);

  private PanelForms() {}

  private static Optional<Back> back(Values v) {
    if (v.get(BACK_KIND) == Back.Kind.APPLIED && v.find(DEPTH).isPresent()) {
      return v.spot(DEPTH)
          .refuse("an applied back has no depth", "leave it out, or choose groove or rabbet");
    }
    return Optional.of(
        new Back(
            v.get(BACK_KIND),
            v.get(BACK_MATERIAL),
            v.find(DEPTH),
            v.find(PIECES).orElse(Back.Pieces.ONE)));
  }

  private static Optional<Doors> doors(Values v) {
    if (v.get(DOOR_KIND) == Doors.Kind.INSET && v.find(OVER).isPresent()) {
      return v.spot(OVER)
          .refuse("an inset door lies over nothing", "leave it out, or choose overlay");
    }
    if (v.find(PER_BAY).orElse(1) > 1 && v.find(HANGS).isPresent()) {
      return v.spot(HANGS)
          .refuse("of two doors, one hangs on either side", "leave it out, or choose one per bay");
    }
    return Heights.areRising(v.get(PLATE_HEIGHTS), v.spot(PLATE_HEIGHTS))
        ? Optional.of(
            new Doors(
                v.get(DOOR_KIND),
                v.find(PER_BAY).orElse(1),
                v.get(DOOR_THICKNESS),
                v.get(GAP),
                v.get(PLATE_HEIGHTS),
                v.get(PLATE_SETBACK),
                v.get(PLATE_LENGTH),
                v.get(PLATE_WIDTH),
                v.find(HANGS).orElse(List.of(Doors.Hang.LEFT)),
                v.find(OVER)))
        : Optional.empty();
  }
}
