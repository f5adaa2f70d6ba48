package fourpin.plan;

/** What goes wrong at the bench. */
public sealed interface BenchMistake permits Mistake, GrooveMistake, CleatMistake {

  /** Of the constant. */
  String name();

  /** For makers. */
  String title();

  /** What it is with holes for pins, or comes nearest to there. */
  Mistake like();
}
