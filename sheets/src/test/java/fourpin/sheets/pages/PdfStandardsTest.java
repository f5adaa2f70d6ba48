package fourpin.sheets.pages;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

class PdfStandardsTest {

  @ParameterizedTest
  @EnumSource(
      value = PDFAFlavour.class,
      names = {"PDFUA_1", "PDFA_2_A"})
  void aBookletWithEveryBlockKeepsTheStandard(PDFAFlavour flavour) throws Exception {
    assertThat(Standards.faults(PdfWriter.write(Samples.booklet(Paper.A4)), flavour)).isEmpty();
  }
}
