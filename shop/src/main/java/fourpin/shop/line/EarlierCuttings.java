package fourpin.shop.line;

import fourpin.cutting.SoFar;
import fourpin.job.Supply;
import fourpin.plan.Stock;
import fourpin.plan.Wanted;
import fourpin.shop.cut.SoFarReader;
import fourpin.shop.file.Opened;
import fourpin.shop.yaml.Problem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the folders of earlier cuttings of the same parts, the first one first. */
final class EarlierCuttings {

  private static final String LAYOUTS = "layouts.csv";
  private static final String PROGRESS = "progress.csv";
  private static final String NAME_ONE =
      "name the folder of an earlier cutting, or the packet of the job";

  private final List<Wanted> wanted;
  private final List<String> wrong;
  private final Map<String, SoFar> soFar = new LinkedHashMap<>();
  private final Map<String, Integer> last = new LinkedHashMap<>();
  private final List<String> told = new ArrayList<>();
  private final List<Path> bare = new ArrayList<>();
  private final Map<String, Bare> unnoted = new LinkedHashMap<>();

  /** Sheets of a material in a folder in which none of them has a note. */
  private record Bare(Path folder, SoFar sheets) {}

  /**
   * What they came to.
   *
   * @param soFar by material
   * @param last number of a sheet of each material
   * @param told what the maker should know of them
   */
  record Found(Map<String, SoFar> soFar, Map<String, Integer> last, List<String> told) {}

  /**
   * @param wanted what the tables ask for now
   * @param wrong gets all that is wrong
   */
  EarlierCuttings(List<Wanted> wanted, List<String> wrong) {
    this.wanted = wanted;
    this.wrong = wrong;
  }

  Found read(List<Path> folders) {
    int before = wrong.size();
    for (int i = 0; i < folders.size(); i++) {
      read(folders.get(i), i + 1);
    }
    if (wrong.size() == before && !folders.isEmpty()) {
      withoutNotes(folders);
    }
    return new Found(soFar, last, told);
  }

  private void read(Path folder, int place) {
    Optional<byte[]> layouts = open(folder.resolve(LAYOUTS));
    Optional<byte[]> progress = open(folder.resolve(PROGRESS));
    if (layouts.isPresent() && progress.isPresent()) {
      switch (SoFarReader.read(wanted, place, layouts.get(), progress.get())) {
        case SoFarReader.Outcome.Good(var byMaterial, var without, var numbers, var changed) -> {
          without.forEach((material, its) -> unnoted.put(material, new Bare(folder, its)));
          unnoted.keySet().removeAll(byMaterial.keySet());
          numbers.forEach((material, number) -> last.merge(material, number, Math::max));
          byMaterial.forEach((material, its) -> soFar.merge(material, its, SoFar::then));
          told.addAll(changed);
          if (byMaterial.isEmpty()) {
            bare.add(folder);
          }
        }
        case SoFarReader.Outcome.Refused(var ofLayouts, var ofProgress) -> {
          ofLayouts.forEach(p -> wrong.add(p.text(folder.resolve(LAYOUTS).toString())));
          ofProgress.forEach(p -> wrong.add(p.text(folder.resolve(PROGRESS).toString())));
        }
      }
    }
  }

  /** Where nothing is noted at all, all would be laid out again as if it were not. */
  private void withoutNotes(List<Path> folders) {
    if (bare.size() == folders.size()) {
      wrong.add(
          Problem.ofFile(
              folders.getLast().resolve(PROGRESS).toString(),
              "no sheet has a note, so that all would be laid out again",
              "write cut or spoilt under state of each sheet that is no longer whole, and bought of"
                  + " each that is; where none is bought, leave --after out, and name another"
                  + " folder with --out"));
    } else {
      bare.forEach(
          folder ->
              told.add(
                  folder.resolve(PROGRESS)
                      + " has no note: none of its sheets counts as cut or bought."));
      wanted.forEach(this::stillToBuy);
    }
  }

  /** Where a folder has notes, but none of one material, nobody says whether that is there. */
  private void stillToBuy(Wanted each) {
    Optional.ofNullable(unnoted.get(each.material()))
        .filter(its -> !bare.contains(its.folder))
        .ifPresent(
            its ->
                each.stock().stream()
                    .filter(stock -> stock.supply() == Supply.TO_BUY)
                    .filter(stock -> countToBuy(each, stock, its) > 0)
                    .forEach(stock -> told.add(stillToBuy(each, stock, its))));
  }

  /** Without those that a folder before it says are there. */
  private int countToBuy(Wanted each, Stock stock, Bare its) {
    SoFar noted = soFar.getOrDefault(each.material(), SoFar.NOTHING);
    return its.sheets.wholeOf(stock.name()) - noted.wholeOf(stock.name());
  }

  private String stillToBuy(Wanted each, Stock stock, Bare its) {
    int count = countToBuy(each, stock, its);
    return each.material()
        + ": "
        + count
        + " of '"
        + stock.name()
        + (count == 1 ? "' counts" : "' count")
        + " as still to be bought, as no sheet or board of it has a note in "
        + its.folder.resolve(PROGRESS)
        + ": write bought under state of each that you have.";
  }

  private Optional<byte[]> open(Path file) {
    return switch (Opened.open(file, SoFarReader.MOST_BYTES, NAME_ONE, NAME_ONE)) {
      case Opened.Bytes bytes -> Optional.of(bytes.bytes());
      case Opened.Refused(String name, String rule, String remedy) -> {
        wrong.add(Problem.ofFile(name, rule, remedy));
        yield Optional.empty();
      }
    };
  }
}
