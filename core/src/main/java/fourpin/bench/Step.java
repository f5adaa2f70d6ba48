package fourpin.bench;

import fourpin.measure.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One thing done at the bench. Pieces are called by the mark that is written on them. */
public sealed interface Step {

  /** How many holes it bores in a piece; guides and what else is made for the bench are none. */
  default int bored() {
    return switch (this) {
      case BoreRow row -> row.spacing().count();
      case BoreAtFence row -> row.spacing().count();
      case BoreThrough row -> row.numbers().size();
      default -> 0;
    };
  }

  /** Gets a piece out of its stock. */
  record CutToSize(String piece, String stock, Length length, Length width, Length thickness)
      implements Step {}

  /** Writes on surfaces of a piece which way they will look. */
  record MarkSurfaces(String piece, Map<Surface, String> labels) implements Step {
    public MarkSurfaces {
      labels = Map.copyOf(labels);
    }
  }

  /**
   * Glues something onto an edge or end, from one end of it to the other.
   *
   * @param thickness by which the piece grows
   */
  record Band(String piece, Surface surface, String what, Length thickness) implements Step {}

  /**
   * Takes out a block.
   *
   * @param surface that it is worked from
   * @param along on faces and edges measured from the index end, on ends from the index edge
   * @param across on faces measured from the index edge, on edges and ends from the face
   */
  record Channel(
      String piece,
      Shape shape,
      Surface surface,
      Span along,
      Span across,
      Length depth,
      String purpose)
      implements Step {

    /** Names of channels. */
    public enum Shape {
      DADO,
      GROOVE,
      RABBET,
      NOTCH
    }
  }

  /**
   * Takes out one channel along the piece in passes, side by side and one below the other, as a
   * router or a saw with a narrower cut does it.
   *
   * @param surface the face or the reverse
   * @param along measured from the index end
   * @param cut width of each pass
   * @param passes in the order of work
   */
  record Passes(
      String piece,
      Channel.Shape shape,
      Surface surface,
      Span along,
      Length cut,
      List<Pass> passes,
      String purpose)
      implements Step {
    public Passes {
      passes = List.copyOf(passes);
    }

    /** The same in another stretch of the piece. */
    public Passes with(Span other) {
      return new Passes(piece, shape, surface, other, cut, passes, purpose);
    }

    /** The same settings with another cutter. */
    public Passes with(Length otherCut) {
      return new Passes(piece, shape, surface, along, otherCut, passes, purpose);
    }
  }

  /**
   * One pass.
   *
   * @param fence from the index edge to the near side of the cut
   * @param depth from the surface
   */
  record Pass(Length fence, Length depth) {}

  /**
   * Rips a piece in two along its length, through holes on the line of the cut too.
   *
   * @param first mark of what lies at the index edge, {@code second} of the rest
   * @param width of the first; the second is as wide as the kerf leaves it
   */
  record Rip(String piece, String first, String second, Length width, Length kerf)
      implements Step {}

  /**
   * Cuts a piece to a length; the rest falls off.
   *
   * @param end that is kept, which the length is measured from
   */
  record Crosscut(String piece, Surface end, Length length) implements Step {}

  /**
   * Bores a row of holes square into the face or the reverse.
   *
   * @param line how the row runs
   * @param offset of the row from the index edge (rows along) or index end (rows across)
   * @param depth to the full diameter
   */
  record BoreRow(
      String piece,
      Surface surface,
      Line line,
      Length offset,
      Spacing spacing,
      Length diameter,
      Length depth,
      String purpose)
      implements Step {

    /** How a row runs on its piece. */
    public enum Line {
      ALONG,
      ACROSS
    }
  }

  /**
   * Marks a stick with distances from its zero.
   *
   * @param marks of holes, rising
   * @param ends where the index ends of pieces come, other than at zero; negative where a piece
   *     begins before the stick's zero
   */
  record MarkStick(String stick, List<Length> marks, List<Length> ends) implements Step {
    public MarkStick {
      marks = List.copyOf(marks);
      ends = List.copyOf(ends);
    }
  }

  /**
   * Lays panels side by side on the bench with their ends at one stop, and squares a line across
   * all of them at each mark of a stick whose zero lies at the stop. A line goes by the number of
   * its mark.
   *
   * @param panels two, whose edges meet
   * @param marks of the stick; its datum is how far the stop lies beyond the stick's zero
   */
  record SquareAcross(List<Laid> panels, Spacing.FromStick marks) implements Step {
    public SquareAcross {
      panels = List.copyOf(panels);
    }
  }

  /**
   * How a panel lies beside another.
   *
   * @param up FACE or REVERSE
   * @param end that is at the stop
   * @param gap from the stop to that end; zero or more
   * @param edge that meets the other panel's
   */
  record Laid(String piece, Surface up, Surface end, Length gap, Surface edge) {}

  /**
   * Bores a row along the piece with an edge of it against a fence.
   *
   * @param surface FACE or REVERSE
   * @param edge that runs along the fence, {@link Surface#INDEX_EDGE} or {@link Surface#FAR_EDGE}
   * @param offset from the fence to the centre of the bit
   * @param depth to the full diameter
   */
  record BoreAtFence(
      String piece,
      Surface surface,
      Surface edge,
      Length offset,
      Spacing spacing,
      Length diameter,
      Length depth,
      String purpose)
      implements Step {}

  /**
   * Makes a strip with holes that bits are led through.
   *
   * @param length from its zero, the stop face of its index block, to its far end
   * @param block thickness of the block, which stands proud of both sides beyond zero; zero where
   *     there is none
   * @param holes each number once
   */
  record MakeGuide(
      String guide,
      Length length,
      Length width,
      Length thickness,
      Length block,
      List<GuideHole> holes)
      implements Step {
    public MakeGuide {
      holes = List.copyOf(holes);
    }
  }

  /** A hole of a guide. @param along from its zero, {@code across} from its index edge */
  record GuideHole(int number, Length along, Length across, Length diameter) {}

  /**
   * Cuts a piece that keeps a guide off the end or the edge of a panel.
   *
   * @param stock that it is cut from, in words
   * @param size how far it keeps them apart
   * @param length along the end or the edge
   */
  record MakeSpacer(String spacer, String guide, String stock, Length size, Length length)
      implements Step {}

  /** Covers holes of a guide, so that nothing is bored through them. */
  record MaskHoles(String guide, List<Integer> numbers) implements Step {
    public MaskHoles {
      numbers = List.copyOf(numbers);
    }
  }

  /**
   * Sets up what bores through guides.
   *
   * @param tool in words
   * @param diameter that it bores
   * @param runs diameter of what runs in the guide's holes: the bit, a nose, a bushing
   * @param stop how far the full diameter goes beyond the guide's showing side
   */
  record SetBit(String tool, Length diameter, Length runs, Length stop) implements Step {}

  /**
   * Clamps a guide onto a piece.
   *
   * @param surface FACE or REVERSE
   * @param ends which end of the guide lies at which end of the piece, {@code edges} likewise
   * @param showing the side of the guide that is seen then
   * @param on what the guide's index end stands on, where the piece is part of something standing
   */
  record ClampGuide(
      String guide,
      String piece,
      Surface surface,
      Against ends,
      Against edges,
      Side showing,
      Optional<Rest> on)
      implements Step {

    /** A guide seen from side A has its zero on the left and its index edge towards you. */
    public enum Side {
      A,
      B;

      public Side other() {
        return this == A ? B : A;
      }
    }
  }

  /** A piece that a guide stands on. @param spacer what lies between, if anything does */
  record Rest(String piece, Optional<Between> spacer) {}

  /**
   * An end or edge of a guide at an end or edge of a piece.
   *
   * @param gap from the piece's inwards to the guide's; negative where the guide stands over
   * @param spacer what keeps them so far apart; none where the guide is set by a rule, or stands on
   *     something
   */
  record Against(Surface ofGuide, Surface ofPiece, Length gap, Optional<Between> spacer) {}

  /** A spacer in its place. @param size as it is written on it */
  record Between(String spacer, Length size) {}

  /**
   * Moves a guide along until a pin through its hole {@code pin} goes into the hole that was bored
   * through its hole {@code into} from where it lay before.
   */
  record ShiftGuide(String guide, String piece, int pin, int into) implements Step {}

  /** Takes the block off a guide, which can then be moved along. */
  record TakeOffBlock(String guide) implements Step {}

  /** Takes a guide off the piece and puts its block on again. */
  record FitBlock(String guide) implements Step {}

  /** Bores through holes of a guide with the bit that is set. */
  record BoreThrough(String guide, String piece, List<Integer> numbers, String purpose)
      implements Step {
    public BoreThrough {
      numbers = List.copyOf(numbers);
    }
  }
}
