package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static fourpin.strength.Shelving.shelves;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
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
import fourpin.measure.CommaDecimals;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How thick a shelf has to be where the job lists nothing thicker. */
@ExtendWith(CommaDecimals.class)
class ThickerCuresTest {

  private static final double EACH_MM = 0.3;

  private static Strength of(Material material) {
    Bay shelf = Shelving.bay(shelves("shelf", List.of()), SampleJobs.pins());
    Bay loaded =
        new Bay(
            shelf.width(),
            shelf.fixedShelves(),
            shelf.shelves(),
            shelf.supports(),
            Optional.of(new Load.PerLength(Quantity.of(EACH_MM, QuantityUnit.LINE_LOAD))));
    Job job = SampleJobs.job(SampleJobs.bookcase(loaded, loaded));
    return check(
        JobDraft.changed(
            job,
            d ->
                d.materials =
                    Stream.concat(
                            job.materials().stream().filter(m -> m.kind() == Material.Kind.SHEET),
                            Stream.of(material))
                        .toList()));
  }

  private static Material made(String of, String thickness) {
    return new Material(
        "shelf",
        of.startsWith("glass") ? Material.Kind.GLASS : Material.Kind.SHEET,
        of,
        in(thickness),
        Optional.empty(),
        of.startsWith("glass") ? Material.Grain.NONE : Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty());
  }

  private static Stream<String> cures(Strength strength) {
    return strength.findings().stream()
        .filter(f -> f.kind().equals("sag"))
        .flatMap(f -> f.remedies().stream())
        .map(Remedy::what);
  }

  private static boolean bends(Strength strength) {
    return strength.findings().stream()
        .map(Finding::kind)
        .anyMatch(List.of("sag", "row-sags", "glass-stress", "row-breaks")::contains);
  }

  /**
   * Oak 1 1/4 in thick, from 45 % to 60 % of humidity: Wood Handbook FPL-GTR-190 (2010), Table 4-2,
   * 8.4 to 11.0 %, and Table 13-5, white oak 0.00365 for each per cent over 11 in: 0.104 in.
   */
  @ParameterizedTest
  @CsvSource({"1/16, true", "1/4, false"})
  void should_say_that_a_solid_shelf_would_swell(String play, boolean told) {
    CaseDraft draft = new CaseDraft();
    draft.settings = draft.settings.with(Setting.BACK_PLAY, new SettingValue.OfLength(in(play)));
    Job job = SampleJobs.job(draft.order());
    Material oak = SampleJobs.board("thick", "oak, white", "1 1/4");
    Strength strength =
        check(
            JobDraft.changed(
                job,
                d ->
                    d.materials =
                        Stream.concat(job.materials().stream(), Stream.of(oak)).toList()));
    assertThat(cures(strength))
        .filteredOn(cure -> cure.startsWith("make it of 'thick', 1 1/4 in"))
        .singleElement()
        .asString()
        .matches(cure -> cure.contains("it then swells by 0.10") == told)
        .matches(cure -> cure.contains("swells") == told);
  }

  /** By steps of 1/8 in, and of glass that is made: the first that holds, and none before it. */
  @ParameterizedTest
  @CsvSource({
    "'plywood, veneer core', 3/4, at least, 1, 7/8",
    "'glass, tempered', 1/4, take glass of, 5/8, 1/2"
  })
  void should_offer_the_thinnest_that_holds(
      String of, String now, String words, String thick, String thinner) {
    Strength strength = of(made(of, now));
    assertThat(ofKind(strength, "sag")).isNotEmpty();
    assertThat(cures(strength))
        .filteredOn(cure -> cure.contains(words))
        .singleElement()
        .asString()
        .contains("%s %s in".formatted(words, thick))
        .contains("which the job does not list yet");
    assertThat(bends(of(made(of, thick)))).isFalse();
    assertThat(bends(of(made(of, thinner)))).isTrue();
  }
}
