package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.Removal;
import fourpin.bench.Step;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.casework.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Runs the typed steps of a program on the virtual bench and compares what comes out with the parts
 * that were wanted, to the picometre.
 */
public final class ProgramCheck {

  private final BuiltCase built;
  private final List<Finding> findings = new ArrayList<>();

  private ProgramCheck(BuiltCase built) {
    this.built = built;
  }

  /** What comes out otherwise than wanted; empty if the steps make exactly these cases. */
  public static List<Finding> of(List<BuiltCase> cases, BenchProgram program) {
    List<Finding> findings = new ArrayList<>();
    for (BuiltCase built : cases) {
      List<Step> steps =
          program.cases().stream()
              .filter(c -> c.caseName().equals(built.order().name()))
              .flatMap(c -> c.steps().stream())
              .toList();
      findings.addAll(new ProgramCheck(built).check(VirtualBench.run(steps)));
    }
    return findings;
  }

  private List<Finding> check(BenchRun run) {
    run.mishaps().forEach(m -> add("", "The steps can't be done: " + m.what() + "."));
    for (Part part : built.parts()) {
      WorkedPiece piece = run.pieces().get(part.mark());
      if (piece == null) {
        add(part.mark(), "The steps never cut " + part.mark() + ".");
      } else {
        compare(part, piece);
      }
    }
    run.pieces().keySet().stream()
        .filter(mark -> built.parts().stream().noneMatch(p -> p.mark().equals(mark)))
        .forEach(mark -> add(mark, "The steps cut " + mark + ", which nobody wants."));
    return findings;
  }

  private void compare(Part part, WorkedPiece piece) {
    PiecePlacer placer =
        new PiecePlacer(piece, corner(part.box().low()), corner(part.box().high()));
    same(part, List.of(wanted(part.box())), List.of(text(placer.whole())), "size");
    same(part, List.of(part.material()), List.of(piece.stock()), "material");
    same(
        part,
        part.features().stream().map(ProgramCheck::wanted).toList(),
        piece.removals().stream().map(r -> made(r, placer)).toList(),
        "cuts");
    same(
        part,
        part.edging().stream().map(b -> lower(b.face()) + " " + b.edging().thickness()).toList(),
        piece.bands().stream().map(b -> placer.looks(b.surface()) + " " + b.thickness()).toList(),
        "edging");
  }

  private void same(Part part, List<String> wanted, List<String> made, String what) {
    if (wanted.stream().sorted().toList().equals(made.stream().sorted().toList())) {
      return;
    }
    List<String> missing = new ArrayList<>(wanted);
    made.forEach(missing::remove);
    List<String> extra = new ArrayList<>(made);
    wanted.forEach(extra::remove);
    add(
        part.mark(),
        "The steps give "
            + part.mark()
            + " other "
            + what
            + " than planned. Missing: "
            + missing
            + "; instead: "
            + extra
            + ".");
  }

  private static String wanted(Feature feature) {
    return switch (feature) {
      case Feature.Channel c ->
          c.kind() + " " + lower(c.face()) + " " + wanted(c.volume()) + " " + c.purpose();
      case Feature.Hole h ->
          "hole "
              + lower(h.face())
              + " "
              + wanted(new Box(h.centre(), h.centre()))
              + " "
              + h.diameter()
              + " "
              + h.depth()
              + " "
              + h.purpose();
    };
  }

  private static String made(Removal removal, PiecePlacer placer) {
    return switch (removal) {
      case Removal.Block b ->
          b.shape()
              + " "
              + placer.looks(b.surface())
              + " "
              + text(placer.block(b))
              + " "
              + b.purpose();
      case Removal.Bore b ->
          "hole "
              + placer.looks(b.surface())
              + " "
              + text(placer.centre(b))
              + " "
              + b.diameter()
              + " "
              + b.depth()
              + " "
              + b.purpose();
    };
  }

  private static String wanted(Box box) {
    return text(new PiecePlacer.Block(numbers(corner(box.low())), numbers(corner(box.high()))));
  }

  private static String text(PiecePlacer.Block block) {
    return block.low() + " to " + block.high() + " pm";
  }

  private static long[] corner(Point point) {
    return new long[] {point.x().picometres(), point.y().picometres(), point.z().picometres()};
  }

  private static List<Long> numbers(long[] values) {
    return Arrays.stream(values).boxed().toList();
  }

  private static String lower(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT);
  }

  private void add(String mark, String what) {
    Place place =
        mark.isEmpty() ? Place.of(built.order().name()) : Place.of(built.order().name(), mark);
    findings.add(
        new Finding(
            Severity.ERROR,
            "steps-differ",
            what,
            List.of(),
            place,
            List.of(
                new Remedy(
                    "don't work to these steps; this is a fault of the program: report it with the"
                        + " job file",
                    "a fix"))));
  }
}
