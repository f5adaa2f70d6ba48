package fourpin.bench;

import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Steps as instructions: what, where from, how far, how deep. */
public final class Wording {

  /** Equal distances fewer than this are told one by one. */
  private static final int LEAST_RUN = 5;

  private final LengthStyle style;
  private final GuideWording guides;

  public Wording(LengthStyle style) {
    this.style = style;
    this.guides = new GuideWording(style);
  }

  /**
   * Steps as sentences, complete with every figure; pieces that get the same share one. Where it is
   * the order that counts, as with a guide, each step keeps its place.
   */
  public List<String> texts(List<? extends Step> steps) {
    Map<Said, List<String>> pieces = new LinkedHashMap<>();
    for (Step step : steps) {
      String body = step instanceof Step.Passes passes ? passes(passes, steps) : body(step);
      Said said = new Said(body, isInOrder(step) ? pieces.size() : 0);
      List<String> alike = pieces.computeIfAbsent(said, _ -> new ArrayList<>());
      if (!alike.contains(subject(step))) {
        alike.add(subject(step));
      }
    }
    return pieces.entrySet().stream()
        .map(e -> String.join(", ", e.getValue()) + ": " + e.getKey().body())
        .toList();
  }

  /**
   * @param place among the sentences, where it counts
   */
  private record Said(String body, int place) {}

  private static boolean isInOrder(Step step) {
    return step instanceof Step.ClampGuide
        || step instanceof Step.TakeOffBlock
        || step instanceof Step.ShiftGuide
        || step instanceof Step.FitBlock
        || step instanceof Step.SquareAcross
        || step instanceof Step.BoreThrough;
  }

  private static String subject(Step step) {
    return switch (step) {
      case Step.CutToSize cut -> cut.piece();
      case Step.MarkSurfaces mark -> mark.piece();
      case Step.Band band -> band.piece();
      case Step.Channel channel -> channel.piece();
      case Step.Passes passes -> passes.piece();
      case Step.Crosscut cut -> cut.piece();
      case Step.Rip rip -> rip.piece();
      case Step.BoreRow row -> row.piece();
      case Step.MarkStick stick -> "Stick “" + stick.stick() + "”";
      case Step.SquareAcross across ->
          String.join(" and ", across.panels().stream().map(Step.Laid::piece).toList());
      case Step.BoreAtFence row -> row.piece();
      case Step.MakeGuide make -> guide(make.guide());
      case Step.MakeSpacer make -> "Spacer “" + make.spacer() + "”";
      case Step.MaskHoles mask -> guide(mask.guide());
      case Step.SetBit _ -> "Bit";
      case Step.ClampGuide clamp -> clamp.piece();
      case Step.TakeOffBlock off -> guide(off.guide());
      case Step.FitBlock fit -> guide(fit.guide());
      case Step.ShiftGuide shift -> shift.piece();
      case Step.BoreThrough bore -> bore.piece();
    };
  }

  private static String guide(String mark) {
    return "Guide “" + mark + "”";
  }

  private String body(Step step) {
    return switch (step) {
      case Step.CutToSize cut ->
          say("%s long, %s wide, from %s.", text(cut.length()), text(cut.width()), cut.stock());
      case Step.MarkSurfaces mark -> marks(mark);
      case Step.Band band ->
          say("%s on %s, %s thick.", band.what(), band.surface().words(), text(band.thickness()));
      case Step.Channel channel -> channel(channel);
      case Step.Passes passes -> passes(passes, List.of(passes));
      case Step.Crosscut cut ->
          say("cut to %s, measured from %s.", text(cut.length()), cut.end().words());
      case Step.Rip rip ->
          say(
              "rip with the index edge at the fence, fence to blade %s: %s falls between fence and"
                  + " blade, %s beyond; the kerf takes %s.",
              text(rip.width()), rip.first(), rip.second(), text(rip.kerf()));
      case Step.BoreRow row -> row(row);
      case Step.MarkStick stick -> stick(stick);
      case Step.SquareAcross across -> squareAcross(across);
      case Step.BoreAtFence row -> atFence(row);
      case Step.MakeGuide make -> guides.make(make);
      case Step.MakeSpacer make -> guides.make(make);
      case Step.MaskHoles mask -> guides.mask(mask);
      case Step.SetBit bit -> guides.bit(bit);
      case Step.ClampGuide clamp -> guides.clamp(clamp);
      case Step.TakeOffBlock _ -> "take its block off.";
      case Step.FitBlock _ -> guides.fit();
      case Step.ShiftGuide shift -> guides.shift(shift);
      case Step.BoreThrough bore -> guides.bore(bore);
    };
  }

  private String marks(Step.MarkSurfaces mark) {
    List<String> labels = new ArrayList<>();
    for (Map.Entry<Surface, String> label : new TreeMap<>(mark.labels()).entrySet()) {
      labels.add(
          say("“%s” on %s", label.getValue().toUpperCase(Locale.ROOT), label.getKey().words()));
    }
    return "write " + String.join(", ", labels) + ".";
  }

  private String channel(Step.Channel c) {
    boolean ends = c.surface() == Surface.INDEX_END || c.surface() == Surface.FAR_END;
    boolean broad = c.surface() == Surface.FACE || c.surface() == Surface.REVERSE;
    return say(
        "%s for %s, worked from %s: %s, %s, %s deep.",
        c.shape().name().toLowerCase(Locale.ROOT),
        c.purpose(),
        c.surface().words(),
        span(c.along(), ends ? "index edge" : "index end"),
        span(c.across(), broad ? "index edge" : "face"),
        text(c.depth()));
  }

  /**
   * Fence by fence, with the depths that are cut at each. What is cut at the same settings in
   * another stretch of the piece is told with it.
   *
   * @param all steps that it is told with
   */
  private String passes(Step.Passes p, List<? extends Step> all) {
    List<String> stretches =
        all.stream()
            .flatMap(s -> s instanceof Step.Passes other ? Stream.of(other) : Stream.empty())
            .filter(other -> other.with(p.along()).equals(p))
            .map(other -> say("%s to %s", number(other.along().from()), text(other.along().to())))
            .toList();
    return say(
        "%s for %s, on %s, %s from the index end, cut of %s; index edge to near side of the cut,"
            + " one after the other: %s.",
        p.shape().name().toLowerCase(Locale.ROOT),
        p.purpose(),
        p.surface().words(),
        String.join(" and ", stretches),
        text(p.cut()),
        settings(p));
  }

  private String settings(Step.Passes p) {
    Map<Length, List<Length>> fences = new LinkedHashMap<>();
    p.passes()
        .forEach(f -> fences.computeIfAbsent(f.fence(), _ -> new ArrayList<>()).add(f.depth()));
    List<Length> printed = new FenceSettings(style).printed(List.copyOf(fences.keySet()));
    boolean alike = fences.values().stream().distinct().count() == 1;
    List<String> settings = new ArrayList<>();
    fences.forEach(
        (fence, depths) -> {
          String shown = (printed.get(settings.size()).equals(fence) ? "" : "≈ ");
          String to = shown + text(printed.get(settings.size()));
          settings.add(say("(%d) %s", settings.size() + 1, alike ? to : to + ", " + deep(depths)));
        });
    String all = String.join("; ", settings);
    return alike ? all + "; at each " + deep(fences.values().iterator().next()) : all;
  }

  private String deep(List<Length> depths) {
    return say("%s deep", String.join(", then ", depths.stream().map(this::text).toList()));
  }

  /**
   * Where a cut lies: from edge to edge, unless the edges as printed stand further from the true
   * width than the width as printed. Then the play of a joint would be lost between them, and the
   * width is told with the edge that prints better.
   */
  private String span(Span span, String from) {
    Length printed = style.rounded(span.to()).minus(style.rounded(span.from()));
    if (!missed(span.size()).isLessThan(printed.minus(span.size()).abs())) {
      return say("%s to %s from the %s", number(span.from()), text(span.to()), from);
    }
    boolean end = missed(span.to()).isLessThan(missed(span.from()));
    return say(
        "%s wide, %s %s from the %s",
        text(span.size()), end ? "ending" : "starting", text(end ? span.to() : span.from()), from);
  }

  /** How far a length as printed is from the true one. */
  private Length missed(Length length) {
    return style.rounded(length).minus(length).abs();
  }

  private String row(Step.BoreRow row) {
    boolean along = row.line() == Step.BoreRow.Line.ALONG;
    return say(
        "%s, on %s, %s from the %s: %s; bit %s, %s deep.",
        row.purpose(),
        row.surface().words(),
        text(row.offset()),
        along ? "index edge" : "index end",
        spacing(row.spacing(), along ? "index end" : "index edge"),
        style.diameter(row.diameter()),
        text(row.depth()));
  }

  private String atFence(Step.BoreAtFence row) {
    return say(
        "%s, on %s, %s to the fence, centre of the bit %s from the fence: %s; bit %s, %s deep.",
        row.purpose(),
        row.surface().words(),
        row.edge().words(),
        text(row.offset()),
        spacing(row.spacing(), "index end"),
        style.diameter(row.diameter()),
        text(row.depth()));
  }

  private String spacing(Spacing spacing, String from) {
    return switch (spacing) {
      case Spacing.Each each ->
          say(
              "%d %s, at %s from the %s",
              each.distances().size(),
              each.distances().size() == 1 ? "hole" : "holes",
              isLong(each.distances()) ? evenly(each.distances()) : places(each.distances()),
              from);
      case Spacing.FromStick stick -> fromStick(stick, from);
      case Spacing.OnLines lines -> onLines(lines);
    };
  }

  private String fromStick(Spacing.FromStick stick, String from) {
    Length datum = stick.datum();
    String zero =
        datum.isNegative()
            ? say("its zero %s from the %s", text(datum.abs()), from)
            : datum.isZero()
                ? say("its zero at the %s", from)
                : say("its end mark %s at the %s", text(datum), from);
    int holes = stick.numbers().size();
    return say(
        holes == 1 ? "mark %s of stick “%s”, %d hole, %s" : "marks %s of stick “%s”, %d holes, %s",
        Numbers.words(stick.numbers(), "mark"),
        stick.stick(),
        holes,
        zero);
  }

  private static String onLines(Spacing.OnLines lines) {
    int holes = lines.numbers().size();
    return say(
        holes == 1 ? "line %s, %d hole" : "lines %s, %d holes",
        Numbers.words(lines.numbers(), "line"),
        holes);
  }

  private String squareAcross(Step.SquareAcross across) {
    Spacing.FromStick marks = across.marks();
    return say(
        "lay them side by side, %s; square a line across both from every mark of stick “%s” that"
            + " follows, its %s at the stop, and write the mark's number beside it: marks %s.",
        String.join("; ", across.panels().stream().map(this::laid).toList()),
        marks.stick(),
        marks.datum().isZero() ? "zero" : say("end mark %s", text(marks.datum())),
        Numbers.words(marks.numbers(), "mark"));
  }

  private String laid(Step.Laid laid) {
    return say(
        "%s with %s up, %s to the other panel, %s %s the stop",
        laid.piece(),
        laid.up().words(),
        laid.edge().words(),
        laid.end().words(),
        laid.gap().isZero() ? "at" : say("%s (a spacer) from", text(laid.gap())));
  }

  private String stick(Step.MarkStick stick) {
    List<Length> ends = stick.ends().stream().filter(Length::isPositive).toList();
    return say(
        "every mark measured from zero and numbered: %s.%s",
        NumberedMarks.words(style, stick.marks()),
        ends.isEmpty() ? "" : say(" Marks for the ends of panels: at %s.", places(ends)));
  }

  /** Each with its own "at", since "7/8, 2 5/8" is misread. */
  private String places(List<Length> distances) {
    List<String> texts = distances.stream().map(this::text).toList();
    int last = texts.size() - 1;
    return last == 0
        ? texts.getFirst()
        : String.join(", at ", texts.subList(0, last)) + " and at " + texts.get(last);
  }

  /** Many holes at equal distances. */
  private static boolean isLong(List<Length> distances) {
    return distances.size() >= LEAST_RUN
        && IntStream.range(1, distances.size()).mapToObj(i -> gap(distances, i)).distinct().count()
            == 1;
  }

  private static Length gap(List<Length> distances, int at) {
    return distances.get(at).minus(distances.get(at - 1));
  }

  private String evenly(List<Length> distances) {
    return say(
        "%s to %s, every %s,",
        text(distances.getFirst()), text(distances.getLast()), text(gap(distances, 1)));
  }

  private String text(Length length) {
    return style.text(length);
  }

  private String number(Length length) {
    return style.number(length);
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
