package fourpin.strength;

import static fourpin.job.SampleJobs.in;
import static fourpin.strength.Shelving.check;
import static fourpin.strength.Shelving.ofKind;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.job.CaseDraft;
import fourpin.job.Edging;
import fourpin.job.Load;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.measure.CommaDecimals;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Shelves so long, or loaded so much, that no one change keeps them within their limits. */
@ExtendWith(CommaDecimals.class)
class CombinedCuresTest {

  private static final Set<String> BENDS = Set.of("sag", "half-sags", "row-sags", "shelf-tips");
  private static final Pattern STRIPPED =
      Pattern.compile(
          "put (\\d+) partitions in, spread evenly, and glue a strip of 'oak', 3/4 x (.+?) in, to"
              + " the front edge and one to the back edge .*");

  /** Four metres under 300 kg on each. */
  private static Strength wide(int bays, String material, List<Edging> edging) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in("158"), in("84"), in("12"));
    draft.load = Optional.of(new Load.PerLength(Quantity.of(2.94, QuantityUnit.LINE_LOAD)));
    draft.bays =
        Collections.nCopies(
            bays, Shelving.bay(Shelving.shelves(material, edging), SampleJobs.pins()));
    return check(SampleJobs.job(draft.order()));
  }

  private static List<String> cures() {
    Finding sag = ofKind(wide(1, "ply", List.of()), "sag").getFirst();
    return sag.remedies().stream().map(Remedy::what).toList();
  }

  private static boolean holds(Strength strength) {
    return strength.findings().stream().map(Finding::kind).noneMatch(BENDS::contains);
  }

  @Test
  void whereNoChangeIsEnoughTwoAreAndWhatWasTriedIsToldLast() {
    assertThat(cures()).hasSizeGreaterThan(2);
    assertThat(cures().subList(0, cures().size() - 1))
        .allMatch(what -> what.matches("put \\d+ partitions in, spread evenly, and .*"));
    assertThat(cures().getLast())
        .startsWith(
            "change more than one thing, or ask less of it; alone none of these is enough: made of"
                + " 'oak', 3/4 in, it sags ")
        .contains("; of two layers of 'ply' it sags ")
        .contains("; with strips 2 3/4 in high on both edges of 'ply' it sags ")
        .contains("; held up in the middle too, it sags ")
        .containsPattern("; between 11 partitions it (sags|tips) ");
  }

  /** The case that would come of it holds; with a partition less, or no strips, it does not. */
  @Test
  void theFewestPartitionsAreNamedThatHoldWithStrips() {
    MatchResult cure = matching(STRIPPED);
    int count = Integer.parseInt(cure.group(1));
    List<Edging> strips =
        List.of(
            new Edging(
                Edging.Kind.STRIP,
                "oak",
                in("3/4"),
                in(cure.group(2)),
                List.of(Edging.Edge.FRONT, Edging.Edge.BACK)));
    assertThat(holds(wide(count + 1, "ply", strips))).isTrue();
    assertThat(holds(wide(count, "ply", strips))).isFalse();
    assertThat(holds(wide(count + 1, "ply", List.of()))).isFalse();
  }

  private static MatchResult matching(Pattern pattern) {
    return cures().stream()
        .flatMap(what -> pattern.matcher(what).results())
        .findFirst()
        .orElseThrow();
  }
}
