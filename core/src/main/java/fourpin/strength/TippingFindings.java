package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.Balance.Load;
import fourpin.strength.CaseTippingCures.Falling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Cases that fall forward by themselves, when they are opened, or when lightly pushed. */
final class TippingFindings {

  private final Job job;
  private final BuiltCase built;
  private final double foot;
  private final TippingFigures figures;
  private final Severity used;

  /**
   * @param foot from the front of the sides to the front foot, mm
   * @param used how bad it is where it falls when its doors or a drawer are merely opened
   */
  TippingFindings(Job job, BuiltCase built, double foot, TippingFigures figures, Severity used) {
    this.job = job;
    this.built = built;
    this.foot = foot;
    this.figures = figures;
    this.used = used;
  }

  /** Cases that fall forward by themselves, or when what they are opened by is pulled. */
  List<Finding> all() {
    List<Finding> all = new ArrayList<>();
    figures.loads().stream()
        .filter(load -> figures.held(load) <= 0)
        .findFirst()
        .map(this::byItself)
        .ifPresent(all::add);
    built
        .order()
        .doors()
        .filter(_ -> figures.held(Load.NONE) > 0 && figures.hung() <= 0)
        .ifPresent(_ -> all.add(figures.opened() <= 0 ? opened() : hung()));
    figures
        .drawers()
        .filter(_ -> figures.held(Load.NONE) > 0)
        .flatMap(this::pulled)
        .ifPresent(all::add);
    return all;
  }

  /** Where a light push tips it. */
  Optional<Finding> pushedOver() {
    return Optional.of(figures).filter(f -> f.pushed() <= 0).map(_ -> lightly());
  }

  private Finding lightly() {
    return finding(
        Severity.DOUBT,
        "%s and not fastened, %s, %s tips it forward"
            .formatted(loaded(), figures.floor(), figures.lightPush()),
        figures.pushedOver(),
        tipping -> tipping.held(tipping.worst()),
        figures.light().moment(height()));
  }

  private Finding byItself(Load load) {
    return finding(
        Severity.ERROR,
        "%s, %s, it falls forward by itself".formatted(load.words(), figures.floor()),
        figures.tips(load),
        tipping -> tipping.held(load));
  }

  /** The worst that drawers do, if it tips the case. */
  private Optional<Finding> pulled(DrawerFigures drawers) {
    int count = built.order().drawers().orElseThrow().count();
    if (drawers.held(1) <= 0) {
      return Optional.of(
          drawn(
              used,
              "when one full drawer is pulled out" + more(drawers, drawers.held(1)),
              drawers.tips(1)));
    }
    if (drawers.held(count) <= 0) {
      return Optional.of(
          drawn(
              Severity.DOUBT,
              "when all its drawers are pulled out full" + more(drawers, drawers.held(count)),
              drawers.tips(count)));
    }
    return drawers.leantOn() <= 0
        ? Optional.of(
            drawn(Severity.DOUBT, "when someone leans on a drawer that is out", drawers.leant()))
        : Optional.empty();
  }

  /** What cures are sized for as well, where that tips the case more. */
  private String more(DrawerFigures drawers, double held) {
    double least = figures.leastDrawn();
    if (least >= held) {
      return "";
    }
    return least == drawers.leantOn()
        ? ", the more when someone leans on a drawer that is out, which cures count too"
        : ", the more when all are, which cures count too";
  }

  private Finding drawn(Severity severity, String when, Figure figure) {
    return finding(
        severity,
        loaded() + " otherwise and not fastened, it falls forward " + when,
        figure,
        TippingFigures::leastDrawn);
  }

  private Finding opened() {
    return finding(
        used,
        "%s and not fastened, it falls forward when all its doors are open, the more when %s hang on one of them, which cures count too"
            .formatted(loaded(), pull()),
        figures.open(),
        TippingFigures::hung);
  }

  private Finding hung() {
    return finding(Severity.DOUBT, hanging(), figures.hungOn(), TippingFigures::hung);
  }

  private String hanging() {
    return "%s and not fastened, with its doors open, it falls forward when %s hang on one of them"
        .formatted(loaded(), pull());
  }

  private String pull() {
    return Quantity.of(built.order().settings().number(Setting.DOOR_PULL), QuantityUnit.FORCE)
        .text(job.unit());
  }

  private String loaded() {
    return figures.worst().words();
  }

  private Finding finding(
      Severity severity, String what, Figure figure, ToDoubleFunction<TippingFigures> held) {
    return finding(severity, what, figure, held, 0);
  }

  private Finding finding(
      Severity severity,
      String what,
      Figure figure,
      ToDoubleFunction<TippingFigures> held,
      double enough) {
    return new Finding(
        severity,
        "case-tips",
        what,
        List.of(figure),
        Place.of(built.order().name(), "T", built.part("T").box()),
        LazyList.of(() -> remedies(held, enough)));
  }

  private List<Remedy> remedies(ToDoubleFunction<TippingFigures> held, double enough) {
    List<Remedy> all = new ArrayList<>();
    all.add(
        new Remedy(
            "fasten it to the wall before anything else; the pull on its anchors stands under"
                + " \"standing and wall\"",
            "screws into studs"));
    all.addAll(new CaseTippingCures(job, falling(held, enough)).all());
    return all;
  }

  private Falling falling(ToDoubleFunction<TippingFigures> held, double enough) {
    return new Falling(
        FloorSlope.To.FRONT,
        List.of(built.order()),
        change ->
            held.applyAsDouble(
                new TippingFigures(job, CaseTippingCures.ordered(built, change), foot)),
        enough,
        figures.light(),
        "its bottom",
        CaseTippingCures.lever(built, foot),
        height());
  }

  private double height() {
    return built.outside().size(Axis.Z).mm();
  }
}
