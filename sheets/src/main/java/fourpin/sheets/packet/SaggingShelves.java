package fourpin.sheets.packet;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.SagView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import fourpin.strength.ShelfAnswer;
import fourpin.strength.ShelfShape;
import fourpin.strength.SpanTable.Lying;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Each kind of shelf as it sags, with what would cure it. */
final class SaggingShelves {

  private static final double WIDTH = 150;

  private final Plan plan;
  private final Words words;

  SaggingShelves(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  /**
   * @param alike at least one, all of the same figures
   */
  Block of(List<ShelfAnswer> alike) {
    ShelfAnswer first = alike.getFirst();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(title(alike)));
    first.shape().ifPresent(shape -> blocks.add(drawn(alike, shape)));
    List<Prose> cures = cures(alike);
    String elsewhere = cures.isEmpty() ? elsewhere(first) : "";
    blocks.add(new Block.Paragraph(verdict(first).then(Prose.plain(elsewhere))));
    if (!cures.isEmpty()) {
      blocks.add(new Block.Bullets(cures));
    }
    return new Block.Together(blocks);
  }

  static String title(List<ShelfAnswer> alike) {
    String marks = Words.list(alike.stream().map(ShelfAnswer::mark).toList());
    return alike.getFirst().caseName() + (alike.size() == 1 ? ", shelf " : ", shelves ") + marks;
  }

  private Block drawn(List<ShelfAnswer> alike, ShelfShape shape) {
    ShelfAnswer first = alike.getFirst();
    SagView.Limit limit =
        new SagView.Limit(first.limitNow().value().value(), words.value(first.limitNow()));
    String name = first.caseName() + " " + first.mark();
    return new Block.Figure(
        new SagView(words.fullPage().wide(WIDTH), name, shape, limit).draw(),
        "From the front, under %s %s and its own weight, at once: the way in which it sags most."
            .formatted(words.value(first.load()), shape.load().place()));
  }

  /** The drawing's own figures, where those of an even load are others. */
  private String uneven(ShelfAnswer shelf) {
    return shelf
        .shape()
        .filter(shape -> shape.load() != Lying.EVENLY)
        .map(
            shape ->
                "%s, as drawn: %s; after years: %s. "
                    .formatted(
                        Words.sentence(shape.now().title()),
                        words.value(shape.now()),
                        words.value(shape.years())))
        .orElse("");
  }

  private Prose verdict(ShelfAnswer shelf) {
    String text =
        "%s: %s of %s allowed; %s: %s of %s. "
            .formatted(
                Words.sentence(shelf.sagNow().title()),
                words.value(shelf.sagNow(), shelf.limitNow()),
                words.value(shelf.limitNow(), shelf.sagNow()),
                shelf.sagYears().title(),
                words.value(shelf.sagYears(), shelf.limitYears()),
                words.value(shelf.limitYears(), shelf.sagYears()));
    return Prose.plain(text + uneven(shelf)).then(Prose.bold(held(shelf)));
  }

  private static String held(ShelfAnswer shelf) {
    return shelf.beyond().isEmpty()
        ? "Within the limits in force, " + shelf.checked() + "."
        : "Not within the limits: it " + String.join("; it ", shelf.beyond()) + ".";
  }

  /** Shelves that bend alike are found fault with together, and may hang on their pins unlike. */
  private static String elsewhere(ShelfAnswer shelf) {
    return shelf.beyond().isEmpty()
        ? ""
        : " Its cures stand under %s, shelf %s, which bends alike."
            .formatted(shelf.caseName(), shelf.alike());
  }

  /** Those of the findings about one of the shelves. */
  private List<Prose> cures(List<ShelfAnswer> alike) {
    return plan.findings().stream()
        .filter(finding -> isOf(finding, alike))
        .flatMap(SaggingShelves::cures)
        .distinct()
        .toList();
  }

  private static Stream<Prose> cures(Finding finding) {
    return switch (finding.kind()) {
      case "sag",
          "row-sags",
          "half-sags",
          "glass-stress",
          "shelf-breaks",
          "row-breaks",
          "half-breaks",
          "hand-breaks" ->
          cures(finding, "Cure: ");
      case "support-crushes", "support-rating", "hand-presses" ->
          cures(finding, "Cure of its load on supports: ");
      case "joint-carries" -> cures(finding, "Cure of its joints: ");
      case "shelf-tips" -> cures(finding, "Cure of its tipping: ");
      default -> Stream.empty();
    };
  }

  private static Stream<Prose> cures(Finding finding, String title) {
    return finding.remedies().stream().map(remedy -> cure(remedy, title));
  }

  private static boolean isOf(Finding finding, List<ShelfAnswer> alike) {
    return alike.stream()
        .anyMatch(
            shelf ->
                finding.place().caseName().equals(shelf.caseName())
                    && finding.place().part().filter(shelf.mark()::equals).isPresent());
  }

  private static Prose cure(Remedy remedy, String title) {
    return Prose.bold(title).then(Prose.plain(remedy.what() + "; cost: " + remedy.cost()));
  }
}
