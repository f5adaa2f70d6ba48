package fourpin.sheets.pages;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Judgement from outside by veraPDF, the open checker of ISO 14289-1 and ISO 19005-2. */
public final class Standards {

  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Standards() {}

  /** Every rule that a file breaks, with the place; none if it keeps the standard. */
  public static List<String> faults(byte[] pdf, PDFAFlavour flavour) throws Exception {
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
