package fourpin.sheets.packet;

import fourpin.plan.PlannedStep;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Measure;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.paint.Drawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One page of a drilling sheet: what is set, the cautions, a picture and its steps.
 *
 * @param codes that open its first step
 * @param pictures of the whole sheet
 * @param index which of them this page is for
 * @param above what stands on the page before it, in mm
 */
record SheetPage(
    Words words,
    Codes codes,
    DrillingSheet sheet,
    List<DrillingPicture> pictures,
    int index,
    double above) {

  /** Of the height that a picture gets beside the steps, tried in turn until these find room. */
  private static final List<Double> HEIGHTS = List.of(1.0, 0.9, 0.8, 0.7);

  private static final double MOST_SHARE = 0.58;
  private static final double LEAST_SHARE = 0.2;
  private static final double GAP = 5;

  /** Of a picture across the page, to what it could have beside the steps. */
  private static final double LEAST_ACROSS = 0.75;

  /** Of pictures that have so many words before them that they get a page of their own. */
  private static final double LEAST_HIGH = 80;

  /** Between blocks and round a picture. */
  private static final double SPACES = 6;

  SheetPage {
    pictures = List.copyOf(pictures);
  }

  private DrillingPicture picture() {
    return pictures.get(index);
  }

  /** All that it says, on one page if it finds room there with a large picture. */
  List<Block> blocks(CautionSigns signs) {
    return whole(List.of(this), signs).map(List::getFirst).orElseGet(() -> parted(signs));
  }

  /** All pages, if each finds room on one with a large picture; else nothing is told. */
  static Optional<List<List<Block>>> whole(List<SheetPage> pages, CautionSigns signs) {
    CautionSigns trial = signs.copy();
    List<List<Block>> all = new ArrayList<>();
    for (SheetPage page : pages) {
      page.whole(trial).ifPresent(all::add);
    }
    if (all.size() < pages.size()) {
      return Optional.empty();
    }
    signs.take(trial);
    return Optional.of(all);
  }

  private Optional<List<Block>> whole(CautionSigns signs) {
    List<Block> head = head(signs);
    double high = high(head);
    List<Block> told = told(steps());
    told.addAll(picture().tables());
    told.addAll(copies());
    List<Block> more = new ArrayList<>(told);
    more.addAll(picture().ifRoom());
    return beside(more, high)
        .or(() -> beside(told, high))
        .or(() -> across(told, high))
        .or(() -> beside(compact(told), high))
        .map(page -> Stream.concat(head.stream(), page.stream()).toList());
  }

  private static List<Block> compact(List<Block> told) {
    return List.of(new Block.Columns(1, Block.Print.COMPACT, told));
  }

  /** As many steps beside the picture as find room; the rest goes on on the next page. */
  private List<Block> parted(CautionSigns signs) {
    List<Block> blocks = new ArrayList<>(head(signs));
    double high = high(blocks);
    List<PlannedStep> steps = steps();
    int most = steps.size();
    Optional<List<Block>> page = Optional.empty();
    while (most > 0 && page.isEmpty()) {
      page = beside(told(steps.subList(0, most)), high);
      most -= page.isPresent() ? 0 : 1;
    }
    blocks.addAll(page.orElseGet(() -> alone(high)));
    blocks.add(new Block.NewPage());
    blocks.add(new Block.Paragraph(Prose.bold(sheet.title() + ", goes on")));
    if (most < steps.size()) {
      blocks.addAll(most == 0 ? told(steps) : List.of(told(steps, most)));
    }
    blocks.addAll(picture().tables());
    blocks.addAll(copies());
    return blocks;
  }

  private List<Block> head(CautionSigns signs) {
    String lot = pictures.size() == 1 ? "" : ", page " + (index + 1) + " of " + pictures.size();
    List<Block> head = new ArrayList<>();
    head.add(new Block.Heading(sheet.title() + lot));
    head.addAll(codes.beside(List.of(picture().setUp()), steps(), words.fullPage().width()));
    head.addAll(
        signs.at(
            Stream.concat(sheet.lying().stream(), picture().steps().stream())
                .flatMap(s -> s.cautions().stream())
                .distinct()
                .toList()));
    return head;
  }

  /** What the head of a page leaves. */
  private double high(List<Block> head) {
    return words.paper().body().height()
        - above
        - SPACES
        - Measure.height(head, words.fullPage().width());
  }

  /** How the panel lies is a step of the first page. */
  private List<PlannedStep> steps() {
    return index > 0
        ? picture().steps()
        : Stream.concat(sheet.lying().stream(), picture().steps().stream()).toList();
  }

  /** How the panel lies is told again on further pages, but not to be ticked off again. */
  private List<Block> told(List<PlannedStep> steps) {
    List<Block> told = new ArrayList<>();
    if (index > 0) {
      sheet.lying().forEach(s -> told.add(Block.Paragraph.of(s.words())));
    }
    told.add(told(steps, 0));
    return told;
  }

  private static Block told(List<PlannedStep> steps, int from) {
    return new Block.Steps(
        steps.stream().skip(from).map(s -> StepBlocks.of(s, Prose.plain(""), List.of())).toList());
  }

  /** Where all of it finds room on the page so: a lower picture is narrower too. */
  private Optional<List<Block>> beside(List<Block> told, double high) {
    double most = (1 - LEAST_SHARE) * (words.fullPage().width() - GAP);
    return Measure.height(told, most) > high
        ? Optional.empty()
        : HEIGHTS.stream()
            .map(part -> Math.max(LEAST_HIGH, part * high))
            .distinct()
            .flatMap(height -> beside(told, high, height).stream())
            .findFirst();
  }

  private Optional<List<Block>> beside(List<Block> told, double high, double height) {
    double width = words.fullPage().width() - GAP;
    Drawing drawing = picture().draw(words.fullPage().wide(MOST_SHARE * width).high(height));
    double share = Math.clamp(drawing.extent().width() / width, LEAST_SHARE, MOST_SHARE);
    return Measure.height(told, (1 - share) * width) <= high
        ? Optional.of(List.of(new Block.Beside(List.of(figure(drawing)), share, told)))
        : Optional.empty();
  }

  /** The picture over the steps, where these are so few that it is hardly smaller for them. */
  private Optional<List<Block>> across(List<Block> told, double high) {
    double left = high - Measure.height(told, words.fullPage().width());
    return left < LEAST_ACROSS * high
        ? Optional.empty()
        : Optional.of(Stream.concat(alone(left).stream(), told.stream()).toList());
  }

  private List<Block> alone(double high) {
    return List.of(figure(picture().draw(words.fullPage().high(Math.max(LEAST_HIGH, high)))));
  }

  private static Block figure(Drawing drawing) {
    return new Block.Figure(drawing, "");
  }

  private List<Block> copies() {
    int copies = sheet.built().order().quantity();
    String all =
        IntStream.rangeClosed(1, copies).mapToObj(n -> " " + n).collect(Collectors.joining());
    return copies == 1 || index < pictures.size() - 1
        ? List.of()
        : List.of(Block.Paragraph.of("Strike out each copy that is bored and checked:" + all));
  }
}
