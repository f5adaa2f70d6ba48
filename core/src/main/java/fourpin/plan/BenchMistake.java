package fourpin.plan;

/** What goes wrong at the bench. */
public sealed interface BenchMistake permits Mistake, GrooveMistake, CleatMistake {

  /** Of the constant. */
  String name();

  /** For makers. */
  String title();
}
