package fourpin.shop.web;

import fourpin.job.Job;
import fourpin.job.Paper;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.fields.Target;
import java.util.List;
import java.util.stream.Stream;

/**
 * What of a job goes on paper and into other programs, and how it is printed. The switches change
 * what the job states, so that paper, screen and files always say the same.
 *
 * @param base address of the job
 */
public record PacketPage(
    String title,
    String base,
    String token,
    String seen,
    Judgement judgement,
    List<Switch> papers,
    List<Switch> prints) {

  /**
   * One way to print.
   *
   * @param value as the job file has it
   * @param use whether it is printed so now
   */
  public record Switch(String key, String value, String words, Use use) {

    public boolean isNow() {
      return use == Use.NOW;
    }

    Target target() {
      return Target.put(Route.of(key), Value.of(value));
    }
  }

  /** Whether a switch stands so. */
  public enum Use {
    NOW,
    NOT_NOW
  }

  static PacketPage of(State state, String token) {
    return new PacketPage(
        state.job().title(),
        "/jobs/" + state.revision().document().value(),
        token,
        state.revision().id().value(),
        Judgement.of(state.plan()),
        papers(state.job()),
        prints(state.job()));
  }

  /** Every switch of the page. */
  static Stream<Switch> switches(Job job) {
    return Stream.concat(papers(job).stream(), prints(job).stream());
  }

  private static List<Switch> papers(Job job) {
    return List.of(
        new Switch("paper", "a4", "A4", use(job.paper() == Paper.A4)),
        new Switch("paper", "letter", "Letter", use(job.paper() == Paper.LETTER)));
  }

  /** Of each unit the part that is printed where a job says nothing. */
  private static List<Switch> prints(Job job) {
    boolean inch = job.style().unit().customary();
    return List.of(
        new Switch("print", "1/64 in", "Inches", use(inch)),
        new Switch("print", "0.1 mm", "Millimetres", use(!inch)));
  }

  private static Use use(boolean now) {
    return now ? Use.NOW : Use.NOT_NOW;
  }
}
