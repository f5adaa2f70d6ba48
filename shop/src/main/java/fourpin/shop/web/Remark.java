package fourpin.shop.web;

import fourpin.casework.Finding;
import fourpin.measure.Figure;
import fourpin.sheets.packet.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A finding as it stands in the margin.
 *
 * @param label as it is flagged on the drawing
 * @param severity for the style sheet
 * @param word how bad it is
 */
public record Remark(
    String label,
    String severity,
    String word,
    String where,
    String what,
    List<Cell> figures,
    List<Cure> cures) {

  public Remark {
    figures = List.copyOf(figures);
    cures = List.copyOf(cures);
  }

  /**
   * A cure.
   *
   * @param press what to send to have it done; nothing where it is done by hand
   */
  public record Cure(String what, String cost, Optional<String> press) {

    /** What to send to have it done whatever it spoils; of one that has a press. */
    public String nonetheless() {
      return Press.nonetheless(press.orElseThrow());
    }
  }

  /** Whether nothing may be cut before it is settled: its cures are in sight then. */
  public boolean forbids() {
    return severity.equals("error") || severity.equals("refused");
  }

  static String label(int index) {
    return "F" + (index + 1);
  }

  static List<Remark> all(State state) {
    List<Finding> findings = state.plan().findings();
    Words words = new Words(state.job());
    return IntStream.range(0, findings.size())
        .mapToObj(i -> of(i, findings.get(i), words))
        .toList();
  }

  private static Remark of(int index, Finding finding, Words words) {
    String part = finding.place().part().map(p -> ", part " + p).orElse("");
    return new Remark(
        label(index),
        finding.severity().name().toLowerCase(java.util.Locale.ROOT),
        word(finding.severity()),
        finding.place().caseName() + part,
        DesignPage.capital(finding.what()),
        finding.figures().stream().map(f -> figure(f, words)).toList(),
        IntStream.range(0, finding.remedies().size())
            .mapToObj(i -> cure(index, i, finding.remedies().get(i)))
            .toList());
  }

  private static Cell figure(Figure figure, Words words) {
    return new Cell(figure.title() + " " + words.value(figure), Optional.of(figure.id()));
  }

  private static Cure cure(int finding, int number, Finding.Remedy remedy) {
    boolean stated = remedy.stated().isPresent();
    return new Cure(
        remedy.what(),
        remedy.cost(),
        stated ? Optional.of(Press.sent(finding, number)) : Optional.empty());
  }

  private static String word(Finding.Severity severity) {
    return switch (severity) {
      case REFUSED -> "cannot be built";
      case ERROR -> "would spoil the work";
      case DOUBT -> "look first";
      case NOTE -> "good to know";
    };
  }
}
