package fourpin.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          white oak            | oak, white
          OAK, White           | oak, white
          red oak              | oak, northern red
          northern red oak     | oak, northern red
          hard maple           | maple, sugar
          soft maple           | maple, red
          cherry               | cherry, black
          poplar               | yellow-poplar
          mdf                  | MDF
          medium-density fibreboard | MDF
          plywood              | plywood, veneer core
          veneer core plywood  | plywood, veneer core
          baltic birch         | plywood, birch throughout
          melamine             | particleboard
          osb                  | OSB
          toughened glass      | glass, tempered
          glass, annealed      | glass, annealed
          """)
  void findsSubstancesByTradeName(String written, String name) {
    assertThat(Reference.substances().find(written)).map(Listed::name).contains(name);
  }

  @ParameterizedTest
  @CsvSource({
    "books,'books, average'",
    "heavy books,'books, heavy'",
    "records,'records, 12 in'",
    "binders,binders",
    "POTTERY,pottery"
  })
  void findsThings(String written, String name) {
    assertThat(Reference.things().find(written)).map(Listed::name).contains(name);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          oak          | oak, northern red; oak, southern red; oak, white
          wite oak     | oak, white
          white oka    | oak, white
          walnutt      | walnut, black
          plywod       | plywood, veneer core
          particlebord | particleboard
          unobtainium  | ''
          """)
  void proposesWhatMayBeMeant(String written, String names) {
    List<String> expected = names.isEmpty() ? List.of() : List.of(names.split("; "));
    assertThat(Reference.substances().find(written)).isEmpty();
    assertThat(Reference.substances().nearest(written)).isEqualTo(expected);
  }

  @Test
  void nothingMayBeMeantByNothing() {
    assertThat(Reference.woods().nearest(" , ")).isEmpty();
  }

  @Test
  void tellsWhichNameIsMissing() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reference.woods().get("unobtainium"))
        .withMessage("no table lists 'unobtainium'");
  }

  @Test
  void refusesTwoRowsOfOneName() {
    Wood walnut = Reference.woods().get("walnut");
    Wood other =
        new Wood(
            "Black Walnut",
            List.of(),
            walnut.kind(),
            walnut.specificGravity(),
            walnut.modulus(),
            walnut.rupture(),
            walnut.sideHardness(),
            walnut.density(),
            walnut.source());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Catalogue<>(List.of(walnut, other)))
        .withMessage("two rows go by the name 'Black Walnut'");
  }

  @Test
  void findsInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertThat(Reference.substances().find("WHITE OAK")).isPresent();
      assertThat(Reference.substances().find("BIRCH")).isPresent();
    } finally {
      Locale.setDefault(before);
    }
  }
}
