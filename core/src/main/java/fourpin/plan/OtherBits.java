package fourpin.plan;

import fourpin.boring.way.Method;
import fourpin.casework.Feature.Hole;
import fourpin.job.Settings;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.job.Tool.Bushing;
import fourpin.job.Tool.CentringBit;
import fourpin.job.Tool.Machine;
import fourpin.job.Tool.PlainBit;
import fourpin.job.Tool.RouterBit;
import fourpin.measure.Length;
import fourpin.plan.CaseWays.GuidedBoring;
import fourpin.plan.OtherBit.Lack;
import fourpin.plan.OtherBit.Refused;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Looks for the bit that is taken by mistake: of the shop's own that fit into the same tool and are
 * nearly as wide the nearest in diameter, of two as near the wider. A shop that states no tools has
 * unknown bits, and one without another that fits may borrow: there it is the next size that is
 * sold.
 */
record OtherBits(Shop shop, Settings settings) {

  /** A bit of the shop's own, and why it does not fit, if so. */
  private record Candidate(Length bores, Optional<Refused> refused) {}

  /** Of one kind. @param fits whether a borrowed bit that bores so wide goes in */
  private record Rack(String kind, List<Candidate> bits, Predicate<Length> fits) {

    OtherBit than(Length right, SoldSizes sold) {
      List<Candidate> others =
          bits.stream()
              .filter(b -> !b.bores().equals(right) && SoldSizes.areNear(b.bores(), right))
              .toList();
      return others.stream()
          .filter(b -> b.refused().isEmpty())
          .map(Candidate::bores)
          .min(
              Comparator.comparing((Length d) -> d.minus(right).abs())
                  .thenComparing(Comparator.reverseOrder()))
          .<OtherBit>map(OtherBit.Own::new)
          .orElseGet(() -> borrowed(right, sold, others));
    }

    private OtherBit borrowed(Length right, SoldSizes sold, List<Candidate> others) {
      Lack lack = new Lack(kind, others.stream().flatMap(b -> b.refused().stream()).toList());
      return sold.bitBeside(right, fits)
          .<OtherBit>map(b -> new OtherBit.Borrowed(b, lack))
          .orElseGet(() -> new OtherBit.None(lack));
    }
  }

  /**
   * @param hole one that the right bit bores
   */
  OtherBit than(Hole hole, CaseWays ways) {
    Length right = hole.diameter();
    return shop.tools().isEmpty() ? unstated(right) : rack(hole, ways).than(right, sold());
  }

  /** A plain bit by hand or at the drill press. */
  OtherBit thanPlain(Length right) {
    return shop.tools().isEmpty() ? unstated(right) : plain().than(right, sold());
  }

  private SoldSizes sold() {
    return new SoldSizes(settings);
  }

  private OtherBit unstated(Length right) {
    return sold()
        .bitBeside(right, _ -> true)
        .<OtherBit>map(OtherBit.Unstated::new)
        .orElseGet(() -> new OtherBit.None(new Lack("bit", List.of())));
  }

  private Rack rack(Hole hole, CaseWays ways) {
    return switch (ways.manner(hole)) {
      case BY_HAND, DRILL_PRESS -> plain();
      case MACHINE -> machine(ways.machine());
      case GUIDED -> ways.guided(hole).map(this::through).orElseGet(this::plain);
    };
  }

  private Rack plain() {
    return new Rack(
        "bit", own(PlainBit.class).map(b -> free(b.diameter())).toList(), OtherBits::anySize);
  }

  private Rack machine(Optional<String> name) {
    return new Rack(
        "drill on the machine",
        own(Machine.class)
            .filter(m -> name.equals(Optional.of(m.name())))
            .flatMap(m -> m.diameters().stream())
            .map(OtherBits::free)
            .toList(),
        OtherBits::anySize);
  }

  private static boolean anySize(Length bores) {
    return bores.isPositive();
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
    return switch (boring.way()) {
      case ROUTER_GUIDE -> inBushing(method.bit().runs());
      case HARDBOARD_STRIP ->
          new Rack(
              "bit",
              own(PlainBit.class)
                  .map(b -> inGuide(b.name(), b.diameter(), b.diameter(), holes))
                  .toList(),
              bit -> !bit.isMoreThan(holes));
      default ->
          new Rack(
              "self-centring bit",
              own(CentringBit.class)
                  .map(b -> inGuide(b.name(), b.diameter(), b.tip(), holes))
                  .toList(),
              holes::isMoreThan);
    };
  }

  private static Candidate inGuide(String name, Length bores, Length enters, Length holes) {
    Optional<Refused> refused =
        Optional.of(new Refused(name, enters, "the guide's holes", holes))
            .filter(r -> r.size().isMoreThan(r.room()));
    return new Candidate(bores, refused);
  }

  /** They must run free in the bore of a bushing that is as thick as what runs in the guide. */
  private Rack inBushing(Length outside) {
    Optional<Length> bore =
        shop.all(Bushing.class).stream()
            .filter(b -> b.outside().equals(outside))
            .map(Bushing::bore)
            .max(Length::compareTo);
    return new Rack(
        "router bit",
        own(RouterBit.class).map(b -> inBushing(b, bore)).toList(),
        bit -> bore.stream().allMatch(bit::isLessThan));
  }

  private static Candidate inBushing(RouterBit bit, Optional<Length> bore) {
    Optional<Refused> refused =
        bore.filter(b -> !bit.diameter().isLessThan(b))
            .map(b -> new Refused(bit.name(), bit.diameter(), "the bushing's bore", b));
    return new Candidate(bit.diameter(), refused);
  }
}
