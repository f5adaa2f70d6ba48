package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.answer;
import static fourpin.boring.way.ToolKit.bit;
import static fourpin.boring.way.ToolKit.borer;
import static fourpin.boring.way.ToolKit.bushing;
import static fourpin.boring.way.ToolKit.centring;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.drill;
import static fourpin.boring.way.ToolKit.press;
import static fourpin.boring.way.ToolKit.router;
import static fourpin.boring.way.ToolKit.routerBit;
import static fourpin.boring.way.ToolKit.routing;
import static fourpin.boring.way.ToolKit.sheet;
import static fourpin.boring.way.ToolKit.strap;
import static fourpin.boring.way.ToolKit.strip;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.job.Back;
import fourpin.job.CaseDraft;
import fourpin.job.FaceFrame;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.job.Tool;
import fourpin.job.Tool.StripKind;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is said of each way where something speaks against it; one table, and so a long file. Holes
 * are 1/4 in, 3/8 in deep, 1 in apart, in sides of 84 x 12 x 23/32 in; rows lie 1 1/2 in from the
 * front edge and 2 5/32 in from the back edge and are 67 in long. A nose of 3/8 in runs in guide
 * holes 0.005 in wider.
 */
class WayReasonsTest {

  private static final String GUIDE_BIT =
      "a bit of 25/64 in for making the guide is taken for granted|state it among the tools";

  private static final String ROUTER_OVER_THE_EDGE =
      "along the row the router's base stands 1 1/2 in over the edge of the guide|lay a packing"
          + " strip as thick as the guide alongside it";

  private static final String BACK_AWAY =
      "the base of router reaches 3 in beyond the bit, and behind a row the back stands 1 9/16 in"
          + " away|bore before assembly, take a router whose base is no wider than 3 1/8 in, or set"
          + " back-row to 2 15/16 in or more, or screw the back on after boring";

  private static final String STATE_ONE = "state one in the shop file";
  private static final String GAUGED =
      "the stile before left side covers its front edge: gauge the rows from the back of the"
          + " stile|bore before assembly, or put the face frame on when the rows are bored";
  private static final String EARLIER = "bore before assembly";

  /** One row of the table. @param says each reason with its remedy after a bar */
  private record Told(
      String when,
      Way way,
      Consumer<CaseDraft> change,
      List<Tool> tools,
      Verdict verdict,
      List<String> says) {
    @Override
    public String toString() {
      return way.key() + ": " + when;
    }
  }

  private static Told no(String when, Way way, List<Tool> tools, String... says) {
    return no(when, way, _ -> {}, tools, says);
  }

  private static Told no(
      String when, Way way, Consumer<CaseDraft> change, List<Tool> tools, String... says) {
    return new Told(when, way, change, tools, Verdict.NOT_POSSIBLE, List.of(says));
  }

  private static Told changed(
      String when, Way way, Consumer<CaseDraft> change, List<Tool> tools, String... says) {
    return new Told(when, way, change, tools, Verdict.IF_CHANGED, List.of(says));
  }

  private static Told can(
      String when, Way way, Consumer<CaseDraft> change, List<Tool> tools, String... says) {
    return new Told(when, way, change, tools, Verdict.POSSIBLE, List.of(says));
  }

  private static Consumer<CaseDraft> with(Setting setting, String inches) {
    return d -> d.settings = d.settings.with(setting, new SettingValue.OfLength(in(inches)));
  }

  /** 10 in outside leave 8 9/16 in between the sides. */
  private static void narrow(CaseDraft draft) {
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("10"), in("84"), in("12"));
    standing(draft);
  }

  private static void standing(CaseDraft draft) {
    SettingValue after = new SettingValue.OfChoice("after-assembly");
    draft.settings = draft.settings.with(Setting.DRILL, after);
  }

  private static Consumer<CaseDraft> on(Support support) {
    return d -> d.bays = List.of(ToolKit.on(support));
  }

  private static void framed(CaseDraft draft) {
    framed(draft, "1 1/2");
  }

  /** With a back that is fastened when the rows are bored. */
  private static Consumer<CaseDraft> openBehind(Consumer<CaseDraft> change) {
    return change.andThen(
        d ->
            d.back =
                Optional.of(new Back(Back.Kind.RABBET, "back", Optional.empty(), Back.Pieces.ONE)));
  }

  private static void framed(CaseDraft draft, String stile) {
    standing(draft);
    draft.faceFrame =
        Optional.of(
            new FaceFrame(
                "oak",
                in(stile),
                Optional.empty(),
                in("2"),
                in("2"),
                in("0"),
                FaceFrame.Scribe.NONE));
  }

  private static String chuck(String drill, String room) {
    return "the chuck of "
        + drill
        + " reaches 7/8 in beside the bit, and before a row a stile of the face frame stands "
        + room
        + " in away|bore before assembly, put the face frame on when the rows are bored, take a"
        + " longer bit, set front-row to 7/8 in or more, or measure the chuck and set chuck-radius";
  }

  private static Support standards() {
    return standards(Support.Mounting.LET_IN);
  }

  private static Support standards(Support.Mounting mounting) {
    return new Support.Standards(
        mounting, in("5/8"), in("3/16"), in("1/2"), in("1/4"), in("1/16"), in("1/8"), in("96"));
  }

  private static Support cleats() {
    return cleats("1 1/2");
  }

  private static Support cleats(String width) {
    return new Support.Cleats("oak", in(width), in("3/4"), in("1 1/2"), in("1 1/4"), in("5/8"));
  }

  static Stream<Told> hardboardStrip() {
    return Stream.of(
        no(
            "no tools",
            Way.HARDBOARD_STRIP,
            List.of(),
            "no hand drill is stated|" + STATE_ONE,
            "no plain bit of 1/4 in is stated|" + STATE_ONE,
            "no strip of perforated hardboard is stated|" + STATE_ONE),
        no(
            "a bit wider than the holes",
            Way.HARDBOARD_STRIP,
            List.of(drill(), bit(), strip("3/16", "1")),
            "bit 1/4 in does not go through the strip's holes of 3/16 in|take a strip with wider"
                + " holes"),
        no(
            "a bit that wobbles",
            Way.HARDBOARD_STRIP,
            List.of(drill(), bit(), strip("9/32", "1")),
            "bit 1/4 in has 1/32 in of play in the strip's holes of 9/32 in|take a strip with"
                + " narrower holes, or set strip-play to 1/32 in"),
        no(
            "a bit too short for hole and strip",
            Way.HARDBOARD_STRIP,
            List.of(drill(), bit("1/4", "1/2"), strip("1/4", "1")),
            "hole and guide take 5/8 in, and bit reaches 1/2 in|take a longer bit, or use a thinner"
                + " guide"),
        no(
            "no room for the drill",
            Way.HARDBOARD_STRIP,
            WayReasonsTest::narrow,
            List.of(drill(), bit(), strip("1/4", "1")),
            "drill needs 9 1/2 in before the face, and bay 1 is 8 9/16 in wide|bore before"
                + " assembly, or take a shorter tool"),
        no(
            "a back 5/16 in behind the row",
            Way.HARDBOARD_STRIP,
            with(Setting.BACK_ROW, "1/4").andThen(WayReasonsTest::standing),
            List.of(drill(), bit(), strip("1/4", "1")),
            "strip reaches 3/4 in behind its holes, and the back stands 5/16 in behind a row|saw it to"
                + " a width of 1 1/16 in and state that, or bore before assembly"),
        no(
            "one hole is no strip",
            Way.HARDBOARD_STRIP,
            List.of(drill(), bit(), ToolKit.strip(StripKind.HARDBOARD, "1/4", "1", "1")),
            "strip is too short to be stepped along rows 67 in long|take a longer piece, or set"
                + " rows to full so that there is a hole for the pin"),
        changed(
            "a pitch that is no multiple",
            Way.HARDBOARD_STRIP,
            _ -> {},
            List.of(drill(), bit(), strip("1/4", "3/4")),
            "strip gives 3/4 in, not 1 in: 90 levels instead of 68|set pitch to 3/4 in",
            HOLES_AT_ITS_PITCH),
        changed(
            "no pins",
            Way.HARDBOARD_STRIP,
            on(standards()),
            List.of(drill(), bit(), strip("1/4", "1")),
            "the bays stand on standards|state pins"),
        // 24 spaces of 1 in; the piece is 1/2 in shorter from its first hole on.
        can(
            "a piece cut down since its pitch was measured",
            Way.HARDBOARD_STRIP,
            _ -> {},
            List.of(drill(), bit(), ToolKit.strip(StripKind.HARDBOARD, "1/4", "1", "24")),
            "the pitch of strip was measured over 24 in, and from its first hole to its far end it"
                + " is 23 1/2 in long|nothing, if the piece was cut down since; else check over,"
                + " spaces and length in the shop file"),
        can(
            "a piece just long enough to have measured its pitch on",
            Way.HARDBOARD_STRIP,
            _ -> {},
            List.of(drill(), bit(), ToolKit.strip(StripKind.HARDBOARD, "1/4", "1", "24 1/2"))),
        can(
            "tools that fit",
            Way.HARDBOARD_STRIP,
            _ -> {},
            List.of(drill(), bit(), strip("1/4", "1"))));
  }

  static Stream<Told> centringGuide() {
    List<Tool> kit = List.of(drill(), centring("3/8", "3/8", "1"), sheet());
    return Stream.of(
        no(
            "no tools",
            Way.CENTRING_GUIDE,
            List.of(),
            "no hand drill is stated|" + STATE_ONE,
            "no self-centring bit of 1/4 in is stated|" + STATE_ONE,
            "no stock for guides is stated|" + STATE_ONE),
        no(
            "a bit too short for hole and guide",
            Way.CENTRING_GUIDE,
            List.of(drill(), centring("3/8", "3/8", "1/2"), sheet()),
            "hole and guide take 5/8 in, and centring bit reaches 1/2 in|take a longer bit, or use"
                + " a thinner guide"),
        no(
            "stock that is not wide enough",
            Way.CENTRING_GUIDE,
            List.of(drill(), centring("3/8", "3/8", "1"), sheet("1/4", "96", "3")),
            "the guide is 3 21/32 in wide and sheet is 3 in|take wider stock"),
        no(
            "stock that is not long enough",
            Way.CENTRING_GUIDE,
            List.of(drill(), centring("3/8", "3/8", "1"), sheet("1/4", "6", "4")),
            "a guide from sheet is too short to be stepped along rows 67 in long|take a longer"
                + " piece, or set rows to full so that there is a hole for the pin"),
        no(
            "no room for the drill",
            Way.CENTRING_GUIDE,
            WayReasonsTest::narrow,
            kit,
            "drill needs 9 1/2 in before the face, and bay 1 is 8 9/16 in wide|bore before"
                + " assembly, or take a shorter tool"),
        no(
            "no wood between the first hole and the panel that the guide stands on",
            Way.CENTRING_GUIDE,
            with(Setting.CLEAR_BELOW, "1/4").andThen(WayReasonsTest::standing),
            kit,
            "the lowest hole lies 1/4 in above the panel below, and a guide that stands there needs"
                + " ≈ 0.383 in|set clear-below to 0.383 in or more, or bore before assembly"),
        no(
            "a back row at the back",
            Way.CENTRING_GUIDE,
            with(Setting.BACK_ROW, "1/4").andThen(WayReasonsTest::standing),
            kit,
            "the back row lies too near to the back for a guide with holes of 25/64 in|" + EARLIER),
        // 25/128 in to the edge of the guide's hole and 3/16 in of wood, less 1/4 in.
        no(
            "a front row at the face frame",
            Way.CENTRING_GUIDE,
            with(Setting.FRONT_ROW, "1/4").andThen(WayReasonsTest::framed),
            kit,
            chuck("drill", "1/4"),
            "the guide would stand ≈ 0.133 in over the front edge, where the face frame is|"
                + EARLIER
                + ", or set the front row further back"),
        can(
            "a guide that lies at the back of a stile",
            Way.CENTRING_GUIDE,
            WayReasonsTest::framed,
            kit,
            GUIDE_BIT,
            "stiles stand before front edges: the guide's edge, or its spacer, lies at the back of"
                + " the stile|see that no glue stands in the corner"),
        no(
            "a stile that ends level with the side",
            Way.CENTRING_GUIDE,
            d -> framed(d, "23/32"),
            kit,
            "the stile before left side covers its front edge and ends level with its face, so that"
                + " a guide finds nothing to lie at|bore before assembly, or put the face frame on"
                + " when the rows are bored, or give it stiles that reach into the bay"),
        can(
            "a stile that leaves the arris of the side free",
            Way.CENTRING_GUIDE,
            d -> framed(d, "1/2"),
            kit,
            GUIDE_BIT),
        can(
            "a front row at an open front",
            Way.CENTRING_GUIDE,
            with(Setting.FRONT_ROW, "1/4").andThen(WayReasonsTest::standing),
            kit,
            GUIDE_BIT),
        // Common practice: chucks are about 1 3/4 in across. The stile stands 25/32 in over the
        // face.
        no(
            "a stile that the chuck strikes",
            Way.CENTRING_GUIDE,
            with(Setting.FRONT_ROW, "3/4").andThen(WayReasonsTest::framed),
            kit,
            chuck("drill", "3/4")),
        can("tools that fit", Way.CENTRING_GUIDE, _ -> {}, kit, GUIDE_BIT),
        can(
            "a bit for the guide that fits closer than the next sixty-fourth",
            Way.CENTRING_GUIDE,
            _ -> {},
            List.of(
                drill(),
                centring("3/8", "3/8", "1"),
                sheet(),
                new Tool.PlainBit(
                    "bit for guides", in("0.385"), in("0"), in("3"), Optional.empty()))));
  }

  static Stream<Told> routerGuide() {
    return Stream.of(
        no(
            "no tools",
            Way.ROUTER_GUIDE,
            List.of(),
            "no plunge router is stated|" + STATE_ONE,
            "no guide bushing is stated|" + STATE_ONE,
            "no router bit of 1/4 in is stated|" + STATE_ONE,
            "no stock for guides is stated|" + STATE_ONE),
        no(
            "a barrel through the guide",
            Way.ROUTER_GUIDE,
            routing(bushing("3/8", "5/16", "5/16")),
            "barrel 5/16 in is longer than the 1/4 in guide|use another guide thickness, or trim"
                + " the barrel to less than 1/4 in"),
        no(
            "a barrel down to the panel",
            Way.ROUTER_GUIDE,
            routing(bushing("3/8", "5/16", "1/4")),
            "barrel 1/4 in is as long as the guide is thick|use another guide thickness, or trim"
                + " the barrel to less than 1/4 in"),
        no(
            "a bit as wide as the bore",
            Way.ROUTER_GUIDE,
            routing(bushing("5/16", "1/4", "3/16")),
            "bit 1/4 in does not run free in the bushing's bore of 1/4 in|use a wider bushing"),
        no(
            "a bit too short",
            Way.ROUTER_GUIDE,
            List.of(router("2"), bushing("3/8", "5/16", "3/16"), routerBit("1/2"), sheet()),
            "hole and guide take 5/8 in, and router bit reaches 1/2 in|take a longer bit, or use a"
                + " thinner guide"),
        no(
            "a router that plunges too little",
            Way.ROUTER_GUIDE,
            List.of(router("1/2"), bushing("3/8", "5/16", "3/16"), routerBit("1"), sheet()),
            "hole and guide take 5/8 in, and router plunges 1/2 in|take another router, or use a"
                + " thinner guide"),
        no(
            "no room for the router",
            Way.ROUTER_GUIDE,
            WayReasonsTest::narrow,
            routing(bushing("3/8", "5/16", "3/16")),
            "router needs 10 1/4 in before the face, and bay 1 is 8 9/16 in wide|bore before"
                + " assembly, or take a shorter tool",
            BACK_AWAY),
        // Clear 79 1/16 in, holes from 1 in to 78 in above the panel below.
        no(
            "a base that strikes the back and the panels below and above",
            Way.ROUTER_GUIDE,
            with(Setting.CLEAR_BELOW, "1")
                .andThen(with(Setting.CLEAR_ABOVE, "1"))
                .andThen(WayReasonsTest::standing),
            routing(bushing("3/8", "5/16", "3/16")),
            BACK_AWAY,
            "the base of router reaches 3 in beyond the bit, and below a hole a panel stands 1 in"
                + " away|bore before assembly, take a router whose base is no wider than 2 in, or set"
                + " clear-below to 3 in or more",
            "the base of router reaches 3 in beyond the bit, and above a hole a panel stands 1"
                + " 1/16 in away|bore before assembly, take a router whose base is no wider than 2"
                + " 1/8 in, or set clear-above to 2 15/16 in or more"),
        can(
            "a standing case whose back is screwed on after boring",
            Way.ROUTER_GUIDE,
            openBehind(WayReasonsTest::standing),
            routing(bushing("3/8", "5/16", "3/16")),
            ROUTER_OVER_THE_EDGE,
            GUIDE_BIT),
        // The stile is 1 1/2 in wide before 23/32 in of side, and stands 17/32 in over the guide.
        no(
            "a stile that the base strikes",
            Way.ROUTER_GUIDE,
            openBehind(WayReasonsTest::framed),
            routing(bushing("3/8", "5/16", "3/16")),
            "the base of router reaches 3 in beyond the bit, and before a row a stile of the face"
                + " frame stands 1 1/2 in away|bore before assembly, take a router whose base is no"
                + " wider than 3 in, or set front-row to 3 in or more"),
        no(
            "all that is wrong with one set is told at once",
            Way.ROUTER_GUIDE,
            List.of(router("1/2"), bushing("5/16", "1/4", "5/16"), routerBit("1/2"), sheet()),
            "barrel 5/16 in is longer than the 1/4 in guide|use another guide thickness, or trim"
                + " the barrel to less than 1/4 in",
            "bit 1/4 in does not run free in the bushing's bore of 1/4 in|use a wider bushing",
            "hole and guide take 5/8 in, and router bit reaches 1/2 in|take a longer bit, or use a"
                + " thinner guide",
            "hole and guide take 5/8 in, and router plunges 1/2 in|take another router, or use a"
                + " thinner guide"),
        can(
            "a base of 6 in over a guide whose holes lie 1 1/2 in from its edge",
            Way.ROUTER_GUIDE,
            _ -> {},
            routing(bushing("3/8", "5/16", "3/16")),
            ROUTER_OVER_THE_EDGE,
            GUIDE_BIT),
        can(
            "a guide of 1/2 in takes a barrel of 5/16",
            Way.ROUTER_GUIDE,
            _ -> {},
            List.of(
                router("2"),
                bushing("3/8", "5/16", "5/16"),
                routerBit("1"),
                sheet("1/2", "96", "4")),
            ROUTER_OVER_THE_EDGE,
            GUIDE_BIT));
  }

  static Stream<Told> steelStrap() {
    return Stream.of(
        no(
            "no tools",
            Way.STEEL_STRAP,
            List.of(),
            "no hand drill or drill press is stated|" + STATE_ONE,
            "no self-centring bit of 1/4 in is stated|" + STATE_ONE,
            "no perforated steel strap is stated|" + STATE_ONE),
        no(
            "a tip that does not enter",
            Way.STEEL_STRAP,
            List.of(drill(), centring("3/8", "5/16", "1"), strap("3/4")),
            "the nose does not enter the strap's holes of 5/16 in: it is 5/16 in at its tip|take a"
                + " strap with wider holes, or a bit with a finer nose"),
        no(
            "a nose that falls through",
            Way.STEEL_STRAP,
            List.of(drill(), centring("5/16", "9/32", "1"), strap("1")),
            "the nose of 5/16 in falls through the strap's holes of 5/16 in|take a strap with"
                + " narrower holes, or a bit with a wider nose"),
        no(
            "a bit too short",
            Way.STEEL_STRAP,
            List.of(drill(), centring("3/8", "9/32", "3/8"), strap("1")),
            "hole and guide take 7/16 in, and centring bit reaches 3/8 in|take a longer bit, or use"
                + " a thinner guide"),
        no(
            "a standing case and a drill press",
            Way.STEEL_STRAP,
            WayReasonsTest::standing,
            List.of(press("6", "10", "2"), centring("3/8", "9/32", "1"), strap("1")),
            "a standing case does not go under press|" + EARLIER),
        no(
            "a drill press that does not reach the back row",
            Way.STEEL_STRAP,
            List.of(press("2", "10", "2"), centring("3/8", "9/32", "1"), strap("1")),
            "a row lies 2 5/32 in from the nearer edge, and the throat of press is 2 in|bore that"
                + " row by another way"),
        changed(
            "3/4 in for 1 in",
            Way.STEEL_STRAP,
            _ -> {},
            List.of(drill(), centring("3/8", "9/32", "1"), strap("3/4")),
            "strip gives 3/4 in, not 1 in: 90 levels instead of 68|set pitch to 3/4 in",
            HOLES_AT_ITS_PITCH),
        can(
            "tools that fit",
            Way.STEEL_STRAP,
            _ -> {},
            List.of(drill(), centring("3/8", "9/32", "1"), strap("1")),
            "the taper of the nose must seat in the strap before its tip reaches the wood, and a"
                + " thin strap may let the tip through first|measure the taper and state"
                + " nose-length; or try it in scrap, and if the tip comes down first, take a thicker"
                + " strap or a bit with a shorter taper"));
  }

  static Stream<Told> drillPress() {
    return Stream.of(
        no(
            "no tools",
            Way.DRILL_PRESS,
            List.of(),
            "no drill press is stated|" + STATE_ONE,
            "no plain bit of 1/4 in is stated|" + STATE_ONE),
        no(
            "a standing case",
            Way.DRILL_PRESS,
            WayReasonsTest::standing,
            List.of(press("6", "10", "2"), bit()),
            "a standing case does not go under press|" + EARLIER),
        no(
            "a short throat",
            Way.DRILL_PRESS,
            List.of(press("2", "10", "2"), bit()),
            "a row lies 2 5/32 in from the nearer edge, and the throat of press is 2 in|bore that"
                + " row by another way"),
        no(
            "blocks of 3/4 in under the panel",
            Way.DRILL_PRESS,
            List.of(press("6", "1 1/4", "2"), bit()),
            "panel and blocks take 1 15/32 in, and under the bit of press there is 1 1/4 in|use"
                + " thinner blocks"),
        no(
            "a short stroke",
            Way.DRILL_PRESS,
            List.of(press("6", "10", "7/16"), bit()),
            "hole and point of the bit take 1/2 in, and the stroke of press is 7/16 in|bore less"
                + " deep"),
        can(
            "a stroke that is just enough for 3/8 in and a point of 1/8 in",
            Way.DRILL_PRESS,
            _ -> {},
            List.of(press("6", "10", "1/2"), bit()),
            "a panel stands 2 in over the table|stand a rest of the table's height beside it"),
        can(
            "a table of 10 in",
            Way.DRILL_PRESS,
            _ -> {},
            List.of(press("6", "10", "2"), bit()),
            "a panel stands 2 in over the table|stand a rest of the table's height beside it"));
  }

  static Stream<Told> machine() {
    return Stream.of(
        no("no machine", Way.MACHINE, List.of(), "no boring machine is stated|" + STATE_ONE),
        no(
            "a standing case",
            Way.MACHINE,
            WayReasonsTest::standing,
            List.of(borer("96", "48", "1/4")),
            "a standing case does not go on borer|" + EARLIER),
        no(
            "a bit of another size",
            Way.MACHINE,
            List.of(borer("96", "48", "3/16")),
            "borer has no bit of 1/4 in|buy one and state it, or choose other pins"),
        no(
            "a short and narrow bed",
            Way.MACHINE,
            List.of(borer("80", "11", "1/4")),
            "a panel is 84 in long, and borer takes 80 in|bore this case by another way",
            "a panel is 12 in wide, and borer takes 11 in|bore this case by another way"),
        changed(
            "spindles that stand 32 mm apart",
            Way.MACHINE,
            _ -> {},
            List.of(borer("96", "48", "1/4", "3/4")),
            "the spindles of borer stand 3/4 in apart, and the pitch of 1 in is no whole number of"
                + " that|set pitch to 3/4 in"),
        can(
            "spindles that stand half the pitch apart",
            Way.MACHINE,
            _ -> {},
            List.of(borer("96", "48", "1/4", "1/2"))));
  }

  static Stream<Told> fallbackAndOthers() {
    return Stream.of(
        can(
            "no tools",
            Way.STORY_STICK,
            _ -> {},
            List.of(),
            "a plain bit of 1/4 in is taken for granted|state it among the tools",
            "a hand drill is taken for granted|state it among the tools"),
        can(
            "no room for the drill",
            Way.STORY_STICK,
            WayReasonsTest::narrow,
            List.of(drill(), bit()),
            "the drill with its bit is 9 1/2 in long and bay 1 is 8 9/16 in wide|take a right-angle"
                + " drill, or bore before assembly"),
        can("drill and bit", Way.STORY_STICK, _ -> {}, List.of(drill(), bit())),
        can(
            "a stile before the front edge",
            Way.STORY_STICK,
            WayReasonsTest::framed,
            List.of(drill(), bit()),
            GAUGED),
        can(
            "a bit so short that the chuck strikes the stile",
            Way.STORY_STICK,
            with(Setting.FRONT_ROW, "3/4").andThen(WayReasonsTest::framed),
            List.of(drill(), bit("1/4", "3/4")),
            chuck("the hand drill", "3/4"),
            GAUGED),
        can(
            "a bit that keeps the chuck off the stile",
            Way.STORY_STICK,
            with(Setting.FRONT_ROW, "3/4").andThen(WayReasonsTest::framed),
            List.of(drill(), bit("1/4", "1 1/4")),
            GAUGED),
        changed(
            "pins",
            Way.GROOVED_STANDARDS,
            _ -> {},
            List.of(),
            "the bays stand on pins|state standards"),
        changed(
            "cleats",
            Way.GROOVED_STANDARDS,
            on(cleats()),
            List.of(),
            "the bays stand on cleats|state standards"),
        changed("pins", Way.CLEAT_BLANK, _ -> {}, List.of(), "the bays stand on pins|state cleats"),
        changed(
            "standards",
            Way.CLEAT_BLANK,
            on(standards()),
            List.of(),
            "the bays stand on standards|state cleats"),
        changed(
            "cleats",
            Way.DRILL_PRESS,
            on(cleats()),
            List.of(press("6", "10", "2"), bit()),
            "the bays stand on cleats|state pins"));
  }

  private static Consumer<CaseDraft> grooved() {
    return on(standards()).andThen(with(Setting.GROOVE_PLAY, "0"));
  }

  private static Tool straight(String diameter, String reach) {
    return new Tool.RouterBit("straight bit", in(diameter), in(reach), Optional.empty());
  }

  private static Tool saw(String cut, String depth) {
    return new Tool.TableSaw("saw", in(cut), in(depth), Optional.empty());
  }

  private static final String GROOVE_BIT =
      "a router with a straight bit of 1/4 in is taken for granted|state router and bit among the"
          + " tools";

  private static final String STOPPED =
      "the grooves in left side stop at the panels between its ends and can't be sawn through with"
          + " saw|rout them";

  private static String tooWide(String tool, String cut, String take) {
    return tool
        + " cuts "
        + cut
        + " in, wider than the groove of 5/8 in|take a "
        + take
        + " of 5/8 in or less";
  }

  /** Grooves of 5/8 x 3/16 in; strips 1 1/2 x 3/4 in with holes of 1 1/2 in. */
  static Stream<Told> standardsAndCleats() {
    return Stream.of(
        can("no tools", Way.GROOVED_STANDARDS, grooved(), List.of(), GROOVE_BIT),
        can(
            "a bit wider than the groove",
            Way.GROOVED_STANDARDS,
            grooved(),
            List.of(router("2"), straight("3/4", "1")),
            tooWide("straight bit", "3/4", "straight bit"),
            GROOVE_BIT),
        can(
            "a stack of blades wider than the groove",
            Way.GROOVED_STANDARDS,
            grooved(),
            List.of(saw("13/16", "2")),
            tooWide("saw", "13/16", "blade"),
            GROOVE_BIT),
        can(
            "a bit that is too short",
            Way.GROOVED_STANDARDS,
            grooved(),
            List.of(router("2"), straight("1/4", "1/8")),
            "straight bit cuts 1/8 in deep, the groove is 3/16 in|take one that reaches deeper",
            GROOVE_BIT),
        can(
            "a saw that is too low",
            Way.GROOVED_STANDARDS,
            grooved(),
            List.of(saw("1/8", "1/8")),
            "saw cuts 1/8 in deep, the groove is 3/16 in|take one that reaches deeper",
            GROOVE_BIT),
        can(
            "a bit without a router",
            Way.GROOVED_STANDARDS,
            grooved(),
            List.of(straight("1/4", "1")),
            "no router plunges 3/16 in with straight bit|state one that does among the tools",
            GROOVE_BIT),
        can(
            "a router that plunges too little",
            Way.GROOVED_STANDARDS,
            grooved(),
            List.of(router("1/8"), straight("1/4", "1")),
            "no router plunges 3/16 in with straight bit|state one that does among the tools",
            GROOVE_BIT),
        // 5/8 in by passes of 1/4 in: three side by side.
        can(
            "a bit narrower than the groove by two passes, and a saw without a stack",
            Way.GROOVED_STANDARDS,
            grooved(),
            List.of(router("2"), straight("1/4", "1"), saw("1/8", "2")),
            STOPPED),
        can(
            "no tools",
            Way.CLEAT_BLANK,
            on(cleats()),
            List.of(),
            "a bit of 1 1/2 in that reaches 3/4 in is taken for granted|state it among the tools",
            WITHOUT_PRESS),
        can(
            "a bit of another size, one too short, and a press with a short stroke",
            Way.CLEAT_BLANK,
            on(cleats()),
            List.of(bit("1 1/4", "3"), bit("1 1/2", "1/2"), press("6", "10", "1/2")),
            "a bit of 1 1/2 in that reaches 3/4 in is taken for granted|state it among the tools",
            WITHOUT_PRESS),
        can(
            "bit and press that fit",
            Way.CLEAT_BLANK,
            on(cleats()),
            List.of(bit("1 1/2", "2"), press("6", "10", "2"))),
        // Boards are 5 1/2 in wide, kerf 1/8 in: two strips of 2 5/8 in come to 5 3/8 in.
        can(
            "boards that two strips just go into",
            Way.CLEAT_BLANK,
            on(cleats("2 5/8")),
            List.of(bit("1 1/2", "2"), press("6", "10", "2"))),
        can(
            "boards that are too narrow for two strips",
            Way.CLEAT_BLANK,
            on(cleats("2 3/4")),
            List.of(bit("1 1/2", "2"), press("6", "10", "2")),
            "a blank of two strips of 2 3/4 in and a saw cut of 1/8 in is 5 5/8 in wide, and no"
                + " board of oak is wider than 5 1/2 in|state a wider board of oak, or narrower"
                + " strips"));
  }

  private static final String BEFORE = "set drill to before-assembly";

  private static final String SCREWED_ON =
      "standards are screwed on before assembly, whatever drill says, since panels lie flat then";

  /** Standards and cleats have no rows to bore when the case stands. */
  static Stream<Told> standardsAndCleatsLater() {
    return Stream.of(
        can(
            "grooves in a standing case",
            Way.GROOVED_STANDARDS,
            grooved().andThen(WayReasonsTest::standing),
            List.of(router("2"), straight("1/4", "1")),
            "grooves can't be cut in a standing case: they are cut before assembly, whatever drill"
                + " says|"
                + BEFORE
                + ", or state standards with mounting surface, which can be screwed on later"),
        can(
            "standards screwed on in a standing case",
            Way.GROOVED_STANDARDS,
            on(standards(Support.Mounting.SURFACE)).andThen(WayReasonsTest::standing),
            List.of(drill()),
            SCREWED_ON + ", and can as well be screwed on when the case stands|" + BEFORE),
        can(
            "standards screwed on in a bay narrower than the drill is long",
            Way.GROOVED_STANDARDS,
            on(standards(Support.Mounting.SURFACE)).andThen(WayReasonsTest::narrow),
            List.of(drill()),
            SCREWED_ON
                + "; later, the drill with its bit is 9 1/2 in long and bay 1 is 8 9/16 in wide|"
                + BEFORE),
        can(
            "strips in a standing case",
            Way.CLEAT_BLANK,
            on(cleats()).andThen(WayReasonsTest::standing),
            List.of(bit("1 1/2", "2"), press("6", "10", "2")),
            "strips are bored as blanks, ripped and fastened before assembly, whatever drill says:"
                + " fastened they can't be bored through|"
                + BEFORE
                + "; bored and ripped, they can as well be fastened when the case stands"));
  }

  /** Hole 15 lies 11 in up the strip, block of 3/4 in off: over the lowest level, 90 levels. */
  private static final String HOLES_AT_ITS_PITCH =
      "at 3/4 in the holes of strip to bore through, counted from its end at the foot of the"
          + " panel, are 15 to 104; mask all others|";

  private static final String WITHOUT_PRESS =
      "without a drill press holes as large as these are hard to bore square|state a drill press"
          + " whose quill travels 3/4 in";

  @ParameterizedTest(name = "{0}")
  @MethodSource({
    "hardboardStrip",
    "centringGuide",
    "routerGuide",
    "steelStrap",
    "drillPress",
    "machine",
    "fallbackAndOthers",
    "standardsAndCleats",
    "standardsAndCleatsLater"
  })
  void should_say_what_speaks_against_a_way_and_what_would_help(Told told) {
    CaseDraft draft = draft();
    told.change().accept(draft);
    WayAnswer answer = answer(told.way(), draft.order(), told.tools());
    assertThat(answer.reasons())
        .extracting(r -> r.what() + "|" + r.remedy())
        .containsExactlyElementsOf(told.says());
    assertThat(answer.verdict()).isEqualTo(told.verdict());
  }

  private static final Pattern LENGTHS =
      Pattern.compile("(?<!bay )(≈ )?((\\d+ )?\\d+/\\d+|\\d+\\.\\d+|\\d+) in(?! all|[a-z])");

  /** Whatever a sentence states is a figure of the answer or of the bay, or what one comes from. */
  @ParameterizedTest(name = "{0}")
  @MethodSource({
    "hardboardStrip",
    "centringGuide",
    "routerGuide",
    "steelStrap",
    "drillPress",
    "machine",
    "fallbackAndOthers",
    "standardsAndCleats",
    "standardsAndCleatsLater"
  })
  void should_show_the_working_of_every_length_that_it_states(Told told) {
    CaseDraft draft = draft();
    told.change().accept(draft);
    Job job = job(draft.order()).with(new Shop("shop", told.tools()));
    WayAnswer answer = WaysTest.ways(job).borings().getFirst().answer(told.way());
    Set<String> known =
        Stream.concat(answer.figures().stream(), ToolKit.patterns(job))
            .flatMap(f -> Stream.concat(Stream.of(f.value()), inputs(f)))
            .flatMap(q -> printed(job, q))
            .collect(Collectors.toSet());
    assertThat(answer.reasons())
        .allSatisfy(
            reason ->
                assertThat(LENGTHS.matcher(reason.what() + " " + reason.remedy()).results())
                    .extracting(MatchResult::group)
                    .isSubsetOf(known));
  }

  private static Stream<String> printed(Job job, Quantity quantity) {
    return switch (quantity.unit()) {
      case LENGTH -> Stream.of(job.style().text(quantity.length().abs()));
      case DIAMETER -> Stream.of(job.style().diameter(quantity.length()));
      default -> Stream.empty();
    };
  }

  private static Stream<Quantity> inputs(Figure figure) {
    return figure.inputs().stream().map(Figure.Input::value);
  }
}
