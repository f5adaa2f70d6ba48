package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Cause;
import fourpin.boring.tolerance.ErrorModel.Shape;
import fourpin.boring.tolerance.ErrorModel.Term;
import fourpin.job.Settings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The causes of a model, each entered once however many holes have it. */
final class CauseBook {

  private record Key(CauseKind kind, String which) {}

  private final Settings settings;
  private final List<Cause> causes = new ArrayList<>();
  private final Map<Key, Integer> places = new HashMap<>();

  CauseBook(Settings settings) {
    this.settings = settings;
  }

  /** A normal cause of a kind that has a setting. */
  Term normal(CauseKind kind, String which) {
    double twice = settings.length(kind.setting().orElseThrow()).mm();
    return term(new Cause(kind, which, Shape.NORMAL, twice / 2));
  }

  /** A uniform cause. @param reach to either side, mm; below zero there is none */
  Term uniform(CauseKind kind, String which, double reach) {
    return term(new Cause(kind, which, Shape.UNIFORM, Math.max(0, reach) / Spread.reachOf(1)));
  }

  private Term term(Cause cause) {
    Key key = new Key(cause.kind(), cause.which());
    Integer known = places.putIfAbsent(key, causes.size());
    if (known == null) {
      causes.add(cause);
      return new Term(causes.size() - 1, 1);
    }
    return new Term(known, 1);
  }

  static Term turned(Term term) {
    return new Term(term.cause(), -term.factor());
  }

  List<Cause> causes() {
    return List.copyOf(causes);
  }
}
