package fourpin.casework;

import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import java.util.ArrayList;
import java.util.List;

/** Gathers the findings of one case while it is built. */
final class Findings {

  private final String caseName;
  private final List<Finding> list = new ArrayList<>();

  Findings(String caseName) {
    this.caseName = caseName;
  }

  void refuse(String kind, String what, Remedy... remedies) {
    add(Severity.REFUSED, kind, what, Place.of(caseName), remedies);
  }

  void refuse(String kind, String what, String part, Box spot, Remedy... remedies) {
    add(Severity.REFUSED, kind, what, Place.of(caseName, part, spot), remedies);
  }

  void error(String kind, String what, String part, Box spot, Remedy... remedies) {
    add(Severity.ERROR, kind, what, Place.of(caseName, part, spot), remedies);
  }

  void doubt(String kind, String what, String part, Box spot, Remedy... remedies) {
    add(Severity.DOUBT, kind, what, Place.of(caseName, part, spot), remedies);
  }

  private void add(Severity severity, String kind, String what, Place place, Remedy... remedies) {
    list.add(new Finding(severity, kind, what, List.of(), place, List.of(remedies)));
  }

  boolean refused() {
    return list.stream().anyMatch(f -> f.severity() == Severity.REFUSED);
  }

  List<Finding> list() {
    return List.copyOf(list);
  }
}
