package fourpin.sheets.pages;

import fourpin.sheets.paint.Drawing;
import java.util.List;
import java.util.stream.Stream;

/** A piece of what is to be read. */
public sealed interface Block
    permits Block.Heading,
        Block.Paragraph,
        Block.Bullets,
        Block.Steps,
        Block.Callout,
        Block.SetUp,
        Block.Figure,
        Block.Together,
        Block.Beside,
        Block.Columns,
        Block.NewPage,
        Block.Contents,
        Table {

  /** A heading below that of the section; it gets a bookmark and is never the last on a page. */
  record Heading(String text) implements Block {}

  record Paragraph(Prose prose) implements Block {
    public static Paragraph of(String text) {
      return new Paragraph(Prose.plain(text));
    }
  }

  record Bullets(List<Prose> items) implements Block {
    public Bullets {
      items = List.copyOf(items);
    }
  }

  /** Numbered steps with a box to tick. */
  record Steps(List<Step> steps) implements Block {
    public Steps {
      steps = List.copyOf(steps);
    }
  }

  /** One step: its number, what to do, and what belongs to it (cautions, figures). */
  record Step(String number, Prose prose, List<Block> more) {
    public Step {
      more = List.copyOf(more);
    }
  }

  /** What must not be overlooked, in a frame with a sign of its own shape. */
  record Callout(Sign sign, String title, List<Prose> text) implements Block {
    public Callout {
      text = List.copyOf(text);
    }
  }

  /** What a tool is set to, in a frame and large enough to be read from the bench. */
  record SetUp(List<Line> lines) implements Block {

    /** One setting: what is set, and to what. */
    public record Line(String what, String to) {}

    public SetUp {
      lines = List.copyOf(lines);
    }
  }

  /** Signs that differ in shape, so that none needs colour. */
  enum Sign {
    /** A triangle with an exclamation mark: someone may be hurt. */
    CAUTION,
    /** A ring with a cross: the plan cannot stand as it is. */
    ERROR,
    /** A square with an exclamation mark: may spoil the work. */
    WARNING,
    /** A ring with an i. */
    NOTE
  }

  record Figure(Drawing drawing, String caption) implements Block {}

  /** Blocks that stay on one page if they find room on one. */
  record Together(List<Block> blocks) implements Block {
    public Together {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * Two columns side by side on one page, without headings.
   *
   * @param share of the width that the left one gets, between 0 and 1
   */
  record Beside(List<Block> left, double share, List<Block> right) implements Block {
    public Beside {
      left = List.copyOf(left);
      right = List.copyOf(right);
      if (Stream.concat(left.stream(), right.stream()).anyMatch(Heading.class::isInstance)) {
        throw new IllegalArgumentException("Columns side by side hold no headings");
      }
    }
  }

  /** How large words are set. */
  enum Print {
    USUAL,
    /** For many words at the bench. */
    COMPACT,
    /** For what is looked up rather than read at the bench. */
    SMALL
  }

  /**
   * Blocks one below the other in columns of equal width, which go on from page to page; where they
   * end they are about equally long. Nothing in them begins a page.
   *
   * @param count at least one
   */
  record Columns(int count, Print print, List<Block> blocks) implements Block {
    public Columns {
      blocks = List.copyOf(blocks);
      if (count < 1 || blocks.stream().anyMatch(NewPage.class::isInstance)) {
        throw new IllegalArgumentException("Columns begin no pages, and there is one at least");
      }
    }
  }

  record NewPage() implements Block {}

  /** The table of contents, by the places that sections are taken to. */
  record Contents() implements Block {}
}
