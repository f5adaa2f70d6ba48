package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.bay;
import static fourpin.strength.Shelving.figures;
import static fourpin.strength.Shelving.glass;
import static fourpin.strength.Shelving.shelves;
import static fourpin.strength.Shelving.withMaterial;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Casework;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Sizes;
import fourpin.job.Support;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of any shelf. */
@ExtendWith(CommaDecimals.class)
class StrengthPropertiesTest {

  /** Whatever casework builds, strength answers. */
  @ParameterizedTest
  @ValueSource(longs = {1, 12, 123, 1234})
  void answersForWhateverCanBeBuilt(long seed) {
    Random random = new Random(seed);
    int built = 0;
    for (int i = 0; i < 150; i++) {
      Job job = withMaterial(glass("3/8"), anyBays(random));
      CaseDraft draft = CaseDraft.of(job.cases().getFirst());
      draft.sizes =
          new Sizes(
              Sizes.Measured.OUTSIDE,
              sixteenths(random, 16, 2400),
              sixteenths(random, 160, 1600),
              sixteenths(random, 16, 400));
      draft.edging = random.nextBoolean() ? List.of() : List.of(anyStrip(random));
      Casework casework = CaseworkBuilder.build(withCase(job, draft.order()));
      Strength strength = StrengthChecker.check(job, casework.cases());
      built += casework.cases().size();
      assertThat(
              strength.shelves().stream()
                  .flatMap(shelf -> figures(shelf).stream())
                  .filter(figure -> figure.value().value() < 0)
                  .map(Figure::id))
          .isEmpty();
    }
    assertThat(built).isGreaterThan(20);
  }

  /** A page points to them there, and would else point to nothing. */
  @ParameterizedTest
  @ValueSource(longs = {2, 23})
  void whatPassesItsLimitsIsToldCuresAtTheFirstOfThoseAlike(long seed) {
    Random random = new Random(seed);
    int beyond = 0;
    for (int i = 0; i < 12; i++) {
      Job job = withMaterial(glass("3/8"), anyBays(random));
      CaseDraft draft = CaseDraft.of(job.cases().getFirst());
      draft.edging = random.nextBoolean() ? List.of() : List.of(anyStrip(random));
      Casework casework = CaseworkBuilder.build(withCase(job, draft.order()));
      Strength strength = StrengthChecker.check(job, casework.cases());
      for (ShelfAnswer shelf : strength.shelves()) {
        if (!shelf.beyond().isEmpty()) {
          beyond++;
          assertThat(strength.findings())
              .anyMatch(
                  f ->
                      f.place().part().equals(Optional.of(shelf.alike()))
                          && f.severity() != Finding.Severity.NOTE
                          && !f.remedies().isEmpty());
        }
      }
    }
    assertThat(beyond).isPositive();
  }

  private static Job withCase(Job job, CaseOrder order) {
    return job.with(List.of(order));
  }

  private static Length sixteenths(Random random, int least, int most) {
    return Length.inches(random.nextInt(least, most), 16);
  }

  private static Bay[] anyBays(Random random) {
    Bay[] bays = new Bay[random.nextInt(1, 5)];
    for (int i = 0; i < bays.length; i++) {
      List<Edging> edging = random.nextBoolean() ? List.of() : List.of(anyStrip(random));
      String material = List.of("ply", "oak", "glass").get(random.nextInt(3));
      bays[i] = bay(shelves(material, edging), anySupport(random));
    }
    return bays;
  }

  private static Edging anyStrip(Random random) {
    return new Edging(
        random.nextBoolean() ? Edging.Kind.STRIP : Edging.Kind.BANDING,
        "oak",
        sixteenths(random, 1, 40),
        sixteenths(random, 12, 60),
        random.nextBoolean()
            ? List.of(Edging.Edge.FRONT)
            : List.of(Edging.Edge.FRONT, Edging.Edge.BACK));
  }

  private static Support anySupport(Random random) {
    Support.Pins pins =
        new Support.Pins(in("1/4"), in("3/8"), sixteenths(random, 1, 200), in("1/8"));
    return switch (random.nextInt(4)) {
      case 0 -> pins;
      case 1 -> new Support.Sleeved(pins, in("9/32"), in("3/8"), in("1/32"));
      case 2 ->
          new Support.Standards(
              random.nextBoolean() ? Support.Mounting.LET_IN : Support.Mounting.SURFACE,
              in("5/8"),
              in("3/16"),
              in("1/2"),
              in("1/4"),
              in("1/16"),
              in("1/8"),
              in("72"));
      default -> new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("1 1/4"), in("1"), in("3/4"));
    };
  }
}
