package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {

  private static final List<String> KEYS =
      List.of("title", "sheets", "shelves", "supports", "settings", "pitch");

  /**
   * The distances in the usual examples of edit distance: kitten and sitting 3 (Levenshtein),
   * Saturday and Sunday 3, CA and ABC 3 (optimal string alignment, unlike the full
   * Damerau-Levenshtein distance of 2).
   */
  @ParameterizedTest
  @CsvSource({
    "kitten,sitting,3",
    "saturday,sunday,3",
    "ca,abc,3",
    "pitch,pithc,1",
    "pitch,pitch,0",
    "'',pitch,5",
    "pitch,'',5"
  })
  void countsSlips(String a, String b, int slips) {
    assertThat(Spelling.slips(a, b)).isEqualTo(slips);
    assertThat(Spelling.slips(b, a)).isEqualTo(slips);
  }

  @ParameterizedTest
  @CsvSource({
    "shelfs,shelves",
    "shelvs,shelves",
    "sheet,sheets",
    "Setings,settings",
    "suports,supports",
    "SHELVES,shelves",
    "pithc,pitch",
    "tilte,title"
  })
  void findsTheNearest(String word, String meant) {
    assertThat(Spelling.nearest(word, KEYS)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"colour", "x", "''", "banana"})
  void proposesNothingFarFetched(String word) {
    assertThat(Spelling.nearest(word, KEYS)).isEmpty();
  }

  @Test
  void needsCandidates() {
    assertThat(Spelling.nearest("shelf", List.of())).isEqualTo(Optional.empty());
  }
}
