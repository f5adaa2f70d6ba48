package fourpin.sheets.packet;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.measure.Figure;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.CaseViews;
import fourpin.sheets.drawings.Flag;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The findings, numbered F1, F2 ... as the plan orders them, with their places drawn. */
final class Findings {

  private static final double VIEW_HEIGHT = 80;

  private final Plan plan;
  private final Words words;

  Findings(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  /** Whether the plan may go to the bench. */
  Block verdict() {
    return plan.readyForTheBench() ? goOn() : stop();
  }

  /** For the head of every page, where the plan may not go to the bench. */
  Optional<String> warning() {
    long count = forbidding();
    return count == 0
        ? Optional.empty()
        : Optional.of(
            "DO NOT CUT: "
                + count
                + (count == 1 ? " finding" : " findings")
                + " to settle first, see Findings");
  }

  private long forbidding() {
    return plan.findings().stream()
        .filter(f -> f.severity() == Severity.REFUSED || f.severity() == Severity.ERROR)
        .count();
  }

  private Block stop() {
    long count = forbidding();
    return new Block.Callout(
        Block.Sign.ERROR,
        "Do not cut to this plan",
        List.of(
            Prose.plain(
                count
                    + (count == 1 ? " finding must" : " findings must")
                    + " be settled first; see Findings. Change the job file and plan again.")));
  }

  private Block goOn() {
    long doubts = plan.findings().stream().filter(f -> f.severity() == Severity.DOUBT).count();
    String looked =
        doubts == 0 ? "" : " Look at the " + doubts + " marked \"look first\" before you cut.";
    return new Block.Callout(
        Block.Sign.NOTE,
        "Nothing found that forbids cutting to this plan",
        List.of(
            Prose.plain(
                "Fourpin checked what is listed under \"What this rests on\", with the loads,"
                    + " materials and settings stated there; it has not seen the wood, the wall or"
                    + " the work."
                    + looked)));
  }

  /** Nothing where nothing was found. */
  Optional<Section> section() {
    if (plan.findings().isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    plan.cases().forEach(built -> blocks.addAll(views(built)));
    int notes = (int) plan.findings().stream().filter(f -> !isNote(f)).count();
    blocks.addAll(blocks(0, notes));
    if (notes < plan.findings().size()) {
      blocks.add(new Block.Columns(1, Block.Print.COMPACT, blocks(notes, plan.findings().size())));
    }
    return Optional.of(new Section("Findings", blocks));
  }

  /** What is good to know comes last, and closer set. */
  private static boolean isNote(Finding finding) {
    return finding.severity() == Severity.NOTE;
  }

  private List<Block> blocks(int from, int to) {
    return IntStream.range(from, to).mapToObj(this::block).toList();
  }

  private List<Block> views(BuiltCase built) {
    List<Flag> flags =
        IntStream.range(0, plan.findings().size())
            .filter(i -> plan.findings().get(i).place().caseName().equals(built.order().name()))
            .boxed()
            .flatMap(i -> flag(i, built).stream())
            .toList();
    if (flags.isEmpty()) {
      return List.of();
    }
    CaseViews views = new CaseViews(words.fullPage().high(VIEW_HEIGHT), built);
    return List.of(
        new Block.Figure(
            views.places(flags), "Places of the findings in " + built.order().name() + "."));
  }

  /** The spot of a finding, or the part that it is about. */
  private Optional<Flag> flag(int index, BuiltCase built) {
    Place place = plan.findings().get(index).place();
    return place
        .spot()
        .or(() -> place.part().map(mark -> built.part(mark).box()))
        .map(spot -> new Flag(label(index), spot));
  }

  private static String label(int index) {
    return "F" + (index + 1);
  }

  private Block block(int index) {
    Finding finding = plan.findings().get(index);
    List<Prose> text = new ArrayList<>();
    text.add(Prose.plain(Words.whole(finding.what())));
    if (!finding.figures().isEmpty()) {
      text.add(
          Prose.plain(
              Words.whole(Words.list(finding.figures().stream().map(this::figure).toList()))));
    }
    finding.remedies().forEach(remedy -> text.add(remedy(remedy)));
    String title = label(index) + ": " + words(finding.severity()) + where(finding.place());
    return new Block.Callout(sign(finding.severity()), title, text);
  }

  private String figure(Figure figure) {
    return figure.title() + " " + words.value(figure);
  }

  private static Prose remedy(Remedy remedy) {
    String cost = remedy.cost().isEmpty() ? "" : "; cost: " + remedy.cost();
    return Prose.bold("Cure: ").then(Prose.plain(remedy.what() + cost));
  }

  private static String words(Severity severity) {
    return switch (severity) {
      case REFUSED -> "cannot be built";
      case ERROR -> "would spoil the work";
      case DOUBT -> "look first";
      case NOTE -> "good to know";
    };
  }

  private static Block.Sign sign(Severity severity) {
    return switch (severity) {
      case REFUSED, ERROR -> Block.Sign.ERROR;
      case DOUBT -> Block.Sign.WARNING;
      case NOTE -> Block.Sign.NOTE;
    };
  }

  private static String where(Place place) {
    String part = place.part().map(mark -> ", part " + mark).orElse("");
    return place.caseName().isEmpty() ? part : ", " + place.caseName() + part;
  }
}
