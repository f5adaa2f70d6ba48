package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding.Remedy;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Load;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shelves;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A cure by which a shelf begins to rock says so. */
@ExtendWith(CommaDecimals.class)
class NewRockingTest {

  private static final String ROCKS = "then rocks";

  /** Along the shelf, N/mm. */
  private static final double LOAD = 0.45;

  private static Job job(String material, double load, String low) {
    return job(material, load, low, 360);
  }

  /**
   * @param limit span over the sag allowed
   */
  private static Job job(String material, double load, String low, double limit) {
    Material thick = SampleJobs.sheet("thick", "plywood, veneer core", "1 1/4", "1 1/4");
    Bay bay =
        new Bay(
            Optional.empty(),
            List.of(),
            Optional.of(new Shelves(new Shelves.Placing.Evenly(1), material, List.of(), in("0"))),
            Optional.of(SampleJobs.pins()),
            Optional.of(new Load.PerLength(Quantity.of(load, QuantityUnit.LINE_LOAD))));
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bay, bay);
    draft.settings = draft.settings.with(Setting.LOW_SUPPORT, new SettingValue.OfLength(in(low)));
    draft.settings = draft.settings.with(Setting.SAG_LIMIT, new SettingValue.OfNumber(limit));
    Job job = SampleJobs.job(draft.order());
    return JobDraft.changed(
        job, d -> d.materials = Stream.concat(job.materials().stream(), Stream.of(thick)).toList());
  }

  private static boolean rocks(Job job) {
    return !ofKind(check(job), "shelf-rocks").isEmpty();
  }

  private static Stream<String> cures(Job job) {
    return ofKind(check(job), "sag").getFirst().remedies().stream().map(Remedy::what);
  }

  /** Stiffer, it settles less onto the low support: told in its words as it is found then. */
  @ParameterizedTest
  @CsvSource({"1/64, false", "1/32, false", "3/32, false", "1/8, true", "3/16, true"})
  void aThickerShelfThatRocksIsToldAsItIsFound(String low, boolean rocks) {
    Job thin = job("ply", LOAD, low);
    assertThat(rocks(thin)).isFalse();
    assertThat(rocks(job("thick", LOAD, low))).isEqualTo(rocks);
    assertThat(cures(thin).filter(what -> what.startsWith("make it of 'thick', 1 1/4 in")))
        .singleElement()
        .matches(what -> what.contains(ROCKS + " under its load") == rocks);
  }

  /** A load that is kept to is told as one that is stated. */
  @ParameterizedTest
  @CsvSource({"1/32, false", "3/64, false", "3/32, true"})
  void lessLoadThatRocksIsToldAsItIsFound(String low, boolean rocks) {
    Job full = job("thick", LOAD, low, 2000);
    String words = cures(full).filter(what -> what.startsWith("keep the load")).toList().getLast();
    double least = value(words.replaceAll("keep the load to (.*?) lb/ft.*", "$1"));
    assertThat(words.contains(ROCKS)).isEqualTo(rocks);
    assertThat(rocks(job("thick", least, low, 2000))).isEqualTo(rocks);
  }

  /** N/mm of lb/ft. */
  private static double value(String load) {
    return Double.parseDouble(load) * 0.45359237 * 9.80665 / 304.8;
  }

  /** What rocks as it is begins to rock by no cure. */
  @Test
  void whatRocksAlreadyIsNotTold() {
    Job rocking = job("thick", LOAD, "3/16", 2000);
    assertThat(rocks(rocking)).isTrue();
    assertThat(cures(rocking)).isNotEmpty().noneMatch(what -> what.contains(ROCKS));
  }
}
