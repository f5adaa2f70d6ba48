package fourpin.shop.file;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.measure.Length;
import fourpin.measure.Source;
import fourpin.shop.file.BadInputs.BadInput;
import fourpin.shop.yaml.Problem;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShopReaderTest {

  private static final Length QUARTER = Length.inches(1, 4);

  static List<BadInput> badShops() {
    return BadInputs.shops();
  }

  @ParameterizedTest
  @MethodSource("badShops")
  void refusesWithThePlaceTheRuleAndARemedy(BadInput input) {
    assertThat(messages(input.text())).isEqualTo(input.messages());
  }

  /** Each of its tools is of another kind; lengths take the shop file's unit. */
  @Test
  void readsEveryKindOfTool() {
    Shop shop = good(BadInputs.plainShop()).shop();

    assertThat(shop.name()).isEqualTo("Plain shop");
    assertThat(shop.tools()).hasSize(12);
    assertThat(shop.tools().stream().map(Object::getClass).distinct().count())
        .as("both strips are of one class")
        .isEqualTo(Tool.class.getPermittedSubclasses().length);
    assertThat(shop.tools())
        .contains(
            new Tool.HandDrill("drill", Length.inches(10), Optional.empty()),
            new Tool.PlainBit(
                "bit", QUARTER, Length.inches(1, 16), Length.inches(3), Optional.empty()),
            new Tool.CentringBit(
                "nosed",
                QUARTER,
                Length.inches(3, 8),
                Length.inches(5, 16),
                Optional.empty(),
                Length.inches(1, 16),
                Length.inches(3, 4),
                Optional.empty()),
            new Tool.DrillPress(
                "press",
                Length.inches(7),
                Length.inches(14),
                Length.inches(3),
                Length.inches(12),
                Optional.empty()),
            new Tool.Router(
                "router", Length.inches(2), Length.inches(6), Length.inches(10), Optional.empty()),
            new Tool.Bushing(
                "ring",
                Length.inches(3, 8),
                Length.inches(19, 64),
                Length.inches(3, 16),
                Optional.empty()),
            new Tool.RouterBit("spiral", QUARTER, Length.inches(1), Optional.empty()),
            new Tool.PerforatedStrip(
                "strap",
                Tool.StripKind.STEEL,
                Length.inches(5, 16),
                Length.inches(18),
                24,
                Length.inches(3, 8),
                Length.inches(5, 8),
                Length.inches(1, 16),
                Length.inches(36),
                Length.inches(5, 4),
                Optional.empty()),
            new Tool.GuideStock(
                "mdf", "MDF", QUARTER, Length.inches(48), Length.inches(24), Optional.empty()),
            new Tool.TableSaw("saw", Length.inches(1, 8), Length.inches(3), Optional.empty()),
            new Tool.Machine(
                "borer",
                Length.inches(120),
                Length.inches(48),
                List.of(QUARTER, Length.mm(5)),
                Optional.of(Length.mm(32)),
                Optional.of(new BigDecimal("4800"))));
  }

  @Test
  void takesABareNumberInTheUnitOfTheShopFile() {
    Shop shop =
        good("shop: Metric\nunit: mm\ntools: {drill: {kind: hand-drill, length: 250}}\n").shop();

    assertThat(shop.tools())
        .containsExactly(new Tool.HandDrill("drill", Length.mm(250), Optional.empty()));
  }

  @Test
  void takesANoseWithoutATipForAStraightOne() {
    Shop shop = good(BadInputs.plainShop().replace("    tip: 5/16\n", "")).shop();

    assertThat(shop.all(Tool.CentringBit.class))
        .extracting(Tool.CentringBit::tip)
        .containsExactly(Length.inches(3, 8));
  }

  @Test
  void readsTheLengthOfANose() {
    Shop shop =
        good(BadInputs.plainShop().replace("    tip: 5/16\n", "    nose-length: 3/16\n")).shop();

    assertThat(shop.all(Tool.CentringBit.class))
        .extracting(Tool.CentringBit::noseLength)
        .containsExactly(Optional.of(Length.inches(3, 16)));
  }

  @Test
  void takesAShopWithoutTools() {
    assertThat(good("shop: Bare\nunit: mm\n").shop()).isEqualTo(new Shop("Bare", List.of()));
  }

  @Test
  void readsTheExample() throws IOException {
    Shop shop = good(Files.readString(Documents.shopExample())).shop();

    assertThat(shop.tools()).hasSizeGreaterThan(10);
  }

  /** The shop's settings hold under the job's, and those under the case's. */
  @Test
  void laysTheJobsSettingsOverTheShops() {
    String shop = "shop: Set\nunit: mm\nsettings: {pitch: 25, hole-depth: 11, end-play: 4}\n";
    String text =
        BadInputs.plain().replace("    bays: 1\n", "    bays: 1\n    settings: {end-play: 1/16}\n")
            + "settings: {hole-depth: 1/2}\n";

    Job job = JobReaderTest.good(text, given(shop));

    assertThat(job.settings().length(Setting.PITCH)).isEqualTo(Length.mm(25));
    assertThat(job.settings().length(Setting.HOLE_DEPTH)).isEqualTo(Length.inches(1, 2));
    assertThat(job.settings().length(Setting.END_PLAY)).isEqualTo(Length.mm(4));
    assertThat(job.cases().getFirst().settings().length(Setting.PITCH)).isEqualTo(Length.mm(25));
    assertThat(job.settings().source(Setting.PITCH)).isEqualTo(Source.SHOP_FILE);
    assertThat(job.settings().source(Setting.HOLE_DEPTH)).isEqualTo(Source.STATED);
    assertThat(job.settings().source(Setting.BIT_POINT)).isEqualTo(Setting.BIT_POINT.origin());
    assertThat(job.cases().getFirst().settings().source(Setting.PITCH)).isEqualTo(Source.SHOP_FILE);
    assertThat(job.cases().getFirst().settings().source(Setting.END_PLAY)).isEqualTo(Source.STATED);
    assertThat(job.cases().getFirst().settings().length(Setting.END_PLAY))
        .isEqualTo(Length.inches(1, 16));
  }

  @Test
  void makesAJobInNoShopWhereThereIsNoShopFile() {
    assertThat(JobReaderTest.good(BadInputs.plain()).shop()).isEqualTo(Shop.NONE);
  }

  /** A shop file that is handed in, whatever a job calls it. */
  static ShopFiles given(String shop) {
    Opened file = new Opened.Bytes("shop.yaml", shop.getBytes(StandardCharsets.UTF_8));
    return new ShopFiles() {
      @Override
      public Optional<Opened> standard() {
        return Optional.of(file);
      }

      @Override
      public Opened named(String name) {
        return file;
      }
    };
  }

  static ShopForm.Stated good(String text) {
    FileReader.Read<ShopForm.Stated> read = ShopReader.read(text.getBytes(StandardCharsets.UTF_8));
    return read.value().orElseThrow(() -> new AssertionError(read.problems().toString()));
  }

  private static String messages(String text) {
    return ShopReader.read(text.getBytes(StandardCharsets.UTF_8)).problems().stream()
        .sorted(Comparator.comparing(Problem::place))
        .map(p -> p.text("shop.yaml"))
        .collect(Collectors.joining("\n"));
  }
}
