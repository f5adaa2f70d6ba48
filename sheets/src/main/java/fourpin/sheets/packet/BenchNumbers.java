package fourpin.sheets.packet;

import fourpin.bench.Span;
import fourpin.bench.Step;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block.SetUp.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The few numbers that a step is set by, to be read from afar: what the typed step says, without
 * its sentence.
 */
public final class BenchNumbers {

  private final Words words;

  public BenchNumbers(Plan plan) {
    this.words = new Words(plan.job());
  }

  /** In the order of setting; none for steps that nothing is set for. */
  public List<Line> of(PlannedStep step) {
    return step.typed().stream().flatMap(this::lines).distinct().toList();
  }

  private Stream<Line> lines(Step step) {
    return switch (step) {
      case Step.SetBit bit ->
          Stream.of(
              new Line("bores", words.diameter(bit.diameter())),
              new Line("stop", words.length(bit.stop())));
      case Step.ClampGuide clamp -> clamped(clamp);
      case Step.BoreThrough bore -> Stream.of(new Line("holes", runs(bore.numbers())));
      case Step.ShiftGuide shift ->
          Stream.of(new Line("pin", shift.pin() + " into " + shift.into()));
      case Step.MaskHoles mask -> Stream.of(new Line("mask", runs(mask.numbers())));
      case Step.BoreRow row ->
          Stream.of(
              new Line("bit", words.diameter(row.diameter())),
              new Line("deep", words.length(row.depth())));
      case Step.BoreAtFence row ->
          Stream.of(
              new Line("fence", words.length(row.offset())),
              new Line("bit", words.diameter(row.diameter())),
              new Line("deep", words.length(row.depth())));
      case Step.Channel channel ->
          Stream.of(
              new Line(
                  at(channel) + ", " + words.length(channel.depth()) + " deep",
                  span(at(channel.along(), channel.across()))));
      case Step.Passes passes ->
          passes.passes().stream()
              .map(
                  pass ->
                      new Line(
                          "fence, deep",
                          words.number(pass.fence()) + ", " + words.length(pass.depth())));
      case Step.Rip rip -> Stream.of(new Line("fence", words.length(rip.width())));
      case Step.Crosscut cut -> Stream.of(new Line("long", words.length(cut.length())));
      case Step.MakeSpacer spacer ->
          Stream.of(new Line(spacer.spacer(), words.length(spacer.size())));
      case Step.MakeGuide guide ->
          Stream.of(
              new Line("long", words.length(guide.length())),
              new Line("wide", words.length(guide.width())));
      default -> Stream.of();
    };
  }

  /** A channel is set by the sides of its shorter way; it runs along the other. */
  private static Span at(Span along, Span across) {
    return along.size().isLessThan(across.size()) ? along : across;
  }

  private static String at(Step.Channel channel) {
    String shape = Words.lower(channel.shape());
    boolean fromEnd = at(channel.along(), channel.across()).equals(channel.along());
    return shape + (fromEnd ? " from end" : " from edge");
  }

  private String span(Span span) {
    return words.number(span.from()) + "\u2013" + words.length(span.to());
  }

  private Stream<Line> clamped(Step.ClampGuide clamp) {
    Stream<Line> shown = Stream.of(new Line("side up", clamp.showing().name()));
    return Stream.concat(
        shown, Stream.of(clamp.ends(), clamp.edges()).flatMap(a -> between(a).stream()));
  }

  private Optional<Line> between(Step.Against against) {
    return against.spacer().map(s -> new Line("spacer " + s.spacer(), words.length(s.size())));
  }

  /** "1–22, 46–56". */
  private static String runs(List<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    for (int from = 0; from < numbers.size(); from++) {
      int to = from;
      while (to + 1 < numbers.size() && numbers.get(to + 1) == numbers.get(to) + 1) {
        to++;
      }
      runs.add(numbers.get(from) + (to > from ? "\u2013" + numbers.get(to) : ""));
      from = to;
    }
    return String.join(", ", runs);
  }
}
