package fourpin.sheets.packet;

import fourpin.plan.Plan;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet;
import fourpin.sheets.pages.Booklet.Opening;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.SvgWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Everything for the bench: what is printed, and each drawing by itself. */
public record Packet(Booklet booklet) {

  private static final String SAW = "To the rack and the saw";
  private static final String ROWS = "To the bench where the rows are made";

  /** The same plan gives the same packet. Every figure in it stands in the plan. */
  public static Packet compose(Plan plan) {
    return compose(plan, Codes.NONE);
  }

  /** The same, with codes that open steps and parts on a phone. */
  public static Packet compose(Plan plan, Codes wanted) {
    Codes codes = wanted.of(plan);
    Words words = new Words(plan.job());
    Findings findings = new Findings(plan, words);
    CautionSigns boring = new CautionSigns();
    List<Section> sections =
        Stream.of(
                to(
                    "To the desk, before anything is cut",
                    Optional.of(new FirstPages(plan, words, findings).section()),
                    findings.section()),
                to(
                    SAW,
                    new BuyingPages(plan, words).section(),
                    new CutListPages(plan, words).section(),
                    LayoutPages.of(plan, words).section()),
                to(SAW, new LabelPages(plan, codes).section()),
                to("To every bench", new StepPages(plan, words, codes).section()),
                to("To the bench where joints are cut", new PanelPages(plan, words).section()),
                to(ROWS, new GuidePages(plan, words, codes).section(boring)),
                to(ROWS, new DrillingPages(plan, words, codes).section(boring)),
                to(ROWS, new MistakePages(plan.mistakes(), words).section()),
                to("To where it is put together", new CasePages(plan, words).section()),
                to(
                    "To keep: how it was worked out",
                    new WayPages(plan.borings(), words).section(),
                    new LevelPages(plan, plan.levelness(), words).section(),
                    new ShelfPages(plan, words).section(),
                    new SpanPages(plan, words).section(),
                    Optional.of(new GroundsPages(plan, words).section())))
            .flatMap(List::stream)
            .toList();
    return new Packet(
        new Booklet(
            plan.job().title(),
            "Packet for the bench, " + words.cases(plan),
            plan.job().title(),
            plan.job().revision(),
            findings.warning(),
            words.paper(),
            sections));
  }

  /** What is taken to one place; its sections share pages where they are short. */
  @SafeVarargs
  private static List<Section> to(String place, Optional<Section>... sections) {
    List<Section> there = new ArrayList<>();
    for (Optional<Section> section : sections) {
      Opening opening = there.isEmpty() ? Opening.NEW_PAGE : Opening.GOES_ON;
      section.map(s -> s.at(place, opening)).ifPresent(there::add);
    }
    return there;
  }

  /** Every drawing in the order of the pages. */
  public List<Drawing> drawings() {
    return booklet.sections().stream().flatMap(section -> drawings(section.blocks())).toList();
  }

  /**
   * The text of an SVG file for each drawing, by a name of its own: that of the drawing, numbered
   * where two share it.
   */
  public Map<String, String> svgs() {
    Map<String, String> svgs = new LinkedHashMap<>();
    for (Drawing drawing : drawings()) {
      String name = drawing.name();
      for (int next = 2; svgs.containsKey(name); next++) {
        name = drawing.name() + "-" + next;
      }
      svgs.put(name, SvgWriter.write(drawing));
    }
    return svgs;
  }

  private static Stream<Drawing> drawings(List<Block> blocks) {
    return blocks.stream().flatMap(Packet::drawings);
  }

  private static Stream<Drawing> drawings(Block block) {
    return switch (block) {
      case Block.Figure figure -> Stream.of(figure.drawing());
      case Block.Together together -> drawings(together.blocks());
      case Block.Columns columns -> drawings(columns.blocks());
      case Block.Beside beside -> Stream.concat(drawings(beside.left()), drawings(beside.right()));
      case Block.Steps steps -> steps.steps().stream().flatMap(step -> drawings(step.more()));
      default -> Stream.empty();
    };
  }
}
