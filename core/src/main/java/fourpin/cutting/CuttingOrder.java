package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The order in which to cut one pattern: trimming first, then set-up by set-up. Of all cuts whose
 * piece is already there, those at the present setting are made before the fence is moved; then the
 * fence goes to the setting with the most cuts waiting, without changing direction if it can, the
 * widest of equals first.
 */
public final class CuttingOrder {

  /** A piece at the saw and the rectangle of the tree that it is. */
  private record Waiting(Piece piece, Placed place, Node.Cut cut) {
    Setting setting() {
      return new Setting(cut.direction(), cut.fence());
    }
  }

  private record Setting(Direction direction, Length fence) {}

  private final String sheet;
  private final Length kerf;
  private final List<SetUp> setUps = new ArrayList<>();
  private final List<Waiting> waiting = new ArrayList<>();
  private int names;

  private CuttingOrder(String sheet, Length kerf) {
    this.sheet = sheet;
    this.kerf = kerf;
  }

  /**
   * The set-ups for a pattern.
   *
   * @param number of the pattern in its layout, from 1: the sheet is named S and this number
   */
  public static List<SetUp> of(SheetPattern pattern, int number, Saw saw) {
    CuttingOrder order = new CuttingOrder("S" + number, saw.kerf());
    order.trim(pattern.whole());
    order.cutAll();
    return List.copyOf(order.setUps);
  }

  private void trim(Placed whole) {
    Placed now = whole;
    Piece piece = new Piece(sheet, content(now.node()), now.length(), now.width());
    while (now.node() instanceof Node.TrimOff trim) {
      Placed rest = now.trimmed(trim);
      Piece trimmed = new Piece(sheet, content(rest.node()), rest.length(), rest.width());
      Piece waste = waste(now, trim);
      setUps.add(
          new SetUp.TrimEdge(
              trim.edge(), trim.off(), List.of(new SawStep(piece, waste, Optional.of(trimmed)))));
      now = rest;
      piece = trimmed;
    }
    await(piece, now);
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
    if (place.node() instanceof Node.Cut cut) {
      waiting.add(new Waiting(piece, place, cut));
    }
  }

  private void cutAll() {
    Optional<Setting> next = nextSetting(Direction.RIP);
    while (next.isPresent()) {
      Setting setting = next.get();
      setUps.add(new SetUp.CutTo(setting.direction, setting.fence, cutAt(setting)));
      next = nextSetting(setting.direction);
    }
  }

  /** Makes every cut that can be made at a setting, those that become possible on the way too. */
  private List<SawStep> cutAt(Setting setting) {
    List<SawStep> steps = new ArrayList<>();
    Deque<Waiting> now = takeWaiting(setting);
    while (!now.isEmpty()) {
      while (!now.isEmpty()) {
        steps.add(cut(now.pop()));
      }
      now = takeWaiting(setting);
    }
    return steps;
  }

  private Deque<Waiting> takeWaiting(Setting setting) {
    Deque<Waiting> taken = new ArrayDeque<>();
    waiting.removeIf(w -> w.setting().equals(setting) && taken.add(w));
    return taken;
  }

  private SawStep cut(Waiting next) {
    Piece near = piece(next.place.near(next.cut));
    if (next.cut.far() instanceof Node.Dust) {
      return new SawStep(next.piece, near, Optional.empty());
    }
    return new SawStep(next.piece, near, Optional.of(piece(next.place.far(next.cut))));
  }

  private Piece piece(Placed place) {
    Piece piece = new Piece(nextName(), content(place.node()), place.length(), place.width());
    await(piece, place);
    return piece;
  }

  private static Piece.Content content(Node node) {
    return switch (node) {
      case Node.Cut cut -> new Piece.Content.ToCut();
      case Node.TrimOff trim -> new Piece.Content.ToCut();
      case Node.Finished(String mark, Lay lay) -> new Piece.Content.FinishedPart(mark, lay);
      case Node.Offcut offcut -> new Piece.Content.LeftOver();
      case Node.Dust dust -> throw new IllegalArgumentException("dust is not a piece");
    };
  }

  private Optional<Setting> nextSetting(Direction before) {
    Map<Setting, Integer> cuts = new LinkedHashMap<>();
    waiting.forEach(w -> cuts.merge(w.setting(), 1, Integer::sum));
    return cuts.entrySet().stream()
        .max(
            Comparator.<Map.Entry<Setting, Integer>, Boolean>comparing(
                    e -> e.getKey().direction == before)
                .thenComparing(Map.Entry::getValue)
                .thenComparing(e -> e.getKey().fence))
        .map(Map.Entry::getKey);
  }

  /** A to Z, then AA to AZ, and so on, behind the name of the sheet. */
  private String nextName() {
    StringBuilder letters = new StringBuilder();
    for (int n = names++; n >= 0; n = n / 26 - 1) {
      letters.insert(0, (char) ('A' + n % 26));
    }
    return sheet + "-" + letters;
  }
}
