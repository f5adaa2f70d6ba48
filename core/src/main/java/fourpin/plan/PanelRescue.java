package fourpin.plan;

import fourpin.bench.Removal.Bore;
import fourpin.casework.Face;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Rescue;
import fourpin.reference.PinSleeve;
import fourpin.reference.Reference;
import fourpin.reference.ShelfPin;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Whether a panel with wrong holes can be saved, by the wood that is left between holes. */
final class PanelRescue {

  private final MistakeFigures figures;
  private final RowNames names;
  private final CaseWays ways;
  private final SpoiltRows rows;
  private final Tries tries;

  /** How a panel is saved. */
  record Answer(Rescue rescue, String how) {

    private Answer andSay(String more) {
      return new Answer(rescue, how + more);
    }
  }

  /**
   * What is looked at beside the panel.
   *
   * @param together what the same act spoils
   * @param once the case with the mistake as it was made
   * @param all every upright of the case with a mistake
   */
  record Tries(Together together, Supplier<AllSpoilt> once, Function<Mistake, AllSpoilt> all) {}

  PanelRescue(MistakeFigures figures, RowNames names, CaseWays ways, SpoiltRows rows, Tries tries) {
    this.figures = figures;
    this.names = names;
    this.ways = ways;
    this.rows = rows;
    this.tries = tries;
  }

  /** For a panel that is not as wanted. */
  Answer from(Mistake mistake, OtherBit bit) {
    if (mistake == Mistake.STOP_SLIPPED) {
      return new DepthRescue(figures, names, ways, rows).deeper();
    }
    if (rows.made().isEmpty()) {
      return new Answer(Rescue.NOT_NEEDED, "Nothing is spoilt: put it right and bore.");
    }
    return switch (mistake) {
      case OTHER_BIT -> otherBit(bit.diameter().orElseThrow());
      case SECOND_LEFT -> otherFace();
      case END_FOR_END, PANEL_TURNED ->
          new AlikeRescue(figures, names, tries).from(mistake).orElseGet(this::boreBothAgain);
      case MASKED_HOLE -> plugged();
      case SPACER_FORGOTTEN, WRONG_SPACER -> besideItsPlace().orElseGet(this::boreAgain);
      case WRONG_EDGE, HOLE_SKIPPED, PIN_IN_WRONG_HOLE -> boreBothAgain();
      case STOP_SLIPPED -> throw new IllegalStateException("answered above");
    };
  }

  private Answer otherBit(Length bit) {
    Bore first = rows.wanted().getFirst();
    if (bit.isLessThan(first.diameter())) {
      return new Answer(
          Rescue.BORE_AGAIN,
          say(
              "Bore every hole once more with the right bit, %s.",
              figures.across("right-bit", "diameter of the right bit", first.diameter())));
    }
    Length play = bit.minus(first.diameter());
    if (play.mm() <= names.settings().number(Setting.LOOSE_HOLE)) {
      return new Answer(
          Rescue.USE,
          say(
              "The holes are %s wider: a %s hardly wobbles.",
              figures.length(
                  "play",
                  "how much wider the holes are",
                  play,
                  "b - d",
                  MistakeFigures.input("b", "diameter of the bit that is in", bit),
                  MistakeFigures.input("d", "diameter of the right bit", first.diameter())),
              plug()));
    }
    return sleeve(bit)
        .map(
            s ->
                new Answer(
                    Rescue.SLEEVE,
                    say(
                        "Bore all holes of the case out to %s and press in sleeves (%s).",
                        outside(s), s.name())))
        .orElseGet(() -> wider(bit));
  }

  /** Where no sleeve takes in the wrong holes. */
  private Answer wider(Length bit) {
    String wide = figures.across("wrong-bit", "diameter of the bit that is in", bit);
    if (rows.doMadeMeet()) {
      return new Answer(Rescue.LOST, "The holes run into each other: make the panel anew.");
    }
    return Reference.pins().rows().stream().map(ShelfPin::hole).anyMatch(bit::equals)
        ? new Answer(
            Rescue.OTHERS_ALIKE,
            say("Bore all holes of the case with this bit and take pins for %s.", wide))
        : new Answer(
            Rescue.PLUG,
            say(
                "Neither sleeves nor pins are sold for %s: glue dowels into all holes, let it dry,"
                    + " and bore again with the right bit.",
                wide));
  }

  /** Its name states the pin as well. */
  private String outside(PinSleeve sleeve) {
    figures.length(
        "sleeve-pin",
        "diameter of the pin that the sleeve takes",
        sleeve.pin(),
        "diameter of the pins of these rows");
    return figures.length(
        "sleeve",
        "hole that a sleeve is pressed into",
        sleeve.outside(),
        "outside diameter of the narrowest sleeve that takes the wrong hole in");
  }

  /** What goes into the holes. */
  private String plug() {
    return names.grid(rows.wanted().getFirst()).support() instanceof Support.Sleeved
        ? "sleeve"
        : "pin";
  }

  /** The narrowest sleeve for the pins of these rows whose hole takes in what is bored. */
  private Optional<PinSleeve> sleeve(Length hole) {
    return stem()
        .flatMap(
            stem ->
                Reference.sleeves().rows().stream()
                    .filter(s -> s.pin().equals(stem) && s.outside().isAtLeast(hole))
                    .min(Comparator.comparing(PinSleeve::outside)));
  }

  private Optional<Length> stem() {
    return switch (names.grid(rows.wanted().getFirst()).support()) {
      case Support.Pins pins -> Optional.of(pins.diameter());
      case Support.Sleeved sleeved -> Optional.of(sleeved.pins().diameter());
      case Support.Standards _, Support.Cleats _ -> Optional.empty();
    };
  }

  /** Holes at the same places from the right face, if enough wood stays between. */
  private Answer otherFace() {
    Length web = rows.piece().thickness().minus(rows.wanted().getFirst().depth().times(2));
    return web.isLessThan(setting(Setting.LEAST_WEB))
        ? new Answer(
            Rescue.PLUG,
            say(
                "Glue dowels into all wrong holes down to the bottom, let it dry, and bore the right"
                    + " face: between empty holes %s. The plugs show on the outside.",
                web.isPositive()
                    ? say("only %s of wood would be left", web(web))
                    : "no wood would be left"))
        : new Answer(
            Rescue.BORE_AGAIN,
            say(
                "Bore the right face as well: %s of wood stays between the holes. Plug those on the"
                    + " outside if they are seen.",
                web(web)));
  }

  private String web(Length web) {
    return figures.length(
        "web",
        "wood between holes in both faces",
        web,
        "t - 2 d",
        MistakeFigures.input("t", "thickness of the panel", rows.piece().thickness()),
        MistakeFigures.input("d", "depth of the holes", rows.wanted().getFirst().depth()),
        figures.input("m", Setting.LEAST_WEB));
  }

  private String round() {
    return figures.length(
        "wood-round",
        "least wood round a wrong hole, to ends, edges and joints",
        Length.nearestMm(rows.leastRound()),
        "measured on the virtual panel, not less than m for a row that may be used",
        figures.input("m", Setting.LEAST_EDGE));
  }

  private String between(double wood) {
    return figures.length(
        "wood-between",
        "least wood between the rims of right and wrong holes",
        Length.nearestMm(wood),
        "c - (a + b) / 2, measured on the virtual panel: between centres less half of each hole",
        figures.input("m", Setting.LEAST_EDGE));
  }

  /** A hole too many. */
  private Answer plugged() {
    double between = rows.leastBetweenRims();
    if (between < 0) {
      return overlapping(-between);
    }
    String next =
        Double.isInfinite(between) ? "" : say(" %s of wood lies to the next.", between(between));
    return new Answer(
        Rescue.PLUG,
        say(
            "%sGlue a dowel into the hole that is too many and trim it flush, before pins are counted"
                + " by it.%s",
            rows.leastRound() >= setting(Setting.LEAST_EDGE).mm() ? "" : around(), next));
  }

  /** A row so near to its place that it can't be bored again carries shelves as it is. */
  private Optional<Answer> besideItsPlace() {
    Length edge = setting(Setting.LEAST_EDGE);
    boolean does =
        rows.areOffAcross()
            && rows.leastBetweenRims() < edge.mm()
            && rows.leastRound() >= edge.mm()
            && rows.leastToOtherHoles() >= edge.mm()
            && rows.extra().stream().allMatch(this::isUnderShelves);
    return does ? rows.instead(rows.lowestMissing()).map(this::beside) : Optional.empty();
  }

  private Answer beside(Bore made) {
    Bore wanted = rows.lowestMissing();
    return new Answer(
        Rescue.USE,
        say(
            "Its holes lie at their heights and under every shelf of the bay, only %s nearer to one"
                + " edge: bore the others as planned.",
            figures.length(
                "beside",
                "how far the row lies from its place",
                made.width().minus(wanted.width()).abs(),
                "|m - w|",
                MistakeFigures.input("m", "from the index edge as it is made", made.width()),
                MistakeFigures.input("w", "from the index edge as it is wanted", wanted.width()),
                figures.input("e", Setting.LEAST_EDGE))));
  }

  /** With the wood that holes keep to edges. */
  private boolean isUnderShelves(Bore hole) {
    Length at = names.part().box().at(Face.FRONT).plus(hole.width());
    Length half = hole.diameter().over(2).plus(setting(Setting.LEAST_EDGE));
    return names
        .shelves(names.grid(hole))
        .allMatch(
            s ->
                at.minus(half).isAtLeast(s.box().at(Face.FRONT))
                    && s.box().at(Face.BACK).isAtLeast(at.plus(half)));
  }

  /** What went wrong with the panel is put right there too. */
  private Answer boreBothAgain() {
    return tries.together().isAlone()
        ? boreAgain()
        : boreAgain().andSay(say(" In %s likewise.", tries.together().words()));
  }

  private Answer boreAgain() {
    Answer between = betweenHoles();
    return rows.leastRound() >= setting(Setting.LEAST_EDGE).mm()
        ? between
        : new Answer(
            between.rescue() == Rescue.BORE_AGAIN ? Rescue.PLUG : between.rescue(),
            around() + between.how());
  }

  /** How wrong holes lie to what else the panel has. */
  private String around() {
    double round = rows.leastRound();
    return round <= 0
        ? "Wrong holes run into a joint, an edge or an end: plug them with glued dowels and trim"
            + " these flush before it is glued. "
        : say(
            "Wrong holes leave only %s of wood to a joint, an edge or an end: plug them with glued"
                + " dowels. ",
            round());
  }

  private Answer betweenHoles() {
    if (rows.extra().isEmpty()) {
      return new Answer(Rescue.BORE_AGAIN, "Nothing is spoilt: bore what is missing.");
    }
    double between = rows.leastBetweenRims();
    Length edge = setting(Setting.LEAST_EDGE);
    if (between >= edge.mm()) {
      String left =
          Double.isInfinite(between)
              ? ""
              : say(" At least %s of wood stays between rims.", between(between));
      return new Answer(
          Rescue.BORE_AGAIN, "Bore what is missing; plug the wrong holes if they offend." + left);
    }
    if (between >= 0) {
      return new Answer(
          Rescue.PLUG,
          say(
              "Glue dowels into the wrong holes, let it dry, and bore what is missing: only %s of"
                  + " wood lies between rims.",
              between(between)));
    }
    return covered()
        .map(
            s ->
                new Answer(
                    Rescue.SLEEVE,
                    say(
                        "Bore what is missing out to %s, which takes in the wrong hole, and press"
                            + " in sleeves (%s).",
                        outside(s), s.name())))
        .orElseGet(() -> overlapping(-between));
  }

  /** A bit can be led as long as its point starts in whole wood. */
  private Answer overlapping(double overlap) {
    String by =
        figures.measured(
            "overlap", "how far right and wrong holes meet", Length.nearestMm(overlap));
    double radius = rows.made().getFirst().diameter().mm() / 2;
    return rows.leastBetweenCentres() < radius
        ? new Answer(
            Rescue.LOST,
            say(
                "Right and wrong holes meet by %s, and no sleeve covers both: make the panel anew.",
                by))
        : new Answer(
            Rescue.PLUG,
            say(
                "Right and wrong holes meet by %s. Glue dowels into the wrong ones, let it dry, and"
                    + " bore what is missing and what the dowels reach into: the bit's point starts"
                    + " in whole wood.",
                by));
  }

  /** A sleeve round the right centre that covers the wrong hole beside it. */
  private Optional<PinSleeve> covered() {
    Bore first = rows.wanted().getFirst();
    double reach = 2 * rows.leastBetweenCentres() + first.diameter().mm();
    return sleeve(Length.nearestMm(reach));
  }

  private Length setting(Setting setting) {
    return names.settings().length(setting);
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
