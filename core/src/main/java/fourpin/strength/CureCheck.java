package fourpin.strength;

import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.Use.Limit;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** Bends what might be made of a shelf, and tells whether it is a cure. */
final class CureCheck {

  /**
   * A beam that uses more than this of what is allowed is not bent as a plate: that sags more by
   * its edges, and less by a few per cent at the most, since it is stiffened across.
   */
  private static final double HOPELESS = 1.15;

  /**
   * The rough plate comes before the fine one. It bends less, if anything, so that what sags by
   * more than this times what is allowed on it does not hold on the fine mesh either.
   */
  private static final double FAR = 1.05;

  /** What rests no nearer to the front row than by rounding is left to the plate. */
  private static final double CLEARLY = 1 - 1e-6;

  private final Job job;
  private final PlateBending.Memory plates;

  /** Whether a support may carry too much, since that is a fault of its own. */
  private final boolean crushes;

  /** How hard the shelf as it is presses on a support at the most, for each mm of it, N. */
  private final double push;

  private final NewRocking rocking;

  private CureCheck(
      Job job, PlateBending.Memory plates, NewRocking rocking, boolean crushes, double push) {
    this.job = job;
    this.rocking = rocking;
    this.plates = plates;
    this.crushes = crushes;
    this.push = push;
  }

  /**
   * Of what bends: a support that carries too much as the shelf is has cures of its own.
   *
   * @param rocking of the shelf as it is
   */
  static CureCheck ofShelf(Job job, NewRocking rocking, PlateBending.Memory plates) {
    return new CureCheck(job, plates, rocking, crushing(rocking.now()).isPresent(), 0);
  }

  /** Of what supports carry: all has to hold. */
  static CureCheck ofSupports(Job job, NewRocking rocking, PlateBending.Memory plates) {
    Verdict now = rocking.now();
    double push = now.push() / now.shelf().beam().length();
    return new CureCheck(job, plates, rocking, false, push);
  }

  Verdict verdict(Candidate candidate) {
    return new Verdict(candidate, plates);
  }

  /** Whether it need not be bent on the fine mesh to see that it is none. */
  boolean isFar(Candidate candidate) {
    return bendsFar(candidate) || presses(candidate) || tips(candidate) || isFarRoughly(candidate);
  }

  /** By a beam's formula alone, which takes no plate. */
  static boolean bendsFar(Candidate candidate) {
    return candidate.prop() == ShelfPlate.Prop.NONE
        && candidate.limits().use(candidate.beam()) > HOPELESS;
  }

  /** Where what only tips holds on a front row that stands farther forward. */
  Optional<RowOutward.Place> forward(ShelfReader reader, Part part, Candidate candidate) {
    return bendsFar(candidate) || !tips(candidate)
        ? Optional.empty()
        : new RowOutward(job, reader, part, Over.FRONT, verdict(candidate), plates)
            .find()
            .filter(place -> holds(place.there()));
  }

  /** What is wrong with it most; nothing where it holds or is no plate. */
  Optional<String> why(Verdict verdict) {
    return verdict.uses().stream()
        .filter(use -> !use.holds() && !(crushes && use.isBy(Limit.SUPPORTS)))
        .max(Comparator.comparingDouble(Use::share))
        .flatMap(use -> why(verdict, use));
  }

  private Optional<String> why(Verdict verdict, Use use) {
    return switch (use.by()) {
      case TIPPING -> Optional.of("tips under " + use.of().words(job.unit()));
      case SAG ->
          verdict
              .under(use.of())
              .map(b -> "sags %s of %s allowed".formatted(text(b.sag()), text(verdict.allowed())));
      case STRESS -> Optional.of("is stressed more than is allowed");
      case SUPPORTS -> Optional.of("presses more on a support than is allowed");
      case JOINTS -> Optional.of("loads its joints more than is allowed");
    };
  }

  /** Pushes grow about with its length; the shares of its supports hardly change with that. */
  private boolean presses(Candidate candidate) {
    double about = push * candidate.beam().length() / HOPELESS;
    return candidate.supports().stream().anyMatch(limit -> limit.isPassedBy(about));
  }

  /**
   * By statics, well before its front row or behind its back row: the shorter a shelf, the less of
   * its own weight holds it down. One that is carried under its edges does not.
   */
  private static boolean tips(Candidate candidate) {
    return switch (candidate.prop()) {
      case FRONT_AND_BACK -> false;
      case BACK -> tips(candidate, Over.FRONT);
      case NONE -> tips(candidate, Over.FRONT) || tips(candidate, Over.BACK);
    };
  }

  private static boolean tips(Candidate candidate, Over row) {
    return candidate.bearing() instanceof Bearing.Rows rows
        && candidate.cases().all().stream()
            .map(of -> Resting.of(candidate, of).from(row, candidate).middle())
            .anyMatch(middle -> middle < CLEARLY * row.setback(rows));
  }

  private boolean isFarRoughly(Candidate candidate) {
    Verdict rough = new Verdict(candidate, plates.rough());
    return Stream.concat(Stream.of(LoadCase.EVEN), candidate.cases().rows().stream())
        .flatMap(of -> rough.sagAndPush(of, candidate.beam().load()))
        .anyMatch(use -> use.share() > FAR && (use.isBy(Limit.SAG) || isAsked(use)));
  }

  private boolean isAsked(Use use) {
    return use.isBy(Limit.SUPPORTS) && !crushes;
  }

  /**
   * A cure of what bends leaves what crushes to the cures of that, and says so. The first limit
   * that is passed ends it.
   */
  boolean holds(Verdict verdict) {
    return verdict.by() == Verdict.By.PLATE
        && verdict
            .uses(verdict.shelf().beam().load())
            .allMatch(u -> u.holds() || (crushes && u.isBy(Limit.SUPPORTS)));
  }

  private static Optional<Use> crushing(Verdict verdict) {
    return verdict.uses().stream()
        .filter(use -> use.isBy(Limit.SUPPORTS) && !use.holds())
        .max(Comparator.comparingDouble(Use::share));
  }

  /** How far it then sags at the most, and what is still wrong. */
  String outcome(Verdict verdict) {
    Use most = Verdict.worst(verdict.uses().stream().filter(use -> use.isBy(Limit.SAG)));
    double sag = verdict.under(most.of()).orElseThrow().sag();
    double years = sag * verdict.shelf().limits().creep().number();
    return "sag %s now, %s after years".formatted(text(sag), text(years))
        + (most.of().equals(LoadCase.EVEN) ? "" : " with the load " + most.of().place())
        + crushing(verdict).map(use -> crushed(verdict, use)).orElse("")
        + rocking.by(verdict);
  }

  /** That it begins to rock under less load. @param load along it, N/mm */
  String rocksUnder(Verdict verdict, double load) {
    return rocking.by(verdict, load);
  }

  private String crushed(Verdict verdict, Use use) {
    double push = verdict.push(use);
    return "; a support then still carries %s, load %s: cure that too"
        .formatted(Quantity.of(push, QuantityUnit.FORCE).text(job.unit()), use.of().place());
  }

  private String text(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH).text(job.unit());
  }
}
