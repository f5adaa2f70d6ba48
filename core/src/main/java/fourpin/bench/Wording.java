package fourpin.bench;

import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Steps as instructions: what, where from, how far, how deep. */
public final class Wording {

  private final LengthStyle style;

  public Wording(LengthStyle style) {
    this.style = style;
  }

  /** Steps as sentences, complete with every figure; pieces that get the same share one. */
  public List<String> texts(List<? extends Step> steps) {
    Map<String, List<String>> pieces = new LinkedHashMap<>();
    for (Step step : steps) {
      List<String> alike = pieces.computeIfAbsent(body(step), _ -> new ArrayList<>());
      if (!alike.contains(subject(step))) {
        alike.add(subject(step));
      }
    }
    return pieces.entrySet().stream()
        .map(e -> String.join(", ", e.getValue()) + ": " + e.getKey())
        .toList();
  }

  private static String subject(Step step) {
    return switch (step) {
      case Step.CutToSize cut -> cut.piece();
      case Step.MarkSurfaces mark -> mark.piece();
      case Step.Band band -> band.piece();
      case Step.Channel channel -> channel.piece();
      case Step.Passes passes -> passes.piece();
      case Step.Rip rip -> rip.piece();
      case Step.BoreRow row -> row.piece();
      case Step.MarkStick stick -> "Stick “" + stick.stick() + "”";
    };
  }

  private String body(Step step) {
    return switch (step) {
      case Step.CutToSize cut ->
          say("%s long, %s wide, from %s.", text(cut.length()), text(cut.width()), cut.stock());
      case Step.MarkSurfaces mark -> marks(mark);
      case Step.Band band ->
          say("%s on %s, %s thick.", band.what(), band.surface().words(), text(band.thickness()));
      case Step.Channel channel -> channel(channel);
      case Step.Passes passes -> passes(passes);
      case Step.Rip rip ->
          say(
              "rip with the index edge at the fence, fence to blade %s: %s falls between fence and"
                  + " blade, %s beyond; the kerf takes %s.",
              text(rip.width()), rip.first(), rip.second(), text(rip.kerf()));
      case Step.BoreRow row -> row(row);
      case Step.MarkStick stick -> stick(stick);
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

  /** Fence by fence, with the depths that are cut at each. */
  private String passes(Step.Passes p) {
    Map<Length, List<Length>> fences = new LinkedHashMap<>();
    p.passes()
        .forEach(f -> fences.computeIfAbsent(f.fence(), _ -> new ArrayList<>()).add(f.depth()));
    List<String> settings = new ArrayList<>();
    fences.forEach((fence, depths) -> settings.add(setting(settings.size() + 1, fence, depths)));
    return say(
        "%s for %s, on %s, %s, cut of %s: %s.",
        p.shape().name().toLowerCase(Locale.ROOT),
        p.purpose(),
        p.surface().words(),
        span(p.along(), "index end"),
        text(p.cut()),
        String.join("; ", settings));
  }

  private String setting(int number, Length fence, List<Length> depths) {
    return say(
        "(%d) index edge to near side of the cut %s, %s deep",
        number, text(fence), String.join(", then ", depths.stream().map(this::text).toList()));
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
        text(row.diameter()),
        text(row.depth()));
  }

  private String spacing(Spacing spacing, String from) {
    return switch (spacing) {
      case Spacing.Each each ->
          say(
              "%d %s, at %s from the %s",
              each.distances().size(),
              each.distances().size() == 1 ? "hole" : "holes",
              places(each.distances()),
              from);
      case Spacing.FromStick stick -> fromStick(stick, from);
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
        runs(stick.numbers()),
        stick.stick(),
        holes,
        zero);
  }

  /** Numbers as people say them: 1 to 14, 20 to 22. */
  private static String runs(List<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= numbers.size(); i++) {
      if (i == numbers.size() || numbers.get(i) != numbers.get(i - 1) + 1) {
        int first = numbers.get(start);
        int last = numbers.get(i - 1);
        runs.add(first == last ? "" + first : first + " to " + last);
        start = i;
      }
    }
    return String.join(", ", runs);
  }

  private String stick(Step.MarkStick stick) {
    List<Length> ends = stick.ends().stream().filter(Length::isPositive).toList();
    return say(
        "every mark measured from zero and numbered: %s.%s",
        numbered(stick.marks()),
        ends.isEmpty() ? "" : say(" Marks for the ends of panels: at %s.", places(ends)));
  }

  /** Marks at equal distances are told by the first, the last and the distance. */
  private String numbered(List<Length> marks) {
    List<String> all = new ArrayList<>();
    int start = 0;
    while (start < marks.size()) {
      int end = endOfRun(marks, start);
      all.add(run(marks, start, end));
      start = end + 1;
    }
    return String.join(", ", all);
  }

  private static int endOfRun(List<Length> marks, int start) {
    int end = start;
    while (end + 1 < marks.size()
        && (end == start || step(marks, end).equals(step(marks, start)))) {
      end++;
    }
    return end;
  }

  private static Length step(List<Length> marks, int at) {
    return marks.get(at + 1).minus(marks.get(at));
  }

  private String run(List<Length> marks, int start, int end) {
    return start == end
        ? say("(%d) %s", start + 1, text(marks.get(start)))
        : say(
            "(%d) %s to (%d) %s, every %s",
            start + 1,
            text(marks.get(start)),
            end + 1,
            text(marks.get(end)),
            text(step(marks, start)));
  }

  /** Each with its own "at", since "7/8, 2 5/8" is misread. */
  private String places(List<Length> distances) {
    List<String> texts = distances.stream().map(this::text).toList();
    int last = texts.size() - 1;
    return last == 0
        ? texts.getFirst()
        : String.join(", at ", texts.subList(0, last)) + " and at " + texts.get(last);
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
