package fourpin.boring;

import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The bays of one case, one after the other, on one lattice. */
final class CaseBorer {

  private final Reporter reporter;
  private final List<BayGrid> grids = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private BuiltCase built;

  CaseBorer(BuiltCase unbored, Reporter reporter) {
    this.reporter = reporter;
    this.built = unbored;
    List<BaySpace> shelved =
        unbored.bays().stream().filter(b -> !BayBorer.shelves(unbored, b).isEmpty()).toList();
    if (!shelved.isEmpty()) {
      bore(shelved, CasePattern.of(unbored, shelved, reporter));
    }
  }

  private void bore(List<BaySpace> shelved, CasePattern pattern) {
    findings.addAll(pattern.findings());
    Map<String, List<Feature>> features = new LinkedHashMap<>();
    List<Part> more = new ArrayList<>();
    for (BaySpace bay : shelved) {
      BayBorer borer = new BayBorer(built, bay, pattern, reporter);
      findings.addAll(borer.findings());
      borer.seated().forEach(shelf -> built = built.with(shelf));
      grids.add(borer.grid());
      Fitting fitting = Fitting.of(built, bay, borer.grid());
      fitting
          .features()
          .forEach((k, v) -> features.computeIfAbsent(k, _ -> new ArrayList<>()).addAll(v));
      more.addAll(fitting.parts());
    }
    features.forEach((mark, list) -> built = built.with(built.part(mark).with(list)));
    built = built.withMore(more);
    for (BayGrid grid : grids) {
      findings.addAll(new FitChecks(built, grid, reporter).findings());
    }
    built
        .order()
        .doors()
        .ifPresent(d -> findings.addAll(new ShelvesAtPlates(built, d, reporter).findings()));
    findings.addAll(new Clashes(built, grids, pattern.lattice().start(), reporter).findings());
  }

  BuiltCase bored() {
    return built;
  }

  List<BayGrid> grids() {
    return grids;
  }

  List<Finding> findings() {
    return findings;
  }
}
