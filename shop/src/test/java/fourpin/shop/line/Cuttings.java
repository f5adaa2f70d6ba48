package fourpin.shop.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import picocli.CommandLine;

/** Runs the command cut as a maker does, and counts what comes of it. */
final class Cuttings {

  private Cuttings() {}

  static String run(Object... args) {
    StringWriter told = new StringWriter();
    PrintWriter out = new PrintWriter(told);
    CommandLine line = new CommandLine(new CutCommand()).setOut(out).setErr(out);
    int code = line.execute(Stream.of(args).map(Object::toString).toArray(String[]::new));
    return code + "\n" + told;
  }

  static long parts(Path folder, String mark) throws IOException {
    return Files.readAllLines(folder.resolve("layouts.csv")).stream()
        .map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"))
        .filter(cells -> cells[6].equals(mark))
        .mapToLong(cells -> Long.parseLong(cells[3]))
        .sum();
  }
}
