package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.measure.Inputs.input;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import fourpin.strength.SpanTable.Lying;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Shelves that hold their load spread evenly, and not in a row. They have a strip in front, so that
 * a row against the back sags them most.
 */
@ExtendWith(CommaDecimals.class)
class FrontRowTest {

  private static final String LIGHT = "discs in cases";

  private static final double LEAST_LIMIT = 100;

  private static Optional<Figure> find(ShelfAnswer shelf, String end) {
    return shelf.figures().stream().filter(f -> f.id().endsWith("/" + end)).findFirst();
  }

  private static double value(ShelfAnswer shelf, String end) {
    return find(shelf, end).orElseThrow().value().value();
  }

  /** Under things so light that codes and usual limits do not matter. */
  private static CaseDraft light() {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.Holds(LIGHT));
    draft.settings =
        draft.settings.with(Setting.SAG_LIMIT_YEARS, new SettingValue.OfNumber(LEAST_LIMIT));
    return draft;
  }

  private static Strength with(Setting setting, double number) {
    CaseDraft draft = light();
    draft.settings = draft.settings.with(setting, new SettingValue.OfNumber(number));
    return check(SampleJobs.job(draft.order()));
  }

  private static Strength plain() {
    return check(SampleJobs.job(light().order()));
  }

  private static ShelfAnswer first(Strength strength) {
    return strength.shelves().getFirst();
  }

  /**
   * By statics: each front support carries half of what the row, whose middle lies half its depth
   * behind the front edge, and the shelf's own weight bring to the front row.
   */
  @Test
  void theRowPressesOnTheFrontSupports() {
    ShelfAnswer shelf = first(plain());
    Figure push = find(shelf, "plate-front-row-push").orElseThrow();
    Figure front = find(shelf, "load-front").orElseThrow();
    double between = input(front, "D") - input(front, "a") - input(front, "b");
    double back = input(front, "D") - input(front, "b");
    double row = (back - input(push, "d") / 2) / between;
    double own = (back - input(front, "D") / 2) / between;
    double length = input(push, "l");
    assertThat(push.value().value())
        .isCloseTo(
            (input(push, "q") * row + input(push, "g") * own) * length / 2, withPercentage(2));
  }

  /** What is drawn goes down as far as the figure beside it says, which no other way exceeds. */
  @Test
  void itIsDrawnAsItSagsMost() {
    ShelfAnswer shelf = first(plain());
    ShelfShape drawn = shelf.shape().orElseThrow();
    assertThat(drawn.load()).isEqualTo(Lying.AGAINST_THE_BACK);
    assertThat(find(shelf, "plate-back-row")).contains(drawn.now());
    assertThat(find(shelf, "plate-back-row-years")).contains(drawn.years());
    assertThat(shelf.most())
        .isEqualTo(
            new ShelfAnswer.WorstSag("in a row against the back", drawn.now(), drawn.years()));
    assertThat(Collections.max(drawn.sags().get(Spot.BACK)))
        .isCloseTo(drawn.now().value().value(), withPercentage(1))
        .isGreaterThan(shelf.sagNow().value().value())
        .isGreaterThan(value(shelf, "plate-front-row"))
        .isGreaterThan(value(shelf, "plate-half"));
  }

  @Test
  void whatStandsInNoRowIsDrawnUnderAnEvenLoad() {
    ShelfAnswer shelf = first(stated(0.2, in("40")));
    ShelfShape drawn = shelf.shape().orElseThrow();
    assertThat(drawn.load()).isEqualTo(Lying.EVENLY);
    assertThat(List.of(drawn.now(), drawn.years()))
        .containsExactly(shelf.sagNow(), shelf.sagYears());
    assertThat(shelf.most())
        .isEqualTo(new ShelfAnswer.WorstSag("spread evenly", drawn.now(), drawn.years()));
  }

  /** A rating between what the even load and the row put on a support is passed by the row. */
  @Test
  void supportsOverTheirRatingUnderTheRowAloneAreAnError() {
    ShelfAnswer shelf = first(plain());
    double even = value(shelf, "plate-load-front");
    double row = value(shelf, "plate-front-row-push");
    assertThat(row).isGreaterThan(1.1 * even);
    Strength between = with(Setting.SUPPORT_RATING, (even + row) / 2);
    Finding finding = ofKind(between, "support-rating").getFirst();
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.what())
        .contains(": with its load in a row 5.31 in deep along the front edge a support carries ")
        .contains("; its maker rates it for ")
        .contains(". Spread evenly that load brings ");
    assertThat(finding.figures())
        .extracting(Figure::value)
        .extracting(Quantity::value)
        .startsWith(row);
    assertThat(find(first(between), "support-push")).contains(finding.figures().getFirst());
    assertThat(first(between).beyond())
        .containsExactly(
            "presses more on a support than is allowed with its load in a row 5.31 in deep along the"
                + " front edge, and with its load in a row 5.31 in deep against the back");
    assertThat(ofKind(with(Setting.SUPPORT_RATING, 1.01 * row), "support-rating")).isEmpty();
  }

  /**
   * Of the wider ones of these cases the row passes both codes where the even load passes one: what
   * is worst is named and graded, though the even load fails as well.
   */
  @Test
  void theWorstWayInWhichTheLoadLiesIsGraded() {
    Set<String> grades = new TreeSet<>();
    for (int inches = 16; inches <= 68; inches += 4) {
      Strength strength = check(SampleJobs.job(books(inches).order()));
      ShelfAnswer shelf = first(strength);
      double row = value(shelf, "plate-front-row-push");
      grades.add(grade(shelf, value(shelf, "plate-load-front")) + " " + grade(shelf, row));
      List<Finding> crushes = ofKind(strength, "support-crushes");
      assertThat(crushes.isEmpty() ? "WITHIN" : crushes.getFirst().severity().name())
          .isEqualTo(grade(shelf, row));
      assertThat(crushes)
          .allMatch(f -> f.what().contains(": with its load in a row "))
          .allMatch(f -> f.figures().getFirst().value().value() == row);
    }
    assertThat(grades).contains("WITHIN DOUBT", "DOUBT DOUBT", "DOUBT ERROR", "ERROR ERROR");
  }

  private static CaseDraft books(int wide) {
    CaseDraft draft = new CaseDraft();
    draft.sizes =
        new Sizes(Sizes.Measured.OUTSIDE, Length.inches(wide), in("84"), Length.inches(12));
    draft.bays = List.of(Shelving.bay(Shelving.shelves("ply", List.of()), SampleJobs.pins()));
    draft.load = Optional.of(new Load.Holds("books, heavy"));
    return draft;
  }

  /** Over both codes an error, over one a doubt. */
  private static String grade(ShelfAnswer shelf, double push) {
    long over =
        Stream.of("support-allowed-nds", "support-allowed-ec5")
            .filter(code -> push > value(shelf, code))
            .count();
    return List.of("WITHIN", "DOUBT", "ERROR").get((int) over);
  }

  /** What is wrong under the even load is told once. */
  @Test
  void aSagThatTheEvenLoadBreaksIsToldAsSuch() {
    Strength limp = with(Setting.SAG_LIMIT, 1.1 * spanOver(first(plain()), "sag-now"));
    assertThat(ofKind(limp, "sag")).isNotEmpty();
    assertThat(ofKind(limp, "row-sags")).isEmpty();
  }

  /** Between the stresses of both the row alone breaks the glass. */
  @Test
  void glassThatBreaksUnderTheRowAloneIsAnError() {
    ShelfAnswer shelf = first(glazed(20));
    double even = value(shelf, "plate-stress");
    double row = value(shelf, "plate-front-row-stress");
    assertThat(row).isGreaterThan(1.02 * even);
    Strength between = glazed((even + row) / 2);
    assertThat(ofKind(between, "glass-stress")).isEmpty();
    Finding breaks = ofKind(between, "row-breaks").getFirst();
    assertThat(breaks.severity()).isEqualTo(Severity.ERROR);
    assertThat(breaks.figures())
        .extracting(Figure::id)
        .containsExactly(
            shelfId(shelf) + "/plate-front-row-stress", shelfId(shelf) + "/plate-stress");
    assertThat(breaks.figures()).allSatisfy(f -> assertThat(shelf.figures()).contains(f));
    Figure stress = breaks.figures().getFirst();
    assertThat(breaks.what()).contains(stress.value().text(Unit.INCH));
    assertThat(input(stress, stress.inputs().getFirst().symbol()) + input(stress, "σₘ"))
        .isEqualTo(row);
    assertThat(ofKind(glazed(1.01 * row), "row-breaks")).isEmpty();
  }

  private static String shelfId(ShelfAnswer shelf) {
    String span = shelf.span().id();
    return span.substring(0, span.lastIndexOf('/'));
  }

  /**
   * Shelves of glass under discs.
   *
   * @param allowed MPa
   */
  private static Strength glazed(double allowed) {
    CaseDraft draft = light();
    draft.bays =
        Collections.nCopies(
            2, Shelving.bay(Shelving.shelves("glass", List.of()), SampleJobs.pins()));
    draft.settings = draft.settings.with(Setting.GLASS_STRESS, new SettingValue.OfNumber(allowed));
    Job job = SampleJobs.job(draft.order());
    return check(
        JobDraft.changed(
            job,
            d ->
                d.materials =
                    Stream.concat(job.materials().stream(), Stream.of(Shelving.glass("3/8")))
                        .toList()));
  }

  private static double spanOver(ShelfAnswer shelf, String sag) {
    return shelf.span().value().value() / value(shelf, sag);
  }

  /** Between the sags of both, in spans, the row alone sags too far. */
  @Test
  void shelvesThatSagTooFarUnderTheRowAloneAreADoubt() {
    ShelfAnswer shelf = first(plain());
    double even = spanOver(shelf, "sag-now");
    double row = spanOver(shelf, "plate-back-row");
    assertThat(row).isLessThan(even);
    Strength between = with(Setting.SAG_LIMIT, (even + row) / 2);
    assertThat(ofKind(between, "sag")).isEmpty();
    List<Finding> sags = ofKind(between, "row-sags");
    assertThat(sags).isNotEmpty().allMatch(f -> f.severity() == Severity.DOUBT);
    assertThat(sags.getFirst().what()).contains(" against the back it sags by ");
    Figure years = find(first(between), "plate-back-row-years").orElseThrow();
    assertThat(sags.getFirst().figures()).contains(years);
    assertThat(years.value().value()).isEqualTo(input(years, "k") * input(years, "s"));
    assertThat(input(years, "s")).isEqualTo(value(first(between), "plate-back-row"));
    assertThat(first(between).beyond()).hasSize(1);
  }

  /** What nobody names fills a shelf that is no deeper than the setting says. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 1, 3})
  void loadsAsDeepAsTheShelfStandInNoRow(double newtonPerMm) {
    Strength strength = stated(newtonPerMm, in("40"));
    assertThat(ofKind(strength, "row-sags")).isEmpty();
    assertThat(ofKind(strength, "support-crushes")).noneMatch(f -> f.what().contains("in a row"));
    assertThat(first(strength).beyond()).noneMatch(beyond -> beyond.contains("in a row"));
    assertThat(first(strength).checked())
        .isEqualTo("its load spread evenly, on one half of its length alone");
  }

  private static Strength stated(double newtonPerMm, Length deep) {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.PerLength(Quantity.of(newtonPerMm, QuantityUnit.LINE_LOAD)));
    draft.settings = draft.settings.with(Setting.ROW_DEPTH, new SettingValue.OfLength(deep));
    return check(SampleJobs.job(draft.order()));
  }

  /** The same weight presses alike, whether it is named or stated. */
  @Test
  void aStatedLoadStandsInARowAsTheSettingSays() {
    CaseDraft named = new CaseDraft();
    ShelfAnswer books = first(check(SampleJobs.job(named.order())));
    ShelfAnswer stated = first(stated(books.load().value().value(), in("6 1/2")));
    assertThat(value(stated, "plate-front-row-push"))
        .isEqualTo(value(books, "plate-front-row-push"));
    assertThat(stated.checked())
        .isEqualTo(
            "its load spread evenly, in a row 6.5 in deep along the front edge, in a row 6.5 in deep"
                + " against the back, on one half of its length alone");
  }

  /**
   * Records, 12 3/8 in deep, on a shelf less deep by so much that they stand out: by statics their
   * middle lies so far behind its front edge that the front supports carry more than all of a row.
   */
  @Test
  void thingsDeeperThanTheShelfPressOnItsFront() {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.Holds("records, 12 in"));
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("30"), in("84"), in("9"));
    ShelfAnswer shelf = first(check(SampleJobs.job(draft.order())));
    Figure push = find(shelf, "plate-front-row-push").orElseThrow();
    Figure front = find(shelf, "load-front").orElseThrow();
    double back = input(front, "D") - input(front, "b");
    double between = back - input(front, "a");
    double middle = input(front, "D") - input(push, "d") / 2;
    double own = (back - input(front, "D") / 2) / between;
    assertThat(input(push, "d")).isGreaterThan(input(front, "D"));
    assertThat(push.value().value())
        .isCloseTo(
            (input(push, "q") * (back - middle) / between + input(push, "g") * own)
                * input(push, "l")
                / 2,
            withPercentage(2))
        .isGreaterThan(1.5 * value(shelf, "plate-load-front"));
    assertThat(shelf.checked()).contains("against the back, standing out over the front edge");
  }

  /** Which is why nothing is said of a load on one half that the even load does not say. */
  @Test
  void oneHalfAlonePushesAndBendsLess() {
    ShelfAnswer shelf = first(plain());
    assertThat(value(shelf, "plate-half")).isLessThan(value(shelf, "sag-now"));
    assertThat(value(shelf, "plate-half-push")).isLessThan(value(shelf, "plate-load-front"));
  }
}
