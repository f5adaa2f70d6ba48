package fourpin.shop.file;

import fourpin.job.Back;
import fourpin.job.Bay;
import fourpin.job.CaseOrder;
import fourpin.job.Doors;
import fourpin.job.Drawers;
import fourpin.job.Edging;
import fourpin.job.FaceFrame;
import fourpin.job.Kick;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Sizes;
import fourpin.measure.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A case. */
final class CaseForm {

  private static final int MOST_COPIES = 100;

  private static final Key<Length> WIDTH =
      Key.required("width", Words.length("100 mm", "8 m"), "from left to right");
  private static final Key<Length> HEIGHT =
      Key.required("height", Words.length("100 mm", "5 m"), "from the foot up");
  private static final Key<Length> DEPTH =
      Key.required("depth", Words.length("50 mm", "2 m"), "from front to back");
  private static final List<Key<?>> SIZE_KEYS = List.of(WIDTH, HEIGHT, DEPTH);

  private static final Key<Sizes> OUTSIDE =
      Key.optional(
          "outside",
          sizes("outside sizes", Sizes.Measured.OUTSIDE),
          "",
          "sizes over everything but overlay doors");
  private static final Key<Sizes> INSIDE =
      Key.optional(
          "inside",
          sizes("inside sizes", Sizes.Measured.INSIDE),
          "",
          "sizes between the outer sides, bottom and top, from the front of the sides to the back");
  private static final Key<Integer> QUANTITY =
      Key.optional("quantity", Words.whole(1, MOST_COPIES), "1", "how many are made of this case");
  private static final Key<String> MATERIAL =
      Key.required(
          "material",
          Words.material(Material.Kind.SHEET, Material.Kind.BOARD),
          "of sides, partitions, top, bottom and fixed shelves");
  private static final Key<List<BayForm.Stated>> BAYS =
      Key.optional(
          "bays",
          BayForm.KIND,
          "1",
          "how many bays of equal width, or a list of bays from left to right");
  private static final Key<PanelForms.Joints> JOINTS =
      Key.optional(
          "joints",
          PanelForms.JOINTS,
          "rabbet for the top, else dado",
          "how the ends of panels are held");
  private static final Key<Back> BACK =
      Key.optional("back", PanelForms.BACK, "none", "the back panel");
  private static final Key<Kick> KICK =
      Key.optional("kick", PanelForms.KICK, "none", "the board under the bottom");
  private static final Key<FaceFrame> FACE_FRAME =
      Key.optional(
          "face-frame", PanelForms.FACE_FRAME, "none", "a frame of solid wood on the front");
  private static final Key<Doors> DOORS =
      Key.optional(
          "doors", PanelForms.DOORS, "none", "doors, for the room that they and their hinges take");
  private static final Key<Drawers> DRAWERS =
      Key.optional(
          "drawers",
          DrawerForm.FORM,
          "none",
          "drawers, for how they tip the case when they are out");
  private static final Key<List<EdgingForm.Stated>> EDGING =
      Key.optional(
          "edging", EdgingForm.KIND, "none", "on sides, partitions, top, bottom and fixed shelves");
  private static final Key<String> STANDS_ON =
      Key.optional(
          "stands-on",
          Words.ofCase(),
          "the floor",
          "the case above which this one stands, middle over middle, backs in line");
  private static final Key<Map<Setting, SettingValue>> SETTINGS =
      Key.optional(
          "settings", SettingsForm.FORM, "the job's", "settings of this case, over the job's");

  static final Form<CaseOrder> FORM =
      new Form<>(
          "a case",
          Stream.of(
                  List.<Key<?>>of(QUANTITY, OUTSIDE, INSIDE, MATERIAL, BAYS),
                  BayForm.COMMON,
                  List.<Key<?>>of(
                      EDGING, JOINTS, BACK, KICK, FACE_FRAME, DOORS, DRAWERS, STANDS_ON, SETTINGS))
              .flatMap(List::stream)
              .toList(),
          List.of(Form.Pick.one(OUTSIDE, INSIDE), BayForm.ONE_LOAD),
          CaseForm::make);

  private CaseForm() {}

  private static Form<Sizes> sizes(String what, Sizes.Measured measured) {
    return Form.of(
        what, SIZE_KEYS, v -> new Sizes(measured, v.get(WIDTH), v.get(HEIGHT), v.get(DEPTH)));
  }

  private static Optional<CaseOrder> make(Values v) {
    int before = v.spot().problems().size();
    Optional<BayForm.Stated> all = BayForm.make(v);
    List<Bay> bays = all.map(a -> bays(v, a)).orElse(List.of());
    List<Edging> edging =
        EdgingForm.on(v.find(EDGING).orElse(List.of()), v.context().material(v.get(MATERIAL)));
    Settings settings = v.context().settings().with(v.find(SETTINGS).orElse(Map.of()));
    Optional<Load> load = all.flatMap(BayForm.Stated::load);
    v.find(DOORS).ifPresent(doors -> hung(v, doors, bays.size()));
    return v.spot().problems().size() == before
        ? Optional.of(order(v, bays, edging, load, settings))
        : Optional.empty();
  }

  private static void hung(Values v, Doors doors, int bays) {
    if (doors.hangs().size() > 1 && doors.hangs().size() != bays) {
      v.spot(DOORS)
          .refuse(
              "it is stated how "
                  + doors.hangs().size()
                  + " doors hang, and there are "
                  + bays
                  + " bays",
              "state hangs once for all bays, or once for each");
    }
  }

  private static List<Bay> bays(Values v, BayForm.Stated all) {
    return v.find(BAYS).orElse(List.of(BayForm.Stated.NOTHING)).stream()
        .flatMap(b -> b.in(all, v.get(MATERIAL), v.context()).stream())
        .toList();
  }

  private static CaseOrder order(
      Values v, List<Bay> bays, List<Edging> edging, Optional<Load> load, Settings settings) {
    PanelForms.Joints joints = v.find(JOINTS).orElse(PanelForms.Joints.STANDARD);
    return new CaseOrder(
        v.name(),
        v.find(QUANTITY).orElse(1),
        v.find(OUTSIDE).or(() -> v.find(INSIDE)).orElseThrow(),
        v.get(MATERIAL),
        bays,
        joints.top(),
        joints.bottom(),
        joints.partitions(),
        joints.fixedShelves(),
        v.find(BACK),
        v.find(KICK),
        v.find(FACE_FRAME),
        v.find(DOORS),
        edging,
        load,
        settings,
        v.find(STANDS_ON),
        v.find(DRAWERS));
  }
}
