package fourpin.sheets.pages;

import fourpin.sheets.paint.Fractions;
import fourpin.sheets.paint.Ink;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Typeface;
import java.util.ArrayList;
import java.util.List;

/**
 * Breaks prose into lines of a width. It breaks at spaces; a word wider than the line is broken
 * where it must be, so that nothing is lost.
 */
final class Wrap {

  /** A size and the two cuts that prose is set in. */
  record Type(Typeface plain, Typeface bold, double size, double leading) {

    Typeface face(Prose.Stress stress) {
      return stress == Prose.Stress.BOLD ? bold : plain;
    }

    double lineHeight() {
      return size * leading;
    }

    Type led(double newLeading) {
      return new Type(plain, bold, size, newLeading);
    }

    Type sized(double newSize) {
      return new Type(plain, bold, newSize, leading);
    }
  }

  /** A stretch of a line set alike, with the space after it if any. */
  private record Word(String text, Typeface face) {}

  /** One line: its words in order. */
  record Line(List<Lettering> letterings, double width) {

    /**
     * Its marks, with the baseline so far below y = 0 that the letters stand in the middle of the
     * line's height.
     */
    List<Mark> marks(double x, Type type, double down) {
      List<Mark> marks = new ArrayList<>();
      double at = x;
      for (Lettering lettering : letterings) {
        marks.add(lettering.at(new Point(at, -down - baseline(type))));
        at += lettering.width();
      }
      return marks;
    }

    static double baseline(Type type) {
      return type.lineHeight() / 2 + type.size() * 0.35;
    }
  }

  private final Type type;
  private final double width;
  private final List<Line> lines = new ArrayList<>();
  private final List<Word> current = new ArrayList<>();
  private double filled;

  private Wrap(Type type, double width) {
    this.type = type;
    this.width = width;
  }

  static List<Line> lines(Prose prose, Type type, double width) {
    Wrap wrap = new Wrap(type, width);
    words(prose, type).forEach(wrap::add);
    wrap.endLine();
    return List.copyOf(wrap.lines);
  }

  /** The width that the prose runs on one line. */
  static double natural(Prose prose, Type type) {
    return words(prose, type).stream().mapToDouble(w -> w.face.width(w.text, type.size())).sum();
  }

  /** The width of its widest word. */
  static double widestWord(Prose prose, Type type) {
    return words(prose, type).stream()
        .mapToDouble(w -> w.face.width(w.text.stripTrailing(), type.size()))
        .max()
        .orElse(0);
  }

  private static List<Word> words(Prose prose, Type type) {
    List<Word> words = new ArrayList<>();
    for (Prose.Run run : prose.runs()) {
      Typeface face = type.face(run.stress());
      for (String piece : Fractions.set(run.text()).split("(?<=[ \\n])")) {
        words.add(new Word(face.shown(piece.replace('\n', ' ')), face));
      }
    }
    return words;
  }

  private void add(Word word) {
    String bare = word.text.stripTrailing();
    if (filled + width(bare, word.face) > width && filled > 0) {
      endLine();
    }
    if (width(bare, word.face) > width) {
      addInParts(word);
    } else {
      current.add(word);
      filled += width(word.text, word.face);
    }
  }

  private void addInParts(Word word) {
    int fitting = 1;
    while (fitting < word.text.length()
        && width(word.text.substring(0, fitting + 1), word.face) <= width) {
      fitting++;
    }
    current.add(new Word(word.text.substring(0, fitting), word.face));
    filled = width;
    if (fitting < word.text.length()) {
      add(new Word(word.text.substring(fitting), word.face));
    }
  }

  private double width(String text, Typeface face) {
    return face.width(text, type.size());
  }

  private void endLine() {
    List<Lettering> letterings = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < current.size(); i++) {
      text.append(current.get(i).text);
      if (i + 1 == current.size() || current.get(i + 1).face != current.get(i).face) {
        letterings.add(lettering(text.toString(), current.get(i).face));
        text.setLength(0);
      }
    }
    lines.add(new Line(List.copyOf(letterings), visibleWidth(letterings)));
    current.clear();
    filled = 0;
  }

  private Lettering lettering(String text, Typeface face) {
    return Lettering.of(text, face, type.size()).in(Ink.BLACK);
  }

  private static double visibleWidth(List<Lettering> letterings) {
    double sum = letterings.stream().mapToDouble(Lettering::width).sum();
    if (letterings.isEmpty()) {
      return sum;
    }
    Lettering last = letterings.getLast();
    return sum - last.width() + last.face().width(last.words().stripTrailing(), last.size());
  }
}
