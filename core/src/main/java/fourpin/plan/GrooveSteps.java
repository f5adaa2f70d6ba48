package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.bench.Span;
import fourpin.bench.Step;
import fourpin.boring.BayGrid;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.boring.way.Method.Grooved;
import fourpin.job.Job;
import fourpin.job.Tool;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Grooves for standards, pass by pass.
 *
 * <p>A router's bit turns clockwise seen from above and pushes the router to the left of its way.
 * So its fence runs along the edge on the right, and the pass that lies farthest from that edge
 * comes first: the next ones then cut on the side towards the edge, against the turn of the bit
 * (common practice).
 */
final class GrooveSteps {

  private final Job job;
  private final Map<String, Grooved> methods = new LinkedHashMap<>();

  GrooveSteps(Job job, List<CaseBoring> borings) {
    this.job = job;
    for (CaseBoring boring : borings) {
      if (boring.method() instanceof Grooved grooved) {
        boring.grids().forEach(g -> add(g, grooved));
      }
    }
  }

  private void add(BayGrid grid, Grooved grooved) {
    grid.rows().forEach(row -> methods.put(grid.groove(row), grooved));
  }

  /** How a channel is cut in passes; none if it is no groove for a standard. */
  Optional<Grooved> method(Step.Channel channel) {
    return Optional.ofNullable(methods.get(channel.purpose()));
  }

  /** The passes of a channel, from the wall that is farther from the index edge to the nearer. */
  Step passes(Step.Channel channel, Grooved grooved) {
    List<Step.Pass> passes = new ArrayList<>();
    for (Length fence : fences(channel.across(), grooved)) {
      grooved.depths().forEach(depth -> passes.add(new Step.Pass(fence, depth)));
    }
    return new Step.Passes(
        channel.piece(),
        channel.shape(),
        channel.surface(),
        channel.along(),
        grooved.cut(),
        passes,
        channel.purpose());
  }

  /** Side by side from the far wall; the last lies at the near wall, whatever it overlaps. */
  private static List<Length> fences(Span across, Grooved grooved) {
    List<Length> fences = new ArrayList<>();
    for (int pass = 1; pass < grooved.passes(); pass++) {
      fences.add(across.to().minus(grooved.cut().times(pass)));
    }
    fences.add(across.from());
    return fences;
  }

  String words(Grooved grooved) {
    return switch (grooved.cutter()) {
      case ROUTER -> routed(grooved);
      case SAW ->
          "Saw the grooves for standards in passes with "
              + grooved.tool()
              + ": grooved face down, index edge along the fence, blade set to the depth below, one"
              + " pass at each setting of the fence, fed against the turn of the blade. ";
    };
  }

  private String routed(Grooved grooved) {
    return "Rout the grooves for standards in passes with "
        + grooved.tool()
        + ": index edge towards you, the router's fence along it, fed from left to right, settings"
        + " in the order below so that each pass after the first cuts against the turn of the bit."
        + " Where the fence does not reach, clamp a straightedge on the side of the index edge, "
        + toStraightedge(grooved)
        + " nearer to that edge than told below; then feed from right to left and take the settings"
        + " in the other order. Square the ends with a chisel. ";
  }

  private String toStraightedge(Grooved grooved) {
    LengthStyle style = job.style();
    return job.shop().all(Tool.Router.class).stream()
        .map(Tool.Router::base)
        .filter(base -> base.isMoreThan(grooved.cut()))
        .findFirst()
        .map(base -> style.text(base.minus(grooved.cut()).over(2)))
        .orElse("half of what the router's base is wider than the bit");
  }

  String check() {
    return "Set every fence and depth in scrap of the same stock first: in that test groove an offcut"
        + " of the standard goes in by hand, without play to both sides, and lies flush from end to"
        + " end. Cut no panel before it does.";
  }

  List<Caution> cautions(Grooved grooved) {
    Caution tool = grooved.cutter() == Method.Cutter.SAW ? Cautions.SAW : Cautions.ROUTER;
    return List.of(tool, Cautions.DUST);
  }
}
