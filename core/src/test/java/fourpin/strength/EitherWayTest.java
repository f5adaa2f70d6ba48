package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.PlateShelving.find;
import static fourpin.strength.PlateShelving.value;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Grain;
import fourpin.job.Material.Kind;
import fourpin.job.SampleJobs;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.reference.Reference;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Materials whose parts may be cut with their grain along them or across. */
@ExtendWith(CommaDecimals.class)
class EitherWayTest {

  private static Material material(String of, Grain grain, Kind kind) {
    return new Material(
        "thing", kind, of, in("3/4"), Optional.empty(), grain, Optional.empty(), Optional.empty());
  }

  private static Material sheet(String of, Grain grain) {
    return material(of, grain, Kind.SHEET);
  }

  private static ShelfAnswer shelf(Material of) {
    return PlateShelving.check(draft(of), of).shelves().getFirst();
  }

  private static CaseDraft draft(Material of) {
    return PlateShelving.shelves(of.name());
  }

  /** Wood Handbook FPL-GTR-190, Table 12-1, for what is along; across as the table here says. */
  @ParameterizedTest
  @CsvSource({
    "'plywood, softwood', 7760, 2500",
    "'plywood, veneer core', 8270, 3500",
    "'plywood, birch throughout', 10050, 7450",
    "OSB, 5350, 2540"
  })
  void aPanelThatMayLieEitherWayIsAsStiffAsTheWeaker(String of, double along, double across) {
    Flat laid = Matters.of(sheet(of, Grain.LENGTHWISE)).flat();
    Flat either = Matters.of(sheet(of, Grain.NONE)).flat();
    assertThat(laid.along().number()).isEqualTo(along);
    assertThat(either.along().number()).isCloseTo(across, withPercentage(1e-9));
    assertThat(either.across().number()).isCloseTo(across, withPercentage(1e-9));
    assertThat(either.along().source().text()).contains("weaker way", "grain none");
  }

  /** Neither the shelf with its grain along nor the one with its grain across is stiffer. */
  @ParameterizedTest
  @ValueSource(strings = {"plywood, softwood", "plywood, birch throughout", "OSB"})
  void noWayOfCuttingSagsMore(String of) {
    Material laid = sheet(of, Grain.LENGTHWISE);
    double along = Matters.of(laid).modulus().number();
    double across = Matters.of(laid).flat().across().number();
    double sag = value(shelf(sheet(of, Grain.NONE)), "sag-now");
    assertThat(sag).isGreaterThan(value(shelf(laid), "sag-now"));
    Material turned =
        new Material(
            "thing",
            Kind.SHEET,
            "particleboard",
            in("3/4"),
            Optional.empty(),
            Grain.LENGTHWISE,
            Optional.of(Quantity.of(across, QuantityUnit.STRESS)),
            Optional.of(Matters.of(laid).density().value()));
    assertThat(across).isLessThan(along);
    assertThat(sag).isGreaterThanOrEqualTo(0.98 * value(shelf(turned), "sag-now"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"MDF", "particleboard", "hardboard", "plywood, MDF core"})
  void whatIsAlikeAllWaysIsAsBefore(String of) {
    Material none = sheet(of, Grain.NONE);
    assertThat(Matters.isCutEitherWay(none)).isFalse();
    assertThat(Matters.of(none)).isEqualTo(Matters.of(sheet(of, Grain.LENGTHWISE)));
    assertThat(ofKind(PlateShelving.check(draft(none), none), "either-way")).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Grain.class)
  void glassHasNoGrain(Grain grain) {
    Material glass = material("glass, tempered", grain, Kind.GLASS);
    assertThat(Matters.of(glass).modulus().number()).isEqualTo(70_000);
    assertThat(Matters.isCutEitherWay(glass)).isFalse();
  }

  /** What all its figures say is said once in words, with the way out. */
  @Test
  void theMakerIsTold() {
    Material ply = sheet("plywood, softwood", Grain.NONE);
    Strength strength = PlateShelving.check(draft(ply), ply);
    Finding told = ofKind(strength, "either-way").getFirst();
    assertThat(told.what()).contains("grain: none", "weaker way");
    assertThat(told.remedies().getFirst().what()).contains("grain: lengthwise");
    assertThat(told.figures().getFirst().value().value()).isCloseTo(2500, withPercentage(1e-9));
    assertThat(find(strength.shelves().getFirst(), "stiffness").orElseThrow().inputs())
        .anySatisfy(i -> assertThat(i.source().text()).contains("weaker way"));
  }

  /** Where its stiffer way would hold, that is a cure; where it would not, it is none. */
  @ParameterizedTest
  @CsvSource({"0.09, true", "1.5, false"})
  void statingTheGrainIsACureWhereItHolds(double load, boolean cures) {
    Material ply = sheet("plywood, softwood", Grain.NONE);
    CaseDraft draft = draft(ply);
    PlateShelving.load(draft, load);
    List<Finding> sags = ofKind(PlateShelving.check(draft, ply), "sag");
    assertThat(sags).isNotEmpty();
    assertThat(
            sags.getFirst().remedies().stream().anyMatch(r -> r.what().startsWith("state 'grain")))
        .isEqualTo(cures);
  }

  /** National Design Specification 2018, 12.3.3: 6100 G^1.45 / √D across, 11200 G along, psi. */
  @Test
  void pinsPressAcrossTheGrainOfSidesThatMayLieAcross() {
    PinInSide along = pin(material("oak, white", Grain.LENGTHWISE, Kind.BOARD));
    PinInSide either = pin(material("oak, white", Grain.NONE, Kind.BOARD));
    double gravity = Reference.woods().get("oak, white").specificGravity();
    double inches = along.diameter().number() / 25.4;
    double times = 6100 * Math.pow(gravity, 1.45) / Math.sqrt(inches) / (11200 * gravity);
    assertThat(allowed(either, "nds") / allowed(along, "nds"))
        .isCloseTo(Math.min(1, times), withPercentage(0.1));
    assertThat(allowed(along, "ec5") / allowed(either, "ec5"))
        .isCloseTo(0.9 + 0.015 * along.diameter().number(), withPercentage(0.1));
  }

  private static PinInSide pin(Material side) {
    Bay bay = SampleJobs.bay(1);
    Job job = SampleJobs.job(SampleJobs.bookcase(bay));
    BuiltCase built = CaseworkBuilder.build(job).cases().getFirst();
    ShelfReader reader = new ShelfReader(job, built);
    PinInSide pin =
        new SupportReader(job, built).pin(reader.shelves().getFirst(), reader).orElseThrow();
    return new PinInSide(
        pin.diameter(),
        pin.stem(),
        pin.depth(),
        pin.reach(),
        pin.gap(),
        pin.edge(),
        side,
        pin.air());
  }

  private static double allowed(PinInSide in, String code) {
    return new PinAllowances("x")
        .all(in).stream()
            .filter(f -> f.id().endsWith(code))
            .findFirst()
            .orElseThrow()
            .value()
            .value();
  }
}
