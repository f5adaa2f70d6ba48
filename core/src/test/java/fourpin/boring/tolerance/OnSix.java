package fourpin.boring.tolerance;

import static fourpin.job.SampleJobs.in;

import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import java.util.List;
import java.util.Locale;

/**
 * A way of boring three rows, judged thrice at its worst place: integrated, drawn for the place
 * alone, and drawn for whole cases.
 *
 * @param limit that makes its odds neither rare nor certain, mm
 * @param whole odds in whole cases that are simulated
 */
record OnSix(
    String name, ErrorModel model, double limit, PositionGap worst, Position place, double whole) {

  /** Whole cases. */
  static final int CASES = 5_000;

  /** For one place. */
  static final int DRAWN = 10_000;

  private static final long SEED = 12;
  private static final int PANELS = 2_000;

  /** With a third row of holes. */
  static Workshop shop(Settings settings) {
    return Workshop.with(
        settings.with(Setting.MIDDLE_ROW_FROM, new SettingValue.OfLength(in("5"))));
  }

  static OnSix of(String name, ErrorModel model, double limit) {
    GapTable table = GapTable.of(model, limit);
    int place = table.places().indexOf(table.worst());
    double whole = Simulation.run(model, limit, CASES, SEED).odds(place);
    return new OnSix(name, model, limit, table.worst(), model.positions().get(place), whole);
  }

  @Override
  public String toString() {
    return name;
  }

  private Spread spread(Miss miss) {
    return NetError.of(model, place, miss).spread();
  }

  /** Whether the gap of the corners and both middle pins are normal and have nothing to do. */
  boolean isIntegrable() {
    double cross = 0;
    for (Strand strand : SixPoints.of(model, place).strands()) {
      if (!strand.spread().reaches().isEmpty()) {
        return false;
      }
      double variance = strand.spread().normal() * strand.spread().normal();
      Pull pull = strand.direction();
      cross += variance * pull.gap() * (pull.left() + pull.right());
      cross += variance * Math.abs(pull.left() * pull.right());
    }
    return Math.abs(cross) < 1e-12;
  }

  /**
   * P(|X| + 2 max(0, P, Q) > L) = 1 - ∫ f(x) F((L - |x|) / 2)² dx from -L to L, f the density of X
   * and F the distribution of P and of Q, by Simpson's rule; X, P, Q normal and independent.
   */
  double integrated() {
    double x = spread(Miss.GAP).deviation();
    double p = spread(Miss.LEFT_PROUD).deviation();
    double step = limit / PANELS;
    double sum = 0;
    for (int i = 0; i <= PANELS; i++) {
      double weight = i == 0 || i == PANELS ? 1 : i % 2 == 1 ? 4 : 2;
      double at = i * step;
      double density = Math.exp(-at * at / (2 * x * x)) / (x * Math.sqrt(2 * Math.PI));
      double below = 1 - new Spread(p, List.of()).oddsBeyond((limit - at) / 2) / 2;
      sum += weight * density * below * below;
    }
    return 1 - 2 * sum * step / 3;
  }

  /** Between odds and those simulated, in standard errors. */
  static double off(double odds, double simulated, int cases) {
    return (simulated - odds) / Math.sqrt(odds * (1 - odds) / cases);
  }

  /** Between two simulations, in standard errors of their difference. */
  double apart() {
    double odds = (worst.odds() + whole) / 2;
    return (whole - worst.odds()) / Math.sqrt(odds * (1 - odds) * (1.0 / CASES + 1.0 / DRAWN));
  }

  String row() {
    boolean normal = isIntegrable();
    return String.format(
        Locale.ROOT,
        "| %s | %.4f | %.4f | %.2f | %s | %.4f | %s | %.4f | %.2f | %.4f |%n",
        name,
        spread(Miss.GAP).deviation(),
        spread(Miss.LEFT_PROUD).deviation(),
        limit,
        normal ? decimals(4, integrated()) : "none",
        worst.odds(),
        normal ? decimals(2, off(integrated(), worst.odds(), DRAWN)) : "",
        whole,
        apart(),
        worst.usual());
  }

  private static String decimals(int count, double value) {
    return String.format(Locale.ROOT, "%." + count + "f", value);
  }
}
