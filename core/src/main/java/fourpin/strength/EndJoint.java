package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.strength.Use.Limit;
import java.util.function.ToDoubleFunction;

/**
 * The joint at each end of a fixed shelf.
 *
 * @param brought what an end brings to where its joint is loaded most, in the unit of what is
 *     allowed there
 * @param allowed for loads that stay, by the code that allows least
 */
record EndJoint(ToDoubleFunction<EndLoad> brought, Figure allowed) {

  /** What a shelf uses of it, as its load lies worst; what a hand does is not asked of a load. */
  Use worst(Candidate shelf) {
    return Verdict.worst(
        EndLoad.all(shelf).stream()
            .filter(load -> !(load.of() instanceof LoadCase.Hand))
            .map(load -> new Use(load.of(), Limit.JOINTS, share(load))));
  }

  private double share(EndLoad load) {
    return brought.applyAsDouble(load) / allowed.value().value();
  }

  Input input() {
    return new Input("J₀", allowed.title(), allowed.value(), allowed.source());
  }
}
