package fourpin.shop.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML 1.2 into a tree. Never throws for what the bytes hold; work and memory are bounded by
 * the size of the input, which is bounded too.
 */
public final class TreeReader {

  /** A hundred cases take about a tenth of it. */
  public static final int MOST_BYTES = 1 << 20;

  private static final String FILE = "the file";
  private static final LoadSettings SETTINGS =
      LoadSettings.builder().setCodePointLimit(2 * MOST_BYTES).build();

  private TreeReader() {}

  public static Tree read(byte[] bytes, FileKind file) {
    if (bytes.length > MOST_BYTES) {
      return Tree.refused(Place.START, FILE, "it is larger than 1 MiB", file.tooLarge());
    }
    CharBuffer chars = CharBuffer.allocate(bytes.length);
    CharsetDecoder decoder =
        StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT);
    CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), chars, true);
    String text = chars.flip().toString();
    return result.isError() ? notUtf8(text) : read(text, file);
  }

  private static Tree notUtf8(String good) {
    return Tree.refused(
        Place.after(good, good.length()),
        FILE,
        "it is not UTF-8 text from here on",
        "save it as UTF-8 in the editor");
  }

  private static Tree read(String text, FileKind file) {
    String unmarked = text.startsWith("\uFEFF") ? text.substring(1) : text;
    TreeBuilder builder =
        new TreeBuilder(new Parse(SETTINGS).parseString(unmarked).iterator(), file);
    try {
      return builder.tree();
    } catch (TreeBuilder.Stop stop) {
      return new Tree(Optional.empty(), stop.problems());
    } catch (MarkedYamlEngineException e) {
      return Tree.refused(Syntax.place(e), FILE, Syntax.rule(e), Syntax.remedy(e));
    } catch (ReaderException e) {
      return unprintable(unmarked, e);
    } catch (YamlEngineException e) {
      return Tree.refused(builder.reached(), FILE, Syntax.UNREADABLE, Syntax.CHECK);
    }
  }

  private static Tree unprintable(String text, ReaderException e) {
    int at =
        text.offsetByCodePoints(
            0, Math.min(e.getPosition(), text.codePointCount(0, text.length())));
    return Tree.refused(
        Place.after(text, at),
        FILE,
        "the character "
            + Problem.quoted(Character.toString(e.getCodePoint()))
            + " has no place in a text file",
        "delete it");
  }
}
