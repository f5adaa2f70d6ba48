package fourpin.shop.file;

import fourpin.shop.yaml.FileKind;
import fourpin.shop.yaml.Place;
import fourpin.shop.yaml.Problem;
import fourpin.shop.yaml.Tree;
import fourpin.shop.yaml.TreeReader;
import fourpin.shop.yaml.Yaml;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Reads a shop file. Never throws for what the file holds. */
public final class ShopReader {

  private static final FileReader<ShopForm.Stated> READER =
      new FileReader<>(FileKind.SHOP, ShopForm.FORM, (_, unit) -> Context.of(unit));

  private ShopReader() {}

  /** What is wrong with a shop file, in file order; nothing if it can be read. */
  public static List<Problem> problems(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8)).problems().stream()
        .sorted(Comparator.comparing(Problem::place))
        .toList();
  }

  static FileReader.Read<ShopForm.Stated> read(Opened opened) {
    return switch (opened) {
      case Opened.Bytes file -> read(file.bytes());
      case Opened.Refused(_, String rule, String remedy) ->
          new FileReader.Read<>(
              Optional.empty(), List.of(new Problem(Place.START, "the file", rule, remedy)));
    };
  }

  /** Told once, not by each key that a shop does not have. */
  private static boolean isJob(Yaml.Entries root) {
    return root.entry("cases").isPresent();
  }

  private static FileReader.Read<ShopForm.Stated> job() {
    return new FileReader.Read<>(
        Optional.empty(),
        List.of(
            new Problem(
                Place.START,
                "the file",
                "it states cases, so it is a job file and no shop file",
                "name the shop file under shop, or put shop.yaml beside the job")));
  }

  static FileReader.Read<ShopForm.Stated> read(byte[] bytes) {
    Tree tree = TreeReader.read(bytes, FileKind.SHOP);
    return tree.root()
        .map(root -> isJob(root) ? job() : READER.read(root, tree.problems()))
        .orElseGet(() -> new FileReader.Read<>(Optional.empty(), tree.problems()));
  }
}
