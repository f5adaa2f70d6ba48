package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Edging;
import fourpin.job.Load;
import fourpin.job.QuantityReader;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Reading;
import fourpin.measure.Unit;
import fourpin.reference.Reference;
import fourpin.strength.BottomRitz.Front;
import fourpin.strength.BottomRitz.Patch;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.Use.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Shelves whose load stands in a row against the back. */
@ExtendWith(CommaDecimals.class)
class BackRowTest {

  private static final String DISCS = "discs in cases";

  private static CaseDraft plain(Edging... edging) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("36"), in("84"), in("12"));
    draft.load = Optional.of(new Load.Holds(DISCS));
    draft.bays = List.of(Shelving.bay(Shelving.shelves("ply", List.of(edging)), SampleJobs.pins()));
    return draft;
  }

  private static CaseDraft fixed(int inchesWide, int inchesDeep) {
    CaseDraft draft = plain();
    draft.sizes =
        new Sizes(
            Sizes.Measured.OUTSIDE, Length.inches(inchesWide), in("84"), Length.inches(inchesDeep));
    draft.bays =
        List.of(
            new Bay(
                Optional.empty(),
                List.of(in("40")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    return draft;
  }

  private static void set(CaseDraft draft, Setting setting, String value) {
    var read = (Reading.Good<SettingValue>) SettingReader.read(setting, value, Unit.INCH);
    draft.settings = draft.settings.with(setting, read.value());
  }

  private static Strength strength(CaseDraft draft) {
    return check(SampleJobs.job(draft.order()));
  }

  private static ShelfAnswer shelf(CaseDraft draft) {
    return strength(draft).shelves().getFirst();
  }

  private static Figure find(ShelfAnswer shelf, String end) {
    return shelf.figures().stream()
        .filter(f -> f.id().endsWith("/" + end))
        .findFirst()
        .orElseThrow();
  }

  private static double value(ShelfAnswer shelf, String end) {
    return find(shelf, end).value().value();
  }

  /**
   * A shelf in joints, its ends hinged and both edges free, is held against a series that shares
   * nothing with the program's elements.
   */
  @ParameterizedTest
  @CsvSource({"24, 12", "36, 12", "36, 20", "48, 16"})
  void aRowOnAFixedShelfAgreesWithASeries(int wide, int deep) {
    Figure sag = find(shelf(fixed(wide, deep)), "plate-back-row");
    assertThat(sag.value().value()).isCloseTo(series(sag), withPercentage(1));
    assertThat(sag.title()).endsWith("the load in a row against the back");
  }

  /** With moduli that give the figure's stiffnesses at a thickness whose cube is 12. */
  private static double series(Figure sag) {
    double length = input(sag, "l");
    double depth = input(sag, "D");
    double held = 1 - Math.pow(input(sag, "ν"), 2) * input(sag, "Dy") / input(sag, "Dx");
    Patch own = new Patch(input(sag, "g") / depth, 0, length, 0, depth);
    double deep = input(sag, "d");
    Patch row = new Patch(input(sag, "q") / deep, 0, length, depth - deep, depth);
    return new BottomRitz(
            Front.FREE,
            length,
            depth,
            Math.cbrt(12),
            input(sag, "Dx") * held,
            input(sag, "Dy") * held,
            input(sag, "Dxy"),
            input(sag, "ν"),
            List.of(own, row))
        .backEdge(length / 2);
  }

  /**
   * By statics: each back support carries half of what the row, whose middle lies half its depth
   * before the back edge, and the shelf's own weight bring to the back row.
   */
  @Test
  void theRowPressesOnTheBackSupports() {
    CaseDraft draft = plain();
    set(draft, Setting.BACK_ROW, "2 1/4 in");
    ShelfAnswer shelf = shelf(draft);
    Figure push = find(shelf, "plate-back-row-push");
    Figure back = find(shelf, "load-back");
    double between = input(back, "D") - input(back, "a") - input(back, "b");
    double front = input(back, "D") - input(back, "a");
    double row = (front - input(push, "d") / 2) / between;
    double own = (front - input(back, "D") / 2) / between;
    assertThat(push.value().value())
        .isCloseTo(
            (input(push, "q") * row + input(push, "g") * own) * input(push, "l") / 2,
            withPercentage(2));
  }

  /** A strip in front holds up the row there, and not the one at the other edge. */
  @Test
  void aStripInFrontDoesNotHoldUpTheBack() {
    CaseDraft draft = plain(SampleJobs.strip("3/4", "1 1/2"));
    ShelfAnswer shelf = shelf(draft);
    assertThat(value(shelf, "plate-back-row")).isGreaterThan(1.3 * value(shelf, "plate-front-row"));
    double between =
        shelf.span().value().value()
            / Math.sqrt(value(shelf, "plate-back-row") * value(shelf, "sag-now"));
    draft.settings =
        draft
            .settings
            .with(Setting.SAG_LIMIT, new SettingValue.OfNumber(between))
            .with(Setting.SAG_LIMIT_YEARS, new SettingValue.OfNumber(100));
    Finding sags = ofKind(strength(draft), "row-sags").getFirst();
    assertThat(sags.what())
        .contains(": with its load in a row 5.31 in deep against the back it sags");
    assertThat(shelf(draft).beyond())
        .containsExactly(
            "sags more than is allowed with its load in a row 5.31 in deep against the back");
  }

  /** Where rows in front and against the back sag a shelf alike, it is told once. */
  @Test
  void aShelfThatIsAlikeFrontAndBackIsToldOnce() {
    CaseDraft draft = plain();
    ShelfAnswer shelf = shelf(draft);
    double allowed = Math.sqrt(value(shelf, "plate-front-row") * value(shelf, "sag-now"));
    draft.settings =
        draft
            .settings
            .with(
                Setting.SAG_LIMIT,
                new SettingValue.OfNumber(shelf.span().value().value() / allowed))
            .with(Setting.SAG_LIMIT_YEARS, new SettingValue.OfNumber(100));
    List<Finding> sags = ofKind(strength(draft), "row-sags");
    assertThat(sags).hasSize(1);
    assertThat(sags.getFirst().what()).contains("along the front edge");
    assertThat(shelf(draft).beyond().getFirst())
        .contains("along the front edge", "against the back");
  }

  /** Seen from behind, a shelf that is alike front and back bends as it does from in front. */
  @ParameterizedTest
  @ValueSource(longs = {3, 31, 314})
  void seenFromBehindTheBackIsTheFront(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 12; i++) {
      Verdict verdict = verdict(alikeFrontAndBack(random));
      List<LoadCase> rows = verdict.shelf().cases().rows();
      assertThat(rows).hasSize(2);
      Optional<Bends> front = verdict.under(rows.getFirst());
      Optional<Bends> back = verdict.under(rows.getLast());
      assertThat(back.isPresent()).isEqualTo(front.isPresent());
      front.ifPresent(bends -> isMirrored(bends, back.orElseThrow()));
      assertThat(verdict.tipping(Over.BACK).contains(rows.getLast()))
          .isEqualTo(verdict.tipping(Over.FRONT).contains(rows.getFirst()));
    }
  }

  private static void isMirrored(Bends front, Bends back) {
    double nearly = 1e-6 * front.sag();
    assertThat(back.sag()).isCloseTo(front.sag(), within(nearly));
    assertThat(back.back()).isCloseTo(front.front(), within(nearly));
    assertThat(back.middle()).isCloseTo(front.middle(), within(nearly));
    assertThat(back.front()).isCloseTo(front.back(), within(nearly));
    assertThat(back.lifted()).isEqualTo(front.lifted());
    assertThat(back.stresses().get().getFirst().all())
        .isCloseTo(front.stresses().get().getFirst().all(), withPercentage(1e-3));
    assertThat(back.push()).isCloseTo(front.push(), withPercentage(1e-3));
    List<Double> pushes = new ArrayList<>(back.pushes());
    assertThat(pushes.reversed())
        .zipSatisfy(front.pushes(), (one, other) -> assertThat(one).isCloseTo(other, within(1e-3)));
  }

  private static CaseDraft alikeFrontAndBack(Random random) {
    List<Edging> edging =
        random.nextBoolean()
            ? List.of()
            : List.of(
                new Edging(
                    Edging.Kind.STRIP,
                    "oak",
                    in("3/4"),
                    in("1 1/4"),
                    List.of(Edging.Edge.FRONT, Edging.Edge.BACK)));
    CaseDraft draft = plain(edging.toArray(Edging[]::new));
    draft.sizes =
        new Sizes(
            Sizes.Measured.OUTSIDE,
            Length.inches(random.nextInt(18, 48)),
            in("84"),
            Length.inches(random.nextInt(18, 44), 2));
    String setback = random.nextInt(3, 20) + "/4 in";
    set(draft, Setting.FRONT_ROW, setback);
    set(draft, Setting.BACK_ROW, setback);
    return draft;
  }

  private static Verdict verdict(CaseDraft draft) {
    var job = SampleJobs.job(draft.order());
    var built = CaseworkBuilder.build(job).cases().getFirst();
    ShelfReader reader = new ShelfReader(job, built);
    return new Verdict(
        Candidate.of(reader.read(reader.shelves().getFirst()), List.of()),
        new PlateBending.Memory());
  }

  /** Discs 5.31 in deep have their middle 2.66 in before the back edge. */
  @ParameterizedTest
  @CsvSource({"2 1/2 in, false", "2 3/4 in, false", "4 in, true", "5 in, true"})
  void aRowBehindTheBackPinsTipsAShelf(String setback, boolean tips) {
    CaseDraft draft = plain();
    set(draft, Setting.BACK_ROW, setback);
    List<Finding> found = ofKind(strength(draft), "shelf-tips");
    assertThat(found.size()).isEqualTo(tips ? 1 : 0);
    assertThat(found)
        .allMatch(
            f ->
                f.what()
                    .endsWith(
                        "off the front supports under its load in a row 5.31 in deep against the back"));
  }

  /** Each cure that can be stated is; what it says of less against the back holds by statics. */
  @Test
  void itsCuresKeepItFromTipping() {
    CaseDraft draft = plain();
    set(draft, Setting.BACK_ROW, "4 in");
    List<Remedy> cures = ofKind(strength(draft), "shelf-tips").getFirst().remedies();
    Remedy nearer = cures.getFirst();
    assertThat(nearer.what()).startsWith("bring the back row to ").contains("from the back edge");
    var stated = (Stated.OfSetting) nearer.stated().orElseThrow();
    assertThat(stated.setting()).isEqualTo(Setting.BACK_ROW);
    set(draft, stated.setting(), stated.value());
    assertThat(ofKind(strength(draft), "shelf-tips")).isEmpty();
    assertThat(cures)
        .extracting(Remedy::what)
        .anyMatch(what -> what.startsWith("hold the shelf down over its front row"));
  }

  /** Weight times arm before the back pins against load times arm behind them. */
  @Test
  void aRowTipsAShelfAtTheLoadOfStatics() {
    CaseDraft draft = plain();
    set(draft, Setting.BACK_ROW, "3 1/4 in");
    Verdict verdict = verdict(draft);
    Figure tipping = find(shelf(draft), "tipping");
    double before = input(tipping, "y") - in("3 1/4").mm();
    double behind = in("3 1/4").mm() - Reference.things().get(DISCS).depth().mm() / 2;
    double most = input(tipping, "W") * before / behind / verdict.shelf().beam().length();
    LoadCase row = verdict.shelf().cases().rows().getLast();
    assertThat(verdict.uses(row, 0.999 * most)).noneMatch(use -> use.isBy(Limit.TIPPING));
    assertThat(verdict.uses(row, 1.001 * most)).anyMatch(use -> use.isBy(Limit.TIPPING));
    String less =
        ofKind(strength(draft), "shelf-tips").getFirst().remedies().stream()
            .map(Remedy::what)
            .filter(what -> what.startsWith("keep what stands in a row against the back to "))
            .findFirst()
            .orElseThrow();
    String named = less.substring(less.indexOf(" to ") + 4, less.indexOf(';'));
    var read = (Reading.Good<Quantity>) QuantityReader.LOAD.read(named);
    assertThat(read.value().value()).isBetween(0.97 * most, most);
  }
}
