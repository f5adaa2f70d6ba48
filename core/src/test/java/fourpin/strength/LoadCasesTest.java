package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.job.Back;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shelves;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.Use.Limit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shelves held against their limits however their load lies. */
@ExtendWith(CommaDecimals.class)
class LoadCasesTest {

  /** Told first: what cures it need not cure a shelf that sags as well, and then says so. */
  private static final List<String> OF_TIPPING = List.of("shelf-tips");

  private static final List<String> OF_SHELF =
      List.of("sag", "row-sags", "half-sags", "glass-stress", "shelf-tips");

  private static final List<String> OF_SUPPORTS = List.of("support-crushes", "support-rating");

  private static final List<String> THINGS =
      List.of("books, average", "discs in cases", "records, 12 in", "records, 7 in");

  /** Things, sizes, edging and setbacks drawn at random. */
  private static CaseDraft any(Random random) {
    CaseDraft draft = new CaseDraft();
    draft.sizes =
        new Sizes(
            Sizes.Measured.OUTSIDE,
            Length.inches(random.nextInt(28, 80)),
            in("84"),
            Length.inches(random.nextInt(19, 34), 2));
    List<Edging> edging =
        random.nextBoolean() ? List.of() : List.of(SampleJobs.strip("3/4", "1 1/4"));
    draft.bays =
        Collections.nCopies(
            random.nextInt(1, 4), bay(random.nextBoolean() ? "ply" : "oak", edging));
    draft.load = Optional.of(new Load.Holds(THINGS.get(random.nextInt(THINGS.size()))));
    set(draft, Setting.FRONT_ROW, Length.inches(random.nextInt(4, 14), 4));
    return draft;
  }

  private static Bay bay(String material, List<Edging> edging) {
    return Shelving.bay(Shelving.shelves(material, edging), SampleJobs.pins());
  }

  private static void set(CaseDraft draft, Setting setting, Length length) {
    draft.settings = draft.settings.with(setting, new SettingValue.OfLength(length));
  }

  private static Verdict verdict(CaseDraft draft) {
    Job job = SampleJobs.job(draft.order());
    var built = CaseworkBuilder.build(job).cases().getFirst();
    ShelfReader reader = new ShelfReader(job, built);
    var shelf = reader.shelves().getFirst();
    List<SupportLimit> limits = new SupportReader(job, built).limits(shelf, reader);
    return new Verdict(Candidate.of(reader.read(shelf), limits), new PlateBending.Memory());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 22, 333})
  void moreLoadSagsAndPressesMoreHoweverItLies(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 20; i++) {
      Verdict verdict = verdict(any(random));
      double load = random.nextDouble(0.01, 2);
      for (LoadCase of : verdict.shelf().cases().loaded()) {
        List<Use> less = verdict.uses(of, load).toList();
        List<Use> more = verdict.uses(of, 1.1 * load).toList();
        assertThat(more.stream().map(Use::share).toList())
            .zipSatisfy(
                less.stream().map(Use::share).toList(),
                (much, little) -> assertThat(much).isGreaterThanOrEqualTo(little));
      }
    }
  }

  /** Cures that tip by statics are not bent at all. */
  @ParameterizedTest
  @ValueSource(longs = {7, 77})
  void aPlateTipsWhereLoadAndWeightRestBeforeItsFrontRow(long seed) {
    Random random = new Random(seed);
    Set<Boolean> seen = new HashSet<>();
    for (int i = 0; i < 30; i++) {
      Verdict verdict = verdict(any(random));
      double front = ((Bearing.Rows) verdict.shelf().bearing()).front().number();
      for (LoadCase of :
          List.of(LoadCase.EVEN, LoadCase.ONE_HALF, verdict.shelf().cases().empty())) {
        boolean before = Resting.of(verdict.shelf(), of).middle() < front;
        assertThat(verdict.under(of).isEmpty()).isEqualTo(before);
        seen.add(before);
      }
    }
    assertThat(seen).containsExactlyInAnyOrder(true, false);
  }

  /** Bent with that load, some way in which it lies just meets a limit; with more it passes it. */
  @ParameterizedTest
  @ValueSource(longs = {4, 55, 666})
  void atTheLargestLoadSomeLimitIsJustMet(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 20; i++) {
      Verdict verdict = verdict(any(random));
      Verdict.Most most = verdict.largestLoad();
      assertThat(most.number()).isPositive();
      assertThat(loaded(verdict, most.number())).allMatch(Use::holds);
      assertThat(loaded(verdict, 1.00001 * most.number())).anyMatch(use -> !use.holds());
      assertThat(most.governs().isBy(Limit.TIPPING) || most.governs().share() > 1 - 1e-6).isTrue();
    }
  }

  private static List<Use> loaded(Verdict verdict, double load) {
    return verdict.shelf().cases().loaded().stream().flatMap(of -> verdict.uses(of, load)).toList();
  }

  /** Each length that is named as the longest holds, bent anew; one 2 % longer does not. */
  @ParameterizedTest
  @ValueSource(longs = {7, 88})
  void theLongestSpanHoldsHoweverTheLoadLies(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 8; i++) {
      Verdict verdict = verdict(any(random));
      Optional<Verdict.Most> found = verdict.longestSpan();
      if (found.isEmpty()) {
        assertThat(List.of(100.0, 300.0, 600.0, 1000.0))
            .noneMatch(span -> over(verdict, span).holds());
        continue;
      }
      double longest = found.get().number();
      assertThat(loaded(over(verdict, longest), verdict.shelf().beam().load()))
          .allMatch(Use::holds);
      assertThat(over(verdict, 1.02 * longest).holds()).isFalse();
    }
  }

  private static Verdict over(Verdict verdict, double span) {
    return new Verdict(verdict.shelf().over(span), new PlateBending.Memory());
  }

  /** What is offered to be written into the job leaves no fault of its kind when it is. */
  @ParameterizedTest
  @ValueSource(longs = {9, 101, 1111, 12121})
  void curesHoldHoweverTheLoadLies(long seed) {
    Random random = new Random(seed);
    int cured = 0;
    for (int i = 0; i < 12; i++) {
      CaseDraft draft = any(random);
      for (Finding finding : check(SampleJobs.job(draft.order())).findings()) {
        List<String> kinds = kinds(finding);
        for (Remedy remedy : kinds.isEmpty() ? List.<Remedy>of() : finding.remedies()) {
          for (CaseDraft with : remedy.stated().stream().flatMap(s -> with(draft, s)).toList()) {
            cured++;
            assertThat(check(SampleJobs.job(with.order())).findings())
                .as(finding.what() + ": " + remedy.what())
                .extracting(Finding::kind)
                .doesNotContainAnyElementsOf(kinds);
          }
        }
      }
    }
    assertThat(cured).isGreaterThan(5);
  }

  private static List<String> kinds(Finding finding) {
    return Stream.of(OF_TIPPING, OF_SHELF, OF_SUPPORTS)
        .filter(kinds -> kinds.contains(finding.kind()))
        .findFirst()
        .orElse(List.of());
  }

  private static Stream<CaseDraft> with(CaseDraft draft, Stated stated) {
    CaseDraft with = CaseDraft.of(draft.order());
    switch (stated) {
      case Stated.OfSetting(Setting setting, String value) ->
          set(with, setting, in(value.replace(" in", "")));
      case Stated.ShelvesOf(Optional<String> material, Optional<Edging> strip) ->
          with.bays =
              with.bays.stream()
                  .map(b -> b.shelves().orElseThrow())
                  .map(s -> made(s, material, strip))
                  .map(s -> Shelving.bay(s, SampleJobs.pins()))
                  .toList();
      case Stated.Partitions(int count) -> {
        List<Bay> bays = new ArrayList<>();
        with.bays.forEach(bay -> bays.addAll(Collections.nCopies(count + 1, bay)));
        with.bays = bays;
      }
      case Stated.Together(List<Stated.One> each) -> {
        Stream<CaseDraft> all = Stream.of(draft);
        for (Stated.One one : each) {
          all = one instanceof Stated.EverySecondBay ? all : all.flatMap(d -> with(d, one));
        }
        return all;
      }
      default -> {
        return Stream.empty();
      }
    }
    return Stream.of(with);
  }

  private static Shelves made(Shelves now, Optional<String> material, Optional<Edging> strip) {
    return Shelving.shelves(
        material.orElse(now.material()), strip.map(List::of).orElse(now.edging()));
  }

  /**
   * Discs 5.31 in deep lean on the shelf 2.66 in behind its front edge: before front pins that
   * stand back 4 in, whatever a hand does.
   */
  @Test
  void aShelfThatTipsUnderTheRowAloneIsFoundFaultWith() {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.Holds("discs in cases"));
    set(draft, Setting.FRONT_ROW, in("4"));
    draft.settings = draft.settings.with(Setting.HAND_PUSH, new SettingValue.OfNumber(0.1));
    Strength strength = check(SampleJobs.job(draft.order()));
    Finding tips = ofKind(strength, "shelf-tips").getFirst();
    assertThat(tips.severity()).isEqualTo(Severity.ERROR);
    assertThat(tips.what())
        .endsWith(
            " tip off the back supports under its load in a row 5.31 in deep along the front edge");
    assertThat(strength.shelves().getFirst().beyond())
        .anyMatch(beyond -> beyond.startsWith("tips off its supports under its load in a row"));
    set(draft, Setting.FRONT_ROW, in("2"));
    assertThat(ofKind(check(SampleJobs.job(draft.order())), "shelf-tips")).isEmpty();
  }

  /** A pin in the back lets a corner of the empty half rise, which is told with the cure. */
  @Test
  void aPropUnderTheBackEdgeIsToldToLift() {
    CaseDraft draft = new CaseDraft();
    draft.bays = Collections.nCopies(2, bay("ply", List.of(SampleJobs.strip("3/4", "2"))));
    draft.load = Optional.of(new Load.PerLength(Quantity.of(0.6, QuantityUnit.LINE_LOAD)));
    assertThat(backProps(draft)).isEmpty();
    draft.back = Optional.of(new Back(Back.Kind.APPLIED, "ply", Optional.empty(), Back.Pieces.ONE));
    Verdict verdict = verdict(draft);
    Verdict held =
        new Verdict(verdict.shelf().held(ShelfPlate.Prop.BACK), new PlateBending.Memory());
    assertThat(held.atEmptyEnd()).anyMatch(push -> push <= 0);
    assertThat(Uprights.lifting(held))
        .isEqualTo(
            "; fasten the shelf to it, or a corner of its empty end lifts with the other half loaded"
                + " alone");
    assertThat(backProps(draft))
        .isNotEmpty()
        .allMatch(what -> what.contains(Uprights.lifting(held)));
  }

  /** None on a back that is loose and thin; on one that is screwed on, its fixing is named. */
  private static List<String> backProps(CaseDraft draft) {
    return ofKind(check(SampleJobs.job(draft.order())), "sag").getFirst().remedies().stream()
        .map(Remedy::what)
        .filter(what -> what.startsWith("hold its back edge up"))
        .toList();
  }

  /** What governs is named with what it allows. */
  @Test
  void whatGovernsIsNamed() {
    CaseDraft draft = new CaseDraft();
    Strength strength = check(SampleJobs.job(draft.order()));
    Use governs = verdict(draft).largestLoad().governs();
    assertThat(governs.by()).isEqualTo(Limit.SAG);
    assertThat(governs.of().words(Unit.INCH)).startsWith("its load in a row 6.5 in deep");
    assertThat(Shelving.named(strength.shelves().getFirst(), "largest-load").title())
        .isEqualTo(
            "largest load within the limits however it lies (sag, load in a row against the back)");
  }
}
