package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Tool.HandDrill;
import java.util.List;

/**
 * What is done before assembly though the job asks for boring when the case stands: that is asked
 * for rows of holes, and standards and cleats have none in their uprights. Common practice.
 */
final class Earlier {

  private static final String BEFORE = "set drill to before-assembly";

  private Earlier() {}

  /** A router's base and its fence, like a saw, work only on panels that lie. */
  static List<Reason> grooves(Group group) {
    return told(
        group,
        new Reason(
            "grooves can't be cut in a standing case: they are cut before assembly, whatever drill"
                + " says",
            BEFORE + ", or state standards with mounting surface, which can be screwed on later"));
  }

  /** They can go on later, if the drill for their screws has room. */
  static List<Reason> standards(Group group) {
    List<HandDrill> drills = group.shop().all(HandDrill.class);
    return told(
        group,
        StickWay.narrow(group, drills)
            .map(r -> new Reason(screwedOn() + "; later, " + r.what(), BEFORE, r.figures()))
            .orElseGet(
                () ->
                    new Reason(
                        screwedOn() + ", and can as well be screwed on when the case stands",
                        BEFORE)));
  }

  private static String screwedOn() {
    return "standards are screwed on before assembly, whatever drill says, since panels lie flat"
        + " then";
  }

  /** Blanks are no part of the case yet. */
  static List<Reason> cleats(Group group) {
    return told(
        group,
        new Reason(
            "strips are bored as blanks, ripped and fastened before assembly, whatever drill says:"
                + " fastened they can't be bored through",
            BEFORE + "; bored and ripped, they can as well be fastened when the case stands"));
  }

  private static List<Reason> told(Group group, Reason reason) {
    return group.isBoredAfterAssembly() ? List.of(reason) : List.of();
  }
}
