package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What working on several panels together brings against the same way panel by panel. */
final class TogetherGain {

  private final Group group;
  private final Side together;
  private final Side single;
  private final Figure saved;
  private final List<Figure> figures = new ArrayList<>();

  /** What a way comes to. */
  record Side(Reckoning reckoning, Optional<Precision.Rocking> rocking) {}

  TogetherGain(Group group, Way way, Side together, Side single) {
    this.group = group;
    this.together = together;
    this.single = single;
    Figure before = single.reckoning().minutes();
    Figure after = together.reckoning().minutes();
    this.saved =
        new Figure(
            group.figureId(way, "time-saved-together"),
            "time that working on panels together saves",
            Quantity.of(before.value().value() - after.value().value(), QuantityUnit.TIME),
            "b - a",
            List.of(
                new Input("b", "time panel by panel", before.value(), before.source()),
                new Input("a", "time together", after.value(), after.source())),
            after.source());
    figures.add(saved);
    single
        .rocking()
        .flatMap(TogetherGain::odds)
        .ifPresent(f -> figures.add(renamed(f, group.figureId(way, "odds-panel-by-panel"))));
  }

  private static Optional<Figure> odds(Precision.Rocking rocking) {
    return rocking.figures().stream().filter(f -> f.id().endsWith("/odds")).findFirst();
  }

  private static Figure renamed(Figure figure, String id) {
    return new Figure(
        id,
        figure.title() + ", panel by panel",
        figure.value(),
        figure.formula(),
        figure.inputs(),
        figure.source());
  }

  List<Figure> figures() {
    return List.copyOf(figures);
  }

  /** "saves 1.2 min; shelves rock in 22 % of cases, panel by panel in 38 %". */
  Reason reason() {
    return new Reason("together" + time() + rocking(), "");
  }

  private String time() {
    double minutes = saved.value().value();
    String amount = Quantity.of(Math.abs(minutes), QuantityUnit.TIME).text(unit());
    return minutes < 0 ? " takes " + amount + " longer" : " saves " + amount;
  }

  private String rocking() {
    return single
        .rocking()
        .flatMap(s -> together.rocking().map(t -> rocking(t.odds(), s.odds())))
        .orElse("");
  }

  private String rocking(double now, double before) {
    return "; the worst placed shelf rocks in "
        + percent(now)
        + " of cases, panel by panel in "
        + percent(before);
  }

  private String percent(double odds) {
    return Quantity.of(odds, QuantityUnit.PER_CENT).text(unit());
  }

  private Unit unit() {
    return group.job().unit();
  }
}
