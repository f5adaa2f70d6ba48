package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.job.Back;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.SheetStock;
import fourpin.job.Sizes;
import fourpin.job.Supply;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Unit;
import fourpin.strength.frame.SwayFrame;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far cases sway sideways, and what is said to hold them. */
@ExtendWith(CommaDecimals.class)
class RackingTest {

  private static Strength of(Consumer<CaseDraft> change) {
    CaseDraft draft = new CaseDraft();
    change.accept(draft);
    return check(SampleJobs.job(draft.order()));
  }

  private static void back(CaseDraft draft, Back.Kind kind) {
    draft.back = Optional.of(new Back(kind, "back", Optional.empty(), Back.Pieces.ONE));
  }

  private static Optional<Figure> find(Strength strength, String last) {
    return strength.cases().getFirst().racking().stream()
        .filter(f -> f.id().equals("north/" + last))
        .findFirst();
  }

  private static double value(Strength strength, String last) {
    return find(strength, last).orElseThrow().value().value();
  }

  private static void onFloor(CaseDraft draft) {
    draft.kick = Optional.empty();
    draft.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
  }

  private static void glue(CaseDraft draft) {
    draft.settings = draft.settings.with(Setting.BACK_FIXING, new SettingValue.OfChoice("glued"));
  }

  @Test
  void aBackHoldsTheBetterTheBetterItIsFixed() {
    double loose = value(of(d -> back(d, Back.Kind.GROOVE)), "sway");
    double screwed = value(of(d -> back(d, Back.Kind.RABBET)), "sway");
    double glued =
        value(
            of(
                d -> {
                  back(d, Back.Kind.GROOVE);
                  glue(d);
                }),
            "sway");
    assertThat(glued).isLessThan(screwed);
    assertThat(screwed).isLessThan(loose);
  }

  /** The working of the figure gives its value. */
  @Test
  void aScrewedBackIsWorkedOutAsTheFormulaSays() {
    Strength strength =
        of(
            d -> {
              back(d, Back.Kind.RABBET);
              onFloor(d);
            });
    Figure sway = find(strength, "sway").orElseThrow();
    double stiffness = input(sway, "J") + input(sway, "K") - input(sway, "B");
    assertThat(sway.value().value())
        .isCloseTo(
            input(sway, "P") * input(sway, "h") * input(sway, "h") / stiffness, within(1e-9));
    Figure back = find(strength, "sway-back-stiffness").orElseThrow();
    double b = input(back, "b");
    double h = input(back, "h");
    double lean =
        1 / (input(back, "G") * input(back, "t"))
            + 2 * input(back, "s") / input(back, "k") * (1 / b + 1 / h);
    assertThat(back.value().value()).isCloseTo(b * h / lean, withPercentage(1e-9));
  }

  /** Half as far apart slides half as much; the panel's own shear stays. */
  @Test
  void theLowerSlipOfBothCodesCounts() {
    Strength strength = of(d -> back(d, Back.Kind.RABBET));
    double ec5 = value(strength, "back-slip-ec5");
    double nds = value(strength, "back-slip-nds");
    Figure back = find(strength, "sway-back-stiffness").orElseThrow();
    assertThat(input(back, "k")).isEqualTo(Math.min(ec5, nds));
    Figure lower = find(strength, ec5 <= nds ? "back-slip-ec5" : "back-slip-nds").orElseThrow();
    assertThat(back.inputs())
        .filteredOn(i -> i.symbol().equals("k"))
        .singleElement()
        .satisfies(k -> assertThat(k.source()).isEqualTo(lower.source()));
  }

  @Test
  void aLooseBackLetsTheCaseGoUntilItJams() {
    Strength strength = of(d -> back(d, Back.Kind.GROOVE));
    assertThat(value(strength, "sway")).isGreaterThan(value(strength, "sway-free"));
    assertThat(value(strength, "sway")).isLessThan(1.1 * value(strength, "sway-free"));
  }

  /** What stands in it outweighs the joints: then the back alone holds it, once it has jammed. */
  @Test
  void theFormulaOfALooseBackIsThatOfTheCaseAtHand() {
    Strength strength =
        of(
            d -> {
              back(d, Back.Kind.GROOVE);
              onFloor(d);
            });
    Figure sway = find(strength, "sway").orElseThrow();
    double joints = input(sway, "J") - input(sway, "B");
    double h = input(sway, "h");
    double free = input(sway, "φ");
    double back = input(sway, "K");
    double moment = input(sway, "P") * h;
    double held = (moment + back * free) / (joints + back);
    assertThat(sway.formula().contains("min")).isEqualTo(joints > 0);
    assertThat(sway.value().value())
        .isCloseTo(h * (joints > 0 ? Math.min(moment / joints, held) : held), withPercentage(0.1));
  }

  @Test
  void aLoadedCaseWithoutABackFallsAndTheCuresHoldIt() {
    Strength strength = of(d -> d.back = Optional.empty());
    Finding falls = ofKind(strength, "case-sways").getFirst();
    assertThat(falls.severity()).isEqualTo(Severity.ERROR);
    assertThat(falls.place().part()).contains("L");
    assertThat(find(strength, "sway")).isEmpty();
    assertThat(value(strength, "sway-reserve")).isLessThan(1);
    assertThat(falls.remedies())
        .anySatisfy(r -> assertThat(r.what()).startsWith("put a back of 'back' on"));
    assertThat(ofKind(of(d -> back(d, Back.Kind.APPLIED)), "case-sways")).isEmpty();
  }

  /** Plywood of 1/4 in stands in for it, and holds when the case is built with that. */
  @Test
  void aBackIsOfferedWhereTheJobHasNoThinSheet() {
    CaseDraft draft = new CaseDraft();
    draft.back = Optional.empty();
    Job job = SampleJobs.job(draft.order());
    List<Material> thick = job.materials().stream().filter(m -> !m.name().equals("back")).toList();
    Strength strength = check(JobDraft.changed(job, d -> d.materials = thick));
    assertThat(ofKind(strength, "case-sways").getFirst().remedies())
        .extracting(Finding.Remedy::what)
        .anyMatch(
            what ->
                what.startsWith(
                        "put a back of 'plywood, veneer core, 1/4 in' (the job states no thin sheet"
                            + " yet) on, screwed all round")
                    && !what.contains("still"));
    back(draft, Back.Kind.APPLIED);
    Material plywood = SampleJobs.sheet("back", "plywood, veneer core", "1/4", "1/4");
    List<Material> bought = Stream.concat(thick.stream(), Stream.of(plywood)).toList();
    Job backed = SampleJobs.job(draft.order());
    assertThat(ofKind(check(JobDraft.changed(backed, d -> d.materials = bought)), "case-sways"))
        .isEmpty();
  }

  /** Of 72 in, one sheet is 48 wide: a piece for each of two bays is 36 wide and 1/2 over. */
  @ParameterizedTest
  @CsvSource({
    "48, 'put a back of ''back'' on, a piece for each bay, screwed all round: '",
    "80, 'put a back of ''back'' on, screwed all round: '",
    "36, 'put a back of ''back'' on, a piece for each bay, screwed all round, once the job has stock of ''back'' that is large enough: '"
  })
  void aNewBackIsOfAsManyPiecesAsTheStockGives(String wide, String words) {
    CaseDraft draft = new CaseDraft();
    draft.back = Optional.empty();
    Job job = SampleJobs.job(draft.order());
    SheetStock stock =
        new SheetStock(
            "back", in("96"), in(wide), Optional.empty(), Optional.empty(), Supply.TO_BUY);
    Finding falls =
        ofKind(check(JobDraft.changed(job, d -> d.sheets = List.of(stock))), "case-sways")
            .getFirst();
    assertThat(falls.remedies()).anySatisfy(r -> assertThat(r.what()).startsWith(words));
  }

  /** A case that stands by itself for years is not said to lean over in time. */
  @Test
  void aPushThatIsTooMuchIsToldAsAPush() {
    Strength pushed =
        of(
            d -> {
              back(d, Back.Kind.RABBET);
              d.settings = d.settings.with(Setting.SWAY_PUSH, new SettingValue.OfNumber(1e6));
            });
    assertThat(value(pushed, "sway-reserve")).isGreaterThan(10);
    Finding sways = ofKind(pushed, "case-sways").getFirst();
    assertThat(sways.severity()).isEqualTo(Severity.ERROR);
    assertThat(sways.what())
        .contains("pushed sideways by", "breaks joints")
        .doesNotContain("creep");
  }

  @Test
  void aLooseBackIsGluedByOneSetting() {
    Consumer<CaseDraft> strict =
        d -> {
          back(d, Back.Kind.GROOVE);
          d.settings = d.settings.with(Setting.SWAY_LIMIT, new SettingValue.OfNumber(1000));
        };
    Finding sways = ofKind(of(strict), "case-sways").getFirst();
    assertThat(sways.severity()).isEqualTo(Severity.DOUBT);
    assertThat(sways.remedies().getFirst().stated())
        .contains(new Stated.OfSetting(Setting.BACK_FIXING, "glued"));
    assertThat(ofKind(of(strict.andThen(RackingTest::glue)), "case-sways")).isEmpty();
  }

  @Test
  void solidBacksAreNotToBeGlued() {
    Strength strength =
        of(
            d -> {
              d.back =
                  Optional.of(new Back(Back.Kind.RABBET, "oak", Optional.empty(), Back.Pieces.ONE));
              glue(d);
            });
    assertThat(ofKind(strength, "back-splits")).hasSize(1);
  }

  /** What stands in it adds to a push: half of what would fell it doubles the sway. */
  @Test
  void whatStandsInItLeansWithIt() {
    SwayFrame empty = new SwayFrame(1000, 2e7, 0, 0, 0);
    SwayFrame half = new SwayFrame(1000, 2e7, 0, 0, 1e7);
    assertThat(half.sway(100).orElseThrow())
        .isCloseTo(2 * empty.sway(100).orElseThrow(), within(1e-9));
    assertThat(new SwayFrame(1000, 2e7, 0, 0, 2e7).sway(1)).isEmpty();
    assertThat(half.reserve()).isEqualTo(2);
  }

  /** A loose panel does nothing before it jams, and all after. */
  @Test
  void aFrameLeansFreelyFirst() {
    SwayFrame frame = new SwayFrame(1000, 2e7, 1e9, 0.002, 0);
    assertThat(frame.sway(30).orElseThrow()).isCloseTo(1.5, within(1e-9));
    double lean = (100 * 1000 + 1e9 * 0.002) / (2e7 + 1e9);
    assertThat(frame.sway(100).orElseThrow()).isCloseTo(1000 * lean, within(1e-9));
    assertThat(List.of(frame.sway(30).orElseThrow(), frame.sway(100).orElseThrow())).isSorted();
  }

  private static Consumer<CaseDraft> onLegs(String height, String kick) {
    return d -> {
      back(d, Back.Kind.RABBET);
      d.kick = Optional.of(new Kick(in(height), in("0"), kick));
    };
  }

  /** By hand: a frame above, legs below, each with its burden; two equations of moments. */
  @ParameterizedTest
  @CsvSource({"3.5, ply", "20, ply", "20, back"})
  void whatStandsBelowTheBottomSwaysToo(String height, String kick) {
    Figure sway = find(of(onLegs(height, kick)), "sway").orElseThrow();
    double above = input(sway, "J") + input(sway, "K") - input(sway, "B");
    double below = input(sway, "L") - input(sway, "D");
    double coupled = input(sway, "C");
    double h = input(sway, "h");
    double l = input(sway, "l");
    double push = input(sway, "P");
    assertThat(sway.value().value() * (above * below - coupled * coupled))
        .isCloseTo(
            push * (below * h * h + 2 * coupled * h * l + above * l * l), withPercentage(1e-6));
    assertThat(l).isCloseTo(25.4 * (Double.parseDouble(height) + 0.375), within(1.0));
  }

  /** All that stands on the legs leans them, as high as they are; what is in the legs less. */
  @Test
  void allThatTheCaseWeighsStandsOnItsLegs() {
    Strength strength = of(onLegs("20", "ply"));
    Figure sway = find(strength, "sway").orElseThrow();
    double weight =
        strength.cases().getFirst().standing().stream()
            .filter(f -> f.id().equals("north/weight-up-loaded"))
            .flatMap(f -> f.inputs().stream())
            .filter(i -> i.symbol().equals("F"))
            .mapToDouble(i -> i.value().value())
            .sum();
    double onTop =
        strength.cases().getFirst().standing().stream()
            .filter(f -> f.id().equals("north/floor-load"))
            .mapToDouble(f -> input(f, "F₃"))
            .sum();
    assertThat(onTop).isPositive();
    weight += onTop;
    assertThat(input(sway, "D"))
        .isBetween(0.95 * weight * input(sway, "l"), weight * input(sway, "l"));
  }

  /** Four screws 3 3/4 in apart, pulled as stiffly as they slide; 15 in are bored for four. */
  @Test
  void aKickHoldsItsLegsByItsScrews() {
    Strength strength = of(onLegs("20", "ply"));
    Figure kick = find(strength, "sway-kick-stiffness").orElseThrow();
    double squares =
        kick.inputs().stream()
            .filter(i -> i.symbol().equals("r"))
            .mapToDouble(i -> i.value().value() * i.value().value())
            .sum();
    assertThat(squares).isCloseTo(2 * 25.4 * 25.4 * (2.5 * 2.5 + 7.5 * 7.5), within(1e-6));
    double end = input(kick, "k") * squares;
    assertThat(kick.value().value())
        .isCloseTo(
            2
                / (1 / end
                    + input(kick, "b") / (6 * input(kick, "E I"))
                    + 2 / (input(kick, "b") * input(kick, "G A"))),
            withPercentage(1e-9));
    assertThat(find(strength, "sway").orElseThrow().title()).contains("braced by the kick");
  }

  @Test
  void aKickTooThinForItsScrewsIsNotCountedOn() {
    Strength strength = of(onLegs("20", "back"));
    assertThat(find(strength, "sway-kick-stiffness")).isEmpty();
    assertThat(find(strength, "sway").orElseThrow().title())
        .contains("the kick too thin for its screws and not counted on");
    assertThat(value(strength, "sway")).isGreaterThan(10 * value(of(onLegs("20", "ply")), "sway"));
  }

  /** Tall legs in butt joints under books, and no kick that holds: cures say what would. */
  @Test
  void legsThatLeanOverAreAnErrorAndAKickThatHoldsCuresIt() {
    Consumer<CaseDraft> tall =
        onLegs("60", "back")
            .andThen(
                d -> {
                  d.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("72"), in("110"), in("8"));
                  d.bottomJoint = CaseDraft.joint(Joint.Kind.BUTT, "0");
                });
    Finding falls = ofKind(of(tall), "case-sways").getFirst();
    assertThat(falls.severity()).isEqualTo(Severity.ERROR);
    assertThat(falls.what()).contains("gives way below its bottom first");
    assertThat(falls.place().part()).contains("K");
    assertThat(falls.remedies().getFirst().what()).startsWith("make the kick of 'ply'");
    assertThat(
            ofKind(
                of(tall.andThen(d -> d.kick = Optional.of(new Kick(in("60"), in("0"), "ply")))),
                "case-sways"))
        .isEmpty();
  }

  /** Boards in front and at the back hold the legs twice as stiffly, as the cure told. */
  @Test
  void aSecondBoardHoldsLegsAsItsCureSays() {
    Consumer<CaseDraft> legs = onLegs("20", "ply");
    Consumer<CaseDraft> strict =
        legs.andThen(
            d -> {
              d.set(Setting.SWAY_PUSH, 2000);
              d.set(Setting.SWAY_LIMIT, 1000);
            });
    Finding sways = ofKind(of(strict), "case-sways").getFirst();
    String cure =
        sways.remedies().stream()
            .map(Remedy::what)
            .filter(what -> what.startsWith("screw a second board like the kick"))
            .findFirst()
            .orElseThrow();
    Strength board =
        of(
            strict.andThen(
                d ->
                    d.settings =
                        d.settings.with(Setting.BEHIND_KICK, new SettingValue.OfChoice("board"))));
    assertThat(value(board, "sway-kick-stiffness"))
        .isCloseTo(2 * value(of(legs), "sway-kick-stiffness"), withPercentage(1e-9));
    assertThat(cure)
        .contains(", and set behind-kick to board: sway ")
        .contains("sway " + find(board, "sway").orElseThrow().value().text(Unit.INCH));
    assertThat(find(board, "sway").orElseThrow().title())
        .contains("braced by the kick and a second one alone");
  }

  /** A loose back is not reached where the legs give first. */
  @Test
  void aLooseBackOnLegsIsWorkedOutAsTheFormulaSays() {
    Strength strength =
        of(
            d -> {
              back(d, Back.Kind.GROOVE);
              d.kick = Optional.of(new Kick(in("20"), in("0"), "ply"));
            });
    Figure sway = find(strength, "sway").orElseThrow();
    double above = input(sway, "J") + input(sway, "K") - input(sway, "B");
    double below = input(sway, "L") - input(sway, "D");
    double c = input(sway, "C");
    double h = input(sway, "h");
    double l = input(sway, "l");
    double under = input(sway, "P") * l;
    double moment = input(sway, "P") * h + input(sway, "K") * input(sway, "φ");
    assertThat(sway.value().value())
        .isCloseTo(
            (h * (below * moment + c * under) + l * (above * under + c * moment))
                / (above * below - c * c),
            withPercentage(1e-6));
  }
}
