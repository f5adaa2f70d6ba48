package fourpin.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which groups share one sheet with each other; those not named have theirs to themselves. */
record Parting(List<Company> companies) {

  /** Every group for itself. */
  static final Parting NONE = new Parting(List.of());

  /**
   * Groups that share one sheet of a stock.
   *
   * @param sheet the name of the stock
   */
  record Company(List<Together> groups, String sheet) {

    Company {
      groups = List.copyOf(groups);
    }

    private boolean isLeftOut(Layout layout) {
      return groups.size() > 1
          && layout.unplaced().stream().map(Unplaced::mark).anyMatch(merged().marks()::contains);
    }

    /** Named after its first group, which is a group of its own no longer. */
    private Together merged() {
      return new Together(
          groups.getFirst().name(),
          groups.stream().flatMap(group -> group.marks().stream()).toList());
    }
  }

  Parting {
    companies = List.copyOf(companies);
  }

  /** The same, but a group to itself on a sheet of a stock, by its name. */
  Parting with(Together group, String sheet) {
    List<Company> all = new ArrayList<>(companies);
    all.removeIf(company -> company.groups.contains(group));
    all.add(new Company(List.of(group), sheet));
    return new Parting(all);
  }

  /** Whether no group shares a sheet with another. */
  boolean isNone() {
    return companies.stream().allMatch(company -> company.groups.size() == 1);
  }

  /** The problem with fewer and larger groups, those that a sheet is chosen for first. */
  SheetProblem of(SheetProblem problem) {
    Set<Together> placed =
        companies.stream().flatMap(c -> c.groups.stream()).collect(Collectors.toSet());
    List<Together> groups = new ArrayList<>(companies.stream().map(Company::merged).toList());
    problem.ties().together().stream().filter(g -> !placed.contains(g)).forEach(groups::add);
    Ties ties = new Ties(problem.ties().matched(), groups);
    return new SheetProblem(problem.parts(), problem.stock(), problem.saw(), ties);
  }

  /** The stock that each of the larger groups lies on, by name. */
  Map<String, String> sheets() {
    return companies.stream().collect(Collectors.toMap(c -> c.merged().name(), Company::sheet));
  }

  /** Whether no groups are left out together, one of which may have found a place. */
  boolean suits(Layout layout) {
    return companies.stream().noneMatch(company -> company.isLeftOut(layout));
  }

  /** Without those left out together: their groups choose sheets of their own. */
  Parting placed(Layout layout) {
    return new Parting(companies.stream().filter(c -> !c.isLeftOut(layout)).toList());
  }

  /** For each sheet that several groups share, the same without it: they choose their own. */
  List<Parting> loosened() {
    return IntStream.range(0, companies.size())
        .filter(i -> companies.get(i).groups.size() > 1)
        .mapToObj(this::loosened)
        .toList();
  }

  private Parting loosened(int index) {
    return new Parting(
        IntStream.range(0, companies.size())
            .filter(i -> i != index)
            .mapToObj(companies::get)
            .toList());
  }
}
