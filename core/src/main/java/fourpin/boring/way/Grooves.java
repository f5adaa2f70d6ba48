package fourpin.boring.way;

import fourpin.boring.way.Method.Cutter;
import fourpin.boring.way.Method.Grooved;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Tool.Router;
import fourpin.job.Tool.RouterBit;
import fourpin.job.Tool.TableSaw;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The grooves of a group, and what the shop cuts them with: passes side by side as often as the cut
 * goes into the width, the last placed so that the width comes out; a router goes down by depths, a
 * saw cuts the whole depth, but only where a groove runs through from end to end.
 */
final class Grooves {

  private final Group group;
  private final List<Groove> grooves;
  private final List<Choice> possible = new ArrayList<>();
  private final List<Reason> routers = new ArrayList<>();
  private final List<Reason> saws = new ArrayList<>();

  /** One groove. */
  private record Groove(Part part, Feature.Channel channel) {
    boolean isThrough() {
      return channel.volume().size(part.lengthAxis()).equals(part.box().size(part.lengthAxis()));
    }
  }

  /** What cuts the grooves. @param notes what to know before taking it */
  record Choice(Grooved method, List<Purchase> bought, List<Reason> notes) {
    int cuts() {
      return method.passes() * method.depths().size();
    }
  }

  Grooves(Group group) {
    this.group = group;
    Set<String> names =
        group.grids().stream()
            .flatMap(g -> g.rows().stream().map(g::groove))
            .collect(Collectors.toSet());
    this.grooves =
        group.built().parts().stream()
            .flatMap(p -> p.features().stream().flatMap(f -> groove(p, f, names)))
            .toList();
    group.shop().all(RouterBit.class).forEach(this::router);
    group.shop().all(TableSaw.class).forEach(this::saw);
  }

  private static Stream<Groove> groove(Part part, Feature feature, Set<String> names) {
    return feature instanceof Feature.Channel channel && names.contains(channel.purpose())
        ? Stream.of(new Groove(part, channel))
        : Stream.empty();
  }

  int count() {
    return grooves.size();
  }

  /** Different distances from the front edge. */
  int rows() {
    return (int) grooves.stream().map(g -> g.channel().volume().low().y()).distinct().count();
  }

  /** Faces of panels that are laid up and clamped. */
  int faces() {
    return (int)
        grooves.stream().map(g -> List.of(g.part().mark(), g.channel().face())).distinct().count();
  }

  /** Tools at hand before those to buy, fewer cuts before more, else the shop's own order. */
  Choice choice() {
    return possible.stream()
        .min(Comparator.comparing((Choice c) -> !c.bought().isEmpty()).thenComparing(Choice::cuts))
        .map(c -> new Choice(c.method(), c.bought(), saws))
        .orElseGet(this::assumed);
  }

  private Choice assumed() {
    Length cut = Length.min(group.settings().length(Setting.GROOVE_BIT), width());
    List<Reason> notes = new ArrayList<>(routers);
    notes.addAll(saws);
    Telling tell = new Telling(group, "groove-bit", "bit that the grooves are cut with");
    tell.set("b", Setting.GROOVE_BIT);
    tell.stated("g", "width of the groove", width());
    notes.add(
        tell.reason(
            "a router with a straight bit of " + group.across(cut) + " is taken for granted",
            "state router and bit among the tools",
            "the less of b and g",
            Quantity.across(cut)));
    String name = "straight bit of " + group.across(cut) + " (assumed)";
    return new Choice(
        grooved(Cutter.ROUTER, name, cut),
        List.of(Purchase.unpriced("router"), Purchase.bit(group, name)),
        notes);
  }

  private Length width() {
    return group.diameter();
  }

  private void router(RouterBit bit) {
    Optional<Router> router =
        group.shop().all(Router.class).stream()
            .filter(r -> r.travel().isAtLeast(group.depth()))
            .min(Comparator.comparing(r -> r.toBuy().isPresent()));
    if (bit.diameter().isMoreThan(width())) {
      tooWide(routers, bit.name(), bit.diameter(), "take a straight bit");
    } else if (bit.reach().isLessThan(group.depth())) {
      tooShort(routers, bit.name(), bit.reach());
    } else if (router.isEmpty()) {
      routers.add(
          new Reason(
              "no router plunges " + group.text(group.depth()) + " with " + bit.name(),
              "state one that does among the tools"));
    } else {
      possible.add(
          new Choice(
              grooved(Cutter.ROUTER, bit.name(), bit.diameter()),
              Purchase.of(group.style(), bit, router.get()),
              List.of()));
    }
  }

  private void saw(TableSaw saw) {
    Optional<Groove> stopped = grooves.stream().filter(g -> !g.isThrough()).findFirst();
    if (saw.cut().isMoreThan(width())) {
      tooWide(saws, saw.name(), saw.cut(), "take a blade");
    } else if (saw.depth().isLessThan(group.depth())) {
      tooShort(saws, saw.name(), saw.depth());
    } else if (stopped.isPresent()) {
      saws.add(
          new Reason(
              "the grooves in "
                  + stopped.get().part().name()
                  + " stop at the panels between its ends and can't be sawn through with "
                  + saw.name(),
              "rout them"));
    } else {
      possible.add(
          new Choice(
              grooved(Cutter.SAW, saw.name(), saw.cut()),
              Purchase.of(group.style(), saw),
              List.of()));
    }
  }

  private void tooWide(List<Reason> reasons, String tool, Length cut, String take) {
    Telling tell = new Telling(group, "cut-over-groove", tool + " wider than the groove, by");
    String cuts = tool + " cuts " + tell.stated("c", "width that it cuts", cut);
    String groove = tell.stated("g", "width of the groove", width());
    reasons.add(
        tell.reason(
            cuts + ", wider than the groove of " + groove,
            take + " of " + groove + " or less",
            "c - g",
            cut.minus(width())));
  }

  private void tooShort(List<Reason> reasons, String tool, Length reach) {
    Telling tell = new Telling(group, "groove-beyond-reach", "groove deeper than it cuts, by");
    reasons.add(
        tell.reason(
            tool
                + " cuts "
                + tell.stated("c", "depth that it cuts", reach)
                + " deep, the groove is "
                + tell.stated("g", "depth of the groove", group.depth()),
            "take one that reaches deeper",
            "g - c",
            group.depth().minus(reach)));
  }

  private Grooved grooved(Cutter cutter, String tool, Length cut) {
    int passes = Math.toIntExact(Math.ceilDiv(width().picometres(), cut.picometres()));
    return new Grooved(cutter, tool, cut, passes, depths(cutter));
  }

  private List<Length> depths(Cutter cutter) {
    Length most = group.settings().length(Setting.ROUTER_PASS);
    List<Length> depths = new ArrayList<>();
    for (Length at = most; cutter == Cutter.ROUTER && at.isLessThan(group.depth()); ) {
      depths.add(at);
      at = at.plus(most);
    }
    depths.add(group.depth());
    return depths;
  }
}
