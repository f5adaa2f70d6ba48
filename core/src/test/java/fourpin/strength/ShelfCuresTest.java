package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.bay;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.glass;
import static fourpin.strength.Shelving.ofKind;
import static fourpin.strength.Shelving.shelves;
import static fourpin.strength.Shelving.withMaterial;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Bay;
import fourpin.job.BoardStock;
import fourpin.job.CaseDraft;
import fourpin.job.Drawers;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shelves;
import fourpin.job.Sizes;
import fourpin.job.Supply;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is found of shelves that sag, and what is said to cure it. */
@ExtendWith(CommaDecimals.class)
class ShelfCuresTest {

  @Test
  void alikeShelvesThatSagAreFoundTogetherWithCures() {
    Strength strength = check(SampleJobs.bay(2), SampleJobs.bay(2));
    List<Finding> sags = ofKind(strength, "sag");
    assertThat(sags).hasSize(1);
    Finding sag = sags.getFirst();
    assertThat(sag.severity()).isEqualTo(Severity.ERROR);
    assertThat(sag.place().part()).contains("1-S1");
    assertThat(sag.place().spot()).isPresent();
    assertThat(sag.what()).isEqualTo(WHAT);
    assertThat(sag.remedies()).extracting(r -> r.what() + " | " + r.cost()).containsExactly(CURES);
  }

  private static final String WHAT =
      "shelves 1-S1, 1-S2, 2-S1, 2-S2 sag at the back edge by 0.101 in now and 0.202 in after years;"
          + " 0.0576 in and 0.09 in are allowed";

  private static final String[] CURES = {
    "glue a strip of 'oak', 3/4 x 1 1/2 in, to the front edge and one to the back edge over its"
        + " whole length: sag 0.0398 in now, 0.0795 in after years with the load in a row along the front edge;"
        + " a support then still carries 30.4 lbf, load in a row along the front edge: cure that too"
        + " | wood for about $3.87 more, 1.36 lb heavier, each shelf",
    "stand a loose upright under its middle, front to back, and one under each below down to the"
        + " bottom, and a block under that from its front edge to its back, on the floor; each edge"
        + " of it carries 32.5 lbf from each shelf above; fasten the shelf to it, or its empty end lifts with the other half loaded alone: sag 0.00719 in now, 0.0144 in"
        + " after years with the load in a row against the back"
        + " | things can't stand across the middle; wood for about $5.97 more, 4.27 lb heavier,"
        + " each shelf",
    "put a partition in the middle: sag 0.00999 in now, 0.02 in after years with the load in a row"
        + " against the back; its holes, 3/8 in deep from both faces, leave too little of 23/32 in: state levels-up, half a pitch, for every second bay too"
        + " | one more upright and its rows; twice as many shelves of half the length; wood for"
        + " about $8.95 more, 6.4 lb heavier, each shelf",
    "glue two layers of 'ply' together: sag 0.0174 in now, 0.0348 in after years with the load in a"
        + " row against the back; a support then still carries 31.5 lbf, load in a row along the front edge: cure that"
        + " too | wood for about $9.20 more, 5.69 lb heavier, each shelf",
    "make it of the same material, but at least 1 1/8 in thick, which the job does not list yet: sag"
        + " 0.0355 in now, 0.071 in after years with the load in a row against the back; a support"
        + " then still carries 30.9 lbf, load in a row along the front edge: cure that too"
        + " | 3.21 lb heavier, each shelf",
    "keep the load to 7.55 lb/ft | room for less"
  };

  /**
   * By the closed form of a beam over three supports, its far end is lifted by a sixteenth of a
   * load on one span, and held down by three eighths of the own weight of a span: six times its own
   * weight lifts it, and more where both its rows have to go free.
   */
  @ParameterizedTest
  @CsvSource({"4, false", "5.5, false", "12, true"})
  void aShelfOnALooseUprightLiftsWellOverSixTimesItsOwnWeightOnOneHalf(
      double weights, boolean lifts) {
    double own = owned(check(strict(1)));
    List<Finding> sags = ofKind(check(strict(weights * own)), "sag");
    assertThat(sags.getFirst().remedies())
        .extracting(Remedy::what)
        .filteredOn(what -> what.startsWith("stand a loose upright"))
        .isNotEmpty()
        .allMatch(what -> what.contains("its empty end lifts") == lifts);
  }

  private static double owned(Strength strength) {
    return strength.shelves().getFirst().figures().stream()
        .filter(f -> f.id().endsWith("/plate-half"))
        .flatMap(f -> f.inputs().stream())
        .filter(i -> i.symbol().equals("g"))
        .mapToDouble(i -> i.value().value())
        .findFirst()
        .orElseThrow();
  }

  /** Two bays of one shelf each, held to the narrowest limit that may be set. */
  private static Job strict(double newtonPerMm) {
    CaseDraft draft = new CaseDraft();
    Bay one = bay(1, new Load.PerLength(Quantity.of(newtonPerMm, QuantityUnit.LINE_LOAD)));
    draft.bays = List.of(one, one);
    draft.settings = draft.settings.with(Setting.SAG_LIMIT, new SettingValue.OfNumber(2000));
    return SampleJobs.job(draft.order());
  }

  /** A wide bay on thin particleboard under books, in a job that has no boards. */
  private static Job thin(String thickness) {
    Material board =
        new Material(
            "mel",
            Material.Kind.SHEET,
            "particleboard",
            in(thickness),
            Optional.empty(),
            Material.Grain.NONE,
            Optional.empty(),
            Optional.empty());
    Job job = withMaterial(board, bay(shelves("mel", List.of()), SampleJobs.pins()));
    return JobDraft.changed(
        job,
        d -> {
          d.materials =
              job.materials().stream().filter(m -> m.kind() != Material.Kind.BOARD).toList();
          d.boards = List.of();
        });
  }

  /** A bay of 70 9/16 in: what one partition can't cure, more can; hardly any load is no cure. */
  @Test
  void shelvesThatHardlyCarryThemselvesGetRealCures() {
    Finding sag = ofKind(check(thin("5/8")), "sag").getFirst();
    assertThat(sag.what())
        .endsWith("; it does not carry its own weight within the limits, whatever its load");
    assertThat(sag.remedies())
        .extracting(Remedy::what)
        .isNotEmpty()
        .noneMatch(w -> w.startsWith("keep the load") || w.contains("own weight"))
        .anyMatch(w -> w.matches("put [2-9] partitions in, spread evenly: sag .*"));
  }

  /** Without boards in the job a strip of a usual hardwood is named, and that it is not stated. */
  @Test
  void stripsAreNamedWithoutBoardsToo() {
    assertThat(ofKind(check(thin("1 1/8")), "sag").getFirst().remedies())
        .extracting(Remedy::what)
        .anyMatch(
            w -> w.contains("a strip of 'oak, white' (the job states no boards yet), 3/4 x "));
  }

  /** What a job file can't say of a fixed shelf alone is called work by hand. */
  @Test
  void curesOfFixedShelvesAreByHand() {
    Bay held =
        new Bay(
            Optional.empty(),
            List.of(in("42")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Finding sag = ofKind(check(held, held), "sag").getFirst();
    assertThat(sag.remedies())
        .extracting(Remedy::what)
        .filteredOn(w -> w.contains("glue") || w.contains("make it of"))
        .isNotEmpty()
        .allMatch(w -> w.contains("(by hand: a job file states this for all panels of a case"));
  }

  /** Stock boards of 5 1/2 in are no shelf of 11 in. */
  @Test
  void narrowBoardsAreGluedUp() {
    Material thick = SampleJobs.board("beech", "oak, white", "1 3/4");
    Job job = withMaterial(thick, SampleJobs.bay(2), SampleJobs.bay(2));
    assertThat(beech(job, "96", "5 1/2"))
        .startsWith("make it of 'beech', 1 3/4 in, glued up from narrower boards by hand: ");
    assertThat(beech(job, "96", "12")).startsWith("make it of 'beech', 1 3/4 in: ");
    assertThat(beech(job, "30", "5 1/2"))
        .startsWith(
            "make it of 'beech', 1 3/4 in, once the job has stock of 'beech' that is large");
    assertThat(cures(job))
        .anyMatch(
            w -> w.startsWith("make it of 'beech', 1 3/4 in, once the job has stock of 'beech': "));
  }

  private static String beech(Job job, String length, String width) {
    BoardStock boards =
        new BoardStock(
            "beech", in(length), in(width), Optional.empty(), Optional.empty(), Supply.TO_BUY);
    return cures(JobDraft.changed(job, d -> d.boards = List.of(boards))).stream()
        .filter(cure -> cure.startsWith("make it of 'beech'"))
        .findFirst()
        .orElseThrow();
  }

  /** Of 3/4 in, holes 3/8 in deep from both faces leave nothing; 1/8 in deep they do not meet. */
  @ParameterizedTest
  @CsvSource({"3/8, true", "1/8, false"})
  void partitionsWhoseHolesMeetSaySo(String deep, boolean meet) {
    CaseDraft draft = new CaseDraft();
    draft.load = Optional.of(new Load.PerLength(Quantity.of(2, QuantityUnit.LINE_LOAD)));
    draft.settings = draft.settings.with(Setting.HOLE_DEPTH, new SettingValue.OfLength(in(deep)));
    assertThat(cures(SampleJobs.job(draft.order())))
        .filteredOn(what -> what.contains("partition"))
        .isNotEmpty()
        .allMatch(what -> what.contains("levels-up, half a pitch") == meet);
  }

  private static List<String> cures(Job job) {
    return ofKind(check(job), "sag").getFirst().remedies().stream().map(Remedy::what).toList();
  }

  /** Each cure that is named holds when the case is built with it. */
  @Test
  void namedStripHoldsWhenBuilt() {
    Remedy remedy = strips();
    Strength cured = stripped(in(height(remedy)));
    assertThat(ofKind(cured, "sag")).isEmpty();
    assertThat(ofKind(cured, "row-sags")).isEmpty();
    String inRow =
        cured.shelves().getFirst().figures().stream()
            .filter(f -> f.id().endsWith("/plate-front-row"))
            .map(f -> f.value().text(Unit.INCH))
            .findFirst()
            .orElseThrow();
    assertThat(remedy.what()).contains("sag " + inRow + " now, ");
  }

  /** Strips go by steps of 1/4 in. */
  @Test
  void noLowerStripHolds() {
    Length height = in(height(strips()));
    Strength lower = stripped(height.minus(in("1/4")));
    assertThat(lower.findings()).extracting(Finding::kind).containsAnyOf("sag", "row-sags");
  }

  private static Remedy strips() {
    return ofKind(check(SampleJobs.bay(2), SampleJobs.bay(2)), "sag").getFirst().remedies().stream()
        .filter(r -> r.what().contains("to the front edge and one to the back edge"))
        .findFirst()
        .orElseThrow();
  }

  private static String height(Remedy remedy) {
    return remedy.what().replaceAll(".* x (.*) in, to the front.*", "$1");
  }

  private static Strength stripped(Length height) {
    Edging strip = SampleJobs.strip("3/4", "1");
    Edging both =
        new Edging(
            strip.kind(),
            strip.material(),
            strip.thickness(),
            height,
            List.of(Edging.Edge.FRONT, Edging.Edge.BACK));
    Shelves stripped = shelves("ply", List.of(both));
    return check(bay(stripped, SampleJobs.pins()), bay(stripped, SampleJobs.pins()));
  }

  /**
   * What the rough plate spares the fine one it spares rightly: it sags no more than 1 % further,
   * and only what is over by 5 % is spared. Nor is it so stiff that it spares nothing.
   */
  @ParameterizedTest
  @CsvSource({
    "plain, NONE",
    "front, NONE",
    "both, NONE",
    "plain, BACK",
    "front, BACK",
    "plain, FRONT_AND_BACK"
  })
  void roughPlatesSagHardlyMoreThanFineOnes(String made, ShelfPlate.Prop prop) {
    Job job = SampleJobs.job(new CaseDraft().order());
    ShelfReader reader = new ShelfReader(job, CaseworkBuilder.build(job).cases().getFirst());
    ShelfOnSupports shelf = reader.read(reader.shelves().getFirst());
    Material ply = job.material("ply");
    Material oak = job.material("oak");
    double depth = shelf.section().depth();
    Made as =
        switch (made) {
          case "plain" -> Made.plain(ply, depth, Made.Layers.ONE);
          case "front" -> Made.stripped(ply, oak, depth, in("2"), Made.Stripped.FRONT);
          default -> Made.stripped(ply, oak, depth, in("2"), Made.Stripped.FRONT_AND_BACK);
        };
    LoadedShelf beam = shelf.loaded().of(as.section());
    double fine = sagUse(beam, shelf, prop, new PlateBending.Memory());
    double rough = sagUse(beam, shelf, prop, new PlateBending.Memory(PlateBending.ROUGH_PARTS));
    assertThat(rough).isNotEqualTo(fine).isBetween(0.9 * fine, 1.01 * fine);
  }

  private static double sagUse(
      LoadedShelf beam, ShelfOnSupports of, ShelfPlate.Prop prop, PlateBending.Memory plates) {
    Candidate shelf = Candidate.of(of, List.of()).with(beam).held(prop);
    return Verdict.worst(new Verdict(shelf, plates).uses(LoadCase.EVEN, beam.load())).share();
  }

  /** What stands in a bay from front to back would run through drawers that are in it. */
  @ParameterizedTest
  @CsvSource({
    "0, 1, ''",
    "0, 2, ''",
    "2, 1, it runs through the drawers",
    "2, 2, where the drawers are in this bay it runs through them"
  })
  void uprightsSayThatTheyMeetDrawers(int drawers, int bays, String words) {
    CaseDraft draft = new CaseDraft();
    draft.sizes =
        new Sizes(Sizes.Measured.OUTSIDE, in(bays == 1 ? "36" : "72"), in("84"), in("12"));
    draft.bays = Collections.nCopies(bays, SampleJobs.bay(2));
    draft.drawers =
        Optional.of(drawers)
            .filter(count -> count > 0)
            .map(
                count ->
                    new Drawers(
                        count, in("24"), in("10"), in("9"), Quantity.of(10, QuantityUnit.MASS)));
    List<Remedy> upright =
        ofKind(check(SampleJobs.job(draft.order())), "sag").getFirst().remedies().stream()
            .filter(r -> r.what().contains("loose upright") || r.what().contains("partition"))
            .toList();
    assertThat(upright)
        .hasSize(2)
        .allMatch(r -> r.what().contains(words))
        .allMatch(r -> r.what().contains("drawers") == (drawers > 0));
    assertThat(upright.stream().anyMatch(r -> r.stated().isPresent())).isEqualTo(drawers == 0);
  }

  @Test
  void metricJobsAreToldInMillimetres() {
    Job job = withMaterial(glass("1/2"), SampleJobs.bay(2), SampleJobs.bay(2));
    Job metric =
        JobDraft.changed(
            job,
            d -> {
              d.unit = Unit.MILLIMETRE;
              d.style = LengthStyle.MILLIMETRES;
            });
    Finding sag = ofKind(check(metric), "sag").getFirst();
    assertThat(sag.what())
        .isEqualTo(
            "shelves 1-S1, 1-S2, 2-S1, 2-S2 sag at the back edge by 2.56 mm now and 5.12 mm after years;"
                + " 1.46 mm and 2.29 mm are allowed");
    assertThat(sag.remedies())
        .extracting(Remedy::what)
        .anyMatch(w -> w.startsWith("glue a strip of 'oak', ≈ 19.1 x 40 mm, to the front edge"))
        .anyMatch(w -> w.matches("keep the load to \\d+(\\.\\d+)? kg/m"));
  }
}
