package fourpin.boring.way;

import fourpin.boring.BayGrid;
import fourpin.boring.Boring;
import fourpin.boring.Points;
import fourpin.boring.PointsMeet;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How every bay of a job gets its places for shelves.
 *
 * @param borings in the order of the cases and their bays
 * @param findings of this work only
 */
public record Ways(List<CaseBoring> borings, List<Finding> findings) {

  public Ways {
    borings = List.copyOf(borings);
    findings = List.copyOf(findings);
  }

  /** The ways of a job, as far as they can be told without knowing how well they hold heights. */
  public static Ways of(Job job, Boring boring) {
    return of(job, boring, Precision.UNKNOWN);
  }

  /**
   * @param precision how well a way holds heights; ways that rock too often are not recommended
   */
  public static Ways of(Job job, Boring boring, Precision precision) {
    List<Group> groups = new ArrayList<>();
    boring.cases().forEach(c -> groups.addAll(Group.of(job, c, grids(boring, c))));
    List<CaseBoring> borings = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (Group group : groups) {
      Choice choice = Choice.of(group, groups, precision);
      borings.add(choice.boring());
      choice.finding().ifPresent(findings::add);
    }
    boring
        .cases()
        .forEach(
            c -> findings.addAll(PointsMeet.findings(job, c, CaseBoring.opposite(c, borings))));
    return new Ways(borings, findings);
  }

  /** Points of the bits that the ways taken bore with. */
  public Points points() {
    return grid ->
        borings.stream()
            .filter(b -> b.grids().contains(grid))
            .findFirst()
            .flatMap(CaseBoring::point);
  }

  private static List<BayGrid> grids(Boring boring, BuiltCase built) {
    return boring.grids().stream().filter(g -> g.caseName().equals(built.order().name())).toList();
  }

  /** What is taken for a group. @param finding if the maker's own choice can't be done */
  private record Choice(CaseBoring boring, Optional<Finding> finding) {

    static Choice of(Group group, List<Group> all, Precision precision) {
      Answers answers = new Answers(group, precision);
      Recommendation best = new Recommendation(group, answers);
      Optional<Way> wished = wished(group, all);
      Optional<Way> forced = wished.filter(w -> answers.of(w).answer().method().isPresent());
      CaseBoring boring =
          new CaseBoring(
              group.built().order().name(),
              group.grids(),
              answers.list(),
              forced.orElse(best.way()),
              forced.isPresent() ? "The job asks for it." : best.because(),
              List.of(best.figure()));
      return new Choice(
          boring,
          wished
              .filter(w -> forced.isEmpty())
              .map(w -> refused(group, answers.of(w).answer(), best.way())));
    }

    /** A way of boring for pins says nothing about bays on standards, unless all stand on them. */
    private static Optional<Way> wished(Group group, List<Group> all) {
      return Way.named(group.settings().choice(Setting.WAY))
          .filter(w -> group.isFor(w) || all.stream().noneMatch(g -> g.isFor(w)));
    }

    private static Finding refused(Group group, WayAnswer answer, Way instead) {
      List<String> why = answer.reasons().stream().map(Reason::what).toList();
      List<Remedy> remedies =
          answer.reasons().stream()
              .filter(r -> !r.remedy().isEmpty())
              .map(r -> new Remedy(r.remedy(), "a change of tools or of the case"))
              .toList();
      return new Finding(
          Severity.ERROR,
          "way-not-possible",
          "The job asks for "
              + answer.way().key()
              + ", which can't be done: "
              + String.join("; ", why)
              + ". The plan takes "
              + instead.key()
              + ".",
          List.of(),
          Place.of(group.built().order().name()),
          remedies);
    }
  }
}
