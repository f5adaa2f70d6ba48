package fourpin.sheets.paint;

/** Numbers for files: micrometres at the finest, a decimal point in every locale, never "-0". */
final class Numbers {

  private static final long PER_MM = 1000;

  private Numbers() {}

  static String mm(double value) {
    long thousandths = Math.round(value * PER_MM);
    String whole = Long.toString(Math.abs(thousandths) / PER_MM);
    return (thousandths < 0 ? "-" : "") + whole + decimals(Math.abs(thousandths) % PER_MM);
  }

  private static String decimals(long thousandths) {
    if (thousandths == 0) {
      return "";
    }
    String digits = Long.toString(PER_MM + thousandths).substring(1);
    return "." + digits.replaceFirst("0+$", "");
  }
}
