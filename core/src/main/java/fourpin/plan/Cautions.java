package fourpin.plan;

import fourpin.bench.Caution;

/** Cautions that stand at steps. */
final class Cautions {

  static final Caution SAW =
      new Caution(
          "saw",
          "Guard on, riving knife behind the blade, push stick for narrow pieces, and stand out of"
              + " the line of the blade. Never reach over it while it turns.");
  static final Caution SMALL =
      new Caution(
          "small pieces",
          "Cut and work small pieces while they are still part of a long one, or hold them in a"
              + " clamped jig, never by hand near a cutter. A small part that comes off is held down"
              + " by a clamp, or left alone: never reach for it, or push it, before the blade"
              + " stands.");
  static final Caution NARROW_RIP =
      new Caution(
          "narrow rips",
          "Guard and riving knife stay on. Feed with a push block that holds the board down and"
              + " rides beside the blade, with a featherboard ahead of the blade, never beside it."
              + " Let a strip fall off on the side away from the fence; between fence and blade"
              + " stays only what is wide enough for guard, riving knife and push block. Set the"
              + " fence anew for each strip, by the width that remains, or clamp a stop block ahead"
              + " of the blade, outside it by the width of a strip, and bring the board and then the"
              + " fence up to it before each pass. Stop ripping when the board gets too narrow to"
              + " hold.");
  static final Caution FIRST_EDGE =
      new Caution(
          "first edge",
          "Never lay an edge along the rip fence that is not straight yet: it binds there, the"
              + " piece is thrown back, and the cut comes out crooked as well. Straighten the first"
              + " edge with a hand-held saw along a clamped straightedge, on a sled that carries the"
              + " piece past the blade, or at a jointer, with support on both sides, and mark it."
              + " Only the marked edge goes to the fence when the opposite one is trimmed. The fence"
              + " stands at the width that stays, so that the trim falls off outside the blade:"
              + " between fence and blade it would be thrown back. Where the fence does not reach"
              + " so far, trim the opposite edge along the straightedge too.");
  static final Caution TURNING =
      new Caution(
          "turning at the fence",
          "Lay what is shorter along the cut than across it with its long side to a mitre gauge or"
              + " sled, never with its short side to the rip fence. There it turns and is thrown"
              + " back.");
  static final Caution STOP =
      new Caution(
          "stops",
          "Measure by a stop that can't pinch what comes off: a block on the rip fence, well ahead"
              + " of the blade, that the piece has left before it meets the blade, or a stop on the"
              + " fence of the mitre gauge, that goes along with it. Never crosscut up to the bare"
              + " rip fence: what comes off is pinched between it and the blade, and thrown back."
              + " Hold the piece to the gauge, and leave what comes off where it lies till the"
              + " blade stands.");
  static final Caution PLANER =
      new Caution(
          "planer",
          "Plane thin strips on a carrier board, longer than the distance between the planer's"
              + " rollers, and cut them to length afterwards; never stand in line with the feed.");
  static final Caution ROUTER =
      new Caution(
          "router",
          "Unplug before the cutter is touched, clamp work and fence, and feed against the turn of"
              + " the cutter with the base supported. Take deep cuts in passes, protect eyes and"
              + " ears.");
  static final Caution DRILL =
      new Caution(
          "drill",
          "Clamp the work, wear eye protection, keep sleeves and hair away from the bit. Test the"
              + " stop in scrap, and again every 20 holes.");
  static final Caution PLUNGE =
      new Caution(
          "router",
          "Unplug the router before bit, bushing or stop is touched; clamp guide and panel so that"
              + " neither moves; plunge slowly and straight, with the whole base supported and"
              + " clear of the clamps. Wherever it would overhang, beside the guide or at its ends,"
              + " put a strip as thick as the guide under it. Let it reach full speed before each plunge, draw the bit out of the wood"
              + " before it is moved, and let it stop before the router is put down. Protect eyes"
              + " and ears.");
  static final Caution PRESS =
      new Caution(
          "drill",
          "Take the key out of the chuck, clamp or hold the work against fence and table, and"
              + " support both ends of a long panel so that it can't tip. No gloves, sleeves and"
              + " hair away from the spindle, eye protection on; let the drill stop before work is"
              + " moved.");
  static final Caution MACHINE =
      new Caution(
          "machine",
          "Keep hands out while it is live, and work by the guards and instructions of its maker."
              + " Run a new program once without the panel, with the bits above it.");
  static final Caution LARGE_BIT =
      new Caution(
          "large bits",
          "A large bit that catches turns the work or the drill: clamp the work and let it bear on a"
              + " stop on the side that it would turn to, never hold it by hand. Run the bit as slowly"
              + " as its maker states, lift it often to clear the chips, and hold a hand drill by its"
              + " side handle with both hands.");
  static final Caution METAL =
      new Caution(
          "metal",
          "Clamp metal and saw it with a hacksaw or a blade made for it, never with one for wood."
              + " Wear eye protection, and file off the burrs.");
  // Limits: OSHA and NIOSH wood dust pages (15 and 5 mg/m3; 1 mg/m3).
  static final Caution DUST =
      new Caution(
          "dust",
          "Collect dust at the tool and wear a dust mask. Limits for wood dust in the US: OSHA 15"
              + " mg/m³ in all and 5 mg/m³ respirable, NIOSH advises 1 mg/m³; your own rules"
              + " may be stricter.");
  static final Caution FINISH =
      new Caution(
          "fumes",
          "Air the room, keep flames away, and spread oily rags out flat to dry: in a heap they can"
              + " catch fire by themselves.");
  static final Caution TIP =
      new Caution(
          "tip-over",
          "Fasten the case to studs or masonry as local codes and the wall ask, before anything is"
              + " put on it; children climb shelves. Whether an anchor holds is for someone who"
              + " knows the wall.");
  static final Caution GLUE =
      new Caution(
          "glue",
          "Read the glue's label: gloves, eye protection and air where it says so. Keep fingers from"
              + " between layers and cauls while clamps or a press close, and stand aside of a clamp"
              + " under load.");
  static final Caution STACK =
      new Caution(
          "lifting",
          "A case that is set on another one is lifted to the height of the chest: by two people or"
              + " more, empty, without shelves, doors and glass, with shoes that protect the feet and"
              + " nobody below it. Till it is screwed down, one of them holds it.");
  static final Caution GLASS =
      new Caution(
          "glass",
          "Carry glass on edge with gloves; never lay it bare on metal or wood. Have the glazier"
              + " grind all edges. Tempered glass can't be cut afterwards.");

  private static final int MOST_HANDS = 4;

  private Cautions() {}

  /**
   * For what neither fence nor mitre gauge of a table saw leads: common practice.
   *
   * @param longest cut that a mitre gauge can, with where that comes from, in words
   * @param beyond what else the saw does not reach, in words that begin with a comma; or empty
   * @param reach of the rip fence, with where that comes from, in words
   */
  static Caution large(String longest, String beyond, String reach) {
    return new Caution(
        "large pieces",
        "Use a track saw, a panel saw, or a hand-held circular saw along a clamped straightedge"
            + " for cuts longer than "
            + longest
            + " through what is still larger across them"
            + beyond
            + ". On a table saw it turns between fence and blade and is thrown back. Cut so as"
            + " well where the rip fence would stand farther out than "
            + reach
            + "."
            + " Support the piece and what comes off on both sides of every cut, long rips too, and"
            + " have a helper for a whole sheet, who carries and does not pull.");
  }

  /**
   * For what is too long to be led by a mitre gauge: common practice.
   *
   * @param longest that one holds, with where that comes from, in words
   */
  static Caution longPieces(String longest) {
    return new Caution(
        "long pieces",
        "Do not crosscut at a mitre gauge what is longer than "
            + longest
            + ": its ends tip and drag it round, and it binds at the blade. Use a mitre saw that"
            + " reaches across, or a hand-held saw along a clamped straightedge. Support both ends"
            + " as high as the saw's table, so that neither drops and the cut can't close on the"
            + " blade; hold or clamp the piece to the fence of the mitre saw, and let its blade"
            + " stop before it is raised.");
  }

  /**
   * For what weighs more than one person should lift; more than {@value #MOST_HANDS} people do not
   * lift a case together.
   *
   * @param what and its weight, in words
   * @param limit of one person, in the unit of {@code weight}
   * @param told the limit with its source, in words
   */
  static Caution lifting(String what, double weight, double limit, String told) {
    int people = (int) Math.ceil(weight / limit);
    String who =
        people > MOST_HANDS
            ? ", too heavy to lift by hand: assemble it where it will stand, or use a hoist"
            : ": about " + people + " people, or a lifting aid";
    return new Caution(
        "lifting",
        what
            + who
            + ". Limit for each person "
            + told
            + ", under good conditions: close to the body, without a twist, with a good grip.");
  }
}
