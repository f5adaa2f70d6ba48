package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Rescue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which bit is taken by mistake where holes of 1/4 in are bored. Bits are written by their
 * diameters in inches; "+" stands before one that would have to be bought.
 */
class OtherBitTest {

  private static MistakeReport report(Optional<Way> way, List<Tool> tools) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bay(2));
    Job job = job(draft.order()).with(new Shop("shop", tools));
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<CaseBoring> borings = way.map(w -> GuidedBookcase.boring(boring)).stream().toList();
    if (way.isPresent()) {
      Method method = borings.getFirst().method();
      Method done =
          way.get() == Way.MACHINE
              ? new Method.Programmed("borer", ((Method.Guided) method).bit())
              : method;
      borings = List.of(GuidedBookcase.boring(boring, way.get(), done));
    }
    return Mistakes.of(job, boring, BenchProgram.of(job, boring, borings), borings).stream()
        .filter(r -> r.mistake() == Mistake.OTHER_BIT)
        .findFirst()
        .orElseThrow();
  }

  private static String taken(MistakeReport report) {
    return report.what().startsWith("The shop's bit of ")
        ? report.what().replaceAll("The shop's bit of (.*) is in, instead of 1/4 in\\.", "$1")
        : "none";
  }

  private static List<Tool> bits(String diameters, BitMaker maker) {
    List<Tool> tools = new ArrayList<>();
    for (String text : diameters.split(" ")) {
      Optional<BigDecimal> price =
          text.startsWith("+") ? Optional.of(BigDecimal.TEN) : Optional.empty();
      tools.add(maker.bit(text, in(text.replace("+", "")), price));
    }
    return tools;
  }

  private interface BitMaker {
    Tool bit(String name, Length diameter, Optional<BigDecimal> toBuy);
  }

  private static Tool plain(String name, Length diameter, Optional<BigDecimal> toBuy) {
    return new Tool.PlainBit(name, diameter, in("1/8"), in("3"), toBuy);
  }

  private static Tool router(String name, Length diameter, Optional<BigDecimal> toBuy) {
    return new Tool.RouterBit(name, diameter, in("1"), toBuy);
  }

  /** The nose is 1/8 in wider than the bit, its tip 1/16 in. */
  private static Tool centring(String name, Length diameter, Optional<BigDecimal> toBuy) {
    return new Tool.CentringBit(
        name,
        diameter,
        diameter.plus(in("1/8")),
        diameter.plus(in("1/16")),
        Optional.empty(),
        in("1/16"),
        in("1"),
        toBuy);
  }

  @ParameterizedTest
  @CsvSource({
    "1/4 5/32 9/32, 9/32 in",
    "1/4 3/16 5/16, 5/16 in",
    "1/4 3/16 +9/32, 3/16 in",
    "1/4 +9/32, none",
    "1/4, none"
  })
  void theNearestOtherBitOfTheShopIsTaken(String diameters, String expected) {
    assertThat(taken(report(Optional.empty(), bits(diameters, OtherBitTest::plain))))
        .isEqualTo(expected);
  }

  /** The guide's holes are 3/8 in: the bit of 3/8 in doesn't get in with its nose. */
  @ParameterizedTest
  @CsvSource({
    "CENTRING_GUIDE, 1/4 3/8 1/8, 1/8 in",
    "STEEL_STRAP, 1/4 5/16 1/8, 5/16 in",
    "CENTRING_GUIDE, 1/4 3/8, none"
  })
  void aNoseMustEnterTheGuide(Way way, String diameters, String expected) {
    assertThat(taken(report(Optional.of(way), bits(diameters, OtherBitTest::centring))))
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"1/4 5/16 3/8 7/16, 5/16 in", "1/4 7/16, none", "1/4 7/16 3/8, 3/8 in"})
  void aPlainBitMustGoThroughTheStrip(String diameters, String expected) {
    assertThat(
            taken(report(Optional.of(Way.HARDBOARD_STRIP), bits(diameters, OtherBitTest::plain))))
        .isEqualTo(expected);
  }

  /** The bushing of 3/8 in has a bore of 5/16 in. */
  @ParameterizedTest
  @CsvSource({"1/4 5/16 3/16, 3/16 in", "1/4 5/16, none"})
  void aRouterBitMustRunFreeInTheBushing(String diameters, String expected) {
    List<Tool> bushing =
        List.of(
            new Tool.Bushing("bushing", in("3/8"), in("5/16"), in("3/16"), Optional.empty()),
            new Tool.Bushing("wide bushing", in("5/8"), in("1/2"), in("3/16"), Optional.empty()));
    List<Tool> tools =
        Stream.of(bushing, bits(diameters, OtherBitTest::router)).flatMap(List::stream).toList();
    assertThat(taken(report(Optional.of(Way.ROUTER_GUIDE), tools))).isEqualTo(expected);
  }

  @Test
  void aMachineHasBitsOfItsOwn() {
    Tool other =
        new Tool.Machine(
            "another", in("96"), in("48"), List.of(in("9/32")), Optional.empty(), Optional.empty());
    Tool borer =
        new Tool.Machine(
            "borer",
            in("96"),
            in("48"),
            List.of(in("1/4"), in("3/8")),
            Optional.empty(),
            Optional.empty());
    assertThat(taken(report(Optional.of(Way.MACHINE), List.of(other, borer)))).isEqualTo("3/8 in");
  }

  /** 1/16 in too narrow: once more with the right one; no other bit: nothing to save. */
  @Test
  void whatIsNotThereSpoilsNothing() {
    MistakeReport narrow = report(Optional.empty(), bits("1/4 3/16", OtherBitTest::plain));
    assertThat(narrow.rescue()).isEqualTo(Rescue.BORE_AGAIN);
    MistakeReport none = report(Optional.empty(), bits("1/4", OtherBitTest::plain));
    assertThat(none.what())
        .isEqualTo("No other bit among the tools stated fits where this one of 1/4 in is.");
    assertThat(none.shows()).isEqualTo("It can only happen with a borrowed bit.");
    assertThat(none.rescue()).isEqualTo(Rescue.NOT_NEEDED);
    assertThat(none.how()).contains("Measure a borrowed bit");
  }

  /** 7 mm. */
  @Test
  void bitsOfAShopThatStatesNoneAreUnknown() {
    assertThat(report(Optional.empty(), List.of()).what())
        .isEqualTo("A bit of ≈ 0.276 in, which pins are sold for, is in, instead of 1/4 in.");
  }
}
