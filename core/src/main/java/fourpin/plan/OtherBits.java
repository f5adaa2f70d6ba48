package fourpin.plan;

import fourpin.boring.way.Method;
import fourpin.casework.Feature.Hole;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.job.Tool.Bushing;
import fourpin.job.Tool.CentringBit;
import fourpin.job.Tool.Machine;
import fourpin.job.Tool.PlainBit;
import fourpin.job.Tool.RouterBit;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.plan.CaseWays.GuidedBoring;
import fourpin.plan.OtherBit.Refused;
import fourpin.reference.Reference;
import fourpin.reference.ShelfPin;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Looks for the bit that is taken by mistake: of the shop's own that fit into the same tool the
 * nearest in diameter, of two as near the wider. A shop that states no tools has unknown bits;
 * there it is the next wider one that pins are sold for, and for the widest the next narrower.
 */
record OtherBits(Shop shop) {

  /** A bit of the shop's own, and why it does not fit, if so. */
  private record Candidate(Length bores, Optional<Refused> refused) {}

  /** Of one kind. */
  private record Rack(String kind, List<Candidate> bits) {

    OtherBit than(Length right) {
      List<Candidate> others = bits.stream().filter(b -> !b.bores().equals(right)).toList();
      return others.stream()
          .filter(b -> b.refused().isEmpty())
          .map(Candidate::bores)
          .min(
              Comparator.comparing((Length d) -> d.minus(right).abs())
                  .thenComparing(Comparator.reverseOrder()))
          .<OtherBit>map(OtherBit.Own::new)
          .orElseGet(
              () ->
                  new OtherBit.None(
                      kind, others.stream().flatMap(b -> b.refused().stream()).toList()));
    }
  }

  /**
   * @param hole one that the right bit bores
   */
  OtherBit than(Hole hole, CaseWays ways) {
    return shop.tools().isEmpty() ? sold(hole.diameter()) : rack(hole, ways).than(hole.diameter());
  }

  /** A plain bit by hand or at the drill press. */
  OtherBit thanPlain(Length right) {
    return shop.tools().isEmpty() ? sold(right) : plain().than(right);
  }

  private static OtherBit sold(Length right) {
    Stream<Length> sizes = Reference.pins().rows().stream().map(ShelfPin::hole);
    return sizes
        .filter(s -> !s.equals(right))
        .min(
            Comparator.comparing((Length s) -> s.isLessThan(right))
                .thenComparing(s -> s.minus(right).abs()))
        .<OtherBit>map(OtherBit.Sold::new)
        .orElseGet(() -> new OtherBit.None("bit", List.of()));
  }

  private Rack rack(Hole hole, CaseWays ways) {
    return switch (ways.manner(hole)) {
      case BY_HAND, DRILL_PRESS -> plain();
      case MACHINE -> machine(ways.machine());
      case GUIDED -> ways.guided(hole).map(this::through).orElseGet(this::plain);
    };
  }

  private Rack plain() {
    return new Rack("bit", own(PlainBit.class).map(b -> free(b.diameter())).toList());
  }

  private Rack machine(Optional<String> name) {
    return new Rack(
        "drill on the machine",
        own(Machine.class)
            .filter(m -> name.equals(Optional.of(m.name())))
            .flatMap(m -> m.diameters().stream())
            .map(OtherBits::free)
            .toList());
  }

  private <T extends Tool> Stream<T> own(Class<T> kind) {
    return shop.all(kind).stream().filter(tool -> tool.toBuy().isEmpty());
  }

  private static Candidate free(Length bores) {
    return new Candidate(bores, Optional.empty());
  }

  private Rack through(GuidedBoring boring) {
    Method.Guided method = boring.method();
    Length holes = method.guide().holes().getFirst().diameter();
    if (boring.way() == Way.ROUTER_GUIDE) {
      return new Rack(
          "router bit", own(RouterBit.class).map(b -> inBushing(b, method.bit().runs())).toList());
    }
    return boring.way() == Way.HARDBOARD_STRIP
        ? new Rack(
            "bit",
            own(PlainBit.class)
                .map(b -> inGuide(b.name(), b.diameter(), b.diameter(), holes))
                .toList())
        : new Rack(
            "self-centring bit",
            own(CentringBit.class)
                .map(b -> inGuide(b.name(), b.diameter(), b.tip(), holes))
                .toList());
  }

  private static Candidate inGuide(String name, Length bores, Length enters, Length holes) {
    Optional<Refused> refused =
        Optional.of(new Refused(name, enters, "the guide's holes", holes))
            .filter(r -> r.size().isMoreThan(r.room()));
    return new Candidate(bores, refused);
  }

  /** It must run free in the bore of a bushing that is as thick as what runs in the guide. */
  private Candidate inBushing(RouterBit bit, Length outside) {
    Optional<Length> bore =
        shop.all(Bushing.class).stream()
            .filter(b -> b.outside().equals(outside))
            .map(Bushing::bore)
            .max(Length::compareTo);
    Optional<Refused> refused =
        bore.filter(b -> !bit.diameter().isLessThan(b))
            .map(b -> new Refused(bit.name(), bit.diameter(), "the bushing's bore", b));
    return new Candidate(bit.diameter(), refused);
  }
}
