package fourpin.strength;

import static fourpin.strength.Shelving.check;

import fourpin.job.Back;
import fourpin.job.CaseDraft;
import fourpin.job.SampleJobs;
import fourpin.measure.Figure;
import java.util.Optional;
import java.util.function.Consumer;

/** Cases that sway, and what is told of it. */
final class Racks {

  private Racks() {}

  static Strength of(Consumer<CaseDraft> change) {
    CaseDraft draft = new CaseDraft();
    change.accept(draft);
    return check(SampleJobs.job(draft.order()));
  }

  static void back(CaseDraft draft, Back.Kind kind) {
    draft.back = Optional.of(new Back(kind, "back", Optional.empty(), Back.Pieces.ONE));
  }

  static Optional<Figure> find(Strength strength, String last) {
    return strength.cases().getFirst().racking().stream()
        .filter(f -> f.id().equals("north/" + last))
        .findFirst();
  }

  static double value(Strength strength, String last) {
    return find(strength, last).orElseThrow().value().value();
  }
}
