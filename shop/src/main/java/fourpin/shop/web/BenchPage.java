package fourpin.shop.web;

import fourpin.bench.Caution;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.packet.BenchNumbers;
import fourpin.sheets.packet.BenchPictures;
import fourpin.sheets.packet.Codes;
import fourpin.sheets.paint.SvgWriter;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * The steps of a plan, one at a time, for the bench. The whole of it is one document with all
 * pictures in it, so that nothing has to be fetched once it is open.
 *
 * @param job address of the job
 * @param judgement said above every step where it forbids cutting
 * @param digest of the steps: ticks are for these very steps, whatever else of the job is changed
 */
public record BenchPage(
    String title, String job, Judgement judgement, String digest, List<Card> cards) {

  /**
   * One step.
   *
   * @param where case and parts; may be empty
   * @param parts what codes call its parts, with blanks between
   * @param numbers that are set for it; may be empty
   * @param cautions before the work
   * @param pictures the set-up or the panel, as SVG; may be empty
   * @param holes that are bored in all copies of the case, to be counted; may be none
   * @param each of them in one copy
   * @param like differs for any other content, whatever its number: a tick may be taken along to a
   *     step of another plan that shows the very same
   */
  public record Card(
      int number,
      String stage,
      String where,
      String parts,
      String words,
      List<String> items,
      List<Number> numbers,
      List<Warning> cautions,
      String check,
      List<String> pictures,
      int holes,
      int each,
      int copies,
      String like) {

    /** Kinds of cautions, for a line that is always in sight. */
    public String hazards() {
      return cautions.stream().map(Warning::hazard).distinct().collect(Collectors.joining(", "));
    }
  }

  /** A number that is set. @param value the shorter, the larger it is shown */
  public record Number(String what, String value) {

    private static final int SHORT = 8;
    private static final int MIDDLING = 14;

    /** How large. */
    public String size() {
      return value.length() <= SHORT ? "large" : value.length() <= MIDDLING ? "middling" : "small";
    }
  }

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

  static BenchPage of(Plan plan, String job) {
    BenchPictures pictures = new BenchPictures(plan);
    BenchNumbers numbers = new BenchNumbers(plan);
    Set<Caution> told = new HashSet<>();
    return new BenchPage(
        plan.job().title(),
        job,
        Judgement.of(plan),
        Codes.digest(plan.steps()),
        plan.steps().stream().map(step -> card(plan, step, numbers, pictures, told)).toList());
  }

  private static Card card(
      Plan plan,
      PlannedStep step,
      BenchNumbers numbers,
      BenchPictures pictures,
      Set<Caution> told) {
    String parts = step.parts().isEmpty() ? "" : " " + String.join(", ", step.parts());
    List<Number> set = numbers.of(step).stream().map(l -> new Number(l.what(), l.to())).toList();
    List<String> drawn = pictures.of(step).stream().map(SvgWriter::write).toList();
    return new Card(
        step.number(),
        step.stage().title(),
        (step.caseName() + parts).strip(),
        step.parts().stream()
            .map(mark -> Codes.key(step.caseName(), mark))
            .collect(Collectors.joining(" ")),
        step.words(),
        step.items(),
        set,
        step.cautions().stream().map(c -> Warning.of(c, told.add(c))).toList(),
        step.check(),
        drawn,
        plan.holes(step),
        step.holes(),
        plan.copies(step),
        like(step, set, drawn, plan.copies(step)));
  }

  private static String like(
      PlannedStep step, List<Number> numbers, List<String> pictures, int copies) {
    Object shown =
        List.of(
            step.stage(),
            step.caseName(),
            step.parts(),
            step.words(),
            step.items(),
            step.check(),
            numbers,
            pictures,
            copies);
    return UUID.nameUUIDFromBytes(shown.toString().getBytes(StandardCharsets.UTF_8)).toString();
  }
}
