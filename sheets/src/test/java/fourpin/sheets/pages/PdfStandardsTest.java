package fourpin.sheets.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Judged from outside by veraPDF, the open checker of ISO 14289-1 and ISO 19005-2. */
class PdfStandardsTest {

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  @ParameterizedTest
  @EnumSource(
      value = PDFAFlavour.class,
      names = {"PDFUA_1", "PDFA_2_A"})
  void aBookletWithEveryBlockKeepsTheStandard(PDFAFlavour flavour) throws Exception {
    assertThat(faults(PdfWriter.write(Samples.booklet(Paper.A4)), flavour)).isEmpty();
  }

  private static List<String> faults(byte[] pdf, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      return result.getTestAssertions().stream()
          .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
          .map(a -> a.getRuleId().getClause() + " " + a.getMessage() + " " + a.getLocation())
          .toList();
    }
  }
}
