package fourpin.shop.web;

import fourpin.bench.Caution;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.PlannedStep.Stage;
import fourpin.sheets.packet.Packet;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The steps of a plan, one at a time, for the bench. The whole of it is one document with all
 * pictures in it, so that nothing has to be fetched once it is open.
 *
 * @param job address of the job
 * @param digest of the steps: ticks are for these very steps, whatever else of the job is changed
 */
public record BenchPage(String title, String job, String digest, List<Card> cards) {

  /**
   * One step.
   *
   * @param where case and parts; may be empty
   * @param cautions before the work
   * @param picture the set-up or the panel, as SVG; nothing where the packet draws none
   * @param counts whether holes are bored, and so counted
   */
  public record Card(
      int number,
      String stage,
      String where,
      String words,
      List<String> items,
      List<Warning> cautions,
      String check,
      Optional<String> picture,
      boolean counts) {}

  /**
   * A caution, with the whole text at hand at each step.
   *
   * @param more than its first sentence; may be empty
   * @param first whether it comes up here for the first time, and stands there in full
   */
  public record Warning(String hazard, String essence, String more, boolean first) {

    private static Warning of(Caution caution, boolean first) {
      String essence = caution.essence();
      String more = caution.text().substring(essence.length()).strip();
      return new Warning(caution.hazard(), essence, more, first);
    }
  }

  private static final int DIGEST_BYTES = 16;

  static BenchPage of(Plan plan, String job) {
    Map<String, String> pictures = Packet.compose(plan).svgs();
    Set<Caution> told = new HashSet<>();
    return new BenchPage(
        plan.job().title(),
        job,
        digest(plan.steps()),
        plan.steps().stream().map(step -> card(step, pictures, told)).toList());
  }

  private static Card card(PlannedStep step, Map<String, String> pictures, Set<Caution> told) {
    String parts = step.parts().isEmpty() ? "" : " " + String.join(", ", step.parts());
    return new Card(
        step.number(),
        step.stage().title(),
        (step.caseName() + parts).strip(),
        step.words(),
        step.items(),
        step.cautions().stream().map(c -> Warning.of(c, told.add(c))).toList(),
        step.check(),
        picture(step, pictures),
        step.stage() == Stage.BORE);
  }

  /** Its drilling sheet's picture, or that of the one panel that it works on. */
  private static Optional<String> picture(PlannedStep step, Map<String, String> pictures) {
    Optional<String> onSheet =
        step.sheet().stream()
            .map(up -> name(step.caseName(), up.part(), up.face().name()) + "-drilling")
            .filter(pictures::containsKey)
            .findFirst();
    return onSheet.or(() -> panel(step, pictures.keySet().stream().toList())).map(pictures::get);
  }

  private static Optional<String> panel(PlannedStep step, List<String> names) {
    return step.parts().size() == 1
        ? names.stream()
            .filter(n -> n.startsWith(name(step.caseName(), step.parts().getFirst(), "")))
            .filter(n -> !n.endsWith("-drilling"))
            .findFirst()
        : Optional.empty();
  }

  private static String name(String caseName, String part, String face) {
    return (caseName + "-" + part + "-" + face).toLowerCase(Locale.ROOT);
  }

  private static String digest(List<PlannedStep> steps) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      steps.forEach(step -> sha.update(step.toString().getBytes(StandardCharsets.UTF_8)));
      return HexFormat.of().formatHex(sha.digest(), 0, DIGEST_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
