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
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Shop;
import fourpin.job.Support;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.measure.Unit;
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
    return report
        .what()
        .replaceAll("The shop's bit of (.*) is in, instead of 1/4 in\\.", "$1")
        .replaceAll("A (borrowed) bit of (.*) is in, instead of 1/4 in: the shop .*", "$1 $2");
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
    "1/4 +9/32, borrowed 7 mm",
    "1/4 1/8, 1/8 in",
    "1/4 1/2, 1/2 in",
    "1/4 7/64 9/16, borrowed 7 mm",
    "1/4, borrowed 7 mm"
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
    "CENTRING_GUIDE, 1/4 3/8, borrowed 7 mm"
  })
  void aNoseMustEnterTheGuide(Way way, String diameters, String expected) {
    assertThat(taken(report(Optional.of(way), bits(diameters, OtherBitTest::centring))))
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"1/4 5/16 3/8 7/16, 5/16 in", "1/4 7/16, borrowed 7 mm", "1/4 7/16 3/8, 3/8 in"})
  void aPlainBitMustGoThroughTheStrip(String diameters, String expected) {
    assertThat(
            taken(report(Optional.of(Way.HARDBOARD_STRIP), bits(diameters, OtherBitTest::plain))))
        .isEqualTo(expected);
  }

  /** The bushing of 3/8 in has a bore of 5/16 in. */
  @ParameterizedTest
  @CsvSource({"1/4 5/16 3/16, 3/16 in", "1/4 5/16, borrowed 7 mm"})
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

  /** 1/16 in too narrow: once more with the right one. */
  @Test
  void aNarrowBitSpoilsNothing() {
    MistakeReport narrow = report(Optional.empty(), bits("1/4 3/16", OtherBitTest::plain));
    assertThat(narrow.rescue()).isEqualTo(Rescue.BORE_AGAIN);
  }

  /**
   * 7 mm is the next size of pins over 1/4 in, 0.026 in wider; no wider sleeve for pins of 1/4 in
   * is sold than 9/32 in, which takes it in.
   */
  @Test
  void aShopWithoutAnotherBitMayBorrowOne() {
    MistakeReport borrowed = report(Optional.empty(), bits("1/4", OtherBitTest::plain));
    assertThat(borrowed.what())
        .isEqualTo(
            "A borrowed bit of 7 mm is in, instead of 1/4 in: the shop file states no other bit near"
                + " 1/4 in.");
    assertThat(borrowed.outcome()).isInstanceOf(MistakeReport.Outcome.Spoilt.class);
    assertThat(borrowed.shows()).startsWith("136 of 136 holes are wrong.");
    assertThat(borrowed.test())
        .startsWith("Across the lowest hole: ")
        .endsWith("does not wobble. Measure a borrowed bit before it goes in.");
    assertThat(borrowed.rescue()).isEqualTo(Rescue.SLEEVE);
    assertThat(borrowed.how()).contains("9/32 in for 1/4 in pins");
  }

  /** What is refused of the shop's own is told. */
  @Test
  void aBorrowedBitIsToldBesideThoseThatDoNotFit() {
    MistakeReport report =
        report(Optional.of(Way.HARDBOARD_STRIP), bits("1/4 7/16", OtherBitTest::plain));
    assertThat(report.what())
        .endsWith(
            "the shop file states no other bit near 1/4 in that fits: 7/16 (7/16 in) does not"
                + " go into the guide's holes (3/8 in).");
  }

  /**
   * Sizes of pins are 3, 3/16 in (4.76), 5, 1/4 in (6.35) and 7 mm; wider bits go by 1/8 in (3.175
   * mm) or 2 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "INCH, 3, 99, 4.7625",
    "INCH, 4.7625, 99, 5",
    "INCH, 4.7625, 4.9, 3",
    "INCH, 7, 99, 6.35",
    "INCH, 8, 99, 9.525",
    "INCH, 25.4, 99, 28.575",
    "INCH, 9.525, 10, 7",
    "MILLIMETRE, 8, 99, 10",
    "MILLIMETRE, 25, 99, 26",
    "MILLIMETRE, 26, 99, 28",
    "MILLIMETRE, 3, 3, none"
  })
  void theNextSizeThatIsSoldAndGoesInIsBorrowed(Unit unit, double mm, double most, String next) {
    Length right = Length.nearestMm(mm);
    assertThat(
            new SoldSizes(Settings.standard(unit))
                .bitBeside(right, b -> !b.isMoreThan(Length.nearestMm(most)))
                .map(Length::mm))
        .isEqualTo(next.equals("none") ? Optional.empty() : Optional.of(Double.valueOf(next)));
  }

  /** 7 mm. */
  @Test
  void bitsOfAShopThatStatesNoneAreUnknown() {
    assertThat(report(Optional.empty(), List.of()).what())
        .isEqualTo("A bit of 7 mm, the next size that is sold, is in, instead of 1/4 in.");
  }

  /** With a nose of 3/8 in, whatever it bores. */
  private static Tool nosed(String name, Length diameter, Optional<BigDecimal> toBuy) {
    Length point = in("1/16");
    return new Tool.CentringBit(
        name, diameter, in("3/8"), in("5/16"), Optional.empty(), point, in("1"), toBuy);
  }

  /** What else a shop needs that bores through a guide, and two bits that fit the same. */
  private static List<Tool> shop(Way way, String diameters) {
    Optional<BigDecimal> here = Optional.empty();
    List<Tool> tools = new ArrayList<>();
    tools.add(new Tool.HandDrill("drill", in("9 1/2"), here));
    tools.add(new Tool.GuideStock("sheet", "MDF", in("1/4"), in("96"), in("8"), here));
    tools.add(new Tool.Router("router", in("2"), in("6"), in("10"), here));
    tools.add(new Tool.Bushing("bushing", in("3/8"), in("5/16"), in("3/16"), here));
    tools.add(
        new Tool.PerforatedStrip(
            "strip",
            Tool.StripKind.HARDBOARD,
            in("9/32"),
            in("24"),
            24,
            in("1/2"),
            in("3/4"),
            in("1/4"),
            in("96"),
            in("1 1/2"),
            here));
    tools.addAll(
        bits(
            diameters,
            switch (way) {
              case CENTRING_GUIDE -> OtherBitTest::nosed;
              case ROUTER_GUIDE -> OtherBitTest::router;
              default -> OtherBitTest::plain;
            }));
    return tools;
  }

  private static MistakeReport planned(Way way, String pin, String diameters) {
    CaseDraft draft = new CaseDraft();
    Length stem = in(pin);
    draft.bays = List.of(bay(2).with(new Support.Pins(stem, in("3/8"), in("3/8"), stem.over(2))));
    draft.settings =
        draft
            .settings
            .with(Setting.WAY, new SettingValue.OfChoice(way.key()))
            .with(Setting.STRIP_PLAY, new SettingValue.OfLength(in("1/8")));
    Plan plan = Planner.plan(job(draft.order()).with(new Shop("shop", shop(way, diameters))));
    assertThat(plan.borings().getFirst().chosen()).isEqualTo(way);
    return plan.mistakes().stream()
        .filter(r -> r.mistake() == Mistake.OTHER_BIT)
        .findFirst()
        .orElseThrow();
  }

  /**
   * The whole of it: the shop owns two bits for one nose, bushing or strip, and the virtual bench
   * bores with the wrong one: 68 levels in two rows. 5 mm is 0.19685 in, 0.05315 less than 1/4.
   * Sleeves of 9/32 in (for 1/4 in pins) and 7 mm (for 5 mm pins) are sold.
   */
  @ParameterizedTest
  @CsvSource({
    "CENTRING_GUIDE, 1/4, 1/4 7/32, 1/32 in too narrow, BORE_AGAIN, 'right bit, 1/4 in.'",
    "CENTRING_GUIDE, 1/4, 1/4 5mm, ≈ 0.053 in too narrow, BORE_AGAIN, 'right bit, 1/4 in.'",
    "CENTRING_GUIDE, 1/4, 1/4 9/32, 1/32 in too wide, SLEEVE, out to 9/32 in and press in sleeves",
    "CENTRING_GUIDE, 5mm, 5mm 1/4, ≈ 0.053 in too wide, SLEEVE, 7 mm for 5 mm pins",
    "ROUTER_GUIDE, 1/4, 1/4 3/16, 1/16 in too narrow, BORE_AGAIN, 'right bit, 1/4 in.'",
    "HARDBOARD_STRIP, 1/4, 1/4 7/32, 1/32 in too narrow, BORE_AGAIN, 'right bit, 1/4 in.'",
    "HARDBOARD_STRIP, 1/4, 1/4 9/32, 1/32 in too wide, SLEEVE, out to 9/32 in and press in sleeves",
  })
  void theOtherBitOfTheSameNoseIsSeenOnTheVirtualBench(
      Way way, String pin, String diameters, String seen, Rescue rescue, String how) {
    MistakeReport report = planned(way, pin, diameters);
    assertThat(report.what()).startsWith("The shop's bit of ");
    assertThat(report.shows())
        .startsWith("136 of 136 holes are wrong. At every shelf alike")
        .endsWith("its left holes are " + seen + ".");
    assertThat(report.test()).startsWith("Across the lowest hole: ");
    assertThat(report.rescue()).isEqualTo(rescue);
    assertThat(report.how()).contains(how);
  }
}
