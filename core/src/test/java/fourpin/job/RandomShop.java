package fourpin.job;

import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/**
 * A shop drawn at random for a job: most tools are there, many of them fit the holes and the pitch
 * of the job, some are too small, too large, or yet to be bought. No tool contradicts itself.
 */
final class RandomShop {

  private static final int DEAREST = 200;

  private final Random random;
  private final Unit unit;
  private final Job job;
  private final List<Tool> tools = new ArrayList<>();

  private RandomShop(Random random, Unit unit, Job job) {
    this.random = random;
    this.unit = unit;
    this.job = job;
  }

  static Shop of(Random random, Unit unit, Job job) {
    return new RandomShop(random, unit, job).shop();
  }

  private Shop shop() {
    holes().distinct().toList().forEach(this::bits);
    handDrill();
    router();
    drillPress();
    strip(Tool.StripKind.HARDBOARD, length(3, 7));
    strip(Tool.StripKind.STEEL, length(1, 4));
    if (isThere()) {
      tools.add(new Tool.TableSaw("saw", length(2, 4), length(50, 90), toBuy()));
    }
    machine();
    stock("guide sheet", "MDF", length(5, 14));
    stock("guide board", "hard maple", length(10, 20));
    return new Shop("Random shop", tools);
  }

  private Stream<Length> holes() {
    return job.cases().stream()
        .flatMap(c -> c.bays().stream().map(b -> hole(b, c.settings())))
        .flatMap(Optional::stream);
  }

  private static Optional<Length> hole(Bay bay, Settings settings) {
    return bay.supports()
        .flatMap(
            s ->
                switch (s) {
                  case Support.Pins p ->
                      Optional.of(
                          p.diameter()
                              .plus(Length.nearestMm(settings.number(Setting.HOLE_ALLOWANCE))));
                  case Support.Sleeved p -> Optional.of(p.outside());
                  case Support.Cleats c -> Optional.of(c.bore());
                  case Support.Standards _ -> Optional.empty();
                });
  }

  /** What bores a hole of the job by hand, behind a nose, and under the router. */
  private void bits(Length hole) {
    String of = " " + (tools.size() + 1);
    Length nose = hole.plus(length(3, 6));
    if (isThere()) {
      tools.add(new Tool.PlainBit("bit" + of, hole, length(0, 4), length(40, 110), toBuy()));
    }
    if (isThere()) {
      Length tip = random.nextBoolean() ? nose : nose.minus(length(1, 2));
      tools.add(
          new Tool.CentringBit(
              "centring bit" + of,
              hole,
              nose,
              tip,
              random.nextBoolean() ? Optional.of(length(1, 12)) : Optional.empty(),
              length(0, 4),
              length(5, 40),
              toBuy()));
    }
    if (isThere()) {
      tools.add(new Tool.RouterBit("router bit" + of, hole, length(10, 60), toBuy()));
    }
    if (isThere()) {
      Length bore = hole.plus(length(-1, 3));
      tools.add(
          new Tool.Bushing("bushing" + of, bore.plus(length(1, 4)), bore, length(4, 14), toBuy()));
    }
  }

  private void handDrill() {
    if (isThere()) {
      tools.add(new Tool.HandDrill("hand drill", length(180, 340), toBuy()));
    }
  }

  private void router() {
    if (isThere()) {
      tools.add(
          new Tool.Router("router", length(20, 75), length(120, 180), length(220, 320), toBuy()));
    }
  }

  private void drillPress() {
    if (isThere()) {
      tools.add(
          new Tool.DrillPress(
              "drill press",
              length(100, 450),
              length(200, 700),
              length(50, 110),
              length(250, 1000),
              toBuy()));
    }
  }

  /** Half of the strips have the job's pitch or a whole part of it. */
  private void strip(Tool.StripKind kind, Length thickness) {
    Length hole = strippable();
    Length width = hole.plus(length(20, 80));
    int spaces = 6 + random.nextInt(30);
    Length pitch = random.nextBoolean() ? partOfPitch() : length(16, 40);
    Length clear = Length.max(pitch, hole.plus(length(2, 4)));
    if (isThere()) {
      tools.add(
          new Tool.PerforatedStrip(
              kind == Tool.StripKind.STEEL ? "strap" : "strip",
              kind,
              hole,
              clear.times(spaces),
              spaces,
              length(6, 30),
              width.over(2),
              thickness,
              clear.times(spaces).plus(length(60, 900)),
              width,
              toBuy()));
    }
  }

  /** What a bit or a nose of the shop runs in, or anything. */
  private Length strippable() {
    List<Length> run =
        tools.stream()
            .flatMap(
                t ->
                    switch (t) {
                      case Tool.PlainBit bit -> Stream.of(bit.diameter());
                      case Tool.CentringBit bit -> Stream.of(bit.nose());
                      default -> Stream.<Length>empty();
                    })
            .toList();
    return run.isEmpty() || random.nextInt(4) == 0
        ? length(4, 10)
        : run.get(random.nextInt(run.size()));
  }

  private Length partOfPitch() {
    List<CaseOrder> cases = job.cases();
    return cases.getFirst().settings().length(Setting.PITCH).over(1 + random.nextInt(3));
  }

  private void machine() {
    if (random.nextInt(4) == 0) {
      List<Length> diameters = holes().distinct().toList();
      tools.add(
          new Tool.Machine(
              "machine",
              length(900, 3000),
              length(400, 1300),
              diameters.isEmpty() ? List.of(length(4, 8)) : diameters,
              random.nextBoolean() ? Optional.of(partOfPitch()) : Optional.empty(),
              toBuy()));
    }
  }

  private void stock(String name, String material, Length thickness) {
    if (isThere()) {
      tools.add(
          new Tool.GuideStock(
              name, material, thickness, length(400, 2440), length(60, 600), toBuy()));
    }
  }

  private boolean isThere() {
    return random.nextInt(5) > 0;
  }

  private Optional<BigDecimal> toBuy() {
    return random.nextInt(6) == 0
        ? Optional.of(BigDecimal.valueOf(1 + random.nextInt(DEAREST)))
        : Optional.empty();
  }

  /** Between two whole numbers of mm, in 64ths of an inch or tenths of a millimetre. */
  private Length length(int least, int most) {
    return RandomJobs.length(random, unit, least, most);
  }
}
