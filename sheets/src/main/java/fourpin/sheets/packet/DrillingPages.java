package fourpin.sheets.packet;

import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Measure;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.paint.Drawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A sheet to take to the bench for each face that is bored: its picture and its steps. */
final class DrillingPages {

  /** Of the height that pictures get beside the steps, tried in turn until these find room. */
  private static final List<Double> HEIGHTS = List.of(1.0, 0.9, 0.8, 0.7, 0.6, 0.5);

  private static final double MOST_SHARE = 0.58;

  private static final double LEAST_SHARE = 0.3;
  private static final double GAP = 5;

  /** Of a set-up that the first sheet stands below. */
  private static final double MOST_ABOVE = 45;

  /** Of pictures on sheets with so many words that they go on on the next page. */
  private static final double LEAST_HIGH = 80;

  /** Between blocks, round a picture, and above the first sheet the section's title. */
  private static final double SPACES = 6;

  private final Plan plan;
  private final Words words;

  DrillingPages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  Optional<Section> section() {
    List<DrillingSheet> sheets = DrillingSheet.of(plan);
    CautionSigns signs = new CautionSigns();
    List<Block> blocks = new ArrayList<>(new DrillingSetUp(plan, words).blocks(signs));
    double above = Measure.height(blocks, words.fullPage().width());
    if (above > MOST_ABOVE) {
      blocks.add(new Block.NewPage());
      above = 0;
    }
    for (DrillingSheet sheet : sheets) {
      blocks.addAll(pages(sheet, DrillingPicture.of(plan, words, sheet), signs, above));
      blocks.add(new Block.NewPage());
      above = 0;
    }
    return sheets.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("Drilling sheets", blocks));
  }

  /**
   * A page for each picture; how the panel lies is told again on each.
   *
   * @param above what stands above the first of them
   */
  private List<Block> pages(
      DrillingSheet sheet, List<DrillingPicture> pictures, CautionSigns signs, double above) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < pictures.size(); i++) {
      String lot = pictures.size() == 1 ? "" : ", page " + (i + 1) + " of " + pictures.size();
      List<PlannedStep> steps =
          Stream.concat(sheet.lying().stream(), pictures.get(i).steps().stream()).toList();
      List<Block> head = new ArrayList<>();
      head.add(new Block.Heading(sheet.title() + lot));
      head.add(pictures.get(i).setUp());
      head.addAll(signs.at(steps.stream().flatMap(s -> s.cautions().stream()).distinct().toList()));
      if (i > 0) {
        blocks.add(new Block.NewPage());
      }
      blocks.addAll(head);
      double high = high(head) - (i > 0 ? 0 : above);
      blocks.addAll(page(sheet, steps, pictures.get(i), high));
    }
    return blocks;
  }

  private List<Block> page(
      DrillingSheet sheet, List<PlannedStep> steps, DrillingPicture picture, double high) {
    List<Block> told = new ArrayList<>(List.of(told(steps)));
    told.addAll(picture.tables());
    told.addAll(copies(sheet));
    List<Block> more = new ArrayList<>(told);
    more.addAll(picture.ifRoom());
    return beside(picture, more, high)
        .or(() -> beside(picture, told, high))
        .orElseGet(() -> across(picture, told, high));
  }

  /** What the head of a page leaves. */
  private double high(List<Block> head) {
    return words.paper().body().height() - SPACES - Measure.height(head, words.fullPage().width());
  }

  private static Block told(List<PlannedStep> steps) {
    return new Block.Steps(
        steps.stream().map(s -> StepBlocks.of(s, Prose.plain(""), List.of())).toList());
  }

  /** Where all of it finds room on the page so: a lower picture is narrower too. */
  private Optional<List<Block>> beside(DrillingPicture picture, List<Block> told, double high) {
    double most = (1 - LEAST_SHARE) * (words.fullPage().width() - GAP);
    return Measure.height(told, most) > high ? Optional.empty() : lower(picture, told, high);
  }

  private Optional<List<Block>> lower(DrillingPicture picture, List<Block> told, double high) {
    return HEIGHTS.stream()
        .map(part -> Math.max(LEAST_HIGH, part * high))
        .distinct()
        .flatMap(height -> beside(picture, told, high, height).stream())
        .findFirst();
  }

  private Optional<List<Block>> beside(
      DrillingPicture picture, List<Block> told, double high, double height) {
    double width = words.fullPage().width() - GAP;
    Drawing drawing = picture.draw(words.fullPage().wide(MOST_SHARE * width).high(height));
    double share = Math.clamp(drawing.extent().width() / width, LEAST_SHARE, MOST_SHARE);
    return Measure.height(told, (1 - share) * width) <= high
        ? Optional.of(List.of(new Block.Beside(List.of(figure(drawing)), share, told)))
        : Optional.empty();
  }

  private List<Block> across(DrillingPicture picture, List<Block> told, double high) {
    double left = high - Measure.height(told, words.fullPage().width());
    List<Block> blocks = new ArrayList<>();
    blocks.add(figure(picture.draw(words.fullPage().high(Math.max(LEAST_HIGH, left)))));
    blocks.addAll(told);
    return blocks;
  }

  private static Block figure(Drawing drawing) {
    return new Block.Figure(drawing, "");
  }

  private static List<Block> copies(DrillingSheet sheet) {
    int copies = sheet.built().order().quantity();
    String all =
        IntStream.rangeClosed(1, copies).mapToObj(n -> " " + n).collect(Collectors.joining());
    return copies == 1
        ? List.of()
        : List.of(Block.Paragraph.of("Strike out each copy that is bored and checked:" + all));
  }
}
