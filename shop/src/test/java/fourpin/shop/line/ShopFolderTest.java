package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Job;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.shop.yaml.TreeReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which shop a job is made in, and what is said of shop files that cannot be taken. */
class ShopFolderTest {

  private static final String JOB =
      """
      title: Box
      unit: inch
      materials: {ply: {kind: sheet, of: "plywood, veneer core", thickness: 3/4}}
      cases: {box: {outside: {width: 30, height: 30, depth: 10}, material: ply}}
      """;
  private static final String SHOP =
      "shop: The bench\nunit: inch\ntools: {drill: {kind: hand-drill, length: 9}}\n";

  @TempDir private Path folder;
  private Path job;

  @BeforeEach
  void findJob() {
    job = folder.resolve("box.yaml");
  }

  @Test
  void takesNoShopWhereThereIsNoFile() throws IOException {
    assertThat(shop(JOB)).isEqualTo(Shop.NONE);
  }

  @Test
  void takesTheFileBesideTheJob() throws IOException {
    Files.writeString(folder.resolve("shop.yaml"), SHOP);

    assertThat(shop(JOB).name()).isEqualTo("The bench");
    assertThat(shop(JOB).tools()).hasOnlyElementsOfType(Tool.HandDrill.class);
  }

  @Test
  void takesTheFileThatTheJobNamesInPlaceOfTheOneBeside() throws IOException {
    Files.writeString(folder.resolve("shop.yaml"), "not: a shop\n");
    Files.createDirectory(folder.resolve("shops"));
    Files.writeString(folder.resolve("shops/other.yaml"), SHOP.replace("bench", "barn"));

    assertThat(shop(JOB + "shop: shops/other.yaml\n").name()).isEqualTo("The barn");
  }

  @Test
  void saysWhereTheJobNamesAFileThatIsNotThere() throws IOException {
    Files.writeString(folder.resolve("shop.yaml"), "not: read\n");

    assertThat(messages(JOB + "shop: shpo.yaml\n"))
        .containsExactly(
            job
                + ":5:7: error: shop 'shpo.yaml': there is no such file."
                + " Name it as seen from the job file's folder.");
  }

  @Test
  void saysWhereTheJobNamesAFolder() throws IOException {
    Files.createDirectory(folder.resolve("shops"));

    assertThat(messages(JOB + "shop: shops\n"))
        .containsExactly(
            job + ":5:7: error: shop 'shops': it is not a file. Name the shop file itself.");
  }

  @Test
  void takesNoFolderForTheFileBeside() throws IOException {
    Path shop = Files.createDirectory(folder.resolve("shop.yaml"));

    assertThat(messages(JOB))
        .containsExactly(
            shop
                + ":1:1: error: the file: it is not a file."
                + " Keep this name for a shop file beside jobs.");
  }

  @Test
  void doesNotTakeALinkThatLeadsNowhereForNoShop() throws IOException {
    Path shop = folder.resolve("shop.yaml");
    Files.createSymbolicLink(shop, folder.resolve("gone.yaml"));

    assertThat(messages(JOB))
        .containsExactly(
            shop + ":1:1: error: the file: there is no such file. Mend the link, or delete it.");
  }

  @Test
  void refusesMoreThanAMebibyte() throws IOException {
    Path shop =
        Files.writeString(folder.resolve("shop.yaml"), "#".repeat(TreeReader.MOST_BYTES + 1));

    assertThat(messages(JOB))
        .containsExactly(
            shop
                + ":1:1: error: the file: it is larger than 1 MiB."
                + " State one shop, and of its tools those that bore and groove.");
  }

  @Test
  void saysWhereAShopFileCannotBeRead() throws IOException {
    Path shop = Files.writeString(folder.resolve("shop.yaml"), "shop: [a\nunit: inch\n");

    assertThat(messages(JOB))
        .singleElement()
        .asString()
        .startsWith(shop + ":2:5: error: the file: a bracket is opened and not closed");
  }

  /** First those of the job, then those of the shop, each with its own file and place. */
  @Test
  void tellsAllFaultsOfBothFilesAtOnce() throws IOException {
    Path shop =
        Files.writeString(
            folder.resolve("shop.yaml"),
            SHOP.replace("unit: inch", "unit: feet").replace("hand-drill", "hand"));

    assertThat(messages(JOB.replace("3/4", "thick")))
        .satisfiesExactly(
            m -> assertThat(m).startsWith(job + ":3:71: error: materials.ply.thickness 'thick': "),
            m -> assertThat(m).startsWith(shop + ":2:7: error: unit 'feet': "),
            m -> assertThat(m).startsWith(shop + ":3:23: error: tools.drill.kind 'hand': "));
  }

  private Shop shop(String text) throws IOException {
    return switch (read(text)) {
      case JobSource.Outcome.Good(Job good) -> good.shop();
      case JobSource.Outcome.Refused(var messages) -> throw new AssertionError(messages);
    };
  }

  private List<String> messages(String text) throws IOException {
    return switch (read(text)) {
      case JobSource.Outcome.Good good -> throw new AssertionError(good);
      case JobSource.Outcome.Refused(var messages) -> messages;
    };
  }

  private JobSource.Outcome read(String text) throws IOException {
    Files.writeString(job, text);
    return new JobSource(job).read();
  }
}
