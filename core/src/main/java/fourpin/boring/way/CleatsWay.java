package fourpin.boring.way;

import fourpin.boring.way.Method.How;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.job.BoardStock;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.job.Support.Cleats;
import fourpin.job.Tool.DrillPress;
import fourpin.job.Tool.PlainBit;
import fourpin.measure.Length;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Cleat strips, bored as one blank for the front and the back strip and ripped in two. On the drill
 * press blanks of one bay are bored in a stack, as far as bit and quill reach through it.
 */
final class CleatsWay implements WayCheck {

  /** Bit and fence of the saw. */
  private static final int SET_UPS = 2;

  private static final int STRIPS = 2;

  @Override
  public Proposal of(Group group) {
    if (!(group.support() instanceof Support.Cleats cleats)) {
      return group.hasPins()
          ? Pins.instead("cleats")
          : Proposal.changed("the bays stand on standards", "state cleats");
    }
    return new Shop(group, cleats).proposal();
  }

  /** What the shop has for these cleats. */
  private record Shop(Group group, Cleats cleats) {

    Proposal proposal() {
      Optional<PlainBit> bit =
          group.shop().all(PlainBit.class).stream()
              .filter(b -> b.diameter().equals(cleats.bore()))
              .filter(b -> b.reach().isAtLeast(cleats.thickness()))
              .min(Comparator.comparing(b -> b.toBuy().isPresent()));
      Optional<DrillPress> press =
          group.shop().all(DrillPress.class).stream()
              .filter(d -> d.toBuy().isEmpty() && d.stroke().isAtLeast(cleats.thickness()))
              .findFirst();
      int most = stack(bit, press);
      Proposal.Can single = can(bit, press, 1, stays(press));
      return most == 1 ? single : can(bit, press, most, stacked(single));
    }

    private Proposal.Can can(
        Optional<PlainBit> bit, Optional<DrillPress> press, int stack, Proposal.Together together) {
      return new Proposal.Can(
          new Method.Blanks(
              press.isPresent() ? How.DRILL_PRESS : How.BY_HAND, setting(bit, stack), stack),
          work(bit, press, stack),
          notes(bit, press),
          together);
    }

    private static Proposal.Together stacked(Proposal.Can single) {
      return new Proposal.Together(
          List.of(
              new Reason(
                  "the two blanks of a bay are bored in one stack, edges and ends flush: holes go"
                      + " right through",
                  "")),
          Optional.of(single));
    }

    private Proposal.Together stays(Optional<DrillPress> press) {
      if (press.isEmpty()) {
        return Proposal.Together.no(
            new Reason(
                "blanks are bored one by one: led by hand a bit leaves the square in a stack",
                "state a drill press whose quill travels through two blanks"));
      }
      return Proposal.Together.no(
          asked() == 1
              ? new Reason("blanks are bored one by one: the settings ask for it", Gangs.REMEDY)
              : new Reason(
                  "blanks are bored one by one: bit or quill does not reach through two",
                  "a longer bit and more travel"));
    }

    private int asked() {
      return Gangs.arePaired(group) ? STRIPS : 1;
    }

    /** Both blanks of a bay have their holes at the same heights. */
    private int stack(Optional<PlainBit> bit, Optional<DrillPress> press) {
      if (press.isEmpty()) {
        return 1;
      }
      Length reach =
          Length.min(press.get().stroke(), bit.map(PlainBit::reach).orElse(press.get().stroke()));
      long through = reach.wholeTimes(cleats.thickness());
      return (int) Math.max(1, Math.min(asked(), through));
    }

    private BitSetting setting(Optional<PlainBit> bit, int stack) {
      return new BitSetting(
          bit.map(PlainBit::name)
              .orElseGet(() -> "large bit of " + group.across(cleats.bore()) + " (assumed)"),
          cleats.bore(),
          Length.ZERO,
          Length.ZERO,
          cleats.thickness().times(stack),
          bit.map(PlainBit::point).orElseGet(() -> group.settings().length(Setting.BIT_POINT)),
          Length.ZERO,
          bit.map(_ -> Source.STATED).orElseGet(() -> group.settings().source(Setting.BIT_POINT)));
    }

    private Work work(Optional<PlainBit> bit, Optional<DrillPress> press, int stack) {
      return new Work(
          SET_UPS,
          Math.ceilDiv(blanks().size(), stack),
          Math.ceilDiv(blanks().stream().mapToLong(this::holes).sum(), stack),
          press.isPresent() ? Setting.PRESS_SECONDS : Setting.HOLE_SECONDS,
          new Work.Making(Setting.STICK_MINUTES),
          Optional.empty(),
          bit.map(b -> Purchase.of(group.style(), b))
              .orElseGet(() -> List.of(Purchase.bit(group, setting(bit, stack).tool()))));
    }

    private long holes(Part strip) {
      return strip.features().stream().filter(f -> f instanceof Feature.Hole).count();
    }

    /** One for each front strip: on both uprights of each bay, for each run. */
    private List<Part> blanks() {
      return group.grids().stream()
          .flatMap(
              g ->
                  group.built().parts().stream()
                      .filter(p -> p.role() == Part.Role.STRIP)
                      .filter(p -> isFront(p, g.bay() + "-L") || isFront(p, g.bay() + "-R")))
          .toList();
    }

    private static boolean isFront(Part strip, String start) {
      return strip.mark().startsWith(start + "F");
    }

    private List<Reason> notes(Optional<PlainBit> bit, Optional<DrillPress> press) {
      List<Reason> notes = new ArrayList<>();
      Telling tell = new Telling(group, "through-strip", "what bit and quill go through");
      String size = tell.across("b", "diameter that is bored", cleats.bore());
      String deep = tell.stated("t", "thickness of the strips", cleats.thickness());
      if (bit.isEmpty()) {
        notes.add(
            tell.reason(
                "a bit of " + size + " that reaches " + deep + " is taken for granted",
                "state it among the tools",
                "t",
                cleats.thickness()));
      }
      if (press.isEmpty()) {
        notes.add(
            tell.reason(
                "without a drill press holes as large as these are hard to bore square",
                "state a drill press whose quill travels " + deep,
                "t",
                cleats.thickness()));
      }
      tooWide().ifPresent(notes::add);
      notes.addAll(Earlier.cleats(group));
      return notes;
    }

    /** A blank that comes out of no board that the job states. */
    private Optional<Reason> tooWide() {
      Length kerf = group.settings().length(Setting.KERF);
      Length blank = cleats.width().times(STRIPS).plus(kerf);
      return group.job().boards().stream()
          .filter(b -> b.material().equals(cleats.material()))
          .map(BoardStock::width)
          .max(Length::compareTo)
          .filter(blank::isMoreThan)
          .map(widest -> tooWide(blank, widest));
    }

    private Reason tooWide(Length blank, Length widest) {
      Telling tell = new Telling(group, "blank-over-board", "blank wider than every board, by");
      String two = tell.stated("s", "width of a strip", cleats.width());
      String cut = tell.set("k", Setting.KERF);
      return tell.reason(
          "a blank of two strips of "
              + two
              + " and a saw cut of "
              + cut
              + " is "
              + tell.derived("w", "width of the blank", blank)
              + " wide, and no board of "
              + cleats.material()
              + " is wider than "
              + tell.stated("b", "width of the widest board", widest),
          "state a wider board of " + cleats.material() + ", or narrower strips",
          "2 s + k - b",
          blank.minus(widest));
    }
  }
}
