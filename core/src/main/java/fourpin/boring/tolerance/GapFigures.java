package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.ErrorModel.Term;
import fourpin.boring.tolerance.NetError.Share;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The figures of a way's gaps, each with its working. */
final class GapFigures {

  private static final Source VARIANCES =
      new Source("variances of independent errors add up", "any statistics", Standing.DERIVED);
  private static final Source SIMULATED =
      new Source("cases simulated with seeded random numbers", "", Standing.DERIVED);

  /** What ids of standard errors end with, after that of the odds. */
  private static final String ERROR = "-error";

  /** See {@link SixPoints}. */
  private static final String ON_SIX =
      "G = |X| + 2 max(0, P, Q), X = LF - LB - RF + RB, P = LM - (LF + LB) / 2, Q = RM - (RF + RB) / 2";

  private final String prefix;
  private final ErrorModel model;
  private final GapTable table;
  private final Settings settings;

  /**
   * @param prefix of the figures' ids
   */
  GapFigures(String prefix, ErrorModel model, GapTable table, Settings settings) {
    this.prefix = prefix;
    this.model = model;
    this.table = table;
    this.settings = settings;
  }

  /** Those of single places; the gap first, then the odds. */
  List<Figure> ofPlaces() {
    List<Figure> figures = new ArrayList<>(ofGap(Manner.of(table.worst().gap())));
    figures.add(
        figure(
            "places-that-rock",
            "places of a case that rock so that it is felt, mean",
            Quantity.of(table.expected(), QuantityUnit.RATIO),
            "sum of the odds of all places",
            List.of(
                new Input("n", "places", Quantity.count(table.places().size()), Source.GEOMETRY),
                limit()),
            VARIANCES));
    table.proudest().ifPresent(place -> figures.add(proud(place)));
    figures.add(
        figure(
            "slope",
            "height from left to right that 95 of 100 shelves stay within",
            length(table.slope()),
            "h with P(|Y| ≤ h) = 0.95, Y = (LF + LB - RF - RB) / 2, s = √(s1² + s2² + ...)",
            causes(table.steepest(), Miss.SLOPE),
            VARIANCES));
    return figures;
  }

  /** How the gap of a place comes about: how it is written, and where it comes from. */
  private record Manner(String gap, String odds, String mean, Source source) {

    static Manner of(Distribution gap) {
      return switch (gap) {
        case Spread spread when spread.reaches().isEmpty() ->
            new Manner("1.96 s", "100 erfc(L / (s √2))", "s √(2 / π)", VARIANCES);
        case Spread _ ->
            new Manner(
                "g with P(|X| ≤ g) = 0.95",
                "100 P(|X| > L), X normal and uniform errors summed",
                "mean of |X|",
                VARIANCES);
        case SimulatedGap drawn ->
            new Manner(
                "g with P(G ≤ g) = 0.95, " + ON_SIX,
                "100 P(G > L), " + ON_SIX,
                "mean of G, " + ON_SIX,
                new Source(
                    "drawn " + drawn.count() + " times with seeded random numbers",
                    "",
                    Standing.DERIVED));
      };
    }
  }

  /** Where places differ, gap and odds of each kind of them. */
  List<Figure> ofEachPlace() {
    Map<Distribution, List<PositionGap>> alike = new LinkedHashMap<>();
    table.places().forEach(p -> alike.computeIfAbsent(p.gap(), _ -> new ArrayList<>()).add(p));
    if (alike.size() == 1) {
      return List.of();
    }
    List<Figure> figures = new ArrayList<>();
    for (List<PositionGap> places : alike.values()) {
      PositionGap first = places.getFirst();
      String id = "bay-" + first.bay() + "-level-" + first.level() + "/";
      Manner manner = Manner.of(first.gap());
      figures.add(usual(id, first, manner, words(places)));
      figures.addAll(odds(id, first, manner, words(places)));
    }
    return figures;
  }

  /** "bay 1 levels 1 to 12, bay 2 level 4". */
  private static String words(List<PositionGap> places) {
    List<String> runs = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= places.size(); to++) {
      PositionGap last = places.get(to - 1);
      boolean goesOn =
          to < places.size()
              && places.get(to).bay() == last.bay()
              && places.get(to).level() == last.level() + 1;
      if (!goesOn) {
        PositionGap first = places.get(from);
        String levels =
            first.level() == last.level()
                ? " level " + last.level()
                : " levels " + first.level() + " to " + last.level();
        runs.add("bay " + first.bay() + levels);
        from = to;
      }
    }
    return String.join(", ", runs);
  }

  /** From which gain on a change is told. */
  List<Figure> leastGains() {
    Setting odds = Setting.LEAST_ODDS_GAIN;
    return List.of(
        leastGain(Setting.LEAST_GAIN, Quantity.of(settings.length(Setting.LEAST_GAIN))),
        leastGain(odds, Quantity.of(settings.number(odds), QuantityUnit.PER_CENT)));
  }

  private Figure leastGain(Setting setting, Quantity value) {
    Source origin = settings.source(setting);
    return figure(
        setting.key(),
        setting.meaning(),
        value,
        "g",
        List.of(new Input("g", setting.meaning(), value, origin)),
        origin);
  }

  private Figure usual(String id, PositionGap place, Manner manner, String at) {
    return figure(
        id + "gap",
        "gap under a "
            + (place.proud().isPresent() ? "corner" : "fourth")
            + " pin that 95 of 100 shelves stay within, "
            + at,
        length(place.usual()),
        manner.gap() + ", s = √(s1² + s2² + ...)",
        causes(place, Miss.GAP),
        manner.source());
  }

  /** With their standard error where they were drawn. */
  private List<Figure> odds(String id, PositionGap place, Manner manner, String at) {
    String title = "odds that a shelf rocks so that it is felt, " + at;
    List<Figure> figures = new ArrayList<>();
    figures.add(
        figure(
            id + "odds",
            title,
            percent(place.odds()),
            manner.odds(),
            join(limit(), deviations(place)),
            manner.source()));
    place
        .gap()
        .sampledBeyond(table.limit())
        .ifPresent(odds -> figures.add(error(id + "odds", title, odds, manner.source())));
    return figures;
  }

  private Figure error(String of, String title, Sampled odds, Source drawn) {
    return figure(
        of + ERROR,
        "standard error of the " + title,
        percent(odds.error()),
        "100 √(p (1 - p) / (n + 4)), p = (k + 2) / (n + 4)",
        List.of(
            new Input("k", "cases in which one does", Quantity.count(odds.found()), drawn),
            new Input("n", "cases drawn", Quantity.count(odds.drawn()), drawn)),
        Sampled.PLUS_FOUR);
  }

  private List<Figure> ofGap(Manner manner) {
    PositionGap worst = table.worst();
    List<Figure> figures = new ArrayList<>(List.of(usual("", worst, manner, at(worst))));
    figures.addAll(odds("", worst, manner, at(worst)));
    figures.add(
        figure(
            "mean-gap",
            "gap under a "
                + (worst.proud().isPresent() ? "corner" : "fourth")
                + " pin, mean, "
                + at(worst),
            length(worst.gap().mean()),
            manner.mean(),
            deviations(worst),
            manner.source()));
    return figures;
  }

  private Figure proud(PositionGap place) {
    Spread proud = place.proud().orElseThrow();
    return figure(
        "middle-pin",
        "height of a middle pin above or below the line of its neighbours, that 95 of 100 stay"
            + " within, "
            + at(place),
        length(proud.within(PositionGap.USUAL_SHARE)),
        "g with P(|P| ≤ g) = 0.95, P = LM - (LF + LB) / 2",
        List.of(new Input("p", "standard deviation of P", length(proud.deviation()), VARIANCES)),
        VARIANCES);
  }

  /** Odds that at least one of several places rocks, of any and of those with a shelf. */
  List<Figure> simulated(Tally tally) {
    List<Figure> figures = new ArrayList<>();
    figures.addAll(
        simulated(
            "odds-any-place", "odds that a shelf would rock somewhere in the case", tally.any()));
    figures.addAll(
        simulated(
            "odds-any-shelf", "odds that a shelf rocks where the plan lays it", tally.anyApart()));
    return figures;
  }

  private List<Figure> simulated(String what, String title, Sampled odds) {
    return List.of(
        figure(
            what,
            title,
            percent(odds.share()),
            "100 k / n",
            List.of(
                new Input("k", "cases in which one does", Quantity.count(odds.found()), SIMULATED),
                new Input("n", "cases simulated", Quantity.count(odds.drawn()), SIMULATED),
                limit()),
            SIMULATED),
        error(what, title, odds, SIMULATED));
  }

  private String at(PositionGap place) {
    double least = table.places().stream().mapToDouble(PositionGap::usual).min().orElse(0);
    boolean even = table.worst().usual() - least <= settings.length(Setting.LEAST_GAIN).mm();
    return even ? "at every place" : "bay " + place.bay() + " level " + place.level();
  }

  private Input limit() {
    return new Input(
        "L",
        Setting.FEEL_LIMIT.meaning(),
        length(table.limit()),
        settings.source(Setting.FEEL_LIMIT));
  }

  /** Of the gap of the corners, and of what a middle pin stands proud. */
  private List<Input> deviations(PositionGap place) {
    List<Input> inputs = new ArrayList<>();
    Spread corners = NetError.of(model, position(place), Miss.GAP).spread();
    inputs.add(new Input("s", "standard deviation", length(corners.deviation()), VARIANCES));
    place
        .proud()
        .map(proud -> length(proud.deviation()))
        .ifPresent(p -> inputs.add(new Input("p", "the same of P and Q", p, VARIANCES)));
    return inputs;
  }

  private static List<Input> join(Input first, List<Input> rest) {
    List<Input> all = new ArrayList<>(List.of(first));
    all.addAll(rest);
    return all;
  }

  /** What each kind of cause comes to; a kind that cancels comes to nothing, and is shown. */
  private List<Input> causes(PositionGap place, Miss miss) {
    Position position = position(place);
    Map<CauseKind, Double> variances = new EnumMap<>(CauseKind.class);
    kinds(position).forEach(kind -> variances.put(kind, 0.0));
    for (Share share : NetError.of(model, position, miss).shares()) {
      variances.merge(share.cause().kind(), share.deviation() * share.deviation(), Double::sum);
    }
    List<Input> inputs = new ArrayList<>();
    variances.forEach((kind, variance) -> inputs.add(input(inputs.size() + 1, kind, variance)));
    return inputs;
  }

  private Input input(int number, CauseKind kind, double variance) {
    String meaning = kind.title() + (variance == 0 ? ": the same in all holes, cancels" : "");
    return new Input("s" + number, meaning, length(Math.sqrt(variance)), source(kind));
  }

  private Set<CauseKind> kinds(Position position) {
    Set<CauseKind> kinds = EnumSet.noneOf(CauseKind.class);
    for (List<Term> terms : position.points().values()) {
      terms.stream()
          .map(term -> model.causes().get(term.cause()))
          .filter(cause -> cause.deviation() > 0)
          .forEach(cause -> kinds.add(cause.kind()));
    }
    return kinds;
  }

  private Position position(PositionGap place) {
    return model.positions().get(table.places().indexOf(place));
  }

  private Source source(CauseKind kind) {
    return kind.setting().map(settings::source).orElse(Source.GEOMETRY);
  }

  private Figure figure(
      String what,
      String title,
      Quantity value,
      String formula,
      List<Input> inputs,
      Source source) {
    return new Figure(prefix + "/" + what, title, value, formula, inputs, source);
  }

  private static Quantity length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH);
  }

  private static Quantity percent(double share) {
    return Quantity.of(share * 100, QuantityUnit.PER_CENT);
  }
}
