package fourpin.job;

import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import java.util.List;
import java.util.Optional;

/**
 * Everything that makers disagree about, and every number of the trade that no reference table
 * holds: with its kind, its range, where it comes from, and a default for jobs in inches and one
 * for jobs in millimetres. An empty default means that there is no value unless the job sets one.
 *
 * <p>Values, defaults and limits are written as in a job file. One table, and so a long file.
 */
public enum Setting {
  PITCH(
      "pitch",
      Kind.LENGTH,
      "1 in",
      "32 mm",
      "8 mm",
      "200 mm",
      "height from hole to hole",
      practice("1 in with 1/4 in pins, 32 mm with 5 mm pins, by habit")),
  FIRST_HOLE(
      "first-hole",
      Kind.LENGTH,
      "",
      "",
      "5 mm",
      "2 m",
      "height of the lowest hole above the foot of the case; without it, the lowest that the zone without holes allows",
      practice("37, 38 or 44.5 mm from the panel's end in the 32 mm system, by shop")),
  CLEAR_BELOW(
      "clear-below",
      Kind.LENGTH,
      "6 in",
      "150 mm",
      "0 mm",
      "1 m",
      "zone without holes above a bottom or fixed shelf",
      practice("outermost holes 6 in from top and bottom; others 8 in up")),
  CLEAR_ABOVE(
      "clear-above",
      Kind.LENGTH,
      "6 in",
      "150 mm",
      "0 mm",
      "1 m",
      "zone without holes below a top or fixed shelf",
      practice("outermost holes 6 in from top and bottom")),
  ROWS(
      "rows",
      List.of("full", "grouped"),
      "full",
      "rows of holes over the whole height, or groups round the planned shelves",
      practice("full rows, or three holes a planned shelf")),
  GROUP(
      "group",
      Kind.COUNT,
      "3",
      "3",
      "1",
      "15",
      "holes in a group, the planned one in the middle (odd)",
      practice("planned height, one above, one below")),
  BALANCE(
      "balance",
      List.of("free", "balanced"),
      "free",
      "balanced rows are the same from both ends of a panel, so that it may be turned end for end",
      practice("a choice of the shop")),
  FRONT_ROW(
      "front-row",
      Kind.LENGTH,
      "1 1/2 in",
      "37 mm",
      "8 mm",
      "150 mm",
      "from the shelf's front edge to the front row",
      practice("1 to 2 in; 37 mm in the 32 mm system")),
  BACK_ROW(
      "back-row",
      Kind.LENGTH,
      "1 1/2 in",
      "37 mm",
      "8 mm",
      "150 mm",
      "from the shelf's back edge to the back row",
      practice("1 to 2 in")),
  MIDDLE_ROW_FROM(
      "middle-row-from",
      Kind.LENGTH,
      "16 in",
      "400 mm",
      "150 mm",
      "2 m",
      "shelves deeper than this get a third row in the middle",
      memory("over about 16 in")),
  HOLE_DEPTH(
      "hole-depth",
      Kind.LENGTH,
      "3/8 in",
      "12 mm",
      "3 mm",
      "40 mm",
      "depth of pin holes to the full diameter",
      practice("3/8 in; 12 to 13 mm; sleeves take their own length")),
  HOLE_ALLOWANCE(
      "hole-allowance",
      Kind.NUMBER,
      "0",
      "0",
      "-0.3",
      "1",
      "hole diameter less pin diameter, in mm",
      practice("equal to the pin, or slightly under; finish takes more")),
  LOOSE_HOLE(
      "loose-hole",
      Kind.NUMBER,
      "0.3",
      "0.3",
      "0",
      "1",
      "hole diameter less pin diameter from which a pin wobbles, in mm",
      practice("a 6 mm pin is loose in a 1/4 in hole, 0.35 mm wider")),
  BIT_POINT(
      "bit-point",
      Kind.LENGTH,
      "1/8 in",
      "3 mm",
      "0 mm",
      "10 mm",
      "how far the bit's point reaches beyond the full diameter",
      memory("spur of a brad point 1/16 to 1/8 in")),
  LEAST_FLOOR(
      "least-floor",
      Kind.LENGTH,
      "1/16 in",
      "1.5 mm",
      "0 mm",
      "20 mm",
      "wood left behind the bit's point",
      practice("reserve for the stop")),
  LEAST_WEB(
      "least-web",
      Kind.LENGTH,
      "3/32 in",
      "2.4 mm",
      "0 mm",
      "20 mm",
      "wood left between holes or grooves from both faces",
      practice("5/16 in holes in a 23/32 in partition leave 3/32 in")),
  LEAST_EDGE(
      "least-edge",
      Kind.LENGTH,
      "1/4 in",
      "6 mm",
      "0 mm",
      "50 mm",
      "wood left between a hole's rim and an edge, joint, screw or hinge plate",
      practice("about the hole's diameter")),
  STANDARD_SETBACK(
      "standard-setback",
      Kind.LENGTH,
      "1 1/2 in",
      "40 mm",
      "10 mm",
      "150 mm",
      "from the shelf's edge to the middle of a standard or cleat strip",
      practice("1 to 2 in from front and back edges")),
  GROOVE_PLAY(
      "groove-play",
      Kind.LENGTH,
      "1/64 in",
      "0.4 mm",
      "0 mm",
      "0.8 mm",
      "groove for a standard less the standard's width",
      practice("not wider than the standard + 1/32 in")),
  STANDARD_PLAY(
      "standard-play",
      Kind.LENGTH,
      "1/16 in",
      "1.5 mm",
      "0 mm",
      "10 mm",
      "least space left over a standard that is cut to length",
      practice("one as long as its space does not go in")),
  END_PLAY(
      "end-play",
      Kind.LENGTH,
      "1/8 in",
      "3 mm",
      "0.5 mm",
      "10 mm",
      "clear width less the length of an adjustable shelf, both ends together",
      practice("1/16, 3/32 or 1/8 in; up to 1/4 in with clips")),
  BACK_PLAY(
      "back-play",
      Kind.LENGTH,
      "1/16 in",
      "2 mm",
      "0 mm",
      "20 mm",
      "from an adjustable shelf's back edge to the back",
      practice("room for a shelf that swells")),
  PANEL_PLAY(
      "panel-play",
      Kind.LENGTH,
      "1/16 in",
      "2 mm",
      "0 mm",
      "6 mm",
      "groove or rabbet less the back panel, over both edges",
      practice("a back that must not bind")),
  LEAST_ENGAGEMENT(
      "least-engagement",
      Kind.LENGTH,
      "1/8 in",
      "3 mm",
      "0 mm",
      "20 mm",
      "least length of pin under the shelf's end",
      practice("at least 1/8 in left")),
  SHELF_LOAD(
      "shelf-load",
      Kind.LINE_LOAD,
      "25 lb/ft",
      "37 kg/m",
      "0.1 kg/m",
      "300 kg/m",
      "load on shelves that state none",
      Source.published(
          "a state architect's weighing of 7.5 ft book stacks, structural engineers' mail archive",
          "25 lb/ft")),
  SAG_LIMIT(
      "sag-limit",
      Kind.NUMBER,
      "600",
      "600",
      "100",
      "2000",
      "span divided by the sag allowed at first loading",
      practice("0.02 in per foot is L/600")),
  SAG_LIMIT_YEARS(
      "sag-limit-years",
      Kind.NUMBER,
      "384",
      "384",
      "100",
      "2000",
      "span divided by the sag allowed after years",
      practice("1/32 in per foot, where the eye notices, is L/384")),
  CREEP_SOLID(
      "creep-solid",
      Kind.NUMBER,
      "1.5",
      "1.5",
      "1",
      "4",
      "sag after years over sag at first, solid wood",
      Source.published("AWC answer on NDS 3.5.2, K_cr for seasoned lumber", "1.5")),
  CREEP_PANEL(
      "creep-panel",
      Kind.NUMBER,
      "2",
      "2",
      "1",
      "4",
      "sag after years over sag at first, panel products",
      memory("NDS 2018 3.5.2, K_cr for structural panels, dry")),
  SPAN_RULE(
      "span-rule",
      Kind.LENGTH,
      "36 in",
      "900 mm",
      "300 mm",
      "3 m",
      "shelves longer than this are noted, whatever their sag",
      practice("keep below 36 in")),
  TALL_SIDE(
      "tall-side",
      Kind.LENGTH,
      "48 in",
      "1200 mm",
      "300 mm",
      "4 m",
      "free height of a side without a fixed shelf that is noted",
      practice("over about 48 in the sides spread")),
  GLASS(
      "glass",
      List.of("annealed", "tempered"),
      "tempered",
      "glass to order for shelves",
      practice("disputed: tempered in public places; some prefer annealed, which can be cut")),
  GLASS_STRESS(
      "glass-stress",
      Kind.NUMBER,
      "4",
      "4",
      "1",
      "20",
      "bending stress allowed in glass for years, MPa",
      practice("cautious: printed tables work at about 4 to 10 MPa; ask the glazier")),
  LOW_SUPPORT(
      "low-support",
      Kind.LENGTH,
      "1/32 in",
      "0.8 mm",
      "0 mm",
      "5 mm",
      "how far one support may lie lower than the others",
      memory("1/32 in is felt with a stiff shelf, 1/64 in is not")),
  HAND_PUSH(
      "hand-push",
      Kind.NUMBER,
      "20",
      "20",
      "1",
      "500",
      "push of a hand on the front edge of an empty shelf, N",
      practice("a light touch, about 2 kg; no published figure found")),
  DADO_DEPTH(
      "dado-depth",
      Kind.NUMBER,
      "0.333",
      "0.333",
      "0.1",
      "0.6",
      "depth of dadoes, rabbets and back grooves that state none, as a share of the panel's thickness (down to 1/32 in or 0.5 mm)",
      practice("a third to a half of the panel")),
  BACK_INSET(
      "back-inset",
      Kind.LENGTH,
      "3/8 in",
      "10 mm",
      "3 mm",
      "100 mm",
      "from the back edge of a side to the groove for the back",
      practice("leaves wood behind the groove")),
  SCRIBE(
      "scribe",
      Kind.LENGTH,
      "3/4 in",
      "20 mm",
      "0 mm",
      "100 mm",
      "how much wider stiles are cut that are fitted to a wall",
      practice("walls run out of plumb by up to 3/4 in")),
  DRILL(
      "drill",
      List.of("before-assembly", "after-assembly"),
      "before-assembly",
      "when the rows are bored",
      practice("before assembly on flat panels in most accounts")),
  WAY(
      "way",
      List.of(
          "best",
          "hardboard-strip",
          "centring-guide",
          "router-guide",
          "steel-strap",
          "drill-press",
          "story-stick",
          "standards",
          "cleats",
          "machine"),
      "best",
      "way of boring; best takes the one that costs least with the shop's tools",
      practice("a choice of the shop")),
  NOSE_SLIP(
      "nose-slip",
      Kind.LENGTH,
      "0.005 in",
      "0.1 mm",
      "0 mm",
      "1 mm",
      "guide hole less the nose of the self-centring bit that runs in it",
      memory("slides without rattling")),
  SLIP(
      "slip",
      Kind.LENGTH,
      "1/64 in",
      "0.4 mm",
      "0 mm",
      "2 mm",
      "guide hole less the router's guide bushing that runs in it",
      practice("1/64 in over a 3/8 in bushing")),
  GUIDE_BIT_STEP(
      "guide-bit-step",
      Kind.LENGTH,
      "1/64 in",
      "0.5 mm",
      "0.01 mm",
      "2 mm",
      "the holes of a guide made in the shop are as wide as the next bit sold in such steps",
      practice("sets of twist bits go up by 1/64 in or 0.5 mm")),
  STRIP_PLAY(
      "strip-play",
      Kind.LENGTH,
      "1/64 in",
      "0.4 mm",
      "0 mm",
      "2 mm",
      "most that a bit may be smaller than the hole of the strip that leads it",
      memory("a bit that wobbles in its guide cuts the guide")),
  GUIDE_MARGIN(
      "guide-margin",
      Kind.LENGTH,
      "2 in",
      "50 mm",
      "0 mm",
      "300 mm",
      "how far a guide reaches beyond its last hole",
      memory("room for a clamp")),
  CLAMP_ROOM(
      "clamp-room",
      Kind.LENGTH,
      "1 1/2 in",
      "40 mm",
      "0 mm",
      "200 mm",
      "room for a clamp at a guide's end, beyond the router's base at the last hole",
      practice("the pad of a bar clamp and a finger's width")),
  GUIDE_WEB(
      "guide-web",
      Kind.LENGTH,
      "3/16 in",
      "5 mm",
      "1 mm",
      "50 mm",
      "least left between a guide's hole and the guide's edge or end",
      memory("enough not to break out")),
  GUIDE_BLOCK(
      "guide-block",
      Kind.LENGTH,
      "3/4 in",
      "18 mm",
      "5 mm",
      "50 mm",
      "thickness of a guide's index block",
      practice("an offcut of the case's stock")),
  PRESS_BLOCK(
      "press-block",
      Kind.LENGTH,
      "3/4 in",
      "18 mm",
      "0 mm",
      "100 mm",
      "thickness of the blocks under a panel on the drill press",
      practice("room for the clamps, and a backer for the table")),
  STOP_SLIP(
      "stop-slip",
      Kind.LENGTH,
      "1/8 in",
      "3 mm",
      "0.1 mm",
      "20 mm",
      "how far a stop slips where the plan tries out what a slipped stop does",
      memory("a collar that was not tight")),
  HOLE_SECONDS(
      "hole-seconds",
      Kind.NUMBER,
      "16",
      "16",
      "1",
      "300",
      "time for one hole, seconds",
      practice("about 16 s by hand drill, 3 s by router and guide, from one maker's account")),
  GUIDED_SECONDS(
      "guided-seconds",
      Kind.NUMBER,
      "8",
      "8",
      "1",
      "300",
      "time for one hole by hand drill through a guide, seconds",
      memory("half of marking, punching and boring")),
  ROUTER_SECONDS(
      "router-seconds",
      Kind.NUMBER,
      "3",
      "3",
      "1",
      "300",
      "time for one hole by router through a guide, seconds",
      practice("100 holes in 5 minutes, from one maker's account")),
  PRESS_SECONDS(
      "press-seconds",
      Kind.NUMBER,
      "10",
      "10",
      "1",
      "300",
      "time for one marked hole on the drill press, seconds",
      memory("no punch mark, but a panel to be shifted")),
  MACHINE_SECONDS(
      "machine-seconds",
      Kind.NUMBER,
      "2",
      "2",
      "0.1",
      "300",
      "time for one hole by machine, seconds",
      memory("one spindle, panels laid on and taken off")),
  SET_UP_MINUTES(
      "set-up-minutes",
      Kind.NUMBER,
      "5",
      "5",
      "0",
      "120",
      "time to set a bit, its stop or a fence and try it in scrap, minutes",
      memory("with a test hole")),
  CLAMP_MINUTES(
      "clamp-minutes",
      Kind.NUMBER,
      "1.5",
      "1.5",
      "0",
      "60",
      "time to clamp a guide or to move it along, minutes",
      memory("two clamps and a look at both edges")),
  STICK_MINUTES(
      "stick-minutes",
      Kind.NUMBER,
      "10",
      "10",
      "0",
      "240",
      "time to make and check a story stick, minutes",
      memory("read twice from zero")),
  STRIP_MINUTES(
      "strip-minutes",
      Kind.NUMBER,
      "10",
      "10",
      "0",
      "240",
      "time to put an index block on a strip that is sold with holes, number and mask it, minutes",
      memory("with a test in scrap")),
  GUIDE_MINUTES(
      "guide-minutes",
      Kind.NUMBER,
      "20",
      "20",
      "0",
      "480",
      "time to cut, block and number a guide, its holes not counted, minutes",
      memory("with a test in scrap")),
  GUIDE_HOLE_SECONDS(
      "guide-hole-seconds",
      Kind.NUMBER,
      "45",
      "45",
      "1",
      "600",
      "time to lay out and bore one hole of a guide, seconds",
      memory("scribed, punched and bored on the press")),
  PIN_MINUTES(
      "pin-minutes",
      Kind.NUMBER,
      "10",
      "10",
      "0",
      "240",
      "time to make a stepped pin for moving a guide along, minutes",
      memory("a rod filed down in the chuck, tried in guide and hole")),
  PROGRAM_MINUTES(
      "program-minutes",
      Kind.NUMBER,
      "20",
      "20",
      "0",
      "480",
      "time to prepare the program of a boring machine, minutes",
      memory("coordinates entered and run dry")),
  WEAR_LIMIT(
      "wear-limit",
      Kind.NUMBER,
      "0.2",
      "0.2",
      "0.01",
      "2",
      "how much a guide's hole may wear wider before the guide is replaced, mm",
      memory("about 1/128 in")),
  WEAR_BIT(
      "wear-bit",
      Kind.NUMBER,
      "0.1",
      "0.1",
      "0",
      "2",
      "wear of a hardboard hole by 100 holes bored with a bit that turns in it, mm",
      memory("drill bits enlarge hardboard; no measurement known")),
  WEAR_NOSE(
      "wear-nose",
      Kind.NUMBER,
      "0.01",
      "0.01",
      "0",
      "2",
      "wear of a shop-made guide's hole by 100 holes bored through a nose or bushing that does not turn, mm",
      memory("noses and bushings hardly wear a guide; no measurement known")),
  WEAR_STEEL(
      "wear-steel",
      Kind.NUMBER,
      "0.002",
      "0.002",
      "0",
      "2",
      "wear of a steel strap's hole by 100 holes, mm",
      memory("steel hardly wears; no measurement known")),
  GROOVE_BIT(
      "groove-bit",
      Kind.LENGTH,
      "1/4 in",
      "6 mm",
      "1 mm",
      "30 mm",
      "straight router bit taken for grooves where the tools state none that cuts them",
      practice("1/4 in, three passes for a groove of 5/8 in")),
  ROUTER_PASS(
      "router-pass",
      Kind.LENGTH,
      "1/8 in",
      "3 mm",
      "0.5 mm",
      "15 mm",
      "most depth of one pass of a router in a groove",
      practice("half the bit's diameter: 1/8 in with a bit of 1/4 in")),
  PASS_SECONDS(
      "pass-seconds",
      Kind.NUMBER,
      "30",
      "30",
      "1",
      "600",
      "time for one pass of router or saw along a groove, seconds",
      memory("six feet at 2 to 3 in a second, laid on and lifted off included")),
  STANDARD_MINUTES(
      "standard-minutes",
      Kind.NUMBER,
      "15",
      "15",
      "0",
      "240",
      "time to saw the standards to length at a stop and file them, minutes",
      memory("a case of two bays")),
  BLANK_STACK(
      "blank-stack",
      Kind.COUNT,
      "1",
      "1",
      "1",
      "2",
      "most blanks for cleat strips that are bored together; both of a bay are alike",
      practice("one by one; two save time where bit and quill reach through both")),
  ODDS_LIMIT(
      "odds-limit",
      Kind.NUMBER,
      "5",
      "5",
      "0",
      "100",
      "odds of a shelf that rocks above which a way is not recommended, per cent",
      memory("one shelf in twenty")),
  FEEL_LIMIT(
      "feel-limit",
      Kind.LENGTH,
      "1/32 in",
      "0.8 mm",
      "0.05 mm",
      "10 mm",
      "gap under a shelf's fourth pin from which its rocking is felt",
      memory("1/32 in is felt with a stiff shelf, 1/64 in is not")),
  GUIDE_HOLE_ERROR(
      "guide-hole-error",
      Kind.LENGTH,
      "1/64 in",
      "0.4 mm",
      "0 mm",
      "5 mm",
      "place of a guide's hole along the guide, two standard deviations",
      practice("drill press with fence and stop 1/64 in")),
  SEAT_ERROR(
      "seat-error",
      Kind.LENGTH,
      "1/128 in",
      "0.2 mm",
      "0 mm",
      "5 mm",
      "how a guide, stick or strip comes to lie against the end of a panel, two standard deviations",
      memory("half of what is felt with a fingernail")),
  SPACER_ERROR(
      "spacer-error",
      Kind.LENGTH,
      "0.004 in",
      "0.1 mm",
      "0 mm",
      "5 mm",
      "thickness of a spacer between block and end, two standard deviations",
      memory("by calliper")),
  PIN_STEP_ERROR(
      "pin-step-error",
      Kind.LENGTH,
      "0.008 in",
      "0.2 mm",
      "0 mm",
      "5 mm",
      "fit of the pin that locates a guide moved along, at each step, two standard deviations",
      practice("each shift adds a pin's clearance of error")),
  DRILL_WANDER(
      "drill-wander",
      Kind.LENGTH,
      "1/64 in",
      "0.4 mm",
      "0 mm",
      "5 mm",
      "how far a hand drill wanders from where it is led or punched, two standard deviations",
      practice("hand drill with a hardwood or metal guide 1/64 to 1/32 in")),
  ROUTER_WANDER(
      "router-wander",
      Kind.LENGTH,
      "0.004 in",
      "0.1 mm",
      "0 mm",
      "5 mm",
      "how far a router bit bores from the middle of its bushing, two standard deviations",
      practice("router with bushing and template 0.1 to 0.2 mm in all")),
  MARK_ERROR(
      "mark-error",
      Kind.LENGTH,
      "1/32 in",
      "0.8 mm",
      "0 mm",
      "5 mm",
      "a mark moved from stick to panel and punched, two standard deviations",
      practice("hand drill at an awl mark 1/32 to 1/16 in")),
  STICK_ERROR(
      "stick-error",
      Kind.LENGTH,
      "1/64 in",
      "0.4 mm",
      "0 mm",
      "5 mm",
      "place of a mark on the story stick, two standard deviations",
      memory("read from a rule")),
  PRESS_ERROR(
      "press-error",
      Kind.LENGTH,
      "1/64 in",
      "0.4 mm",
      "0 mm",
      "5 mm",
      "height of a hole bored at a mark on the drill press, two standard deviations",
      practice("drill press with fence and stop 1/64 in")),
  MACHINE_ERROR(
      "machine-error",
      Kind.LENGTH,
      "0.004 in",
      "0.1 mm",
      "0 mm",
      "5 mm",
      "place of a hole that a machine bores, two standard deviations",
      memory("no measurement known")),
  SLOT_ERROR(
      "slot-error",
      Kind.LENGTH,
      "0.004 in",
      "0.1 mm",
      "0 mm",
      "5 mm",
      "place of a slot in a standard as sold, two standard deviations",
      memory("no measurement known")),
  CUT_ERROR(
      "cut-error",
      Kind.LENGTH,
      "1/64 in",
      "0.4 mm",
      "0 mm",
      "5 mm",
      "length of a panel, or of a standard from its end to its first slot, as cut, two standard deviations",
      memory("saw with a stop")),
  SHIM(
      "shim",
      Kind.LENGTH,
      "1/64 in",
      "0.4 mm",
      "0.05 mm",
      "3 mm",
      "thickness of the shims that are laid on a low pin",
      memory("card or veneer")),
  KERF(
      "kerf",
      Kind.LENGTH,
      "1/8 in",
      "3.2 mm",
      "0.5 mm",
      "8 mm",
      "width of the saw cut",
      practice("full blade 1/8 in, thin blade 3/32 in")),
  SHEET_TRIM(
      "sheet-trim",
      Kind.LENGTH,
      "1/4 in",
      "5 mm",
      "0 mm",
      "50 mm",
      "cut off each edge of a sheet first",
      practice("factory edges are not always straight or square")),
  BOARD_TRIM(
      "board-trim",
      Kind.LENGTH,
      "1 in",
      "25 mm",
      "0 mm",
      "300 mm",
      "cut off each end of a board first",
      practice("end checks")),
  BOARD_EDGE_TRIM(
      "board-edge-trim",
      Kind.LENGTH,
      "1/8 in",
      "3 mm",
      "0 mm",
      "50 mm",
      "taken off one edge of each board that is ripped, to straighten it first",
      practice("about 1/8 in off a planed board, 1/4 to 1/2 in off a rough one")),
  OFFCUT_LENGTH(
      "offcut-length",
      Kind.LENGTH,
      "12 in",
      "300 mm",
      "0 mm",
      "3 m",
      "least longer side of an offcut that is worth keeping",
      practice("what is shorter than about 12 in goes into the bin")),
  OFFCUT_WIDTH(
      "offcut-width",
      Kind.LENGTH,
      "4 in",
      "100 mm",
      "0 mm",
      "1.5 m",
      "least shorter side of an offcut that is worth keeping; less where the stock itself is narrower",
      practice("wide enough for a kick, a rail or a guide")),
  SMALL_PIECE(
      "small-piece",
      Kind.LENGTH,
      "12 in",
      "300 mm",
      "50 mm",
      "600 mm",
      "pieces shorter than this along the fence are too small to be held safely at the saw",
      practice("nothing shorter than 12 in is ripped along the fence")),
  LONGEST_RIP(
      "longest-rip",
      Kind.LENGTH,
      "",
      "",
      "200 mm",
      "8 m",
      "longest piece that the saw of the shop can rip; without it, any",
      practice("the room behind the saw, or the length of the guide rail")),
  WIDEST_CROSSCUT(
      "widest-crosscut",
      Kind.LENGTH,
      "",
      "",
      "50 mm",
      "4 m",
      "widest piece that the saw of the shop can crosscut; without it, any",
      practice("how far a sled or a sliding saw reaches")),
  FIRST_CUT(
      "first-cut",
      List.of("either", "along", "across"),
      "either",
      "which way the first cut of a sheet runs, after trimming",
      practice("along where sheets lie on the saw whole, across where one can't carry them whole")),
  CUT_STAGES(
      "cut-stages",
      List.of("free", "2", "3", "4"),
      "free",
      "how often cuts of a sheet may run another way, the first way counted; a piece is turned once less",
      practice("strips first, then parts of the strips, then their widths: 3")),
  STRIP_ALLOWANCE(
      "strip-allowance",
      Kind.LENGTH,
      "1/16 in",
      "1.5 mm",
      "0 mm",
      "6 mm",
      "how much wider edge strips are ripped than finished, to be planed off",
      practice("about 1/16 in; saw marks don't glue")),
  SCREW_SPACING(
      "screw-spacing",
      Kind.LENGTH,
      "6 in",
      "150 mm",
      "40 mm",
      "400 mm",
      "most distance between screws of a butt joint, a back, a standard or a cleat strip",
      practice("about 6 in")),
  SCREW_DIAMETER(
      "screw-diameter",
      Kind.LENGTH,
      "0.19 in",
      "4.8 mm",
      "2 mm",
      "10 mm",
      "clearance hole of the screws in butt joints",
      practice("No. 10 wood screw")),
  SCREW_GRIP(
      "screw-grip",
      Kind.LENGTH,
      "1 1/4 in",
      "32 mm",
      "8 mm",
      "100 mm",
      "how far screws reach into the part behind the one that they go through",
      practice("2 in screws through 3/4 in panels")),
  SPARE_PINS(
      "spare-pins",
      Kind.NUMBER,
      "10",
      "10",
      "0",
      "100",
      "pins, sleeves and clips bought beyond those needed, per cent",
      practice("they get lost")),
  EDGING_SPARE(
      "edging-spare",
      Kind.NUMBER,
      "10",
      "10",
      "0",
      "100",
      "banding bought beyond the edges, per cent",
      practice("overhang at both ends of each edge")),
  WASTE(
      "waste",
      Kind.NUMBER,
      "0",
      "0",
      "0",
      "100",
      "added to the stock that the layouts count, per cent",
      practice("15 to 20 % where no layout is made")),
  MARK_UP(
      "mark-up",
      Kind.NUMBER,
      "25",
      "25",
      "0",
      "300",
      "added to the cost of materials, per cent",
      practice("add 25 % to materials; a single voice of 2003")),
  RATE(
      "rate",
      Kind.NUMBER,
      "60",
      "60",
      "0",
      "1000",
      "an hour of work, in the job's currency",
      practice("54 to 75 dollars in surveys of 2011 to 2021")),
  CONTINGENCY(
      "contingency",
      Kind.NUMBER,
      "15",
      "15",
      "0",
      "100",
      "added for what goes wrong, per cent",
      practice("10 to 25 % by risk")),
  LIFT_LIMIT(
      "lift-limit",
      Kind.NUMBER,
      "23",
      "23",
      "5",
      "60",
      "weight that one person lifts; what weighs more is for two, three or four, kg",
      Source.published(
          "NIOSH Applications Manual 94-110 (rev. 2021), load constant", "51 lb, 23 kg"));

  /** What a setting holds. */
  public enum Kind {
    LENGTH,
    NUMBER,
    COUNT,
    LINE_LOAD,
    CHOICE
  }

  private final String key;
  private final Kind kind;
  private final String inchDefault;
  private final String metricDefault;
  private final String least;
  private final String most;
  private final List<String> choices;
  private final String meaning;
  private final Source origin;

  Setting(
      String key,
      Kind kind,
      String inchDefault,
      String metricDefault,
      String least,
      String most,
      String meaning,
      Source origin) {
    this.key = key;
    this.kind = kind;
    this.inchDefault = inchDefault;
    this.metricDefault = metricDefault;
    this.least = least;
    this.most = most;
    this.choices = List.of();
    this.meaning = meaning;
    this.origin = origin;
  }

  Setting(String key, List<String> choices, String standard, String meaning, Source origin) {
    this.key = key;
    this.kind = Kind.CHOICE;
    this.inchDefault = standard;
    this.metricDefault = standard;
    this.least = "";
    this.most = "";
    this.choices = choices;
    this.meaning = meaning;
    this.origin = origin;
  }

  private static Source practice(String what) {
    return new Source("trade", what, Standing.COMMON_PRACTICE);
  }

  private static Source memory(String what) {
    return new Source("trade", what, Standing.FROM_MEMORY);
  }

  /** Its name in a job file. */
  public String key() {
    return key;
  }

  public Kind kind() {
    return kind;
  }

  public String inchDefault() {
    return inchDefault;
  }

  public String metricDefault() {
    return metricDefault;
  }

  public String least() {
    return least;
  }

  public String most() {
    return most;
  }

  public List<String> choices() {
    return choices;
  }

  public String meaning() {
    return meaning;
  }

  public Source origin() {
    return origin;
  }

  public static Optional<Setting> named(String key) {
    return List.of(values()).stream().filter(s -> s.key.equals(key)).findFirst();
  }
}
