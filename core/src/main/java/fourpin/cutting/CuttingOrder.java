package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The order in which to cut one pattern: trimming first, then set-up by set-up. Of all cuts whose
 * piece is already there, those at the present setting are made before the fence is moved. Then the
 * fence goes, without changing direction if it can, to a setting that no later piece needs: it has
 * to be set once anyhow, and what comes off there is ready for the others. Else it goes to the
 * setting with the most cuts waiting; of equals to one that is held as before, then to the widest.
 * Passes that are held in another way are another setting. Where going by the cuts waiting alone
 * needs fewer set-ups, the order is that. Pieces that are straightened before they are ripped wait
 * like others.
 */
public final class CuttingOrder {

  /** A piece at the saw and the rectangle of the tree that it is. */
  private record Waiting(Piece piece, Placed place) {}

  /**
   * What is set at the saw.
   *
   * @param size at the fence, or all that is trimmed off
   * @param trimmed the edge that is straightened, if one is
   */
  private record Setting(Direction direction, Length size, Optional<Edge> trimmed, Hold hold) {}

  /** Where the fence goes next. */
  private enum Rule {
    /** First to settings that no later piece needs. */
    DONE_WITH,
    /** By the cuts waiting alone. */
    MOST_WAITING
  }

  private final String name;
  private final StockSheet sheet;
  private final Length kerf;
  private final HoldLimits holds;
  private final Rule rule;
  private final List<SetUp> setUps = new ArrayList<>();
  private final Map<Setting, Deque<Waiting>> waiting = new LinkedHashMap<>();

  /** Cuts that come to the saw only by cuts at another setting. */
  private final Map<Setting, Integer> later = new HashMap<>();

  private Optional<Setting> present = Optional.empty();
  private int names;

  private CuttingOrder(String name, StockSheet sheet, Length kerf, HoldLimits holds, Rule rule) {
    this.name = name;
    this.sheet = sheet;
    this.kerf = kerf;
    this.holds = holds;
    this.rule = rule;
  }

  /**
   * The set-ups for a pattern.
   *
   * @param number of the pattern in its layout, from 1: the sheet is named S and this number
   * @param holds what the shop can hold
   */
  public static List<SetUp> of(SheetPattern pattern, int number, Saw saw, HoldLimits holds) {
    return Stream.of(Rule.values())
        .map(rule -> new CuttingOrder("S" + number, pattern.sheet(), saw.kerf(), holds, rule))
        .map(order -> order.of(pattern.whole()))
        .min(Comparator.<List<SetUp>>comparingInt(List::size).thenComparingLong(SetUp::turns))
        .orElseThrow();
  }

  private List<SetUp> of(Placed whole) {
    trim(whole);
    cutAll();
    return List.copyOf(setUps);
  }

  private void trim(Placed whole) {
    Placed now = whole;
    Piece piece = new Piece(name, content(now), now.length(), now.width());
    while (now.node() instanceof Node.TrimOff trim) {
      SawStep step = trim(piece, now, trim);
      setUps.add(new SetUp.TrimEdge(trim.edge(), trim.off(), holds.trim(now, trim), List.of(step)));
      now = now.trimmed(trim);
      piece = step.far().orElseThrow();
    }
    lookAhead(now);
    await(piece, now);
  }

  private void lookAhead(Placed whole) {
    setting(whole).ifPresent(setting -> later.merge(setting, 1, Integer::sum));
    Deque<Placed> open = new ArrayDeque<>(List.of(whole));
    while (!open.isEmpty()) {
      Placed place = open.pop();
      for (Placed next : place.under()) {
        setting(next)
            .filter(setting -> !setting(place).equals(Optional.of(setting)))
            .ifPresent(setting -> later.merge(setting, 1, Integer::sum));
        open.push(next);
      }
    }
  }

  /** What is trimmed keeps its name. */
  private SawStep trim(Piece piece, Placed place, Node.TrimOff trim) {
    Placed rest = place.trimmed(trim);
    Piece trimmed = new Piece(piece.name(), content(rest), rest.length(), rest.width());
    return new SawStep(piece, waste(place, trim), Optional.of(trimmed));
  }

  private Piece waste(Placed from, Node.TrimOff trim) {
    Length strip = Length.max(trim.off().minus(kerf), Length.ZERO);
    boolean rip = trim.edge().direction() == Direction.RIP;
    return new Piece(
        nextName(),
        new Piece.Content.TrimWaste(),
        rip ? from.length() : strip,
        rip ? strip : from.width());
  }

  private void await(Piece piece, Placed place) {
    setting(place)
        .ifPresent(
            setting -> {
              waiting
                  .computeIfAbsent(setting, _ -> new ArrayDeque<>())
                  .add(new Waiting(piece, place));
              later.merge(setting, present.equals(Optional.of(setting)) ? 0 : -1, Integer::sum);
            });
  }

  private Optional<Setting> setting(Placed place) {
    return switch (place.node()) {
      case Node.Cut cut -> Optional.of(setting(place, cut));
      case Node.TrimOff trim -> Optional.of(setting(place, trim));
      case Node.Finished _, Node.Offcut _, Node.Dust _ -> Optional.empty();
    };
  }

  private Setting setting(Placed place, Node.Cut cut) {
    Hold hold = holds.cut(place, cut, sheet);
    return new Setting(cut.direction(), cut.fence(), Optional.empty(), hold);
  }

  private Setting setting(Placed place, Node.TrimOff trim) {
    Hold hold = holds.trim(place, trim);
    return new Setting(trim.edge().direction(), trim.off(), Optional.of(trim.edge()), hold);
  }

  private void cutAll() {
    present = nextSetting();
    while (present.isPresent()) {
      Setting setting = present.get();
      List<SawStep> steps = cutAt(setting);
      setUps.add(setUp(setting, steps));
      present = nextSetting();
    }
  }

  private static SetUp setUp(Setting setting, List<SawStep> steps) {
    return setting
        .trimmed
        .<SetUp>map(edge -> new SetUp.TrimEdge(edge, setting.size, setting.hold, steps))
        .orElseGet(() -> new SetUp.CutTo(setting.direction, setting.size, setting.hold, steps));
  }

  /** Makes every cut that can be made at a setting, those that become possible on the way too. */
  private List<SawStep> cutAt(Setting setting) {
    List<SawStep> steps = new ArrayList<>();
    Deque<Waiting> now = waiting.getOrDefault(setting, new ArrayDeque<>());
    while (!now.isEmpty()) {
      steps.add(cut(now.pop()));
    }
    waiting.remove(setting);
    return steps;
  }

  private SawStep cut(Waiting next) {
    return switch (next.place.node()) {
      case Node.TrimOff trim -> {
        SawStep step = trim(next.piece, next.place, trim);
        await(step.far().orElseThrow(), next.place.trimmed(trim));
        yield step;
      }
      case Node.Cut cut -> cut(next, cut);
      case Node.Finished _, Node.Offcut _, Node.Dust _ ->
          throw new IllegalArgumentException("nothing is left to cut");
    };
  }

  private SawStep cut(Waiting next, Node.Cut cut) {
    Piece near = piece(next.place.near(cut));
    if (cut.far() instanceof Node.Dust) {
      return new SawStep(next.piece, near, Optional.empty());
    }
    return new SawStep(next.piece, near, Optional.of(piece(next.place.far(cut))));
  }

  private Piece piece(Placed place) {
    Piece piece = new Piece(nextName(), content(place), place.length(), place.width());
    await(piece, place);
    return piece;
  }

  private static Piece.Content content(Placed place) {
    return switch (place.node()) {
      case Node.Cut cut -> new Piece.Content.ToCut();
      case Node.TrimOff trim -> new Piece.Content.ToCut();
      case Node.Finished(String mark, Lay lay) -> new Piece.Content.FinishedPart(mark, lay);
      case Node.Offcut offcut -> new Piece.Content.LeftOver(place.x(), place.y());
      case Node.Dust dust -> throw new IllegalArgumentException("dust is not a piece");
    };
  }

  private Optional<Setting> nextSetting() {
    Direction before = present.map(Setting::direction).orElse(Direction.RIP);
    Optional<Hold> held = present.map(Setting::hold);
    return waiting.entrySet().stream()
        .max(
            Comparator.<Map.Entry<Setting, Deque<Waiting>>, Boolean>comparing(
                    e -> e.getKey().direction == before)
                .thenComparing(e -> e.getKey().trimmed.isPresent())
                .thenComparing(
                    e -> rule == Rule.DONE_WITH && later.getOrDefault(e.getKey(), 0) == 0)
                .thenComparing(e -> e.getValue().size())
                .thenComparing(e -> held.equals(Optional.of(e.getKey().hold)))
                .thenComparing(e -> e.getKey().size))
        .map(Map.Entry::getKey);
  }

  /** A to Z, then AA to AZ, and so on, behind the name of the sheet. */
  private String nextName() {
    StringBuilder letters = new StringBuilder();
    for (int n = names++; n >= 0; n = n / 26 - 1) {
      letters.insert(0, (char) ('A' + n % 26));
    }
    return name + "-" + letters;
  }
}
