package fourpin.shop.line;

import static fourpin.shop.line.Cuttings.parts;
import static fourpin.shop.line.Cuttings.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Few parts that are cut, with notes, and what is then cut again. */
record NotedCutting(Path shop) {

  static final String FEW =
      """
      part,material,length,width,count
      side,ply,70 in,11 in,8
      shelf,ply,30 in,11 in,10
      """;

  /** Lays a few parts out: two sheets of four sides each, and one of ten shelves. */
  Path laidOut() throws IOException {
    Files.writeString(shop.resolve("parts.csv"), FEW);
    Files.writeString(shop.resolve("rack.csv"), "material,length,width\nply,8 ft,4 ft\n");
    Path first = shop.resolve("first");
    assertThat(run(shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", first))
        .startsWith("0");
    assertThat(parts(first, "1 side")).isEqualTo(8);
    assertThat(parts(first, "2 shelf")).isEqualTo(10);
    return first;
  }

  static void note(Path folder, String... notes) throws IOException {
    Path file = folder.resolve("progress.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    for (int sheet = 1; sheet <= notes.length; sheet++) {
      lines.set(sheet, lines.get(sheet).replaceFirst(",,$", "," + notes[sheet - 1]));
    }
    Files.write(file, lines);
  }

  String again(Path first, Path second) {
    return run(
        shop.resolve("parts.csv"), shop.resolve("rack.csv"), "--out", second, "--after", first);
  }

  /** After two earlier ones, into a folder of its own. */
  String third(Path one, Path other) {
    return run(
        shop.resolve("parts.csv"),
        shop.resolve("rack.csv"),
        "--after",
        one,
        "--after",
        other,
        "--out",
        shop.resolve("third"));
  }
}
