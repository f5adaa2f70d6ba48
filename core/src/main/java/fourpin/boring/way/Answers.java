package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Lazy;
import fourpin.measure.LazyList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Every way's answer for one group of bays. */
final class Answers {

  private final Group group;
  private final Precision precision;
  private final List<Answered> answers;

  /** An answer with what it was reckoned from, where the way is possible. */
  record Answered(
      WayAnswer answer, Optional<Reckoning> reckoning, Lazy<Optional<Precision.Rocking>> rocking) {

    Way way() {
      return answer.way();
    }
  }

  private static WayCheck check(Way way) {
    return switch (way) {
      case STORY_STICK -> new StickWay();
      case GROOVED_STANDARDS -> new StandardsWay();
      case CLEAT_BLANK -> new CleatsWay();
      case HARDBOARD_STRIP -> new StripWay();
      case CENTRING_GUIDE -> new CentringWay();
      case ROUTER_GUIDE -> new RouterWay();
      case STEEL_STRAP -> new StrapWay();
      case DRILL_PRESS -> new PressWay();
      case MACHINE -> new MachineWay();
    };
  }

  Answers(Group group, Precision precision) {
    this.group = group;
    this.precision = precision;
    this.answers = Stream.of(Way.values()).map(way -> answered(way, proposal(group, way))).toList();
  }

  /** What a way comes to before it is reckoned. */
  static Proposal proposal(Group group, Way way) {
    boolean forHoles = way != Way.GROOVED_STANDARDS && way != Way.CLEAT_BLANK;
    if (forHoles && !group.hasPins()) {
      return Pins.needed(group);
    }
    return forHoles && way != Way.STORY_STICK && group.holes() == 0
        ? Proposal.cannot("there is no level to bore", "see what is found in these bays")
        : check(way).of(group);
  }

  /** One for each way, in the order of the ways. */
  List<WayAnswer> list() {
    return answers.stream().map(Answered::answer).toList();
  }

  Answered of(Way way) {
    return answers.get(way.ordinal());
  }

  /** Those that can be taken with the tools at hand, else with tools to be bought. */
  List<Answered> open() {
    List<Answered> now = with(Verdict.POSSIBLE).toList();
    return now.isEmpty() ? with(Verdict.TO_BUY).toList() : now;
  }

  private Stream<Answered> with(Verdict verdict) {
    return answers.stream().filter(a -> a.answer().verdict() == verdict);
  }

  private Answered answered(Way way, Proposal proposal) {
    return switch (proposal) {
      case Proposal.Can can -> possible(way, can);
      case Proposal.Cannot(Verdict verdict, var reasons) ->
          new Answered(
              new WayAnswer(
                  way,
                  verdict,
                  reasons,
                  List.of(),
                  Optional.empty(),
                  List.of(),
                  LazyList.of(() -> figures(way, reasons))),
              Optional.empty(),
              Lazy.of(Optional::empty));
    };
  }

  /** How readily shelves rock, and what is printed of it, are worked out for who asks. */
  private Answered possible(Way way, Proposal.Can can) {
    Reckoning reckoning = new Reckoning(group, way, can);
    Lazy<Optional<Precision.Rocking>> rocking = Lazy.of(() -> rocking(way, can));
    Lazy<Optional<TogetherGain>> gain =
        Lazy.of(() -> can.together().single().map(single -> gain(way, reckoning, rocking, single)));
    List<Reason> together =
        LazyList.of(
            () ->
                Stream.concat(
                        can.together().words().stream(),
                        gain.get().stream().map(TogetherGain::reason))
                    .toList());
    return new Answered(
        new WayAnswer(
            way,
            verdict(can.work().bought()),
            can.notes(),
            together,
            Optional.of(can.method()),
            can.work().bought(),
            LazyList.of(
                () ->
                    Stream.of(
                            reckoning.figures(),
                            SetUpFigures.of(group, way, can.method()),
                            rocking.get().map(Precision.Rocking::figures).orElse(List.of()),
                            gain.get().map(TogetherGain::figures).orElse(List.of()),
                            figures(way, can.notes()),
                            figures(way, together))
                        .flatMap(List::stream)
                        .toList())),
        Optional.of(reckoning),
        rocking);
  }

  /** What is taken for granted costs, but nobody has said that the shop lacks it. */
  private static Verdict verdict(List<Purchase> bought) {
    return bought.stream().anyMatch(p -> p.need() == Purchase.Need.STATED)
        ? Verdict.TO_BUY
        : Verdict.POSSIBLE;
  }

  private TogetherGain gain(
      Way way,
      Reckoning reckoning,
      Lazy<Optional<Precision.Rocking>> rocking,
      Proposal.Can single) {
    return new TogetherGain(
        group,
        way,
        new TogetherGain.Side(reckoning, rocking.get()),
        new TogetherGain.Side(new Reckoning(group, way, single), rocking(way, single)));
  }

  /** What reasons say, each under an id of its own. */
  private List<Figure> figures(Way way, List<Reason> reasons) {
    List<Figure> figures = new ArrayList<>();
    Map<String, Integer> names = new HashMap<>();
    for (Reason reason : reasons) {
      for (Figure figure : reason.figures()) {
        int time = names.merge(figure.id(), 1, Integer::sum);
        String name = time == 1 ? figure.id() : figure.id() + "-" + time;
        figures.add(figure.called(group.figureId(way, name)));
      }
    }
    return figures;
  }

  private Optional<Precision.Rocking> rocking(Way way, Proposal.Can can) {
    return precision.of(group.built(), group.grids(), way, can.method());
  }
}
